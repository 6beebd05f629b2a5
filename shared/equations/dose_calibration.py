"""Dose calibration: a builder's own weighed batches, and how far they move the dose from the remembered default."""
from collections import namedtuple
from math import exp, log, sqrt

from ..catalogue.fillers import BATCH_DEVIATION, BATCH_WORTH, DOSE_SPREAD, STANDS_OUT

# a table that may be so much off: a rectangular spread has the standard deviation a / sqrt(3), JCGM 100:2008, 4.3.7
DEFAULT_DEVIATION = DOSE_SPREAD / sqrt(3)

AUTO, ALWAYS, NEVER = "auto", "yes", "no"

# factor: own dose over default [-]; spread: relative, k = 2 [-]; own: how much the own batches weigh, 0 to 1
# counted, questioned: places of the batches in the list
Calibrated = namedtuple("Calibrated", ("factor", "spread", "own", "counted", "questioned"))


def middle(numbers: "list | tuple") -> float:
    """The median.

    >>> middle((3, 1, 2)), middle((1, 2, 3, 10))
    (2, 2.5)
    """
    ordered = sorted(numbers)
    half = len(ordered) // 2
    return ordered[half] if len(ordered) % 2 else (ordered[half - 1] + ordered[half]) / 2


def standing_out(logs: "list | tuple", batch: float = BATCH_DEVIATION) -> list:
    """Places of the values that stand out from the others: further from the median than STANDS_OUT deviations, where a
    deviation is 1.4826 times the median distance, and never less than that of a batch.

    logs: natural logarithms of own dose over default; two values contradict each other and neither is the odd one
    >>> standing_out((0.1, 0.12, 0.9, 0.08)), standing_out((0.0, 0.9))
    ([2], [])
    """
    if len(logs) < 3:
        return []
    centre = middle(logs)
    deviation = max(batch, 1.4826 * middle([abs(value - centre) for value in logs]))
    return [place for place, value in enumerate(logs) if abs(value - centre) > STANDS_OUT * deviation * (1 + 1e-9)]


def calibrated(ratios: "list | tuple", votes: "list | tuple" = (), default: float = DEFAULT_DEVIATION,
               batch: float = BATCH_DEVIATION) -> Calibrated:
    """The dose as a factor of the default, shrunk towards 1 while there are few batches:
        y = mean(log r) w,  w = n / (n + s**2 / t**2),  factor = exp(y),  deviation = 1 / sqrt(n / s**2 + 1 / t**2)
    where t is the default's deviation and s that of the batches, from the scatter seen and BATCH_WORTH remembered ones.

    ratios: r [-], own dose over default of each batch, above 0; votes: AUTO, ALWAYS or NEVER count it, for each
    default: t [-]; batch: what is remembered of s [-]
    returns: Calibrated; the normal mean with a normal prior (Gelman et al., Bayesian Data Analysis, 2.5; from memory)
    >>> round(calibrated((1.3,)).factor, 3), round(calibrated((1.3,) * 6).factor, 3), calibrated(()).factor
    (1.217, 1.292, 1.0)
    """
    logs = [log(ratio) for ratio in ratios]
    votes = tuple(votes) + (AUTO,) * (len(logs) - len(votes))
    open_to = [place for place in range(len(logs)) if votes[place] != NEVER]
    questioned = [open_to[i] for i in standing_out([logs[place] for place in open_to], batch)]
    questioned = [place for place in questioned if votes[place] != ALWAYS]
    counted = [place for place in open_to if place not in questioned]
    if not counted:
        return Calibrated(1.0, exp(2 * default) - 1, 0.0, (), tuple(questioned))
    count = len(counted)
    mean = sum([logs[place] for place in counted]) / count
    scatter = sum([(logs[place] - mean) ** 2 for place in counted])
    variance = (BATCH_WORTH * batch**2 + scatter) / (BATCH_WORTH + count - 1)
    own = count / (count + variance / default**2)
    deviation = 1 / sqrt(count / variance + 1 / default**2)
    return Calibrated(exp(mean * own), exp(2 * deviation) - 1, own, tuple(counted), tuple(questioned))
