"""By stick: heights to mark on a stick that stands in a plain cup, and the picture of that cup."""
from ..catalogue.measuring import MARK_ERROR, ROOM, TALLEST
from ..drawing.shapes import area, figure, note, path
from ..equations.cups import (
    fill_height,
    frustum_volume,
    smallest_stick_batch,
    stick_marks,
    stick_spread,
    stick_worst,
    taper_of,
    widest_cup,
)
from ..equations.weighing import ratio_error
from ..forms.errors import InputError
from ..mix import ratio
from ..mix.ratio_error import off_by, percent, tolerance, wanted_text, within
from ..things.records import CUP
from ..words.lines import ANSWER, ASK, BESIDE, MORE, WARN, line, spans, words
from ..words.numbers import DOWN, UP, ceiling
from ..words.units import US, braces, told
from .measured_out import follow, levels_of, outcome, rank_of, readings, told_of

EACH_MARK = braces("mm", MARK_ERROR) + " on each mark"
WIDEST, HIGHEST, NOTE = 220.0, 260.0, 16.0  # of the drawing, and the height of a line of words in it


def check(values, batch):
    """Volumes must be known."""
    if not batch.volumes:
        raise InputError("system.densities", "Densities: " + ratio.no_densities(values["system"], "weight")
                         + " A stick needs them.")


def usable_volume(cup) -> float:
    """What a cup takes with room left to stir [m3]. cup: values of records.CUP

    >>> round(usable_volume({"bottom": 0.05, "top": 0.05, "height": 0.1}) * 1e6, 2)
    166.9
    """
    return frustum_volume(ROOM * cup["height"], cup["bottom"] / 2, taper_of(cup))


def pours(volumes, cup) -> int:
    """In how many equal pours the parts fit the cup with room to stir."""
    return max(1, ceiling(sum(volumes) / usable_volume(cup)))


def height_text(height, units):
    """A height as a ruler shows it: to half a millimetre, or to a hundredth of an inch."""
    if units == US:
        return told(height, "mm", units, places=2)
    return told(height, "mm", units, places=1)


def told_volume(values) -> float:
    """What comes together by the marks that are told [m3], in all pours: as wanted, a stick has no marks of its own."""
    return ratio.mix(values).volume


def answer(values):
    """The marks from the bottom, then what a millimetre on each of them costs."""
    batch, cup, units = ratio.mix(values), values["cup"], values["units"]
    times = pours(batch.volumes, cup)
    planned = [volume / times for volume in batch.volumes]
    done = levels_of(readings(values), cup)
    volumes = follow(planned, done)
    marks = stick_marks(volumes, cup)
    lines = outcome(values, volumes, planned, done)
    for place, (mark, span) in enumerate(zip(marks, spans(volumes))):
        lines.append(line("mark_" + "abcde"[place], batch.names[place] + ", up to", mark, "m",
                          height_text(mark, units), part="abcde"[place], rank=rank_of(place, done, ANSWER), span=span,
                          rough=told_of(place, done, "" if place else
                                        "from the inside bottom, the stick upright in the middle")))
    if times > 1:
        lines.append(_divided(values, times, cup))
    spread, wanted = stick_spread(volumes, cup, MARK_ERROR), tolerance(values)
    lines.append(line("spread", EACH_MARK + ": ratio off by", spread, "", within(spread),
                      rank=BESIDE if spread <= wanted else WARN,
                      rough="usual, the marks off independently of each other; at worst {}; {} is wanted".format(
                          within(stick_worst(volumes, cup, MARK_ERROR)), wanted_text(values))))
    lines.extend(_each_mark(batch, volumes, marks, cup))
    least = smallest_stick_batch(batch.volumes, cup, MARK_ERROR, wanted)
    if least is None:
        lines.append(words("smallest", "Smallest honest batch", "none in this cup", rank=ASK,
                           rough="even full, " + EACH_MARK + " costs more than " + wanted_text(values)))
    else:
        lines.append(line("smallest", "Smallest honest batch", least, "m3", told(least, "mL", units, UP),
                          rough="for {} in this cup, by the usual error; rounded up".format(wanted_text(values))))
    if spread > wanted:
        lines.append(_narrower(volumes, wanted, units))
    lines.extend(_questions(cup))
    lines.extend(_mark(values))
    return lines


def _each_mark(batch, volumes, marks, cup):
    """What `MARK_ERROR` on one mark alone does, folded away."""
    lines = []
    for place in range(len(marks)):
        moved = list(marks)
        moved[place] += MARK_ERROR
        levels = [frustum_volume(mark, cup["bottom"] / 2, taper_of(cup)) for mark in moved]
        poured = [after - before for before, after in zip([0.0] + levels, levels)]
        worst = ratio_error(poured, volumes)
        label = batch.names[place] + " " + braces("mm", MARK_ERROR) + " too high"
        lines.append(line("mark_cost_" + "abcde"[place], label,
                          worst, "", percent(worst), part="abcde"[place], rank=MORE,
                          rough="of the ratio; " + off_by(batch.names, poured, volumes)))
    return lines


