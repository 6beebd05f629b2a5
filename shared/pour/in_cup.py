"""In cup: what is really in it of each part, what has to be added, and whether there is time for it.

Nothing comes out of a cup.
"""
from collections import namedtuple

from ..catalogue.measuring import DENSEST
from ..clock.usable import contradictions, known, usable
from ..equations.pumping import Strokes
from ..equations.stirring import stirring_time
from ..equations.top_up import further_strokes, top_up
from ..forms.errors import InputError
from ..forms.late import late
from ..forms.types import Said, Values
from ..mix import ratio, ratio_doubt_lines
from ..mix.label_words import count_of, no_densities
from ..mix.ratio_error import off_ratio, tolerance
from ..words.messages import message
from . import time_in_cup
from .by_scale import actual_readings, poured_masses
from .chosen_cup import cup_chosen
from .measured_out import volumes_taken

# what is known of the time: `state` of a Clock
HALF_TOLD, UNTOLD, NO_WARMTH, NO_TIMES, TOO_LATE, LEFT = "half_told", "untold", "no_warmth", "no_times", "late", "left"

# unit: "kg" or "m3", of all amounts; clock: Clock; off: Off of what is in the cup, None where a part is missing
# most: the ratio error to aim for [-]; exact: of each part, what brings it exactly into ratio, None where nothing
# least: of each part, the least that is good enough, None where nothing; needed: whether something has to be added
# stays: whether it may stay as it is, though not exactly in ratio; total: liquids then, once it is in ratio
# strokes: pumping.Strokes of all parts that mend it, and `more` of each, where whole strokes are in; else None
# filler: MoreFiller, None where none is in; fit: Fit, None where no cup was chosen or no volume is known
# held: all that the cup then holds, filler too [kg]; now, where it is too late to add
RescueResult = namedtuple("RescueResult", (
    "unit", "clock", "off", "most", "exact", "least", "needed", "stays", "total", "strokes", "more", "filler",
    "fit", "held"))
# exact, least: filler that keeps the stiffness [kg], with the exact and with the least additions
MoreFiller = namedtuple("MoreFiller", ("exact", "least"))
# volume: of the liquids once they are in ratio [m3]; usable: what the cup takes [m3]; fits: whether it takes them
Fit = namedtuple("Fit", ("volume", "usable", "fits"))
# state: one of the keys above; the rest None where no time is known. pot: the new total as `usable` reads it
# usable: usable.Usable; apart: own timings that contradict each other, as usable.contradictions
# left: since now [s], None without both times; stir: how long adding and stirring takes [s]
Clock = namedtuple("Clock", ("state", "pot", "usable", "apart", "left", "stir"))


def least_additions(in_cup: tuple[float, ...], parts: tuple[float, ...], error: float) -> tuple[float, ...]:
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


def contents(values: Values, count: int) -> tuple[tuple[float, ...], str]:
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
        if actual:
            ratio_doubt_lines.check(values["system"], "scale")
        if len(actual) < count:
            raise InputError("in_cup", message("field-refused", label="rescue-in-cup", why="rescue-in-cup.missing"))
        return poured_masses(values), "kg"
    if len(rows) > count:
        raise _refused("in_cup.{}.mass".format(count), message("rescue-mass.parts", count=count))
    rows = rows + [None] * (count - len(rows))
    unit = "kg" if found.weight_parts else "m3"
    amounts = []
    for place, row in enumerate(rows):
        amounts.append(_amount(values, found, unit, place, row))
    if not max(amounts) > 0:
        raise InputError("in_cup", message("field-refused", label="rescue-in-cup", why="rescue-in-cup.empty"))
    return tuple(amounts), unit


def _refused(path: str, why: Said) -> InputError:
    """What is wrong with a weight in the cup."""
    return InputError(path, message("field-refused", label="rescue-in-cup.mass", why=why))


def _amount(values: Values, found: ratio.Basis, unit: str, place: int, row: "Values | None") -> float:
    field = "in_cup.{}.".format(place)
    if row is None or (row["mass"] is None and row["strokes"] is None):
        raise _refused(field + "mass", "rescue-mass.each")
    if row["mass"] is not None and row["strokes"] is not None:
        raise InputError(field + "strokes", "rescue-strokes.both")
    if row["mass"] is not None:
        if unit == "m3":
            raise _refused(field + "mass", no_densities(values["system"], "volume"))
        ratio_doubt_lines.check(values["system"], "scale")
        return row["mass"]
    if not values.get("pumps"):
        raise InputError(field + "strokes", "rescue-strokes.pumps")
    volumes = ratio.strokes_volumes(values["pumps"], found.densities)
    if place >= len(volumes):
        raise InputError("pumps.strokes", "rescue-strokes.each")
    volume = row["strokes"] * volumes[place]
    if unit == "m3":
        return volume
    if not found.densities:
        raise InputError("system.densities", "rescue-strokes.densities")
    return volume * found.densities[place]


