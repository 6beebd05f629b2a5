"""Pot spans: how long something lasts, as it is shown, said aloud and typed."""

from math import floor

from ..forms.types import Said
from ..words.messages import message
from ..words.numbers import BLANKS, DOWN, digits, shown


def left_text(seconds: float, toward: str = DOWN) -> str:
    """A span as minutes and seconds: what is left rounded down, what is over rounded UP.

    >>> left_text(754.9), left_text(59.2), left_text(3725.0), left_text(59.2, "up")
    ('12:34', '0:59', '62:05', '1:00')
    """
    whole = floor(seconds + 1e-6) if toward == DOWN else -floor(1e-6 - seconds)
    return str(whole // 60) + ":" + ("0" if whole % 60 < 10 else "") + str(whole % 60)


def spoken(seconds: float, toward: str = DOWN) -> Said:
    """A span for the ear: whole minutes, or seconds when there is less than one.

    >>> spoken(754.0), spoken(59.0), spoken(61.0, "up")[1]
    (('span-minutes', {'count': 12}), ('span-seconds', {'count': 59}), {'count': 2})
    """
    if seconds < 60:
        return message("span-seconds", count=int(shown(seconds, 0, toward)))
    return message("span-minutes", count=int(shown(seconds / 60, 0, toward)))


def span_typed(typed: str) -> "float | None":
    """A span typed as it is shown, minutes or minutes and seconds -> seconds, or None.

    >>> span_typed("12:30"), span_typed(" 12 "), span_typed("12.5"), span_typed("12,25"), span_typed("12:75")
    (750.0, 720.0, 750.0, 735.0, None)
    """
    minutes, mark, rest = typed.strip(BLANKS).replace(",", ".").partition(":")
    if mark:
        fits = digits(minutes, 4) and digits(rest, 2) and len(rest) == 2 and int(rest) < 60
        return float(int(minutes) * 60 + int(rest)) if fits else None
    whole, mark, part = minutes.partition(".")
    if not digits(whole, 4) or (mark and not digits(part, 2)):
        return None
    return int(whole) * 60.0 + (60.0 * int(part) / 10 ** len(part) if mark else 0.0)
