"""Trial: a small cup and a thermometer to the rate and the loss of heat that every minute of a system rests on."""
from collections import namedtuple
from math import exp, sqrt

from ..catalogue.pots import SIZES
from ..catalogue.starts import BATCH
from ..catalogue.trials import (
    ANOTHER,
    HEAT_SPREAD,
    LEAST_MASS,
    LOSS_SPREAD,
    MASS,
    MOST_MASS,
    NINETY,
    NOT_TOLD,
    OFF_END,
    OFF_MODEL,
    STRANGE,
    SWINGS,
    UNSURE,
)
from ..equations.fit_pot import Bound, PotFit, Seen, doubt, fitted, time_and_doubt
from ..equations.rounding import to_step
from ..forms.errors import InputError
from ..forms.inputs import Group, Number, Pick
from ..forms.memo import once
from ..forms.remembered import start
from ..forms.types import Found, Said, Values
from ..things.own_timings import in_sun
from ..things.records import SYSTEM
from ..words.messages import message
from . import heat_drawing, trial_lines
from .heat import check_label
from .heat_model import is_trial, mixed_by_label, share_filled, start_of, trials_of
from .pot_heat import AIR_VALUES, USUAL, middle_share, pot
from .usable import batch, known, usable

SEEN_FOLD = "trial-seen"
SHORTEST, LONGEST = 60.0, 172800.0  # s, as an own timing is asked
STRINGY, HOTTEST, GOOD, GONE = "strings_at", "hottest_at", "spreads_at", "stiff_at"
# a moment, its label, another that comes before it, and what is said where it did not
TOO_SOON = ((STRINGY, "trial-strings", GOOD, "trial-too-soon.good"),
            (HOTTEST, "trial-hottest", GOOD, "trial-too-soon.good"),
            (HOTTEST, "trial-hottest", STRINGY, "trial-too-soon.strings"),
            (GONE, "trial-stiff", GOOD, "trial-too-soon.good"))


def _seen(name: str, label: str, text: str) -> Number:
    return Number(name, label, unit="min", low=1, high=600, optional=True, fold=SEEN_FOLD, help=text)


SYSTEM_INPUT = Pick("system", "heat-system", SYSTEM, default="3-1")
INPUTS = (
    SYSTEM_INPUT,
    Number("mass", "trial-mass", unit="g", low=start(LEAST_MASS, "g"), high=start(MOST_MASS, "g"),
           default=start(MASS, "g"), help="trial-mass.help"),
    Number("air", "heat-temperature", unit="degC", low=5, high=40, optional=True,
           help="trial-air.help"),
    Number("width", "heat-cup-width", unit="mm", low=20, high=200, optional=True,
           help="heat-cup-width.help"),
    Number("stirred", "trial-stirred", unit="degC", low=0, high=50, optional=True, help="trial-stirred.help"),
    Group("readings", "trial-readings", (
        Number("minute", "trial-minute", unit="min", low=0, high=600),
        Number("temperature", "trial-shows", unit="degC", low=-5, high=250),
    ), most=16, rows=3, each="trial-readings.each"),
    _seen(STRINGY, "trial-strings", "trial-first"),
    _seen(HOTTEST, "trial-hottest", ""),
    _seen(GOOD, "trial-good", "trial-last"),
    _seen(GONE, "trial-stiff", "trial-first"),
)

# fit: equations.fit_pot.PotFit; thick: between which times this cup is, nine of ten [s]; sure: narrow enough to keep,
# else what follows is None; cup, usual: `Span` of this cup, and of the usual batch in a cup in this air; before:
# usable.Usable of that batch without the test, None where nothing was known of the system; quicker: most and least
# times as fast as it was thought, None there too; loss: against estimated (value, least, most); tells_loss: the test
# says more of it than was remembered; rows: what is kept, the new one as the last
TrialResult = namedtuple("TrialResult", ("fit", "thick", "cup", "usual", "before", "quicker", "loss",
                                         "tells_loss", "sure", "rows"))
# usable: usable.Usable with the test; least, most: of its minutes, nine of ten lie within [s]
Span = namedtuple("Span", ("usable", "least", "most"))


