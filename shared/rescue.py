"""Rescue: from what is really in the cup to what has to be added. Nothing comes out of a cup."""
from . import measure, ratio
from .by_scale import actual_readings, on_scale
from .errors import InputError
from .exactness import aim, percent, tolerance
from .inputs import Choice, Group, Number
from .lines import ANSWER, ASK, MORE, SAY, WARN, line, words
from .mixing import stirring_time
from .numbers import DOWN, UP, shown
from .records import SYSTEM
from .taken import volumes_taken
from .units import told
from .weighing import ratio_error

RESCUE_FOLD = "Rescue a bad pour"
WHEN = (("rescue", ("yes",)),)
SPREAD_OUT = ("Do not wait for it: spread it thin, outdoors, on bare ground or in a tray, never under a lid. If it "
              "smokes or is too hot to hold, leave it alone and keep away. Then mix a new batch.")

INPUTS = measure.INPUTS + (
    Choice("rescue", "The pour went wrong", (("no", "No"), ("yes", "Yes, what now?")), fold=RESCUE_FOLD),
    Group("in_cup", "In the cup now", (
        Number("mass", "By weight", unit="g", low=0, high=200000, optional=True),
        Number("strokes", "or strokes counted", unit="strokes", low=0, high=10000, optional=True),
    ), most=5, rows=2, gaps=True, each="Part", fold=RESCUE_FOLD, when=WHEN,
        help="In the order of the parts, filler left out. Left empty: the readings above."),
    Number("filler_in", "Filler already in", unit="g", low=0, high=100000, optional=True, fold=RESCUE_FOLD, when=WHEN),
    Number("first_contact", "First contact of the two, at minute", unit="min", low=0, high=1e9, optional=True,
           fold=RESCUE_FOLD, when=WHEN),
    Number("now", "Now, minute", unit="min", low=0, high=1e9, optional=True, fold=RESCUE_FOLD, when=WHEN),
    Number("temperature", "Temperature of the mix", unit="degC", low=-10, high=60, optional=True, fold=RESCUE_FOLD,
           when=WHEN),
)


def additions(in_cup, parts):
    """What brings a cup exactly back into ratio:
        add_i = p_i max(m_j / p_j) - m_i

    in_cup: m [kg, or m3], of each part, 0 or more; parts: p, the label's in the same basis, above 0
    returns: of each part, 0 or more, at least one of them 0; plain proportion
    >>> [round(grams, 5) for grams in additions((120, 40), (100, 30))]
    [13.33333, 0.0]
    """
    ahead = max([mass / part for mass, part in zip(in_cup, parts)])
    return tuple([max(0.0, ahead * part - mass) for mass, part in zip(in_cup, parts)])


def least_additions(in_cup, parts, error: float):
    """The least that brings every part within the error of its ratio to the first:
        a' = max(a, max(b_j / (R_j (1 + e)))),  b_j' = max(b_j, R_j a' (1 - e)),  R_j = p_j / p_1

    in_cup: a, b_j [kg, or m3]; parts: p, above 0; error: e [-], below 1
    returns: of each part, 0 or more; the smallest of each, all at once
    >>> [round(grams, 4) for grams in least_additions((120, 40), (100, 30), 0.02)]
    [10.719, 0.0]
    """
    first = in_cup[0]
    for mass, part in zip(in_cup[1:], parts[1:]):
        first = max(first, mass / (part / parts[0] * (1 + error)))
    found = [first - in_cup[0]]
    for mass, part in zip(in_cup[1:], parts[1:]):
        found.append(max(0.0, part / parts[0] * first * (1 - error) - mass))
    return tuple(found)


def contents(values, count):
    """What is in the cup of each part: ((amount, ...), "kg" or "m3"); readings stand in where nothing was typed.

    By weight wherever the label or its densities give weights; by volume only where every part was counted in strokes.
    """
    found = ratio.basis(values["system"])
    rows = list(values["in_cup"])
    if not any([row is not None for row in rows]):
        actual = actual_readings(values) if found.weight_parts else ()
        if values["way"] != "scale":
            volumes = volumes_taken(values)
            if len(volumes) == count and (found.densities or not found.weight_parts):
                if not found.densities:
                    return volumes, "m3"
                return tuple([volume * rho for volume, rho in zip(volumes, found.densities)]), "kg"
        if len(actual) != count:
            raise InputError("in_cup", "In the cup now: type what is in it of each part, 0 where there is none")
        return tuple([after - before for before, after in zip((0.0,) + actual, actual)]), "kg"
    if len(rows) > count:
        raise InputError("in_cup.{}.mass".format(count), "By weight: the label has only {} parts".format(count))
    rows = rows + [None] * (count - len(rows))
    unit = "kg" if found.weight_parts else "m3"
    amounts = []
    for place, row in enumerate(rows):
        amounts.append(_amount(values, found, unit, place, row))
    if not max(amounts) > 0:
        raise InputError("in_cup", "In the cup now: nothing is in it yet; the pour above starts from zero")
    return tuple(amounts), unit


