"""By scale: the running readings on one scale, corrected by what it really showed."""
from collections import namedtuple

from ..equations.rounding import to_step
from ..equations.top_up import most_short, top_up, with_additions
from ..equations.weighing import COVERAGE, corrected, running, smallest_batch, worst_uncertainty
from ..forms.errors import InputError
from ..forms.memo import once
from ..forms.types import Values
from ..mix import ratio
from ..mix.label_words import no_densities
from ..mix.ratio_doubt import WEIGHT, combined, doubt, doubted, step_of
from ..mix.ratio_error import Off, off_ratio, tolerance
from ..words.messages import message

# masses: of each part, in ratio with what was poured [kg]; readings: what shows after each part [kg], from zero where
# the scale is set to zero before each; planned: what it would show had nothing been typed, unrounded [kg]
# done: how many readings were typed, also of what was added to mend the ratio; added: those [kg], as they showed
# rezeroed: whether the scale is set to zero before each part
Display = namedtuple("Display", ("masses", "readings", "planned", "done", "added", "rezeroed"))

# display: Display; over: whether the mix is more than the scale weighs
# poured: Off of the parts poured so far, None before the second and while more may still mend a small error
# rounding: Off that the scale's steps alone bring, None where `poured` says it or a part does not show
# spread: how far the ratio may be off by reading and by densities, k = 2 [-], None where a part does not show
# least: smallest batch whose ratio the scale holds [kg]; most: the ratio error to aim for [-]
# too_small: whether this batch is smaller; fix: Fix, None where all is poured in ratio or more parts are to come
ScaleResult = namedtuple("ScaleResult", (
    "display", "over", "poured", "rounding", "spread", "least", "most", "too_small", "fix"))
# what mends a pour that is off: place of the part that lacks most, mass of it to add, what the scale then shows [kg]
Fix = namedtuple("Fix", ("place", "mass", "shows"))


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
        if place >= count and not _is_off(values, actual_readings(values)[:place]):  # then it is what was added
            raise InputError(field, message("measure-parts", count=count))
        if values["zeroing"] == "once" and row["shown"] <= before:
            raise InputError(field, "scale-grows")
        before = row["shown"]


def _is_off(values: Values, actual: tuple[float, ...]) -> bool:
    """Whether all parts are poured and off ratio. actual: readings [kg], cumulated"""
    masses = ratio.mix(values).masses
    return off_ratio(_with_added(masses, actual), masses, tolerance(values)).off


def _with_added(masses: tuple[float, ...], actual: tuple[float, ...]) -> tuple[float, ...]:
    """The parts as poured [kg], with all that was added since. masses: planned; actual: readings, cumulated [kg]"""
    count = len(masses)
    return with_additions(corrected(masses, actual[:count]), masses, _parts_of(actual)[count:])


def on_display(values: Values) -> Display:
    """What the scale must show after each part, once for one question."""
    return once(values, "on_display", lambda: _on_display(values))


def _on_display(values: Values) -> Display:
    batch, step = ratio.mix(values), values["scale"]["step"]
    actual, rezeroed = actual_readings(values), is_rezeroed(values)
    count = len(batch.masses)
    cumulated = running(batch.masses, step, actual[:count], rezeroed)
    readings = tuple([to_step(reading, step) for reading in (_parts_of(cumulated) if rezeroed else cumulated)])
    planned = batch.masses if rezeroed else tuple([sum(batch.masses[:place + 1]) for place in range(count)])
    added = (_parts_of(actual) if rezeroed else actual)[count:]
    return Display(poured_masses(values), readings, planned, len(actual), added, rezeroed)


def reckon(values: Values) -> ScaleResult:
    """The readings in the order of pouring, and how far they can be trusted."""
    batch, scale, display, most = ratio.mix(values), values["scale"], on_display(values), tolerance(values)
    whole, ends = sum(display.masses), scale["most"]
    poured = _poured(display, batch, most)
    shows = display.readings if display.rezeroed else _parts_of(display.readings)
    rounding = spread = None
    if min(shows) > 0:
        rounding = None if poured else off_ratio(shows, batch.masses, most)
        spread = combined(COVERAGE * worst_uncertainty(display.masses, doubted(scale), display.rezeroed),
                          doubt(values["system"], WEIGHT))
    least = smallest_batch(batch.masses, step_of(scale), most, display.rezeroed)
    return ScaleResult(display, bool(ends) and whole > ends, poured, rounding, spread, least, most,
                       whole < least * (1 - 1e-9), _fix(display, poured, batch, values))


def _fix(display: Display, poured: "Off | None", batch: ratio.Mix, values: Values) -> "Fix | None":
    """What to add next, on the scale's steps, at least one of them."""
    if not (poured and poured.off and display.done >= len(batch.masses)):
        return None
    place, step = most_short(display.masses, batch.masses), values["scale"]["step"]
    lack = top_up(display.masses, batch.masses)[place]
    last = display.added[-1] if display.added else display.readings[-1]
    before = 0.0 if display.rezeroed else last
    shows = max(to_step(before + lack, step), to_step(before, step) + step)
    return Fix(place, shows - before, shows)


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
    return _with_added(masses, actual)


def _parts_of(readings: tuple[float, ...]) -> tuple[float, ...]:
    """Running readings as what each part adds to them."""
    return tuple([after - before for before, after in zip((0.0,) + tuple(readings), readings)])


def _poured(display: Display, batch: ratio.Mix, most: float) -> "Off | None":
    """How far off the parts are that are poured; with some still to come only where that is too far to go on."""
    done = display.done
    if done < 2:
        return None
    off = off_ratio(display.masses[:done], batch.masses[:done], most)
    return off if done >= len(display.masses) or off.off else None
