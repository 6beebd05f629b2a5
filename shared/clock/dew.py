"""Dew: whether water settles on the seam now or in the night, and what to do about blush, in its order."""
from collections import namedtuple

from ..catalogue.damp import DAMP, MARGIN, METER_OFF, SKY
from ..equations.dewpoint import dew_point, margin
from ..equations.rounding import UP, to_step
from ..forms.errors import InputError
from ..forms.inputs import Choice, Number
from ..forms.types import Values
from .dew_lines import say

FOLD = "dew-fold"

INPUTS = (
    Number("air", "dew-air", unit="degC", low=-10, high=50),
    Number("humidity", "dew-humidity", unit="%", low=1, high=100, optional=True, fold=FOLD,
           help="dew-humidity.help"),
    Number("surface", "dew-surface", unit="degC", low=-20, high=70, optional=True, fold=FOLD,
           help="dew-surface.help"),
    Number("night", "dew-night", unit="degC", low=-20, high=50, optional=True, fold=FOLD),
    Choice("sky", "dew-sky", (("under", "dew-sky.under"), ("open", "dew-sky.open")), fold=FOLD),
)

# dew_point: of the air [K]; margin: how far the surface is above it [K]; near: it is less than `wanted`; wet: it is not
# above it at all; damp: the air is above DAMP; wanted: the margin that is asked for [K]; unsure: what a hygrometer's
# error may move the dew point by [K]; night: `Night`, None where it is not known; in_danger: too near, now or then
DewResult = namedtuple("DewResult", ("dew_point", "margin", "near", "wet", "damp", "wanted", "unsure", "night",
                                     "in_danger"))
# margin: of the coldest surface [K]; near, wet: as above; sky: what the open sky cools it by [K], 0.0 under a roof
# keep_above: temperature to keep the seam above, in half degrees up [K], None where the margin is wide enough
Night = namedtuple("Night", ("margin", "near", "wet", "sky", "keep_above"))


def check(values: Values) -> None:
    """The night's dew follows from the water in the air now."""
    if values["night"] is not None and values["humidity"] is None:
        raise InputError("humidity", "dew-humidity.missing")


CHECKS = (check,)


def reckon(values: Values) -> "DewResult | None":
    """The margin above the dew point now and through the night; None without the humidity."""
    humidity, air = values["humidity"], values["air"]
    if humidity is None:
        return None
    surface = air if values["surface"] is None else values["surface"]
    dew, now = dew_point(air, humidity), margin(surface, air, humidity)
    near = now < MARGIN - 1e-9
    night = _night(values["night"], SKY[0] if values["sky"] == "open" else 0.0, dew)
    return DewResult(dew, now, near, not now > 0, humidity > DAMP, MARGIN, METER_OFF, night,
                     near or (night is not None and night.near))


def _night(coldest: "float | None", sky: float, dew: float) -> "Night | None":
    if coldest is None:
        return None
    left = coldest - sky - dew
    near = left < MARGIN - 1e-9
    return Night(left, near, left <= 0, sky, to_step(dew + MARGIN - 273.15, 0.5, UP) + 273.15 if near else None)


def answer(values: Values) -> list:
    """The margin now and through the night, then the order of work against blush."""
    return say(reckon(values), values)
