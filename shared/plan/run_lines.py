"""Run lines: what is said at each step of a run, of the window that runs, and of what can still be saved."""
from ..clock import sun
from ..clock.cure_lines import STEP
from ..clock.pot_spans import left_text, spoken
from ..forms import links
from ..forms.clock_times import clock_said
from ..forms.types import Found, Said, Values
from ..pour.pouring_lines import step as made
from ..words.lines import ANSWER, ASK, MORE, WARN, Line, line, words
from ..words.messages import along, listed, message, number, quantity, sentences, typed
from ..words.numbers import DOWN, NEAREST, UP, shown, to_step, warmth_typed
from .advice import CUP, FILM, POT, SOFT
from .batch_lines import MIXES, SOFT_COVE, STEPS
from .limit_lines import named, piece_name
from .plan_leads import record_pairs
from .progress import day_pairs
from .run_dates import ages

WINDOWS = {POT: "run-window.bag", SOFT: "run-window.cove", CUP: "run-window.cup", FILM: "run-window.film"}
RANKS = {"plenty": ANSWER, "hurry": ASK, "late": WARN, "over": WARN}
STATES = {"plenty": "", "hurry": "run-window.hurry", "late": "run-window.late", "over": "run-window.over"}
SAVED = {POT: ("run-saved.bag", "run-saved.bag-over"), SOFT: ("run-saved.cove", "run-saved.cove-over"),
         CUP: ("run-saved.cup", "run-saved.cup"), FILM: ("run-saved.film", "run-saved.film")}
LABELS = {"ready": "run-ready", "prepare": "run-prepare", "protect": "run-protect", "keep": "run-keep",
          "filler": "run-filler", "bag": "run-bag", "tray": "run-tray", "gate": "run-gate", "cleanup": "run-cleanup",
          "place": STEPS["place"], "tool": STEPS["tool"], "clean": STEPS["clean"], "wet": STEPS["wet"],
          "lay": STEPS["lay"], "roll": STEPS["roll"], "peel": STEPS["peel"]}
UNDER = {"prepare": "run-prepare.under", "protect": "run-protect.under", "bag": "run-bag.under",
         "place": "run-place", "clean": "run-clean", "tray": "run-tray.under", "lay": "run-lay", "roll": "run-roll",
         "peel": "run-peel", "cleanup": "run-cleanup.under", "filler": "run-filler.under"}
METRES = ("place", "tool", "clean", "gate", "wet", "lay", "roll", "peel")


def steps(found: Found, values: Values) -> "list[dict]":
    """All steps of a run in order, or those of a helper's piece, each with its name as it is told when it is done, and
    for one that is poured the pairs that its pour is asked with. found: `run.RunResult`"""
    part = values["part"]
    told = [_step(found, one, values) for one in found.steps if part is None or one.piece == part - 1]
    if told and part is None:
        told.append(_end(found, values))
    return told


def _step(found: Found, one: Found, values: Values) -> dict:
    own = {"ran": one.name, "pours": [], "what": "", "other": "", "ends": "",
           "measures": bool(one.mass or one.volume)}
    if one.key.startswith("pour_"):
        name = one.key[5:]
        own.update(what=MIXES[name], pours=_pour(found, one, name, values))
        return dict(made(one.name, MIXES[name], quantity(one.mass, "g", places=0)), **own)
    if one.key == "air":
        old = values["air_age"]
        under = "run-air.plan" if old is None else message("run-air.age", span=spoken(old))
        return dict(made("air", "plan-temperature", quantity(found.air, "degC", places=1), under,
                         field="temperature", asks="plan-temperature"), **own)
    figure = _figure(one)
    label, under = LABELS[one.key], UNDER.get(one.key, "")
    if one.key == "lay" and found.batch.laid.putty:
        label = SOFT_COVE["lay"]
    if one.piece >= 0:
        own["what"] = piece_name(_pieces(found)[one.piece].name)
        if values["part"] is not None:
            own["what"] = message("run-part.what", piece=own["what"])
    elif one.key == "ready":
        own["what"] = named([piece.name for piece in _pieces(found)])
        if found.batch.laid.wet:
            lengths = listed([along(piece.length) for piece in _pieces(found)], "plain")
            under = message("run-ready.tape", lengths=lengths)
        else:
            under = "run-ready.under"
    if one.key == "gate":
        under = "run-saved.cut-done" if one.length else "run-saved.leave"
        own["other"] = "run-gate.all"
    return dict(made(one.name, label, figure, under, _aloud(label, figure),
                     rank=WARN if one.key == "gate" else ANSWER), **own)


def _aloud(label: Said, figure: Said) -> Said:
    """For the ear: the step with its figure."""
    return message("card-line.question", label=label, text=figure) if figure else ""


def _pieces(found: Found) -> list:
    laid = found.batch.laid
    return found.batch.work.pieces[laid.first:laid.last]


def _figure(one: Found) -> Said:
    if one.volume:
        return quantity(one.volume, "mL", UP, 0)
    if one.mass:
        return quantity(one.mass, "g", places=0)
    return along(one.length, DOWN if one.key == "gate" else NEAREST) if one.key in METRES else ""


