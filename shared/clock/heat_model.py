"""Heat model: from the form's values to what both estimates of the usable time start from."""
from collections import namedtuple
from math import pi

from ..catalogue.glass import FOR_BUYING
from ..catalogue.pot_life import HUNDRED
from ..catalogue.pots import FILM_DOUBT, LABEL_DOUBT, OWN_DOUBT, SIZES, SMALL_CUP
from ..equations.calibrate_heat import ABOUT, AT_MOST, Calibration, Fact, calibrated
from ..equations.integrate import Pot, Rates
from ..equations.kinetics import fastest_rate, rate_factor
from ..equations.quick_rule import REFERENCE, RULE, by_ranges, film_time, ranges
from ..equations.runaway import SEMENOV, critical_half_size, semenov_number
from ..equations.sunshine import mean_rise
from ..forms.memo import memo_of, once
from ..forms.types import Values
from ..mix import ratio
from ..things.own_timings import in_sun
from .pot_heat import (
    COOL_END,
    MATTER_VALUES,
    USUAL,
    filled_conductivity,
    filled_density,
    grain_of,
    mix_heat,
    pot,
    thickness,
)
from .sun import Sun, sun_of

OWN_POT, LABEL_POT = "own", "label"  # whose pot the quick rule starts from
FILM_LABEL, FILM_POT, BEAD_POT, TRAY_POT, BY_MASS = "film_label", "film", "bead", "tray", "mass"
# by: which of the rule's ways, as above; whose: pot, OWN_POT or LABEL_POT, "" where none is asked
Rule = namedtuple("Rule", ("by", "whose"))
SAID = {"stiffening": ABOUT, "gone": AT_MOST}  # "still good" is a bound of its own pot and of easier ones, no more
FINEST = 0.1  # s, finer than a time is known, coarser than the runtimes differ: times no further apart are one
LEAST_BATCH, MOST_BATCH = 0.005, 20.0  # kg, between which a largest batch is looked for


def facts(values: Values, end: int = USUAL) -> "tuple[Fact, ...]":
    """What is known about this system's times, as the calibration reads it. end: of `pot_heat.pot`

    A pot that stood in the sun tells of the sun as much as of the mix, and how much of it was taken up is an estimate:
    it is none of them, only a bound (`usable.bounds`).
    """
    system = values["system"]
    mix = mixed_resin(system)
    # a test cup goes before the label by as much as an own timing does, however sure it is
    rows, less = [], max([1.0, min([row["doubt"] for row in trials_of(system)] or [0.0]) / OWN_DOUBT])
    if system["pot_time"] is not None:
        at = system["pot_temperature"]
        vessel = pot("cup", system["pot_mass"], SIZES, mix[:2], 0.0, at, at, end=end)  # no cup of the builder's
        rows.append(Fact("pot", vessel, at, system["pot_time"], ABOUT, LABEL_DOUBT * less))
    if system["film_time"] is not None:
        rows.append(Fact("film", None, system["pot_temperature"], system["film_time"], ABOUT, FILM_DOUBT * less))
    for row in timings_of(values):
        if row["said"] not in SAID or in_sun(row):
            continue
        start = start_of(row)
        sizes = dict(SIZES, cup_width=row["width"]) if row.get("width") else SIZES
        vessel = pot(row["in"], row["mass"], sizes, mix, share_filled(row["filler"], row["in"]), row["at"], start,
                     end=end, grain=grain_of(row["in"], row["grain"]))
        rows.append(Fact(str(row["place"] + 1), vessel, row["at"], row["after"], SAID[row["said"]],
                         row.get("doubt", OWN_DOUBT)))
    return tuple(rows)


def timings_of(values: Values) -> "list[dict]":
    """Own timings: those kept with the system, then those typed beside it, each with its place."""
    kept = list(values["system"]["timed"])
    return kept + [dict(row, place=row["place"] + len(kept)) for row in values["timings"]]


def calibration_of(values: Values) -> Calibration:
    """The calibration of what is known of a system, worked out once: a system stays while its batch is typed.

    values: "system" as records.SYSTEM reads it, "timings" beside it
    """
    rows = facts(values)
    return memo_of(values["system"]).once("calibration", rows, lambda: calibrated(rows))


def ends_of(values: Values) -> "tuple[Rates, Rates]":
    """Both ends of the chemistries that fit what is known of a system: the one that ends a pot first counts.

    values: as for `calibration_of`
    """
    found = calibration_of(values)
    return found.slow, found.fast


def mixed_resin(system: dict) -> tuple:
    """(heat [J/kg], density [kg/m3]) of the mixed resin, from the label where it gives the figures.

    Where a test cup was made of the system its heat counts, and behind them stands what `pot_heat.believed` takes; of
    several the least loss and the most heat.
    """
    heat, density = mixed_by_label(system)
    tried = trials_of(system)
    if not tried:
        return heat, density
    loss, mass = min([(row["loss"], row["mass"]) for row in tried])
    return heat * max([row["heat"] for row in tried]), density, loss, mass


