"""Calls, emergency numbers: the builder's own, ready to be dialled. None is built in: countries have different ones."""
from collections import namedtuple

from ..forms.inputs import Pick
from ..forms.types import Values
from ..things.records_shed import NUMBERS
from .calls_lines import say

FOLD = "calls-numbers.fold"
INPUTS = (Pick("numbers", "calls-numbers", NUMBERS, default="none", fold=FOLD),)
CHECKS = ()

# calls: (key, number as it is dialled), those that were typed; who: the person that the last one reaches, or ""
CallsResult = namedtuple("CallsResult", ("calls", "who"))


def reckon(values: Values) -> CallsResult:
    """The numbers that were typed, the most urgent first."""
    mine = values["numbers"]
    return CallsResult([(key, mine[key]) for key in ("ambulance", "poison", "person") if mine[key]], mine["who"])


def answer(values: Values) -> list:
    """Each number as a line to be dialled; where none is typed, where to type them."""
    return say(reckon(values), values)
