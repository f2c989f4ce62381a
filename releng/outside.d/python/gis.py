"""Maps, read by GDAL: GeoJSON, KML and GeoPackage hold the same units and surfaces as the schedule and the commands."""

import json
import math
import os
import subprocess
import sys

from lines import check, finish, schedule

FOLDER = sys.argv[1]
AID = "PAPI 09"
PLACE_M = 0.001
HEIGHT_M = 0.001


def features(name):
    """What GDAL reads: all layers of a file, in WGS 84."""
    path = os.path.join(FOLDER, name)
    told = subprocess.run(["ogrinfo", "-ro", "-al", "-so", path], capture_output=True, text=True, check=False)
    if not check(told.returncode == 0 and "ERROR" not in told.stderr, f"gis: {name} is opened by GDAL {told.stderr.strip()[:120]}"):
        return []
    layers = [line.split(": ", 1)[1] for line in told.stdout.splitlines() if line.startswith("Layer name: ")]
    found = []
    for layer in layers:
        done = subprocess.run(["ogr2ogr", "-f", "GeoJSON", "-lco", "COORDINATE_PRECISION=10", "-t_srs", "EPSG:4326", "/vsistdout/", path,
                               layer], capture_output=True, text=True, check=True)
        found += [one for one in json.loads(done.stdout)["features"] if one["geometry"]]
    return found


def distance(one, other):
    """Metres between two near places, longitude and latitude in degrees."""
    east = math.radians(one[0] - other[0]) * 6378137 * math.cos(math.radians(one[1]))
    return math.hypot(east, math.radians(one[1] - other[1]) * 6367000)


def kinds(name, found):
    names = sorted({feature["properties"].get("kind") or "" for feature in found})
    check({"unit", "surface", "beam", "runway", "threshold", "obstacle"} <= set(names), f"gis: {name} holds {', '.join(names)}")


def units(found, name):
    return [one for one in found if one["properties"].get("kind") == "unit" and one["properties"].get("aidName") == name]


def compare_units(name, found):
    rows = schedule(FOLDER)
    total = 0
    worst = high = turn = 0.0
    for row in rows:
        near = [one for one in units(found, row["indicator"]) if one["properties"]["label"] == row["unit"]]
        if len(near) != 1:
            check(False, f"gis: {name} has unit {row['unit']} of {row['indicator']} {len(near)} times")
            continue
        place = near[0]["geometry"]["coordinates"]
        total += 1
        worst = max(worst, distance(place, (float(row["longitude deg"]), float(row["latitude deg"]))))
        high = max(high, abs(place[2] - float(row["lens elevation m"])))
        turn = max(turn, abs(float(near[0]["properties"]["settingDeg"]) - float(row["setting deg"])))
    check(total == len(rows) and worst <= PLACE_M and high <= HEIGHT_M and turn <= 1e-5,
          f"gis: {name}: {total} units stand where the schedule has them, within {worst * 1000:.2f} mm, {high * 1000:.2f} mm in height")


def compare_surface(name, found):
    """The surface of the demo's first aid against the slope and lengths that `site` prints for the same runway end."""
    with open(os.path.join(FOLDER, "site.json"), encoding="utf-8") as file:
        expected = json.load(file)["obstacleSurface"]
    surfaces = [one for one in found if one["properties"].get("kind") == "surface" and one["properties"].get("aidName") == AID]
    if not check(len(surfaces) == 1, f"gis: {name} has the obstacle surface of {AID} once"):
        return
    given = surfaces[0]["properties"]
    same = all(abs(float(given[key]) - expected[key]) < 1e-6 for key in ("slopeDeg", "startAlongM", "innerEdgeM", "lengthM"))
    heights = [corner[2] for corner in surfaces[0]["geometry"]["coordinates"][0]]
    rise = max(heights) - min(heights)
    rises = expected["lengthM"] * math.tan(math.radians(expected["slopeDeg"]))
    check(same and abs(rise - rises) <= HEIGHT_M, f"gis: {name}: the surface rises by {rise:.3f} m over {expected['lengthM']:.0f} m as "
          f"`site` prints")


def compare_margins():
    """The cells of the raster: the least is the margin that the map has of the surface, and all others have no number."""
    path = os.path.join(FOLDER, "margins.tif")
    told = subprocess.run(["gdalinfo", "--config", "GDAL_PAM_ENABLED", "NO", "-json", "-stats", path], capture_output=True, text=True, check=False)
    if not check(told.returncode == 0 and "ERROR" not in told.stderr, f"gis: margins.tif is opened by GDAL {told.stderr.strip()[:120]}"):
        return
    band = json.loads(told.stdout)["bands"][0]
    with open(os.path.join(FOLDER, "map.geojson"), encoding="utf-8") as file:
        surface = next(one["properties"] for one in json.load(file)["features"]
                       if one["properties"].get("kind") == "surface" and one["properties"].get("aidName") == AID)
    known = float(band["metadata"][""]["STATISTICS_VALID_PERCENT"])
    check(band["type"] == "Float32" and str(band["noDataValue"]).lower() == "nan" and 0 < known < 1
          and abs(band["minimum"] - surface["marginM"]) <= HEIGHT_M,
          f"gis: margins.tif has a number in {known} of a hundred cells, the least {band['minimum']:.3f} m")


def main():
    maps = {name: features(name) for name in ("map.geojson", "map.kml", "map.gpkg")}
    for name, found in maps.items():
        if found:
            kinds(name, found)
            compare_units(name, found)
            compare_surface(name, found)
    compare_margins()
    told = subprocess.run(["xmllint", "--nonet", "--noout", os.path.join(FOLDER, "map.kml")], capture_output=True, text=True, check=False)
    check(told.returncode == 0, "gis: map.kml is well-formed")
    counts = {name: len(found) for name, found in maps.items()}
    check(len(set(counts.values())) == 1, f"gis: both maps hold as many features: {counts}")


main()
finish()
