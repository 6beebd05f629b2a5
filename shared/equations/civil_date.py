"""Civil date: a count of seconds as a date and time of day, for a file that a calendar reads."""
from math import floor

DAY = 86400
ERA = 146097  # days of 400 years of the Gregorian calendar


def date(days: int) -> tuple:
    """The year, month and day of so many days from 1970 on, by the Gregorian calendar.

    >>> date(0), date(-1), date(11016)
    ((1970, 1, 1), (1969, 12, 31), (2000, 2, 29))
    """
    return civil(days * DAY)[:3]


def days_of(year: int, month: int, day: int) -> "int | None":
    """The days from 1970-01-01 to a date; None where there is no such day.

    >>> days_of(1970, 1, 2), days_of(2026, 2, 30), days_of(2026, 13, 1)
    (1, None, None)
    """
    turned = year - (month < 3)  # a year that ends with February
    days = turned * 365 + turned // 4 - turned // 100 + turned // 400 + day - 719469
    days += (153 * ((month + 9) % 12) + 2) // 5
    return days if date(days) == (year, month, day) else None


def civil(seconds: float) -> "tuple[int, int, int, int, int, int]":
    """Seconds since 1970-01-01 00:00 UTC -> (year, month, day, hour, minute, second), whole seconds rounded down.

    Proleptic Gregorian calendar (ISO 8601), years from 1970 on; leap seconds are not counted, as POSIX has it. A year
    is taken from March on, so that the leap day ends it: m = (5 d + 2) / 153, five months have 153 days.

    >>> civil(0), civil(951782400), civil(1.7e9)
    ((1970, 1, 1, 0, 0, 0), (2000, 2, 29, 0, 0, 0), (2023, 11, 14, 22, 13, 20))
    """
    whole = floor(seconds)
    days, rest = whole // DAY + 719468, whole % DAY  # from 0000-03-01
    era, day = days // ERA, days % ERA
    year = (day - day // 1460 + day // 36524 - day // 146096) // 365
    day -= 365 * year + year // 4 - year // 100
    month = (5 * day + 2) // 153
    first = (153 * month + 2) // 5
    return (year + era * 400 + (1 if month > 9 else 0), month + 3 if month < 10 else month - 9, day - first + 1,
            rest // 3600, rest // 60 % 60, rest % 60)
