"""Usable: how long a batch can be used. Every screen that tells minutes asks this one function.

When a mix is thick, or too hot to hold, is estimated twice, by the heat balance and by the trade's quick rule; what was
seen of the system's pots bounds it; of the shorter a share is used, the rest is kept back. The heat balance knows no
activation energy: of those that fit what is known of the system, the one that ends this pot first counts.
"""
from collections import namedtuple

from ..catalogue.containers import LAID
from ..catalogue.pots import ROUGHLY, SHALLOWER, SIZES
from ..equations.calibrate_heat import USABLE
from ..equations.integrate import LONGEST, Pot, Rates, Run, pot_run
from ..equations.quick_rule import RULE
from ..equations.rounding import to_step
from ..forms.memo import memo_of
from ..forms.types import Values
from ..things.own_timings import in_sun
from .heat_model import (
    FINEST,
    container_mix,
    ends_of,
    mixed_resin,
    pot_of,
    quick_time,
    seen_mass,
    seen_warmth,
    timings_of,
)
from .pot_heat import thickness, too_hot
from .sun import Sun, declared, sun_of

OPEN, GEL, WORK = "open", "gel", "work"  # of the system's `pot_meaning`
SHARE, FILM_SHARE = RULE["share"], RULE["film share"]
ALIKE_MASS, ALIKE_WARMTH = 0.001, 0.06  # kg, K; two pots that differ by no more are the same pot, told in round figures
BY_HEAT, BY_RULE, BY_GONE, BY_GOOD = "heat", "rule", "gone", "good"
RUNS, MOST_RUNS = "pot runs", 128  # heading of the memo, (rates, pot, too hot): when it is thick [s]; how many

# time: to be used up by [s]; end: when it is thick or too hot to hold [s]; share: time / end; model, quick: the two
# estimates of the end, None where there is none; rule: how the quick one was reckoned, `heat_model.Rule`; by: which of
# them counts, or the bound that does; seen: the timing that is the bound, or None; timed: how many own timings it rests
# on; means: what the label's pot life is, OPEN, GEL or WORK
Usable = namedtuple("Usable", ("time", "end", "share", "model", "quick", "rule", "by", "seen", "timed", "means"))


def batch(system: dict, container: str, mass: float, air: float, resin: "float | None" = None,
          filler: "float | None" = None, sizes: dict = SIZES, moving: str = "still", timings: "list | tuple" = (),
          sun: "Values | None" = None, grain: "float | None" = None) -> Values:
    """A batch as `usable` reads it. mass: all in the container [kg]; air, resin: [K]; filler: share of the mass [-],
    grain: its true density [kg/m3], where it is known

    sizes: as pot_heat.SIZES [m]; timings: own ones beside the system's; sun: values with what `sun.inputs` declares,
    None: shade; what is remembered with them is remembered with the batch
    """
    found = dict([(name, sizes[name]) for name in SIZES])
    found.update(declared(sun or {}))
    found.update(system=system, container=container, batch=mass, air=air, resin_temperature=resin, filler=filler,
                 moving=moving, timings=timings, grain=grain)
    if sun is not None:
        found["_memo"] = memo_of(sun)
    return found


def known(system: dict, timings: "list | tuple" = ()) -> bool:
    """Whether the times of a system are known well enough to tell how long a pot of it can be used."""
    if system["pot_time"] is not None:
        return system["pot_mass"] is not None and system["pot_temperature"] is not None
    if system["film_time"] is not None:
        return system["pot_temperature"] is not None
    return bool([row for row in list(system["timed"]) + list(timings)
                 if row["said"] == "stiffening" and not in_sun(row)])


def share_kept(system: dict, container: str, share: float = SHARE) -> float:
    """How much of the time until it is thick is used [-]. share: of any container but a film, 0.6 to 1, from memory

    A thin film is thick long before it gels: of a time to gel less is used, unless the label tells the film's own time.
    >>> label = {"pot_meaning": "gel", "film_time": None}
    >>> share_kept(label, "cup"), share_kept(label, "film"), share_kept(dict(label, film_time=60.0), "film")
    (0.8, 0.5, 0.8)
    """
    if container == "film" and system["pot_meaning"] == GEL and system["film_time"] is None:
        return min(share, FILM_SHARE)
    return share


def usable(values: Values, container: "str | None" = None, mass: "float | None" = None, share: float = SHARE,
           rule: "tuple | None" = None, run: "Run | None" = None, balance: bool = True) -> Usable:
    """How long a batch can be used.
        time = share * min(max(min(heat, rule), good), gone)

    values: as `batch` makes them, or as the move heat reads them; container, mass [kg]: others than theirs
    share: as for `share_kept`; rule: (exponent or None, doubling) of the quick rule where they were typed
    run: an integrate.Run of this pot at its earliest where there is one; balance: whether the heat balance is asked
    """
    container, mass = container or values["container"], values["batch"] if mass is None else mass
    model = None
    if run is not None:
        model = run.reached or LONGEST
    elif balance:
        here = pot_of(values, container, mass)
        hot = too_hot(container, here, values["air"])
        model = min([reached(values, rates, here, hot) for rates in ends_of(values)])
    if model is not None:
        model = to_step(model, FINEST)
    quick, how = quick_time(values, container, mass, *(rule or ()))
    end, by = model, BY_HEAT
    if model is None or (quick is not None and quick <= model):
        end, by = quick, BY_RULE
    if end is None:
        raise ValueError("time")  # of a system of which nothing is known; its check refuses it
    least, good, most, gone = bounds(values, container, mass)
    seen = None
    if least is not None and least > end + FINEST:  # what ends a pot is not told by the last bit
        end, by, seen = least, BY_GOOD, good
    if most is not None and most < end:
        if most < end - FINEST:
            by, seen = BY_GONE, gone
        end = most
    used = share_kept(values["system"], container, share)
    return Usable(used * end, end, used, model, quick, how, by, seen, len(setting(timings_of(values))),
                  values["system"]["pot_meaning"])


