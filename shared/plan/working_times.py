"""Working times: how long the bag, the cove and the wet tape last, as `usable` tells it and as a plan asks it.

A time that is typed counts alone. All are kept as time at 25 degC; over a changing temperature that counts which leaves
least at the ends of its range (the times in between are longer, tested).
"""
from collections import namedtuple
from math import exp, floor, log

from ..catalogue.pot_life import HUNDRED
from ..catalogue.pots import SIZES
from ..clock.heat_model import OWN_POT, known_pots, mixed_resin, quick_in_sun, seen_warmth, timings_of
from ..clock.heat_table import LEAST, PER_MASS, heat_table
from ..clock.pot_heat import pot as pot_in
from ..clock.sun import shaded, sun_of
from ..clock.usable import BY_GONE, BY_GOOD, BY_HEAT, Usable, batch, bounding, bounds, setting, share_kept, usable
from ..equations.laying import CUP, FILM, POT, SOFT, Windows
from ..equations.quick_rule import RULE, by_ranges, film_time, ranges
from ..equations.temperature_profile import REFERENCE, Profile
from ..forms.types import Values
from ..things.own_timings import read_timings

TYPED, SEEN, HEAT, LABEL, OWN, QUICK = "typed", "seen", "heat", "label", "own", "quick"
KINDS = {POT: "bag", CUP: "cup", SOFT: "bead", FILM: "film"}
BY_MASS = (POT, CUP)
SUN_SPARE = 0.97  # how much filler is in it changes what the sun does to a pot by less (tested)
SAME = 1e-9  # of a time; what differs by less is the same, reckoned another way
SOME = 0.1  # kg; of a bead or a film: how much of it there is does not matter

# limit: of laying; mass: in the bag or the cup [kg]; at: temperature it is told for [K]; span: used of it [s]; end: how
# long it lasts [s]; share: span / end [-]; by: what counts, TYPED, SEEN of a pot, HEAT (the heat balance), or how the
# quick rule was reckoned: LABEL, OWN, QUICK; other, longer: by what the longer of two estimates was reckoned, and it
# [s], both None where there is one only; own: own timings it rests on; found: the `Usable`, None where the time is
# typed
Window = namedtuple("Window", ("limit", "mass", "at", "span", "end", "share", "by", "other", "longer", "own", "found"))


def timed(values: Values) -> Values:
    """The system and what was timed of it beside its own timings, as `heat_model` asks for them."""
    return {"system": values["system"], "timings": read_timings(values["timings"])}


def shorter(times: "tuple[float, ...]", others: "tuple[float, ...]") -> bool:
    """Whether the first of them that differs is shorter. The quick rule gives one time at 25 degC for both ends of a
    range, but for the last digits of a float: then the end with the shorter estimate beside it counts.

    >>> shorter((60.0, 9.0), (90.0, 8.0)), shorter((60.00000000000001, 7.0), (60.0, 8.0)), shorter((60.0,), (60.0,))
    (True, True, False)
    """
    for one, other in zip(times, others):
        if abs(one - other) > SAME * other:
            return one < other
    return False


