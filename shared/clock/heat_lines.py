"""Heat lines: what is said of how long a batch can be used, how hot it gets, what would help and what can hurt."""
from ..catalogue.containers import HOT, HOT_POT, MATTER
from ..catalogue.cure_times import ENERGY
from ..catalogue.pots import HARDLY_ABOVE, TIMES_APART
from ..forms import links
from ..forms.declared import Input
from ..forms.types import Found, Values
from ..mix.label_words import unconfirmed
from ..things.lowest_temperature import lowest_mark
from ..things.own_timings import timings_text
from ..words.lines import ANSWER, ASK, MORE, WARN, Line, line, words
from ..words.numbers import DOWN, bare, shown
from ..words.units import braces, told
from . import pot_start, sun, sun_lines
from .heat_found import FILM_FACT, POT_FACT, whole_minutes
from .pot_heat import CONTAINER_ROWS
from .usable_lines import OPEN_ENDS, band_text, meaning, questions, rule_text

NAMES = {POT_FACT: "Label's pot life", FILM_FACT: "Label's film time"}
HEAT_RANGE = MATTER[0][2:4]  # of an epoxide group
# where both ends of the band are there, and where only the hot one is
LABELS = (("A pot that gets hot", "A pot that may get hot"), ("A pot that would run away", "A pot that may run away"))
GOOD_COUNTS = "counts for this pot and easier ones only"


def say(found: Found, values: Values) -> list[Line]:
    """found: `heat_found.HeatResult`"""
    best, units = found.best, values["units"]
    lines = [line("usable", "Usable for", best.time, "s", minutes(best.time), rank=ANSWER,
                  rough="{}; the shorter of two estimates, rounded down; at {} air{}; stop at the first sign of "
                        "thickening".format(meaning(best, units), told(values["air"], "degC", units, places=0),
                                            sun_lines.beside(values)))]
    lines.extend(questions(found.pairs, units))
    lines.extend(unconfirmed(values["system"], "pot life"))
    lines.extend(_cold(found, values))
    lines.extend(sun_lines.say(found, values))
    lines.extend(_peak(found, values))
    lines.extend(_deep(found, values))
    lines.extend(_helps(found))
    lines.extend(_wanted(found, values))
    lines.extend(_reasons(found, units))
    lines.extend(_facts(found))
    return lines


def leads(found: Found, values: Values, system: Input) -> list[dict]:
    """A clock for this batch, and the day planned with it. system: the input of the resin system"""
    air = shown(values["air"] - 273.15, 1) + " °C"
    day = links.handed_on(system, values) + [
        ["timings", timings_text(values["timings"])], ["temperature_is", "constant"], ["temperature", air]]
    day += sun.pairs(values)
    test = links.handed_on(system, values) + [["air", air]]
    return [pot_start.lead(found, values), {"label": "Plan the day", "screen": "plan", "pairs": day},
            {"label": "Test cup: your own times", "screen": "trial", "pairs": test}]