def _amount(values, found, unit, place, row):
    field = "in_cup.{}.".format(place)
    if row is None or (row["mass"] is None and row["strokes"] is None):
        raise InputError(field + "mass", "By weight: type it for each part, 0 where there is none")
    if row["mass"] is not None and row["strokes"] is not None:
        raise InputError(field + "strokes", "Strokes counted: either these or the weight, not both")
    if row["mass"] is not None:
        if unit == "m3":
            raise InputError(field + "mass", "By weight: " + ratio.NO_DENSITIES.format("volume", "weight"))
        return row["mass"]
    if not values.get("pumps"):
        raise InputError(field + "strokes", "Strokes counted: choose Pumps under Measured with, so that a stroke has a "
                                            "volume; or type the weight")
    volumes = ratio.strokes_volumes(values["pumps"], found.densities)
    if place >= len(volumes):
        raise InputError("pumps.strokes", "Pumps: one stroke for each part, please")
    volume = row["strokes"] * volumes[place]
    if unit == "m3":
        return volume
    if not found.densities:
        raise InputError("system.densities", "Densities: strokes need the density of each part here")
    return volume * found.densities[place]


def check(values):
    """What is in the cup must be known, and time runs forwards."""
    if values["rescue"] == "no":
        return
    contents(values, len(ratio.part_names(values["system"])))
    start, now = values["first_contact"], values["now"]
    if start is not None and now is not None and now < start:
        raise InputError("now", "Now: it comes before the first contact")


CHECKS = (ratio.check, check)


def answer(values):
    """What to add, first whether it is worth it; no lines where nothing went wrong."""
    if values["rescue"] == "no":
        return []
    names = ratio.part_names(values["system"])
    found = ratio.basis(values["system"])
    in_cup, unit = contents(values, len(names))
    parts = found.weight_parts if unit == "kg" else found.volume_parts
    exact, error = additions(in_cup, parts), tolerance(values)
    least = least_additions(in_cup, parts, error)
    total = sum(in_cup) + sum(exact)
    lines = _clock(values, total if unit == "kg" else None)
    if "past_saving" in [one.name for one in lines]:
        return lines
    lines.append(_state(in_cup, parts, error))
    lines.extend(_to_add(values, names, in_cup, exact, least, unit, error))
    lines.append(_total(values, "new_total", "Then in the cup, liquids", total, unit))
    lines.extend(_filler(values, in_cup, exact, least, parts))
    lines.extend(_fits(values, found, total, unit))
    return lines


def _amount_text(values, amount, unit, toward):
    """On the scale's own steps where it is weighed; never fewer than the figure where it is rounded up."""
    if unit == "m3":
        return told(amount, "mL", values["units"], toward)
    if values["way"] == "scale":
        step = values["scale"]["step"]
        count = float(shown(amount / step, 0, toward))
        return on_scale(count * step, values["scale"]["step_unit"], values)
    return told(amount, "g", values["units"], toward)


def _state(in_cup, parts, error):
    if min(in_cup) <= 0:
        return words("off", "A part is missing", "Nothing of it is in the cup yet.", rank=WARN)
    off = ratio_error(in_cup, parts)
    rank = WARN if abs(off) > error + 1e-9 else MORE
    return line("off", "In the cup: off ratio by", off, "", percent(off), rank=rank,
                rough=aim(error) + " is wanted; below 0: short of hardener")


def _to_add(values, names, in_cup, exact, least, unit, error):
    lines, whole = [], sum(in_cup)
    needed = sum(least) > 1e-9 * whole
    if not needed and sum(exact) > 1e-9 * whole:
        lines.append(words("least", "It may stay as it is", "within " + aim(error) + " already", rank=SAY))
    for place, amount in enumerate(exact):
        if amount > 1e-9 * whole:
            lines.append(line("add_" + "abcde"[place], names[place] + ", to add", amount, unit,
                              _amount_text(values, amount, unit, "nearest"), part="abcde"[place],
                              rank=ANSWER if needed else MORE, rough="comes back exactly into ratio"))
    if not lines:
        return [words("add", "Nothing to add", "it is in ratio", rank=SAY)]
    for place, amount in enumerate(least):
        if amount > 1e-9 * whole:
            lines.append(line("least_" + "abcde"[place], names[place] + ", at the least", amount, unit,
                              _amount_text(values, amount, unit, UP), part="abcde"[place],
                              rough="comes within " + aim(error) + "; rounded up"))
    if unit == "kg" and values["way"] == "scale":
        lines.append(words("how", "How", "Set the scale to 0 with the cup on it, add, then stir all of it again."))
    return lines


