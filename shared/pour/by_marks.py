"""By marks: syringes and graduated cups, each part drawn or poured to a graduation."""
from ..equations.graduations import (
    FINEST,
    cup_spread,
    fills,
    for_each,
    in_one_cup,
    on_marks,
    smallest_on_marks,
    smallest_read,
    syringe_spread,
)
from ..equations.pumping import FURTHEST, smallest_strokes
from ..forms.errors import InputError
from ..forms.memo import once
from ..mix import ratio
from ..mix.ratio_error import aim, limit, off_by, percent, tolerance, wanted_text, within
from ..words.lines import ANSWER, ASK, BESIDE, MORE, WARN, line, spans, words
from ..words.numbers import DOWN, UP, ceiling, shown
from ..words.units import from_si, sign, to_si, told
from .measured_out import levels_of, outcome, rank_of, readings, told_of, whole_levels, whole_steps

READ_TO = "read to one mark, eyes level with it; in about 95 of 100 pours"


def check(values, batch):
    """Volumes must be known, and there must be a syringe for each part."""
    if not batch.volumes:
        raise InputError("system.densities", "Densities: " + ratio.no_densities(values["system"], "weight")
                         + " Syringes and graduated cups need them.")
    if values["way"] == "syringes" and len(values["syringes"]["holds"]) not in (1, len(batch.volumes)):
        raise InputError("syringes.holds", "Each holds: the label has {} parts, here are {} syringes".format(
            len(batch.volumes), len(values["syringes"]["holds"])))


def answer(values):
    """What each syringe or the cup must show, then how far it can be trusted."""
    return _by_syringes(values) if values["way"] == "syringes" else _by_graduated(values)


def unit_of_marks(values) -> str:
    """The unit that stands at the marks of the tool."""
    return values["syringes"]["steps_unit"] if values["way"] == "syringes" else values["graduated"]["step_unit"]


def mark_text(volume: float, step: float, values) -> str:
    """A volume that ends on a mark, in the unit that stands there and with the decimals that the marks have."""
    unit = unit_of_marks(values)
    per, places = from_si(step, unit), 0
    while places < 3 and abs(float(shown(per, places)) - per) > 1e-6 * per:
        places += 1
    return shown(from_si(volume, unit), places) + " " + sign(unit)


def _by_syringes(values):
    batch = ratio.mix(values)
    count = len(batch.volumes)
    holds, steps = for_each(values["syringes"]["holds"], count), for_each(values["syringes"]["steps"], count)
    done = readings(values)
    best = told_draws(values)
    if done and as_told(values, best.volumes, steps):
        done = best.volumes[:len(done)]
    elif done:
        best = whole_steps(batch.volumes, done, steps)
    times = fills(best.volumes, holds)
    lines = []
    for place, (volume, span) in enumerate(zip(best.volumes, spans(best.volumes))):
        text = mark_text(volume, steps[place], values)
        rough = "wanted " + told(batch.volumes[place], unit_of_marks(values))
        if times[place] > 1:
            last = volume - (times[place] - 1) * holds[place]
            rough = "{} × {} + {}".format(
                times[place] - 1, mark_text(holds[place], steps[place], values),
                mark_text(last, steps[place], values)) + "; " + rough
        lines.append(line("drawn_" + "abcde"[place], batch.names[place] + ", in its own syringe", volume, "m3", text,
                          rough=told_of(place, done, rough), part="abcde"[place], rank=rank_of(place, done, ANSWER),
                          span=span))
    lines.extend(outcome(values, best.volumes, batch.volumes, done))
    spread = syringe_spread(best.volumes, steps, times)

    def spread_of(volumes):
        return syringe_spread(volumes, steps, fills(volumes, holds))

    return lines + _trust(values, batch, best, steps, spread, spread_of, "these syringes")


def _by_graduated(values):
    batch, cup = ratio.mix(values), values["graduated"]
    steps = (cup["step"],) * len(batch.volumes)
    done = levels_of(readings(values))
    plan = cup_plan(values)
    if plan is None and not done:
        return [_too_coarse(values, batch, cup)]
    times, best = plan or (max(1, ceiling(sum(batch.volumes) / cup["holds"])), None)
    if done and told_in_cup(values):
        done = best.volumes[:len(done)]
    elif done:
        best = whole_levels([volume / times for volume in batch.volumes], done, cup["step"])
    lines, total = [], 0.0
    for place, (volume, span) in enumerate(zip(best.volumes, spans(best.volumes))):
        total += volume
        lines.append(line("level_" + "abcde"[place], batch.names[place] + ", up to the mark", total, "m3",
                          mark_text(total, cup["step"], values), part="abcde"[place], rank=rank_of(place, done, ANSWER),
                          span=span, rough=told_of(place, done, "wanted " + told(
                              batch.volumes[place] / times, cup["step_unit"]) + ", here " + told(
                                  volume, cup["step_unit"]))))
    lines.extend(outcome(values, best.volumes, batch.volumes, done))
    if times > 1:
        lines.append(line("pours", "Cup too small for all of it", times, "", str(times) + " equal pours", rank=WARN,
                          rough="the cup ends at " + told(cup["holds"], cup["step_unit"], toward=DOWN)
                          + "; the marks above are for one pour" + ("" if done else ", all of them are "
                          + told(times * sum(best.volumes), "mL", values["units"]))))
    if not done and times * sum(best.volumes) > FURTHEST * sum(batch.volumes) * (1 + 1e-9):
        lines.append(words("much_more", "Much more than wanted", "{} for {}: less of it ends on no marks. Take finer "
                           "marks or a scale.".format(told(times * sum(best.volumes), "mL", values["units"]),
                                                told(sum(batch.volumes), "mL", values["units"])), rank=WARN))
    spread = cup_spread(best.volumes, cup["step"])

    def spread_of(volumes):
        return cup_spread(volumes, cup["step"])

    return lines + _trust(values, batch, best, steps, spread, spread_of, "this graduated cup", cup["holds"])


