"""Heat found: all that the heat answer tells of a batch in its container, of a tray and of half the batch."""
from collections import namedtuple
from math import exp, log

from ..equations.calibrate_heat import TOO_HOT, USABLE, usable_time
from ..equations.integrate import pot_run
from ..forms.memo import once
from ..things.records import SYSTEM
from ..words.numbers import DOWN, to_step
from .heat_model import LEAST_BATCH, MOST_BATCH, calibration_of, pot_of, timings_of
from .pot_heat import CONTAINER_ROWS
from .usable import usable

# best, tray, half: usable.Usable; run, tray_run: integrate.Run; slow, fast: model times at the ends of what fits [s]
Found = namedtuple("Found", ("calibration", "best", "run", "tray", "tray_run", "half", "slow", "fast", "from_memory"))


def found(values) -> Found:
    """All that lines and figures tell, worked out once for each answer."""
    return once(values, "heat", lambda: _found(values))


def _found(values):
    calibration = calibration_of(values)
    kind, mass = values["container"], values["batch"]
    here = pot_of(values, kind, mass)
    run = pot_run(calibration.rates, here, USABLE, TOO_HOT, whole=True)
    best = usable(values, run=run)
    tray = tray_run = half = None
    if CONTAINER_ROWS[kind][5]:
        until = max(run.points[-1][0], 2 * best.end)
        tray_run = pot_run(calibration.rates, pot_of(values, "tray", mass), USABLE, TOO_HOT, whole=True, until=until)
        tray = usable(values, "tray", run=tray_run if tray_run.reached is not None else None)
    if kind != "film":
        half = usable(values, mass=mass / 2)
    memory = SYSTEM.from_memory(values["system"], "pot_time")
    return Found(calibration, best, run, tray, tray_run, half, usable_time(calibration.slow, here),
                 usable_time(calibration.fast, here), memory and not timings_of(values))


def largest_batch(values):
    """The largest mass that stays usable for the wanted time -> (mass [kg], whether no limit was met); None: not any.

    Usable time falls with mass, so a regula falsi on the logarithms finds it; the last that lasts long enough is told.
    """
    target = log(values["wanted"])

    def lasting(log_mass):
        return log(usable(values, mass=exp(log_mass)).time) - target

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
