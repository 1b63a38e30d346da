"""The model's figures and laws as the SciPy and CalculiX twins use them: read from the program's data, reckoned anew."""
import csv
import os
import numpy as np

ROOT = os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "..")
DATA = os.path.join(ROOT, "core/src/main/resources/org/strawblue/core")
ZERO = 273.15


def rows(path):
    with open(path, encoding="utf-8") as f:
        return list(csv.DictReader(line for line in f if not line.startswith("#")))


FIGURES = {r["key"]: float(r["value"]) for r in rows(os.path.join(DATA, "heat/course/fast.csv"))}
AIR = rows(os.path.join(DATA, "heat/course/air.csv"))
AIR_T = np.array([float(r["kelvin"]) for r in AIR])
AIR_K = np.array([float(r["conductivity_W_mK"]) for r in AIR])
AIR_NU = np.array([float(r["viscosity_m2_s"]) for r in AIR])
AIR_PR = np.array([float(r["prandtl"]) for r in AIR])
HEAT = {r["key"]: float(r["value"]) for r in rows(os.path.join(DATA, "heat/heat.csv"))}
RHO, SIGMA = HEAT["density"], HEAT["stefan-boltzmann"]
STEEL = rows(os.path.join(DATA, "heat/steel-properties.csv"))


def pieces(quantity):
    """Where each piece ends, and its c0 to c3, numerator and pole; the last one goes on for ever."""
    found = [r for r in STEEL if r["quantity"] == quantity]
    return ([float(r["to_C"]) for r in found[:-1]],
            [[float(r[c]) for c in ("c0", "c1", "c2", "c3", "numerator", "pole_C")] for r in found])


def property_by(ends, laws):
    def at(T):
        c = np.asarray(T, dtype=float) - ZERO
        if c.max() < ends[0]:  # all in the first piece: quicker
            a0, a1, a2, a3, n, pole = laws[0]
            return a0 + c * (a1 + c * (a2 + c * a3)) + (n / (pole - c) if n else 0.0)
        with np.errstate(divide="ignore"):
            values = [a0 + c * (a1 + c * (a2 + c * a3)) + (n / (pole - c) if n else 0.0) for a0, a1, a2, a3, n, pole in laws]
        out = values[-1]
        for end, value in zip(ends[::-1], values[-2::-1]):
            out = np.where(c < end, value, out)
        return out
    return at


conductivity = property_by(*pieces("conductivity"))
specific_heat = property_by(*pieces("specific-heat"))


def air_conductivity(T):
    return np.interp(T, AIR_T, AIR_K)


def free_convection(diameter, surface, air):
    mean = (surface + air) / 2
    nu = np.interp(mean, AIR_T, AIR_NU)
    pr = np.interp(mean, AIR_T, AIR_PR)
    ra = FIGURES["gravity"] / mean * np.abs(surface - air) * diameter**3 * pr / nu**2
    f = FIGURES["cylinder-b"] / (1 + (FIGURES["cylinder-c"] / pr) ** (9 / 16)) ** (8 / 27)
    return (FIGURES["cylinder-a"] + f * ra ** (1 / 6)) ** 2 * air_conductivity(mean) / diameter


def bath_film(name):
    table = [r for r in rows(os.path.join(DATA, "steel/quench-films.csv")) if r["film"] == name]
    t = np.array([float(r["surface_C"]) for r in table]) + ZERO
    h = np.array([float(r["h_W_m2K"]) for r in table])
    order = np.argsort(t)
    return lambda T: np.interp(T, t[order], h[order])


def number(case, key, default=0.0):
    return float(case[key]) if case.get(key) not in (None, "") else default


class Surface:
    """Power into patches of surface. angle: where on a round bar, or None; side: underside, side or top of a flat."""

    def __init__(self, case):
        self.case = case
        self.kind = case["kind"]
        self.around = number(case, "temperature") + ZERO
        self.room = 22 + ZERO
        self.emissivity = number(case, "emissivity")
        self.size = number(case, "size") / 1000
        self.radius = self.size / 2
        self.gap = number(case, "gap") * 1e-6
        self.covered = number(case, "covered") == 1
        self.share = number(case, "room_share")
        if self.kind == "plate":
            self.exchange = 1 / (1 / self.emissivity + 1 / FIGURES["plate-emissivity"] - 1)
            start = FIGURES["cavity-share"] if self.covered else self.share
            self.film_air = self.room + start * (self.around - self.room)
        if self.kind == "bath":
            self.film = bath_film(case["film"])

    def tent(self, t):
        warm = FIGURES["cavity-share"] * (1 - np.exp(-t / FIGURES["cavity-time"]))
        return self.room + warm * (self.around - self.room)

    def gap_coefficient(self, theta):
        """Film of the air wedge per area at an angle from the underside, over the air's conductivity [1/m]."""
        z = self.radius + self.gap
        return np.sqrt(z * z - self.radius**2) / (self.radius * np.arccosh(z / self.radius) * (z - self.radius * np.cos(theta)))

    def near(self, clearance):
        return 1 / (1 + ((self.gap + clearance) / (FIGURES["blend-length"] / 1000)) ** 4)

    def around_flux(self, t, T, view, near):
        air = self.tent(t) if self.covered else self.room + self.share * (self.around - self.room)
        walls = self.tent(t) if self.covered else self.room
        h = free_convection(self.size, T, self.film_air)
        return ((1 - view) * self.emissivity * SIGMA * (walls**4 - T**4) + (1 - near) * h * (air - T)
                + view * self.exchange * SIGMA * (self.around**4 - T**4))

    def round_flux(self, t, T, theta, wedge):
        """wedge: gap coefficient at theta or averaged over the patch."""
        if self.kind == "plate":
            near = self.near(self.radius * (1 - np.cos(theta)))
            through = air_conductivity((T + self.around) / 2) * wedge * (self.around - T)
            return through + self.around_flux(t, T, (1 + np.cos(theta)) / 2, near)
        return self.even_flux(T)

    def even_flux(self, T):
        h = self.film(T) if self.kind == "bath" else number(self.case, "film")
        return h * (self.around - T) + self.emissivity * SIGMA * (self.around**4 - T**4)

    def flat_flux(self, t, T, side):
        if side == "underside":
            near = self.near(0.0)
            return (air_conductivity((T + self.around) / 2) / self.gap * (self.around - T)
                    + self.around_flux(t, T, 1.0, near))
        return self.around_flux(t, T, 0.5 if side == "side" else 0.0, 0.0)
