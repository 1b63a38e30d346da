"""Fits the tempering law, prints what it is worth on steels it has not seen, and writes the program's data tables.

    python3 fit.py DATASET.csv [OUT_DIR]

DATASET is the open tempering data set (bibliography key tempering-data-raiipa; CC BY 4.0; three primary works of 1945,
1956 and 2010), cleaned to the columns heat_id, source, steel, hrc_as_quenched, time_s, temp_c, <element>_pct,
hrc_tempered. It is not kept in this repository. With OUT_DIR, the fitted tables are written there.

Every accuracy printed is leave-one-grade-out: all heats of one grade are left out, spreads and coefficients are fitted
again on the others, and the factor that turns the law's standard deviation into an 80 % interval comes from leaving
out, in turn, each of the OTHER grades. So nothing of the judged steel is in its own interval.
"""
import os
import sys

import numpy as np

from model import CENTRE, TERMS, WIDTH, A, B, CAP, Law, constant, features, hyper, load, SOFT, SOFT_NOISE, reading

AQ_Z, AQ_SD = -1.8, 1.0  # where the departure of the hardness as quenched from that of its carbon counts, and its spread


def martensite(carbon):
    """ASTM A255, held above 0.70 % C"""
    c = np.minimum(carbon, 0.7)
    full = 33.087 + 50.723 * c + 33.662 * c**2 - 2.7048 * c**3 - 107.02 * c**4 + 43.523 * c**5
    return np.where(carbon > 0.7, 65.5, full)


def coupons(law, d, rows):
    return law.X[rows], law.z[rows], law.u[rows], d["y"][rows], reading(law.h, law.z[rows], np.where(d["y"][rows] < SOFT, SOFT_NOISE, 1.0))


def quenched(law, d, row):
    one = {k: v[row : row + 1] for k, v in d.items()}
    one["t"] = np.array([1.0])
    one["T"] = (AQ_Z * WIDTH + CENTRE) * 1000 / constant(one["C"])
    X, z, u = features(one)
    return X, z, u, X @ law.beta + one["aq"] - martensite(one["C"]), np.array([AQ_SD**2])


def anchor(d, heat):
    m = d["heat"] == heat
    at = 1.0 if (m & (d["t"] == 1.0)).sum() >= 8 else 2.5
    return np.where(m & (d["t"] == at))[0]


def leave_out(d, h, grades, train, test, known="nothing"):
    """prediction and standard deviation of each test row, its grade not in the fit; h may be one for all, or by grade"""
    p, s = np.full(len(d["y"]), np.nan), np.full(len(d["y"]), np.nan)
    for g in grades:
        hg = h.get(g, h) if isinstance(h, dict) else h
        law = Law(d, np.where(train & (d["grade"] != g))[0], hg)
        for heat in sorted(set(d["heat"][d["grade"] == g])):
            te = np.where(test & (d["heat"] == heat))[0]
            c = None
            if known == "curve":
                c = anchor(d, heat)
                te = np.setdiff1d(te, c)
                c = coupons(law, d, c)
            if known == "quenched" and len(te):
                if np.isnan(d["aq"][te[0]]):
                    continue
                c = quenched(law, d, te[0])
            if len(te):
                m, v = law.predict(law.X[te], law.z[te], law.u[te], c)
                p[te], s[te] = m, np.sqrt(v + reading(hg, law.z[te], np.where(m < SOFT, SOFT_NOISE, 1.0)))
    return p, s


def factor(d, p, s, m):
    return float(np.quantile(np.abs(d["y"][m] - p[m]) / s[m], 0.8))


def weighted(x, w):
    order = np.argsort(x)
    return float(x[order][np.searchsorted(np.cumsum(w[order]), 0.8)])


def line(d, p, s, k, m):
    e = d["y"][m] - p[m]
    kk = k[m] if isinstance(k, np.ndarray) else k
    inside = np.mean(np.abs(e) <= kk * s[m])
    return f"n {m.sum():4d}  RMSE {np.sqrt(np.mean(e**2)):4.2f}  MAE {np.mean(abs(e)):4.2f}  bias {np.mean(e):+5.2f}  in 80 % interval {inside:.3f}  half-width {np.mean(kk*s[m]):.2f}"


def strata(d):
    c = d["T"] - 273.15
    return {
        "all answered": d["fit"],
        "HRC >= 20": d["fit"] & (d["y"] >= 20),
        "HRC < 20": d["fit"] & (d["y"] < 20),
        "1945": d["fit"] & (d["study"] == 1945),
        "1956": d["fit"] & (d["study"] == 1956),
        "2010, 1 h and longer": d["fit"] & (d["study"] == 2010),
        "40 s to 5 min": d["fit"] & (d["t"] <= 1 / 12),
        "10 to 15 min": d["fit"] & (d["t"] > 1 / 12) & (d["t"] <= 0.25),
        "1 to 2.5 h": d["fit"] & (d["t"] >= 1) & (d["t"] <= 2.5),
        "4 to 8 h": d["fit"] & (d["t"] > 2.5) & (d["t"] <= 8),
        "16 h and longer": d["fit"] & (d["t"] > 8),
        "below 250 C": d["fit"] & (c < 250),
        "250 to 400 C": d["fit"] & (c >= 250) & (c < 400),
        "400 to 550 C": d["fit"] & (c >= 400) & (c < 550),
        "550 C and above": d["fit"] & (c >= 550),
        "carbon below 0.4": d["fit"] & (d["C"] < 0.4),
        "carbon 0.4 to 0.6": d["fit"] & (d["C"] >= 0.4) & (d["C"] < 0.6),
        "carbon 0.6 and above": d["fit"] & (d["C"] >= 0.6),
        "plain carbon": d["fit"] & (d["Cr"] + d["Mo"] + d["Ni"] + d["V"] < 0.2) & (d["Mn"] < 1) & (d["Si"] < 0.5),
        "alloy": d["fit"] & ~((d["Cr"] + d["Mo"] + d["Ni"] + d["V"] < 0.2) & (d["Mn"] < 1) & (d["Si"] < 0.5)),
    }


