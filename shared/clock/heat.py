"""Heat: how long this batch in this container can be used, how hot it will get, what a tray or half of it would buy."""
from math import pi

from ..catalogue.containers import AIR, CONTAINERS, HOT, HOT_POT, MATTER
from ..catalogue.cure_times import ENERGY
from ..catalogue.pots import HARDLY_ABOVE, SIZES, TIMES_APART
from ..forms import links
from ..forms.errors import InputError
from ..forms.inputs import Choice, Group, Number, Pick, Text
from ..mix.ratio import by_link
from ..things.lowest_temperature import least_warmth
from ..things.own_timings import MOST, timings_text
from ..things.records import SYSTEM
from ..words.lines import ANSWER, ASK, MORE, WARN, line, words
from ..words.numbers import DOWN, bare, shown, small, to_step
from ..words.units import braces, told
from . import pot_start
from .heat_drawing import curves
from .heat_found import found, largest_batch
from .heat_model import container_mix, timings_of, tray_layer
from .pot_heat import CONTAINER_ROWS, MATTER_VALUES
from .usable import contradictions
from .usable_lines import meaning, peak_text, questions, rule_text

USE_FOLD = "What it is for, where it goes"
SIZE_FOLD, OWN_FOLD = "Sizes and air", "Own timings of this system"
MORE_FOLD = "Warm resin, filler, a wanted time"
GOOD_COUNTS = "counts for this pot and easier ones only"

KINDS = tuple([(row[0], row[1], row[2]) for row in CONTAINERS])
HEAT_RANGE = MATTER[0][2:4]  # of an epoxide group


def _mm(name):
    return float(bare(SIZES[name] * 1000, 3))


SYSTEM_INPUT = Pick("system", "Resin system", SYSTEM, default="3-1")
INPUTS = (
    Number("air", "Air temperature", unit="degC", low=-10, high=50,
           missing="type it first, as it is where the pot stands. Every minute here hangs on it."),
    SYSTEM_INPUT,
    Number("batch", "In the container", unit="g", low=1, high=20000, default=240,
           help="All in it, filler too"),
    Choice("container", "Container", KINDS),
    Choice("use", "It is for", pot_start.USES, fold=USE_FOLD),
    Text("where", "Where it goes", most=60, help="Told with the pot.", fold=USE_FOLD),
    Number("resin_temperature", "Temperature of the resin", unit="degC", low=-5, high=60, optional=True,
           help="When it is mixed. Left empty: as the air.", fold=MORE_FOLD),
    Number("filler", "Filler or glass in it", unit="%", low=0, high=80, optional=True,
           help="Of the whole weight. Left empty: none; in wet tape " + bare(MATTER_VALUES["glass_share"] * 100, 1)
           + "% glass (from memory).", fold=MORE_FOLD),
    Number("wanted", "Must stay usable for", unit="min", low=1, high=600, optional=True,
           help="The largest batch that does is told.", fold=MORE_FOLD),
    Number("cup_width", "Cup, inside width", unit="mm", low=20, high=400, optional=True, fold=SIZE_FOLD,
           help="Left empty: as wide as it is full."),
    Number("bag_width", "Bag, thickness when full", unit="mm", low=10, high=200, default=_mm("bag_width"),
           fold=SIZE_FOLD),
    Number("tray_length", "Tray, length", unit="mm", low=50, high=2000, default=_mm("tray_length"), fold=SIZE_FOLD),
    Number("tray_width", "Tray, width", unit="mm", low=50, high=1000, default=_mm("tray_width"), fold=SIZE_FOLD),
    Number("radius", "Cove, radius", unit="mm", low=3, high=100, default=_mm("radius"), fold=SIZE_FOLD),
    Number("panel", "Panel thickness", unit="mm", low=1, high=50, default=_mm("panel"), fold=SIZE_FOLD),
    Number("tape_width", "Tape width", unit="mm", low=20, high=500, default=_mm("tape_width"), fold=SIZE_FOLD),
    Number("film", "Film thickness", unit="mm", low=0.05, high=5, default=_mm("film"), fold=SIZE_FOLD),
    Choice("moving", "Air around it", tuple([(row[0], row[1]) for row in AIR]), fold=SIZE_FOLD),
    Group("timings", "Own timings of this system", (
        Choice("said", "It was", (("stiffening", "stiffening"), ("good", "still good"), ("gone", "gone"))),
        Number("after", "after", unit="min", low=1, high=2880),
        Number("mass", "with a mass of", unit="g", low=1, high=20000),
        Choice("in", "in a", KINDS),
        Number("at", "Air temperature", unit="degC", low=-10, high=50),
    ), most=MOST, fold=OWN_FOLD, each="Timing"),
)


