"""Pot heat: what a container sheds and what a mix in it sets free, as the numbers of a lumped balance.

One temperature stands for all of the matter; the resistance from its mean to its surface is in the loss, its hot middle
is not in the peak.
"""
from math import log, pi

from ..catalogue.containers import AIR, CONTAINERS, LAID, MATTER, TOO_HOT
from ..catalogue.glass import FIBRE_DENSITY
from ..catalogue.pots import SIZES  # noqa: F401  (for the examples)
from ..catalogue.sunlight import UNEVEN, UPRIGHT
from ..catalogue.trials import UP_TO
from ..equations.integrate import Pot
from ..equations.kinetics import heat_of_mix
from ..equations.sunshine import sun_rise, uneven
from ..mix.ratio import mixed_density
from ..things.records import FILLER
from .sun import NO_SUN, Sun

MATTER_VALUES = {row[0]: row[1] for row in MATTER}
# which end of what is remembered: as usual, or what makes a peak hottest or coolest
USUAL, HOT_END, COOL_END = 0, 1, 2
AIR_VALUES = {row[0]: row[2:5] for row in AIR}
UNDILUTED = {row[0]: row[2] for row in MATTER}["undiluted"]  # at the least
CONTAINER_ROWS = {row[0]: row for row in CONTAINERS}
FLOUR = FILLER.figure("wood-flour", "density")  # kg/m3, where nobody says which filler


def grain_of(container: str, grain: "float | None" = None) -> float:
    """True density of what is in the mix [kg/m3]: glass in wet tape, else as told, else wood flour's.

    >>> grain_of("cup"), grain_of("cup", 200.0), grain_of("roll", 200.0)
    (1300.0, 200.0, 2540.0)
    """
    return FIBRE_DENSITY if container == "roll" else grain or FLOUR


def filled_density(filler: float, density: float, grain: float) -> float:
    """Density of a mix with filler [kg/m3]; no air in it.

    filler: w [-], share of the whole mass; density: of the liquids, grain: of the filler [kg/m3]
    """
    return mixed_density((1 - filler, filler), (density, grain))


def filled_conductivity(filler: float, density: float, grain: float) -> float:
    """How a mix with filler conducts heat [W/(m K)]: as the liquid; grains that are lighter than it are hollow:
        lambda = lambda_mix (1 - phi) / (1 + phi / 2)

    filler: w [-], of the whole mass; density: of the liquids, grain: of the filler [kg/m3]; phi: its share by volume
    returns: the spheres taken to conduct nothing, to the safe side; Maxwell, A Treatise on Electricity and Magnetism
        (1873), art. 314, from memory
    >>> filled_conductivity(0.3, 1100.0, 1300.0), round(filled_conductivity(0.2, 1100.0, 200.0), 3)
    (0.2, 0.065)
    """
    if grain >= density:
        return MATTER_VALUES["conductivity"]
    share = filler * filled_density(filler, density, grain) / grain
    return MATTER_VALUES["conductivity"] * (1 - share) / (1 + share / 2)


def specific_heat(filler: float) -> float:
    """Specific heat of a mix with filler, by mass: c = (1 - w) c_mix + w c_filler [J/(kg K)]

    >>> specific_heat(0.0)
    2000.0
    """
    return (1 - filler) * MATTER_VALUES["specific_heat"] + filler * MATTER_VALUES["filler_heat"]


