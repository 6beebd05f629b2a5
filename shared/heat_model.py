"""Heat model: from the form's values to both estimates of the usable time, for this container and its alternatives."""
from collections import namedtuple
from math import exp, log, pi

from . import ratio
from .calibrate_heat import ABOUT, AT_LEAST, AT_MOST, FILM, LABEL, OWN, TOO_HOT, USABLE, Fact, calibrated, usable_time
from .integrate import LONGEST, pot_run
from .kinetics import fastest_rate, rate_factor
from .numbers import DOWN, to_step
from .once import once
from .pot_heat import CONTAINER_ROWS, MATTER_VALUES, SIZES, filled_density, mix_heat, pot, thickness
from .quick_rule import HUNDRED, RULE, film_time, pot_time
from .records import SYSTEM
from .runaway import SEMENOV, critical_half_size, semenov_number

OWN_TIMING = "your own timing"
HALVED = ", half as long for each 10 °C warmer"
SAID = {"stiffening": ABOUT, "good": AT_LEAST, "gone": AT_MOST}
LEAST_BATCH, MOST_BATCH = 0.005, 20.0  # kg, between which a largest batch is looked for

# shorter, model, quick: usable times [s], quick None where there is nothing to start from; rule: how it was reckoned
Estimate = namedtuple("Estimate", ("shorter", "model", "quick", "rule"))
Found = namedtuple("Found", ("calibration", "best", "run", "tray", "tray_run", "half", "slow", "fast", "from_memory"))

KEPT = []  # (facts, calibration), the latest last: a system stays while its batch is typed
MOST_KEPT = 4


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
        glass = MATTER_VALUES["glass_share"] if row["in"] == "roll" else 0.0
        vessel = pot(row["in"], row["mass"], SIZES, mix, glass, row["at"], row["at"])
        rows.append(Fact(str(row["place"] + 1), vessel, row["at"], row["after"], SAID[row["said"]], OWN))
    return tuple(rows)


def timings_of(values):
    """Own timings: those kept with the system, then those typed beside it, each with its place."""
    kept = list(values["system"]["timed"])
    return kept + [dict(row, place=row["place"] + len(kept)) for row in values["timings"]]


def kept_calibration(rows):
    """The calibration of these facts, worked out once and kept."""
    for known, calibration in KEPT:
        if known == rows:
            return calibration
    calibration = calibrated(rows)
    KEPT.append((rows, calibration))
    if len(KEPT) > MOST_KEPT:
        del KEPT[0]
    return calibration


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


def known_pot(values, mass):
    """The one of them that is nearest in mass, or None."""
    nearest = [(abs(log(one[1] / mass)), place) for place, one in enumerate(known_pots(values))]
    return known_pots(values)[min(nearest)[1]] if nearest else None


def quick_time(values, kind, mass):
    """The trade's quick rule for a container -> (time [s] or None, how it was reckoned).

    A pot goes by its mass; a film and a bead by multiples of the 100 g pot life; a tray as the cup that is as thick,
    and no longer than a film. The warmer of air and resin counts.
    """
    system, known = values["system"], known_pot(values, mass)
    warm = values["air"] if values["resin_temperature"] is None else max(values["air"], values["resin_temperature"])
    if known is None:
        return film_time(system, warm), "the label's film time" + HALVED
    hundred = pot_time(HUNDRED, warm, *known[:3])
    film = film_time(system, warm, hundred)
    if kind == "film":
        rule = "3.5 times the pot life of 100 g, from " + known[3] if system["film_time"] is None else \
            "the label's film time"
        return film, rule + HALVED
    if kind == "bead":
        return min(hundred * RULE["soft"], film), "2 times the pot life of 100 g, from " + known[3] + HALVED
    if kind == "tray":
        density = container_mix(values)[1]
        thick = thickness("tray", mass / density, values)
        cup = density * pi / 4 * (6 * thick) ** 3  # a cup as wide as full has V/A of a sixth of its width
        return pot_time(cup, warm, *known[:3], longest=film), "as a cup as thick as this layer, no longer than a film"
    return pot_time(mass, warm, *known[:3], longest=film), "by the cube root of the mass, from " + known[3] + HALVED


def estimates(values, calibration, kind, mass, run=None) -> Estimate:
    """Both usable times of a mass in a container."""
    if run is None:
        model = usable_time(calibration.rates, pot_of(values, kind, mass))
    else:
        model = LONGEST if run.reached is None else run.reached
    model = to_step(model, 0.1)  # finer than it is known, coarser than the runtimes differ
    quick, rule = quick_time(values, kind, mass)
    return Estimate(model if quick is None else min(model, quick), model, quick, rule)


def found(values) -> Found:
    """All that lines and figures tell, worked out once for each answer."""
    return once(values, "heat", lambda: _found(values))


def _found(values):
    calibration = kept_calibration(facts(values))
    kind, mass = values["container"], values["batch"]
    here = pot_of(values, kind, mass)
    run = pot_run(calibration.rates, here, USABLE, TOO_HOT, whole=True)
    best = estimates(values, calibration, kind, mass, run)
    tray = tray_run = half = None
    if CONTAINER_ROWS[kind][5]:
        until = max(run.points[-1][0], 2 * best.shorter)
        tray_run = pot_run(calibration.rates, pot_of(values, "tray", mass), USABLE, TOO_HOT, whole=True, until=until)
        tray = estimates(values, calibration, "tray", mass, tray_run if tray_run.reached is not None else None)
    if kind != "film":
        half = estimates(values, calibration, kind, mass / 2)
    memory = SYSTEM.from_memory(values["system"], "pot_time")
    return Found(calibration, best, run, tray, tray_run, half, usable_time(calibration.slow, here),
                 usable_time(calibration.fast, here), memory and not timings_of(values))


def largest_batch(values, all_of_it):
    """The largest mass that stays usable for the wanted time -> (mass [kg], whether no limit was met); None: not any.

    Usable time falls with mass, so a regula falsi on the logarithms finds it; the last that lasts long enough is told.
    """
    kind, wanted = values["container"], values["wanted"]
    target = log(wanted)

    def lasting(log_mass):
        return log(estimates(values, all_of_it.calibration, kind, exp(log_mass)).shorter) - target

    low, high = log(LEAST_BATCH), log(MOST_BATCH)
    at_low = lasting(low)
    if at_low < 0:
        return None
    at_high = lasting(high)
    if at_high >= 0:
        return MOST_BATCH, True
    for _ in range(12):
        middle = low + (high - low) * max(0.1, min(0.9, at_low / (at_low - at_high)))
        at_middle = lasting(middle)
        if at_middle >= 0:
            low, at_low = middle, at_middle
        else:
            high, at_high = middle, at_middle
        if high - low < 0.01:
            break
    return to_step(exp(low), 0.001, DOWN), False  # whole grams: a scale shows no less


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