def _total(values, name, label, amount, unit):
    return line(name, label, amount, unit, told(amount, "g" if unit == "kg" else "mL", values["units"]), part="mix",
                rough="after adding exactly")


def _filler(values, in_cup, exact, least, parts):
    """The dose stays: filler grows with the liquids, or the putty comes out softer."""
    filler = values["filler_in"]
    if not filler:
        return []
    before = sum(in_cup)
    more = filler * sum(exact) / before
    lines = [line("add_filler", "Filler, for the same stiffness", more, "kg", told(more, "g", values["units"]),
                  part="filler", rank=ANSWER if sum(least) > 1e-9 * before else MORE,
                  rough="filler never counts in the ratio; stir the liquids in well before it")]
    if sum(least) > 1e-9 * before:
        fewer = filler * sum(least) / before
        lines.append(line("least_filler", "Filler with the least", fewer, "kg", told(fewer, "g", values["units"]),
                          part="filler", rank=MORE))
    lines.append(words("stirred_in", "With filler in", "Liquid mixes slowly into putty: work it through until no "
                       "streak is left, bottom and corners too.", rank=ASK, rough="common practice"))
    return lines


def _fits(values, found, total, unit):
    """Whether the new total fits a cup that was chosen."""
    if not measure.cup_chosen(values):
        return []
    volume = total
    if unit == "kg":
        if not found.densities:
            return []
        volume = total / ratio.mixed_density(found.weight_parts, found.densities)
    from . import by_stick
    filler = values["filler_in"]
    usable = by_stick.usable_volume(values["cup"])
    if volume > usable * (1 + 1e-9):
        return [line("cup_too_small", "Does not fit the cup", volume, "m3", told(volume, "mL", values["units"], UP)
                     + ", the cup takes " + told(usable, "mL", values["units"], DOWN), rank=WARN,
                     rough="with room to stir. Tip all of it into a larger cup first, scrape it clean, then add.")]
    return [line("fits", "Fits the cup", volume, "m3", told(volume, "mL", values["units"], UP) + " of "
                 + told(usable, "mL", values["units"], DOWN), rank=MORE,
                 rough="with room to stir" + ("; the filler's volume comes on top" if filler else ""))]


def _clock(values, mass):
    """Minutes left since first contact, and whether there is time to add and stir."""
    start, now, system = values["first_contact"], values["now"], values["system"]
    signs = words("signs", "Whatever the clock says", "Warm to the hand, stringy or lumpy: it is past saving. "
                  + SPREAD_OUT, rank=MORE, rough="common practice")
    if not system["pot_time"]:
        return [words("no_pot_life", "How long is left?", "Type the label's pot life, or go by hand: warm or stringy "
                      "means past saving.", rank=ASK), signs]
    if not (system["pot_mass"] and system["pot_temperature"]):
        return [words("pot_life_whole", "At what mass and temperature?", "A pot life counts with the mass and the "
                      "temperature it was told for: type both from the label. Until then: warm or stringy means past "
                      "saving.", rank=ASK), signs]
    life, by = system["pot_time"], "the label's figure"
    if mass is not None:
        from .rescue_time import usable  # the heat balance is loaded only where a pour went wrong
        life, by = usable(values, mass)
    stir = stirring_time(mass or 0.0, values["temperature"])
    mark = by + ("; from a remembered pot life" if _remembered(system) else "")
    if values["temperature"] is None:
        mark += "; at the label's temperature, warmer is shorter"
    if start is None or now is None:
        return [line("pot_life", "Usable since first contact", life, "s", told(life, "min", "metric", DOWN, places=0),
                     rough=mark + "; rounded down. Type both times to see what is left."), signs]
    left = life - (now - start)
    if left <= stir + 1e-6:
        return [line("past_saving", "Past saving", left, "s", "No time to add and stir. " + SPREAD_OUT, rank=WARN,
                     rough=told(life, "min", "metric", DOWN, places=0) + " since first contact, " + mark), signs]
    return [line("left", "Left since first contact", left, "s", told(left, "min", "metric", DOWN, places=0),
                 rough="for the new total, stirring {} included; {}; rounded down".format(
                     told(stir, "min", "metric", places=0), mark), rank=ANSWER), signs]


def _remembered(system):
    return SYSTEM.from_memory(system, "pot_time")