def told_volume(values):
    """What comes together by the marks that are told [m3], in all pours; None where no marks are."""
    if values["way"] == "graduated":
        plan = cup_plan(values)
        return plan and plan[0] * sum(plan[1].volumes)
    return sum(told_draws(values).volumes)


def told_draws(values):
    """The marks of the syringes that are told while nothing is drawn: pumping.Strokes, its counts in marks."""
    volumes = ratio.mix(values).volumes
    steps = for_each(values["syringes"]["steps"], len(volumes))
    return once(values, "draws", lambda: on_marks(volumes, steps, tolerance(values)))


def cup_plan(values):
    """The marks of the graduated cup and in how many equal pours, or None: graduations.in_one_cup."""
    cup, most = values["graduated"], limit(values)
    return once(values, "cup_plan", lambda: in_one_cup(
        ratio.mix(values).volumes, cup["step"], cup["holds"], tolerance(values), most))


def as_told(values, told_marks, steps) -> bool:
    """Whether what was typed of each part is the mark that was told, as it is or in the figures it was told in: then it
    is that mark, and the rest stays as it was told too.

    told_marks: where each part ends on its tool [m3]; steps: from mark to mark there [m3]
    """
    return all([min(abs(typed - mark), abs(typed - _typed_back(mark, step, values))) <= 1e-6 * mark
                for typed, mark, step in zip(readings(values), told_marks, steps)])


def told_in_cup(values) -> bool:
    """Whether the levels that were typed are the marks of the graduated cup that are told."""
    plan, step = cup_plan(values), values["graduated"]["step"]
    if plan is None:
        return False
    volumes = plan[1].volumes
    levels = [sum(volumes[:place + 1]) for place in range(len(volumes))]
    return as_told(values, levels, (step,) * len(levels))


def _typed_back(mark, step, values):
    """A mark as it is read when somebody types the text that tells it: rounded to that text's figures [m3]."""
    return to_si(float(mark_text(mark, step, values).partition(" ")[0]), unit_of_marks(values))


def _too_coarse(values, batch, cup):
    """No mark is better than a mark that is not there, or one that puts the ratio off."""
    steps = (cup["step"],) * len(batch.volumes)
    found = smallest_strokes(batch.volumes, steps, tolerance(values), FINEST)
    text = "No marks of this cup come within {} of the ratio.".format(aim(limit(values)))
    if found:
        text += " With marks {} apart a cup must hold {} for it.".format(
            mark_text(cup["step"], cup["step"], values), told(sum(found.volumes), "mL", values["units"], UP))
    text += " Take a cup with finer marks, syringes or a scale."
    return words("too_coarse", "These marks are too coarse", text, rank=WARN)


def _trust(values, batch, best, steps, spread, spread_of, tool, holds=None):
    """The rounding to marks, the reading, and the smallest honest batch with this tool."""
    wanted, units = tolerance(values), values["units"]
    off = abs(best.error) > wanted + 1e-9
    lines = [line("marks_error", "Off ratio by whole marks", best.error, "", percent(best.error),
                  rank=WARN if off else BESIDE, rough=off_by(batch.names, best.volumes, batch.volumes)),
             line("spread", "Reading holds the ratio within", spread, "", within(spread), rough=READ_TO),
             line("measured", "Measured, one pour", sum(best.volumes), "m3", told(sum(best.volumes), "mL", units),
                  part="mix", rank=MORE, rough="wanted in all " + told(sum(batch.volumes), "mL", units))]
    for place, volume in enumerate(batch.volumes):
        if volume < steps[place] * (1 - 1e-9):
            here, apart = told(volume, unit_of_marks(values)), told(steps[place], unit_of_marks(values))
            lines.append(words("coarse_" + "abcde"[place], "Marks coarser than the part",
                               "{} is {}, the marks are {} apart. Take finer marks or a scale, or mix more.".format(
                                   batch.names[place], here, apart), rank=WARN, part="abcde"[place]))
    least = smallest(values, batch, steps, spread_of, holds)
    if least is None:
        return lines + [words("smallest", "Smallest honest batch", "none with " + tool, rank=ASK,
                              rough="for " + wanted_text(values) + ". Take finer marks or a scale.")]
    lines.append(line("smallest", "Smallest honest batch", least, "m3", told(least, "mL", units, UP),
                      rough="for {} by marks and by reading, each alone, with {}; rounded up".format(
                          wanted_text(values), tool)))
    if sum(best.volumes) < least * (1 - 1e-9):
        lines.append(words("too_small", "Too small for these marks", "Below {} they cannot hold the ratio. Mix more, "
                           "or take finer marks or a scale.".format(told(least, "mL", units, UP)), rank=WARN))
    return lines


def smallest(values, batch, steps, spread_of, holds=None):
    """The least batch that ends on marks and is read within the tolerance [m3]; None where not even a full cup is.

    holds: the most that one pour can be [m3], or None where it can be drawn in several goes
    """
    wanted, parts = tolerance(values), batch.volumes
    found = smallest_on_marks(parts, steps, wanted, smallest_read(parts, spread_of, wanted, sum(parts)))
    if found is None or (holds is not None and sum(found.volumes) > holds * (1 + 1e-9)):
        return None
    return sum(found.volumes)
