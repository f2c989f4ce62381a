"""Drawing exchange files, read by ezdxf: sound, on layers, and true to the coordinates, heights and settings of the schedule."""

import math
import os
import subprocess
import sys

import ezdxf

from lines import check, finish, schedule

FOLDER = sys.argv[1]
AID = "PAPI 09"
LAYERS = {
    "plan": {"TEXT", "DIMENSION", "PAVEMENT", "UNIT", "TAXIWAY"},
    "grid-plan": {"TEXT", "DIMENSION", "PAVEMENT", "UNIT", "TAXIWAY"},
    "detail": {"TEXT", "DIMENSION", "PAVEMENT", "UNIT"},
    "surface": {"TEXT", "SURFACE", "OBSTACLE", "UNIT"},
    "grid-surface": {"TEXT", "SURFACE", "OBSTACLE", "UNIT"},
    "section": {"TEXT", "CORRIDOR", "UNIT", "SURFACE", "GROUND", "OBSTACLE", "WHEELS"},
    "near": {"TEXT", "CORRIDOR", "UNIT", "GROUND", "WHEELS"},
    "pilot": {"SKY", "LAND", "PAVEMENT", "MARKING", "LIGHT_RED"},
    "signals": {"TEXT", "LIGHT_RED", "LIGHT_WHITE"},
}
ALPHABETS = "Aeródromo de Évora, Übung Ω"
# Tops of the power line and the mast as the demonstration enters them, the obstacles within the surface of 09.
TOPS = [118.0, 148.4]
TITLES = ["Harrow Vale", "R. Tamsin", "2026-06-01"]


def of_aid(name):
    return [row for row in schedule(FOLDER, name) if row["indicator"] == AID]


def corners(polyline):
    return [(x, y) for x, y in polyline.get_points("xy")]


def units(document):
    """Places of the blocks of the units."""
    return [(insert.dxf.insert.x, insert.dxf.insert.y) for insert in document.modelspace().query('INSERT[name=="LIGHT_UNIT"]')]


def attributes(name, document, rows):
    """Each block carries aid, unit, setting and elevation, and stands at that elevation."""
    found = {}
    for insert in document.modelspace().query('INSERT[name=="LIGHT_UNIT"]'):
        tags = {attribute.dxf.tag: attribute.dxf.text for attribute in insert.attribs}
        found[tags.get("UNIT")] = (tags.get("AID"), tags.get("SETTING"), tags.get("ELEVATION"), insert.dxf.insert.z)
    for row in rows:
        aid, setting, elevation, height = found.get(row["unit"], ("", "", "0", 0))
        level = float(row["lens elevation m"])
        check(aid == AID and setting == row["setting"] and abs(float(elevation) - level) <= 0.001 and abs(height - level) <= 0.001,
              f"dxf: {name}: unit {row['unit']} is a block of {AID} set to {row['setting']} at {level:.3f} m")


def furthest(places, others):
    """The largest distance from a place to the nearest of the others."""
    return max(min(math.hypot(x - u, y - v) for u, v in others) for x, y in places) if places and others else math.inf


def compare(name, document, places, tolerance, what):
    found = units(document)
    check(len(found) == len(places) and furthest(places, found) <= tolerance,
          f"dxf: {name}: {len(found)} units stand where {what} has them, within {furthest(places, found) * 1000:.2f} mm")


def dimensioned(name, document, rows):
    length = abs(float(rows[0]["chainage from threshold m"]))
    measured = [dimension.dxf.actual_measurement for dimension in document.modelspace().query("DIMENSION")]
    near = min((abs(one - length) for one in measured), default=math.inf)
    check(near <= 0.001, f"dxf: {name}: a dimension measures {length:.3f} m, within {near * 1000:.2f} mm, of {len(measured)}")


def looked_at(name, document):
    """The layout of paper holds the title block and a window whose scale is the one that the title block states."""
    layout = document.layout("Sheet")
    texts = [text.dxf.text for text in layout.query("TEXT")]
    missing = [title for title in TITLES if not any(title in text for text in texts)]
    check(not missing, f"dxf: {name}: the title block in the layout says {', '.join(TITLES)} {missing or ''}".rstrip())
    windows = [window for window in layout.query("VIEWPORT") if window.dxf.id > 1]
    stated = next((int(text[2:]) for text in texts if text.startswith("1:") and text[2:].isdigit()), None)
    shown = windows[0].dxf.view_height / windows[0].dxf.height * 1000 if len(windows) == 1 else 0
    check(len(windows) == 1 and (stated is None or abs(shown - stated) <= 0.001 * stated),
          f"dxf: {name}: one viewport, 1:{shown:.0f} across" + ("" if stated is None else f", as stated 1:{stated}"))


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
            check(False, f"dxf: {name} cannot be read: {fault}")
            continue
        documents[name] = document
        audit = document.audit()
        check(document.dxfversion == "AC1021" and not audit.has_errors and not audit.has_fixes,
              f"dxf: {name}: release 2007, audited without errors {[str(error) for error in audit.errors][:2] or ''}".rstrip())
        used = {entity.dxf.layer for entity in document.modelspace()}
        declared = {layer.dxf.name for layer in document.layers}
        check(layers <= used <= declared, f"dxf: {name}: layers {', '.join(sorted(used))} {sorted(layers - used) or ''}".rstrip())
        looked_at(name, document)
    if not all(name in documents for name in ("plan", "grid-plan", "grid-surface")):
        return
    rows = of_aid("grid-schedule.csv")
    grid = [(float(row["east m"]), float(row["north m"])) for row in rows]
    compare("grid-plan", documents["grid-plan"], grid, 0.001, "the schedule on the grid")
    dots = [(dot.dxf.center.x, dot.dxf.center.y) for dot in documents["grid-surface"].modelspace().query('CIRCLE[layer=="UNIT"]')]
    check(len(dots) >= 4 and furthest(grid, dots) <= 0.001,
          f"dxf: grid-surface: the units stand where the schedule has them, within {furthest(grid, dots) * 1000:.2f} mm")
    attributes("grid-plan", documents["grid-plan"], rows)
    tops = sorted(round(point.dxf.location.z, 3) for point in documents["grid-surface"].modelspace().query('POINT[layer=="OBSTACLE"]'))
    check(tops == TOPS, f"dxf: grid-surface: the obstacles within the surface stand at their surveyed tops, {tops} m")
    letters = [text.dxf.text for text in documents["grid-plan"].layout("Sheet").query("TEXT")]
    check(ALPHABETS in letters, f"dxf: grid-plan: the title block says {ALPHABETS}, letter by letter")
    rows = of_aid("schedule.csv")
    compare("plan", documents["plan"], east_north(rows), 0.001, "the schedule in latitude and longitude, by PROJ,")
    dimensioned("plan", documents["plan"], rows)


main()
finish()
