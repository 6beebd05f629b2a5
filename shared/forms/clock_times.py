"""Clock times: read as people write them, told to the minute, on a 24 h or a 12 h clock, past midnight too."""

from math import floor

from ..words.messages import message
from ..words.messages import typed as as_typed
from ..words.numbers import BLANKS, DOWN, NEAREST, UP, digits, small
from .inputs import Choice, Text
from .types import Given, Said

DAY = 86400
TWO = tuple([("0" if count < 10 else "") + str(count) for count in range(60)])  # a plan tells hundreds of times
HOURS = Choice("hours", "clock-hours", (("24", "clock-hours.whole"), ("12", "clock-hours.half")), fold="clock-fold")
LIKE = "field-clock"
WEEK = ("clock-weekday.mo", "clock-weekday.tu", "clock-weekday.we", "clock-weekday.th", "clock-weekday.fr",
        "clock-weekday.sa", "clock-weekday.su")
HOUR = ("uhr", "h")  # what stands for the colon, in the languages that we know


def clock_time(typed: Given) -> "float | None":
    """Typed clock time -> seconds after midnight, or None.

    >>> clock_time("8:30") / 3600, clock_time("2.15 pm") / 3600, clock_time("12 am"), clock_time("25:00")
    (8.5, 14.25, 0.0, None)
    >>> clock_time("14h15") / 3600, clock_time("14 Uhr 15") / 3600, clock_time("8 Uhr") / 3600
    (14.25, 14.25, 8.0)
    """
    text, half = small(typed).replace(" ", "").replace(".m.", "m"), ""
    for word in HOUR:  # behind the hour, or behind all
        text = text[:-len(word)] if text.endswith(word) else text.replace(word, ":")
    if text.endswith("am") or text.endswith("pm"):
        text, half = text[:-2], text[-2:]
    before, _, minute = text.replace(".", ":").replace(",", ":").partition(":")
    minute = minute or "0"
    if not (digits(before, 2) and digits(minute, 2)) or int(minute) > 59:
        return None
    hour = int(before)
    if half:
        if not 1 <= hour <= 12:
            return None
        hour = hour % 12 + (12 if half == "pm" else 0)
    return float(hour * 3600 + int(minute) * 60) if hour < 24 else None


def clock_said(seconds: float, hours: str = "24", toward: str = NEAREST, days: bool = True,
               dated: "tuple[int, int] | None" = None) -> Said:
    """A time after midnight of the first day [s] as a clock shows it; DOWN for the latest, UP for a finish.

    days: say by words which day, when it is not the first; dated: (the first day as days since 1970-01-01, how many
    days later it is now), where a phone told it: a day behind tomorrow is a weekday then, of the seven around now

    >>> clock_said(8.5 * 3600), clock_said(86400 + 300)
    ((0, '08:30'), ('clock-next-day', {'time': (0, '00:05')}))
    >>> clock_said(2 * 86400 + 300, dated=(20784, 0))[1]["day"]  # two days after Friday 2026-11-27
    'clock-weekday.su'
    """
    day, figures, half = _on_its_face(seconds, hours, toward)
    time: Said = as_typed(figures)
    if half:
        time = message("clock-pm" if half == "pm" else "clock-am", time=time)
    if days and dated and (day > 1 or dated[1] > 0) and -1 <= day - dated[1] <= 5:
        return message("clock-on-weekday", time=time, day=WEEK[(dated[0] + day + 3) % 7])  # 1970 began on a Thursday
    if not days or not day:
        return time
    if day == 1:
        return message("clock-next-day", time=time)
    if day == -1:
        return message("clock-day-before", time=time)
    return message("clock-on-day", time=time, day=day + 1)


def _on_its_face(seconds: float, hours: str, toward: str) -> "tuple[int, str, str]":
    """(day, 0 for the first; figures; "am", "pm" or "" on a clock of 24 h)"""
    count = seconds / 60
    if toward == DOWN:
        minutes = floor(count + 1e-6)
    elif toward == UP:
        minutes = -floor(1e-6 - count)
    else:
        minutes = floor(count + 0.5 + 1e-6)
    day, rest = minutes // 1440, minutes % 1440
    hour, figures = rest // 60, TWO[rest % 60]
    if hours == "12":
        return day, str((hour + 11) % 12 + 1) + ":" + figures, "pm" if hour >= 12 else "am"
    return day, TWO[hour] + ":" + figures, ""


def on_the_clock(times: list) -> list:
    """Clock times in the order they were typed -> seconds after the first midnight; an earlier one is the next day's.

    >>> [time / 3600 for time in on_the_clock([22 * 3600.0, 3600.0])]
    [22.0, 25.0]
    """
    found = []
    for time in times:
        while found and time < found[-1]:
            time += DAY
        found.append(time)
    return found


class Clock(Text):
    """A clock time. Reads into seconds after midnight; an optional one that is not typed reads as None."""

    def exemplified(self, examples: Given) -> Given:
        return examples.clock(self)

    def most_letters(self) -> int:
        return 0

    def read(self, typed: Given, path: str, values: dict) -> Given:
        if typed is None or (isinstance(typed, str) and not typed.strip(BLANKS)):
            if not self.default:
                if self.optional:
                    return None
                self.refuse(path, LIKE)
            typed = self.default
        found = clock_time(typed) if isinstance(typed, str) else None
        if found is None:
            self.refuse(path, LIKE)
        return found
