"""CalculiX twin: one layer of linear 3-D heat elements, films and radiation per face, k and c by temperature.

usage: calculix_twin.py [--mesh ANGLE RADIUS] [--shorter F] [--deck FOLDER] OUT CASE...

A film that depends on temperature is given to ccx as a film by time, one for each patch of surface, taken from that patch's own
temperature in the run before; runs follow one another until nothing moves. ccx takes backward Euler steps, so the last
two runs are made with whole and with half steps, and the error of first order is taken out (2 half - whole).
"""
import os
import subprocess
import sys
import tempfile
import numpy as np
import model as m

Z = 1e-3  # thickness of the layer [m]
SETTLED = 0.02  # K between two runs


def grid(a, r, last):
    """Nodes and bricks of a polar or (last None) rectangular mesh: index [i across, j, k layer]."""
    na, nr = len(a), len(r)
    xyz = {}
    for k in (0, 1):
        for i in range(na):
            for j in range(nr):
                xyz[1 + (k * na + i) * nr + j] = (r[j] * np.sin(a[i]), -r[j] * np.cos(a[i]), k * Z) if last else (a[i], r[j], k * Z)
    n = lambda i, j, k: 1 + (k * na + i) * nr + j
    bricks = [[n(i, j, 0), n(i + 1, j, 0), n(i + 1, j + 1, 0), n(i, j + 1, 0), n(i, j, 1), n(i + 1, j, 1), n(i + 1, j + 1, 1), n(i, j + 1, 1)]
              for i in range(na - 1) for j in range(nr - 1)]
    if last:  # angle turns the other way: keep the volume positive
        bricks = [[b[0], b[3], b[2], b[1], b[4], b[7], b[6], b[5]] for b in bricks]
    return xyz, bricks, n


# ccx's face numbers by their four nodes (positions in the brick)
FACES = {1: {0, 1, 2, 3}, 2: {4, 5, 6, 7}, 3: {0, 1, 4, 5}, 4: {1, 2, 5, 6}, 5: {2, 3, 6, 7}, 6: {0, 3, 4, 7}}


class Patch:
    """A film and a radiation on some faces: gap(T) and free(T) are films [W/(m2 K)] to plate and air, scale their share of area."""

    def __init__(self, faces, nodes, gap, free, view, scale=1.0):
        self.faces, self.nodes, self.gap, self.free, self.view, self.scale = faces, nodes, gap, free, view, scale