def mixed_by_label(system: dict) -> "tuple[float, float]":
    """`mixed_resin` as it is without any test cup: a system with other timings asks it once."""
    return once(system, "mixed_resin", lambda: _by_label(system))


def _by_label(system: dict) -> "tuple[float, float]":
    found_basis = ratio.basis(system)
    phr = None
    if found_basis.weight_parts:
        phr = 100 * sum(found_basis.weight_parts[1:]) / found_basis.weight_parts[0]
    density = MATTER_VALUES["density"]
    if found_basis.densities:
        density = ratio.mixed_density(found_basis.weight_parts, found_basis.densities)
    return mix_heat(system["eew"], phr), density


def is_trial(row: dict) -> bool:
    """Whether an own timing is a test cup."""
    return "loss" in row


def trials_of(system: dict) -> "list[dict]":
    """Those of the system's own timings that are test cups."""
    return [row for row in system.get("timed", ()) if is_trial(row)]


def container_mix(values: Values) -> "tuple[float, float, float, float]":
    """(heat of the mixed resin [J/kg], density of everything [kg/m3], share of filler or glass [-], its true density
    [kg/m3])."""
    heat, density = mixed_resin(values["system"])[:2]
    filler, grain = share_filled(values["filler"], values["container"]), grain_of(values["container"], values["grain"])
    return heat, filled_density(filler, density, grain), filler, grain


def share_filled(filler: "float | None", container: str) -> float:
    """The share of filler or glass of the whole mass [-]; where nobody said, none, and in wet tape the usual glass.

    >>> share_filled(None, "cup"), share_filled(0.3, "cup")
    (0.0, 0.3)
    """
    if filler is None:
        return FOR_BUYING[0] if container == "roll" else 0.0
    return filler


def start_of(row: dict) -> float:
    """How warm an own timing began [K]: its resin, where that was told, else its air."""
    return row["at"] if row["resin"] is None else row["resin"]


def warmer(values: Values) -> float:
    """The warmer of air and resin [K]."""
    resin = values["resin_temperature"]
    return values["air"] if resin is None else max(values["air"], resin)


def seen_mass(row: dict) -> float:
    """The mass of an own timing that reacts [kg]: what held no resin gave no heat, and is not counted as if it had.

    >>> seen_mass({"mass": 0.25, "filler": 0.2})
    0.2
    """
    return row["mass"] * (1 - (row["filler"] or 0.0))


def seen_warmth(row: dict) -> float:
    """The temperature that an own timing bounds others at [K]: the lower of air and resin, which promises less.

    >>> seen_warmth({"at": 298.15, "resin": 288.15}), seen_warmth({"at": 298.15, "resin": None})
    (288.15, 298.15)
    """
    return row["at"] if row["resin"] is None else min(row["at"], row["resin"])


def pot_of(values: Values, kind: str, mass: float, end: int = USUAL, sun: "Sun | None" = None) -> Pot:
    """The lumped balance of a container in this form's air and sun, or in another. end: of `pot_heat.pot`

    At the cool end little stands low in a cup that nobody measured.
    """
    _, density, filler, grain = container_mix(values)
    sizes = values
    if end == COOL_END and values["cup_width"] is None and mass / density < pi / 4 * SMALL_CUP ** 3:
        sizes = dict(values, cup_width=SMALL_CUP)
    start = values["air"] if values["resin_temperature"] is None else values["resin_temperature"]
    return pot(kind, mass, sizes, mixed_resin(values["system"]), filler, values["air"], start, values["moving"],
               sun_of(values) if sun is None else sun, end, grain)


def own_pots(timings: list, here: "Values | None" = None) -> "list[tuple]":
    """Own timings that the quick rule can start from: of pots that were stiffening in a cup or a bag in the shade.

    here: the batch that is asked, where it is known. The rule knows neither filler nor warm resin: of a pot that was
    seen with more filler than this one only what reacts counts, and where its resin was otherwise warm the lower
    temperature.
    """
    return [(row["after"], _as_filled(row, here), _as_warm(row, here), OWN_POT) for row in timings
            if row["said"] == "stiffening" and row["in"] in ("cup", "bag") and not in_sun(row)]


def _as_filled(row: dict, here: "Values | None") -> float:
    filler = 0.0 if here is None else share_filled(here.get("filler"), here.get("container", ""))
    return min(row["mass"], seen_mass(row) / (1 - filler))


def _as_warm(row: dict, here: "Values | None") -> float:
    if row["resin"] is None or here is None or here.get("resin_temperature") is None:
        return seen_warmth(row)
    seen, asked = row["resin"] - row["at"], here["resin_temperature"] - here["air"]
    alike = seen * asked > 0 and abs(asked) >= abs(seen) - 1e-6
    return max(row["at"], row["resin"]) if alike else seen_warmth(row)


