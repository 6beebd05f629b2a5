"""Calendar: a planned day, the windows of a cure or a running pot as iCalendar (RFC 5545)."""
from collections import namedtuple
from math import floor

from ..equations.civil_date import civil, days_of
from ..equations.types import Like
from ..words.languages import Reader
from ..words.messages import message, typed
from ..words.numbers import DOWN, NEAREST, UP, digits, shown
from ..words.texts import said

LONGEST = 75  # bytes of a line, RFC 5545, 3.1
MINUTE, DAY = 60, 86400
PRIME = 4294967291

# begins, ends: [s] from 1970 on, of the place's own clock, or of UTC where `utc`; ends None: a moment
# rings: whether it sounds when it begins
Event = namedtuple("Event", ("summary", "begins", "ends", "told", "utc", "rings"))


def calendar(events: list, made: float) -> str:
    """The calendar as text. made: when [s] from 1970 on, UTC"""
    rows = ["BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:-//Covemix//Covemix//EN"]
    for one in events:
        rows += ["BEGIN:VEVENT", "UID:" + _own_name(one), "DTSTAMP:" + moment(made, True),
                 "DTSTART:" + moment(one.begins, one.utc)]
        if one.ends is not None:
            rows.append("DTEND:" + moment(one.ends, one.utc))
        rows.append("SUMMARY:" + _escaped(one.summary))
        if one.told:
            rows.append("DESCRIPTION:" + _escaped(one.told))
        if one.rings:
            rows += ["BEGIN:VALARM", "ACTION:DISPLAY", "DESCRIPTION:" + _escaped(one.summary), "TRIGGER:PT0S",
                     "END:VALARM"]
        rows.append("END:VEVENT")
    return "".join([folded(row) for row in rows + ["END:VCALENDAR"]])


def _own_name(one: Event) -> str:
    total = 7
    for letter in one.summary:
        total = (total * 31 + ord(letter)) % PRIME
    return "{}-{}-{}@covemix".format(floor(one.begins), floor(one.ends or 0), total)


def folded(row: str) -> str:
    """A content line in pieces of at most 75 bytes, no letter cut.

    >>> [len(one) for one in folded("SUMMARY:" + "x" * 100).split("\\r\\n")]
    [75, 34, 0]
    """
    pieces, piece, size = [], "", 0  # type: list, str, int
    for letter in row:
        width = len(letter.encode())
        if size + width > LONGEST:
            pieces.append(piece)
            piece, size = " ", 1
        piece, size = piece + letter, size + width
    return "\r\n".join(pieces + [piece]) + "\r\n"


def _escaped(text: str) -> str:
    for sign in "\\;,":
        text = text.replace(sign, "\\" + sign)
    return text.replace("\n", "\\n")


def day_of(text: str) -> "int | None":
    """A date as 2026-06-01 in days from 1970 on; None where there is no such day.

    >>> day_of("1970-01-02"), day_of("2026-02-30"), day_of("tomorrow")
    (1, None, None)
    """
    steps = text.split("-")
    if len(text) != 10 or len(steps) != 3 or not all([digits(step, 4) for step in steps]):
        return None
    return days_of(*[int(step) for step in steps])


def moment(seconds: float, utc: bool = False) -> str:
    """A moment as a calendar has it. seconds: from 1970 on

    >>> moment(951829261.0, True)
    '20000229T130101Z'
    """
    two = [("0" + str(part))[-2:] for part in civil(floor(seconds))]
    year = civil(floor(seconds))[0]
    return ("000" + str(year))[-4:] + "".join(two[1:3]) + "T" + "".join(two[3:]) + ("Z" if utc else "")


def on_day(day: int, seconds: float, toward: str = UP) -> int:
    """A time after that day's midnight, to the whole minute: DOWN for what must not be passed, UP for an end.

    >>> on_day(0, 28_801.0), on_day(1, 90_059.0, DOWN)
    (28860, 176400)
    """
    return day * DAY + int(shown(seconds / MINUTE, 0, toward)) * MINUTE


def _told(lines: "list[dict]", who: Reader) -> str:
    return "\n".join([said(message("card-line", label=typed(one["label"]), text=typed(one["text"])), who)
                      for one in lines])


def of_plan(day: int, found: Like, answer: dict, who: Reader, values: dict) -> list:
    """Each batch of a planned day as its line tells it, its lines as its description."""
    lines, events = answer["lines"], []
    for one in found.batches:
        part = "batch_{}".format(one.batch.number)
        head = next(iter([line for line in lines if line["name"] == part]))
        told = _told([line for line in lines if line["part"] == part and line is not head], who)
        events.append(Event(head["label"], on_day(day, one.batch.start, NEAREST), on_day(day, one.end),
                            head["text"] + "\n" + told, False, False))
    for place, one in enumerate(found.layers):
        head = next(iter([line for line in lines if line["name"] == "layer_{}".format(place + 1)]))
        events.append(Event(head["label"], on_day(day, one.starts[0], NEAREST), on_day(day, one.end), "\n".join(
            [head[part] for part in ("text", "rough", "caution") if head[part]]), False, False))
    return events


def of_cure(day: int, found: Like, answer: dict, who: Reader, values: dict) -> list:
    """Each window of a cure; what stays open is a moment. An opening is told late, a closing early."""
    labels = dict([(line["name"], line) for line in answer["lines"]])
    recoat, mixed, events = found.recoat, values["mixed_at"], []
    rows = [("recoat", recoat.opens, recoat.closes)] if recoat and not recoat.shut else []
    for name, opens, closes in rows + [(stage.name, stage.time, None) for stage in found.stages]:
        if opens is None or name not in labels:
            continue
        begins = on_day(day, mixed + opens)
        ends = None if closes is None else on_day(day, mixed + closes, DOWN)
        if ends is None or ends > begins:
            events.append(Event(labels[name]["label"], begins, ends, labels[name]["rough"], False, False))
    return events


def of_pot(day: int, found: Like, answer: dict, who: Reader, values: dict) -> list:
    """A running pot: when it is over, and each step that is not done, in UTC."""
    lines = answer["lines"]
    labels = dict([(line["name"], line["label"]) for line in lines])
    what = labels["place"]
    steps = [(labels.get("alarm_" + str(one.place + 1), what), one.due) for one in found.alarms]
    return [Event(what, floor(found.state.end), None, _told(lines, who), True, True)] + [
        Event(name, floor(due), None, what, True, True) for name, due in steps]


# of each move that has one: of (the day, what was reckoned, the answer, who reads, the values)
KINDS = {"plan": of_plan, "cure": of_cure, "pot": of_pot}
NEEDS_DAY = ("plan", "cure")  # in which day the times after midnight are
