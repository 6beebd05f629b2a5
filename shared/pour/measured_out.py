"""Measured out: what was really measured out so far, by strokes, marks or heights, as volumes that the rest follows."""
from ..equations.cups import frustum_volume, taper_of
from ..equations.pumping import Strokes
from ..equations.rounding import DOWN, to_step
from ..equations.weighing import corrected, ratio_error
from ..forms.types import Values
from ..mix.ratio import basis, strokes_volumes
from ..mix.ratio_error import Off, off_ratio, tolerance

# way: group of its readings, their field, whether they grow from part to part in one cup
FIELDS = {"scale": ("readings", "shown", True), "pumps": ("counted", "strokes", False),
          "syringes": ("drawn", "volume", False), "graduated": ("levels", "volume", True),
          "stick": ("heights", "height", True)}


def readings(values: Values) -> tuple[float, ...]:
    """What was typed of the parts done [strokes, m3 or m], in the order of pouring, as far as it goes without a gap."""
    group, field, _ = FIELDS[values["way"]]
    found = []
    for row in values.get(group) or []:
        if row is None or row[field] is None:
            break
        found.append(row[field])
    return tuple(found)


def volumes_taken(values: Values) -> tuple[float, ...]:
    """The volume of each part done so far [m3], by any way but the scale."""
    found = readings(values)
    if not found:
        return ()
    if values["way"] == "pumps":
        each = strokes_volumes(values["pumps"], basis(values["system"]).densities)
        return tuple([count * volume for count, volume in zip(found, each)])
    if values["way"] == "syringes":
        return found
    return levels_of(found, values["cup"] if values["way"] == "stick" else None)


def follow(wanted: "list[float] | tuple[float, ...]", done: "list[float] | tuple[float, ...]") -> tuple[float, ...]:
    """The volumes that stay in ratio with what was taken before them, those taken as they are.

    wanted: of each part, in ratio [m3]; done: taken so far, of each part [m3]
    >>> [round(volume, 2) for volume in follow((30.0, 10.0), (33.0,))]
    [33.0, 11.0]
    """
    total, cumulated = 0.0, []
    for volume in done:
        total += volume
        cumulated.append(total)
    return corrected(wanted, cumulated)


def levels_of(found: "list[float] | tuple[float, ...]", cup: "Values | None" = None) -> tuple[float, ...]:
    """Levels in one cup as the volume of each part [m3]. found: heights [m] where `cup` is given, else volumes [m3]

    >>> [round(volume, 6) for volume in levels_of((30.0, 41.0))]
    [30.0, 11.0]
    """
    if cup is not None:
        found = [frustum_volume(height, cup["bottom"] / 2, taper_of(cup)) for height in found]
    return tuple([after - before for before, after in zip((0.0,) + tuple(found), found)])


def whole_steps(wanted: tuple[float, ...], done: "list[float] | tuple[float, ...]",
                steps: tuple[float, ...]) -> Strokes:
    """Whole strokes or marks of the parts to come, nearest to the ratio; those done as they were taken.

    wanted: of each part, in ratio [m3]; done: taken so far [m3]; steps: of each part, stroke or mark [m3]
    returns: pumping.Strokes
    >>> whole_steps((30e-6, 10e-6), (50e-6,), (10e-6, 10e-6)).counts
    (5, 2)
    """
    follows = follow(wanted, done)
    counts, volumes = [], []
    for place, step in enumerate(steps):
        if place < len(done):
            counts.append(done[place] / step)
            volumes.append(done[place])
        else:
            counts.append(max(1, int(follows[place] / step + 0.5 + 1e-9)))
            volumes.append(counts[-1] * step)
    return Strokes(tuple([int(to_step(count, 1.0)) for count in counts]), tuple(volumes), ratio_error(volumes, wanted))


def whole_levels(wanted: "list[float] | tuple[float, ...]", done: tuple[float, ...], step: float) -> Strokes:
    """Marks of the parts to come, poured one on the other in one cup: each the nearest mark above the one before it.

    wanted: of each part, in ratio [m3]; done: taken so far [m3]; step: from mark to mark [m3]
    returns: pumping.Strokes, its counts in marks
    >>> [round(volume * 1e6, 6) for volume in whole_levels((30e-6, 10e-6), (47e-6,), 10e-6).volumes]  # 62.7: 60
    [47.0, 13.0]
    """
    level, target, volumes = 0.0, 0.0, []
    for place, volume in enumerate(follow(wanted, done)):
        target += volume
        mark = target if place < len(done) else max(to_step(target, step),
                                                    to_step(to_step(level, step, DOWN) + step, step))
        volumes.append(volume if place < len(done) else mark - level)
        level = mark
    return Strokes(tuple([int(to_step(volume / step, 1.0)) for volume in volumes]), tuple(volumes),
                   ratio_error(volumes, wanted))


def outcome(values: Values, volumes: tuple[float, ...], wanted: "list[float] | tuple[float, ...]",
            done: int) -> "Off | None":
    """How far a finished pour is off ratio; None while parts are missing. volumes, wanted: [m3]; done: parts taken"""
    return off_ratio(volumes, wanted, tolerance(values)) if done >= len(wanted) else None