class Part:
    def __init__(self, case, na, nr):
        self.case, self.s = case, m.Surface(case)
        s = self.s
        self.patches, self.sides = [], {}
        length = m.number(case, "length") / 1000
        if case["shape"] == "round":
            R = s.radius
            even = s.kind != "plate"
            na = 1 if even else na
            u = np.linspace(0, 1, na + 1)
            a = np.pi * (0.15 * u + 0.85 * u**2.0) if not even else np.array([0, 0.05])
            r = R * (1 - (1 - np.linspace(0, 1, nr + 1)) ** 1.5)
            r[0] = R * 1e-3
            turn = np.diff(a)
            wide = np.sqrt(turn.sum() / np.sin(turn).sum())  # chords for arcs: the area is kept
            self.xyz, self.bricks, n = grid(a, r * wide, True)
            for i in range(na):
                face = {n(i, nr, 0), n(i + 1, nr, 0), n(i, nr, 1), n(i + 1, nr, 1)}
                pair = [n(i, nr, 0), n(i + 1, nr, 0)]
                arc = turn[i] / (2 * wide * np.sin(turn[i] / 2))
                if even:
                    self.patches.append(Patch([face], pair, None, lambda T: self.even(T), 1.0, arc))
                    continue
                wedge = self.wedge(a[i], a[i + 1])
                near = s.near(R * (1 - np.cos((a[i] + a[i + 1]) / 2)))
                view = 0.5 + (np.sin(a[i + 1]) - np.sin(a[i])) / (a[i + 1] - a[i]) / 2
                self.patches.append(Patch([face], pair, self.through(wedge), self.convect(near), view, arc))
            self.watch = [n(0, nr, 0), n(na, nr, 0), n(na // 2, 0, 0)]
        else:
            b = m.number(case, "width") / 2000
            x = b * (1 - (1 - np.linspace(0, 1, na + 1)) ** 1.6)
            y = np.linspace(0, s.size, nr + 1)
            self.xyz, self.bricks, n = grid(x, y, False)
            quad = lambda p, q: {p(0), p(1), q(0), q(1)}
            for i in range(na):
                for j, gap, near, view in ((0, self.through(1 / s.gap), s.near(0.0), 1.0), (nr, None, 0.0, 0.0)):
                    face = {n(i, j, 0), n(i + 1, j, 0), n(i, j, 1), n(i + 1, j, 1)}
                    self.patches.append(Patch([face], [n(i, j, 0), n(i + 1, j, 0)], gap, self.convect(near), view))
            faces = [{n(na, j, 0), n(na, j + 1, 0), n(na, j, 1), n(na, j + 1, 1)} for j in range(nr)]
            self.patches.append(Patch(faces, [n(na, j, 0) for j in range(nr + 1)], None, self.convect(0.0), 0.5))
            self.watch = [n(0, 0, 0), n(0, nr, 0), n(0, nr // 2, 0)]
        # two ends of a part of this length, for a layer of this thickness, on one face of it
        free = (lambda T: self.even(T)) if s.kind != "plate" else self.convect(0.0)
        view = 0.5 if s.kind == "plate" else 1.0
        middle = sorted({b[0] for b in self.bricks})
        self.patches.append(Patch([set(b[:4]) for b in self.bricks], middle, None, free, view, 2 * Z / length))
        self.find()

    def find(self):
        """Element and face number of each face given by its nodes."""
        known = {}
        for e, b in enumerate(self.bricks, 1):
            for f, spots in FACES.items():
                known.setdefault(frozenset(b[p] for p in spots), (e, f))
        for p in self.patches:
            p.faces = [known[frozenset(f)] for f in p.faces]

    def wedge(self, lo, hi):
        z = self.s.radius + self.s.gap
        root = np.sqrt((z + self.s.radius) / (z - self.s.radius))
        turn = lambda x: np.arctan(root * np.tan(min(x, np.pi - 1e-12) / 2))
        return 2 / np.arccosh(z / self.s.radius) * (turn(hi) - turn(lo)) / (self.s.radius * (hi - lo))

    def through(self, wedge):
        return lambda T: m.air_conductivity((T + self.s.around) / 2) * wedge

    def convect(self, near):
        return lambda T: (1 - near) * m.free_convection(self.s.size, T, self.s.film_air)

    def even(self, T):
        return self.s.film(T) if self.s.kind == "bath" else m.number(self.case, "film") + 0 * T

    def loads(self, p, t, T):
        """Film, its sink, radiation's sink at times t where the patch has temperatures T; emissivity times share of area."""
        s = self.s
        if s.kind != "plate":
            return self.even(T), s.around + 0 * t, s.around + 0 * t, s.emissivity
        air = s.tent(t) if s.covered else s.room + s.share * (s.around - s.room) + 0 * t
        walls = s.tent(t) if s.covered else s.room + 0 * t
        gap = p.gap(T) if p.gap else 0 * T
        free = p.free(T)
        film = gap + free
        lower = p.view * s.exchange
        upper = (1 - p.view) * s.emissivity
        fourth = (lower * s.around**4 + upper * walls**4) / (lower + upper)
        return film, (gap * s.around + free * air) / np.maximum(film, 1e-12), fourth**0.25, lower + upper


def blocks(seconds, scale, shorter):
    """(until, step): steps double as the part settles; scale: time in which it warms [s]."""
    step, at, out = scale / 4000, 0.0, []
    while at < seconds - 1e-9:
        many = 20 if step < scale / 60 else int(np.ceil((seconds - at) / step))
        many = min(many, int(np.ceil((seconds - at) / step - 1e-9)))
        until = min(at + many * step, seconds)
        out.append((until, (until - at) / many / shorter, many * shorter))
        at = until
        step *= 2
    return out


def deck(part, plan, path, histories, radiates):
    s = part.s
    with open(path, "w", encoding="utf-8") as f:
        w = lambda line: f.write(line + "\n")
        w(f"** {part.case['id']}: written by calculix_twin.py; K, m, s, W")
        w("*NODE,NSET=ALL")
        for i, (x, y, z) in part.xyz.items():
            w(f"{i},{x:.9e},{y:.9e},{z:.9e}")
        w("*ELEMENT,TYPE=C3D8,ELSET=STEEL")
        for e, b in enumerate(part.bricks, 1):
            w(",".join(map(str, [e] + b)))
        w("*MATERIAL,NAME=STEEL\n*DENSITY\n%g\n*CONDUCTIVITY" % m.RHO)
        for T in np.arange(250, 1200, 25.0):
            w(f"{float(m.conductivity(T)):.6g},{T:g}")
        w("*SPECIFIC HEAT")
        for T in np.concatenate([np.arange(250, 860, 10.0), np.arange(860, 1200, 1.0)]):
            w(f"{float(m.specific_heat(T)):.6g},{T:g}")
        w("*SOLID SECTION,ELSET=STEEL,MATERIAL=STEEL")
        w(f"*PHYSICAL CONSTANTS,ABSOLUTE ZERO=0.,STEFAN BOLTZMANN={m.SIGMA:.9e}")
        w(f"*INITIAL CONDITIONS,TYPE=TEMPERATURE\nALL,{m.number(part.case, 'start') + m.ZERO:g}")
        w("*NSET,NSET=WATCH")
        for i in wanted_nodes(part):
            w(str(i))
        for i, (t, film, sink, walls) in enumerate(histories):
            for name, values in (("H", film), ("S", sink), ("W", walls)):
                w(f"*AMPLITUDE,NAME={name}{i},TIME=TOTAL TIME")
                for at, v in zip(t, values):
                    w(f"{at:.7g},{v:.9g}")
        for number, (until, step, many) in enumerate(plan):
            w(f"*STEP,INC={many + 5}\n*HEAT TRANSFER,DIRECT\n{step:.9e},{step * many:.9e}")
            if number == 0:
                for i, p in enumerate(part.patches):
                    w(f"*FILM,AMPLITUDE=S{i},FILM AMPLITUDE=H{i}")
                    for e, face in p.faces:
                        w(f"{e},F{face},1.,{p.scale:.6e}")
                    if radiates[i] > 0:
                        w(f"*RADIATE,AMPLITUDE=W{i}")
                        for e, face in p.faces:
                            w(f"{e},R{face},1.,{radiates[i] * p.scale:.6e}")
            w("*NODE PRINT,NSET=WATCH,FREQUENCY=1\nNT\n*END STEP")


def wanted_nodes(part):
    return sorted(set(part.watch) | {n for p in part.patches[:-1] for n in p.nodes})


def spent():
    """Processor time of all processes started so far and done [s]."""
    used = os.times()
    return used.children_user + used.children_system


def run(folder, name):
    """@return times, table of temperatures by node, processor time of the process [s], what ccx says its own run took [s]"""
    begun = spent()
    env = dict(os.environ, OMP_NUM_THREADS="1")
    done = subprocess.run(["ccx", "-i", name], cwd=folder, env=env, capture_output=True, text=True)
    took = spent() - begun
    if "Job finished" not in done.stdout:
        raise RuntimeError(f"{name}: ccx did not finish ({done.returncode})\n" + done.stdout[-1500:] + done.stderr[-500:])
    own = [line.split(":")[-1] for line in done.stdout.splitlines() if "Total CalculiX Time" in line]
    times, values, nodes = [], [], None
    with open(os.path.join(folder, name + ".dat"), encoding="utf-8") as f:
        block = []
        for line in f:
            cells = line.split()
            if "time" in line:
                if block:
                    values.append(block)
                times.append(float(cells[-1]))
                block = []
            elif len(cells) == 2:
                block.append((int(cells[0]), float(cells[1])))
        values.append(block)
    nodes = [n for n, _ in values[0]]
    return np.array(times), {n: np.array([b[i][1] for b in values]) for i, n in enumerate(nodes)}, took, float(own[0]) if own else None


def typical(case, s):
    """About the time [s] in which a part warms: only steps and the first guess go by it."""
    film = {"plate": 130.0, "oven": 25.0, "bath": 2500.0}[s.kind]
    if case["shape"] == "flat":
        return m.RHO * 550 * s.size / 600
    return m.RHO * 550 * s.radius / 2 / film


class Solve:
    def __init__(self, case, na=28, nr=12, folder=None, shorter=1):
        self.part = Part(case, na, nr)
        self.folder = folder
        self.start = m.number(case, "start") + m.ZERO
        self.seconds = m.number(case, "seconds")
        self.scale = typical(case, self.part.s)
        self.shorter = shorter
        self.T = None
        self.took = 0

    def histories(self):
        t = np.concatenate([[0], np.geomspace(self.scale / 8000, self.seconds, 160)])
        out, radiates = [], []
        for p in self.part.patches:
            if self.T is None:
                T = self.part.s.around + (self.start - self.part.s.around) * np.exp(-t / self.scale)
            else:
                known = [n for n in p.nodes if n in self.T[1]]
                T = np.interp(t, self.T[0], np.mean([self.T[1][n] for n in known], axis=0))
            film, sink, walls, e = self.part.loads(p, t, T)
            out.append((t, film, sink, walls))
            radiates.append(e)
        return out, radiates

    def once(self, shorter):
        path = os.path.join(self.folder, self.part.case["id"])
        deck(self.part, blocks(self.seconds, self.scale, shorter), path + ".inp", *self.histories())
        t, nodes, took, own = run(self.folder, self.part.case["id"])
        t = np.concatenate([[0], t])
        nodes = {n: np.concatenate([[self.start], v]) for n, v in nodes.items()}
        self.took, self.own = took, own
        return t, nodes

    def settle(self, most=40):
        moved = np.inf
        for runs in range(1, most + 1):
            new = self.once(self.shorter)
            if self.T is not None:
                moved = max(np.abs(np.interp(self.T[0], new[0], new[1][n]) - self.T[1][n]).max() for n in new[1])
            self.T = new
            print(f"  {self.part.case['id']} run {runs}: moved {moved:.3f} K, {self.took:.1f} s", file=sys.stderr, flush=True)
            if moved < SETTLED:
                break
        return runs, moved

    def finer(self, times):
        """More and shorter steps, for the last runs: ccx takes c at the end of a step, and may not leap over its peak."""
        self.shorter *= times

    def extrapolated(self, times):
        half = self.once(2 * self.shorter)
        at = lambda run, n: np.interp(times, run[0], run[1][n])
        return np.array([2 * at(half, n) - at(self.T, n) for n in self.part.watch]).T - m.ZERO


def version():
    return subprocess.run(["ccx", "-v"], capture_output=True, text=True).stdout.split()[-1]


def main(argv):
    na, nr, keep, shorter = 24, 10, None, 1
    while argv and argv[0].startswith("--"):
        if argv[0] == "--mesh":
            na, nr, argv = int(argv[1]), int(argv[2]), argv[3:]
        elif argv[0] == "--deck":
            keep, argv = argv[1], argv[2:]
        else:
            shorter, argv = int(argv[1]), argv[2:]
    out, wanted = argv[0], argv[1:]
    for case in m.rows(os.path.join(os.path.dirname(os.path.abspath(__file__)), "cases.csv")):
        if wanted and case["id"] not in wanted:
            continue
        even = case["shape"] == "round" and case["kind"] != "plate"
        with tempfile.TemporaryDirectory() as folder:
            solve = Solve(case, na, 24 if even else nr, keep or folder, shorter)
            runs, moved = solve.settle()
            hot = max(m.number(case, "start"), m.number(case, "temperature")) > 700
            if hot:
                solve.finer(6 if case["kind"] == "bath" else 40)
                more, moved = solve.settle()
                runs += more
            seconds = m.number(case, "seconds")
            times = np.arange(0, seconds + 1e-9, 60 if seconds >= 600 else seconds / 20)
            places = solve.extrapolated(times)
            with open(os.path.join(out, case["id"] + "-calculix.csv"), "w", encoding="utf-8") as f:
                mesh = f"{na} x {nr}" if not even else "24 over the radius"
                f.write(f"# calculix_twin.py, CalculiX {version()}, C3D8 one layer, {mesh}, "
                        f"{runs} runs until films moved nothing by more than {max(moved, 0.001):.3f} K, steps halved once and extrapolated\n")
                f.write("seconds,underside_C,top_C,core_C\n")
                for t, p in zip(times, places):
                    f.write(f"{t:g},{p[0]:.3f},{p[1]:.3f},{p[2]:.3f}\n")
            print(f"{case['id']}: {runs} runs, moved {moved:.4f} K, last run {solve.took:.1f} s", flush=True)


if __name__ == "__main__":
    main(sys.argv[1:])