def surfaces(kind: str, volume: float, sizes: dict, air: float) -> tuple:
    """The surfaces through which a container sheds heat: pairs of area [m2] and resistance outside the matter [m2 K/W].

    kind: of CONTAINERS; volume: [m3], above 0; sizes: as SIZES, m; air: heat given to the air [W/(m2 K)]
    Plane geometry: a cylinder for cup, bag and roll, a prism for tray and film, a cove in a square corner for a bead.
    >>> [round(area * 1e4, 1) for area, _ in surfaces("tray", 0.0002, SIZES, 9.0)]
    [600.0, 600.0]
    """
    free = 1 / air
    wall, bench = CONTAINER_ROWS[kind][4], MATTER_VALUES["bench"]
    if kind == "cup":
        width = sizes["cup_width"] or (4 * volume / pi) ** (1 / 3)
        flat = pi * width * width / 4
        side = 4 * volume / width
        return ((flat, free), (side, free + wall), (flat, free + wall + bench))
    if kind == "bag":
        width = sizes["bag_width"]
        return ((4 * volume / width + pi * width * width / 2, free + wall),)
    if kind == "tray":
        flat = sizes["tray_length"] * sizes["tray_width"]
        return ((flat, free), (flat, free + wall + bench))
    wood = free + sizes["panel"] / MATTER_VALUES["wood"]
    if kind == "bead":
        radius = sizes["radius"]
        length = volume / (radius * radius * (1 - pi / 4))
        return ((pi * radius / 2 * length, free), (2 * radius * length, wood))
    if kind == "roll":
        width = sizes["tape_width"]
        across = (4 * volume / (pi * width)) ** 0.5
        return ((pi * across * width + pi * across * across / 2, free),)
    flat = volume / sizes["film"]
    return ((flat, free), (flat, wood))


def sunlit(kind: str, volume: float, sizes: dict) -> float:
    """The area that the sun shines on, as so much on the level [m2]: what looks up, and the side of an upright cup.

    kind, volume, sizes: as for `surfaces`. A bag and a roll lie on their side; a cove takes the sun in at its mouth.
    >>> [round(sunlit(kind, 0.0002, SIZES) * 1e4, 1) for kind in ("tray", "cup", "bag")]
    [600.0, 49.6, 42.4]
    """
    if kind == "cup":
        width = sizes["cup_width"] or (4 * volume / pi) ** (1 / 3)
        return pi * width * width / 4 + UPRIGHT * 4 * volume / (pi * width)
    if kind == "bag":
        return 4 * volume / (pi * sizes["bag_width"])
    if kind == "tray":
        return sizes["tray_length"] * sizes["tray_width"]
    if kind == "bead":
        radius = sizes["radius"]
        return 2 ** 0.5 * radius * volume / (radius * radius * (1 - pi / 4))
    if kind == "roll":
        return (4 * volume / (pi * sizes["tape_width"])) ** 0.5 * sizes["tape_width"]
    return volume / sizes["film"]


def heat_loss(kind: str, volume: float, sizes: dict, air: float,
              conductivity: float = MATTER_VALUES["conductivity"]) -> float:
    """Heat shed for each kelvin above the air, in W/K:
        UA = sum(A_i / (R_i + R_in))        R_in = f (V / A) / lambda

    kind, volume, sizes, air: as for `surfaces`; f: 1/3 for a slab, 1/2 for a cylinder, heat made evenly
    conductivity: lambda, of the matter [W/(m K)]
    returns: UA [W/K]
    >>> 0.05 < heat_loss("cup", 1e-4, SIZES, 9.0) < 0.12
    True
    """
    found = surfaces(kind, volume, sizes, air)
    area = sum([one for one, _ in found])
    inner = CONTAINER_ROWS[kind][3] * volume / area / conductivity
    return sum([one / (outer + inner) for one, outer in found])


def thickness(kind: str, volume: float, sizes: dict) -> float:
    """Volume over surface [m]: half the thickness of a slab, half the radius of a cylinder.

    >>> round(thickness("film", 1e-4, SIZES) * 1e6)
    150
    """
    return volume / sum([area for area, _ in surfaces(kind, volume, sizes, 9.0)])


