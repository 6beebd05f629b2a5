"""Working times: how long the bag, the cove and the wet tape last, as `usable` tells it and as a plan asks it.

A time that is typed counts alone. All are kept as time at 25 degC; over a changing temperature that counts which leaves
least at the ends of its range (the times in between are longer, tested).
"""
from ..catalogue.windows import HUNDRED
from ..clock.heat_model import OWN_POT, known_pots, timings_of
from ..clock.heat_table import heat_table
from ..clock.usable import BY_GONE, BY_GOOD, BY_HEAT, batch, bounds, share_kept, usable
from ..clock.usable_lines import OWN_TIMING, meaning
from ..equations.laying import CUP, FILM, POT, SOFT, Windows
from ..equations.quick_rule import RULE, by_ranges, film_time, ranges
from ..equations.temperature_profile import REFERENCE
from ..things.own_timings import counted_text, read_timings
from ..words.numbers import DOWN, shown

TYPED, LABEL, BY_RULE, BY_BALANCE = "the time you typed", "the label's film time", "the quick rule", "the heat balance"
KINDS = {POT: "bag", CUP: "cup", SOFT: "bead", FILM: "film"}
BY_MASS = (POT, CUP)
SOME = 0.1  # kg; of a bead or a film: how much of it there is does not matter


def timed(values):
    """The system and what was timed of it beside its own timings, as `heat_model` asks for them."""
    return {"system": values["system"], "timings": read_timings(values["timings"])}


