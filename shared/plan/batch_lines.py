"""Batch lines: each batch of a plan as lines, with its amounts, containers, steps and limits on the clock."""
from ..forms.clock_times import clock_said
from ..forms.memo import once
from ..forms.types import Said, Values
from ..mix.label_words import notation, parts_inside
from ..words.lines import MORE, WARN, Line, line
from ..words.messages import message, quantity, row, sentences
from ..words.numbers import DOWN, UP
from .advice import CUP, FILM, POT, SIZE, SOFT
from .batches import LATE, Described, Mix
from .limit_lines import LIMITS, named
from .plan_found import Found, in_time

DONE_BY = {POT: "plan-limit-bag.done", CUP: "plan-limit-cup.done", SOFT: "plan-limit-cove.done",
           FILM: "plan-limit-film.done"}
WHAT_TO_DO = {POT: "plan-limit-bag.late", CUP: "plan-limit-cup.late", SOFT: "plan-limit-cove.late",
              SIZE: "plan-limit-size.late", FILM: "plan-limit-film.late"}
MIXES = {"mix": "plan-amount-mix", "putty": "plan-amount-putty", "wet": "plan-amount-wet"}
WHO = ("plan-who-first", "plan-who-second", "plan-who-mixer")
STEPS = {"mix": "plan-step-mix", "place": "plan-step-place", "tool": "plan-step-tool", "clean": "plan-step-clean",
         "wet_mix": "plan-step-wet-mix", "wet": "plan-step-wet", "lay": "plan-step-lay", "roll": "plan-step-roll",
         "peel": "plan-step-peel"}
ONE_MIX = {"mix": "plan-step-mix.one-mix"}
SOFT_COVE = {"lay": "plan-step-lay.soft"}
SIDE_BY_SIDE = {"clean": "plan-step-clean.side-by-side", "roll": "plan-step-roll.side-by-side"}
# of a batch: finished, under way, else; alone, and of one pair among several
STATES = (("plan-batch.done", "plan-batch.begun", "plan-batch"),
          ("plan-batch.pair-done", "plan-batch.pair-begun", "plan-batch.pair"))


def latest(values: Values, time: float) -> Said:
    """What must not be passed [s on the clock], the end of a window or the latest start: rounded down."""
    return clock_said(time, values["hours"], DOWN)


def moment(values: Values, close: "dict[int, float]", time: float, days: bool = True) -> Said:
    """A moment of the plan [s on the clock], rounded up: nothing is told to be done before it is.

    The end of one step is the start of the next and the end of its batch: rounded alike, they are told alike. What is
    in time though it lies in the last minute of its limit is told by that minute, and what comes before it there too.
    close: of `plan_found.Found`
    """
    return clock_said(time, values["hours"], DOWN if in_time(close, time) else UP, days)


def step_said(key: str, one: Described) -> Said:
    """What is done in a step of a batch."""
    laid, said = one.batch.laid, STEPS[key]
    if laid.one_mix:
        said = ONE_MIX.get(key, said)
    if laid.together:
        return SIDE_BY_SIDE.get(key, said)
    return SOFT_COVE.get(key, said) if laid.putty else said


def batch_lines(values: Values, found: Found, one: Described) -> "list[Line]":
    """One batch: when, what, how much, in which container, the steps in order, and by when each window ends; one that
    is finished or far off in one line."""
    batch, part = one.batch, "batch_" + str(one.batch.number)
    state = STATES[1 if found.summary.crews > 1 else 0][0 if batch.finished else 1 if batch.begun else 2]
    span = message("plan-span", start=moment(values, found.close, batch.start),
                   end=moment(values, found.close, one.end))
    lines = [line(part, message(state, number=batch.number, pair=batch.crew + 1), one.length, "m",
                  row([span, quantity(one.length, "m")], " · "), rough=named(one.names), part=part)]
    lines.extend(_warnings(values, found, one, part))
    if one.details is None:
        return lines
    air = one.details.air
    lines.append(line("air", "plan-air", air, "K", quantity(air, "degC", places=1), part=part, rank=MORE))
    lines.extend(_amounts(values, one, part))
    return lines + _steps(values, found, one, part) + _limits(values, one, part)


