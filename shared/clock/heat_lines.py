"""Heat lines: what is said of how long a batch can be used, how hot it gets, what would help and what can hurt."""
from ..catalogue.containers import HOT, HOT_POT, MATTER
from ..catalogue.cure_times import ENERGY
from ..catalogue.pots import HARDLY_ABOVE, TIMES_APART
from ..forms import links
from ..forms.declared import Input
from ..forms.types import Found, Said, Values
from ..mix.label_words import unconfirmed
from ..things.lowest_temperature import lowest_said
from ..things.own_timings import timings_text
from ..words.lines import ANSWER, ASK, MORE, WARN, Line, line, words
from ..words.messages import fact, message, number, quantity
from ..words.numbers import DOWN, bare, shown, warmth_typed
from . import pot_start, sun, sun_lines
from .heat_found import FILM_FACT, POT_FACT, whole_minutes
from .pot_heat import CONTAINER_ROWS
from .usable_lines import OPEN_ENDS, band_text, meaning, other_sun, questions, rule_text

NAMES = {POT_FACT: "heat-fact.pot", FILM_FACT: "heat-fact.film"}
HEAT_RANGE = MATTER[0][2:4]  # of an epoxide group
# where both ends of the band are there, and where only the hot one is
LABELS = (("heat-runaway.hot", "heat-runaway.may-hot"), ("heat-runaway.away", "heat-runaway.may-away"))


def say(found: Found, values: Values) -> list[Line]:
    """found: `heat_found.HeatResult`"""
    best = found.best
    air = message("heat-air", air=quantity(values["air"], "degC", places=0))
    lines = [line("usable", "heat-usable", best.time, "s", minutes(best.time), rank=ANSWER,
                  rough=message("heat-usable.rough", meaning=meaning(best), air=sun_lines.in_sun(air, values)))]
    lines.extend(questions(found.pairs) + other_sun(found.other_sun))
    lines.extend(unconfirmed(values["system"], "pot-life"))
    lines.extend(_cold(found, values))
    lines.extend(sun_lines.say(found, values))
    lines.extend(_peak(found, values))
    lines.extend(_deep(found, values))
    lines.extend(_helps(found))
    lines.extend(_wanted(found, values))
    lines.extend(_reasons(found))
    lines.extend(_facts(found))
    return lines


def leads(found: Found, values: Values, system: Input) -> list[dict]:
    """A clock for this batch, and the day planned with it. system: the input of the resin system"""
    air = number(warmth_typed(values["air"]))
    day = links.handed_on(system, values) + [
        ["timings", timings_text(values["timings"])], ["temperature_is", "constant"], ["temperature", air]]
    day += sun.pairs(values)
    test = links.handed_on(system, values) + [["air", air]]
    return [pot_start.lead(found, values), {"label": "heat-plan", "screen": "plan", "pairs": day},
            {"label": "heat-test", "screen": "trial", "pairs": test}]


