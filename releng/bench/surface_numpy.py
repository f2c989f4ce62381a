"""The arithmetic of SurfaceSweep in NumPy, on the same numbers."""
import math
import sys
import time

import numpy as np

START, HEIGHT, INNER, DIVERGENCE, LENGTH, SLOPE, TURN = -60.0, 0.0, 300.0, 0.15, 15000.0, 1.93, 2.0


def sweep(along, right, height):
    cos, sin, rise = math.cos(math.radians(TURN)), math.sin(math.radians(TURN)), math.tan(math.radians(SLOPE))
    back = START - along
    outward = back * cos - right * sin
    offset = np.abs(back * sin + right * cos)
    inside = (outward >= 0) & (outward <= LENGTH) & (offset <= INNER / 2 + outward * DIVERGENCE)
    excess = np.where(inside, height - HEIGHT - outward * rise, np.nan)
    return int(np.nanargmax(excess))


data = np.fromfile(sys.argv[1], dtype="<f8")
count = len(data) // 3
along, right, height = data[:count], data[count:2 * count], data[2 * count:]
best = math.inf
for _ in range(5):
    begun = time.perf_counter()
    worst = sweep(along, right, height)
    best = min(best, time.perf_counter() - begun)
print(f"numpy {best:.4f} s")
print(f"worst {worst}")
