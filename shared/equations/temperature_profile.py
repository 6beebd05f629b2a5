"""Temperature over the clock, and how fast a mix ages in it: doubling with each 10 degC, counted in time at 25 degC."""

from math import exp, log

from .quick_rule import REFERENCE

EVER = 1e12  # s; before the first and after the last point the temperature stays
FLAT = 1e-5  # of the exponent over a stretch: below it the closed form loses digits and its series does not


class Profile:
    """Temperature [K] at times [s after the first midnight]: straight between the points, held before and after them.

    points: (time, temperature) pairs, times growing; doubling: factor f on the rate for each 10 K, 1 or more
    """

    def __init__(self, points: tuple, doubling: float = 2.0) -> None:
        self.points, self.doubling, self.steepness = points, doubling, log(doubling) / 10
        self.constant = all([point[1] == points[0][1] for point in points])
        self.warmest = max([point[1] for point in points])
        self.pace_held = self.pace_at(points[0][1])
        self.pace_coolest = self.pace_at(min([point[1] for point in points]))
        # from, to [s]; age at its beginning [s]; pace there [-]; growth of the pace [1/s]; whether it is nearly flat
        first = points[0][0]
        self.stretches = [(-EVER, first, -(EVER + first) * self.pace_held, self.pace_held, 0.0, True)]
        age = 0.0
        for before, after in zip(points, points[1:]):
            span = after[0] - before[0]
            growth = (after[1] - before[1]) / span * self.steepness
            flat = abs(growth * span) < FLAT
            self.stretches.append((before[0], after[0], age, self.pace_at(before[1]), growth, flat))
            age += self._gained(self.stretches[-1], after[0])
        self.stretches.append((points[-1][0], EVER, age, self.pace_at(points[-1][1]), 0.0, True))
        self.stretch = self.stretches[0]
        self.paces = [(time, self.pace_at(temperature)) for time, temperature in points]

    def pace_at(self, temperature: float) -> float:
        """How fast a mix ages at a temperature [K], against 25 degC [-]."""
        return exp(self.steepness * (temperature - REFERENCE))

    def _at(self, time: float) -> tuple:
        """The stretch that a time is in; mostly the one that was asked for last."""
        stretch = self.stretch
        if not stretch[0] <= time <= stretch[1]:
            for stretch in self.stretches:
                if time <= stretch[1]:
                    break
            self.stretch = stretch
        return stretch

    def _gained(self, stretch: tuple, time: float) -> float:
        """The age gained in a stretch up to a time in it: the integral of an exponential, in closed form."""
        ahead, growth = time - stretch[0], stretch[4]
        if stretch[5]:
            rise = growth * ahead
            return stretch[3] * ahead * (1 + rise / 2 + rise * rise / 6)
        return stretch[3] / growth * (exp(growth * ahead) - 1)

    def at(self, time: float) -> float:
        """Temperature at a time [K]."""
        points = self.points
        if time <= points[0][0]:
            return points[0][1]
        for before, after in zip(points, points[1:]):
            if time <= after[0]:
                return before[1] + (after[1] - before[1]) * (time - before[0]) / (after[0] - before[0])
        return points[-1][1]

    def pace(self, time: float) -> float:
        """How fast a mix ages at a time, against 25 degC [-]: f**((T - 298.15 K) / 10)."""
        stretch = self._at(time)
        return stretch[3] * exp(stretch[4] * (time - stretch[0])) if stretch[4] else stretch[3]

    def age_at(self, time: float) -> float:
        """What a mix would have aged since the first point, in time at 25 degC [s]; before it, less than nought."""
        if time < self.points[0][0]:
            return (time - self.points[0][0]) * self.pace_held
        stretch = self._at(time)
        return stretch[2] + self._gained(stretch, time)

    def age(self, start: float, span: float) -> float:
        """What a mix ages from `start` over `span` [s], in time at 25 degC [s]:
            integral of f**((T - 298.15 K) / 10) dt
        """
        if self.constant:
            return span * self.pace_held
        return self.age_at(start + span) - self.age_at(start)

    def span(self, start: float, age: float) -> float:
        """How long from `start` until a mix has aged so much [s]; the inverse of `age`, in closed form."""
        if self.constant:
            return age / self.pace_held
        return self._until(self.age_at(start) + age) - start

    def _until(self, wanted: float) -> float:
        """When a mix has aged so much since the first point [s]."""
        if wanted <= 0:
            return wanted / self.pace_held + self.points[0][0]
        found = self.stretches[1]
        for stretch in self.stretches[1:]:
            if stretch[2] <= wanted:
                found = stretch
        begun, _, so_far, pace, growth, _ = found
        ahead = (wanted - so_far) / pace
        rise = growth * ahead
        ahead = log(1 + rise) / growth if abs(rise) > FLAT else ahead * (1 - rise / 2 + rise * rise / 3)
        return begun + ahead

    def ahead(self, start: float, age: float, further: float) -> tuple:
        """What every batch that is tried asks of the hours ahead of its start, in one go.

        returns: how long until a mix has aged so much [s]; the least and the greatest pace until `further` times that;
        a function of the time since the start [s]: the age gained
        """
        begun, ended, _, pace, growth, flat = self._at(start)
        age_at, room, rate, span = self.age_at, -1.0, 0.0, None
        if growth:
            pace *= exp(growth * (start - begun))
        if not flat:  # within this stretch the age is an exponential from here
            rate, room = pace / growth, ended - start
            if rate > 0 or age < -rate:
                span = log(1 + age / rate) / growth

        def gained(time: float) -> float:
            return rate * (exp(growth * time) - 1) if time <= room else age_at(start + time) - age_at(start)

        if span is not None and further * span <= room:
            last = pace * exp(growth * further * span)
            return (span, pace, last, gained) if growth > 0 else (span, last, pace, gained)
        if span is None or span > room:
            span = self.span(start, age)
        end, cold, hot = start + further * span, pace, pace
        for one in [self.pace(end)] + [one for time, one in self.paces if start < time < end]:
            if one < cold:
                cold = one
            elif one > hot:
                hot = one
        return span, cold, hot, gained

    def trend(self, start: float, end: float) -> int:
        """1 where it never falls between two times, -1 where it never rises, 0 where it does both."""
        rises = falls = False
        for begun, ended, _, _, growth, _ in self.stretches:
            if begun < end and ended > start:
                rises, falls = rises or growth > 0, falls or growth < 0
        return 0 if rises and falls else (-1 if falls else 1)

    def between(self, start: float, end: float) -> tuple:
        """The lowest and the highest temperature between two times [K]."""
        low = high = self.at(start)
        for one in [self.at(end)] + [point[1] for point in self.points if start < point[0] < end]:
            if one < low:
                low = one
            elif one > high:
                high = one
        return low, high

    def held(self, temperature: float) -> "Profile":
        """The same resin at one temperature."""
        return Profile(((0.0, temperature),), self.doubling)


class Held:
    """One pace of ageing, all that a bound needs of a profile. pace: against 25 degC [-]"""

    constant = True

    def __init__(self, pace: float) -> None:
        self.pace_held = pace
