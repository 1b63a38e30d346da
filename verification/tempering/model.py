"""Tempering from composition: a linear law with a between-heat deviation, fitted by generalised least squares.

    H = phi(z, composition) . beta + d(z, u) + noise
    z = (P/1000 - centre)/scale,  P = T (c + log10 t),  c = a - b min(C, cap),  T [K], t [h],  u = log10 t
    phi = {1, sqrt C, C} x {1, z, z^2}, and {1, z} for each of Mn Si Ni Cr Mo V Al
    d   = deviation of one heat from the mean of its composition, covariance
          t0^2 + t1^2 z z' + (g^2 + q^2 u u') exp(-(z-z')^2 / 2 l^2 + r (z+z'))
    noise variance sigma^2 exp(2 r z), twice that below HRC 20

beta has a normal prior: wide for the carbon terms; for the alloying elements centred on the additive effects
recalled from published additive charts, rounded (PRIOR), each with a spread of e0 (intercept) or e1 (slope) times SCALE.
"""
import csv

import numpy as np
from scipy.linalg import solve_triangular
from scipy.optimize import minimize

ELEMENTS = ["Mn", "Si", "Ni", "Cr", "Mo", "V", "Al"]
PRIOR = dict(Mn=3.0, Si=4.0, Ni=0.5, Cr=4.0, Mo=12.0, V=12.0, Al=2.0)  # HRC per mass %, from memory
SCALE = dict(Mn=3.0, Si=4.0, Ni=1.5, Cr=4.0, Mo=12.0, V=15.0, Al=3.0)
WIDE = 100.0
A, B, CAP, CENTRE, WIDTH = 21.3, 5.8, 0.9, 15.0, 4.0
SOFT, SOFT_NOISE = 20.0, 2.0  # below HRC 20 readings are off the scale: twice the variance
LATE_STUDY, LATE_NOISE = 2010, 6.0  # the 2010 readings scatter more
NAMES = ["e0", "e1", "t0", "t1", "g", "l", "q", "sigma", "r"]
START = dict(e0=0.25, e1=0.4, t0=1.3, t1=0.4, g=1.4, l=0.33, q=0.8, sigma=0.6, r=0.3)
HYPER = dict(e0=(0.5, 0.7), e1=(0.5, 0.7), t0=(1.5, 0.7), t1=(0.7, 0.7), g=(0.7, 0.7), l=(0.4, 0.4), q=(0.3, 0.7), sigma=(0.9, 0.5), r=(0.3, 0.7))


def load(path):
    with open(path, newline="") as f:
        rows = list(csv.DictReader(f))
    d = {e: np.array([float(r[e + "_pct"]) for r in rows]) for e in ["C"] + ELEMENTS}
    d["t"] = np.array([float(r["time_s"]) for r in rows]) / 3600
    d["T"] = np.array([float(r["temp_c"]) for r in rows]) + 273.15
    d["y"] = np.array([float(r["hrc_tempered"]) for r in rows])
    d["aq"] = np.array([float(r["hrc_as_quenched"] or "nan") for r in rows])
    d["heat"] = np.array([r["heat_id"] for r in rows])
    d["grade"] = np.array([r["steel"] for r in rows])
    d["study"] = np.array([int(r["source"][-4:]) for r in rows])
    d["lag"] = (d["study"] == LATE_STUDY) & (d["t"] < 1)  # not time at temperature
    d["flash"] = d["t"] * 3600 < 40
    d["fit"] = ~d["lag"] & ~d["flash"]
    d["noise"] = noise(d["y"], d["study"])
    return d


def noise(y, study):
    return np.where(y < SOFT, SOFT_NOISE, 1.0) * np.where(study == LATE_STUDY, LATE_NOISE, 1.0)


def constant(carbon):
    return A - B * np.minimum(carbon, CAP)


def parameter(d):
    return d["T"] * (constant(d["C"]) + np.log10(d["t"]))


