"""In the cup: what is really in it of each part, and what has to be added. Nothing comes out of a cup."""
from ..forms.errors import InputError
from ..mix import ratio
from .by_scale import actual_readings
from .measured_out import volumes_taken


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