def minutes(seconds: float) -> Said:
    """A time to be done by, rounded down.

    >>> from ..words.texts import said
    >>> from ..words.written import reader
    >>> [said(minutes(seconds), reader()) for seconds in (1799, 45, 5000.0, 7200.0)]
    ['29 min', 'less than 1 min', '1 h 20 min', '2 h']
    """
    count = whole_minutes(seconds)
    if count < 1:
        return "heat-minutes.none"
    if count < 60:
        return message("heat-minutes", minutes=count)
    if count % 60:
        return message("heat-minutes.both", hours=count // 60, minutes=count % 60)
    return message("heat-minutes.hours", hours=count // 60)


def _cold(found: Found, values: Values) -> list[Line]:
    if not found.cold:
        return []
    return [words("too_cold", "heat-cold", message("heat-cold.text", lowest=lowest_said(values["system"])), rank=WARN)]


def _peak(found: Found, values: Values) -> list[Line]:
    peak = found.peak
    if peak.hardly:
        return [line("peak", "heat-peak", peak.temperature, "K", "heat-peak.hardly",
                     rough=message("heat-peak.hardly-rough", within=fact("K", HARDLY_ABOVE)))]
    rough = message("heat-peak.rough", open=OPEN_ENDS)
    if not peak.hot:
        rough = message("heat-peak.below", open=OPEN_ENDS, hot=quantity(HOT[0][0], "degC", places=0))
    lines = [line("peak", "heat-peak", peak.temperature, "K",
                  band_text(peak.temperature, peak.cool, peak.cool_hardly), rough=rough)]
    if peak.hot:
        sure, (_, does, may, _) = peak.sure == peak.hot, HOT[peak.hot - 1]
        label = LABELS[peak.hot - 1][0 if sure else 1]
        do = message("heat-do.use", time=minutes(found.best.time))
        if found.sun:
            do = "heat-do.shade"
        elif not CONTAINER_ROWS[values["container"]][5]:
            do = "heat-do.thinner"
        time = minutes(peak.time)
        text = (message("heat-runaway.sure", does=does, time=time, do=do) if sure else
                message("heat-runaway.may", does=may, time=time, do=do))
        lines.append(words("runaway", label, text, caution=HOT_POT, rank=WARN))
    return lines


def _deep(found: Found, values: Values) -> list[Line]:
    if found.deep is None:
        return []
    text = message("heat-deep.text", across=quantity(values["cup_width"], "mm"),
                   high=quantity(found.deep, "mm", digits=2))
    return [words("deep", "heat-deep", text, rank=ASK)]


def _helps(found: Found) -> list[Line]:
    lines = []
    if found.tray is not None and found.sun and found.sun.no_tray:
        lines.append(line("in_tray", "heat-tray.sun", found.tray.time, "s", minutes(found.tray.time),
                          rough="heat-tray.no-help"))
    elif found.tray is not None:
        lines.append(line("in_tray", "heat-tray", found.tray.time, "s", minutes(found.tray.time),
                          rough=_gain(found.tray_gain)))
    if found.half is not None:
        lines.append(line("half", "heat-half", found.half.time, "s", minutes(found.half.time),
                          rough=_gain(found.half_gain)))
    return lines


def _gain(more: int) -> Said:
    return message("heat-gain", time=minutes(more * 60)) if more > 0 else "heat-gain.none"


def _wanted(found: Found, values: Values) -> list[Line]:
    largest = found.largest
    if largest is None:
        return []
    label = message("heat-largest", time=minutes(values["wanted"]))
    if largest.mass is None:
        return [words("largest", label, "heat-largest.none", rank=WARN,
                      rough="heat-largest.none-sun" if found.sun else "heat-largest.none-rough")]
    mass = quantity(largest.mass, "g", DOWN, digits=2)
    if largest.bound:
        return [line("largest", label, largest.mass, "kg", message("heat-largest.more", mass=mass),
                     rough="heat-largest.more-rough")]
    lines = [line("largest", label, largest.mass, "kg", mass, rough="heat-largest.rough")]
    if largest.too_much:
        lines.append(words("too_much", "heat-too-much",
                           message("heat-too-much.sun", mass=mass) if found.sun and found.sun.no_tray else
                           message("heat-too-much.text", mass=mass), rank=WARN))
    return lines


def _reasons(found: Found) -> list[Line]:
    best = found.best
    lines = [
        line("thick", "heat-thick", best.end, "s", minutes(best.end), rank=MORE,
             rough=message("heat-thick.rough", share=number(shown(best.share * 100)))),
        line("by_heat", "heat-balance", best.model, "s", minutes(best.model), rank=MORE,
             rough=message("heat-balance.rough", latest=minutes(found.latest))),
    ]
    if best.quick is not None:
        lines.append(line("by_rule", "heat-quick", best.quick, "s", minutes(best.quick), rank=MORE,
                          rough=message("heat-quick.rough", rule=rule_text(best.rule))))
    if found.then is not None:
        lines.append(line("temperature_then", "heat-then", found.then, "K", quantity(found.then, "degC", places=0),
                          rank=MORE, rough="heat-then.rough"))
    lines.append(line("layer", "heat-layer", found.layer, "m",
                      message("heat-layer.text", layer=quantity(found.layer, "mm", DOWN, digits=2)), rank=MORE,
                      rough="heat-layer.rough"))
    least, most = [number(bare(one / 1000, 1)) for one in HEAT_RANGE]
    lines.append(line("heat", "heat-in-mix", found.heat, "J/kg",
                      message("heat-in-mix.text", heat=number(shown(found.heat / 1000, 0))), rank=MORE,
                      rough=message("heat-in-mix.rough", least=least, most=most)))
    return lines


def _facts(found: Found) -> list[Line]:
    lines = [_miss(one, bool(found.timings)) for one in found.misses]
    for place, row in enumerate(found.timings):
        if row["said"] == "good":
            lines.append(words("fact_" + str(place + 1), message("heat-fact.own", number=place + 1), "heat-fact.good",
                               rank=MORE))
    if found.apart:
        lines.append(words("facts_apart", "heat-apart",
                           message("heat-apart.text", apart=number(shown(TIMES_APART * 100, 0))), rank=ASK))
    energy = found.calibration.rates.grown_energy
    middle, least, most = [number(bare(one / 1000, 1)) for one in ENERGY[:3]]
    lines.append(line("energy", "heat-energy", energy, "J/mol",
                      message("heat-energy.text", energy=number(shown(energy / 1000, 0))), rank=MORE,
                      rough=message("heat-energy.rough", least=least, most=most, middle=middle)))
    if found.from_memory:
        lines.append(words("from_memory", "heat-memory", "heat-memory.text", rank=ASK))
    return lines


def _miss(miss: Found, own: bool) -> Line:
    off = miss.share - 1
    share = number(shown(abs(off) * 100, 0))
    text = message("heat-fact.long", off=share) if off > 0 else message("heat-fact.short", off=share)
    return line("fact_" + miss.name, NAMES.get(miss.name) or message("heat-fact.own", number=number(miss.name)),
                miss.share, "", "heat-fact.met" if miss.met else text, rank=MORE,
                rough="heat-fact.rough" if own else "")
