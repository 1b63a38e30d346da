"""SciPy's BDF with sparse Jacobian on the program's own mesh of a round bar on a plate, for time and error side by side.

usage: same_mesh.py CASE SECTORS RINGS SECONDS TOLERANCE...      one line each: tolerance, shortest CPU s and wall s; then the readings

Written to be quick: temperature as unknown, nodes on the surface, all cells at once, no iteration within the rate, columns of
the Jacobian grouped by SciPy itself. With the word "reference" for TOLERANCE: 1e-8.
"""
import sys
import time
import numpy as np
from scipy.integrate import solve_ivp
from scipy.sparse import diags
import model as m

TIMES = (60, 120, 300, 600, 1000)


def graded(lo, hi, n, ratio):
    at = np.concatenate([[0], np.cumsum(ratio ** (np.arange(n) / n))])
    return lo + (hi - lo) * at / at[-1]


def borders(x):
    return np.concatenate([[x[0]], (x[1:] + x[:-1]) / 2, [x[-1]]])


class Bar:
    def __init__(self, case, sectors, rings):
        s = self.s = m.Surface(case)
        R, length = s.radius, m.number(case, "length") / 1000
        a, r = graded(0, np.pi, sectors - 1, 8.0), graded(R / (2 * rings), R, rings - 1, 1 / 8)
        ab, rb = borders(a), borders(r)
        rb[0] = 0
        self.shape = sectors, rings
        width = np.diff(ab)
        volume = np.outer(width, np.diff(rb**2) / 2)
        self.per = 1 / (volume * m.RHO)
        self.along = width[:, None] / np.log(r[1:] / r[:-1])
        self.across = np.log(rb[1:] / np.where(rb[:-1] > 0, rb[:-1], r[0] / 2)) / np.diff(a)[:, None]
        z = R + s.gap
        turn = np.arctan(np.sqrt((z + R) / (z - R)) * np.tan(np.minimum(ab, np.pi - 1e-12) / 2))
        self.wedge = np.diff(turn) * 2 / np.arccosh(z / R)
        self.arc = width * R
        view = (1 + np.diff(np.sin(ab)) / width) / 2
        near = s.near(R * (1 - np.cos((ab[1:] + ab[:-1]) / 2)))
        self.free = (1 - near) * self.arc
        self.below = view * s.exchange * m.SIGMA * self.arc
        self.above = (1 - view) * s.emissivity * m.SIGMA * self.arc
        self.ends = 2 * volume / length
        self.end_below, self.end_above = 0.5 * s.exchange * m.SIGMA, 0.5 * s.emissivity * m.SIGMA

    def rate(self, t, y):
        s, T = self.s, y.reshape(self.shape)
        k = m.conductivity(T)
        q = np.zeros_like(T)
        flow = self.along * (k[:, 1:] + k[:, :-1]) / 2 * (T[:, 1:] - T[:, :-1])
        q[:, :-1] += flow
        q[:, 1:] -= flow
        flow = self.across * (k[1:] + k[:-1]) / 2 * (T[1:] - T[:-1])
        q[:-1] += flow
        q[1:] -= flow
        walls = s.tent(t) if s.covered else s.room
        air = s.tent(t) if s.covered else s.room + s.share * (s.around - s.room)
        fourth = T**4
        film = m.free_convection(s.size, T, s.film_air)
        Ts = T[:, -1]
        q[:, -1] += (m.air_conductivity((Ts + s.around) / 2) * self.wedge * (s.around - Ts) + self.free * film[:, -1] * (air - Ts)
                     + self.below * (s.around**4 - fourth[:, -1]) + self.above * (walls**4 - fourth[:, -1]))
        q += self.ends * (film * (air - T) + self.end_below * (s.around**4 - fourth) + self.end_above * (walls**4 - fourth))
        return (q * self.per / m.specific_heat(T)).ravel()

    def pattern(self):
        n, w = self.shape[0] * self.shape[1], self.shape[1]
        return diags([1, 1, 1, 1, 1], [0, 1, -1, w, -w], shape=(n, n)).tocsc()

    def solve(self, seconds, rtol, start):
        out = solve_ivp(self.rate, (0, seconds), np.full(np.prod(self.shape), start), method="BDF", rtol=rtol, atol=100 * rtol,
                        t_eval=[t for t in TIMES if t <= seconds], jac_sparsity=self.pattern())
        T = out.y.T.reshape((-1,) + self.shape)
        return np.array([T[:, 0, -1], T[:, -1, -1], T[:, self.shape[0] // 2, 0]]).T - m.ZERO


def main(name, sectors, rings, seconds, *tolerances):
    case = next(c for c in m.rows(m.os.path.join(m.os.path.dirname(m.os.path.abspath(__file__)), "cases.csv")) if c["id"] == name)
    bar = Bar(case, int(sectors), int(rings))
    for tolerance in tolerances:
        rtol = 1e-8 if tolerance == "reference" else float(tolerance)
        wall, cpu, best = [], [], None
        for _ in range(1 if tolerance == "reference" else 7):
            begun = time.perf_counter(), time.process_time()
            best = bar.solve(float(seconds), rtol, m.number(case, "start") + m.ZERO)
            wall.append(time.perf_counter() - begun[0])
            cpu.append(time.process_time() - begun[1])
        print(f"{rtol:g},{min(cpu):.5f},{min(wall):.5f}," + ",".join(f"{v:.5f}" for v in best.ravel()), flush=True)


if __name__ == "__main__":
    main(*sys.argv[1:])
