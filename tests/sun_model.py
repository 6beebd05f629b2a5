"""A pot in the sun as an independent model: finite volumes in radius and height, heat conducted between them, each with
its own conversion; explicit steps. It shares no line with the engine, and is fitted to the label by itself."""
from math import pi

import numpy as np

GAS = 8.314462618
DENSITY, SPECIFIC, CONDUCTIVITY = 1100.0, 2000.0, 0.20
WALL, BENCH, TRAY_WALL = 0.005, 0.08, 0.001
GELS, HOT = 0.30, 333.15


def rate(temperature, conversion, k2, energy, first):
    """da/dt of a second order amine cure that speeds itself up [1/s]; k2 at 25 degC."""
    k = k2 * np.exp(-energy / GAS * (1 / temperature - 1 / 298.15))
    return k * (first + conversion) * (1 - conversion) ** 2


class Cup:
    """A can of resin as wide as it is full. mass [kg]; grid: cells across the radius, twice as many up"""

    def __init__(self, mass, grid=8):
        self.width = (4 * mass / DENSITY / pi) ** (1 / 3)
        self.cells = (grid, 2 * grid)
        self.dr, self.dz = self.width / 2 / grid, self.width / 2 / grid
        edges = np.arange(grid + 1) * self.dr
        self.volume = (pi * (edges[1:] ** 2 - edges[:-1] ** 2) * self.dz)[:, None] * np.ones(self.cells)
        self.inner = 2 * pi * edges[1:-1] * self.dz / self.dr * CONDUCTIVITY  # between neighbours, W/K
        self.flat = pi * (edges[1:] ** 2 - edges[:-1] ** 2)
        self.up = self.flat / self.dz * CONDUCTIVITY
        self.side = 2 * pi * edges[-1] * self.dz
        self.step = 0.15 * min(self.dr, self.dz) ** 2 * DENSITY * SPECIFIC / CONDUCTIVITY

    def flow(self, t, air, h, top_sun, side_sun):
        """Heat into each cell [W]. top_sun, side_sun: taken up by the open top and by the wall all around [W/m2]"""
        q = np.zeros_like(t)
        across = self.inner[:, None] * (t[1:] - t[:-1])
        q[:-1] += across
        q[1:] -= across
        upward = self.up[:, None] * (t[:, 1:] - t[:, :-1])
        q[:, :-1] += upward
        q[:, 1:] -= upward
        half = self.dz / 2 / CONDUCTIVITY
        # a surface: what the sun brings and the air takes, through half a cell of resin, and a wall where there is one
        q[:, -1] += self.flat * (air + top_sun / h - t[:, -1]) / (1 / h + half)
        q[:, 0] += self.flat * (air - t[:, 0]) / (1 / h + WALL + BENCH + half)
        q[-1] += self.side * (air + side_sun / h - t[-1]) / (1 / h + WALL + self.dr / 2 / CONDUCTIVITY)
        return q


class Tray:
    """A layer in a tray on a bench. mass [kg]; area [m2]; grid: cells through it"""

    def __init__(self, mass, area=0.06, grid=8):
        self.cells = (1, grid)
        self.dz, self.area = mass / DENSITY / area / grid, area
        self.volume = area * self.dz * np.ones(self.cells)
        self.step = min(0.3 * self.dz ** 2 * DENSITY * SPECIFIC / CONDUCTIVITY, 2.0)

    def flow(self, t, air, h, top_sun, side_sun):
        q = np.zeros_like(t)
        upward = self.area / self.dz * CONDUCTIVITY * (t[:, 1:] - t[:, :-1])
        q[:, :-1] += upward
        q[:, 1:] -= upward
        half = self.dz / 2 / CONDUCTIVITY
        q[:, -1] += self.area * (air + top_sun / h - t[:, -1]) / (1 / h + half)
        q[:, 0] += self.area * (air - t[:, 0]) / (1 / h + TRAY_WALL + BENCH + half)
        return q


def lasts(body, chemistry, air=298.15, h=9.0, sun=0.0, side=0.0, hot=HOT):
    """Minutes until the mean of it is a third of the way, or too hot. chemistry: (k2, energy, first, heat [J/kg])"""
    k2, energy, first, heat = chemistry
    t, a = np.full(body.cells, air), np.zeros(body.cells)
    weight, capacity, time = body.volume / body.volume.sum(), body.volume * DENSITY * SPECIFIC, 0.0
    while time < 6 * 3600:
        speed = rate(t, a, k2, energy, first)
        t = t + body.step * (body.flow(t, air, h, sun, side) / capacity + heat / SPECIFIC * speed)
        a = np.minimum(a + body.step * speed, 0.999)
        time += body.step
        if (a * weight).sum() >= GELS or (t * weight).sum() >= hot:
            break
    return time / 60


def fitted(energy=55000.0, first=0.06, heat=360000.0, minutes=30.0, grid=8):
    """The chemistry that makes 100 g in a cup at 25 degC last so long, whatever else is taken."""
    low, high = 1e-5, 1e-2
    for _ in range(18):
        middle = (low * high) ** 0.5
        if lasts(Cup(0.1, grid), (middle, energy, first, heat)) > minutes:
            low = middle
        else:
            high = middle
    return (low * high) ** 0.5, energy, first, heat