def reached(values: Values, rates: Rates, here: Pot, hot: float) -> float:
    """When a pot is thick or too hot [s]: a plan asks for the same few again with every key that is pressed."""
    return memo_of(values).once(RUNS, tuple(rates) + tuple(here) + (hot,),
                                lambda: pot_run(rates, here, USABLE, hot).reached or LONGEST, MOST_RUNS)


def bounds(values: Values, container: str, mass: float) -> tuple:
    """What was seen of pots that are no easier or no harder than this one:
        (the end is at least [s], the timing, at most [s], the timing), None where nothing was seen

    A pot is harder that is no smaller, no cooler and no shallower. A pot that was gone bounds all harder ones from
    above; one that was still good bounds all easier ones from below, unless another that was seen gainsays it. One that
    was stiffening in the sun does both; what stood in the sun is held only against the same sun, and from above against
    a stronger one, from below against the shade.
    """
    rows = bounding(timings_of(values))
    if not rows:
        return None, None, None, None
    air, resin, sun = values["air"], values["resin_temperature"], sun_of(values)
    size, deep = 0.0 if container in LAID else mass, thickness(container, mass / container_mix(values)[1], values)
    bare = here = _Pot(container, size, max(air, air if resin is None else resin), deep)
    if sun.flux:  # as warm as the sun would hold it in the end
        air = pot_of(values, container, mass).air
        here = _Pot(container, size, max(air, air if resin is None else resin), deep)
    density, apart = mixed_resin(values["system"])[1], [one for pair in contradictions(values) for one in pair]
    least = good = most = gone = None
    for row in rows:
        pot, asked, above, below = _seen(row, density), here, row["said"] == "gone", row["said"] == "good"
        if in_sun(row):
            asked = bare
            above, below = not below and _sunnier(sun, sun_of(row)), not above and (not sun.flux or alike(row, values))
        if above and (most is None or row["after"] < most) and _harder(asked, pot, SHALLOWER):
            most, gone = row["after"], row
        if below and row not in apart and (least is None or row["after"] > least) and _harder(pot, asked):
            least, good = row["after"], row
    return least, good, most, gone


def bounding(rows: "list[dict]") -> "list[dict]":
    """Own timings that bound others: gone, still good, and all that stood in the sun."""
    return [row for row in rows if row["said"] != "stiffening" or in_sun(row)]


def setting(rows: "list[dict]") -> "list[dict]":
    """Own timings that a time rests on; what stood in the sun is only held against it."""
    return [row for row in rows if not in_sun(row)]


def alike(row: dict, values: Values) -> bool:
    """Whether an own timing stood in the sun that is asked: as much, on the same surface, under the same cover."""
    return in_sun(row) and in_sun(values) and sun_of(row) == sun_of(values)


def in_other_sun(values: Values) -> int:
    """How many own timings stood in another sun than is asked."""
    return len([row for row in timings_of(values) if in_sun(row) and not alike(row, values)])


def _sunnier(one: Sun, other: Sun) -> bool:
    """Whether a sun is no weaker than another: no less is taken up, no more is given off."""
    return one.flux >= other.flux and one.air <= other.air


_Pot = namedtuple("_Pot", ("container", "mass", "warmth", "depth"))


def _seen(row: dict, density: float) -> _Pot:
    """A timing as a pot. A cup that nobody measured is as wide as it is full."""
    mass = seen_mass(row)
    return _Pot(row["in"], 0.0 if row["in"] in LAID else mass, seen_warmth(row),
                thickness(row["in"], mass / density, SIZES))


def _harder(one: _Pot, other: _Pot, depth: float = 1.0) -> bool:
    """Whether a pot is no smaller, no cooler and no shallower than another; of one kind the mass tells the depth.

    depth: how shallow, against the other, still counts as no shallower [-]
    """
    return (one.mass >= other.mass - ALIKE_MASS and one.warmth >= other.warmth - ALIKE_WARMTH
            and (one.container == other.container or one.depth >= other.depth * depth * (1 - 1e-6)))


def contradictions(values: Values) -> "list[tuple[dict, dict]]":
    """Timings that cannot both be: [(still alive, already thick), ...], the second no harder, and thick sooner."""
    rows, density = timings_of(values), mixed_resin(values["system"])[1]
    pots, found = [_seen(row, density) for row in rows], []
    for row, pot in zip(rows, pots):
        for other, its in zip(rows, pots):
            if row["said"] == "gone" or other["said"] == "good" or row is other or not _harder(pot, its):
                continue
            if not _sunnier(sun_of(row), sun_of(other)):
                continue  # an easier pot may last
            if row["said"] == other["said"]:
                continue  # two that stiffened: pots differ
            if row["after"] > other["after"] * (1.0 if other["said"] == "gone" else ROUGHLY):
                found.append((row, other))
    return found
