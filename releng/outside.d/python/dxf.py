"""Drawing exchange files, read by ezdxf: sound, on layers, and true to the coordinates of the setting-out schedule."""

import math
import os
import subprocess
import sys

import ezdxf

from lines import check, finish, schedule

FOLDER = sys.argv[1]
AID = "PAPI 09"
LAYERS = {
    "plan": {"SHEET", "TEXT", "DIMENSION", "PAVEMENT", "UNIT", "TAXIWAY"},
    "grid-plan": {"SHEET", "TEXT", "DIMENSION", "PAVEMENT", "UNIT", "TAXIWAY"},
    "detail": {"SHEET", "TEXT", "DIMENSION", "PAVEMENT", "UNIT"},
    "surface": {"SHEET", "TEXT", "SURFACE", "OBSTACLE", "UNIT"},
    "grid-surface": {"SHEET", "TEXT", "SURFACE", "OBSTACLE", "UNIT"},
    "section": {"SHEET", "TEXT", "CORRIDOR", "UNIT", "SURFACE", "GROUND", "OBSTACLE", "WHEELS"},
    "near": {"SHEET", "TEXT", "CORRIDOR", "UNIT", "GROUND", "WHEELS"},
    "pilot": {"SHEET", "SKY", "LAND", "PAVEMENT", "MARKING", "LIGHT_RED"},
    "signals": {"SHEET", "TEXT", "LIGHT_RED", "LIGHT_WHITE"},
}
TITLES = ["Harrow Vale", "R. Tamsin", "2026-06-01"]


def of_aid(name):
    return [row for row in schedule(FOLDER, name) if row["indicator"] == AID]


def corners(polyline):
    return [(vertex.dxf.location.x, vertex.dxf.location.y) for vertex in polyline.vertices]


def units(document):
    """Middles of the boxes of the units: closed, four corners, on their layer."""
    middles = []
    for polyline in document.modelspace().query('POLYLINE[layer=="UNIT"]'):
        points = corners(polyline)
        if polyline.is_closed and len(points) == 4:
            middles.append((sum(x for x, _ in points) / 4, sum(y for _, y in points) / 4))
    return middles


def furthest(places, others):
    """The largest distance from a place to the nearest of the others."""
    return max(min(math.hypot(x - u, y - v) for u, v in others) for x, y in places) if places and others else math.inf


def compare(name, document, places, tolerance, what):
    found = units(document)
    check(len(found) == len(places) and furthest(places, found) <= tolerance,
          f"dxf: {name}: {len(found)} units stand where {what} has them, within {furthest(places, found) * 1000:.2f} mm")


def dimensioned(name, document, rows):
    length = abs(float(rows[0]["chainage from threshold m"]))
    lines = [corners(line) for line in document.modelspace().query('POLYLINE[layer=="DIMENSION"]')]
    near = min((abs(math.dist(line[0], line[1]) - length) for line in lines if len(line) == 2), default=math.inf)
    texts = [text.dxf.text for text in document.modelspace().query("TEXT")]
    check(near <= 0.001 and f"{length:.2f} m" in texts,
          f"dxf: {name}: a dimension line is as long as its text says, {length:.2f} m, within {near * 1000:.2f} mm")


def east_north(rows):
    """East and north of the reference point by PROJ: azimuthal equidistant about it, which keeps the geodesics from it."""
    places = "\n".join(f"{row['longitude deg']} {row['latitude deg']}" for row in rows)
    target = "+proj=aeqd +lat_0=47.3 +lon_0=-11.9 +datum=WGS84 +units=m"
    done = subprocess.run(["gdaltransform", "-s_srs", "+proj=longlat +datum=WGS84", "-t_srs", target, "-output_xy"], input=places,
                          capture_output=True, text=True, check=True)
    return [tuple(float(word) for word in line.split()[:2]) for line in done.stdout.splitlines() if line.strip()]


def main():
    documents = {}
    for name, layers in LAYERS.items():
        try:
            document = ezdxf.readfile(os.path.join(FOLDER, name + ".dxf"))
        except (OSError, ezdxf.DXFError) as fault:
            check(False, f"dxf: {name} can not be read: {fault}")
            continue
        documents[name] = document
        audit = document.audit()
        check(document.dxfversion == "AC1009" and not audit.has_errors and not audit.has_fixes,
              f"dxf: {name}: release 12, audited without errors {[str(error) for error in audit.errors][:2] or ''}".rstrip())
        used = {entity.dxf.layer for entity in document.modelspace()}
        declared = {layer.dxf.name for layer in document.layers}
        check(layers <= used <= declared, f"dxf: {name}: layers {', '.join(sorted(used))} {sorted(layers - used) or ''}".rstrip())
        texts = " ".join(text.dxf.text for text in document.modelspace().query('TEXT[layer=="SHEET"]'))
        check(all(title in texts for title in TITLES), f"dxf: {name}: the title block says {', '.join(TITLES)}")
    if not all(name in documents for name in ("plan", "grid-plan", "grid-surface")):
        return
    rows = of_aid("grid-schedule.csv")
    grid = [(float(row["east m"]), float(row["north m"])) for row in rows]
    compare("grid-plan", documents["grid-plan"], grid, 0.001, "the schedule on the grid")
    dots = [(dot.dxf.center.x, dot.dxf.center.y) for dot in documents["grid-surface"].modelspace().query('CIRCLE[layer=="UNIT"]')]
    check(len(dots) >= 4 and furthest(grid, dots) <= 0.001,
          f"dxf: grid-surface: the units stand where the schedule has them, within {furthest(grid, dots) * 1000:.2f} mm")
    rows = of_aid("schedule.csv")
    compare("plan", documents["plan"], east_north(rows), 0.001, "the schedule in latitude and longitude, by PROJ,")
    dimensioned("plan", documents["plan"], rows)


main()
finish()
