"""CalculiX on the program's own mesh of a bar on a plate: time of one run with its films known, and what it came to.

usage: same_mesh_ccx.py CASE SECTORS RINGS SECONDS      nodes, steps, processor s of the process, ccx's own s, then the readings

Films come from runs before, which are not counted, nor are those that would take out the error of backward Euler.
"""
import sys
import tempfile
import numpy as np
import calculix_twin as twin
import model as m
from same_mesh import TIMES


def main(name, sectors, rings, seconds):
    case = next(c for c in m.rows(m.os.path.join(m.os.path.dirname(m.os.path.abspath(__file__)), "cases.csv")) if c["id"] == name)
    case["seconds"] = seconds
    with tempfile.TemporaryDirectory() as folder:
        solve = twin.Solve(case, int(sectors) - 1, int(rings) - 1, folder)
        solve.settle(3)
        t, nodes = solve.T
        places = np.array([np.interp(TIMES, t, nodes[n]) for n in solve.part.watch]).T - m.ZERO
        steps = len(t) - 1
        own = solve.own if solve.own is not None else float("nan")
        print(f"{len(solve.part.xyz) // 2},{steps},{solve.took:.3f},{own:.3f}," + ",".join(f"{v:.4f}" for v in places.ravel()))


if __name__ == "__main__":
    main(*sys.argv[1:])
