"""Measure: from the parts of a mix to what the tool must show. Each way has its own module."""
from collections import namedtuple

from ..catalogue.ratios import AIM
from ..clock import sun
from ..forms.inputs import Choice, Group, Number, Pick
from ..forms.late import late
from ..forms.memo import once
from ..forms.types import Values
from ..mix import ratio
from ..mix.ratio import BENCH_FOLD
from ..things.records import CUP, GRADUATED, SYRINGES
from ..words.messages import message, number
from ..words.numbers import bare
from . import by_scale, by_scale_lines, measure_lines, ways
from .chosen_cup import FIRST_CUP, cup_chosen

ON_SCALE = (("way", ("scale",)),)
# what was really taken is of one mix, of one size, measured one way
OF_ONE_POUR = ("amount", "amount_is", "system", "way")
GRAM = 1e-3  # kg; what the cup holds is told where it is as much more or less than the mix that was asked for
POURED_FOLD, WARM_FOLD = "measure-fold.poured", "measure-fold.warm"

INPUTS = ratio.INPUTS + (
    Choice("zeroing", "measure-zeroing", (
        ("once", "measure-zeroing.once"), ("each", "measure-zeroing.each")), fold=BENCH_FOLD,
        when=ON_SCALE),
    Number("tolerance", "measure-tolerance", unit="%", low=0.01, high=20, optional=True, fold=BENCH_FOLD,
           help=message("measure-tolerance.help", aim=number(bare(AIM * 100, 2)))),
    Group("readings", "measure-readings", (
        Number("shown", "measure-readings.after", unit="g", low=0, high=200000, above=True, optional=True,
               tool="scale"),
    ), most=5, gaps=True, rows=2, when=ON_SCALE, told="reading_", each="measure-row.after", fold=POURED_FOLD,
        measured=OF_ONE_POUR),
    Group("counted", "measure-strokes", (
        Number("strokes", "measure-strokes.of", unit="strokes", low=0, high=10000, above=True, whole=True,
               optional=True),
    ), most=5, gaps=True, rows=2, when=(("way", ("pumps",)),), told="strokes_", each="measure-row",
        fold=POURED_FOLD, measured=OF_ONE_POUR),
    Group("drawn", "measure-drawn", (
        Number("volume", "measure-drawn.of", unit="mL", low=0, high=100000, above=True, optional=True,
               tool="syringes"),
    ), most=5, gaps=True, rows=2, when=(("way", ("syringes",)),), told="drawn_", each="measure-row",
        fold=POURED_FOLD, measured=OF_ONE_POUR),
    Group("levels", "measure-levels", (
        Number("volume", "measure-levels.after", unit="mL", low=0, high=100000, above=True, optional=True,
               tool="graduated"),
    ), most=5, gaps=True, rows=2, when=(("way", ("graduated",)),), told="level_", each="measure-row.after",
        fold=POURED_FOLD, measured=OF_ONE_POUR),
    Group("heights", "measure-heights", (
        Number("height", "measure-heights.after", unit="mm", low=0, high=1000, above=True, optional=True,
               help="measure-heights.help"),
    ), most=5, gaps=True, rows=2, when=(("way", ("stick",)),), told="mark_", each="measure-row.after",
        fold=POURED_FOLD, measured=OF_ONE_POUR),
    Pick("syringes", "measure-syringes", SYRINGES, default="60-20", fold=BENCH_FOLD,
         when=(("way", ("syringes",)), ("compare", ("yes",))), help="measure-syringes.help"),
    Pick("graduated", "measure-graduated", GRADUATED, default="400mL", fold=BENCH_FOLD,
         when=(("way", ("graduated",)), ("compare", ("yes",)))),
    Pick("cup", "measure-cup", CUP, default=FIRST_CUP, fold=BENCH_FOLD,
         help="measure-cup.help"),
    Number("air", "measure-air", unit="degC", low=-10, high=50, optional=True, fold=WARM_FOLD,
           help="measure-air.help"),
    Number("temperature", "measure-temperature", unit="degC", low=-10, high=60, optional=True, fold=WARM_FOLD,
           help="measure-temperature.help"),
) + sun.inputs(WARM_FOLD, WARM_FOLD)


CHECKS = (ratio.check, ways.check)

# way: what the tool must show, of the module of the way; room: by_stick.RoomResult, None where no cup was chosen, no
# volume is known, or a stick tells it; in_use: time_in_cup.InUse, None where the label tells too little
# tools: compare_tools.CompareResult, None where only the way chosen is asked; held: time_in_cup.InCup, None where that
# is the mix that was asked for, to the gram
MeasureResult = namedtuple("MeasureResult", ("way", "room", "in_use", "tools", "held"))


def reckon(values: Values) -> MeasureResult:
    """What the tool must show in the order of pouring, how far it can be trusted, and how long the mix can be used."""
    room = late("by_stick").room(values) if values["way"] != "stick" and cup_chosen(values) else None
    held = late("time_in_cup").held(values)
    return MeasureResult(ways.reckoned(values), room, late("time_in_cup").found(values),
                         late("compare_tools").reckon(values) if values["compare"] == "yes" else None,
                         held if held and abs(held.mass - (ratio.mix(values).mass or 0.0)) >= GRAM else None)


def reckoned(values: Values) -> MeasureResult:
    """What `reckon` finds, once for one question."""
    return once(values, "measure", lambda: reckon(values))


def answer(values: Values) -> list:
    """What the tool must show in the order of pouring, then how far it can be trusted."""
    return measure_lines.say(reckoned(values), values)


def first(values: Values) -> tuple[list, list[dict]]:
    """What a hand that types sees before the rest: the readings of the scale, or all that another way says."""
    if values["way"] == "scale":
        return by_scale_lines.readings(by_scale.on_display(values), values), []
    return ways.say(ways.reckoned(values), values), []


def figures(values: Values) -> list[dict]:
    """The cup with its levels, where a cup was chosen or a stick is to be marked."""
    if values["way"] == "stick" or cup_chosen(values):
        return late("cup_drawing").figures(late("by_stick").levels(values), values)
    return []
