"""Run: one batch of a plan a step at a time, from the prepared wood to the peel ply, with what is left of each window.

Time runs from the tap that ends the pour of the first part: what follows meets it, and contact is never earlier.
"""
from collections import namedtuple

from ..catalogue.plans import LEAST_TAPE, SPARE_SHARE, SPARE_TIME
from ..catalogue.rates import AT_ONCE
from ..clock import cure
from ..clock.elapsed import FUTURE
from ..equations.laying import CUP, FILM, POT, SOFT, Laid, Laying
from ..equations.tape_left import tape_left
from ..forms import inputs
from ..forms.errors import InputError
from ..forms.inputs import Choice, Group, Number, Text
from ..forms.memo import once
from ..forms.types import Values
from . import batch_record, batches, done_so_far, plan, progress, run_lines
from .progress import Batch
from .run_dates import Dates
from .steps import Step as Timed

POURED = {"pour_putty": "putty", "pour_wet": "wet", "pour_mix": "mix"}
OF_TAPE = ("wet", "lay", "roll")
PLENTY, HURRY, LATE, OVER = "plenty", "hurry", "late", "over"
INPUTS = plan.INPUTS + (
    Number("batch", "plan-done-batch", low=1, high=999, whole=True, optional=True),
    Group("ran", "plan-done", (Text("step", "plan-done-step"),
                               Number("at", "timer-passed", unit="min", low=0, high=2880)), most=200,
          each="plan-done.each"),
    Choice("tape", "run-tape", (("fits", "run-tape.fits"), ("all", "run-tape.all"))),
    Number("ran_age", "timer-passed", unit="min", low=0, high=2880, optional=True),
    Number("air_age", "run-air", unit="min", low=0, high=2880, optional=True),
    Number("ran_wall", "elapsed-now", unit="s", low=0, high=FUTURE, optional=True, help="elapsed-now.help"),
    Number("part", "run-part", low=1, high=999, whole=True, optional=True),
)


def check(values: Values) -> None:
    """There is a batch to be run, and the piece of a helper is in it."""
    plan.check(values)
    found = reckoned(values)
    if found.batch is None:
        raise InputError("pieces", "run-refused")
    if values["part"] and not [1 for one in found.steps if one.piece == values["part"] - 1]:
        raise InputError("part", "run-part.none")


CHECKS = (check, done_so_far.check)

# name: of the step; key: what is done; piece: which of the batch's, -1 all of it; length: of seam [m]; mass: to measure
# or to pour [kg]; volume [m3]; lasts: one hand, planned [s]; done: at which age [s], or None
Step = namedtuple("Step", ("name", "key", "piece", "length", "mass", "volume", "lasts", "done"))
# limit: POT .. FILM; begun, by: ages [s]; end: when its work is done if it goes on so [s]; left: until `by` [s];
# state: PLENTY .. OVER
Window = namedtuple("Window", ("limit", "begun", "by", "end", "left", "state"))
# length: of tape that still fits [m]; two: two people lay all of it; laying: whether some lies already
Tape = namedtuple("Tape", ("length", "two", "laying"))
# batch: `progress.Batch`, None where all are finished; steps: `Step` of each; window: the tightest `Window`, or None;
# windows: all that run; tape: `Tape`, None where nothing is to be cut; cut: of tape that is laid now [m], None: all of
# it; dates: `Dates`, or None; record: `batch_record.Record` where all is done, else None; ends: (key, when done [s on
# the clock]) for the plan; now: [s on the clock]; age [s]; air [K]; system: the declaration that says how a system
# travels in a link
RunResult = namedtuple("RunResult", ("batch", "steps", "window", "windows", "tape", "cut", "dates", "record", "ends",
                                     "now", "age", "air", "system"))


