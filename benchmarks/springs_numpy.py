#!/usr/bin/env python3
"""The search of a drawer by the rules of core.spring (FirstBroken, CutScan, BestWay, WorkingProbability), vectorised in NumPy.

Reads a drawer written by SpringSearchSpeed --write and the program's own data tables; prints size, best seconds of three and its processor seconds, how
many springs work, the sum of their chances and of the coils taken off. Usage: springs_numpy.py ROOT FILE
"""
import csv
import math
import os
import sys
import time

import numpy as np
from numpy import sqrt

ROOT, FILE = sys.argv[1:3]
DATA = os.path.join(ROOT, "core/src/main/resources/org/strawblue/core/spring")
HALF80 = 1.2815515655446004
MATERIALS = ["MUSIC", "HARD_DRAWN", "OIL_TEMPERED", "STAINLESS", "PHOSPHOR_BRONZE", "UNKNOWN"]


def rows(name):
    with open(os.path.join(DATA, name), encoding="utf-8") as f:
        return list(csv.DictReader(line for line in f if not line.startswith("#")))


def constants(name):
    return {r["key"]: float(r["value"]) for r in rows(name)}


F, P, M = constants("formulas.csv"), constants("practice.csv"), constants("measurement.csv")
ENDS = {r["type"]: [float(r[c]) for c in ("inactive", "solid_wires", "length_pitches", "length_wires")] for r in rows("ends.csv")}
ENDS = np.array([ENDS[e] for e in ("OPEN", "OPEN_GROUND", "CLOSED", "CLOSED_GROUND")])
MODULI = [[r for r in rows("moduli.csv") if r["material"] == m] for m in MATERIALS]
TABLES = {}
for r in rows("tensile.csv"):
    TABLES.setdefault(r["strength"], []).append((float(r["wire_mm"]), float(r["min_MPa"]), r["rule"] == "up-to"))
ALLOW = [[(TABLES[r["strength"]], float(r["share"])) for r in rows("allowables.csv") if r["material"] == m] for m in MATERIALS]

# the pocket of SpringSearchSpeed
BORE, ROD, REST, FULL = 0.0096, 0.004, 0.026, 0.018
R_LOW, R_HIGH, F_LOW, F_HIGH = 5.0, 10.0, 12.0, 25.0
SEAT = 0.5


def strength(table, wire):
    size = np.array([t[0] for t in table]) / 1000
    least = np.array([t[1] for t in table]) * 1e6
    step = np.array([t[2] for t in table])
    slack = wire * 1e-9
    i = np.searchsorted(size, wire - slack)
    inside = i < len(size)
    i = np.minimum(i, len(size) - 1)
    below = np.maximum(i - 1, 0)
    at = np.log(wire / size[below]) / np.log(np.where(i > 0, size[i] / size[below], 2.0))
    between = least[below] + at * (least[i] - least[below])
    hit = step[i] | (np.abs(size[i] - wire) <= slack)
    value = np.where(hit, least[i], np.where(i > 0, between, 0.0))
    return np.where(inside, value, 0.0)


def wire_properties(material, wire):
    n = len(wire)
    E, G, lo, hi, bears = (np.zeros(n) for _ in range(5))
    for m in range(len(MATERIALS)):
        mine = np.nonzero(material == m)[0]
        d = wire[mine]
        upto = np.array([float(r["upto_mm"]) for r in MODULI[m]]) / 1000
        row = np.minimum(np.searchsorted(upto, d), len(upto) - 1)
        for a, c in ((E, "E_GPa"), (G, "G_GPa"), (lo, "G_low_GPa"), (hi, "G_high_GPa")):
            a[mine] = np.array([float(r[c]) for r in MODULI[m]])[row] * 1e9
        best = np.full(len(d), np.inf)
        for table, share in ALLOW[m]:
            s = strength(table, d) * share
            best = np.where((s > 0) & (s < best), s, best)
        bears[mine] = best
    return E, G, lo, hi, bears


def few_share(active):
    return np.clip((P["few_coils_from"] - active) / (P["few_coils_from"] - P["few_coils_to"]), 0, 1)


