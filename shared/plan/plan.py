"""Plan: the seams of a day, the hands, the hardener and the temperature to batches that can really be laid."""

from ..catalogue.joints import FACES
from ..catalogue.plans import MOST_PIECES, MOST_TOLD
from ..catalogue.pot_life import HUNDRED, WINDOWS
from ..catalogue.rates import HANDS, MIXING, POSITIONS, RATES
from ..catalogue.starts import PAUSE
from ..clock import sun
from ..clock.heat_model import own_pots, timings_of
from ..clock.hot_pot import BIG, BIG_WARM
from ..equations.quick_rule import REFERENCE
from ..forms.clock_times import HOURS, Clock, clock_said, on_the_clock
from ..forms.errors import InputError
from ..forms.inputs import Choice, Group, Number, Numbered, Pick, Text, stand_together
from ..forms.memo import once
from ..forms.remembered import remembered, start
from ..forms.types import Said, Values
from ..mix.ratio import basis
from ..things.kept_words import SPELT
from ..things.kept_words import TIMINGS as KEPT_TIMINGS
from ..things.piece_names import SPELT as OURS
from ..things.piece_names import WORDS
from ..things.records import SCALE, SYSTEM
from ..things.records_shed import PEOPLE
from ..words.messages import fact, message, number
from ..words.numbers import bare
from . import day, done_so_far, layers, plan_found, plan_leads, plan_lines, plan_next, timeline, working_times
from .day import Plan

TIMES, PACE, LEFT = "plan-fold-times", "plan-fold-rates", "plan-fold-left"
FOLDS = tuple([("batch_" + str(one), message("plan-fold-batch", number=one)) for one in range(1, MOST_TOLD + 1)]) + (
    (plan_lines.LAYERS, "plan-surfaces"),)
WINDOW = {row[0]: row for row in WINDOWS}
AT = fact("degC", REFERENCE)
MOST_HELP = message("plan-most.help", calm=fact("g", BIG), warm=fact("g", BIG_WARM))


def _untyped(name: str) -> Values:
    """Values of the help of a window that nobody types: where it comes from."""
    _, times, low, high = WINDOW[name][:4]
    return {"times": number(bare(times, 3)), "low": number(bare(low, 3)), "high": number(bare(high, 3))}


def _power(exponent: float) -> Said:
    """The case of a third, else the figure."""
    return "third" if abs(exponent - 1 / 3) < 1e-9 else number(bare(exponent, 3))


SYSTEM_INPUT = Pick("system", "plan-system", SYSTEM, default="3-1")
INPUTS = (
    (
        Group("pieces", "plan-pieces", (
            Numbered("name", "plan-piece-name", keys=WORDS, spelt=OURS),
            Choice("face", "plan-piece-face", FACES, unsaid="select-unsaid"),
            Number("length", "plan-piece-length", unit="m", low=0, high=100, above=True),
            Number("putty", "plan-piece-putty", unit="g/m", low=0, high=5000, help="plan-piece-putty.help"),
            Number("wet", "plan-piece-wet", unit="g/m", low=0, high=5000, help="plan-piece-wet.help"),
            Number("layers", "plan-piece-layers", low=1, high=8, default=1, whole=True, help="plan-piece-layers.help"),
            Choice("position", "plan-piece-position", tuple([row[:2] for row in POSITIONS])),
        ), least=1, most=MOST_PIECES, each="plan-pieces.each", fold="plan-pieces"),
        layers.GROUP,
        Pick("crew", "plan-crew", PEOPLE, default="1"),
        Choice("people", "plan-people", (("", "plan-people.as-above"),) + tuple([row[:2] for row in PEOPLE.rows]),
               fold=PACE),
        Choice("hand", "plan-hand", tuple([row[:2] for row in HANDS])),
        SYSTEM_INPUT,
        Choice("temperature_is", "plan-temperature-is", (("constant", "plan-temperature-is.constant"),
                                                         ("points", "plan-temperature-is.points"))),
        Number("temperature", "plan-temperature", unit="degC", low=-10, high=50,
               when=(("temperature_is", ("constant",)),), help="plan-temperature.help",
               missing="plan-temperature.missing"),
        Group("points", "plan-points", (
            Clock("at", "plan-point-at"),
            Number("temperature", "plan-point-temperature", unit="degC", low=-10, high=50),
        ), most=24, each="plan-points.each", when=(("temperature_is", ("points",)),), help="plan-points.help"),
    )
    + sun.inputs()
    + (
        Clock("start", "plan-start", default="8:00", help="plan-start.help"),
        Clock("finish", "plan-finish", optional=True, fold=HOURS.fold),
        Number("pause", "plan-pause", unit="min", low=0, high=600, default=start(PAUSE, "min"), fold=HOURS.fold,
               help="plan-pause.help"),
        HOURS,
        Choice("one_mix", "plan-one-mix", (("sound", "plan-one-mix.sound"), ("never", "plan-one-mix.never")),
               fold=LEFT),
        Choice("long", "plan-long", (("cut", "plan-long.cut"), ("whole", "plan-long.whole")), fold=LEFT),
        remembered("overlap", "overlap", "plan-overlap", "mm", 0, 500, fold=LEFT),
        Pick("scale", "plan-scale", SCALE, default="1g", fold=LEFT),
        Number("smallest", "plan-smallest", unit="g", low=0, high=5000, optional=True, fold=LEFT,
               help="plan-smallest.help"),
        Number("most", "plan-most", unit="g", low=10, high=20000, optional=True, fold=LEFT, help=MOST_HELP),
        remembered("filler", "filler", "plan-filler", "%", 0, 300, before="remembered-filler.epoxy",
                   fold=LEFT),
        remembered("cup bag", "left_putty", "plan-left-putty", "g", 0, 500, before="remembered-each-mix", fold=LEFT),
        remembered("cup roller", "left_wet", "plan-left-wet", "g", 0, 500, before="remembered-each-mix", fold=LEFT),
        remembered("spare", "spare", "plan-spare", "%", 0, 100, fold=LEFT),
        Number("soft", message("plan-soft", at=AT), unit="min", low=1, high=2880, optional=True, fold=TIMES,
               help=message("plan-soft.help", mass=fact("g", HUNDRED), **_untyped("soft"))),
        Number("film", message("plan-film", at=AT), unit="min", low=1, high=2880, optional=True, fold=TIMES,
               help=message("plan-film.help", mass=fact("g", HUNDRED), **_untyped("film"))),
        Text("timings", "plan-timings", most=500, keys=KEPT_TIMINGS, spelt=SPELT, fold=TIMES, of="system",
             help="plan-timings.help"),
        Number("exponent", "plan-exponent", low=0, high=1, optional=True, fold=TIMES,
               help=message("plan-exponent.help", power=_power(WINDOW["exponent"][1]), **_untyped("exponent"))),
        Number("doubling", "plan-doubling", low=1, high=4, default=WINDOW["doubling"][1], fold=TIMES,
               help=message("plan-doubling.help", **_untyped("doubling"))),
        Number("share", "plan-share", unit="%", low=10, high=100, default=WINDOW["share"][1] * 100, fold=TIMES),
    )
    + tuple([Number(name, label, unit="min", low=0, high=60, default=minutes, fold=TIMES,
                    help=message("plan-mixing-help", low=number(str(least)), high=number(str(most))))
             for name, label, minutes, least, most, _ in MIXING])
    + tuple([Number(name + "_rate", label, unit="m/min", low=0.02, high=20, optional=True, fold=PACE,
                    help=message("plan-rate-help", rate=number(str(rate)), low=number(str(least)),
                                 high=number(str(most))))
             for name, label, rate, least, most, _ in RATES])
    + layers.PACES
    + done_so_far.INPUTS
)
stand_together(*INPUTS[:2])


