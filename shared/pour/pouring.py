"""Pouring: a batch as steps, one at a time, each corrected by what was really poured before it."""
from collections import namedtuple

from ..catalogue.measuring import DENSEST
from ..equations.stirring import stirring_time
from ..forms.memo import once
from ..forms.types import Found, Values
from ..mix import ratio
from ..mix.label_words import count_of
from ..mix.ratio_error import Off
from . import measure, pouring_lines, putty, thicken, time_in_cup, ways
from .measured_out import readings
from .poured_mix import asked, poured

INPUTS = thicken.INPUTS
CHECKS = measure.CHECKS + (thicken.check,)

TOO_COARSE, TOO_SMALL = "too_coarse", "too_small"

# way: what the tool must show, of the module of the way; hopeless: TOO_COARSE or TOO_SMALL where nothing can be poured
# right, then all else is None; done: how many readings were typed, of additions too; parts: how many parts are poured
# off: Off of those, None where they are in ratio or more of them may still mend it; times: in how many equal pours
# mix: Mix as it was poured, in all; stir: how long [s]
# putty: putty.PuttyResult of one pour, None where it stays liquid; one: mass of one pour [kg], or None; rest: filler
# after the first two thirds [kg], or None; in_use: time_in_cup.InUse, None where the label tells too little
PouringResult = namedtuple("PouringResult", (
    "way", "hopeless", "done", "parts", "off", "times", "mix", "stir", "putty", "one", "rest", "in_use"))


def reckon(values: Values) -> PouringResult:
    """The parts, the stirring and the filler of a batch, and how long it can be used."""
    found, done = ways.reckoned(values), len(readings(values))
    parts = min(done, count_of(values["system"]))
    hopeless = _hopeless(found, values)
    if hopeless:
        return PouringResult(found, hopeless, done, parts, *([None] * 8))
    times = found.times if values["way"] in ("graduated", "stick") else 1
    mix = _of_one_pour(found, times, values)
    mass = ratio.mix(values).volume * DENSEST if mix.mass is None else mix.mass
    filled = putty.reckon(mix, values) if asked(values) else None
    rest = None
    if filled and not filled.packed:
        rest = sum([one.mass for one in filled.fillers]) - filled.first
    return PouringResult(
        way=found, hopeless="", done=done, parts=parts, off=_off(found, values["way"]), times=times, mix=poured(values),
        stir=stirring_time(mass, values["temperature"]), putty=filled, one=mix.mass, rest=rest,
        in_use=time_in_cup.found(values))


def _hopeless(found: Found, values: Values) -> str:
    """Why nothing can be poured right on this tool, or ""."""
    if values["way"] == "graduated" and found.marks is None:
        return TOO_COARSE
    if values["way"] == "scale" and found.too_small and _nothing_to_see(found.display):
        return TOO_SMALL
    return ""


def _nothing_to_see(display: Found) -> bool:
    """Whether a part to come is so small that the scale would show nothing of it: no reading could be typed either."""
    shows = display.readings
    before = (0.0,) * len(shows) if display.rezeroed else (0.0,) + shows[:-1]
    return any([after <= one for one, after in zip(before, shows)][display.done:])


def _off(found: Found, way: str) -> "Off | None":
    """How far the parts poured so far are off, where that is more than is wanted."""
    if way == "scale":
        off = found.poured
    else:
        off = found.marks.outcome if way in ("syringes", "graduated") else found.outcome
    return off if off and off.off else None


def _of_one_pour(found: Found, times: int, values: Values) -> ratio.Mix:
    """What is stirred and thickened at once: the mix as it was poured, and of several equal pours one."""
    mix = poured(values)
    if times == 1 or readings(values):  # what was typed is of one pour already
        return mix
    if not mix.density:
        return ratio.mix_of_volume(values["system"], mix.volume / times)
    volume = sum(found.marks.volumes) if values["way"] == "graduated" else mix.volume / times
    return ratio.mix_of_mass(values["system"], volume * mix.density)


def reckoned(values: Values) -> PouringResult:
    """What `reckon` finds, once for one question."""
    return once(values, "pouring", lambda: reckon(values))


def steps(values: Values) -> list[dict]:
    """All steps of the batch in order, with what was typed of those done."""
    return pouring_lines.steps(reckoned(values), values)


def answer(values: Values) -> list:
    """The steps as lines, for a card or a program."""
    return pouring_lines.say(reckoned(values), values)
