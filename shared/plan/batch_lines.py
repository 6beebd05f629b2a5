"""Batch lines: each batch of a plan as lines, with its amounts, containers, steps and limits on the clock."""
from ..forms.clock_times import clock_text
from ..forms.memo import once
from ..forms.types import Values
from ..mix.label_words import notation, part_names
from ..words.lines import MORE, WARN, Line, line
from ..words.numbers import DOWN, UP, capital, small
from ..words.units import told
from .advice import CUP, FILM, POT, SIZE, SOFT
from .batches import LATE, Described, Mix
from .limit_lines import LIMITS, named
from .plan_found import Found, in_time

SAFE = "rounded down, to be sure"
TAPE_LATER = "later, leave it, and tape the hard cove another day"
DONE_BY = {POT: "Bag empty", CUP: "Cup empty, onto the tray", SOFT: "Tape rolled on the soft cove",
           FILM: "Peel ply down on wet tape"}
TOOLED = "Cove tooled while it is soft"
TOOLED_LATE = "Leave the stiff cove: let it harden, abrade, fill what is missing."
WHAT_TO_DO = {
    POT: "Empty the bag now: spread the rest thin outdoors, mix less next time.",
    CUP: "Onto the tray now, or outdoors; mix less next time.",
    SOFT: "Do not push tape into stiffening putty: let it harden, wash, abrade, then tape.",
    SIZE: "Mix less at a time.",
    FILM: "Peel ply only where the tape is still wet; elsewhere let it cure, wash, abrade.",
}
MIXES = {"mix": "Mix, for both", "putty": "Putty", "wet": "Wet-out"}
WHO = ("First: ", "Second: ", "Mixer: ")
STEPS = {"mix": "Mix and bag the putty", "place": "Place the putty", "tool": "Tool the cove",
         "clean": "Clean the edges", "wet_mix": "Mix the wet-out resin, onto the tray at once",
         "wet": "Wet out the tape on the tray",
         "lay": "Lay the tape", "roll": "Roll the air out", "peel": "Peel ply"}
ONE_MIX = {"mix": "Mix for both: keep the wet-out part, fill the rest, bag it"}
SOFT_COVE = {"lay": "Lay the tape on the soft cove"}
SIDE_BY_SIDE = {"clean": "Tool and clean, piece by piece", "roll": "Wet out, lay, roll, piece by piece"}


def latest(values: Values, time: float) -> str:
    """What must not be passed [s on the clock], the end of a window or the latest start, as text: rounded down."""
    return clock_text(time, values["hours"], DOWN)


def moment(values: Values, close: "dict[int, float]", time: float, days: bool = True) -> str:
    """A moment of the plan [s on the clock] as text, rounded up: nothing is told to be done before it is.

    The end of one step is the start of the next and the end of its batch: rounded alike, they are told alike. What is
    in time though it lies in the last minute of its limit is told by that minute, and what comes before it there too.
    close: of `plan_found.Found`
    """
    return clock_text(time, values["hours"], DOWN if in_time(close, time) else UP, days)


def step_text(key: str, one: Described) -> str:
    """What is done in a step of a batch."""
    laid, text = one.batch.laid, STEPS[key]
    if laid.one_mix:
        text = ONE_MIX.get(key, text)
    if laid.together:
        return SIDE_BY_SIDE.get(key, text)
    return SOFT_COVE.get(key, text) if laid.putty else text


def batch_lines(values: Values, found: Found, one: Described) -> "list[Line]":
    """One batch: when, what, how much, in which container, the steps in order, and by when each window ends; one that
    is finished or far off in one line."""
    batch, units = one.batch, values["units"]
    part, label = "batch_" + str(batch.number), "Batch " + str(batch.number)
    if found.summary.crews > 1:
        label += ", pair " + str(batch.crew + 1)
    state = ", done" if batch.finished else (", under way" if batch.begun else "")
    lines = [line(part, label + state, one.length, "m",
                  moment(values, found.close, batch.start) + " to " + moment(values, found.close, one.end) + " · "
                  + told(one.length, "m", units), rough=named(one.names), part=part)]
    lines.extend(_warnings(values, found, one, part))
    if one.details is None:
        return lines
    air = one.details.air
    lines.append(line("air", "Air when it is mixed", air, "K", told(air, "degC", units, places=1), part=part,
                      rank=MORE))
    lines.extend(_amounts(values, one, part))
    return lines + _steps(values, found, one, part) + _limits(values, one, part)