def one_coil_rate(d, D, pitch, G, lateral):
    tan = pitch / (math.pi * D)
    cos = 1 / sqrt(1 + tan * tan)
    C = D / d
    give = cos + lateral * tan * tan * cos - F["rate_curvature"] / (C * C)
    return G * d / (F["rate_divisor"] * C * C * C) / give


def stress_of_one(d, D):
    C = D / d
    K = (F["bergstraesser_index"] * C + F["bergstraesser_over"]) / (F["bergstraesser_index"] * C - F["bergstraesser_under"])
    return K * F["stress_factor"] * D / (math.pi * d * d * d)


def widest(outside, D, pitch, at, lateral):
    around = math.pi * D
    length = sqrt(around * around + pitch * pitch)
    s0, c0, s1 = pitch / length, around / length, at / length
    c1 = sqrt(1 - s1 * s1)
    ratio = (c1 * c1 + lateral * s1 * s1) / (c0 * c0 + lateral * s1 / c1 * s0 * c0)
    return outside + (ratio - 1) * D + P["coil_wander"] * np.maximum(0, pitch - at)


def longest_straight(D, ratio):
    slim = math.pi * D / SEAT
    b = (1 - ratio) / (F["buckling_half"] + ratio) * slim * slim
    c = F["buckling_half"] / (1 - ratio)
    two, one, zero = 1 - 2 * c, (c - 1) * FULL, FULL * FULL + c * c * b
    root = (-one - sqrt(one * one - two * zero)) / two
    return np.where(c * root >= root - FULL, np.maximum(root, sqrt(b)), sqrt(b))


def gap(d, D):
    return F["gap_index"] * D * D / d + F["gap_wire"] * d


def guided(outside, inside, D):
    room = P["guide_clearance"] * D
    return (BORE - outside <= room) | (inside - ROD <= room)


class Springs:
    """The five inputs of each spring with the half-widths of their 80 % intervals; ends as sums over both."""

    def __init__(self, columns):
        self.d, self.od, self.free, self.coils = columns[:4]
        first, material = columns[4].astype(int), columns[6].astype(int)
        self.end = np.where(first < 0, 2, first)
        self.E, self.G, lo, hi, self.bears = wire_properties(material, self.d)
        self.stiff = (lo + hi) / 2 / self.G
        self.h_stiff = (hi - lo) / 2 / self.G
        self.h_coils = np.where(first < 0, math.hypot(M["coils"], M["coils_ends_unknown"]), M["coils"])

    def take(self, i):
        other = object.__new__(Springs)
        for k, v in self.__dict__.items():
            setattr(other, k, v[i])
        return other


H_WIRE, H_OD, H_FREE = M["wire"] / 1000, M["outside"] / 1000, M["free_length"] / 1000


def formula_error(active):
    return P["rate_half_width"] + (P["few_coils_half_width"] - P["rate_half_width"]) * few_share(active)


def made(s, d, od, coils, stiff, removed, new):
    """Geometry after a cut to the new end (-1: as it is)."""
    old = ENDS[s.end]
    D = od - d
    pitch = (s.free - 2 * old[:, 3] * d) / (coils - 2 * old[:, 0] + 2 * old[:, 2])
    ends = np.where((new < 0)[:, None], 2 * old, old + ENDS[new])
    active = coils - removed - ends[:, 0]
    free = np.where(new < 0, s.free, pitch * (active + ends[:, 2]) + ends[:, 3] * d)
    pitch = np.where(new < 0, pitch, (free - ends[:, 3] * d) / (active + ends[:, 2]))
    few = 1 + P["few_coils_stiffer"] * few_share(active)
    rate = stiff * few * one_coil_rate(d, D, pitch, s.G, 2 * s.G / s.E) / active
    solid = (coils - removed + ends[:, 1]) * d
    return D, pitch, active, free, rate, solid, ends