class WorkingTimes:
    """The windows of one system at one temperature or over a range of them; `laying.Windows` is what a plan asks."""

    def __init__(self, values, profile):
        self.values, self.profile = values, profile
        system, self.doubling = values["system"], values["doubling"]
        self.exponent = RULE["exponent"] if values["exponent"] is None else values["exponent"]
        asked = timed(values)
        self.timings, self.own, pots = asked["timings"], timings_of(asked), known_pots(asked)
        self.rule_start = pots[0][3]
        self.ranges = ranges(pots, self.exponent, self.doubling)
        hundred = by_ranges(self.ranges, HUNDRED, self.exponent)
        self.rule_film = values["film"] or film_time(system, REFERENCE, hundred, self.doubling)
        self.rule_soft = values["soft"] or min(RULE["soft"] * hundred,
                                               film_time(system, REFERENCE, hundred, self.doubling))
        temperatures = [point[1] for point in profile.points]
        low, high = min(temperatures), max(temperatures)
        self.ends = [low] if profile.constant else [low, high]
        self.seen = [row for row in self.own if row["said"] != "stiffening"]
        # a pot that was gone bounds those as warm and warmer: the warmth it was seen at is an end of the range too
        self.ends += [row["at"] for row in self.seen if row["said"] == "gone" and low < row["at"] < high]
        typed = [values[name] is not None for name in ("soft", "film", "exponent")]
        self.table = table = None if all(typed) else heat_table(system, self.timings)
        self.heat_soft = None if typed[0] else self._heat(lambda at: table.bead(at, self._filler()))
        self.heat_film = None if typed[1] else self._heat(table.film)
        self.certain = 1e30 if typed[2] else self._heat(table.at_least)
        self.kept = {}

    def changed(self, profile):
        """The same system on another day."""
        return WorkingTimes(self.values, profile)

    def _filler(self):
        return self.values["filler"] / (1 + self.values["filler"])

    def _heat(self, time):
        """The least over the ends of the range, as time at 25 degC [s]."""
        return min([time(at) * self.profile.pace_at(at) for at in self.ends])

    def rule_pot(self, mass):
        """By the quick rule, no longer than a film [s at 25 degC]."""
        return min(by_ranges(self.ranges, mass, self.exponent), self.rule_film)

    def heat_pot(self, mass, limit=POT):
        """By the heat balance [s at 25 degC], or None where the exponent is typed."""
        return None if self.values["exponent"] is not None else self._heat(
            lambda at: self.table.bag(mass, at, KINDS[limit]))

    def pot(self, mass, limit=POT):
        """The shorter for a mass in the bag or the cup [kg] -> [s at 25 degC]; what was seen of pots bounds it."""
        rule = self.rule_pot(mass)
        time = rule if rule <= self.certain else min(rule, self.heat_pot(mass, limit))
        return self._bounded(limit, mass, time) if self.seen else time

    def _bounded(self, limit, mass, time):
        """A window [s at 25 degC] within what was seen of pots that are no easier and no harder, at each end."""
        found = []
        for at in self.ends:
            pace = self.profile.pace_at(at)
            least, _, most, _ = bounds(self._batch(limit, mass, at), KINDS[limit], mass)
            end = time / pace if least is None else max(time / pace, least)
            found.append((end if most is None else min(end, most)) * pace)
        return min(found)

    def _batch(self, limit, mass, at, filler=0.0):
        return batch(self.values["system"], KINDS[limit], mass, at, timings=self.timings,
                     filler=self._filler() if limit == SOFT else filler)

    def share(self, limit):
        """How much of a window is used [-]."""
        typed = limit == FILM and self.values["film"] is not None
        return self.values["share"] if typed else share_kept(self.values["system"], KINDS[limit], self.values["share"])

    def windows(self) -> Windows:
        """What the plan is looked for with: bags by the table, on the safe side."""
        upper, scale, _ = self.ranges[0]
        power, film, fully = -self.exponent, self.rule_film, self.pot
        # no mass lasts less than one that sheds no heat: most need no more than the rule, and are asked very often
        most = 0.0 if self.seen else min(film, self.certain)

        def pot(mass):
            rule = scale * mass**power
            return rule if rule <= most and mass <= upper else fully(mass)

        return self._windows(pot, lambda mass: self.pot(mass, CUP), self._window(SOFT), self._window(FILM))

    def _window(self, limit):
        rule, heat = (self.rule_soft, self.heat_soft) if limit == SOFT else (self.rule_film, self.heat_film)
        if heat is None:  # typed
            return rule
        return self._bounded(limit, SOME, min(rule, heat)) if self.seen else min(rule, heat)

    def _windows(self, pot, cup, soft, film):
        share, of_film = self.values["share"], self.share(FILM)
        return Windows(pot, cup, soft, film if of_film == share else film * of_film / share, share)

    def exact_windows(self, fillers) -> Windows:
        """What is told of the plan that was found. fillers: share of the filler by the mass in the bag"""
        return self._windows(lambda mass: self.window(POT, mass, fillers.get(mass, 0.0))[0],
                             lambda mass: self.window(CUP, mass)[0], self._window(SOFT), self._window(FILM))

    def window(self, limit, mass, filler=0.0):
        """(a window [s at 25 degC], the `Usable` that it follows from or None where it is typed, its temperature)"""
        key = (limit, mass, filler)
        if key not in self.kept:
            self.kept[key] = self._found(limit, mass, filler)
        return self.kept[key]

    def _found(self, limit, mass, filler):
        if limit not in BY_MASS and self.values[limit] is not None:
            return self.values[limit], None, None
        rule = (self.exponent, self.doubling)
        balance, found = limit not in BY_MASS or self.values["exponent"] is None, []
        for place, at in enumerate(self.ends):
            one = usable(self._batch(limit, mass, at, filler), share=self.values["share"], rule=rule, balance=balance)
            found.append((one.end * self.profile.pace_at(at), place, one, at))
        time, _, one, at = min(found)
        return time, one, at

    def told(self, limit, mass, temperature, filler=0.0):
        """(how long it is used at a temperature [s], what that is and by what it was reckoned, in words)"""
        time, one, at = self.window(limit, mass if limit in BY_MASS else SOME, filler)
        end = time / self.profile.pace_at(temperature)
        span, units = self.share(limit) * end, self.values["units"]
        if one is None:
            return span, "{}% of {} min, by {}".format(shown(self.share(limit) * 100), shown(end / 60, 0, DOWN), TYPED)
        text = meaning(one, units, end)
        if one.by in (BY_GONE, BY_GOOD):
            return span, text
        rule, heat = self._by_rule(limit), BY_BALANCE + (" " + counted_text(len(self.own)) if self.own else "")
        if one.model is None or one.quick is None:
            return span, text + "; by " + (rule if one.model is None else heat)
        by, other, name = (heat, one.quick, rule) if one.by == BY_HEAT else (rule, one.model, heat)
        other = other * self.profile.pace_at(at) / self.profile.pace_at(temperature)
        return span, "{}; by {}; {} says {} min: the shorter counts".format(text, by, name, shown(other / 60, 0, DOWN))

    def _by_rule(self, limit):
        if limit == FILM and self.values["system"]["film_time"] is not None:
            return LABEL
        return BY_RULE + (" from " + OWN_TIMING if self.own and self.rule_start == OWN_POT else "")


NAMES = ((POT, "Putty in the bag"), (CUP, "Wet-out resin in the cup"), (SOFT, "The cove stays soft"),
         (FILM, "Wet tape stays wet"))