def table(title, d, p, s, k):
    print(f"\n{title}")
    for name, m in strata(d).items():
        m = m & ~np.isnan(p)
        if m.any():
            print(f"  {name:22s} {line(d, p, s, k, m)}")


def nested_factor(d, grades, p_inner, known):
    """for each grade, the factor from the others, each of them left out of fits that never saw the judged grade either"""
    k = np.full(len(d["y"]), np.nan)
    for g in grades:
        others = [x for x in grades if x != g]
        p, s = leave_out(d, p_inner[g], others, d["fit"] & (d["grade"] != g), d["fit"], known)
        m = d["fit"] & ~np.isnan(p) & (d["grade"] != g)
        k[d["grade"] == g] = factor(d, p, s, m)
    return k


def write(out, law, k_formula, k_quenched, k_known):
    source = "tempering-data-raiipa,fitted"
    chol = np.linalg.cholesky(law.V)
    with open(os.path.join(out, "tempering-formula.csv"), "w") as f:
        f.write("# Tempering from composition, written by verification/tempering/fit.py. HRC = sum of coefficient * term; carbon terms then alloy terms, C and elements in mass %, z the reduced Hollomon-Jaffe parameter.\n")
        f.write("# Columns f0.. are the lower Cholesky factor of the covariance of the coefficients.\n")
        f.write("term,coefficient_hrc," + ",".join(f"f{i}" for i in range(len(TERMS))) + ",source,standing\n")
        for i, t in enumerate(TERMS):
            f.write(f"{t},{law.beta[i]:.6g}," + ",".join(f"{chol[i, j]:.7g}" if j <= i else "0" for j in range(len(TERMS))) + f",{source}\n")
    h = law.h
    rows = [("t0", h["t0"], "HRC", "heat deviation, common part"), ("t1", h["t1"], "HRC", "heat deviation, per unit of z"),
            ("g", h["g"], "HRC", "heat deviation, local part"), ("l", h["l"], "1", "reach of the local part in z"),
            ("q", h["q"], "HRC", "heat deviation, per decade of hours"), ("sigma", h["sigma"], "HRC", "reading"), ("r", h["r"], "1", "growth of the local part and of the reading with z, exp(r z)"),
            ("soft_noise", SOFT_NOISE, "1", "variance of a reading below HRC 20 in that of one above"),
            ("k_formula", k_formula, "1", "half-width of the 80 % interval in standard deviations, nothing measured"),
            ("k_quenched", k_quenched, "1", "the same where the hardness as quenched is known"),
            ("k_known", k_known, "1", "the same where test pieces of the bar are known"),
            ("quenched_z", AQ_Z, "1", "z at which the departure of the hardness as quenched counts"), ("quenched_sd", AQ_SD, "HRC", "spread of that")]
    with open(os.path.join(out, "tempering-spread.csv"), "w") as f:
        f.write("# Spread of tempered hardness between heats and readings, written by verification/tempering/fit.py\n")
        f.write("key,value,unit,what,source,standing\n")
        for n, v, u, w in rows:
            f.write(f'{n},{v:.6g},{u},"{w}",{source}\n')


def main():
    d = load(sys.argv[1])
    grades = sorted(set(d["grade"]))
    rows = np.where(d["fit"])[0]
    h = hyper(d, rows)
    print("spreads", {k: round(float(v), 3) for k, v in h.items()})
    own = {g: hyper(d, np.where(d["fit"] & (d["grade"] != g))[0], h) for g in grades}
    results = {}
    for known in ("nothing", "quenched", "curve"):
        p, s = leave_out(d, own, grades, d["fit"], d["fit"], known)
        m = d["fit"] & ~np.isnan(p)
        k = nested_factor(d, grades, own, known)
        table(f"known of the heat: {known}; leave one grade out, intervals nested", d, p, s, k)
        results[known] = factor(d, p, s, m)
        if known == "quenched":
            # the quench is known of few heats, half of them of the odd 2010 study: give it the weight it has in all rows
            late = d["study"] == 2010
            share = np.sum(late & d["fit"]) / np.sum(d["fit"])
            weights = np.where(late[m], share / np.sum(late & m), (1 - share) / np.sum(~late & m))
            results["told"] = weighted(np.abs(d["y"][m] - p[m]) / s[m], weights)
            print(f"  factor, studies weighted as in all rows: {results['told']:.3f}")
        print(f"  factor for all: {results[known]:.3f}; nested {np.nanmin(k):.3f} to {np.nanmax(k):.3f}")
    others = d["lag"] & ~d["flash"]
    p, s = leave_out(d, own, grades, d["fit"], others | d["flash"], "nothing")
    print("\nnot in the fit: 2010, 90 s and 15 min ", line(d, p, s, results["nothing"], others))
    print("not answered:   10 s                  ", line(d, p, s, results["nothing"], d["flash"]))
    print("\nby heat (leave one grade out)")
    p, s = leave_out(d, own, grades, d["fit"], d["fit"])
    for x in sorted(set(d["heat"])):
        m = d["fit"] & (d["heat"] == x)
        print(f"  {x} {d['grade'][m][0][:24]:24s} {line(d, p, s, results['nothing'], m)}")
    if len(sys.argv) > 2:
        write(sys.argv[2], Law(d, rows, h), results["nothing"], results["told"], results["curve"])


if __name__ == "__main__":
    main()