class WorkingTimes:
    """The windows of one system at one temperature or over a range of them; `laying.Windows` is what a plan asks."""

    def __init__(self, values: Values, profile: Profile) -> None:
        self.values, self.profile = values, profile
        system, self.doubling = values["system"], values["doubling"]
        self.exponent = RULE["exponent"] if values["exponent"] is None else values["exponent"]
        self.sun, self.sunny = sun_of(values), {}
        asked = timed(values)
        self.timings, known, pots = asked["timings"], timings_of(asked), known_pots(asked)
        self.own, self.seen = setting(known), bounding(known)
        self.rule_start = pots[0][3]
        self.ranges = ranges(pots, self.exponent, self.doubling)
        hundred = by_ranges(self.ranges, HUNDRED, self.exponent)
        film: float = film_time(system, REFERENCE, hundred, self.doubling)  # type: ignore[assignment]  # 100 g are known
        self.rule_film = values["film"] or film
        self.rule_soft = values["soft"] or min(RULE["soft"] * hundred, film)
        temperatures = [point[1] for point in profile.points]
        low, high = min(temperatures), max(temperatures)
        self.ends = [low] if profile.constant else [low, high]
        # a pot that was gone bounds those as warm and warmer: the warmth it was seen at is an end of the range too
        self.ends += [seen_warmth(row) for row in self.seen if row["said"] != "good" and low < seen_warmth(row) < high]
        typed = [values[name] is not None for name in ("soft", "film", "exponent")]
        self.table = table = None if all(typed) else heat_table(system, self.timings, self.sun)
        # where a time is typed the heat balance is not asked
        self.heat_soft = self.heat_film = None
        self.certain = 1e30
        if table is not None:
            self.heat_soft = None if typed[0] else self._least([table.bead(at, self._filler()) for at in self.ends])
            self.heat_film = None if typed[1] else self._least([table.film(at) for at in self.ends])
            self.certain = 1e30 if typed[2] else self._least([table.at_least(at) for at in self.ends])
        self.kept: dict[tuple[str, float, float], tuple[float, Usable | None, float]] = {}

    def changed(self, profile: Profile) -> "WorkingTimes":
        """The same system on another day."""
        return WorkingTimes(self.values, profile)

    def in_shade(self) -> "WorkingTimes":
        """The same day without sun."""
        return WorkingTimes(shaded(self.values), self.profile)

    def _filler(self) -> float:
        return self.values["filler"] / (1 + self.values["filler"])

    def _least(self, times: "list[float]") -> float:
        """The least of times at the ends of the range, as time at 25 degC [s]."""
        return min([time * self.profile.pace_at(at) for time, at in zip(times, self.ends)])

    def rule_pot(self, mass: float, limit: str = POT) -> float:
        """By the quick rule, no longer than a film [s at 25 degC]."""
        return self.in_sun(min(by_ranges(self.ranges, mass, self.exponent), self.rule_film), limit, mass)

    def in_sun(self, time: float, limit: str, mass: float = SOME) -> float:
        """A window of the quick rule, or one that is typed, in the sun of the day [s at 25 degC].

        Asked for very many masses: the pot is taken as one a little smaller and one a little larger, whichever the sun
        shortens more.
        """
        if not self.sun.flux:
            return time
        place = floor(log(max(mass, LEAST)) * PER_MASS)
        found = []
        for at in self.ends:
            pace, pots = self.profile.pace_at(at), []
            for beside in (place, place + 1):
                key = (limit, beside, at)
                if key not in self.sunny:
                    filler = 0.0 if limit in (CUP, FILM) else self._filler()
                    self.sunny[key] = pot_in(KINDS[limit], exp(beside / PER_MASS), SIZES,
                                             mixed_resin(self.values["system"]), filler, at, at, sun=self.sun)
                pots.append(self.sunny[key])
            found.append(quick_in_sun(time / pace, pots, at, self.doubling) * pace)
        return min(found)

    def heat_pot(self, mass: float, limit: str = POT) -> "float | None":
        """By the heat balance [s at 25 degC], or None where the exponent is typed."""
        table = self.table
        return None if self.values["exponent"] is not None or table is None else self._least(
            [table.bag(mass, at, KINDS[limit]) for at in self.ends])

    def pot(self, mass: float, limit: str = POT) -> float:
        """The shorter for a mass in the bag or the cup [kg] -> [s at 25 degC]; what was seen of pots bounds it."""
        rule = self.rule_pot(mass, limit)
        heat = None if rule <= self.certain else self.heat_pot(mass, limit)
        time = rule if heat is None else min(rule, heat)
        if self.sun.flux:
            time *= SUN_SPARE
        return self._bounded(limit, mass, time) if self.seen else time

    def _bounded(self, limit: str, mass: float, time: float) -> float:
        """A window [s at 25 degC] within what was seen of pots that are no easier and no harder, at each end."""
        found = []
        for at in self.ends:
            pace = self.profile.pace_at(at)
            least, _, most, _ = bounds(self._batch(limit, mass, at), KINDS[limit], mass)
            end = time / pace if least is None else max(time / pace, least)
            found.append((end if most is None else min(end, most)) * pace)
        return min(found)

    def _batch(self, limit: str, mass: float, at: float, filler: float = 0.0) -> Values:
        return batch(self.values["system"], KINDS[limit], mass, at, timings=self.timings, sun=self.values,
                     filler=self._filler() if limit == SOFT else filler)

    def share(self, limit: str) -> float:
        """How much of a window is used [-]."""
        typed = limit == FILM and self.values["film"] is not None
        return self.values["share"] if typed else share_kept(self.values["system"], KINDS[limit], self.values["share"])

    def windows(self) -> Windows:
        """What the plan is looked for with: bags by the table, on the safe side."""
        upper, scale, _ = self.ranges[0]
        power, film, fully = -self.exponent, self.rule_film, self.pot
        # no mass lasts less than one that sheds no heat: most need no more than the rule, and are asked very often
        most = 0.0 if self.seen or self.sun.flux else min(film, self.certain)

        def pot(mass: float) -> float:
            rule = scale * mass**power
            return rule if rule <= most and mass <= upper else fully(mass)

        return Windows(pot, lambda mass: self.pot(mass, CUP), self._window(SOFT), self._film(), self.values["share"])

    def _window(self, limit: str) -> float:
        rule, heat = (self.rule_soft, self.heat_soft) if limit == SOFT else (self.rule_film, self.heat_film)
        rule = self.in_sun(rule, limit)
        if heat is None:  # typed
            return rule
        return self._bounded(limit, SOME, min(rule, heat)) if self.seen else min(rule, heat)

    def _film(self) -> float:
        """The window of a film as a plan asks it, which takes its usual share of any window."""
        film, share, of_film = self._window(FILM), self.values["share"], self.share(FILM)
        return film if of_film == share else film * of_film / share

    def exact_windows(self, fillers: "dict[float, float]") -> Windows:
        """What is told of the plan that was found. fillers: share of the filler by the mass in the bag"""
        return Windows(lambda mass: self.window(POT, mass, fillers.get(mass, 0.0))[0],
                       lambda mass: self.window(CUP, mass)[0], self._window(SOFT), self._film(), self.values["share"])

    def window(self, limit: str, mass: float, filler: float = 0.0) -> "tuple[float, Usable | None, float]":
        """(a window [s at 25 degC], the `Usable` that it follows from or None where it is typed, its temperature)"""
        key = (limit, mass, filler)
        if key not in self.kept:
            self.kept[key] = self._found(limit, mass, filler)
        return self.kept[key]

    def _found(self, limit: str, mass: float, filler: float) -> "tuple[float, Usable | None, float]":
        if limit not in BY_MASS and self.values[limit] is not None:
            return self.in_sun(self.values[limit], limit), None, self.ends[0]
        rule, balance = (self.exponent, self.doubling), limit not in BY_MASS or self.values["exponent"] is None
        found = []
        for at in self.ends:
            one = usable(self._batch(limit, mass, at, filler), share=self.values["share"], rule=rule, balance=balance)
            pace = self.profile.pace_at(at)
            found.append((one.end * pace, max(one.model or 0.0, one.quick or 0.0) * pace, one, at))
        least = found[0]
        for tried in found[1:]:
            if shorter(tried[:2], least[:2]):
                least = tried
        return least[0], least[2], least[3]

    def told(self, limit: str, mass: float, temperature: float, filler: float = 0.0) -> Window:
        """How long it is used at a temperature [K], and by what that was reckoned. filler: share of the mass [-]"""
        time, one, at = self.window(limit, mass if limit in BY_MASS else SOME, filler)
        pace = self.profile.pace_at(temperature)
        end, share, own = time / pace, self.share(limit), len(self.own)
        if one is None:
            return Window(limit, mass, temperature, share * end, end, share, TYPED, None, None, own, None)
        rule, other, longer = self._by_rule(limit), None, None
        if one.by in (BY_GONE, BY_GOOD):
            by = SEEN
        elif one.model is None or one.quick is None:
            by = rule if one.model is None else HEAT
        else:
            by, other, longer = (HEAT, rule, one.quick) if one.by == BY_HEAT else (rule, HEAT, one.model)
            longer = longer * self.profile.pace_at(at) / pace
        return Window(limit, mass, temperature, share * end, end, share, by, other, longer, own, one)

    def _by_rule(self, limit: str) -> str:
        """How the quick rule was reckoned: from the label's film time, from an own timing, or from the label's pot."""
        if limit == FILM and self.values["system"]["film_time"] is not None:
            return LABEL
        return OWN if self.own and self.rule_start == OWN_POT else QUICK
