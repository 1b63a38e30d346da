"""Results made anew against those kept, and the two twins against each other.

usage: compare.py FRESH KEPT

Anew: within 0.05 K. Twin against twin: within 0.5 K from the first minute on, or 0.5 % in time (a bath: 1.5 % in time, because
there it falls by up to hundreds of kelvin a second). A kept result without a fresh one, or a case with none, is a failure.
"""
import os
import sys
import numpy as np
import model as m

ANEW, TWIN_K, TWIN_TIME, BATH_TIME = 0.05, 0.5, 0.005, 0.015


def read(path):
    if not os.path.exists(path):
        return None
    table = m.rows(path)
    return np.array([[float(v) for v in row.values()] for row in table])


def apart(a, b):
    """Greatest difference [K], and the greatest in time where it shows, as share of the time gone by."""
    kelvin = np.abs(a[1:, 1:] - b[1:, 1:])
    slope = np.abs(np.gradient(b[:, 1:], b[:, 0], axis=0))[1:]
    shift = np.where(kelvin < 0.15, 0, kelvin / np.maximum(slope, 1e-9) / b[1:, :1])
    return kelvin.max(), shift.max(), (kelvin < TWIN_K) | (shift < TWIN_TIME), shift


def main(fresh, kept):
    bad = 0
    cases = m.rows(os.path.join(os.path.dirname(os.path.abspath(__file__)), "cases.csv"))
    for case in cases:
        twins = {t: read(os.path.join(fresh, f"{case['id']}-{t}.csv")) for t in ("scipy", "calculix")}
        for twin, new in twins.items():
            old = read(os.path.join(kept, f"{case['id']}-{twin}.csv"))
            if new is None or old is None:
                print(f"FAIL {case['id']} {twin}: {'not solved anew' if new is None else 'no result kept'}")
                bad += 1
                continue
            off = np.abs(new - old).max() if new.shape == old.shape else np.inf
            print(f"{'ok  ' if off <= ANEW else 'FAIL'} {case['id']} {twin}: {off:.3f} K from what is kept")
            bad += off > ANEW
        if all(t is not None for t in twins.values()):
            kelvin, time, near, shift = apart(twins["calculix"], twins["scipy"])
            good = shift.max() < BATH_TIME if case["kind"] == "bath" else near.all()
            print(f"{'ok  ' if good else 'FAIL'} {case['id']}: CalculiX and SciPy {kelvin:.3f} K, {time:.2%} in time apart")
            bad += not good
    print(f"{bad} of the comparisons failed" if bad else "all twins agree")
    return 1 if bad else 0


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
