"""Dew: whether water settles on the seam now or in the night, and what to do about blush, in its order."""
from ..equations.dewpoint import MARGIN, dew_point, margin
from ..forms.errors import InputError
from ..forms.inputs import Choice, Number
from ..words.lines import ANSWER, BESIDE, MORE, WARN, line, words
from ..words.numbers import DOWN, UP, shown, to_step
from ..words.units import METRIC, told

DAMP = 0.85  # relative humidity often named beside the 3 degC, from memory
SKY = 3.0  # K a surface under the open night sky may be below the air, from memory (1 to 6)
METER_OFF = 1.0  # K that a hygrometer's error may move the dew point by, from memory

FOLD = "Dew and the night"

INPUTS = (
    Number("air", "Air temperature", unit="degC", low=-10, high=50),
    Number("humidity", "Relative humidity", unit="%", low=1, high=100, optional=True, fold=FOLD,
           help="From a hygrometer beside the work. Without it there is no dew point."),
    Number("surface", "Temperature of the surface", unit="degC", low=-20, high=70, optional=True, fold=FOLD,
           help="Of the wood or the seam. Left empty: as the air. Stored wood is often colder."),
    Number("night", "Coldest air in the night", unit="degC", low=-20, high=50, optional=True, fold=FOLD),
    Choice("sky", "In the night it lies", (("under", "under a roof or a tarpaulin"), ("open", "under the open sky")),
           fold=FOLD),
)

# the order of work against blush, common practice
BLUSH = (
    ("blush_1", "Blush first: wash", "Peel ply off, then wash with clean water and a pad. No solvent: it smears it."),
    ("blush_2", "Then dry", "Wipe dry with a clean cloth before the water dries by itself; turn the cloth often."),
    ("blush_3", "Then sand", "Only now, and only what is hard. Sanding first rubs the blush in. Mask and gloves on."),
    ("blush_4", "Then look", "Water must spread as a film. If it beads, wash again."),
)


def check(values):
    """The night's dew follows from the water in the air now."""
    if values["night"] is not None and values["humidity"] is None:
        raise InputError("humidity", "Relative humidity: type it; whether the night brings dew follows from it")


CHECKS = (check,)


def answer(values):
    """The margin now and through the night, then the order of work against blush."""
    if values["humidity"] is None:
        lines = [words("margin", "Above the dew point", "not known without the humidity",
                       rough="cold mornings, wet sheds and hardener blush go together")]
        return lines + _blush(False)
    units, air = values["units"], values["air"]
    surface = air if values["surface"] is None else values["surface"]
    dew = dew_point(air, values["humidity"])
    now = margin(surface, air, values["humidity"])
    lines = [line("margin", "Above the dew point, now", now, "K", difference(now, units), rank=ANSWER,
                  rough="rounded down; {} is wanted; a hygrometer may be off by as much as {}".format(
                      difference(MARGIN, units, UP), difference(METER_OFF, units, UP)))]
    if now < MARGIN - 1e-9:
        lines.append(words("damp", "Too near to the dew point" if now > 0 else "The surface is wet",
                           "Do not coat or tape now. Warm the surface until it is " + difference(MARGIN, units, UP)
                           + " above the dew point, or wait; a burning gas heater makes it worse, it gives off water.",
                           rank=WARN))
    if values["humidity"] > DAMP:
        lines.append(words("humid", "Damp air", "Above 85% many hardeners blush however warm the surface is.",
                           rank=WARN, rough="from memory"))
    lines.append(line("dew_point", "Dew point", dew, "K", told(dew, "degC", units, UP, places=1),
                      rough="of this air; rounded up"))
    coming = _night(values, dew)
    lines.extend(coming)
    in_danger = now < MARGIN - 1e-9 or any([one.rank == WARN for one in coming])
    return lines + _blush(in_danger)


def _night(values, dew):
    if values["night"] is None:
        return []
    units = values["units"]
    coldest = values["night"] - (SKY if values["sky"] == "open" else 0.0)
    left = coldest - dew
    where = "the air's water stays the same" + (
        "; the open sky cools a surface by {} more, from memory".format(difference(SKY, units, UP))
        if values["sky"] == "open" else "")
    lines = [line("night_margin", "Above the dew point, in the night", left, "K", difference(left, units), rank=BESIDE,
                  rough="rounded down; " + where)]
    if left < MARGIN - 1e-9:
        latest = told(to_step(dew + MARGIN - 273.15, 0.5, UP) + 273.15, "degC", units, UP, places=1)
        lines.append(words("night_damp", "Dew in the night" if left <= 0 else "Near to dew in the night",
                           "Keep the seam above " + latest + " until it is no longer tacky: cover it, close the "
                           "shed, warm it; or coat early enough that it is hard by dusk.", rank=WARN))
    return lines


def _blush(in_danger):
    rank = BESIDE if in_danger else MORE
    return [words(name, label, text, rough="common practice", rank=rank) for name, label, text in BLUSH]


def difference(kelvin: float, units: str, toward: str = DOWN) -> str:
    """A difference of temperature in steps of half a degree: a margin DOWN, a demand UP.

    >>> difference(2.058, "metric"), difference(3.0, "us", UP), difference(-0.2, "metric")
    ('2.0 °C', '5.5 °F', '-0.5 °C')
    """
    value, mark = (kelvin, "°C") if units == METRIC else (kelvin * 1.8, "°F")
    return shown(to_step(value, 0.5, toward), 1) + " " + mark
