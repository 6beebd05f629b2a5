"""Heat found: all that the heat answer tells of a batch in its container, of a tray and of half the batch."""
from collections import namedtuple
from math import exp, log, pi

from ..catalogue.containers import HOT
from ..catalogue.pots import DEEPEST_CUP, TIMES_APART
from ..catalogue.sunlight import TRAY_UP_TO
from ..equations.calibrate_heat import USABLE
from ..equations.integrate import LONGEST, Pot, Rates, Run, pot_run
from ..equations.rounding import DOWN, to_step
from ..forms.memo import memo_of, once
from ..forms.types import Values
from ..things.lowest_temperature import lowest
from ..things.records import SYSTEM
from .heat_model import (
    FINEST,
    LEAST_BATCH,
    MOST_BATCH,
    calibration_of,
    container_mix,
    ends_of,
    pot_of,
    timings_of,
    tray_layer,
)
from .peak_band import band, corners
from .pot_heat import CONTAINER_ROWS, HOT_END, too_hot
from .sun import said, shaded, sun_of
from .usable import Usable, contradictions, in_other_sun, setting, usable

POT_FACT, FILM_FACT = "pot", "film"  # the label's own, of a calibration's facts; an own timing goes by its number
WHOLE_RUNS = "whole runs"  # heading of the memo
MET = 0.02  # and within this they are met
NEXT = {"putty": "bead", "wet": "film"}  # what the batch is for: the layer whose working time bounds what comes next

# best: usable.Usable of this batch; tray: of the same mix poured into the tray, None beside no pot; half: of half of
# it, None for a film; tray_gain, half_gain: whole minutes longer than the batch, None as they are
# run, tray_run: integrate.Run; peak: `Peak`; calibration: calibrate_heat.Calibration; misses: `Miss` of each fact
# latest: by the other end of what fits the system's times [s], where the earliest counts; then: temperature at the end
# of use [K], None where it is never reached; lowest: working temperature of the system [K]; cold: the batch is below
# it; deep: height in a cup that must be wider [m], else None; largest: `Largest`, None where no time is wanted
# layer: that stays cool in the tray [m]
# heat: of the mix [J/kg]; apart: the label's facts do not fit each other; from_memory: the label's pot life is nobody's
# timings: own ones, rows; pairs: of them that cannot both be; next_by: until when what comes next must be done [s],
# None where nothing does or the batch itself lasts longer; sun: `InSun`, None where there is none; asked_sun: nobody
# said whether there is sun, and shade is what is reckoned; other_sun: how many own timings stood in another sun
HeatResult = namedtuple("HeatResult", (
    "best", "tray", "half", "tray_gain", "half_gain", "run", "tray_run", "peak", "calibration", "misses", "latest",
    "then", "lowest", "cold", "deep", "largest", "layer", "heat", "apart", "from_memory", "timings", "pairs",
    "next_by", "sun", "asked_sun", "other_sun"))
# flux: taken up [W/m2]; warm: what the sun alone makes of it in the end [K], None of a pot, which is thick long before
# shade: usable.Usable of the same batch in the shade; no_tray: a tray is no help there: it lasts no longer than the pot
# does in the shade; thin: it is spread out already, and the sun is strong enough to tell
InSun = namedtuple("InSun", ("flux", "warm", "shade", "no_tray", "thin"))
# temperature, cool: both ends of the band [K], the hot one first; time: the hot one's, after mixing [s]
# hardly, cool_hardly: it is hardly above the air; hot, sure: how many rows of HOT the hot end reaches, and the cool one
Peak = namedtuple("Peak", ("temperature", "cool", "time", "hardly", "cool_hardly", "hot", "sure"))
# name: POT_FACT, FILM_FACT or an own timing's number; share: reckoned over told time [-]; met: near enough
Miss = namedtuple("Miss", ("name", "share", "met"))
# mass: [kg], None where not any lasts so long; bound: no limit was met; too_much: the batch is more
Largest = namedtuple("Largest", ("mass", "bound", "too_much"))


def reckoned(values: Values) -> HeatResult:
    """All that lines, drawing and leads tell, worked out once for each answer."""
    return once(values, "heat", lambda: reckon(values))


