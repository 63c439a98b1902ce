#!/usr/bin/python3
"""Four vessels by a general-purpose ODE solver, to hold the Go march against.

Run by hand with Debian's python3-scipy:  /usr/bin/python3 vessel_cases.py
It writes cylinder_draw.csv, cylinder_reheat.csv, compact_draw.csv and
compact_draw_charged.csv beside itself; the Go tests of compare/vessel read them.

The same physics as the Go packages state, by another method: the body is cut into
several hundred cells (against 20 or 32 layers), space is discretised alone (second
order upwind with van Leer's harmonic limiter, from memory) and the ordinary
differential equations are integrated by LSODA (scipy.integrate.solve_ivp), which
chooses its own steps. Buoyancy, which the Go march settles at once, is here an
exchange flow between cells that is very strong where a lower cell is warmer than the
one above. A stirred inlet is such an exchange flow too.
With an argument the cells are multiplied by it and nothing is written: what the
outlet then moves by is the error of the grid.
"""
import csv
import os
import sys

import numpy as np
import scipy
from scipy.integrate import solve_ivp

CP = 4182.0  # J/(kg K)
KG_PER_L = 0.9880  # of water in a vessel
EXCHANGE = 4000.0  # kg/s between cells that mix
SOFT_K = 0.01  # below this difference the exchange of buoyancy fades out, for the solver
ROOM_C = 20.0
MAINS_C = 10.0
SAMPLE_S = 10.0  # rows of the tables
FINE_S = 1.0  # integrals
BAND = 6  # cells that the solver takes to act on each other within one of its steps

CYLINDER = dict(litres=210.0, height=1.32, loss=61.4 / 45, conductivity=1.2,
                stirred=0.15, ua=1130.0, coil=(0.05, 0.60), cells=300)
COMPACT = dict(litres=60.0, displaced=18.9, coil_litres=12.3, height=0.50, loss=42.5 / 45,
               conductivity=1.2, stirred=0.20, ua=1800.0, cells=160)


def through_flow(temps, in_c, kg_per_s, cell_kg):
    """Rate of change in K/s by water that enters before the first cell; and outlet."""
    steps = np.diff(temps)
    before = np.concatenate(([temps[0] - in_c], steps))
    after = np.concatenate((steps, [0.0]))
    same = before * after > 0
    slope = np.zeros_like(temps)
    slope[same] = 2 * before[same] * after[same] / (before[same] + after[same])
    face = np.concatenate(([in_c], temps + slope / 2))
    return kg_per_s * (face[:-1] - face[1:]) / cell_kg, face[-1]


class Body:
    """Heating or drinking water in equal cells, bottom first."""

    def __init__(self, case, litres, cells):
        self.n = cells
        self.cell_kg = litres * KG_PER_L / cells
        area = litres / 1000 / case["height"]
        self.conduct = case["conductivity"] * area / (case["height"] / cells) / (self.cell_kg * CP)
        self.loss = case["loss"] / cells / (self.cell_kg * CP)
        self.loss_w_per_k = case["loss"]

    def at_rest(self, t, stirred=None):
        """Conduction, loss, buoyancy, and stirring of a range of cells."""
        rise = t[1:] - t[:-1]  # upper less lower
        inverted = np.maximum(-rise, 0.0)
        rate = self.conduct * rise - EXCHANGE / self.cell_kg * inverted**2 / (inverted + SOFT_K)
        if stirred is not None:
            low, high = stirred
            inside = np.zeros_like(rise)
            edge = np.arange(1, self.n) / self.n
            inside[(edge > low + 1e-9) & (edge < high - 1e-9)] = EXCHANGE / self.cell_kg
            rate = rate + inside * rise
        d = self.loss * (ROOM_C - t)
        d[:-1] += rate
        d[1:] -= rate
        return d

    def held_j(self, t):
        return t.sum() * self.cell_kg * CP