def reckon(values: Values) -> RunResult:
    """The steps of a batch and its windows, by the age of the run at each tap."""
    made = plan.planned(values)
    standing = made.followed() if made.crews else []
    wanted = [one for one in standing if (one.number == values["batch"] if values["batch"] else not one.finished)]
    if not wanted:
        return RunResult(None, [], None, [], None, None, None, None, [], 0.0, 0.0, None, plan.SYSTEM_INPUT)
    batch, ran = wanted[0], _ran(values)
    age = max([values["ran_age"] or 0.0] + [ran[name] for name in ran])
    clock = progress.time_now(values)
    now = batch.start if clock is None else clock
    work, laid = batch.work, batch.laid
    gone = now - age
    cut = _cut(work, laid, ran, gone, values["tape"] == "all")
    steps = _steps(batch, ran, cut, values["temperature_is"] == "constant")
    windows = _windows(work, laid, steps, ran, gone, age)
    tightest = None
    for one in windows:
        if tightest is None or one.by - one.end < tightest.by - tightest.end:
            tightest = one
    air = work.profile.at(now)
    ends = _ends(batch, steps, gone)
    record = None
    if steps[-1].done is not None:
        record = _record(values, batch, steps, gone, cut)
    return RunResult(batch, steps, tightest, windows, _tape(work, laid, steps, windows, age), cut,
                     _dates(values, ran, air), record, ends, now, age, air, plan.SYSTEM_INPUT)


def reckoned(values: Values) -> RunResult:
    """The same, once for one question."""
    return once(values, "run", lambda: reckon(values))


def _ran(values: Values) -> "dict[str, float]":
    """The age at which each step was done [s]; a contact that was tapped twice is the older one."""
    found = {}  # type: dict[str, float]
    for row in values["ran"]:
        name = row["step"]
        found[name] = min(found.get(name, row["at"]), row["at"]) if name in POURED else row["at"]
    return found


def _begun(limit: str, ran: "dict[str, float]") -> "float | None":
    """The age at which resin met hardener in what a window is of [s]."""
    names = ("pour_mix", "pour_putty") if limit in (POT, SOFT) else ("pour_mix", "pour_wet")
    known = [ran[name] for name in names if name in ran]
    return known[0] if known else None


def _steps(batch: Batch, ran: "dict[str, float]", cut: "float | None",
           asks: bool = True) -> "list[Step]":
    """All steps in order. cut: of tape that is laid [m], None: all of it; asks: whether the air is one temperature"""
    work, laid = batch.work, batch.laid
    pieces = work.pieces[laid.first:laid.last]
    length, filler = sum([piece.length for piece in pieces]), work.mixing.filler
    found = []  # type: list[Step]

    def add(key: str, lasts: float = 0.0, piece: int = -1, metres: float = length, mass: float = 0.0,
            volume: float = 0.0) -> None:
        name = key if piece < 0 else key + "." + str(piece)
        found.append(Step(name, key, piece, metres, mass, volume, lasts, ran.get(name)))

    masses = dict(batches.liquids(batch))
    for key in ("air", "ready", "prepare", "protect")[0 if asks else 1:]:
        add(key)
    if laid.putty:
        if laid.one_mix:
            add("pour_mix", mass=batches.poured(masses["mix"]))
            add("keep", mass=laid.wet)
            add("filler", mass=laid.putty / (1 + filler) * filler)
        else:
            add("pour_putty", mass=batches.poured(masses["putty"]))
        add("bag", work.crew.mix_putty, volume=laid.putty / batches.PUTTY)
        add("place", sum([piece.place for piece in pieces]))
        add("tool", sum([piece.tool for piece in pieces]))
        add("clean", sum([piece.clean for piece in pieces]))
        if laid.wet and (cut is not None or "gate" in ran):
            add("gate", metres=length if cut is None else cut)
    tape = length if cut is None else cut
    if laid.wet and tape:
        if not laid.one_mix:
            wet = max(masses["wet"] * tape / length, min(work.mixing.least, masses["wet"]))
            add("pour_wet", mass=batches.poured(wet))
            add("tray", work.crew.mix_wet, mass=wet)
        rest = tape
        for place, piece in enumerate(pieces):
            metres = min(piece.length, rest)
            rest -= metres
            if metres <= 0:
                break
            share = metres / piece.length
            add("wet", piece.wetting * share, place, metres)
            add("lay", piece.lay * share, place, metres)
            add("roll", piece.roll * share, place, metres)
        add("peel", sum([piece.cover for piece in pieces]) * tape / length, metres=tape)
    add("cleanup")
    return found


