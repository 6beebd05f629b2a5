"""Own rates: the laid batches of the log to how fast these hands are, step by step."""
from collections import namedtuple

from ..catalogue.rates import RATES
from ..forms.inputs import Group, Number
from ..forms.memo import once
from ..forms.types import Values
from ..things.learned_rates import learned
from . import own_rates_lines

MOST_ROWS = 60
LAID = "log-laid-fold"

# what a laid batch keeps, in the log and here
METRES = Number("laid", "log-laid", unit="m", low=0, high=1000, above=True, optional=True,
                fold=LAID, help="log-laid.help")


def minutes(fold: str = "") -> tuple:
    """The minutes of each step of a laid batch."""
    return tuple([Number(row[0], row[1], unit="min", low=0, high=2880, above=True, optional=True, fold=fold)
                  for row in RATES])


INPUTS = (
    Group("rows", "log-rows", (METRES,) + minutes(), most=MOST_ROWS, each="batch-each"),
)
CHECKS = ()


# name: of the step, in catalogue.rates; learned: `learned_rates.Learned` [m/s]
OwnRate = namedtuple("OwnRate", ("name", "learned"))


def reckon(values: Values) -> "list[OwnRate]":
    """What is learned of each step, those that no batch tells of left out."""
    found = []
    for name, _, usual, least, most, _ in RATES:
        rates = [row["laid"] / row[name] for row in values["rows"] if row["laid"] and row[name]]
        one = learned(rates, usual / 60, least / 60, most / 60)
        if one:
            found.append(OwnRate(name, one))
    return found


def reckoned(values: Values) -> "list[OwnRate]":
    """`reckon`, once for one question: lines and leads share it."""
    return once(values, "own_rates", lambda: reckon(values))


def answer(values: Values) -> list:
    """Each rate with its range and how many batches it rests on."""
    return own_rates_lines.say(reckoned(values), values)


def leads(values: Values) -> list:
    """To the plan's crew, or to one of the kit."""
    return own_rates_lines.leads(reckoned(values))