def check(values: Values) -> None:
    """Readings that a cup can have shown, moments in their order, and a curve that goes through all of them."""
    if not _seen_any(values):
        return
    check_label(values["system"])
    if values["air"] is None:
        raise InputError("air", message("field-refused", label="heat-temperature", why="trial-air.missing"))
    _check_readings(values)
    for name, label, other, why in TOO_SOON:
        if None not in (values[name], values[other]) and values[name] < values[other]:
            raise InputError(name, message("field-refused", label=label, why=why))
    if len(values["readings"]) == 1 and values[STRINGY] is None and values[HOTTEST] is None:
        raise InputError("readings", "trial-one-reading")
    _check_fits(values)


def _seen_any(values: Values) -> bool:
    """Whether anything was typed that tells of a rate; a bound alone does not."""
    return bool(values["readings"]) or values[STRINGY] is not None or values[HOTTEST] is not None


def _check_readings(values: Values) -> None:
    air, rows = values["air"], values["readings"]
    mix = air if values["stirred"] is None else values["stirred"]
    most, least, before = max(air, mix) + _estimated(values, values["mass"]).rise, min(air, mix) - SWINGS, -1.0
    hottest, fell = least, least
    for row in rows:
        path, shows = "readings.{}.".format(row["place"]), row["temperature"]
        if row["minute"] <= before:
            raise InputError(path + "minute", message("field-refused", label="trial-minute",
                                                      why="trial-minute.order"))
        if shows > most:
            raise _refused(path, "trial-shows.too-hot")
        if shows < least:
            raise _refused(path, "trial-shows.too-cold")
        if fell < hottest - SWINGS and shows > fell + SWINGS:
            raise _refused(path, "trial-shows.again")
        before, hottest, fell = row["minute"], max(hottest, shows), shows if shows > hottest else min(fell, shows)


def _refused(path: str, why: Said) -> InputError:
    """What a thermometer cannot have shown. path: of the reading"""
    return InputError(path + "temperature", message("field-refused", label="trial-shows", why=why))


def _check_fits(values: Values) -> None:
    """A reading that no cup can have shown beside the others is asked back."""
    found = reckoned(values)
    rows = values["readings"]
    misses = [abs(one) for one in found.fit.misses] if found else []
    if found and rows and found.fit.end < SHORTEST:
        raise _refused("readings.{}.".format(rows[0]["place"]), "trial-shows.soon")
    if not found or not misses or max(misses) <= STRANGE:
        return
    place = misses.index(max(misses))
    if place < len(rows):
        raise _refused("readings.{}.".format(rows[place]["place"]), "trial-shows.misfit")
    name = STRINGY if place == len(rows) and values[STRINGY] is not None else HOTTEST
    raise InputError(name, "trial-minute-misfit")


CHECKS = (check,)


def reckoned(values: Values) -> "TrialResult | None":
    """`reckon`, once for one question."""
    return once(values, "trial", lambda: reckon(values))