def known_pots(values: Values) -> "list[tuple]":
    """What the rule starts from: (time [s], mass [kg], temperature [K], whose) of each pot; own ones go first."""
    own, system = own_pots(timings_of(values), values), values["system"]
    if own or system["pot_time"] is None:
        return own
    return [(system["pot_time"], system["pot_mass"], system["pot_temperature"], LABEL_POT)]


def quick_time(values: Values, kind: str, mass: float, exponent: "float | None" = None,
               doubling: float = RULE["doubling"]) -> "tuple[float | None, Rule]":
    """The trade's quick rule for a container -> (time [s] or None, how it was reckoned).

    A pot goes by its mass; a film and a bead by multiples of the 100 g pot life; a tray as the cup that is as thick,
    and no longer than a film. The warmer of air and resin counts, and the sun. exponent, doubling: of the rule, where
    typed
    """
    time, how = _quick_in_shade(values, kind, mass, exponent, doubling)
    if time is None or not sun_of(values).flux:
        return time, how
    return quick_in_sun(time, [pot_of(values, kind, mass)], values["air"], doubling), how


def quick_in_sun(time: float, pots: "list[Pot]", air: float, doubling: float) -> float:
    """The quick rule knows no sun: its time in the shade, shortened by how warm the sun alone makes the mix on the mean
    of the time that is left of it [s]:
        t = t_shade f**(-mean(t) / 10)

    time: t_shade [s]; pots: balances in the sun, of which the shortest time counts; air: [K]; doubling: f, as the
    rule's. The end is rounded down.
    """
    found = time
    for here in pots:
        rise = here.air - air
        if found < time and _sunned(time, rise, here.loss, doubling, found) >= found:
            continue  # it lasts longer
        low, high = 0.0, time
        for _ in range(12):
            middle = (low + high) / 2
            if _sunned(time, rise, here.loss, doubling, middle) < middle:
                high = middle
            else:
                low = middle
        found = min(found, low)
    return found


def _sunned(time: float, rise: float, loss: float, doubling: float, spent: float) -> float:
    """What is left of a time in the shade as warm as the sun is on the mean of what is spent [s]."""
    return time * doubling ** (-mean_rise(rise, loss, spent) / 10)


def _quick_in_shade(values: Values, kind: str, mass: float, exponent: "float | None",
                    doubling: float) -> "tuple[float | None, Rule]":
    system, known = values["system"], known_pots(values)
    warm = warmer(values)
    if not known:
        return film_time(system, warm, None, doubling), Rule(FILM_LABEL, "")
    exponent = RULE["exponent"] if exponent is None else exponent
    found, whose = ranges(known, exponent, doubling), known[0][3]
    pace = doubling ** ((warm - REFERENCE) / 10)
    hundred = by_ranges(found, HUNDRED, exponent) / pace
    film = film_time(system, warm, hundred, doubling)
    if kind == "film":
        return film, Rule(FILM_POT, whose) if system["film_time"] is None else Rule(FILM_LABEL, "")
    if kind == "bead":
        return min(hundred * RULE["soft"], film), Rule(BEAD_POT, whose)
    if kind == "tray":
        density = container_mix(values)[1]
        thick = thickness("tray", mass / density, values)
        cup = density * pi / 4 * (6 * thick) ** 3  # a cup as wide as full has V/A of a sixth of its width
        return min(by_ranges(found, cup, exponent) / pace, film), Rule(TRAY_POT, "")
    return min(by_ranges(found, mass, exponent) / pace, film), Rule(BY_MASS, whose)


def tray_layer(values: Values, rates: Rates, end: int = USUAL) -> float:
    """The deepest layer in the tray that neither Semenov's nor Frank-Kamenetskii's bound lets run away [m].

    Both with the fastest isothermal rate; Semenov's counts the air's resistance, the other the matter's own. Sun counts
    as air that is warmer. end: of `pot_heat.pot`
    """
    heat, density, filler, grain = container_mix(values)
    conductivity = filled_conductivity(filler, mixed_resin(values["system"])[1], grain)
    air = pot_of(values, "tray", values["batch"], end).air
    factor = rate_factor(rates.grown_energy, air, rates.reference)
    rate = fastest_rate(rates.first * factor, rates.grown * factor)
    half = critical_half_size("slab", rates.grown_energy, conductivity, density, heat * (1 - filler), rate, air)
    flat = values["tray_length"] * values["tray_width"]
    layer = 0.002
    for _ in range(6):  # the number goes with the depth, but for the little that the matter's own resistance adds
        here = pot_of(values, "tray", layer * flat * density, end)
        layer *= SEMENOV / semenov_number(rates.grown_energy, here.rise, here.loss, rate, air)
    return min(layer, 2 * half)
