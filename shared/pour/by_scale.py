"""By scale: the running readings on one scale, corrected by what it really showed."""
from collections import namedtuple

from ..equations.rounding import to_step
from ..equations.weighing import COVERAGE, corrected, running, smallest_batch, worst_uncertainty
from ..forms.errors import InputError
from ..forms.memo import once
from ..forms.types import Values
from ..mix import ratio
from ..mix.label_words import no_densities
from ..mix.ratio_doubt import WEIGHT, combined, doubt, step_of
from ..mix.ratio_error import Off, off_ratio, tolerance
from ..words.messages import message

# masses: of each part, in ratio with what was poured [kg]; readings: what shows after each part [kg], from zero where
# the scale is set to zero before each; planned: what it would show had nothing been typed, unrounded [kg]
# done: how many parts are poured; rezeroed: whether the scale is set to zero before each part
Display = namedtuple("Display", ("masses", "readings", "planned", "done", "rezeroed"))

# display: Display; over: whether the mix is more than the scale weighs
# poured: Off of the parts poured so far, None before the second and while more may still mend a small error
# rounding: Off that the scale's steps alone bring, None where `poured` says it or a part does not show
# spread: how far the ratio may be off by reading and by densities, k = 2 [-], None where a part does not show
# least: smallest batch whose ratio the scale holds [kg]; most: the ratio error to aim for [-]
# too_small: whether this batch is smaller
ScaleResult = namedtuple("ScaleResult", (
    "display", "over", "poured", "rounding", "spread", "least", "most", "too_small"))


def is_rezeroed(values: Values) -> bool:
    """Whether the scale is set to zero before each part."""
    return values.get("zeroing") == "each"


def actual_readings(values: Values) -> tuple[float, ...]:
    """Running readings that were typed [kg], in the order of pouring, as far as they go without a gap."""
    found: list[float] = []
    for row in values.get("readings") or []:
        if row is None or row["shown"] is None:
            break
        found.append(row["shown"])
    if is_rezeroed(values):
        total, cumulated = 0.0, []
        for reading in found:
            total += reading
            cumulated.append(total)
        return tuple(cumulated)
    return tuple(found)


def check(values: Values, batch: ratio.Mix) -> None:
    """Weights must be known, and the readings must be able to follow each other."""
    if not batch.masses:
        raise InputError("system.densities", message(
            "scale-densities", why=no_densities(values["system"], "volume")))
    _check_readings(values, len(batch.masses))


def _check_readings(values: Values, count: int) -> None:
    rows, before = values["readings"] or [], 0.0
    for place, row in enumerate(rows):
        field = "readings.{}.shown".format(place)
        if row is None or row["shown"] is None:
            if any([later is not None and later["shown"] is not None for later in rows[place:]]):
                raise InputError(field, "scale-order")
            return
        if place >= count:
            raise InputError(field, message("measure-parts", count=count))
        if values["zeroing"] == "once" and row["shown"] <= before:
            raise InputError(field, "scale-grows")
        before = row["shown"]


def on_display(values: Values) -> Display:
    """What the scale must show after each part, once for one question."""
    return once(values, "on_display", lambda: _on_display(values))


def _on_display(values: Values) -> Display:
    batch, step = ratio.mix(values), values["scale"]["step"]
    actual, rezeroed = actual_readings(values), is_rezeroed(values)
    cumulated = running(batch.masses, step, actual, rezeroed)
    readings = tuple([to_step(reading, step) for reading in (_parts_of(cumulated) if rezeroed else cumulated)])
    planned = batch.masses if rezeroed else tuple([sum(batch.masses[:place + 1]) for place in range(len(batch.masses))])
    return Display(poured_masses(values), readings, planned, len(actual), rezeroed)


def reckon(values: Values) -> ScaleResult:
    """The readings in the order of pouring, and how far they can be trusted."""
    batch, step, display, most = ratio.mix(values), step_of(values["scale"]), on_display(values), tolerance(values)
    whole, ends = sum(display.masses), values["scale"]["most"]
    poured = _poured(display, batch, most)
    shows = display.readings if display.rezeroed else _parts_of(display.readings)
    rounding = spread = None
    if min(shows) > 0:
        rounding = None if poured else off_ratio(shows, batch.masses, most)
        spread = combined(COVERAGE * worst_uncertainty(display.masses, step, display.rezeroed),
                          doubt(values["system"], WEIGHT))
    least = smallest_batch(batch.masses, step, most, display.rezeroed)
    return ScaleResult(display, bool(ends) and whole > ends, poured, rounding, spread, least, most,
                       whole < least * (1 - 1e-9))


def poured_masses(values: Values) -> tuple[float, ...]:
    """The parts [kg] that all else is reckoned with: as planned, or as they follow from what the scale really showed.

    What was typed just as it was told changes nothing that follows, until all of it is poured.
    """
    masses, actual = ratio.mix(values).masses, actual_readings(values)
    if len(actual) < len(masses):
        step = values["scale"]["step"]
        planned = running(masses, step, (), is_rezeroed(values))
        if all([abs(reading - one) <= step / 1000 for reading, one in zip(actual, planned)]):
            return masses
    return corrected(masses, actual)


def _parts_of(readings: tuple[float, ...]) -> tuple[float, ...]:
    """Running readings as what each part adds to them."""
    return tuple([after - before for before, after in zip((0.0,) + tuple(readings), readings)])


def _poured(display: Display, batch: ratio.Mix, most: float) -> "Off | None":
    """How far off the parts are that are poured; with some still to come only where that is too far to go on."""
    done = display.done
    if done < 2:
        return None
    off = off_ratio(display.masses[:done], batch.masses[:done], most)
    return off if done == len(display.masses) or off.off else None
