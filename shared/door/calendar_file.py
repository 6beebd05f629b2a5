"""Calendar file: dates of a seam as iCalendar, made on the phone, so that it works without signal."""
from ..files.calendar import Event
from ..files.calendar import calendar as written


def calendar(dates: "list | tuple", made: float) -> str:
    """The file's text. dates: [(what, begins, ends or None)] in whole sentences and seconds since 1970 UTC; made: when

    >>> calendar([("Peel ply off", 951782400, None)], 0).split("\\r\\n")[6:8]
    ['DTSTART:20000229T000000Z', 'SUMMARY:Peel ply off']
    """
    return written([Event(what, begins, ends, "", True, False) for what, begins, ends in dates], made)
