"""Temperature over the clock, and how fast a mix ages in it: doubling with each 10 degC, counted in time at 25 degC."""

from math import exp, log

REFERENCE = 298.15  # K; windows are given at this temperature


class Profile:
    """Temperature [K] at times [s after the first midnight]: straight between the points, held before and after them.

    points: (time, temperature) pairs, times growing; doubling: factor f on the rate for each 10 K, above 0
    """

    def __init__(self, points, doubling=2.0):
        self.points, self.doubling, self.steepness = points, doubling, log(doubling) / 10
        self.constant = all([point[1] == points[0][1] for point in points])
        self.pace_held = self._pace(points[0][1])
        self.pace_coolest = self._pace(min([point[1] for point in points]))
        self.sums = [0.0]
        for before, after in zip(points, points[1:]):
            self.sums.append(self.sums[-1] + self._segment(before, after, after[0]))

    def _pace(self, temperature):
        return exp(self.steepness * (temperature - REFERENCE))

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
        return self.pace_held if self.constant else self._pace(self.at(time))

    def _segment(self, before, after, time):
        """The age gained from a point to a time before the next one: the integral of an exponential, in closed form."""
        span = time - before[0]
        rise = (after[1] - before[1]) / (after[0] - before[0]) * span * self.steepness
        start = exp(self.steepness * (before[1] - REFERENCE))
        # (e**x - 1) / x loses its digits near nought
        if -1e-5 < rise < 1e-5:
            return start * (1 + rise / 2 + rise * rise / 6) * span
        return start * (exp(rise) - 1) / rise * span

    def age_at(self, time: float) -> float:
        """What a mix would have aged since the first point, in time at 25 degC [s]; before it, less than nought."""
        points = self.points
        if time <= points[0][0]:
            return (time - points[0][0]) * self.pace_held
        place, last = 0, len(points) - 1
        while place < last and time > points[place + 1][0]:
            place += 1
        if place == last:
            return self.sums[-1] + (time - points[-1][0]) * self._pace(points[-1][1])
        return self.sums[place] + self._segment(points[place], points[place + 1], time)

    def age(self, start: float, span: float) -> float:
        """What a mix ages from `start` over `span` [s], in time at 25 degC [s]:
        integral of f**((T - 298.15 K) / 10) dt
        """
        if self.constant:
            return span * self.pace_held
        return self.age_at(start + span) - self.age_at(start)

    def coolest(self, start: float, end: float) -> float:
        """The lowest temperature between two times [K]."""
        return min([self.at(start), self.at(end)] + [point[1] for point in self.points if start < point[0] < end])

    def span(self, start: float, age: float) -> float:
        """How long from `start` until a mix has aged so much [s]; the inverse of `age`, in closed form."""
        if self.constant:
            return age / self.pace_held
        points, wanted = self.points, self.age_at(start) + age
        if wanted <= 0:
            return wanted / self.pace_held + points[0][0] - start
        place, last = 0, len(points) - 1
        while place < last and wanted > self.sums[place + 1]:
            place += 1
        time, temperature = points[place]
        ahead = (wanted - self.sums[place]) / self._pace(temperature)
        if place < last:
            rise = (points[place + 1][1] - temperature) / (points[place + 1][0] - time) * self.steepness
            if abs(rise * ahead) > 1e-5:
                ahead = log(1 + rise * ahead) / rise
            else:
                ahead *= 1 - rise * ahead / 2 + rise * ahead * rise * ahead / 3
        return time + ahead - start

    def held(self, temperature: float):
        """The same resin at one temperature."""
        return Profile(((0.0, temperature),), self.doubling)
