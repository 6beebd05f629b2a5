"""Shelf: what can be mixed from what is left of each part, what a mix takes off it, and the last day of a can."""
from math import pi

from .civil_date import date, days_of


def mixable(left: tuple, shares: "tuple | list") -> float:
    """Mix that the parts left over make: the scarcest part decides, min(left_i / share_i).

    left: of each part [kg]; shares: of each part in the mix by mass, together 1; returns [kg]
    >>> round(mixable((0.8, 0.3), (0.75, 0.25)), 6)  # of the first there is enough for 1.067 kg, of the other for 1.2
    1.066667
    """
    return min([mass / share for mass, share in zip(left, shares)])


def after(left: tuple, shares: "tuple | list", mixed: float) -> tuple:
    """What is left of each part when so much was mixed, never below nothing. mixed [kg], below 0 where it goes back

    >>> [round(mass, 3) for mass in after((0.8, 0.3), (0.75, 0.25), 0.4)], after((0.1, 0.3), (0.75, 0.25), 0.4)[0]
    ([0.5, 0.2], 0.0)
    """
    return tuple([max(0.0, mass - share * mixed) for mass, share in zip(left, shares)])


def warm_through(mass: float, density: float, conductivity: float, heat: float) -> float:
    """How long an unstirred liquid takes until its middle has come nine tenths of the way to the bath around it:
        t = 0.48 R**2 rho c / k, R = (m / (2 pi rho))**(1/3)

    A can as tall as wide, as if it were endless: its ends make it sooner. 0.48 is ln(10 * 1.602) / 2.405**2
    (2.405 is the first zero of J0, 1.602 is 2 / (2.405 J1(2.405))), rounded up
    mass [kg]; density: rho [kg/m3]; conductivity: k [W/(m K)]; heat: c [J/(kg K)]; returns [s]
    >>> round(warm_through(1.0, 1100.0, 0.2, 2000.0) / 3600, 2)
    4.04
    """
    radius = (mass / (2 * pi * density)) ** (1 / 3)
    return 0.48 * radius * radius * density * heat / conductivity


def day_number(typed: str) -> "int | None":
    """A date as ISO 8601 writes it, its day left out for the first of the month, as days since 1970-01-01; or None.

    >>> day_number("2026-03-15"), day_number("1970-01"), day_number("2026-02-30"), day_number("3/2026")
    (20527, 0, None, None)
    """
    pieces = (typed + ("-01" if len(typed) == 7 else "")).split("-")
    if [len(piece) for piece in pieces] != [4, 2, 2] or not all([c in "0123456789" for c in "".join(pieces)]):
        return None
    number = days_of(*[int(piece) for piece in pieces])
    return number if number is None or number >= 0 else None


def months_after(number: int, months: int) -> int:
    """The day that so many months later has the same place in its month, or the last of that month.

    number: days since 1970-01-01
    >>> iso(months_after(day_number("2026-08-31"), 6)), iso(months_after(day_number("2026-03-15"), 12))
    ('2027-02-28', '2027-03-15')
    """
    year, month, day = date(number)
    year, month = year + (month - 1 + months) // 12, (month - 1 + months) % 12 + 1
    found = None
    while found is None:
        found = days_of(year, month, day)
        day -= 1
    return found


def iso(number: int) -> str:
    """Days since 1970-01-01 as a date of ISO 8601.

    >>> iso(20527)
    '2026-03-15'
    """
    year, month, day = date(number)
    return "-".join([str(year)] + [("0" if one < 10 else "") + str(one) for one in (month, day)])
