"""Working times: how long the bag, the cove and the wet tape last, by the shorter of quick rule and heat balance.

A time that is typed counts alone. All are kept as time at 25 degC; over a changing temperature the heat balance counts
with the end of its range where it leaves less (the times in between are longer, tested).
"""

from math import sqrt

from .heat_model import OWN_TIMING, known_pots, timings_of
from .heat_table import heat_table
from .laying import FILM, POT, SOFT, Windows
from .numbers import DOWN, shown
from .own_timings import counted_text, read_timings
from .profile import REFERENCE
from .quick_rule import HUNDRED, RULE, film_time, pot_time

TYPED, LABEL, BY_RULE, BY_HEAT = "the time you typed", "the label's film time", "the quick rule", "the heat balance"


def timed(values):
    """The system and what was timed of it beside its own timings, as `heat_model` asks for them."""
    return {"system": values["system"], "timings": read_timings(values["timings"])}


class WorkingTimes:
    """The windows of one system at one temperature or over a range of them; `laying.Windows` is what a plan asks."""

    def __init__(self, values, profile):
        self.values, self.profile = values, profile
        system, doubling = values["system"], values["doubling"]
        exponent = RULE["exponent"] if values["exponent"] is None else values["exponent"]
        self.power = -exponent
        asked = timed(values)
        self.own = timings_of(asked)
        self.rule_start = known_pots(asked)[0][3]
        self.ranges = self._ranges([(mass, pot_time(1.0, REFERENCE, time, mass, at, exponent, doubling))
                                    for time, mass, at, _ in known_pots(asked)])
        hundred = self._by_rule(HUNDRED)
        self.rule_film = values["film"] or film_time(system, REFERENCE, hundred, doubling)
        self.rule_soft = values["soft"] or RULE["soft"] * hundred
        temperatures = [point[1] for point in profile.points]
        self.ends = [min(temperatures)]
        if not profile.constant:
            self.ends.append(max(temperatures))
        typed = [values[name] is not None for name in ("soft", "film", "exponent")]
        self.table = table = None if all(typed) else heat_table(system, asked["timings"])
        self.heat_soft = None if typed[0] else self._heat(lambda at: table.bead(at, self._filler()))
        self.heat_film = None if typed[1] else self._heat(table.film)
        self.certain = 1e30 if typed[2] else self._heat(table.at_least)

    def changed(self, profile):
        """The same system on another day."""
        return WorkingTimes(self.values, profile)

    def _filler(self):
        return self.values["filler"] / (1 + self.values["filler"])

    def _heat(self, time):
        """The least over the ends of the range, as time at 25 degC [s]."""
        return min([time(at) * self.profile.pace_at(at) for at in self.ends])

    def _ranges(self, known):
        """From which known pot the rule starts: (up to this mass [kg], what 1 kg would last [s], no longer than [s]).

        The nearest in mass; a larger mass never lasts longer than a smaller one, whatever the pots told.
        """
        found, longest, known = [], 1e30, sorted(known)
        for place, (mass, scale) in enumerate(known):
            upper = sqrt(mass * known[place + 1][0]) if place + 1 < len(known) else 1e30
            found.append((upper, scale, longest))
            longest = min(longest, scale * upper**self.power)
        return found

    def _by_rule(self, mass):
        """By the quick rule from the pot that is nearest in mass [s at 25 degC]."""
        found = self.ranges[0]
        for one in self.ranges:
            if found[0] < mass:
                found = one
        return min(found[1] * mass**self.power, found[2])

    def rule_pot(self, mass):
        """By the quick rule, no longer than a film [s at 25 degC]."""
        return min(self._by_rule(mass), self.rule_film)

    def heat_pot(self, mass):
        """By the heat balance [s at 25 degC], or None where the exponent is typed."""
        return None if self.values["exponent"] is not None else self._heat(lambda at: self.table.bag(mass, at))

    def pot(self, mass):
        """The shorter for a mass in the bag [kg] -> [s at 25 degC]."""
        rule = self.rule_pot(mass)
        return rule if rule <= self.certain else min(rule, self.heat_pot(mass))

    def windows(self) -> Windows:
        """What the plan counts with."""
        upper, scale, _ = self.ranges[0]
        power, film, fully = self.power, self.rule_film, self.pot
        # no mass lasts less than one that sheds no heat: most need no more than the rule, and are asked very often
        most = min(film, self.certain)

        def pot(mass):
            rule = scale * mass**power
            return rule if rule <= most and mass <= upper else fully(mass)

        return Windows(pot, _shorter(self.rule_soft, self.heat_soft), _shorter(self.rule_film, self.heat_film),
                       self.values["share"])

    def both(self, limit, mass):
        """(time that counts [s at 25 degC], what it was reckoned by, the other's time or None, the other's name)."""
        typed, by_rule, by_heat = None, BY_RULE, BY_HEAT
        if self.own:
            by_heat += " " + counted_text(len(self.own))
            if self.rule_start == OWN_TIMING:
                by_rule += " from " + OWN_TIMING
        if limit == POT:
            rule, heat = self.rule_pot(mass), self.heat_pot(mass)
        elif limit == SOFT:
            rule, heat, typed = self.rule_soft, self.heat_soft, self.values["soft"]
        else:
            rule, heat, typed = self.rule_film, self.heat_film, self.values["film"]
            by_rule = by_rule if self.values["system"]["film_time"] is None else LABEL
        if heat is None:
            return rule, TYPED if typed else by_rule, None, ""
        return (heat, by_heat, rule, by_rule) if heat < rule else (rule, by_rule, heat, by_heat)

    def told(self, limit, mass, temperature):
        """(minutes at a temperature [s], what counts and what the other says, in words)"""
        time, by, other, name = self.both(limit, mass)
        pace = self.profile.pace_at(temperature)
        text = "by " + by
        if other is not None:
            text += "; {} says {} min: the shorter counts".format(name, shown(other / pace / 60, 0, DOWN))
        return time / pace, text


def _shorter(rule, heat):
    return rule if heat is None else min(rule, heat)


NAMES = ((POT, "Putty in the bag"), (SOFT, "The cove stays soft"), (FILM, "Wet tape stays wet"))