def _narrower(volumes, wanted, units):
    width = widest_cup(volumes, MARK_ERROR, wanted)
    height = sum(volumes) / (3.141592653589793 * width * width / 4)
    if height > TALLEST * width:
        text = "No cup is narrow enough and still wide enough to stir: weigh it, or draw it up in syringes."
    else:
        text = "A straight cup at most {} wide inside holds the ratio; it would stand {} high. Or weigh it.".format(
            told(width, "mm", units, DOWN, places=0 if units != US else 1), told(height, "mm", units, UP, places=0
                                                                         if units != US else 1))
    return line("narrow", "A narrower cup", width, "m", text, rank=ASK, rough="for " + EACH_MARK)


def _questions(cup):
    if cup["top"] >= cup["bottom"]:
        return []
    return [words("narrows", "Does it narrow upwards?", "The rim is narrower than the bottom. If the two were swapped, "
                  "swap them back. If it is so, hold the stick upright in the middle, not along the wall.", rank=ASK)]


def _divided(values, times, cup):
    return line("pours", "Cup too small for all of it", times, "", str(times) + " equal pours", rank=WARN,
                rough="it takes {} with room to stir; the marks are for one pour, or take a larger cup".format(
                    told(usable_volume(cup), "mL", values["units"], DOWN)))


def _mark(values):
    """Where a cup's size is only remembered, it says so."""
    if not CUP.from_memory(values["cup"], "bottom", "top", "height"):
        return []
    return [words("cup_from_memory", "Is this your cup?", "Its size is a common one, from memory. Measure yours "
                  "inside: bottom, rim, height.", rank=ASK)]


def room(values):
    """Whether the batch fits a cup that was chosen, for the ways that do not need it."""
    batch, cup = ratio.mix(values), values["cup"]
    if batch.volume is None:
        return []
    height = level_in(batch.volume, cup)
    if height is not None:
        return [line("stands", "Stands in the cup", height, "m", height_text(height, values["units"]), rank=MORE,
                     rough="of {}; filler comes on top".format(height_text(cup["height"], values["units"])))]
    times = pours(batch.volumes, cup)
    return [line("pours", "Cup too small for all of it", times, "", str(times) + " equal pours", rank=WARN,
                 rough="it takes {} with room to stir; or take a larger cup".format(
                     told(usable_volume(cup), "mL", values["units"], DOWN)))]


def level_in(volume, cup):
    """How high a volume stands [m], or None where it leaves no room to stir."""
    if volume > usable_volume(cup) * (1 + 1e-9):
        return None
    return fill_height(volume, cup["bottom"] / 2, taper_of(cup))


def figures(values):
    """The cup from the side, to scale, with the level after each part."""
    batch, cup = ratio.mix(values), values["cup"]
    if not batch.volumes:
        return []
    times = pours(batch.volumes, cup)
    return [cup_figure([volume / times for volume in batch.volumes], batch.names, cup, values["units"])]


def cup_figure(volumes, names, cup, units):
    """The cup and its levels in one scale for both directions, drawn from the numbers of the lines."""
    marks = stick_marks(volumes, cup)
    side = max(cup["bottom"], cup["top"])
    scale = min(WIDEST / side, HIGHEST / cup["height"])
    height, centre = cup["height"] * scale, side * scale / 2 + 2
    bottom, taper = cup["bottom"] / 2 * scale, taper_of(cup)
    ups, up = [], 0.0  # notes of marks that lie close together stand apart, each at the end of its own line
    for mark in marks:
        up = max(up + NOTE, mark * scale)
        ups.append(up)
    rim = 2 + max(0.0, up + NOTE / 2 - height)
    edge = rim + height

    def wall(level):
        return bottom + taper * level

    shapes, below, told_marks = [], 0.0, []
    for place, mark in enumerate(marks):
        level = mark * scale
        shapes.append(area("abcde"[place], (
            (centre - wall(below), edge - below), (centre + wall(below), edge - below),
            (centre + wall(level), edge - level), (centre - wall(level), edge - level))))
        note_at = edge - ups[place]
        shapes.append(path("level", ((centre - wall(level), edge - level), (side * scale + 8, edge - level),
                                     (side * scale + 18, note_at))))
        shapes.append(note("level", side * scale + 22, note_at + 4, height_text(mark, units), anchor="start"))
        told_marks.append(names[place] + " up to " + height_text(mark, units))
        below = level
    shapes.append(path("cup", ((centre - wall(height), rim), (centre - wall(0.0), edge), (centre + wall(0.0), edge),
                               (centre + wall(height), rim))))
    return figure("cup", "The cup from the side, to scale", side * scale + 90, edge + 2, shapes,
                  "A cup {} high inside: ".format(height_text(cup["height"], units)) + ", ".join(told_marks) + ".")
