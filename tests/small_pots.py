"""Small pots as an independent model: finite volumes in radius and height, heat given to still air by a published law,
more the warmer the wall, specific heat that grows with temperature. It shares no line with the engine, and is fitted to
the label by itself."""
from math import pi

import numpy as np
from sun_model import CONDUCTIVITY, DENSITY, GELS, HOT, Cup, rate

STEFAN, EMITS = 5.670374419e-8, 0.9


def nusselt(prandtl, grashof):
    """Still air along an upright plate: Churchill and Chu, Int. J. Heat Mass Transfer 18 (1975) 1323."""
    return (0.825 + 0.387 * (prandtl * grashof) ** (1 / 6) / (1 + (0.492 / prandtl) ** (9 / 16)) ** (8 / 27)) ** 2


def to_air(surface, air, height):
    """Convection and radiation of a small upright pot in still air [W/(m2 K)]; temperatures [K], height [m]."""
    film = (surface + air) / 2
    conductivity, viscosity = 0.0262 * (film / 300) ** 0.85, 1.59e-5 * (film / 300) ** 1.75  # dry air, 1 bar
    grashof = 9.81 / film * np.maximum(surface - air, 0.1) * height**3 / viscosity**2
    return nusselt(0.707, grashof) * conductivity / height + EMITS * STEFAN * (surface**2 + air**2) * (surface + air)


class Beaker(Cup):
    """A can of resin. width: [m], None where it is as wide as it is full"""

    def __init__(self, mass, width=None, grid=4):
        super().__init__(mass, grid)
        if width:
            self.width, self.dr = width, width / 2 / grid
            edges = np.arange(grid + 1) * self.dr
            self.flat = pi * (edges[1:] ** 2 - edges[:-1] ** 2)
            high = max(1, round(mass / DENSITY / self.flat.sum() / self.dr))
            self.cells, self.dz = (grid, high), mass / DENSITY / self.flat.sum() / high
            self.volume = self.flat[:, None] * self.dz * np.ones(self.cells)
            self.inner = 2 * pi * edges[1:-1] * self.dz / self.dr * CONDUCTIVITY
            self.up = self.flat / self.dz * CONDUCTIVITY
            self.side = 2 * pi * edges[-1] * self.dz
        self.height = mass / DENSITY / self.flat.sum()
        self.step = 0.1 * min(self.dr, self.dz) ** 2 * DENSITY * 2000 / CONDUCTIVITY


def run(body, chemistry, air):
    """(minutes until it is a third of the way or too hot, highest mean temperature [K]) of a pot that is left alone.

    chemistry: (k2, energy, first, heat [J/kg]) as in `sun_model`; air: [K]
    """
    k2, energy, first, heat = chemistry
    t, a = np.full(body.cells, air), np.zeros(body.cells)
    weight = body.volume / body.volume.sum()
    time, end, peak = 0.0, None, air
    while time < 48 * 3600:
        speed = rate(t, a, k2, energy, first)
        specific = 1900 + 3 * (t - 298.15)
        mean = (t * weight).sum()
        slope = body.flow(t, air, to_air(mean, air, body.height), 0.0, 0.0) / (body.volume * DENSITY * specific) + (
            heat / specific * speed)
        step = min(body.step, 0.7 / np.abs(slope).max(), 0.01 / speed.max())
        t, a, time = t + step * slope, np.minimum(a + step * speed, 0.9999), time + step
        peak = max(peak, mean)
        if end is None and ((a * weight).sum() >= GELS or mean >= HOT):
            end = time / 60
        if end is not None and (a * weight).sum() > 0.35 and mean < peak - 0.1 * (peak - air):
            break
    return end, peak


def fitted(energy, first, heat, minutes=30.0):
    """The chemistry that makes 100 g in a cup at 25 degC last so long."""
    k2 = 6e-4
    for _ in range(6):
        k2 *= (run(Beaker(0.1), (k2, energy, first, heat), 298.15)[0] / minutes) ** 1.1
    return k2, energy, first, heat
