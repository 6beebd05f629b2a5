"""Calendars: a planned day, the windows of a cure or a running pot as iCalendar (RFC 5545)."""
import hashlib
from collections.abc import Callable, Iterable
from datetime import UTC, date, datetime, timedelta
from math import ceil, floor
from typing import Any, NamedTuple

from .version import VERSION

LONGEST = 75  # bytes of a line, RFC 5545, 3.1
MINUTE = 60


class Event(NamedTuple):
    """begins, ends: without a zone it is the time of the place; rings: whether it sounds when it begins"""

    summary: str
    begins: datetime
    ends: datetime | None = None
    told: str = ""
    rings: bool = False


def calendar(events: Iterable[Event], made: datetime) -> str:
    """The calendar as text. made: when, in UTC"""
    rows = ["BEGIN:VCALENDAR", "VERSION:2.0", f"PRODID:-//Covemix//Covemix {VERSION}//EN"]
    for one in events:
        begins = _moment(one.begins)
        whole = hashlib.sha256(repr(one).encode()).hexdigest()[:24]
        rows += ["BEGIN:VEVENT", f"UID:{whole}@covemix", f"DTSTAMP:{_moment(made)}", f"DTSTART:{begins}"]
        rows += [f"DTEND:{_moment(one.ends)}"] if one.ends else []
        rows += [f"SUMMARY:{_escaped(one.summary)}"]
        rows += [f"DESCRIPTION:{_escaped(one.told)}"] if one.told else []
        if one.rings:
            rows += ["BEGIN:VALARM", "ACTION:DISPLAY", f"DESCRIPTION:{_escaped(one.summary)}", "TRIGGER:PT0S",
                     "END:VALARM"]
        rows.append("END:VEVENT")
    return "".join(folded(row) for row in [*rows, "END:VCALENDAR"])


def folded(row: str) -> str:
    """A content line in pieces of at most 75 bytes, no letter cut.

    >>> [len(one) for one in folded("SUMMARY:" + "x" * 100).split("\\r\\n")]
    [75, 34, 0]
    """
    pieces, piece, size = [], "", 0
    for letter in row:
        width = len(letter.encode())
        if size + width > LONGEST:
            pieces.append(piece)
            piece, size = " ", 1
        piece, size = piece + letter, size + width
    return "\r\n".join([*pieces, piece]) + "\r\n"


def _escaped(text: str) -> str:
    for sign in "\\;,":
        text = text.replace(sign, "\\" + sign)
    return text.replace("\n", "\\n")


def _moment(time: datetime) -> str:
    return time.strftime("%Y%m%dT%H%M%S") + ("Z" if time.tzinfo else "")


def on_day(day: date, seconds: float, down: bool = False) -> datetime:
    """A time after that day's midnight, to the whole minute: down for what must not be passed, else up.

    >>> on_day(date(2026, 6, 1), 28_801.0), on_day(date(2026, 6, 1), 90_059.0, down=True)
    (datetime.datetime(2026, 6, 1, 8, 1), datetime.datetime(2026, 6, 2, 1, 0))
    """
    minutes = floor(seconds / MINUTE + 1e-6) if down else ceil(seconds / MINUTE - 1e-6)
    return datetime(day.year, day.month, day.day) + timedelta(minutes=minutes)


def of_plan(day: date, answer: dict[str, Any], values: dict) -> list[Event]:
    """Each batch of a planned day, its lines as its description."""
    lines, found = answer["lines"], []
    for one in answer["data"]["batches"]:
        part = f"batch_{one['batch']}"
        head = next(line for line in lines if line["name"] == part)
        told = [f"{line['label']}: {line['text']}" for line in lines if line["part"] == part and line is not head]
        found.append(Event(head["label"], on_day(day, one["start"]), on_day(day, one["end"]),
                           "\n".join([head["text"], *told])))
    return found


def of_cure(day: date, answer: dict[str, Any], values: dict) -> list[Event]:
    """Each window of a cure; what stays open is a moment. An opening is told late, a closing early."""
    labels = {line["name"]: line for line in answer["lines"]}
    mixed, found = values["mixed_at"], []
    for one in answer["data"]["windows"]:
        line = labels.get(one["window"])
        if one["from"] is None or line is None or (one["window"] == "recoat"
                                                   and answer["data"]["recoat_may_be_shut"]):
            continue
        begins = on_day(day, mixed + one["from"])
        ends = None if one["to"] is None else on_day(day, mixed + one["to"], down=True)
        if ends is None or ends > begins:
            found.append(Event(line["label"], begins, ends, line["rough"]))
    return found


def of_pot(day: date | None, answer: dict[str, Any], values: dict) -> list[Event]:
    """A running pot: when it is over, and each step that is not done, in UTC."""
    lines = answer["lines"]
    what = values["batch"] or (lines[0]["label"] if lines else "")
    ends = datetime.fromtimestamp(floor(answer["data"]["ends_at"]), UTC)
    steps = [(values["steps"][one["place"]]["name"], one["due_at"]) for one in answer["data"]["alarms"]]
    return [Event(what, ends, None, "\n".join(f"{line['label']}: {line['text']}" for line in lines), True),
            *(Event(name or what, datetime.fromtimestamp(floor(due), UTC), None, what, True) for name, due in steps)]


# of each move that has one: of (the day, the answer with its data, the values)
KINDS: dict[str, Callable[[Any, dict[str, Any], dict], list[Event]]] = {
    "plan": of_plan, "cure": of_cure, "pot": of_pot}
NEEDS_DAY = ("plan", "cure")  # in which day the times after midnight are
