"""Documents, read by poppler: no blank page, contents, and the numbers that the commands print in JSON."""

import json
import os
import re
import subprocess
import sys
import tempfile

from lines import check, finish, schedule

FOLDER = sys.argv[1]
AID = "PAPI 09"
DOCUMENTS = {
    "report.pdf": ["Harrow Vale", "PAPI 09", "PAPI 27", "APAPI 03", "Light units", "Calculation", "Wheel clearance", "What was not evaluated", "Plan of the flight inspection", "A design aid"],
    "card.pdf": ["Portable unit, north pad", "ZZHV"],
    "commission.pdf": ["PAPI 09", "ZZHV"],
    "plan.pdf": [],
    "section.pdf": [],
    "pilot.pdf": [],
    "large.pdf": [],
}


def run(*words):
    return subprocess.run(words, capture_output=True, text=True, check=False)


def path(name):
    return os.path.join(FOLDER, name)


def load(name):
    with open(path(name), encoding="utf-8") as file:
        return json.load(file)


def plain(text):
    return " ".join(text.replace("\u2032", "'").replace("\u2212", "-").split())


def text_of(name):
    return plain(run("pdftotext", "-layout", path(name), "-").stdout)


def blank_pages(name):
    """Pages on which nothing is darker than its surroundings; painted small."""
    with tempfile.TemporaryDirectory() as work:
        done = run("pdftoppm", "-r", "20", "-gray", path(name), os.path.join(work, "p"))
        pages = sorted(os.listdir(work))
        spread = run("identify", "-format", "%[standard-deviation]\n", *[os.path.join(work, page) for page in pages]).stdout.split()
        return done.returncode, len(pages), [number + 1 for number, value in enumerate(spread) if float(value) < 300]


def look(name, words):
    if not os.path.exists(path(name)):
        check(False, f"text: {name} is there")
        return
    code, pages, blank = blank_pages(name)
    told = run("pdfinfo", path(name)).stdout
    counted = re.search(r"Pages:\s+(\d+)", told)
    check(code == 0 and counted is not None and int(counted.group(1)) == pages and pages > 0 and not blank,
          f"text: {name}: {pages} pages, none blank {blank or ''}".rstrip())
    if words:
        text = text_of(name)
        missing = [word for word in words if word not in text]
        check(not missing, f"text: {name} says {', '.join(words)} {missing or ''}".rstrip())
    images = run("pdfimages", "-list", path(name))
    check(images.returncode == 0, f"text: {name}: its images are listed, {max(0, len(images.stdout.splitlines()) - 2)} of them")
    fonts = run("pdffonts", path(name)).stdout.splitlines()[2:]
    loose = [line.split()[0] for line in fonts if " yes " not in line]
    check(not loose, f"text: {name}: all {len(fonts)} faces are embedded {loose or ''}".rstrip())


def same_numbers(text):
    """Units in report, drawing and schedule; heights in report, check and section."""
    svg = plain(re.sub(r"<[^>]*>", " ", open(path("plan.svg"), encoding="utf-8").read()))
    for row in [one for one in schedule(FOLDER) if one["indicator"] == AID]:
        printed = [f"{float(row['chainage from threshold m']):.3f}", f"{float(row['offset m']):.3f}"]
        after = [f"{float(row['lens elevation m']):.3f}", row["setting"], f"{float(row['setting deg']):.4f}"]
        pattern = rf"\b{row['unit']} " + r"\s*\S+ [NS]\s+\S+ [EW]\s+" + r"\s+".join(
            [re.escape(word) for word in printed] + [r"\S+"] + [re.escape(word) for word in after])
        check(re.search(pattern, text) is not None and f"{row['unit']} {row['setting']}" in svg,
              f"text: unit {row['unit']} of {AID} has the place and setting of the schedule in the report and the plan")
    section = plain(re.sub(r"<[^>]*>", " ", open(path("near.svg"), encoding="utf-8").read()))
    meht = re.search(r"MEHT ([0-9.]+) m", section)
    check(meht is not None and f"= {meht.group(1)} m" in text,
          f"text: the eye height of the section, {meht and meht.group(1)} m, is that of the report")
    document = load("check.json")
    check(document["schema"] == 2 and len(document["projects"]) == 1, "text: `check` prints one project in schema 2")
    outcomes = document["projects"][0]
    for verdict, count in outcomes["counts"].items():
        told = sum(one["verdict"] == verdict for one in outcomes["outcomes"])
        check(told == count and re.search(rf"\b{count}\b", text) is not None,
              f"text: the report counts {count} outcomes as `check` does: {verdict.replace('-', ' ')}")
    margins = {}
    for outcome in outcomes["outcomes"]:
        if outcome["elementPath"].endswith(AID) and outcome["verdict"] == "met" and outcome["margin"] is not None:
            margins.setdefault(plain(outcome["title"]), []).append(outcome["margin"])
    even = plain(run("pdftotext", path("report.pdf"), "-").stdout)
    other = [title for title, least in margins.items() if not stands(title, min(least), even)]
    check(len(margins) >= 20 and len(other) <= 0.1 * len(margins),
          f"text: {len(margins) - len(other)} of {len(margins)} margins that `check` prints for {AID} stand beside it in the report {other or ''}".rstrip())
    site = load("site.json")
    surface = site["obstacleSurface"]
    minutes = surface["slopeDeg"] * 60
    angle = f"{int(minutes // 60)}\u00b0{minutes % 60:04.1f}'"
    check(angle in text and angle in section, f"text: the surface slope that `site` prints, {angle}, stands in report and section")


def stands(title, least, text):
    """Returns whether the line of a rule says the least margin of the aid, rounded to as many decimals as are printed."""
    line = re.search(rf"{re.escape(title)} (?:(?! met: ).){{0,60}}? met: [^\[]*?{re.escape(AID)}(?: \(\d+\))? (\d+(?:\.(\d+))?)", text)
    return line is not None and abs(float(line.group(1)) - least) <= 0.5000001 * 10 ** -len(line.group(2) or "")


def main():
    for name, words in DOCUMENTS.items():
        look(name, words)
    check(re.search(r"Page size:\s+1683\.\d+ x 1190\.\d+", run("pdfinfo", path("large.pdf")).stdout) is not None,
          "text: large.pdf is a sheet of A2 on its side")
    same_numbers(text_of("report.pdf"))
    versions = load("versions.json")
    check(isinstance(versions, dict) and len(json.dumps(versions)) > 500, "text: the comparison of versions is JSON with content")


main()
finish()