def reckon(values: Values) -> RescueResult:
    """What is in the cup, what to add to it, and whether there is time for that."""
    basis = ratio.basis(values["system"])
    in_cup, unit = contents(values, count_of(values["system"]))
    parts = basis.weight_parts if unit == "kg" else basis.volume_parts
    most = tolerance(values)
    exact, least = top_up(in_cup, parts), least_additions(in_cup, parts, most)
    whole = sum(in_cup)
    needed = sum(least) > 1e-9 * whole
    strokes, more = _in_strokes(values, in_cup, unit, basis, most) if needed else (None, ())
    total = whole + sum(exact)
    if strokes:  # what is pumped is more than the exact ratio takes
        pumped = strokes.volumes
        total = sum(pumped) if unit == "m3" else sum([one * rho for one, rho in zip(pumped, basis.densities)])
    per = 1.0 if unit == "kg" else DENSEST  # kg: more is shorter
    filler = values["filler_in"]
    clock = _clock(values, whole * per, total * per)
    return RescueResult(
        unit=unit, clock=clock, strokes=strokes, more=more,
        held=(whole if clock.state == TOO_LATE else total) * (per + (filler or 0.0) / whole),
        off=None if min(in_cup) <= 0 else off_ratio(in_cup, parts, most), most=most,
        exact=_worth_adding(exact, whole), least=_worth_adding(least, whole), needed=needed,
        stays=not needed and sum(exact) > 1e-9 * whole, total=total,
        filler=MoreFiller(filler * (total - whole) / whole, filler * sum(least) / whole) if filler else None,
        fit=_fit(values, basis, total, unit))


def _in_strokes(values: Values, in_cup: tuple[float, ...], unit: str, basis: ratio.Basis,
                most: float) -> tuple["Strokes | None", tuple[int, ...]]:
    """What mends it in whole strokes, and how many more of each part; None where it was not pumped in whole ones."""
    if values["way"] != "pumps" or not basis.volume_parts or (unit == "kg" and not basis.densities):
        return None, ()
    each = ratio.strokes_volumes(values["pumps"], basis.densities)
    volumes = [mass / rho for mass, rho in zip(in_cup, basis.densities)] if unit == "kg" else in_cup
    done = [volume / stroke for volume, stroke in zip(volumes, each)]
    if len(each) != len(in_cup) or [1 for count in done if abs(count - int(count + 0.5)) > 1e-6]:
        return None, ()
    done = [int(count + 0.5) for count in done]
    found = further_strokes(done, basis.volume_parts, each, most)
    return found, tuple([after - before for before, after in zip(done, found.counts)]) if found else ()


def _worth_adding(amounts: tuple[float, ...], whole: float) -> tuple["float | None", ...]:
    """What there is to add of each part, None where that is no more than the last bits of the whole."""
    return tuple([amount if amount > 1e-9 * whole else None for amount in amounts])


def _fit(values: Values, basis: ratio.Basis, total: float, unit: str) -> "Fit | None":
    """Whether the new total fits a cup that was chosen. total: [kg] or [m3], as the unit says"""
    if not cup_chosen(values):
        return None
    volume = total
    if unit == "kg":
        if not basis.densities:
            return None
        volume = total / ratio.mixed_density(basis.weight_parts, basis.densities)
    takes = late("by_stick").usable_volume(values["cup"])
    return Fit(volume, takes, volume <= takes * (1 + 1e-9))


def _clock(values: Values, mass_in: float, mass: float) -> Clock:
    """Minutes left since first contact, and whether there is time to add and stir.

    mass_in, mass: of the liquids now and once they are in ratio [kg]; the filler that keeps the stiffness comes on top
    """
    start, now, system = values["first_contact"], values["now"], values["system"]
    state = None
    if system["pot_time"] and not (system["pot_mass"] and system["pot_temperature"]):
        state = HALF_TOLD
    elif not known(system):
        state = UNTOLD
    elif system["pot_temperature"] is None and not time_in_cup.measured(values):
        state = NO_WARMTH
    if state:
        return Clock(state, None, None, (), None, None)
    dose = (values["filler_in"] or 0.0) / mass_in
    pot = time_in_cup.of_cup(values, mass * (1 + dose), dose / (1 + dose), time_in_cup.grain_of(values))
    found, apart, stir = usable(pot), contradictions(pot), stirring_time(mass, values["temperature"])
    if start is None or now is None:
        return Clock(NO_TIMES, pot, found, apart, None, stir)
    left = found.time - (now - start)
    return Clock(TOO_LATE if left <= stir + 1e-6 else LEFT, pot, found, apart, left, stir)
