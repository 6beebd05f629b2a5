"""Taken: what was really measured out so far, by strokes, marks or heights, as volumes that the rest follows."""
from ..equations.cups import frustum_volume, taper_of
from ..equations.pumping import Strokes
from ..equations.weighing import corrected, ratio_error
from ..mix.ratio import basis, part_names, strokes_volumes
from ..mix.ratio_error import poured_line
from ..words.lines import BESIDE
from ..words.numbers import DOWN, shown, to_step

# way: group of its readings, their field, whether they grow from part to part in one cup
FIELDS = {"scale": ("readings", "shown", True), "pumps": ("counted", "strokes", False),
          "syringes": ("drawn", "volume", False), "graduated": ("levels", "volume", True),
          "stick": ("heights", "height", True)}


def readings(values):
    """What was typed of the parts done [strokes, m3 or m], in the order of pouring, as far as it goes without a gap."""
    group, field, _ = FIELDS[values["way"]]
    found = []
    for row in values.get(group) or []:
        if row is None or row[field] is None:
            break
        found.append(row[field])
    return tuple(found)


def volumes_taken(values):
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


def follow(wanted, done):
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


def levels_of(found, cup=None):
    """Levels in one cup as the volume of each part [m3]. found: heights [m] where `cup` is given, else volumes [m3]

    >>> [round(volume, 6) for volume in levels_of((30.0, 41.0))]
    [30.0, 11.0]
    """
    if cup is not None:
        found = [frustum_volume(height, cup["bottom"] / 2, taper_of(cup)) for height in found]
    return tuple([after - before for before, after in zip((0.0,) + tuple(found), found)])


def whole_steps(wanted, done, steps):
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
    return Strokes(tuple([int(shown(count, 0)) for count in counts]), tuple(volumes), ratio_error(volumes, wanted))


def whole_levels(wanted, done, step):
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
    return Strokes(tuple([int(shown(volume / step, 0)) for volume in volumes]), tuple(volumes),
                   ratio_error(volumes, wanted))


def outcome(values, volumes, wanted, done):
    """How far a finished pour is off ratio; no line while parts are missing."""
    if len(done) < len(wanted):
        return []
    return [poured_line(values, part_names(values["system"]), volumes, wanted)]


def told_of(place, done, rough):
    """What stands under a figure: whether it was read, or follows what was."""
    if place < len(done):
        return "as you read it"
    return "follows what was really taken" if done else rough


def rank_of(place, done, rank):
    """A part that is done steps back."""
    return BESIDE if place < len(done) else rank
