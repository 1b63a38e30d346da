"""SciPy twin: cell-centred finite volumes on its own mesh, temperature as unknown, variable-order BDF.

usage: scipy_twin.py [--mesh NR NA] [--rtol R] OUT CASE...
"""
import sys
import time
import numpy as np
import scipy
from scipy.integrate import solve_ivp, quad
from scipy.sparse import coo_matrix
import model as m


class Round:
    """Half section, cells in angle x radius; the wedge of air averaged over each cell by quadrature."""

    def __init__(self, case, nr, na):
        self.s = m.Surface(case)
        R = self.s.radius
        self.even = self.s.kind != "plate"
        na = 1 if self.even else na
        self.nr, self.na = nr, na
        edge_r = R * (1 - (1 - np.linspace(0, 1, nr + 1)) ** 1.3)
        u = np.linspace(0, 1, na + 1)
        edge_a = np.pi * (0.25 * u + 0.75 * u**2) if na > 1 else np.array([0, np.pi])
        self.da = np.diff(edge_a)
        self.a = (edge_a[1:] + edge_a[:-1]) / 2
        self.r = (edge_r[1:] + edge_r[:-1]) / 2
        self.dr = np.diff(edge_r)
        self.V = np.outer(self.da, (edge_r[1:] ** 2 - edge_r[:-1] ** 2) / 2)
        self.edge_r = edge_r
        self.R = R
        self.wedge = np.array([
            quad(self.s.gap_coefficient, lo, hi, epsabs=1e-10, epsrel=1e-10)[0] / (hi - lo)
            for lo, hi in zip(edge_a[:-1], edge_a[1:])]) if not self.even else np.zeros(1)
        self.ends = 2 * self.V / (m.number(case, "length") / 1000)

    def surface(self, T):
        """Surface temperature of the outermost cells: the flux through the half cell equals that at the surface."""
        return T[:, -1]

    def rhs(self, t, y):
        T = y.reshape(self.na, self.nr)
        k = m.conductivity(T)
        q = np.zeros_like(T)
        kf = (k[:, 1:] + k[:, :-1]) / 2
        flow = kf * (T[:, 1:] - T[:, :-1]) * np.outer(self.da, self.edge_r[1:-1] / (self.r[1:] - self.r[:-1]))
        q[:, :-1] += flow
        q[:, 1:] -= flow
        if self.na > 1:
            kf = (k[1:] + k[:-1]) / 2
            flow = kf * (T[1:] - T[:-1]) * (self.dr / self.r) / (self.a[1:] - self.a[:-1])[:, None]
            q[:-1] += flow
            q[1:] -= flow
        half = self.dr[-1] / 2
        Ts = T[:, -1].copy()
        for _ in range(4):  # surface temperature by fixed point: the half cell is thin
            Ts = T[:, -1] + half / m.conductivity(Ts) * self.s.round_flux(t, Ts, self.a, self.wedge)
        q[:, -1] += self.R * self.da * self.s.round_flux(t, Ts, self.a, self.wedge)
        if self.even:
            q += self.ends * self.s.even_flux(T)
        else:
            q += self.ends * self.s.around_flux(t, T, 0.5, 0.0)
        return (q / self.V / (m.RHO * m.specific_heat(T))).ravel()

    def pattern(self):
        n = self.na * self.nr
        i, j = [], []
        for a in range(self.na):
            for r in range(self.nr):
                here = a * self.nr + r
                for da, dr in ((0, 0), (0, 1), (0, -1), (1, 0), (-1, 0)):
                    if 0 <= a + da < self.na and 0 <= r + dr < self.nr:
                        i.append(here)
                        j.append((a + da) * self.nr + r + dr)
        return coo_matrix((np.ones(len(i)), (i, j)), shape=(n, n)).tocsc()

    def read(self, t, y):
        """underside, top, core: surface values extrapolated from the outermost cells."""
        T = y.reshape(self.na, self.nr)
        Ts = T[:, -1].copy()
        for _ in range(6):
            Ts = T[:, -1] + self.dr[-1] / 2 / m.conductivity(Ts) * self.s.round_flux(t, Ts, self.a, self.wedge)
        if self.even:
            return Ts[0], Ts[0], T[0, 0]
        # quadratic in the angle, level at both ends
        def end(first, second, da0, da1):
            return first - (second - first) * da0**2 / (da1**2 - da0**2)
        under = end(Ts[0], Ts[1], self.a[0], self.a[1])
        top = end(Ts[-1], Ts[-2], np.pi - self.a[-1], np.pi - self.a[-2])
        return under, top, T[:, 0].mean()


