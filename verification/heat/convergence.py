"""How far each twin's result moves with its mesh: the table in convergence.csv.

usage: convergence.py OUT      underside, top and core of the bare 12 mm bar after 60 and 600 s on four meshes of each twin
"""
import sys
import tempfile
import numpy as np
import calculix_twin
import model as m
import scipy_twin

CASE = "bar12-bare"
TIMES = np.array([60.0, 600.0])


def by_scipy(case, nr, na):
    times, places, _ = scipy_twin.solve(case, nr, na, 1e-7, 60)
    return places[np.searchsorted(times, TIMES - 1e-6)]


def by_calculix(case, nr, na):
    with tempfile.TemporaryDirectory() as folder:
        solve = calculix_twin.Solve(case, na, nr, folder)
        solve.settle()
        return solve.extrapolated(TIMES)


def main(out):
    case = next(c for c in m.rows(m.os.path.join(m.os.path.dirname(m.os.path.abspath(__file__)), "cases.csv")) if c["id"] == CASE)
    case["seconds"] = "600"
    with open(out, "w", encoding="utf-8") as f:
        f.write(f"# convergence.py: {CASE}; cells over the radius and over half the round; SciPy {scipy_twin.scipy.__version__}, "
                f"CalculiX {calculix_twin.version()}, time step error of the latter taken out\n")
        f.write("twin,rings,sectors,seconds,underside_C,top_C,core_C\n")
        for name, solve, meshes in (("scipy", by_scipy, ((12, 30), (24, 60), (36, 90), (48, 120))),
                                    ("calculix", by_calculix, ((5, 12), (10, 24), (15, 36), (20, 48)))):
            for nr, na in meshes:
                for t, p in zip(TIMES, solve(case, nr, na)):
                    f.write(f"{name},{nr},{na},{t:g},{p[0]:.3f},{p[1]:.3f},{p[2]:.3f}\n")
                    f.flush()


if __name__ == "__main__":
    main(sys.argv[1])
