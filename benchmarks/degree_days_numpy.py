#!/usr/bin/python3
"""The degree days of ten million days in NumPy, for comparison with alternating.cs. Needs Debian's python3-numpy.

Prints nanoseconds a pair, the best of several runs, with one thread (none of these functions uses more).
    /usr/bin/python3 benchmarks/degree_days_numpy.py
With --serve it times the count named on each line of its input, so that alternating.cs can take turns with it.
"""

import sys
import time

import numpy as np

PAIRS = 10_000_000
RUNS = 5
LOWER, UPPER = 10.0, 30.0

noise = np.random.default_rng(1991)
day = np.arange(PAIRS)
mean = 12 - 12 * np.cos(2 * np.pi * (day - 20) / 365.25) + 8 * (noise.random(PAIRS) - 0.5)
half = 3 + 6 * noise.random(PAIRS)
minima, maxima = mean - half, mean + half
del day, mean, half


def clamped():
    return (np.clip(minima, LOWER, UPPER) + np.clip(maxima, LOWER, UPPER)) / 2 - LOWER


def sine_above(threshold):
    middle = (minima + maxima) / 2
    amplitude = (maxima - minima) / 2
    angle = np.arcsin(np.clip((threshold - middle) / amplitude, -1, 1))
    return ((middle - threshold) * (np.pi / 2 - angle) + amplitude * np.cos(angle)) / np.pi


def triangle_above(threshold):
    middle = (minima + maxima) / 2
    cut = (maxima - threshold) ** 2 / (2 * (maxima - minima))
    return np.where(threshold >= maxima, 0, np.where(threshold <= minima, middle - threshold, cut))


def four_case():
    middle = (minima + maxima) / 2
    high = (maxima - LOWER) / 2 - (LOWER - minima) / 4
    low = (maxima - LOWER) / 4
    return np.where(maxima <= LOWER, 0, np.where(minima >= LOWER, middle - LOWER, np.where(middle >= LOWER, high, low)))


COUNTS = {
    "clamped average": clamped,
    "four cases": four_case,
    "triangle, both thresholds": lambda: triangle_above(LOWER) - triangle_above(UPPER),
    "sine, lower threshold": lambda: sine_above(LOWER),
    "sine, both thresholds": lambda: sine_above(LOWER) - sine_above(UPPER),
}


def timed(count):
    start = time.perf_counter()
    count()
    return (time.perf_counter() - start) / PAIRS * 1e9


if "--serve" in sys.argv:
    for line in sys.stdin:
        print(timed(COUNTS[line.strip()]), flush=True)
else:
    print(f"NumPy {np.__version__}, ns a pair, best of {RUNS}")
    for name, count in COUNTS.items():
        print(f"{name:26} {min(timed(count) for _ in range(RUNS)):8.2f}")