def _steps(values: Values, found: Found, one: Described, part: str) -> "list[Line]":
    lines, pair, before, told_before = [], one.batch.work.crew.pair, None, ""
    for key, who, begun, end, done in one.batch.steps:
        # mostly a step begins when the one before it ends
        start = told_before if begun == before else moment(values, found.close, begun)
        before, told_before = end, moment(values, found.close, end)
        # one who works alone needs no name; two are told apart
        text = (WHO[who] if pair else "") + step_text(key, one)
        lines.append(line("step_" + key, start + " to " + told_before, end, "s", text, "done" if done else "", "",
                          part, MORE))
    return lines


def _limits(values: Values, one: Described, part: str) -> "list[Line]":
    lines, tape = [], one.details.tape
    if tape is not None:
        # the first step of the tape
        begun = "Wetting out begun" if one.batch.laid.one_mix else "Wet-out mixing begun"
        lines.append(line("by_tape", begun, tape, "s", "by " + latest(values, tape), TAPE_LATER, "", part, MORE))
    for limit, by in one.batch.deadlines:
        what = DONE_BY[limit] if limit != SOFT or one.batch.laid.wet else TOOLED
        lines.append(line("by_" + limit, what, by, "s", "by " + latest(values, by), SAFE, "", part, MORE))
    return lines


def _warnings(values: Values, found: Found, one: Described, part: str) -> "list[Line]":
    lines, batch, refused = [], one.batch, one.refused
    for limit, by, when in one.missed:
        text = "{} lasts until {}; this is done at {}. {}".format(
            capital(LIMITS[limit][0]), latest(values, by), moment(values, found.close, when),
            WHAT_TO_DO[limit] if limit != SOFT or batch.laid.wet else TOOLED_LATE)
        lines.append(line("missed_" + limit, "Too late", when - by, "s", text, part=part, rank=WARN))
    if refused is not None:
        text = "Batch {} should not be started any more: it would not be laid in time.".format(batch.number)
        why = LIMITS[batch.limit][1] if refused.why == LATE else "it would not be finished in time"
        if refused.latest is not None:
            why = "its latest start was " + latest(values, refused.latest)
        lines.append(line("do_not_start", "Do not start", batch.start, "s", text, why, part=part, rank=WARN))
    elif one.latest is not None:
        lines.append(line("latest", "Start at the latest", one.latest, "s", latest(values, one.latest),
                          "after that, leave it for another day", part=part, rank=MORE))
    return lines


def _container(mix: Mix, units: str) -> str:
    if mix.name == "wet":
        return "cup, at once onto the tray"
    stirred = told(mix.filler, "g", units) + " of filler"
    bag = "then the bag, about " + told(mix.bag, "mL", units) + " of putty (from memory)"
    if mix.name == "putty":
        return "cup, then {}, {}".format(stirred, bag)
    tray = told(mix.tray, "g", units) + " of it onto the tray"
    if mix.over:
        tray += ", of which " + told(mix.over, "g", units, UP) + " are surplus"
    return "cup; {}; {} into the rest, {}".format(tray, stirred, bag)


def _amounts(values: Values, one: Described, part: str) -> "list[Line]":
    units, details = values["units"], one.details
    lines = [line("amount_" + mix.name, MIXES[mix.name], mix.mass, "kg", told(mix.whole, "g", units)
                  + _parts(values, mix), _container(mix, units), part=part, rank=MORE) for mix in details.mixes]
    if details.over:
        lines.append(line("over", "More than needed", details.over, "kg", told(details.over, "g", units, UP),
                          no_less(details.least, units), part=part, rank=MORE))
    return lines


def no_less(least: float, units: str) -> str:
    """Why more is mixed than is needed. least: the smallest mix that the scale measures in ratio [kg]"""
    return "no mix below {} can be measured in ratio".format(told(least, "g", units, UP))


def _part_names(values: Values) -> "list[str]":
    return [" " + small(name) for name in part_names(values["system"])]


def _parts(values: Values, mix: Mix) -> str:
    """The parts of a mix, their names read once for all batches."""
    names = once(values, "part_names", lambda: _part_names(values))
    said = [told(mass, "g", values["units"]) + name for mass, name in zip(mix.parts, names)]
    if said:
        return ": " + " + ".join(said)
    by_volume = values["system"]["by_volume"]  # no weights to be had, or in too much doubt
    return ": " + notation(by_volume) + " by volume" if by_volume else ""
