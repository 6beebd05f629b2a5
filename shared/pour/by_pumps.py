"""By pumps: whole strokes of each pump, what they cost in ratio, and the top-up."""
from ..equations.pumping import MOST_FURTHER, best_strokes, smallest_strokes, top_up
from ..forms.errors import InputError
from ..forms.memo import once
from ..mix import ratio
from ..mix.ratio_error import aim, off_by, percent, tolerance
from ..words.lines import ANSWER, ASK, BESIDE, MORE, WARN, line, spans, words
from ..words.numbers import UP
from ..words.units import told
from .by_scale import to_add
from .measured_out import outcome, rank_of, readings, told_of, whole_steps


def check(values, batch):
    """Volumes must be known, and there must be a pump for each part."""
    if not batch.volumes:
        raise InputError("system.densities", "Densities: " + ratio.no_densities(values["system"], "weight")
                         + " Pumps need them.")
    strokes = ratio.strokes_volumes(values["pumps"], values["system"]["densities"])
    if len(strokes) != len(batch.names):
        raise InputError("pumps.strokes", "Pumps: the label has {} parts, here are {} pumps".format(
            len(batch.names), len(strokes)))


def told_strokes(values):
    """The strokes that are told while nothing is pumped: pumping.Strokes."""
    strokes = ratio.strokes_volumes(values["pumps"], ratio.basis(values["system"]).densities)
    return once(values, "strokes", lambda: best_strokes(ratio.mix(values).volumes, strokes, tolerance(values)))


def told_volume(values) -> float:
    """What comes together by the strokes that are told [m3]: at least what is wanted."""
    return sum(told_strokes(values).volumes)


def told_mass(values):
    """What comes together by the strokes that are told [kg], or None where no densities are known."""
    densities = ratio.basis(values["system"]).densities
    return mass_of(told_strokes(values).volumes, densities) if densities else None


def mass_of(volumes, densities) -> float:
    """Mass of what was measured part by part [kg]: m = sum(V_i rho_i). Strokes that were weighed come out as weighed,
    whatever densities their volumes were told with.

    volumes: V_i [m3]; densities: rho_i [kg/m3]
    >>> round(mass_of((115e-6, 33e-6), (1150.0, 980.0)) * 1000, 2)
    164.59
    """
    return sum([volume * density for volume, density in zip(volumes, densities)])


def answer(values):
    """The strokes of each pump, then what whole strokes cost."""
    batch, units = ratio.mix(values), values["units"]
    found = ratio.basis(values["system"])
    strokes = ratio.strokes_volumes(values["pumps"], found.densities)
    wanted = tolerance(values)
    done = [count * each for count, each in zip(readings(values), strokes)]
    best = whole_steps(batch.volumes, done, strokes) if done else told_strokes(values)
    lines = []
    for place, (count, span) in enumerate(zip(best.counts, spans(best.volumes))):
        lines.append(line("strokes_" + "abcde"[place], batch.names[place], count, "",
                          str(count) + (" stroke" if count == 1 else " strokes"),
                          rough=told_of(place, done, told(best.volumes[place], "mL", units)),
                          part="abcde"[place], rank=rank_of(place, done, ANSWER), span=span))
    volume = sum(best.volumes)
    lines.append(line("pumped", "Pumped, in all", volume, "m3", _both(best.volumes, found.densities, units), part="mix",
                      rough="wanted " + told(batch.volume, "mL", units)))
    off = abs(best.error) > wanted + 1e-9
    which = off_by(batch.names, best.volumes, batch.volumes)
    lines.append(line("strokes_error", "Off ratio by whole strokes", best.error, "", percent(best.error),
                      rank=WARN if off else BESIDE,
                      rough=which + ", more than " + aim(wanted) + ": top up as below, or mix another amount"
                      if off else which + "; full, even strokes taken for granted"))
    lines.extend(outcome(values, best.volumes, batch.volumes, done))
    lines.extend(_top_up(values, batch, best, found))
    least = smallest_strokes(found.volume_parts, strokes, wanted)
    if least is None:
        lines.append(words("smallest", "Smallest honest batch", "none with these pumps", rank=ASK,
                           rough="up to {} strokes no whole numbers come within ".format(MOST_FURTHER) + aim(wanted)
                                 + ". Were the strokes measured? Top up on a scale, or weigh."))
    else:
        least_volume = sum(least.volumes)
        lines.append(line("smallest", "Smallest honest batch", least_volume, "m3",
                          " : ".join([str(count) for count in least.counts]) + " strokes, "
                          + told(least_volume, "mL", units, UP), rank=MORE,
                          rough="for " + aim(wanted) + " with these pumps, by whole, even strokes alone; rounded up"))
    return lines


def _both(volumes, densities, units):
    text = told(sum(volumes), "mL", units)
    return text + " · " + told(mass_of(volumes, densities), "g", units) if densities else text


def _top_up(values, batch, best, found):
    lines = []
    for place, lack in enumerate(top_up(best.volumes, found.volume_parts)):
        if lack <= 1e-9 * sum(best.volumes):
            continue
        text = told(lack, "mL", values["units"])
        if found.densities:
            text = to_add(lack * found.densities[place], values, where=" on the scale")
        lines.append(line("top_up_" + "abcde"[place], "Exactly in ratio: add " + batch.names[place], lack, "m3", text,
                          part="abcde"[place], rough="after the strokes above"))
    return lines
