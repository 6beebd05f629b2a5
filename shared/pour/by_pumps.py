"""By pumps: whole strokes of each pump, what they cost in ratio, and the top-up."""
from collections import namedtuple

from ..equations.pumping import MOST_FURTHER, Strokes, best_strokes, smallest_strokes
from ..equations.top_up import further_strokes, top_up
from ..forms.errors import InputError
from ..forms.memo import once
from ..forms.types import Values
from ..mix import ratio
from ..mix.label_words import no_densities
from ..mix.ratio_error import SLACK, off_ratio, tolerance
from ..words.messages import message
from .measured_out import outcome, readings, whole_steps

# strokes: pumping.Strokes, of each part; done: how many parts are pumped; wanted: volume of the mix [m3]
# more: strokes that each part pumped still takes on top, since no whole strokes of the rest stand in ratio with it [-]
# mass: of all strokes [kg], None where no densities are known; off: Off by whole strokes
# outcome: Off of a finished pour, or None; top_up: TopUp of each part, or None where it lacks nothing
# least: the fewest strokes within the ratio error to aim for, None where no whole numbers up to `tried` are
PumpsResult = namedtuple("PumpsResult", (
    "strokes", "done", "more", "wanted", "mass", "off", "outcome", "top_up", "least", "tried"))
# volume [m3], mass [kg] or None where no densities are known: what a part still lacks
TopUp = namedtuple("TopUp", ("volume", "mass"))


def check(values: Values, batch: ratio.Mix) -> None:
    """Volumes must be known, and there must be a pump for each part."""
    if not batch.volumes:
        raise InputError("system.densities", message(
            "pumps-densities", why=no_densities(values["system"], "weight")))
    strokes, count = ratio.strokes_volumes(values["pumps"], values["system"]["densities"]), len(batch.volumes)
    if len(strokes) != count:
        raise InputError("pumps.strokes", message("pumps-for-each", parts=count, pumps=len(strokes)))


def told_strokes(values: Values) -> Strokes:
    """The strokes that are told while nothing is pumped."""
    strokes = ratio.strokes_volumes(values["pumps"], ratio.basis(values["system"]).densities)
    return once(values, "strokes", lambda: best_strokes(ratio.mix(values).volumes, strokes, tolerance(values)))


def told_volume(values: Values) -> float:
    """What comes together by the strokes that are told [m3]: at least what is wanted."""
    return sum(told_strokes(values).volumes)


def told_mass(values: Values) -> "float | None":
    """What comes together by the strokes that are told [kg], or None where no densities are known."""
    densities = ratio.basis(values["system"]).densities
    return mass_of(told_strokes(values).volumes, densities) if densities else None


def mass_of(volumes: tuple[float, ...], densities: tuple[float, ...]) -> float:
    """Mass of what was measured part by part [kg]: m = sum(V_i rho_i). Strokes that were weighed come out as weighed,
    whatever densities their volumes were told with.

    volumes: V_i [m3]; densities: rho_i [kg/m3]
    >>> round(mass_of((115e-6, 33e-6), (1150.0, 980.0)) * 1000, 2)
    164.59
    """
    return sum([volume * density for volume, density in zip(volumes, densities)])


def reckon(values: Values) -> PumpsResult:
    """The strokes of each pump, what whole strokes cost, and what tops them up."""
    batch, found, most = ratio.mix(values), ratio.basis(values["system"]), tolerance(values)
    strokes = ratio.strokes_volumes(values["pumps"], found.densities)
    counted = readings(values)
    done = [count * each for count, each in zip(counted, strokes)]
    best = whole_steps(batch.volumes, done, strokes) if done else told_strokes(values)
    finished = outcome(values, best.volumes, batch.volumes, len(done))
    more, planned = (0,) * len(done), best
    if done and abs(best.error) > most + SLACK:
        further = further_strokes(counted, batch.volumes, strokes, most)
        if further:
            more = tuple([int(after - before + 0.5) for before, after in zip(counted, further.counts)])
            planned, best = further, Strokes(best.counts[:len(done)] + further.counts[len(done):],
                                             best.volumes[:len(done)] + further.volumes[len(done):], further.error)
    return PumpsResult(
        strokes=best, done=len(done), more=more, wanted=batch.volume,
        mass=mass_of(best.volumes, found.densities) if found.densities else None,
        off=off_ratio(planned.volumes, batch.volumes, most, planned.error),
        outcome=finished, top_up=_top_ups(planned, found),
        least=smallest_strokes(found.volume_parts, strokes, most), tried=MOST_FURTHER)


def _top_ups(best: Strokes, found: ratio.Basis) -> tuple["TopUp | None", ...]:
    rows = []
    for place, lack in enumerate(top_up(best.volumes, found.volume_parts)):
        mass = lack * found.densities[place] if found.densities else None
        rows.append(None if lack <= 1e-9 * sum(best.volumes) else TopUp(lack, mass))
    return tuple(rows)
