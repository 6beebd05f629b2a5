"""Dew lines: what is said of the margin above the dew point, and of blush."""
from ..catalogue.damp import DAMP
from ..forms.types import Found, Values
from ..words.lines import ANSWER, BESIDE, MORE, WARN, Line, line, words
from ..words.numbers import DOWN, UP, shown, to_step
from ..words.units import METRIC, told

# the order of work against blush, common practice
BLUSH = (
    ("blush_1", "Blush first: wash", "Peel ply off, then wash with clean water and a pad. No solvent: it smears it."),
    ("blush_2", "Then dry", "Wipe dry with a clean cloth before the water dries by itself; turn the cloth often."),
    ("blush_3", "Then sand", "Only now, and only what is hard. Sanding first rubs the blush in. Mask and gloves on."),
    ("blush_4", "Then look", "Water must spread as a film. If it beads, wash again."),
)


def say(found: "Found | None", values: Values) -> list[Line]:
    """found: `dew.DewResult`, None without the humidity."""
    if found is None:
        lines = [words("margin", "Above the dew point", "not known without the humidity",
                       rough="cold mornings, wet sheds and hardener blush go together")]
        return lines + _blush(False)
    units = values["units"]
    wanted = difference(found.wanted, units, UP)
    lines = [line("margin", "Above the dew point, now", found.margin, "K", difference(found.margin, units), rank=ANSWER,
                  rough="rounded down; {} is wanted; a hygrometer may be off by as much as {}, "
                        "from memory".format(wanted, difference(found.unsure, units, UP)))]
    if found.near:
        lines.append(words("damp", "The surface is wet" if found.wet else "Too near to the dew point",
                           "Do not coat or tape now. Warm the surface until it is " + wanted
                           + " above the dew point, or wait; a burning gas heater makes it worse, it gives off water.",
                           rank=WARN))
    if found.damp:
        lines.append(words("humid", "Damp air", "Above " + shown(DAMP * 100) + "% many hardeners blush however warm "
                           "the surface is.", rank=WARN, rough="common practice"))
    lines.append(line("dew_point", "Dew point", found.dew_point, "K",
                      told(found.dew_point, "degC", units, UP, places=1), rough="of this air; rounded up"))
    return lines + _night(found.night, units) + _blush(found.in_danger)


def _night(night: "Found | None", units: str) -> list[Line]:
    if night is None:
        return []
    where = "the air's water stays the same"
    if night.sky:
        where += "; the open sky cools a surface by {} more, or yet more".format(difference(night.sky, units, UP))
    lines = [line("night_margin", "Above the dew point, in the night", night.margin, "K",
                  difference(night.margin, units), rank=BESIDE, rough="rounded down; " + where)]
    if night.near:
        latest = told(night.keep_above, "degC", units, UP, places=1)
        lines.append(words("night_damp", "Dew in the night" if night.wet else "Near to dew in the night",
                           "Keep the seam above " + latest + " until it is no longer tacky: cover it, close the "
                           "shed, warm it; or coat early enough that it is hard by dusk.", rank=WARN))
    return lines


def _blush(in_danger: bool) -> list[Line]:
    rank = BESIDE if in_danger else MORE
    return [words(name, label, text, rough="common practice", rank=rank) for name, label, text in BLUSH]


def difference(kelvin: float, units: str, toward: str = DOWN) -> str:
    """A difference of temperature in steps of half a degree: a margin DOWN, a demand UP.

    >>> difference(2.058, "metric"), difference(3.0, "us", UP), difference(-0.2, "metric")
    ('2.0 °C', '5.5 °F', '-0.5 °C')
    """
    value, mark = (kelvin, "°C") if units == METRIC else (kelvin * 1.8, "°F")
    return shown(to_step(value, 0.5, toward), 1) + " " + mark