def pot(kind: str, mass: float, sizes: dict, mix: tuple, filler: float, air_temperature: float, start: float,
        air: str = "still", sun: Sun = NO_SUN, end: int = USUAL, grain: float = FLOUR) -> Pot:
    """The lumped balance of a container: m c dT/dt = m Q da/dt - UA (T - T_air) + a G A
    The sun stands in it as air that is warmer by a G A / UA.

    mass: [kg] of everything in it; filler: share [-]
    mix: (heat [J/kg of mixed resin], density [kg/m3 of mixed resin]), and behind them what `believed` takes
    air_temperature, start: [K]; air: of AIR; sun: what it takes up, as `sun.sun_of` gives it
    end: USUAL; HOT_END, where it sheds least; COOL_END, where it sheds most and a thinned mix sets the least heat free
    grain: true density of the filler [kg/m3]
    >>> round(pot("cup", 0.1, SIZES, (400000.0, 1100.0), 0.0, 293.15, 293.15).rise)
    200
    """
    heat = specific_heat(filler)
    volume = mass / filled_density(filler, mix[1], grain)
    loss = heat_loss(kind, volume, sizes, AIR_VALUES[air][end] * sun.air, filled_conductivity(filler, mix[1], grain))
    loss *= believed(kind, mass, mix[2:])
    if sun.flux:
        flux = uneven(sun.flux, UNEVEN) if CONTAINER_ROWS[kind][5] else sun.flux
        air_temperature += sun_rise(flux, sunlit(kind, volume, sizes), loss)
    share = UNDILUTED if end == COOL_END else MATTER_VALUES["undiluted"]
    return Pot(mix[0] * share * (1 - filler) / heat, loss / (mass * heat), air_temperature, start)


def believed(kind: str, mass: float, measured: tuple = ()) -> float:
    """What a test cup told of the loss of heat, as far as another container may count on it [-].

    measured: (measured against estimated [-], the mass of the test [kg]), or ()
    Less than estimated is the unsafe side and counts everywhere. More counts in cups; of those that hold more than the
    test did the less, and of UP_TO times as much nothing.
    >>> believed("cup", 0.1, (1.2, 0.1)), believed("tray", 0.1, (1.2, 0.1)), believed("tray", 0.1, (0.9, 0.1))
    (1.2, 1.0, 0.9)
    """
    if not measured:
        return 1.0
    factor, tested = measured
    if factor <= 1 or mass <= tested:
        return factor if factor <= 1 or kind == "cup" else 1.0
    return factor ** max(0.0, 1 - log(mass / tested) / log(UP_TO)) if kind == "cup" else 1.0


def middle_share(kind: str, volume: float, sizes: dict, air: float) -> float:
    """How much further than its mean the middle of a container is from the air, of that rise [-]; a cylinder:
        R_in UA / A

    kind, volume, sizes, air: as for `surfaces`
    >>> 0.1 < middle_share("cup", 1e-4, SIZES, 9.0) < 0.2
    True
    """
    area = sum([one for one, _ in surfaces(kind, volume, sizes, air)])
    inner = CONTAINER_ROWS[kind][3] * volume / area / MATTER_VALUES["conductivity"]
    return inner * heat_loss(kind, volume, sizes, air) / area


def too_hot(kind: str, here: Pot, air: float) -> float:
    """From where a mix is too hot to be used any more [K]: a pot or a tray from where a hand cannot hold it. What is
    laid on wood is not held: there the reaction's own heat ends it, and what the sun alone brings does not.

    kind: of CONTAINERS; here: its balance; air: without sun [K]
    >>> too_hot("film", pot("film", 0.1, SIZES, (4e5, 1100.0), 0.0, 293.15, 293.15), 293.15)
    333.15
    """
    return TOO_HOT + (here.air - air) if kind in LAID else TOO_HOT


def mix_heat(epoxide_weight: "float | None", phr: "float | None") -> float:
    """Heat of a mixed resin [J/kg], from the label where it gives the figures and from memory where not.

    epoxide_weight: EEW [kg/eq] or None; phr: hardener per hundred of resin by weight, or None
    >>> round(mix_heat(0.190, 50) / 1000, 1)
    374.0
    """
    weight = epoxide_weight or MATTER_VALUES["epoxide_weight"]
    return heat_of_mix(MATTER_VALUES["heat_per_epoxide"], weight, phr or MATTER_VALUES["phr"])