def reckon(values: Values) -> HeatResult:
    """How long this batch can be used, how hot it gets, and what a tray or half of it would buy."""
    calibration = calibration_of(values)
    kind, mass = values["container"], values["batch"]
    here = pot_of(values, kind, mass)
    hot = too_hot(kind, here, values["air"])
    run, latest = _first_to_end(values, here, hot, LONGEST)
    best = usable(values, run=run)
    tray_run, tray = _in_tray(values, run, best) if CONTAINER_ROWS[kind][5] else (None, None)
    half = usable(values, mass=mass / 2) if kind != "film" else None
    least, timings = lowest(values["system"]), timings_of(values)
    misses = tuple([Miss(name, share, abs(share - 1) < MET) for name, share in calibration.misses])
    memory = SYSTEM.from_memory(values["system"], "pot_time")
    return HeatResult(
        best, tray, half, _gain(tray, best), _gain(half, best), run, tray_run, _peak(values, run), calibration, misses,
        max(latest, best.model),
        None if run.temperature_then is None else to_step(run.temperature_then, 0.01), least, _coldest(values, least),
        _deep(values), _largest(values), _layer(values), container_mix(values)[0],
        any([one.name in (POT_FACT, FILM_FACT) and (one.share > 1 + TIMES_APART or one.share < 1 / (1 + TIMES_APART))
             for one in misses]),
        memory and not setting(timings), tuple(timings), contradictions(values), _next_by(values, best),
        _in_sun(values, here.air, tray), not said(values), in_other_sun(values))


def _first_to_end(values: Values, here: Pot, hot: float, until: float) -> "tuple[Run, float]":
    """The whole run of what fits a system's times and ends first, and when the other ends [s].

    here: the pot; hot: too hot, from [K]; until: [s], as long as is looked at
    """
    runs = [_whole(values, rates, here, hot, until) for rates in ends_of(values)]
    ends = [LONGEST if run.reached is None else run.reached for run in runs]
    return runs[0 if ends[0] <= ends[1] else 1], max(ends)


def _in_sun(values: Values, warm: float, tray: "Usable | None") -> "InSun | None":
    flux = sun_of(values).flux
    if not flux:
        return None
    shade = usable(shaded(values))
    strong = flux > TRAY_UP_TO
    no_tray = tray is not None and strong and tray.time <= shade.time
    return InSun(flux, None if tray else warm, shade, no_tray, tray is None and strong)


def _whole(values: Values, rates: Rates, here: Pot, hot: float, until: float) -> Run:
    """The run of a pot to its peak and beyond; what is typed beside it changes nothing of it."""
    return memo_of(values).once(WHOLE_RUNS, tuple(rates) + tuple(here) + (hot, until), lambda: pot_run(
        rates, here, USABLE, hot, whole=True, until=until))


def _in_tray(values: Values, run: Run, best: Usable) -> "tuple[Run, Usable]":
    until = max(run.points[-1][0], 2 * best.end)
    there = pot_of(values, "tray", values["batch"])
    tray_run, _ = _first_to_end(values, there, too_hot("tray", there, values["air"]), until)
    return tray_run, usable(values, "tray", run=tray_run if tray_run.reached is not None else None)


def whole_minutes(seconds: float) -> int:
    """A time to be done by in whole minutes, rounded down; above an hour in steps of five.

    >>> whole_minutes(1799), whole_minutes(5000.0)
    (29, 80)
    """
    count = seconds / 60
    return int(to_step(count, 5.0 if count >= 60 else 1.0, DOWN))


def _gain(other: "Usable | None", best: Usable) -> "int | None":
    return None if other is None else whole_minutes(other.time) - whole_minutes(best.time)


def _peak(values: Values, run: Run) -> Peak:
    found = band(values, values["container"], values["batch"])
    hot, sure = [0 if run.reached is None else len([row for row in HOT if peak >= row[0]])
                 for peak in (found.hot, found.cool)]
    return Peak(found.hot, found.cool, found.time, found.hardly, found.cool_hardly, hot, sure)


def _coldest(values: Values, least: float) -> bool:
    resin = values["resin_temperature"]
    coldest = values["air"] if resin is None else min(values["air"], resin)
    return not coldest >= least - 1e-9


def _layer(values: Values) -> float:
    """The layer in the tray that stays cool at the hot end too [m]."""
    return min([tray_layer(values, rates, HOT_END) for rates in corners(values, HOT_END)])


def _deep(values: Values) -> "float | None":
    """A cup filled higher than it can be is a slip in its width."""
    if values["container"] != "cup" or values["cup_width"] is None:
        return None
    height = 4 * values["batch"] / container_mix(values)[1] / (pi * values["cup_width"] ** 2)
    return height if height > DEEPEST_CUP * values["cup_width"] else None


def _next_by(values: Values, best: Usable) -> "float | None":
    if values["use"] not in NEXT:
        return None
    by = usable(values, NEXT[values["use"]]).time
    return by if by > best.time else None


def _largest(values: Values) -> "Largest | None":
    if values["wanted"] is None:
        return None
    found = largest_batch(values)
    if found is None:
        return Largest(None, False, False)
    return Largest(found[0], found[1], not found[1] and found[0] < values["batch"])


def largest_batch(values: Values) -> "tuple[float, bool] | None":
    """The largest mass that stays usable for the wanted time -> (mass [kg], whether no limit was met); None: not any.

    Usable time falls with mass, so a regula falsi on the logarithms finds it; the last that lasts long enough is told.
    """
    target = log(values["wanted"])

    def lasting(log_mass: float) -> float:
        return log(max(FINEST, usable(values, mass=exp(log_mass)).time)) - target

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