def reckon(values: Values) -> "TrialResult | None":
    """The fit of this cup, and what it makes of its minutes and of the usual batch's; None where nothing was seen."""
    if not _seen_any(values):
        return None
    mass, air = values["mass"], values["air"]
    without = dict(values["system"], timed=_others(values))
    fit = _fit(values, without)
    end, end_doubt = to_step(fit.end, 1.0), to_step(sqrt(fit.end_doubt ** 2 + OFF_END ** 2), 0.001)
    thick = _within(end, end_doubt)  # a second is finer than it is known, and coarser than the runtimes differ
    if end_doubt >= UNSURE or not SHORTEST < fit.end < LONGEST:
        return TrialResult(fit, thick, None, None, None, None, None, False, False, ())
    loss, heat = _against(fit, 1, LOSS_SPREAD), _against(fit, 2, HEAT_SPREAD)
    row = {"said": "stiffening", "in": "cup", "filler": None, "grain": None, "mass": mass, "at": air,
           "resin": values["stirred"], "width": values["width"], "after": end, "doubt": to_step(end_doubt, 0.01),
           "loss": to_step(min(loss[0], max(1.0, loss[1])), 0.01),  # what sounds calmer counts by its cautious end
           "heat": to_step(max(heat[0], min(1.0, heat[2])), 0.01)}
    rows = trials_of(without) + [row]
    timed = rows + [one for one in without["timed"] if not is_trial(one)]
    system = dict(without, timed=tuple([dict(one, place=place) for place, one in enumerate(timed)]))
    cup = usable(batch(system, "cup", mass, air, values["stirred"], sizes=_sizes(values)))
    before = quicker = None
    if known(without):
        before = usable(batch(without, "cup", BATCH, air, values["stirred"]))
        was = usable(batch(without, "cup", mass, air, values["stirred"], sizes=_sizes(values))).end
        quicker = (was / thick[0], was / thick[1])
    usual_doubt = to_step(time_and_doubt(fit, _estimated(values, BATCH))[1], 0.001)
    usual = usable(batch(system, "cup", BATCH, air, values["stirred"]))
    return TrialResult(fit, thick, Span(cup, *_within(cup.time, end_doubt)),
                       Span(usual, *_within(usual.time, sqrt(usual_doubt ** 2 + OFF_END ** 2))), before, quicker, loss,
                       doubt(fit, 1) < NOT_TOLD, True, tuple(rows))


def _within(time: float, off: float) -> "tuple[float, float]":
    """Where nine of ten times lie, least and most. off: deviation of its logarithm, as far as it makes sense"""
    share = exp(NINETY * min(off, 2.0))
    return time / share, time * share


def _against(fit: PotFit, place: int, spread: float) -> "tuple[float, float, float]":
    """What was fitted against what is estimated -> (value, least, most) [-]; never surer than one temperature is."""
    middle = spread * fit.at[place]
    off = NINETY * sqrt((spread * doubt(fit, place)) ** 2 + OFF_MODEL ** 2)
    return to_step(exp(middle), 0.001), to_step(exp(middle - off), 0.001), to_step(exp(middle + off), 0.001)


def _others(values: Values) -> tuple:
    """Own timings of the system; of its tests those in other air, which this one is kept beside."""
    return tuple([row for row in values["system"]["timed"]
                  if not is_trial(row) or abs(row["at"] - values["air"]) > ANOTHER])


def _sizes(values: Values) -> dict:
    return dict(SIZES, cup_width=values["width"])


def _estimated(values: Values, mass: float) -> Found:
    """The balance of a cup in this air as it is estimated without any test."""
    plain = mixed_by_label(values["system"])
    sizes = _sizes(values) if mass == values["mass"] else SIZES
    mix = values["air"] if values["stirred"] is None else values["stirred"]
    return pot("cup", mass, sizes, plain, 0.0, values["air"], mix)


def _fit(values: Values, system: dict) -> PotFit:
    plain = mixed_by_label(system)
    bounds = []
    for row in system["timed"]:
        if row["said"] != "stiffening" and not in_sun(row):
            other = pot(row["in"], row["mass"], SIZES, plain, share_filled(row["filler"], row["in"]), row["at"],
                        start_of(row))
            bounds.append(Bound(other, row["after"], row["said"] == "good"))
    seen = Seen(tuple([(row["minute"], row["temperature"]) for row in values["readings"]]), values[STRINGY],
                values[HOTTEST], values[GOOD], values[GONE])
    middle = middle_share("cup", values["mass"] / plain[1], _sizes(values), AIR_VALUES["still"][USUAL])
    return fitted(_estimated(values, values["mass"]), seen, middle, bounds)


def answer(values: Values) -> list:
    """What the test makes of the minutes, how sure that is; how such a test goes, and what can hurt."""
    return trial_lines.say(reckoned(values), values)


def figures(values: Values) -> list:
    """The readings, and the curve through them."""
    found = reckoned(values)
    if found is None or not found.sure:
        return []
    return [heat_drawing.curves("cup", found.fit.run, None, found.cup.usable.time, values["units"],
                                [(row["minute"], row["temperature"]) for row in values["readings"]])]


def leads(values: Values) -> list:
    """To the system, with which it is kept."""
    return trial_lines.leads(reckoned(values), values)