def check(values):
    """A pot life means nothing without its mass and temperature; some time must be known."""
    system = values["system"]
    if system["pot_time"] is not None:
        for field, what in (("pot_mass", "mass"), ("pot_temperature", "temperature")):
            if system[field] is None:
                raise InputError("system." + field, "Pot life: type the " + what + " it was measured with too. The "
                                 "same label time means another thing in another cup.")
    elif system["film_time"] is not None and system["pot_temperature"] is None:
        raise InputError("system.pot_temperature", "Working time as a thin film: type the temperature it holds for")
    elif system["film_time"] is None and not any([row["said"] == "stiffening" for row in timings_of(values)]):
        raise InputError("system.pot_time", "Type the label's pot life with its mass and temperature, or a timing of "
                         "your own when a pot was stiffening")


CHECKS = (check,)


def answer(values):
    """Usable minutes, the peak, what would help, what can hurt; the reasons folded away."""
    all_of_it = found(values)
    best, units = all_of_it.best, values["units"]
    lines = [line("usable", "Usable for", best.time, "s", minutes(best.time), rank=ANSWER,
                  rough="{}; the shorter of two estimates, rounded down; at {} air; stop at the first sign of "
                        "thickening".format(meaning(best, units), told(values["air"], "degC", units, places=0)))]
    lines.extend(questions(contradictions(values), units))
    lines.extend(by_link(values["system"], "pot life"))
    lines.extend(_cold(values))
    lines.extend(_peak(values, all_of_it))
    lines.extend(_deep(values))
    lines.extend(_helps(all_of_it))
    lines.extend(_wanted(values, all_of_it))
    lines.extend(_reasons(values, all_of_it))
    lines.extend(_facts(values, all_of_it))
    return lines


def figures(values):
    """The curve of this container, and of the tray beside a pot."""
    all_of_it = found(values)
    name = small(CONTAINER_ROWS[values["container"]][1])
    return [curves(name, all_of_it.run, all_of_it.tray_run, all_of_it.best.time, values["units"])]


def leads(values):
    """A clock for this batch, and the day planned in the same air with this system and what was timed of it here."""
    system = links.handed_on(SYSTEM_INPUT, values)
    air = shown(values["air"] - 273.15, 1) + " °C"
    return [pot_start.lead(values, found(values)), {"label": "Plan the day", "screen": "plan", "pairs": system + [
        ["timings", timings_text(values["timings"])], ["temperature_is", "constant"], ["temperature", air]]}]


def whole_minutes(seconds: float) -> int:
    """A time to be done by in whole minutes, rounded down; above an hour in steps of five.

    >>> whole_minutes(1799), whole_minutes(5000.0)
    (29, 80)
    """
    count = seconds / 60
    return int(to_step(count, 5.0 if count >= 60 else 1.0, DOWN))


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


def _cold(values):
    least, remembered = least_warmth(values["system"])
    resin = values["resin_temperature"]
    coldest = values["air"] if resin is None else min(values["air"], resin)
    if coldest >= least - 1e-9:
        return []
    bound = told(least, "degC", values["units"], places=0) + (" (" + remembered + ")" if remembered else "")
    return [words("too_cold", "Colder than this system allows",
                  "Its lowest working temperature is " + bound + ". Below it the cure may stop for good, however long "
                  "it stays liquid: warm the shed, the wood and the resin first, or take a faster hardener.",
                  rank=WARN)]


def _peak(values, all_of_it):
    run, units = all_of_it.run, values["units"]
    peak = to_step(run.peak, 0.01)
    if peak <= max(values["air"], run.points[0][1]) + HARDLY_ABOVE:
        return [line("peak", "Hottest, expected", peak, "K", "hardly above the air",
                     rough="within " + braces("K", HARDLY_ABOVE) + " of it")]
    lines = [line("peak", "Hottest, expected", peak, "K", peak_text(peak, units), rough="if it stays in the container; "
                  "rounded up; the middle gets hotter, by up to a quarter of the rise")]
    found_hot = [row for row in HOT if peak >= row[0]]
    if found_hot and run.reached is not None:
        label = "A pot that would run away" if len(found_hot) > 1 else "A pot that gets hot"
        do = "Use it, or spread it thin, within " + minutes(all_of_it.best.time) + "."
        if not CONTAINER_ROWS[values["container"]][5]:
            do = "Spread it thinner, or mix less."
        lines.append(words("runaway", label, found_hot[-1][1] + ", about " + minutes(run.peak_time)
                           + " after mixing. " + do, caution=HOT_POT, rank=WARN))
    return lines


def _deep(values):
    """A cup filled higher than it can be is a slip in its width."""
    if values["container"] != "cup" or values["cup_width"] is None:
        return []
    height = 4 * values["batch"] / container_mix(values)[1] / (pi * values["cup_width"] ** 2)
    if height <= 2.5 * values["cup_width"]:
        return []
    across, high = told(values["cup_width"], "mm", values["units"]), told(height, "mm", values["units"], digits=2)
    return [words("deep", "Is the cup wider?", "In a cup of " + across + " this batch stands " + high + " high. Type "
                  "the width of the vessel it is really in.", rank=ASK)]


def _helps(all_of_it):
    lines = []
    if all_of_it.tray is not None:
        lines.append(line("in_tray", "Poured into the tray at once", all_of_it.tray.time, "s",
                          minutes(all_of_it.tray.time), rough=_gain(all_of_it.tray, all_of_it.best)))
    if all_of_it.half is not None:
        lines.append(line("half", "Half the batch", all_of_it.half.time, "s", minutes(all_of_it.half.time),
                          rough=_gain(all_of_it.half, all_of_it.best)))
    return lines