def _steps(values: Values, found: Found, one: Described, part: str) -> "list[Line]":
    lines, pair, before, told_before = [], one.batch.work.crew.pair, None, ""
    for key, who, begun, end, done in one.batch.steps:
        # mostly a step begins when the one before it ends
        start = told_before if begun == before else moment(values, found.close, begun)
        before, told_before = end, moment(values, found.close, end)
        what = step_said(key, one)
        # one who works alone needs no name; two are told apart
        lines.append(line("step_" + key, message("plan-span", start=start, end=told_before), end, "s",
                          message(WHO[who], step=what) if pair else what, "plan-step-done" if done else "", "",
                          part, MORE))
    return lines


def _limits(values: Values, one: Described, part: str) -> "list[Line]":
    lines, tape, laid = [], one.details.tape, one.batch.laid
    if tape is not None:
        # the first step of the tape
        begun = "plan-by-tape.one-mix" if laid.one_mix else "plan-by-tape"
        lines.append(line("by_tape", begun, tape, "s", _by(values, tape), "plan-by-tape.rough", "", part, MORE))
    for limit, by in one.batch.deadlines:
        what = DONE_BY[limit] if limit != SOFT or laid.wet else "plan-limit-cove.done-bare"
        lines.append(line("by_" + limit, what, by, "s", _by(values, by), "plan-by.rough", "", part, MORE))
    return lines


def _by(values: Values, time: float) -> Said:
    return message("plan-by", time=latest(values, time))


def _warnings(values: Values, found: Found, one: Described, part: str) -> "list[Line]":
    lines, batch, refused = [], one.batch, one.refused
    for limit, by, when in one.missed:
        missed = message("plan-missed.text", what=LIMITS[limit][0], by=latest(values, by),
                         when=moment(values, found.close, when))
        to_do = WHAT_TO_DO[limit] if limit != SOFT or batch.laid.wet else "plan-limit-cove.late-bare"
        lines.append(line("missed_" + limit, "plan-missed", when - by, "s", sentences([missed, to_do]), part=part,
                          rank=WARN))
    if refused is not None:
        why = LIMITS[batch.limit][1] if refused.why == LATE else "plan-do-not-start.finish"
        if refused.latest is not None:
            why = message("plan-do-not-start.latest", time=latest(values, refused.latest))
        lines.append(line("do_not_start", "plan-do-not-start", batch.start, "s",
                          message("plan-do-not-start.text", number=batch.number), why, part=part, rank=WARN))
    elif one.latest is not None:
        lines.append(line("latest", "plan-latest", one.latest, "s", latest(values, one.latest), "plan-latest.rough",
                          part=part, rank=MORE))
    return lines


def _container(mix: Mix) -> Said:
    if mix.name == "wet":
        return "plan-amount-wet.rough"
    filler, bag = quantity(mix.filler, "g"), quantity(mix.bag, "mL")
    if mix.name == "putty":
        return message("plan-amount-putty.rough", filler=filler, bag=bag)
    return message("plan-amount-mix.surplus" if mix.over else "plan-amount-mix.rough", tray=quantity(mix.tray, "g"),
                   over=quantity(mix.over, "g", UP), filler=filler, bag=bag)


def _amounts(values: Values, one: Described, part: str) -> "list[Line]":
    details = one.details
    lines = [line("amount_" + mix.name, MIXES[mix.name], mix.mass, "kg", _mixed(values, mix), _container(mix),
                  part=part, rank=MORE) for mix in details.mixes]
    if details.over:
        lines.append(line("over", "plan-over", details.over, "kg", quantity(details.over, "g", UP),
                          message("plan-over.rough", least=quantity(details.least, "g", UP)), part=part, rank=MORE))
    return lines


def _mixed(values: Values, mix: Mix) -> Said:
    """A mix and its parts, their names read once for all batches."""
    names, mass = once(values, "part_names", lambda: parts_inside(values["system"])), quantity(mix.whole, "g")
    parts = [message("plan-amount-parts.part", mass=quantity(one, "g"), name=name)
             for one, name in zip(mix.parts, names)]
    if parts:
        return message("plan-amount-parts", mass=mass, parts=row(parts, " + "))
    by_volume = values["system"]["by_volume"]  # no weights to be had, or in too much doubt
    return message("plan-amount-parts.by-volume", mass=mass, ratio=notation(by_volume)) if by_volume else mass