def first_broken(s):
    """0 keeps all limits, 1 a cut may mend it, 2 beyond cutting."""
    zero, none = np.zeros(len(s.d)), np.full(len(s.d), -1)
    D, pitch, active, free, rate, solid, _ = made(s, s.d, s.od, s.coils, s.stiff, zero, none)
    out = ~np.isfinite(s.bears) | (active <= 0) | (pitch < s.d)
    inside = s.od - 2 * s.d
    rest, full = rate * (free - REST), rate * (free - FULL)
    beyond = out | (inside < ROD) | (s.od > BORE) | (free < REST) | (rest < R_LOW) | (full < F_LOW)
    stress = stress_of_one(s.d, D) * full
    broken = (FULL < solid + active * gap(s.d, D)) | (rest > R_HIGH) | (full > F_HIGH) | (stress > s.bears)
    at = pitch - (free - FULL) / active
    with np.errstate(invalid="ignore"):
        broken |= widest(s.od, D, pitch, at, 2 * s.G / s.E) > BORE
        broken |= ~guided(s.od, inside, D) & (free > longest_straight(D, s.G / s.E))
    return np.where(beyond, 2, np.where(broken, 1, 0))


def best_cut(s, new):
    """Coils to take off for this new end with most to spare; -1 where none keeps every limit. Both old ends are alike."""
    d, od, D = s.d, s.od, s.od - s.d
    old, nw = ENDS[s.end], ENDS[new]
    pitch = (s.free - 2 * old[:, 3] * d) / (s.coils - 2 * old[:, 0] + 2 * old[:, 2])
    inactive, solid_w, lp, lw = (old[:, k] + nw[k] for k in range(4))
    one = s.stiff * one_coil_rate(d, D, pitch, s.G, 2 * s.G / s.E)
    at_set = s.bears / stress_of_one(d, D)
    g = gap(d, D)
    C = D / d
    rate_error = ((4 + 3 / C) * H_WIRE / d) ** 2 + (3 * (1 + 1 / C) * H_OD / od) ** 2 + s.h_stiff**2
    step = P["cut_step"]
    least = np.full(len(d), step) if new >= 2 else np.maximum(step, old[:, 0])
    most = (FULL - (inactive + solid_w) * d) / (d + g)
    excess = s.coils - inactive - least - most
    start = np.where(excess <= 0, 0, np.floor(excess / step))
    rod = (od - 2 * d - ROD) / H_OD
    straight = np.where(guided(od, od - 2 * d, D), np.inf, longest_straight(D, s.G / s.E))
    best, removed = np.zeros(len(d)), np.full(len(d), -1.0)
    alive = np.arange(len(d))
    if new in (1, 3):
        alive = alive[d >= P["ground_from"] / 1000]
    j = 0
    while len(alive):
        i = alive
        off = least[i] + (start[i] + j) * step
        active = s.coils[i] - off - inactive[i]
        free = pitch[i] * (active + lp[i]) + lw[i] * d[i]
        go = (active >= P["least_active"]) & (free >= REST)
        i, off, active, free = i[go], off[go], active[go], free[go]
        alive = i
        rate = one[i] * (1 + P["few_coils_stiffer"] * few_share(active)) / active
        to_rest, to_full = free - REST, free - FULL
        clear = FULL - (active + inactive[i] + solid_w[i]) * d[i] - active * g[i]
        solid_error = sqrt(((active + 2) * H_WIRE) ** 2 + (d[i] * s.h_coils[i]) ** 2)
        relative = rate_error[i] + (s.h_coils[i] / active) ** 2
        at = pitch[i] - to_full / active
        with np.errstate(invalid="ignore", divide="ignore"):
            spare = np.minimum(to_rest / H_FREE, clear / solid_error)
            f = rate * to_rest
            spare = np.minimum(spare, np.minimum(f / R_LOW - 1, R_HIGH / f - 1) / sqrt(relative + (H_FREE / to_rest) ** 2))
            f = rate * to_full
            high = np.minimum(F_HIGH, at_set[i])
            spare = np.minimum(spare, np.minimum(f / F_LOW - 1, high / f - 1) / sqrt(relative + (H_FREE / to_full) ** 2))
            ok = np.nonzero(spare > 0)[0]
            k = i[ok]
            wide = widest(od[k], D[k], pitch[k], at[ok], 2 * s.G[k] / s.E[k])
            rest = np.minimum(np.minimum((BORE - wide) / H_OD, rod[k]), (straight[k] - free[ok]) / H_FREE)
            spare = np.minimum(spare[ok], rest)
        better = spare > best[k]
        best[k[better]] = spare[better]
        removed[k[better]] = off[ok][better]
        j += 1
    return removed