class Indirect:
    """Coil of a cylinder: primary water from its top to its bottom."""

    def __init__(self, case, body, kg_per_s):
        edges = np.arange(body.n + 1) / body.n
        low, high = case["coil"]
        share = np.clip(np.minimum(edges[1:], high) - np.maximum(edges[:-1], low), 0, None)
        self.at = np.nonzero(share)[0][::-1]
        self.capacity = kg_per_s * CP
        self.passed = np.exp(-case["ua"] * share[self.at] / (high - low) / self.capacity)
        self.body = body

    def march(self, t, flow_c):
        """Temperatures at which primary water leaves each cell on its way down."""
        left = np.cumprod(self.passed)
        return left * (flow_c + np.cumsum((1 - self.passed) * t[self.at] / left))

    def heat(self, t, heat_w):
        """Rates in K/s, and flow and return temperatures, for a heat in W."""
        cold = self.march(t, 0.0)[-1]
        slope = np.prod(self.passed)
        flow_c = (heat_w / self.capacity + cold) / (1 - slope)
        leaves = self.march(t, flow_c)
        enters = np.concatenate(([flow_c], leaves[:-1]))
        d = np.zeros_like(t)
        d[self.at] = self.capacity * (enters - leaves) / (self.body.cell_kg * CP)
        return d, flow_c, leaves[-1]


def integrate(rates, start, seconds):
    fine = np.arange(0, seconds + FINE_S / 2, FINE_S)
    s = solve_ivp(rates, (0, seconds), start, method="LSODA", t_eval=fine,
                  rtol=1e-6, atol=1e-6, max_step=1.0, lband=BAND, uband=BAND)
    if not s.success:
        raise SystemExit(s.message)
    return s.t, s.y


def running(times, values):
    """Integral of sampled values, by trapezia."""
    return np.concatenate(([0.0], np.cumsum((values[1:] + values[:-1]) / 2 * np.diff(times))))


def cylinder_draw(factor):
    kg_per_s, start_c = 0.15, 48.0
    body = Body(CYLINDER, CYLINDER["litres"], CYLINDER["cells"] * factor)

    def rates(_, y):
        t = y[:-1]
        flow, out = through_flow(t, MAINS_C, kg_per_s, body.cell_kg)
        return np.append(flow + body.at_rest(t, (0.0, CYLINDER["stirred"])), out)

    times, y = integrate(rates, np.append(np.full(body.n, start_c), 0.0), 1500.0)
    temps = y[:-1]
    drawn = kg_per_s * CP * (y[-1] - MAINS_C * times)
    return table(times, body, temps, drawn, np.zeros_like(times), temps[-1], temps[0])


def cylinder_reheat(factor):
    heat_w, kg_per_s = 5000.0, 17.0 / 60
    body = Body(CYLINDER, CYLINDER["litres"], CYLINDER["cells"] * factor)
    coil = Indirect(CYLINDER, body, kg_per_s)

    def rates(_, t):
        return body.at_rest(t) + coil.heat(t, heat_w)[0]

    times, temps = integrate(rates, ramp(body.n), 3600.0)
    returns = np.array([coil.heat(t, heat_w)[2] for t in temps.T])
    return table(times, body, temps, np.zeros_like(times), heat_w * times, temps[-1], returns)


def ramp(n):
    """12 C to 40 % of the height, 48 C from 50 %, straight between: cell means."""
    fine = (np.arange(n * 100) + 0.5) / (n * 100)
    return np.clip(12 + 36 * (fine - 0.4) / 0.1, 12, 48).reshape(n, 100).mean(axis=1)


def compact(factor, heat_w, seconds):
    draw, primary, start_c = 0.12, 17.0 / 60, 55.0
    n = COMPACT["cells"] * factor
    body = Body(COMPACT, COMPACT["litres"] - COMPACT["displaced"], n)
    coil_kg = COMPACT["coil_litres"] * KG_PER_L / n
    ua = COMPACT["ua"] / n

    def rates(_, y):
        t, w = y[0:-1:2], y[1:-1:2]
        heat = ua * (t - w)
        flow, out = through_flow(w, MAINS_C, draw, coil_kg)
        dw = flow + heat / (coil_kg * CP)
        dt = -heat / (body.cell_kg * CP)
        stirred = None
        if heat_w > 0:
            down, _ = through_flow(t[::-1], t[0] + heat_w / (primary * CP), primary, body.cell_kg)
            dt = dt + down[::-1]
            stirred = (1 - COMPACT["stirred"], 1.0)
        d = np.empty_like(y)
        d[0:-1:2], d[1:-1:2], d[-1] = dt + body.at_rest(t, stirred), dw, out
        return d

    start = np.append(np.full(2 * n, start_c), 0.0)
    times, y = integrate(rates, start, seconds)
    temps, water = y[0:-1:2], y[1:-1:2]
    drawn = draw * CP * (y[-1] - MAINS_C * times)
    rows = table(times, body, temps, drawn, heat_w * times, water[-1], temps[0])
    for row, at in zip(rows, sample(times)):
        row[-1] += water[:, at].sum() * coil_kg * CP / 1000
    return rows