def features(d):
    z = (parameter(d) / 1000 - CENTRE) / WIDTH
    carbon = [np.ones_like(z), np.sqrt(d["C"]), d["C"]]
    columns = [c * z**k for k in range(3) for c in carbon]
    columns += [d[e] * z**k for e in ELEMENTS for k in range(2)]
    return np.array(columns).T, z, np.log10(d["t"])


TERMS = [f"{c} z^{k}" for k in range(3) for c in ("1", "sqrt(C)", "C")] + [f"{e} z^{k}" for e in ELEMENTS for k in range(2)]
MEAN = np.array([0.0] * 9 + [m for e in ELEMENTS for m in (PRIOR[e], 0.0)])


def prior_sd(h):
    return np.array([WIDE] * 9 + [s for e in ELEMENTS for s in (SCALE[e] * h["e0"], SCALE[e] * h["e1"])])


def deviation(h, z1, u1, z2, u2):
    near = np.exp(-0.5 * ((z1[:, None] - z2[None, :]) / h["l"]) ** 2 + h["r"] * (z1[:, None] + z2[None, :]))
    return h["t0"] ** 2 + h["t1"] ** 2 * np.outer(z1, z2) + (h["g"] ** 2 + h["q"] ** 2 * np.outer(u1, u2)) * near


def reading(h, z, times):
    return h["sigma"] ** 2 * times * np.exp(2 * h["r"] * z)


class Law:
    def __init__(self, d, rows, h):
        self.X, self.z, self.u = features(d)
        self.d, self.rows = d, rows
        self.heats = [rows[d["heat"][rows] == x] for x in sorted(set(d["heat"][rows]))]
        self.fit(h)

    def fit(self, h):
        self.h = h
        sd = prior_sd(h)
        K, b, quad, logdet = np.diag(sd**-2), np.zeros(len(sd)), 0.0, 2 * np.sum(np.log(sd))
        for ix in self.heats:
            cov = deviation(h, self.z[ix], self.u[ix], self.z[ix], self.u[ix]) + np.diag(reading(h, self.z[ix], self.d["noise"][ix]))
            L = np.linalg.cholesky(cov)
            F = solve_triangular(L, self.X[ix], lower=True)
            r = solve_triangular(L, self.d["y"][ix] - self.X[ix] @ MEAN, lower=True)
            K += F.T @ F
            b += F.T @ r
            quad += r @ r
            logdet += 2 * np.sum(np.log(np.diag(L)))
        L = np.linalg.cholesky(K)
        v = solve_triangular(L, b, lower=True)
        self.misfit = 0.5 * (quad - v @ v + logdet + 2 * np.sum(np.log(np.diag(L))))
        self.V = np.linalg.inv(K)
        self.beta = MEAN + self.V @ b
        return self

    def predict(self, X, z, u, coupons=None):
        """mean and structural variance (no reading noise); coupons = (X, z, u, y, noise variance)"""
        m = X @ self.beta
        C = X @ self.V @ X.T + deviation(self.h, z, u, z, u)
        if coupons is not None and len(coupons[3]):
            Xa, za, ua, ya, na = coupons
            K = Xa @ self.V @ Xa.T + deviation(self.h, za, ua, za, ua) + np.diag(na)
            G = np.linalg.solve(K, (X @ self.V @ Xa.T + deviation(self.h, z, u, za, ua)).T).T
            m = m + G @ (ya - Xa @ self.beta)
            C = C - G @ (X @ self.V @ Xa.T + deviation(self.h, z, u, za, ua)).T
        return m, np.diag(C)


def hyper(d, rows, start=START, maxiter=25):
    law = Law(d, rows, start)

    def cost(x):
        h = dict(zip(NAMES, np.exp(x)))
        law.fit(h)
        return law.misfit + sum(0.5 * ((np.log(h[k]) - np.log(m)) / s) ** 2 for k, (m, s) in HYPER.items())

    r = minimize(cost, np.log([start[k] for k in NAMES]), method="L-BFGS-B", options=dict(maxiter=maxiter))
    return dict(zip(NAMES, np.exp(r.x)))
