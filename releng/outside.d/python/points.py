"""Points for a total station, PNEZD and LandXML: the same in both, and where PROJ puts the latitudes and longitudes of the schedule."""

import csv
import os
import subprocess
import sys
import xml.etree.ElementTree as tree

from lines import check, finish, schedule

FOLDER = sys.argv[1]
SPACE = "{http://www.landxml.org/schema/LandXML-1.2}"


def by_proj(rows):
    places = "\n".join(f"{row['longitude deg']} {row['latitude deg']}" for row in rows)
    done = subprocess.run(["gdaltransform", "-s_srs", "+proj=longlat +datum=WGS84", "-t_srs", "+proj=utm +zone=29 +datum=WGS84 +units=m",
                           "-output_xy"], input=places, capture_output=True, text=True, check=True)
    return [tuple(float(word) for word in line.split()[:2]) for line in done.stdout.splitlines() if line.strip()]


def main():
    rows = schedule(FOLDER, "grid-schedule.csv")
    with open(os.path.join(FOLDER, "points.txt"), encoding="ascii", newline="") as file:
        points = list(csv.reader(file))
    check(len(points) == len(rows) and all(len(point) == 5 for point in points), f"points: {len(points)} lines of PNEZD, as many as units")
    off = max(max(abs(float(point[1]) - north), abs(float(point[2]) - east)) for point, (east, north) in zip(points, by_proj(rows)))
    check(off <= 0.002, f"points: northing and easting are where PROJ has latitude and longitude, within {off * 1000:.1f} mm")
    check(all(point[3] == row["lens elevation m"] and row["unit"] in point[4] and row["indicator"].replace(",", " ") in point[4]
              for point, row in zip(points, rows)), "points: elevation, indicator and unit are those of the schedule")
    document = tree.parse(os.path.join(FOLDER, "points.xml")).getroot()
    land = [point.text.split() for point in document.iter(SPACE + "CgPoint")]
    check(land == [point[1:4] for point in points], f"points: LandXML holds the same {len(land)} points to the millimetre")
    check(document.find(SPACE + "CoordinateSystem").get("epsgCode") == "32629" and document.find(SPACE + "Application").get("version"),
          "points: LandXML names grid and program")


main()
finish()
