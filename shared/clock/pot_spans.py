"""Spans: how long something lasts, as it is shown, said aloud and typed."""

from math import floor

from ..words.numbers import BLANKS, DOWN, digits, shown


def left_text(seconds: float, toward: str = DOWN) -> str:
    """A span as minutes and seconds: what is left rounded down, what is over rounded UP.

    >>> left_text(754.9), left_text(59.2), left_text(3725.0), left_text(59.2, "up")
    ('12:34', '0:59', '62:05', '1:00')
    """
    whole = floor(seconds + 1e-6) if toward == DOWN else -floor(1e-6 - seconds)
    return str(whole // 60) + ":" + ("0" if whole % 60 < 10 else "") + str(whole % 60)


def spoken(seconds: float, toward: str = DOWN) -> str:
    """A span for the ear: whole minutes, or seconds when there is less than one.

    >>> spoken(754.0), spoken(60.0), spoken(59.0), spoken(61.0, "up")
    ('12 minutes', '1 minute', '59 seconds', '2 minutes')
    """
    if seconds < 60:
        count, unit = int(shown(seconds, 0, toward)), "second"
    else:
        count, unit = int(shown(seconds / 60, 0, toward)), "minute"
    return str(count) + " " + unit + ("" if count == 1 else "s")


def span_typed(typed: str) -> "float | None":
    """A span typed as it is shown, minutes or minutes and seconds -> seconds, or None.

    >>> span_typed("12:30"), span_typed(" 12 "), span_typed("12.5"), span_typed("12:75"), span_typed("soon")
    (750.0, 720.0, 750.0, None, None)
    """
    minutes, mark, rest = typed.strip(BLANKS).replace(",", ".").partition(":")
    if mark:
        fits = digits(minutes, 4) and digits(rest, 2) and len(rest) == 2 and int(rest) < 60
        return float(int(minutes) * 60 + int(rest)) if fits else None
    whole, mark, part = minutes.partition(".")
    if not digits(whole, 4) or (mark and not digits(part, 2)):
        return None
    return int(whole) * 60.0 + (60.0 * int(part) / 10 ** len(part) if mark else 0.0)
