"""Dew lines: what is said of the margin above the dew point, and of blush."""
from ..catalogue.damp import DAMP
from ..forms.types import Found, Said, Values
from ..words.lines import ANSWER, BESIDE, MORE, WARN, Line, line, words
from ..words.messages import message, number, quantity
from ..words.numbers import DOWN, UP, shown, to_step
from ..words.units import METRIC

# the order of work against blush, common practice
BLUSH = (
    ("blush_1", "dew-blush-wash", "dew-blush-wash.text"),
    ("blush_2", "dew-blush-dry", "dew-blush-dry.text"),
    ("blush_3", "dew-blush-sand", "dew-blush-sand.text"),
    ("blush_4", "dew-blush-look", "dew-blush-look.text"),
)


def say(found: "Found | None", values: Values) -> list[Line]:
    """found: `dew.DewResult`, None without the humidity."""
    if found is None:
        lines = [words("margin", "dew-margin", "dew-margin.unknown", rough="dew-margin.why")]
        return lines + _blush(False)
    units = values["units"]
    wanted = difference(found.wanted, units, UP)
    lines = [line("margin", "dew-margin-now", found.margin, "K", difference(found.margin, units), rank=ANSWER,
                  rough=message("dew-margin-now.rough", wanted=wanted, unsure=difference(found.unsure, units, UP)))]
    if found.near:
        lines.append(words("damp", "dew-damp.wet" if found.wet else "dew-damp.near",
                           message("dew-damp.text", wanted=wanted), rank=WARN))
    if found.damp:
        lines.append(words("humid", "dew-humid", message("dew-humid.text", share=quantity(DAMP, "%", places=0)),
                           rank=WARN, rough="mark-common-practice"))
    lines.append(line("dew_point", "dew-point", found.dew_point, "K", quantity(found.dew_point, "degC", UP, 1),
                      rough="dew-point.rough"))
    return lines + _night(found.night, units) + _blush(found.in_danger)


def _night(night: "Found | None", units: str) -> list[Line]:
    if night is None:
        return []
    rough: Said = "dew-night-margin.rough"
    if night.sky:
        rough = message("dew-night-margin.open", colder=difference(night.sky, units, UP))
    lines = [line("night_margin", "dew-night-margin", night.margin, "K", difference(night.margin, units), rank=BESIDE,
                  rough=rough)]
    if night.near:
        lines.append(words("night_damp", "dew-night-damp.wet" if night.wet else "dew-night-damp.near",
                           message("dew-night-damp.text", least=quantity(night.keep_above, "degC", UP, 1)), rank=WARN))
    return lines


def _blush(in_danger: bool) -> list[Line]:
    rank = BESIDE if in_danger else MORE
    return [words(name, label, text, rough="mark-common-practice", rank=rank) for name, label, text in BLUSH]


def difference(kelvin: float, units: str, toward: str = DOWN) -> Said:
    """A difference of temperature in steps of half a degree of the reader's: a margin DOWN, a demand UP.

    >>> difference(2.058, "metric")[1], difference(3.0, "us", UP)[1], difference(-0.2, "metric")[1]
    ('2.0 °C', '5.5 °F', '-0.5 °C')
    """
    value, mark = (kelvin, "°C") if units == METRIC else (kelvin * 1.8, "°F")
    return number(shown(to_step(value, 0.5, toward), 1) + " " + mark)