def _gain(other, best):
    more = whole_minutes(other.time) - whole_minutes(best.time)
    return minutes(more * 60) + " longer" if more > 0 else "no longer"


def _wanted(values, all_of_it):
    if values["wanted"] is None:
        return []
    units = values["units"]
    largest = largest_batch(values)
    if largest is None:
        return [words("largest", "Largest batch for " + minutes(values["wanted"]), "none in this container", rank=WARN,
                      rough="not even a few grams last that long here: a tray, a slower hardener, a cooler hour")]
    mass, bound = largest
    text = told(mass, "g", units, DOWN, digits=2)
    if bound:
        return [line("largest", "Largest batch for " + minutes(values["wanted"]), mass, "kg", text + " or more",
                     rough="time is not what limits it")]
    lines = [line("largest", "Largest batch for " + minutes(values["wanted"]), mass, "kg", text,
                  rough="by the shorter of both estimates; rounded down, to be sure")]
    if mass < values["batch"]:
        lines.append(words("too_much", "Too much for that time", "Mix " + text + " or less at a time, or pour it into "
                           "the tray at once.", rank=WARN))
    return lines


def _reasons(values, all_of_it):
    best = all_of_it.best
    slow, fast = sorted((all_of_it.slow, all_of_it.fast))
    lines = [
        line("thick", "Thick by", best.end, "s", minutes(best.end), rank=MORE,
             rough="of this {}% is used, the rest is kept back (from memory)".format(shown(best.share * 100))),
        line("by_heat", "By the heat balance", best.model, "s", minutes(best.model), rank=MORE,
             rough="from {} to {} for activation energies that fit as well; one temperature for the whole pot".format(
                 minutes(min(slow, best.model)), minutes(max(fast, best.model)))),
    ]
    if best.quick is not None:
        lines.append(line("by_rule", "By the trade's quick rule", best.quick, "s", minutes(best.quick), rank=MORE,
                          rough=rule_text(best.rule) + "; from memory"))
    run = all_of_it.run
    if run.temperature_then is not None:
        lines.append(line("temperature_then", "Its temperature by then", to_step(run.temperature_then, 0.01), "K",
                          told(run.temperature_then, "degC", values["units"], places=0), rank=MORE,
                          rough="at the end of use by the heat balance: thick, or too hot to hold"))
    layer = tray_layer(values, all_of_it.calibration)
    lines.append(line("layer", "Layer in the tray that stays cool", layer, "m",
                      "up to " + told(layer, "mm", values["units"], DOWN, digits=2), rank=MORE,
                      rough="a cautious bound: its fastest rate, no resin used up"))
    heat = container_mix(values)[0]
    lines.append(line("heat", "Heat in the mix", heat, "J/kg", shown(heat / 1000, 0) + " J/g", rank=MORE,
                      rough="of mixed resin; from the ratio and the equivalent weight, {} to {} kJ/mol from "
                            "memory".format(*[bare(one / 1000, 1) for one in HEAT_RANGE])))
    return lines


NAMES = {"pot": "Label's pot life", "film": "Label's film time"}


def _facts(values, all_of_it):
    lines = []
    for name, share in all_of_it.calibration.misses:
        label = NAMES.get(name) or "Own timing " + name
        off = share - 1
        text = "met" if abs(off) < 0.02 else "reckoned {}% {}".format(
            shown(abs(off) * 100, 0), "longer" if off > 0 else "shorter")
        lines.append(line("fact_" + name, label, share, "", text, rank=MORE,
                          rough="own timings count before the label's" if timings_of(values) else ""))
    for place, row in enumerate(timings_of(values)):
        if row["said"] == "good":
            lines.append(words("fact_" + str(place + 1), "Own timing " + str(place + 1), GOOD_COUNTS, rank=MORE))
    apart = [share for name, share in all_of_it.calibration.misses
             if name in NAMES and (share > 1 + TIMES_APART or share < 1 / (1 + TIMES_APART))]
    if apart:
        lines.append(words("facts_apart", "Do these times belong together?", "One mix cannot have them all: they are "
                           "more than " + shown(TIMES_APART * 100, 0) + "% apart. Look again at the minutes, mass and "
                           "temperature of each. Your own timings count first.", rank=ASK))
    energy = all_of_it.calibration.rates.grown_energy
    lines.append(line("energy", "Activation energy", energy, "J/mol", shown(energy / 1000, 0) + " kJ/mol", rank=MORE,
                      rough="kept between {1} and {2}, where published values lie; {0} where the times leave it "
                            "open".format(*[bare(one / 1000, 1) for one in ENERGY[:3]])))
    if all_of_it.from_memory:
        lines.append(words("from_memory", "These times are nobody's label", "The pot life of this built-in system is "
                           "from memory. Type the one on your own label, with its mass and temperature.", rank=ASK))
    return lines

