"""Heat model: from the form's values to what both estimates of the usable time start from."""
from math import pi

from ..equations.calibrate_heat import ABOUT, AT_MOST, FILM, LABEL, OWN, Fact, calibrated
from ..equations.kinetics import fastest_rate, rate_factor
from ..equations.quick_rule import HUNDRED, REFERENCE, RULE, by_ranges, film_time, ranges
from ..equations.runaway import SEMENOV, critical_half_size, semenov_number
from ..forms.memo import memo_of
from ..mix import ratio
from .pot_heat import MATTER_VALUES, SIZES, filled_density, mix_heat, pot, thickness

OWN_TIMING = "your own timing"
HALVED = ", half as long for each {10 K} warmer"
SAID = {"stiffening": ABOUT, "gone": AT_MOST}  # "still good" is a bound of its own pot and of easier ones, no more
LEAST_BATCH, MOST_BATCH = 0.005, 20.0  # kg, between which a largest batch is looked for


def facts(values):
    """What is known about this system's times, as the calibration reads it."""
    system = values["system"]
    mix = mixed_resin(system)
    rows = []
    if system["pot_time"] is not None:
        at = system["pot_temperature"]
        rows.append(Fact("pot", pot("cup", system["pot_mass"], SIZES, mix, 0.0, at, at), at, system["pot_time"], ABOUT,
                         LABEL))
    if system["film_time"] is not None:
        rows.append(Fact("film", None, system["pot_temperature"], system["film_time"], ABOUT, FILM))
    for row in timings_of(values):
        if row["said"] not in SAID:
            continue
        glass = MATTER_VALUES["glass_share"] if row["in"] == "roll" else 0.0
        vessel = pot(row["in"], row["mass"], SIZES, mix, glass, row["at"], row["at"])
        rows.append(Fact(str(row["place"] + 1), vessel, row["at"], row["after"], SAID[row["said"]], OWN))
    return tuple(rows)


def timings_of(values):
    """Own timings: those kept with the system, then those typed beside it, each with its place."""
    kept = list(values["system"]["timed"])
    return kept + [dict(row, place=row["place"] + len(kept)) for row in values["timings"]]


def calibration_of(values):
    """The calibration of what is known of a system, worked out once: a system stays while its batch is typed.

    values: "system" as records.SYSTEM reads it, "timings" beside it
    """
    rows = facts(values)
    return memo_of(values["system"]).once("calibration", rows, lambda: calibrated(rows))


def mixed_resin(system):
    """(heat [J/kg], density [kg/m3]) of the mixed resin, from the label where it gives the figures."""
    found_basis = ratio.basis(system)
    phr = None
    if found_basis.weight_parts:
        phr = 100 * sum(found_basis.weight_parts[1:]) / found_basis.weight_parts[0]
    density = MATTER_VALUES["density"]
    if found_basis.densities:
        density = ratio.mixed_density(found_basis.weight_parts, found_basis.densities)
    return mix_heat(system["eew"], phr), density


def container_mix(values):
    """(heat of the mixed resin [J/kg], density of everything [kg/m3], share of filler or glass [-])."""
    heat, density = mixed_resin(values["system"])
    filler = values["filler"]
    if filler is None:
        filler = MATTER_VALUES["glass_share"] if values["container"] == "roll" else 0.0
    return heat, filled_density(filler, density), filler


def pot_of(values, kind, mass):
    """The lumped balance of a container in this form's air."""
    filler = container_mix(values)[2]
    start = values["air"] if values["resin_temperature"] is None else values["resin_temperature"]
    return pot(kind, mass, values, mixed_resin(values["system"]), filler, values["air"], start, values["moving"])


def own_pots(timings):
    """Own timings that the quick rule can start from: of pots that were stiffening in a cup or a bag."""
    return [(row["after"], row["mass"], row["at"], OWN_TIMING) for row in timings
            if row["said"] == "stiffening" and row["in"] in ("cup", "bag")]


def known_pots(values):
    """What the rule starts from: (time [s], mass [kg], temperature [K], whose) of each pot; own ones go first."""
    own, system = own_pots(timings_of(values)), values["system"]
    if own or system["pot_time"] is None:
        return own
    return [(system["pot_time"], system["pot_mass"], system["pot_temperature"], "the label's pot life")]


def quick_time(values, kind, mass, exponent=None, doubling=RULE["doubling"]):
    """The trade's quick rule for a container -> (time [s] or None, how it was reckoned).

    A pot goes by its mass; a film and a bead by multiples of the 100 g pot life; a tray as the cup that is as thick,
    and no longer than a film. The warmer of air and resin counts. exponent, doubling: of the rule, where typed
    """
    system, known = values["system"], known_pots(values)
    warm = values["air"] if values["resin_temperature"] is None else max(values["air"], values["resin_temperature"])
    if not known:
        return film_time(system, warm, None, doubling), "the label's film time" + HALVED
    exponent = RULE["exponent"] if exponent is None else exponent
    found, whose = ranges(known, exponent, doubling), known[0][3]
    pace = doubling ** ((warm - REFERENCE) / 10)
    hundred = by_ranges(found, HUNDRED, exponent) / pace
    film = film_time(system, warm, hundred, doubling)
    if kind == "film":
        rule = "3.5 times the pot life of {100 g}, from " + whose if system["film_time"] is None else \
            "the label's film time"
        return film, rule + HALVED
    if kind == "bead":
        return min(hundred * RULE["soft"], film), "2 times the pot life of {100 g}, from " + whose + HALVED
    if kind == "tray":
        density = container_mix(values)[1]
        thick = thickness("tray", mass / density, values)
        cup = density * pi / 4 * (6 * thick) ** 3  # a cup as wide as full has V/A of a sixth of its width
        return min(by_ranges(found, cup, exponent) / pace, film), \
            "as a cup as thick as this layer, no longer than a film"
    return min(by_ranges(found, mass, exponent) / pace, film), "by the cube root of the mass, from " + whose + HALVED


def tray_layer(values, calibration) -> float:
    """The deepest layer in the tray that neither Semenov's nor Frank-Kamenetskii's bound lets run away [m].

    Both with the fastest isothermal rate; Semenov's counts the air's resistance, the other the matter's own.
    """
    heat, density, filler = container_mix(values)
    rates, air = calibration.rates, values["air"]
    factor = rate_factor(rates.grown_energy, air, rates.reference)
    rate = fastest_rate(rates.first * factor, rates.grown * factor)
    half = critical_half_size("slab", rates.grown_energy, MATTER_VALUES["conductivity"], density, heat * (1 - filler),
                              rate, air)
    flat = values["tray_length"] * values["tray_width"]
    layer = 0.002
    for _ in range(6):  # the number goes with the depth, but for the little that the matter's own resistance adds
        here = pot_of(values, "tray", layer * flat * density)
        layer *= SEMENOV / semenov_number(rates.grown_energy, here.rise, here.loss, rate, air)
    return min(layer, 2 * half)
