"""How far published tempering curves of one grade lie apart: each sheet against the mean of the others.

    python3 sheets.py CURVES_DIR      (the folder of tempering-curves.csv and tempering-grades.csv)

The same interpolation as the program's: straight lines in the Hollomon-Jaffe parameter between points at most GAP apart.
"""
import collections
import csv
import os
import sys

import numpy as np

GAP = 140.0  # K between the points of a sheet that are joined


def read(folder):
    constants = {r["grade"]: float(r["exchange_constant"]) for r in rows(folder, "tempering-grades.csv")}
    sheets = collections.defaultdict(list)
    for r in rows(folder, "tempering-curves.csv"):
        if r["temperature_c"]:
            t = float(r["hold_h"]) * float(r["tempers"])
            k = float(r["temperature_c"]) + 273.15
            sheets[r["grade"], r["sheet"]].append((k, t, float(r["hrc"])))
    return constants, {k: sorted(v) for k, v in sheets.items()}


def rows(folder, name):
    with open(os.path.join(folder, name), newline="") as f:
        return list(csv.DictReader(line for line in f if not line.startswith("#")))


def at(sheet, c, P):
    for (k0, t0, h0), (k1, t1, h1) in zip(sheet, sheet[1:]):
        p0, p1 = k0 * (c + np.log10(t0)), k1 * (c + np.log10(t1))
        if p0 <= P <= p1 and k1 - k0 <= GAP:
            return h0 + (h1 - h0) * (P - p0) / (p1 - p0)
    return None


def main():
    constants, sheets = read(sys.argv[1])
    everything, by_grade = [], collections.defaultdict(list)
    for (grade, name), sheet in sheets.items():
        others = [s for (g, m), s in sheets.items() if g == grade and m != name and m.split()[1] != name.split()[1]]
        errors = []
        for k, t, h in sheet:
            P = k * (constants[grade] + np.log10(t))
            v = [x for x in (at(s, constants[grade], P) for s in others) if x is not None]
            if v:
                errors.append((h - np.mean(v)) / np.sqrt(1 + 1 / len(v)))
        if errors:
            everything.append(np.mean(np.square(errors)))
            by_grade[grade].append(np.mean(np.square(errors)))
            print(f"{name:28s} n {len(errors):2d}  bias {np.mean(errors):+5.2f}  RMS {np.sqrt(np.mean(np.square(errors))):4.2f}")
    print("\nby grade", {g: round(float(np.sqrt(np.mean(v))), 2) for g, v in by_grade.items()})
    print(f"mean over sheets {np.sqrt(np.mean(everything)):.2f}, median {np.sqrt(np.median(everything)):.2f}")


if __name__ == "__main__":
    main()
