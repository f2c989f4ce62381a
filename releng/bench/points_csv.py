"""Writes N obstacles as CSV around the demonstration: points_csv.py N FILE."""
import random
import sys

count, name = int(sys.argv[1]), sys.argv[2]
numbers = random.Random(20260601).random
with open(name, "w") as out:
    out.write("id,latitudeDeg,longitudeDeg,topElevationM,horizontalAccuracyM,verticalAccuracyM\n")
    for i in range(count):
        out.write(f"P{i:07d},{47.2 + 0.2 * numbers():.8f},{-12.05 + 0.3 * numbers():.8f},{60 + 20 * numbers():.2f},0.4,0.25\n")