def check_asked(values: Values) -> None:
    """What no single field can know: a pot life without its mass, a profile that does not cover the start."""
    if not (values["pieces"] or values["surfaces"]):
        INPUTS[0].refuse("pieces", message("field-rows.least", least=1))
    layers.check(values)
    system = values["system"]
    pots = own_pots(timings_of(working_times.timed(values)))
    timed = system["pot_time"] is not None or not pots
    for field, asked, why in (
        ("pot_time", timed, "plan-refused-pot-time"),
        ("pot_mass", timed, "plan-refused-pot-mass"),
        ("pot_temperature", timed or system["film_time"] is not None,
         "plan-refused-pot-temperature"),
    ):
        if asked and system[field] is None:
            raise InputError("system." + field, why)
    if values["smallest"] is None and not basis(system).weight_parts:
        raise InputError("system.densities", "plan-refused-densities")
    for row in values["pieces"]:
        if not row["putty"] and not row["wet"]:
            raise InputError("pieces.{}.putty".format(row["place"]), "plan-refused-nothing-to-do")
    if values["temperature_is"] == "points":
        _check_points(values)


def check(values: Values) -> None:
    """What was asked; and where the work is more than a plan can hold it is refused. Made once, for the answer too."""
    check_asked(values)
    too_many = None
    try:
        layers.reckoned(values, planned(values))
    except day.TooMany as error:
        too_many = error.what
    if too_many == day.PIECES:
        raise InputError("pieces", message("plan-refused-pieces", most=day.MOST_WORK))
    if too_many == day.BATCHES:
        raise InputError("pieces", message("plan-refused-batches", most=day.MOST_BATCHES))


def _check_points(values: Values) -> None:
    points = values["points"]
    if not points:
        raise InputError("points", "plan-refused-points")
    times = on_the_clock([point["at"] for point in points])
    for place, (before, after) in enumerate(zip(times, times[1:])):
        field = "points.{}.at".format(points[place + 1]["place"])
        if after == before:
            raise InputError(field, "plan-refused-points.twice")
        if after - times[0] > 86400:
            raise InputError(field, "plan-refused-points.back")
    if times[0] > values["start"]:
        raise InputError("points.{}.at".format(points[0]["place"]),
                         message("plan-refused-points.late", start=clock_said(values["start"], values["hours"])))


CHECKS = (check, done_so_far.check)


def planned(values: Values) -> Plan:
    """The plan of these values, made once; `day.TooMany` where it is more than a plan holds."""
    return once(values, "plan", lambda: Plan(values))


def reckon(values: Values) -> plan_found.Found:
    """All that is told of the plan of these values, as figures."""
    return plan_found.found_of(values, planned(values))


def reckoned(values: Values) -> plan_found.Found:
    """The same, made once for lines, figure and leads."""
    return once(values, "plan_found", lambda: reckon(values))


def answer(values: Values) -> "list":
    """How many batches, when it ends, what binds, what would help; then each batch with its steps on the clock."""
    return plan_lines.say(reckoned(values), values)


def figures(values: Values) -> "list":
    """The timeline of the whole day."""
    found = reckoned(values)
    return [timeline.timeline(values, found)] if found.batches else []


def leads(values: Values) -> "list":
    """What is done next: one tap for each step, the pours of the next batch and its clock."""
    return plan_leads.leads(values, reckoned(values), plan_next.next_of(values, planned(values)), SYSTEM_INPUT)
