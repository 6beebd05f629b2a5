"""Ratio cost: what a wrong ratio costs once it is cured, in glass temperature and in resin that never binds."""
from collections import namedtuple

from ..catalogue.ratios import LOST_PER_PERCENT, TOLD_EVENLY
from ..equations.ratio_cost import sol_fraction

LEAST = 0.005  # of the ratio: less is beyond every source

# most, usual, least: glass temperature lost [K]; loose: share of the resin, or of the hardener where there is too much
# of it, that binds to nothing [-]; short: whether there is too little hardener
# beyond: whether the error is so large that more is lost than is told
Cost = namedtuple("Cost", ("most", "usual", "least", "loose", "short", "beyond"))


def cost(error: float) -> "Cost | None":
    """What an error of the ratio costs; None where that is too small to tell.

    error: of the hardener, above 0: too much [-]; the label's ratio is taken as the one that leaves nothing over
    >>> found = cost(-0.05)
    >>> found.most, found.usual, found.least, round(found.loose, 4)
    (10.0, 5.0, 2.5, 0.0025)
    """
    if abs(error) < LEAST:
        return None
    size = min(abs(error), TOLD_EVENLY)
    usual, least, most = [size * 100 * each for each in LOST_PER_PERCENT]
    loose = sol_fraction(max(0.01, 1 + error), 0.0 if error < 0 else 1.0)
    return Cost(most, usual, least, loose, error < 0, abs(error) > TOLD_EVENLY)
