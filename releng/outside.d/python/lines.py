"""Prints the lines that releng/outside counts, and reads what more than one script needs."""

import csv
import os
import sys

_failed = []


def schedule(folder, name="schedule.csv"):
    """Rows of a setting-out schedule, as dictionaries of its columns."""
    with open(os.path.join(folder, name), encoding="utf-8-sig", newline="") as file:
        return list(csv.DictReader(file))


def check(good, text):
    print(("ok " if good else "FAILED ") + " ".join(text.split()))
    if not good:
        _failed.append(text)
    return good


def finish():
    sys.exit(1 if _failed else 0)