def minutes(seconds: float) -> str:
    """A time to be done by as text, rounded down.

    >>> minutes(1799), minutes(45), minutes(5000.0), minutes(7200.0)
    ('29 min', 'less than 1 min', '1 h 20 min', '2 h')
    """
    count = whole_minutes(seconds)
    if count < 1:
        return "less than 1 min"
    if count < 60:
        return str(count) + " min"
    return str(count // 60) + " h" + (" " + str(count % 60) + " min" if count % 60 else "")


def _cold(found: Found, values: Values) -> list[Line]:
    if not found.cold:
        return []
    mark = lowest_mark(values["system"])
    bound = told(found.lowest, "degC", values["units"], places=0) + (" (" + mark + ")" if mark else "")
    return [words("too_cold", "Colder than this system allows",
                  "Its lowest working temperature is " + bound + ". Below it the cure may stop for good, however long "
                  "it stays liquid: warm the shed, the wood and the resin first, or take a faster hardener.",
                  rank=WARN)]


def _peak(found: Found, values: Values) -> list[Line]:
    peak = found.peak
    if peak.hardly:
        return [line("peak", "Hottest, expected", peak.temperature, "K", "hardly above the air",
                     rough="within " + braces("K", HARDLY_ABOVE) + " of it")]
    units = values["units"]
    lines = [line("peak", "Hottest, expected", peak.temperature, "K",
                  band_text(peak.temperature, peak.cool, peak.cool_hardly, units),
                  rough="if it stays in the container; {}{}; the middle gets hotter, by up to a quarter of the "
                        "rise".format(OPEN_ENDS, "" if peak.hot else "; below " + told(HOT[0][0], "degC", units,
                                                                                    places=0) + " at both ends"))]
    if peak.hot:
        sure, (_, does, may, _) = peak.sure == peak.hot, HOT[peak.hot - 1]
        label = LABELS[peak.hot - 1][0 if sure else 1]
        do = "Use it, or spread it thin, within " + minutes(found.best.time) + "."
        if found.sun:
            do = "Into the shade first. There: use it, or spread it thin."
        elif not CONTAINER_ROWS[values["container"]][5]:
            do = "Spread it thinner, or mix less."
        when = (", about " if sure else ", from ") + minutes(peak.time) + " after mixing. "
        lines.append(words("runaway", label, (does if sure else may) + when + do, caution=HOT_POT, rank=WARN))
    return lines


def _deep(found: Found, values: Values) -> list[Line]:
    if found.deep is None:
        return []
    across = told(values["cup_width"], "mm", values["units"])
    high = told(found.deep, "mm", values["units"], digits=2)
    return [words("deep", "Is the cup wider?", "In a cup of " + across + " this batch stands " + high + " high. Type "
                  "the width of the vessel it is really in.", rank=ASK)]


def _helps(found: Found) -> list[Line]:
    lines = []
    if found.tray is not None and found.sun and found.sun.no_tray:
        lines.append(line("in_tray", "In a tray in this sun", found.tray.time, "s", minutes(found.tray.time),
                          rough="no help: shade first, then the tray"))
    elif found.tray is not None:
        lines.append(line("in_tray", "Poured into the tray at once", found.tray.time, "s", minutes(found.tray.time),
                          rough=_gain(found.tray_gain)))
    if found.half is not None:
        lines.append(line("half", "Half the batch", found.half.time, "s", minutes(found.half.time),
                          rough=_gain(found.half_gain)))
    return lines


def _gain(more: int) -> str:
    return minutes(more * 60) + " longer" if more > 0 else "no longer"


def _wanted(found: Found, values: Values) -> list[Line]:
    largest = found.largest
    if largest is None:
        return []
    label = "Largest batch for " + minutes(values["wanted"])
    if largest.mass is None:
        return [words("largest", label, "none in this container", rank=WARN,
                      rough="not even a few grams last that long here: {}, a slower hardener, a cooler "
                            "hour".format("shade" if found.sun else "a tray"))]
    text = told(largest.mass, "g", values["units"], DOWN, digits=2)
    if largest.bound:
        return [line("largest", label, largest.mass, "kg", text + " or more", rough="time is not what limits it")]
    lines = [line("largest", label, largest.mass, "kg", text,
                  rough="by the shorter of both estimates; rounded down, to be sure")]
    if largest.too_much:
        tray = "" if found.sun and found.sun.no_tray else ", or pour it into the tray at once"
        lines.append(words("too_much", "Too much for that time", "Mix " + text + " or less at a time" + tray + ".",
                           rank=WARN))
    return lines


def _reasons(found: Found, units: str) -> list[Line]:
    best = found.best
    lines = [
        line("thick", "Thick by", best.end, "s", minutes(best.end), rank=MORE,
             rough="of this {}% is used, the rest is kept back (our own judgement)".format(shown(best.share * 100))),
        line("by_heat", "By the heat balance", best.model, "s", minutes(best.model), rank=MORE,
             rough="from {} to {} for activation energies that fit as well; one temperature for the whole pot".format(
                 minutes(found.slow), minutes(found.fast))),
    ]
    if best.quick is not None:
        lines.append(line("by_rule", "By the trade's quick rule", best.quick, "s", minutes(best.quick), rank=MORE,
                          rough=rule_text(best.rule) + "; from memory"))
    if found.then is not None:
        lines.append(line("temperature_then", "Its temperature by then", found.then, "K",
                          told(found.then, "degC", units, places=0), rank=MORE,
                          rough="at the end of use by the heat balance: thick, or too hot to hold"))
    lines.append(line("layer", "Layer in the tray that stays cool", found.layer, "m",
                      "up to " + told(found.layer, "mm", units, DOWN, digits=2), rank=MORE,
                      rough="a cautious bound: its fastest rate, no resin used up"))
    lines.append(line("heat", "Heat in the mix", found.heat, "J/kg", shown(found.heat / 1000, 0) + " J/g", rank=MORE,
                      rough="of mixed resin; from the ratio and the equivalent weight, {} to {} kJ/mol"
                            .format(*[bare(one / 1000, 1) for one in HEAT_RANGE])))
    return lines


def _facts(found: Found) -> list[Line]:
    lines = [_miss(one, bool(found.timings)) for one in found.misses]
    for place, row in enumerate(found.timings):
        if row["said"] == "good":
            lines.append(words("fact_" + str(place + 1), "Own timing " + str(place + 1), GOOD_COUNTS, rank=MORE))
    if found.apart:
        lines.append(words("facts_apart", "Do these times belong together?", "One mix cannot have them all: they are "
                           "more than " + shown(TIMES_APART * 100, 0) + "% apart. Look again at the minutes, mass and "
                           "temperature of each. Your own timings count first.", rank=ASK))
    energy = found.calibration.rates.grown_energy
    lines.append(line("energy", "Activation energy", energy, "J/mol", shown(energy / 1000, 0) + " kJ/mol", rank=MORE,
                      rough="kept between {1} and {2}, where published values lie; {0} where the times leave it "
                            "open".format(*[bare(one / 1000, 1) for one in ENERGY[:3]])))
    if found.from_memory:
        lines.append(words("from_memory", "These times are from no label", "The pot life of this built-in system is "
                           "from memory. Type the one on your own label, with its mass and temperature.", rank=ASK))
    return lines


def _miss(miss: Found, own: bool) -> Line:
    off = miss.share - 1
    text = "met" if miss.met else "estimate {}% {}".format(
        shown(abs(off) * 100, 0), "too long" if off > 0 else "too short")
    return line("fact_" + miss.name, NAMES.get(miss.name) or "Own timing " + miss.name, miss.share, "", text, rank=MORE,
                rough="own timings count before the label's" if own else "")