def sample(times):
    return np.nonzero(np.isclose(np.mod(times + 1e-6, SAMPLE_S), 1e-6, atol=1e-5))[0]


HEADER = ["time_s", "outlet_C", "return_C", "top_C", "middle_C", "drawn_kJ", "charged_kJ", "lost_kJ", "held_kJ"]


def table(times, body, temps, drawn, charged, outlet, returns):
    lost = running(times, body.loss_w_per_k * (temps.mean(axis=0) - ROOM_C))
    rows = []
    for i in sample(times):
        t = temps[:, i]
        middle = (t[body.n // 2 - 1] + t[body.n // 2]) / 2
        rows.append([times[i], outlet[i], returns[i], t[-1], middle, drawn[i] / 1000,
                     charged[i] / 1000, lost[i] / 1000, body.held_j(t) / 1000])
    return rows


CASES = {
    "cylinder_draw": (cylinder_draw, "210 l at 48 C, 0.15 kg/s of 10 C in at the bottom, lowest 0.15 stirred"),
    "cylinder_reheat": (cylinder_reheat, "210 l, 12 C to 40 % of the height and 48 C from 50 %, 5 kW at 17 kg/min through the coil"),
    "compact_draw": (lambda f: compact(f, 0.0, 600.0), "60 l at 55 C, 0.12 kg/s of 10 C through the coil, heat pump off"),
    "compact_draw_charged": (lambda f: compact(f, 8000.0, 600.0), "the same, charged with 8 kW at 17 kg/min, highest 0.20 stirred"),
}

# By hand: vessel_cases.c beside this file, and this file with the argument 2.
CHECKED = {
    "cylinder_draw": "CVODE differs by 0.0006 K rms, 0.00 kJ drawn; twice the cells by 0.013 K rms, 0.83 kJ",
    "cylinder_reheat": "CVODE differs by less than 0.0001 K rms, 0.01 kJ held; twice the cells by 0.051 K rms",
    "compact_draw": "CVODE differs by less than 0.0001 K rms, 0.00 kJ drawn; twice the cells by 0.027 K rms, 0.15 kJ",
    "compact_draw_charged": "CVODE differs by 0.0001 K rms, 0.01 kJ drawn; twice the cells by 0.026 K rms, 0.45 kJ",
}


def main():
    factor = int(sys.argv[1]) if len(sys.argv) > 1 else 1
    here = os.path.dirname(os.path.abspath(__file__))
    for name, (run, text) in CASES.items():
        rows = run(factor)
        path = os.path.join(here, name + ".csv")
        if factor > 1:
            with open(path) as f:
                old = [[float(v) for v in r] for r in csv.reader(l for l in f if l[0] not in "#t")]
            moved = np.array(rows) - np.array(old)
            print(f"{name}: outlet {np.sqrt(np.mean(moved[:, 1]**2)):.4f} K rms, drawn {moved[-1, 5]:.3f}, "
                  f"lost {moved[-1, 7]:.4f}, held {moved[-1, 8]:.3f} kJ")
            continue
        with open(path, "w") as f:
            f.write(f"# source: vessel_cases.py beside this file, scipy {scipy.__version__} LSODA; {text}\n")
            f.write(f"# {CHECKED[name]}\n")
            w = csv.writer(f, lineterminator="\n")
            w.writerow(HEADER)
            w.writerows([[f"{r[0]:.0f}"] + [f"{v:.4f}" for v in r[1:]] for r in rows])
        print(name, rows[-1])


if __name__ == "__main__":
    main()
