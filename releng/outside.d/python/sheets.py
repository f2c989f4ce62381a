"""Workbooks as LibreOffice reads them, against the comma-separated files of the same content; no cell is a formula."""

import csv
import glob
import os
import sys

from lines import check, finish

FOLDER, CONVERTED = sys.argv[1:3]
MADE_FROM = ["program", "project", "revision", "projectFileSha256", "ruleSet", "verdict"]
FORMULA_STARTS = ("=", "+", "-", "@", "\t", "\r")


def rows(path):
    with open(path, encoding="utf-8-sig", newline="") as file:
        return [row for row in csv.reader(file)]


def is_number(text):
    try:
        float(text)
        return True
    except ValueError:
        return False


def same(one, other):
    if is_number(one) and is_number(other):
        return abs(float(one) - float(other)) <= 5e-10 * max(1.0, abs(float(one)))
    return one.strip().lstrip("'") == other.strip().lstrip("'")


def trimmed(table):
    """Without empty rows and without empty cells at the end of a row."""
    kept = []
    for row in table:
        cells = list(row)
        while cells and not cells[-1].strip():
            cells.pop()
        if cells:
            kept.append(cells)
    return kept


def compare(name):
    book = sorted(glob.glob(os.path.join(CONVERTED, name + "*.csv")))
    if not os.path.exists(os.path.join(FOLDER, name + ".xlsx")) or not check(bool(book), f"sheets: {name}.xlsx is opened by LibreOffice"):
        check(bool(book), f"sheets: {name}.xlsx is there")
        return
    table = rows(os.path.join(FOLDER, name + ".csv"))
    check(all(row[-len(MADE_FROM):] == MADE_FROM for row in table[:1]), f"sheets: {name}.csv says what it was made from, and the verdict")
    # A workbook says it on its sheet of notes.
    expected = trimmed([row[:-len(MADE_FROM)] for row in table])
    found = trimmed([row for path in book for row in rows(path)])
    # A workbook may say something above the names of its columns.
    start = next((number for number, row in enumerate(found) if expected and row[0] == expected[0][0]), 0)
    found = found[start:]
    wrong = []
    cells = numbers = 0
    for number, row in enumerate(expected):
        other = found[number] if number < len(found) else []
        for column, cell in enumerate(row):
            cells += 1
            numbers += is_number(cell)
            if column >= len(other) or not same(cell, other[column]):
                wrong.append(f"row {number + 1} column {column + 1}: '{cell}' against '{other[column] if column < len(other) else ''}'")
    check(not wrong and len(found) >= len(expected) and cells > 10,
          f"sheets: {name}: {cells} cells, {numbers} of them numbers, are those of the CSV {wrong[:2] or ''}".rstrip())


def injection():
    """Names that look like formulas stay text in the workbook and begin with a harmless letter in the CSV."""
    book = sorted(glob.glob(os.path.join(CONVERTED, "formulas*.csv")))
    cells = [cell for path in book for row in rows(path) for cell in row]
    check(any(cell.lstrip("'") == "=1+1" for cell in cells) and "2" not in [cell for cell in cells if not cell.startswith("'")] and any(
        "@SUM(1,1)" in cell for cell in cells), "sheets: names that look like formulas stay text in the workbook")
    risky = [cell for row in rows(os.path.join(FOLDER, "formulas.csv")) for cell in row
             if cell.startswith(FORMULA_STARTS) and not is_number(cell)]
    check(not risky, f"sheets: no cell of the CSV begins like a formula {risky[:3] or ''}".rstrip())


def main():
    for name in ("schedule", "circuits", "publish"):
        compare(name)
    injection()


main()
finish()
