"""First aid: what is done at once, in its order, and a pot that smokes. It asks nothing, so that nothing delays it."""
from collections import namedtuple

from ..catalogue.first_aid import ADDED, FLOW, HOT_STEPS, MINUTES, STEPS
from ..forms.types import Values
from ..words.numbers import UP, to_step
from .aid_lines import HOT, say

INPUTS = ()
CHECKS = ()
FOLDS = ((HOT, "aid-hot"),)
STEP = 0.005  # m3: water is had by cans

# steps: (row of STEPS, rows of what is added to it); hot: rows of HOT_STEPS; minutes: of rinsing, at the least [s]
# water: that takes, to have at hand [m3]
AidResult = namedtuple("AidResult", ("steps", "hot", "minutes", "water"))


def reckon(values: Values) -> AidResult:
    """The steps with their official statements, and how much clean water to have at hand."""
    return AidResult([(step, [row for row in ADDED if row[0] == step[0]]) for step in STEPS], HOT_STEPS, MINUTES,
                     to_step(MINUTES * FLOW, STEP, UP))


def answer(values: Values) -> list:
    """First aid, then the pot that smokes."""
    return say(reckon(values), values)
