"""Calendar file: dates of a seam as iCalendar (RFC 5545), made on the phone, so that it works without signal."""
from ..equations.civil_date import civil

LONGEST = 75  # bytes of a line, RFC 5545, 3.1


def _moment(seconds: float) -> str:
    year, month, day, hour, minute, second = civil(seconds)
    pairs = [("0" if one < 10 else "") + str(one) for one in (month, day, hour, minute, second)]
    return "{}{}{}T{}{}{}Z".format(year, *pairs)


def _escaped(text: str) -> str:
    for sign in "\\;,":
        text = text.replace(sign, "\\" + sign)
    return text.replace("\n", "\\n")


def _folded(row: str) -> str:
    """A content line in pieces of at most 75 bytes, no letter cut."""
    found, size = "", 0
    for letter in row:
        wide = len(letter.encode())
        if size + wide > LONGEST:
            found, size = found + "\r\n ", 1
        found, size = found + letter, size + wide
    return found + "\r\n"


def calendar(dates: "list | tuple", made: float) -> str:
    """The file's text. dates: [(what, begins, ends or None)] in whole sentences and seconds since 1970 UTC; made: when

    >>> calendar([("Peel ply off", 951782400, None)], 0).split("\\r\\n")[6:8]
    ['DTSTART:20000229T000000Z', 'SUMMARY:Peel ply off']
    """
    rows = ["BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:-//Covemix//Covemix//EN"]
    for place, (what, begins, ends) in enumerate(dates):
        rows += ["BEGIN:VEVENT", "UID:{}-{}@covemix".format(_moment(begins), place), "DTSTAMP:" + _moment(made),
                 "DTSTART:" + _moment(begins)]
        if ends is not None:
            rows.append("DTEND:" + _moment(ends))
        rows += ["SUMMARY:" + _escaped(what), "BEGIN:VALARM", "ACTION:DISPLAY", "DESCRIPTION:" + _escaped(what),
                 "TRIGGER:PT0S", "END:VALARM", "END:VEVENT"]
    return "".join([_folded(row) for row in rows + ["END:VCALENDAR"]])
