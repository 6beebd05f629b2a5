"""By stick: heights to mark on a stick that stands in a plain cup."""
from collections import namedtuple
from math import pi

from ..catalogue.measuring import MARK_ERROR, ROOM, TALLEST
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
from ..equations.rounding import ceiling
from ..forms.errors import InputError
from ..forms.types import Values
from ..mix import ratio
from ..mix.label_words import no_densities
from ..mix.ratio_error import Off, off_ratio, tolerance
from ..words.messages import message
from .measured_out import follow, levels_of, outcome, readings

# times: in how many equal pours; volumes: of each part, in one pour [m3]; marks: from the inside bottom [m]
# done: how many parts are poured; outcome: Off of a finished pour, or None; usable: what the cup takes [m3]
# spread: MARK_ERROR on each mark, independent: ratio off by [-]; worst: all the bad way [-]
# wanted: ratio error to aim for [-]; wide: whether the spread is more; costs: Off of MARK_ERROR on one alone
# least: smallest batch in this cup [m3], None where there is none; narrower: Narrower, only where `wide`
# narrows: whether the cup is narrower at the rim than at the bottom
StickResult = namedtuple("StickResult", (
    "times", "volumes", "marks", "done", "outcome", "usable", "spread", "worst", "wanted", "wide", "costs", "least",
    "narrower", "narrows"))
# width: of the widest straight cup that holds the ratio, inside [m]; height: of this batch in it [m]
# stirs: whether it is wide enough to stir
Narrower = namedtuple("Narrower", ("width", "height", "stirs"))
# volumes [m3], marks [m]: of each part, one poured on the other, in one pour
Levels = namedtuple("Levels", ("volumes", "marks"))
# height: how high the batch stands [m], None where that leaves no room to stir; times: then, in how many equal pours
# usable: what the cup takes [m3]
RoomResult = namedtuple("RoomResult", ("height", "times", "usable"))


def check(values: Values, batch: ratio.Mix) -> None:
    """Volumes must be known."""
    if not batch.volumes:
        raise InputError("system.densities", message(
            "stick-densities", why=no_densities(values["system"], "weight")))


def usable_volume(cup: Values) -> float:
    """What a cup takes with room left to stir [m3]. cup: values of records.CUP

    >>> round(usable_volume({"bottom": 0.05, "top": 0.05, "height": 0.1}) * 1e6, 2)
    166.9
    """
    return frustum_volume(ROOM * cup["height"], cup["bottom"] / 2, taper_of(cup))


def pours(volumes: tuple[float, ...], cup: Values) -> int:
    """In how many equal pours the parts fit the cup with room to stir."""
    return max(1, ceiling(sum(volumes) / usable_volume(cup)))


def told_volume(values: Values) -> float:
    """What comes together by the marks that are told [m3], in all pours: as wanted, a stick has no marks of its own."""
    return ratio.mix(values).volume


def reckon(values: Values) -> StickResult:
    """The marks from the bottom, and what a millimetre on each of them costs."""
    batch, cup, wanted = ratio.mix(values), values["cup"], tolerance(values)
    times = pours(batch.volumes, cup)
    planned = [volume / times for volume in batch.volumes]
    done = levels_of(readings(values), cup)
    volumes = follow(planned, done)
    marks, spread = stick_marks(volumes, cup), stick_spread(volumes, cup, MARK_ERROR)
    return StickResult(
        times=times, volumes=volumes, marks=marks, done=len(done),
        outcome=outcome(values, volumes, planned, len(done)), usable=usable_volume(cup), spread=spread,
        worst=stick_worst(volumes, cup, MARK_ERROR), wanted=wanted, wide=spread > wanted,
        costs=_costs(volumes, marks, cup, wanted),
        least=smallest_stick_batch(batch.volumes, cup, MARK_ERROR, wanted),
        narrower=_narrower(volumes, wanted) if spread > wanted else None, narrows=cup["top"] < cup["bottom"])


def _costs(volumes: tuple[float, ...], marks: tuple[float, ...], cup: Values, wanted: float) -> tuple[Off, ...]:
    """What MARK_ERROR on one mark alone does, of each mark."""
    found = []
    for place in range(len(marks)):
        moved = list(marks)
        moved[place] += MARK_ERROR
        levels = [frustum_volume(mark, cup["bottom"] / 2, taper_of(cup)) for mark in moved]
        found.append(off_ratio([after - before for before, after in zip([0.0] + levels, levels)], volumes, wanted))
    return tuple(found)


def _narrower(volumes: tuple[float, ...], wanted: float) -> Narrower:
    width = widest_cup(volumes, MARK_ERROR, wanted)
    height = sum(volumes) / (pi * width * width / 4)
    return Narrower(width, height, height <= TALLEST * width)


def room(values: Values) -> "RoomResult | None":
    """Whether the batch fits a cup that was chosen, for the ways that do not need it; None where no volume is known."""
    batch, cup = ratio.mix(values), values["cup"]
    if batch.volume is None:
        return None
    usable = usable_volume(cup)
    height = None
    if batch.volume <= usable * (1 + 1e-9):
        height = fill_height(batch.volume, cup["bottom"] / 2, taper_of(cup))
    return RoomResult(height, pours(batch.volumes, cup), usable)


def levels(values: Values) -> "Levels | None":
    """The level after each part, as planned; None where no volumes are known."""
    batch, cup = ratio.mix(values), values["cup"]
    if not batch.volumes:
        return None
    times = pours(batch.volumes, cup)
    volumes = tuple([volume / times for volume in batch.volumes])
    return Levels(volumes, stick_marks(volumes, cup))