class Flat:
    """Half width x thickness."""

    def __init__(self, case, ny, nx):
        self.s = m.Surface(case)
        self.ny, self.nx = ny, nx
        self.t = self.s.size
        b = m.number(case, "width") / 2000
        u = np.linspace(0, 1, nx + 1)
        edge = b * (1 - (1 - u) ** 1.6)
        self.dx = np.diff(edge)
        self.x = (edge[1:] + edge[:-1]) / 2
        self.dy = self.t / ny
        self.V = np.outer(self.dx, np.full(ny, self.dy))
        self.ends = 2 * self.V / (m.number(case, "length") / 1000)

    def face(self, t, T, half, side):
        Ts = T.copy()
        for _ in range(4):
            Ts = T + half / m.conductivity(Ts) * self.s.flat_flux(t, Ts, side)
        return Ts

    def rhs(self, t, y):
        T = y.reshape(self.nx, self.ny)
        k = m.conductivity(T)
        q = np.zeros_like(T)
        flow = (k[:, 1:] + k[:, :-1]) / 2 * (T[:, 1:] - T[:, :-1]) * self.dx[:, None] / self.dy
        q[:, :-1] += flow
        q[:, 1:] -= flow
        flow = (k[1:] + k[:-1]) / 2 * (T[1:] - T[:-1]) * self.dy / (self.x[1:] - self.x[:-1])[:, None]
        q[:-1] += flow
        q[1:] -= flow
        q[:, 0] += self.dx * self.s.flat_flux(t, self.face(t, T[:, 0], self.dy / 2, "underside"), "underside")
        q[:, -1] += self.dx * self.s.flat_flux(t, self.face(t, T[:, -1], self.dy / 2, "top"), "top")
        q[-1] += self.dy * self.s.flat_flux(t, self.face(t, T[-1], self.dx[-1] / 2, "side"), "side")
        q += self.ends * self.s.flat_flux(t, T, "side")
        return (q / self.V / (m.RHO * m.specific_heat(T))).ravel()

    def pattern(self):
        n = self.nx * self.ny
        i, j = [], []
        for a in range(self.nx):
            for r in range(self.ny):
                for da, dr in ((0, 0), (0, 1), (0, -1), (1, 0), (-1, 0)):
                    if 0 <= a + da < self.nx and 0 <= r + dr < self.ny:
                        i.append(a * self.ny + r)
                        j.append((a + da) * self.ny + r + dr)
        return coo_matrix((np.ones(len(i)), (i, j)), shape=(n, n)).tocsc()

    def read(self, t, y):
        T = y.reshape(self.nx, self.ny)
        return (self.face(t, T[:1, 0], self.dy / 2, "underside")[0], self.face(t, T[:1, -1], self.dy / 2, "top")[0],
                T[0, self.ny // 2])


def build(case, nr, na):
    return Round(case, nr, na) if case["shape"] == "round" else Flat(case, nr, na)


def solve(case, nr=24, na=60, rtol=1e-7, every=None):
    body = build(case, nr, na)
    seconds = m.number(case, "seconds")
    every = every or (60 if seconds >= 600 else seconds / 20)
    times = np.arange(0, seconds + every / 2, every)
    y0 = np.full(body.V.size, m.number(case, "start") + m.ZERO)
    begun = time.process_time()
    out = solve_ivp(body.rhs, (0, seconds), y0, method="BDF", rtol=rtol, atol=rtol * 100, t_eval=times,
                    jac_sparsity=body.pattern(), max_step=seconds / 20)
    took = time.process_time() - begun
    return times, np.array([body.read(t, y) for t, y in zip(out.t, out.y.T)]) - m.ZERO, took


def main(argv):
    nr, na, rtol = 48, 120, 1e-7
    while argv and argv[0].startswith("--"):
        if argv[0] == "--mesh":
            nr, na = int(argv[1]), int(argv[2])
            argv = argv[3:]
        else:
            rtol = float(argv[1])
            argv = argv[2:]
    out, wanted = argv[0], argv[1:]
    for case in m.rows(m.os.path.join(m.os.path.dirname(m.os.path.abspath(__file__)), "cases.csv")):
        if wanted and case["id"] not in wanted:
            continue
        times, places, took = solve(case, nr, na, rtol)
        path = m.os.path.join(out, case["id"] + "-scipy.csv")
        with open(path, "w", encoding="utf-8") as f:
            f.write(f"# scipy_twin.py, SciPy {scipy.__version__}, BDF, cells {nr} x {na}, rtol {rtol:g}\n")
            f.write("seconds,underside_C,top_C,core_C\n")
            for t, p in zip(times, places):
                f.write(f"{t:g},{p[0]:.3f},{p[1]:.3f},{p[2]:.3f}\n")
        print(f"{case['id']}: {took:.1f} s", flush=True)


if __name__ == "__main__":
    main(sys.argv[1:])