def points(count):
    root = 2.0
    for _ in range(60):
        root = (1 + root) ** 0.25
    i = np.arange(count) + 0.5
    u = [i / count] + [(0.5 + i / root**k) % 1 for k in (1, 2, 3)]
    return np.array([ppf(x) for x in u]).T


def ppf(u):
    """Inverse of the normal curve: rational start (Acklam), one step of Halley with erfc."""
    a = [-3.969683028665376e1, 2.209460984245205e2, -2.759285104469687e2, 1.383577518672690e2, -3.066479806614716e1, 2.506628277459239]
    b = [-5.447609879822406e1, 1.615858368580409e2, -1.556989798598866e2, 6.680131188771972e1, -1.328068155288572e1, 1]
    c = [-7.784894002430293e-3, -3.223964580411365e-1, -2.400758277161838, -2.549732539343734, 4.374664141464968, 2.938163982698783]
    e = [7.784695709041462e-3, 3.224671290700398e-1, 2.445134137142996, 3.754408661907416, 1]
    q = u - 0.5
    middle = np.polyval(a, q * q) * q / np.polyval(b, q * q)
    t = sqrt(-2 * np.log(np.minimum(u, 1 - u)))
    tail = np.polyval(c, t) / np.polyval(e, t)
    z = np.where(np.abs(q) <= 0.47575, middle, np.where(q < 0, tail, -tail))
    err = np.array([0.5 * math.erfc(-x / math.sqrt(2)) for x in z]) - u
    w = err * math.sqrt(2 * math.pi) * np.exp(z * z / 2)
    return z - w / (1 + z * w / 2)


STEPS = 64
SHARE = np.array([0.5 * math.erfc(-(k / STEPS - 6) / math.sqrt(2)) for k in range(12 * STEPS + 2)])
COARSE, MIDDLING, FINE = points(24), points(96), points(1024)


def below(z):
    at = (np.clip(z, -6, 6) + 6) * STEPS
    k = np.minimum(at.astype(int), 12 * STEPS)
    return np.where(z <= -6, 0, np.where(z >= 6, 1, SHARE[k] + (at - k) * (SHARE[k + 1] - SHARE[k])))