def _pour(found: Found, one: Found, name: str, values: Values) -> "list[list]":
    """The pairs that Pour is asked with for this mix, over what its form holds."""
    return links.handed_on(found.system, values) + [
        ["amount_is", "total"], ["amount", shown(one.mass * 1000) + " g"],
        ["thicken", "yes" if name == "putty" else "no"], ["stiffness", "stands"],
        ["air", number(warmth_typed(found.air))], ["temperature", ""]] + sun.pairs(values)


def _clock(found: Found, age: float, toward: str) -> float:
    """An age on the clock [s], to half an hour: opening late, closing early."""
    return to_step(found.now - found.age + age, STEP, toward)


def _said(found: Found, time: float, toward: str, values: Values,
          days: bool = True) -> Said:
    """A time on the clock, of today, tomorrow or later."""
    return clock_said(time - found.now // 86400 * 86400, values["hours"], toward, days)


def _end(found: Found, values: Values) -> dict:
    """When the peel ply comes off and until when the next coat holds; what the log and the plan are told."""
    due = ages(found)
    ends = []  # type: list[tuple]
    label, figure, under, what = "run-date.bare", "", "run-date.unknown", ""  # type: Said, Said, Said, Said
    if due.off is not None:
        opens = _clock(found, due.off, UP)
        what, under = _said(found, opens, UP, values), "run-date.under"
        label, figure = "run-date", _said(found, opens, UP, values, False)
        ends.append(("run-date.off", opens, None))
    if due.opens is not None:
        opens, shuts = _clock(found, due.opens, UP), _clock(found, due.closes, DOWN)
        under = "run-date.shut"
        if opens < shuts:
            under = message("run-date.coat", opens=_said(found, opens, UP, values),
                            closes=_said(found, shuts, DOWN, values))
            ends.append(("run-date.coats", opens, shuts))
    logs = []  # type: list
    if found.record is not None:
        system = values["system"]
        logs = record_pairs(found.record) + [pair for pair in (
            ["mixture", system["name"] or "mixed"], ["lot", system["lot"]],
            ["thicken", "yes" if found.batch.laid.putty else ""]) if pair[1]]
    told = dict(made("date", label, figure, sentences([under, "run-kept"]), _aloud(label, what), logs=logs), ran="",
                pours=[], what=what, other="", ends="", pairs=_plan_pairs(found, values))
    if ends and values["ran_wall"] is not None:
        told["made"] = values["ran_wall"]
        told["ends"] = [[what] + [None if time is None else _unix(found, time, values) for time in (begins, closes)]
                        for what, begins, closes in ends]
    return told


def _unix(found: Found, time: float, values: Values) -> float:
    """A time on the clock as seconds since 1970, to the minute: the clock of now was read to the minute before."""
    unix = values["ran_wall"] + time - found.now
    return unix - unix % 60


def _plan_pairs(found: Found, values: Values) -> "list[list]":
    """The steps done, as the plan is told them."""
    place = max([row["place"] for row in values["done"]] + [-1]) + 1
    pairs = [["running", "yes"]] + day_pairs(values)
    for key, time in found.ends:
        own = "done.{}.".format(place)
        pairs += [[own + "batch", str(found.batch.number)], [own + "step", key],
                  [own + "minute", shown((time - values["start"]) / 60, 0)]]
        place += 1
    return pairs


def saved(found: Found) -> Said:
    """What can still be saved of the window that will be missed, or ""."""
    window, tape = found.window, found.tape
    if window is None or window.state not in ("late", "over"):
        return ""
    if window.limit != SOFT or tape is None:
        return SAVED[window.limit][window.state == "over"]
    if window.state == "over":
        return "run-saved.roll-over" if tape.laying else "run-saved.leave"
    if tape.laying:
        return message("run-saved.roll", length=along(tape.length, DOWN)) if tape.length else "run-saved.roll-over"
    what = message("run-saved.cut", length=along(tape.length, DOWN)) if tape.length else "run-saved.leave"
    return sentences([what, "run-saved.two"]) if tape.two else what


def say(found: Found, values: Values) -> "list[Line]":
    """found: `run.RunResult`"""
    lines = []
    if found.window is not None:
        one = found.window
        lines.append(line("window", WINDOWS[one.limit], one.left, "s", typed(left_text(one.left)),
                          rank=RANKS[one.state], rough=STATES[one.state]))
        lines.append(line("window_lasts", "pot-duration", one.by - one.begun, "s",
                          quantity(one.by - one.begun, "min", DOWN, 0), rank=MORE))
        what = saved(found)
        if what:
            lines.append(words("saved", "run-saved", what, rank=WARN))
    for place, one in enumerate(steps(found, values)):
        label = message("pouring-step", number=place + 1, label=one["label"])
        lines.append(words(one["name"], label, one["figure"] or one["under"], one["under"] if one["figure"] else "",
                           rank=MORE))
    return lines