def _to_do(steps: "list[Step]", age: float, since: float) -> "list[tuple[Step, float]]":
    """Each timed step that is not done and how long it still takes [s]; of the first, what has passed is off.

    since: the age at which the step before it was done [s]
    """
    found, passed = [], max(0.0, age - since)
    for step in steps:
        if step.done is None and step.lasts:
            left = max(0.0, step.lasts - passed)
            passed = 0.0
            found.append((step, left))
    return found


def _since(steps: "list[Step]", ran: "dict[str, float]") -> float:
    """The age at which the step under way was begun [s]."""
    return max([0.0] + [ran[name] for name in ran] + [step.done for step in steps if step.done is not None])


LAST = {POT: ("place",), CUP: ("tray",), SOFT: ("place", "tool", "clean") + OF_TAPE,
        FILM: OF_TAPE + ("peel",)}


def _end(work: Laying, limit: str, steps: "list[Step]", ran: "dict[str, float]", age: float) -> "float | None":
    """When the work of a window is done, as an age [s]; None where it is done. Two people work side by side."""
    left = _to_do(steps, age, _since(steps, ran))
    if not [step for step, _ in left if step.key in LAST[limit]]:
        return None
    times, cove, tape, last = 0.0, 0.0, 0.0, 0.0
    for place, (step, time) in enumerate(left):
        if [1 for other, _ in left[place:] if other.key in LAST[limit]]:
            times += time
            if step.key in ("tool", "clean"):
                cove += time
            if step.key in OF_TAPE or step.key == "tray":
                tape += time
                last = 0.0 if step.key == "wet" else last + time
    if work.crew.pair and cove and tape:
        times -= min(cove, tape - last)
    return age + times


def _windows(work: Laying, laid: Laid, steps: "list[Step]", ran: "dict[str, float]", gone: float,
             age: float) -> "list[Window]":
    """The windows that run. gone: the clock when the run had no age [s]"""
    found = []
    for limit in (POT, SOFT, CUP, FILM):
        begun = _begun(limit, ran)
        if begun is None or (limit in (POT, SOFT) and not laid.putty) or (limit == CUP and laid.putty):
            continue
        end = _end(work, limit, steps, ran, age)
        if end is None:
            continue
        by = progress.done_by(work, laid, limit, gone + begun) - gone
        state = OVER if age > by else LATE if end > by else (
            HURRY if end + max(SPARE_TIME, SPARE_SHARE * (end - age)) > by else PLENTY)
        found.append(Window(limit, begun, by, end, max(0.0, by - age), state))
    return found


def _cut(work: Laying, laid: Laid, ran: "dict[str, float]", gone: float, everything: bool) -> "float | None":
    """The tape that is still laid, decided when the cove was clean [m]; None: all of it."""
    begun = _begun(SOFT, ran)
    if everything or laid.one_mix or not laid.wet or begun is None or "clean" not in ran:
        return None
    pieces = work.pieces[laid.first:laid.last]
    length = sum([piece.length for piece in pieces])
    tape = sum([piece.wetting + piece.lay + piece.roll for piece in pieces])
    left = progress.done_by(work, laid, SOFT, gone + begun) - gone - max(ran["clean"], ran.get("gate", 0.0))
    fits = tape_left(left, work.crew.mix_wet, tape, length, LEAST_TAPE)
    return None if fits >= length - 1e-9 else fits