def chance(s, removed, new, grid):
    """WorkingProbability for each spring, all points at once in blocks of springs."""
    out = np.zeros(len(s.d))
    block = max(1, 400_000 // len(grid))
    for a in range(0, len(s.d), block):
        i = np.arange(a, min(len(s.d), a + block))
        out[i] = chance_of(s.take(i), removed[i], new[i], grid)
    return out


def chance_of(s, removed, new, grid):
    n, m = len(s.d), len(grid)
    old = ENDS[s.end]
    ends = np.where((new < 0)[:, None], 2 * old, old + ENDS[new])
    h_stiff = sqrt(s.h_stiff**2 + formula_error(s.coils - removed - ends[:, 0]) ** 2)

    def at(z):
        return (s.d + z[0] * H_WIRE / HALF80, s.od + z[1] * H_OD / HALF80,
                s.coils + z[2] * s.h_coils / HALF80, s.stiff + z[3] * h_stiff / HALF80)

    def log_force(z):
        d, od, coils, stiff = at(z)
        _, _, _, free, rate, _, _ = made(s, d, od, coils, stiff, removed, new)
        return np.log(rate * np.maximum(free - REST, 1e-3 * REST))

    v = np.zeros((4, n))
    for k in range(4):
        z = [0.0] * 4
        z[k] = 1.0
        v[k] = log_force(z)
        z[k] = -1.0
        v[k] -= log_force(z)
    length = sqrt((v * v).sum(axis=0))
    v[0] += np.where(v[0] < 0, -length, length)
    v /= sqrt((v * v).sum(axis=0))
    big = s.take(np.repeat(np.arange(n), m))
    along = (v.T @ grid.T).ravel()
    z = [np.tile(grid[:, k], n) - 2 * along * np.repeat(v[k], m) for k in range(4)]
    rm, nw, hs = np.repeat(removed, m), np.repeat(new, m), np.repeat(h_stiff, m)
    d, od = big.d + z[0] * H_WIRE / HALF80, big.od + z[1] * H_OD / HALF80
    coils, stiff = big.coils + z[2] * big.h_coils / HALF80, big.stiff + z[3] * hs / HALF80
    D, pitch, active, free, rate, solid, en = made(big, d, od, coils, stiff, rm, nw)
    inside = od - 2 * d
    fits = (active > 0) & (FULL >= solid + active * gap(d, D)) & (inside >= ROD)
    low = np.maximum(REST, np.maximum(REST + R_LOW / rate, FULL + F_LOW / rate))
    high = np.minimum(REST + R_HIGH / rate, FULL + np.minimum(F_HIGH, big.bears / stress_of_one(d, D)) / rate)
    lateral = 2 * big.G / big.E
    start = np.maximum(free, FULL)
    room = [BORE - widest(od, D, *pitches(f, d, en, active), lateral) for f in (start, start + d)]
    slope = (room[1] - room[0]) / d
    with np.errstate(divide="ignore", invalid="ignore"):
        high = np.minimum(high, np.where(slope < 0, start - room[0] / slope, np.inf))
    high = np.where(guided(od, inside, D), high, np.minimum(high, longest_straight(D, big.G / big.E)))
    before = coils - 2 * ENDS[big.end][:, 0] + 2 * ENDS[big.end][:, 2]
    kept = np.where(nw < 0, 1.0, (active + en[:, 2]) / before)
    unit = kept * H_FREE / HALF80
    share = below((high - free) / unit) - below((low - free) / unit)
    return np.where(fits & (high >= low), share, 0).reshape(n, m).mean(axis=1)


def pitches(free, d, ends, active):
    pitch = (free - ends[:, 3] * d) / (active + ends[:, 2])
    return pitch, pitch - (free - FULL) / active


def search(s):
    state = first_broken(s)
    i = np.nonzero(state < 2)[0]
    t = s.take(i)
    nearly = P["nearly_as_good"]
    prob = np.full(len(i), -1.0)
    removed, new = np.zeros(len(i)), np.full(len(i), -1)
    as_is = np.nonzero(state[i] == 0)[0]
    prob[as_is] = chance(t.take(as_is), removed[as_is], new[as_is], COARSE)
    likeliest = np.maximum(prob, 0)
    for end in (3, 2, 1, 0):
        ask = np.nonzero(prob < 1 - nearly)[0]
        off = best_cut(t.take(ask), end)
        k, off = ask[off >= 0], off[off >= 0]
        p = chance(t.take(k), off, np.full(len(k), end), COARSE)
        take = (prob[k] < 0) | (p > np.maximum(likeliest[k], prob[k] + nearly))
        prob[k[take]], removed[k[take]], new[k[take]] = p[take], off[take], end
        likeliest[k] = np.maximum(likeliest[k], p)
    w = np.nonzero(prob >= 0)[0]
    return i[w], removed[w], new[w], chance(t.take(w), removed[w], new[w], MIDDLING)


def whole(columns):
    n = columns.shape[1]
    parts = []
    for a in range(0, n, 65536):
        s = Springs(columns[:, a : a + 65536])
        i, removed, new, p = search(s)
        parts.append((i + a, removed, new, p))
    i, removed, new, p = (np.concatenate(x) for x in zip(*parts))
    top = np.argsort(-p, kind="stable")[:512]
    p[top] = chance(Springs(columns[:, i[top]]), removed[top], new[top], FINE)
    return len(i), p.sum(), removed.sum()


if __name__ == "__main__":
    drawer = np.fromfile(FILE, dtype="<f8").reshape(7, -1)
    seconds = []
    for _ in range(3):
        begun, cpu = time.perf_counter(), time.process_time()
        found = whole(drawer)
        seconds.append((time.perf_counter() - begun, time.process_time() - cpu))
    print(drawer.shape[1], *(f"{x:.4f}" for x in min(seconds)), found[0], f"{found[1]:.6g}", f"{found[2]:.1f}")