def _tape(work: Laying, laid: Laid, steps: "list[Step]", windows: "list[Window]", age: float) -> "Tape | None":
    """What of the tape still fits while the cove is soft, where not all of it does."""
    soft = [one for one in windows if one.limit == SOFT and one.state in (LATE, OVER)]
    tape = [step for step in steps if step.key in OF_TAPE and step.done is None]
    if not soft or not tape:
        return None
    length = sum([step.length for step in tape if step.key == "roll"])
    before = sum([step.lasts for step in steps if step.done is None and step.key in ("tool", "clean", "tray", "bag",
                                                                                    "place")])
    left, work_left = soft[0].by - age, sum([step.lasts for step in tape])
    laying = bool([1 for step in steps if step.key in ("tray", "wet") and step.done is not None])
    wetting = sum([step.lasts for step in tape if step.key == "wet"])
    two = not work.crew.pair and not laying and left >= before - min(before, wetting) + work_left - wetting
    return Tape(tape_left(left, before, work_left, length, LEAST_TAPE), two, laying)


def _ends(batch: Batch, steps: "list[Step]", gone: float) -> "list[tuple[str, float]]":
    """What a plan is told of its own steps that are done: (key, when [s on the clock]). All is done when it is cleaned
    up, also what was left out."""
    found, over = [], steps[-1].done  # type: list[tuple[str, float]], float | None
    keys = [step.key for step in batch.steps]
    for key, own in (("mix", "bag"), ("place", "place"), ("tool", "tool"), ("clean", "clean"), ("wet_mix", "tray"),
                     ("wet", "wet"), ("lay", "lay"), ("roll", "roll"), ("peel", "peel")):
        done = [step.done for step in steps if step.key == own]
        if key in keys and done and None not in done:
            found.append((key, gone + max(done)))
        elif key in keys and over is not None:
            found.append((key, gone + over))
    return found


def _took(steps: "list[Step]") -> "dict[str, float]":
    """How long each kind of work took [s], from tap to tap; two taps nearer together were not timed."""
    found = {}  # type: dict[str, float]
    before, missing = None, []
    for step in steps:
        if step.done is None:
            before = None
            continue
        if step.lasts and (before is None or step.done - before < AT_ONCE):
            missing.append(step.key)
        elif step.lasts:
            found[step.key] = found.get(step.key, 0.0) + step.done - before
        before = step.done
    return dict([(key, found[key]) for key in found if key not in missing])


def _record(values: Values, batch: Batch, steps: "list[Step]", gone: float,
            cut: "float | None") -> "batch_record.Record":
    """What the log keeps of it; of a piece that was cut no rate is learned."""
    took, laid = _took(steps), batch.laid
    alone = not laid.together
    done = [Timed(key, 0, time, time, True) for key, time in _ends(batch, steps, gone)]
    now = Batch(batch.number, batch.crew, batch.work, laid, batch.start, True, True, tuple(done), batch.deadlines,
                None, batch.slack, batch.limit)
    found = batch_record.record(values, now, done[-1].end)
    known = [row for row, _ in found.took]
    rows = [(row, took[row]) for row in known if row in took] if alone and cut is None else []
    return batch_record.Record(*(tuple(found)[:-1] + (rows,)))


def _dates(values: Values, ran: "dict[str, float]", air: float) -> "Dates | None":
    """When the peel ply may come off and until when a coat still holds, in the air of now."""
    contacts = [ran[name] for name in ran if name in POURED]
    if not contacts:
        return None
    tree = dict([(key, values["_tree"][key]) for key in ("system", "units") if key in values["_tree"]])
    asked, errors = inputs.read(cure.INPUTS, tree)
    asked["air"] = air
    if [one for one in errors if one.field != "air"] or inputs.checked(cure.CHECKS, asked):
        return None
    found = cure.reckon(asked)
    peel = [one.time for one in found.stages if one.name == "peel"]
    return Dates(peel[0] if peel else None, found.recoat, min(contacts), max(contacts))


def steps(values: Values) -> "list[dict]":
    """All steps in order, with what a script does at each."""
    return run_lines.steps(reckoned(values), values)


def answer(values: Values) -> "list":
    """The tightest window, what can still be saved, and the steps."""
    return run_lines.say(reckoned(values), values)
