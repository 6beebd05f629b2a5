"""Plan: the seams of a day, the hands, the hardener and the temperature to batches that can really be laid."""

from ..catalogue.plans import MOST_PIECES, MOST_TOLD
from ..catalogue.rates import HANDS, MIXING, POSITIONS, RATES
from ..catalogue.starts import PAUSE
from ..catalogue.windows import HUNDRED, WINDOWS
from ..clock import sun
from ..clock.heat_model import own_pots, timings_of
from ..clock.hot_pot import BIG, BIG_WARM
from ..equations.quick_rule import REFERENCE
from ..forms.clock_times import HOURS, Clock, clock_text, on_the_clock
from ..forms.errors import InputError
from ..forms.inputs import Choice, Group, Number, Pick, Text
from ..forms.memo import once
from ..forms.remembered import remembered, start
from ..forms.types import Values
from ..mix.ratio import basis
from ..things.records import SCALE, SYSTEM
from ..things.records_shed import PEOPLE
from ..words.numbers import bare, fraction
from ..words.units import braces
from . import day, done_so_far, plan_found, plan_leads, plan_lines, plan_next, timeline, working_times
from .day import Plan

TIMES, PACE, LEFT = "Working times", "Own rates", "What stays behind"
MOST_HELP = ("What the cup and the bag hold, putty with its filler. Left empty: what does not run away there; "
             + braces("g", BIG) + ", " + braces("g", BIG_WARM)
             + " where it is warm (own judgement), more where it stays calm.")
FOLDS = tuple([("batch_" + str(one), "Batch {}: amounts and steps".format(one))
               for one in range(1, MOST_TOLD + 1)])
WINDOW = {row[0]: row for row in WINDOWS}
AT = braces("degC", REFERENCE)


def _range(name: str) -> "list[str]":
    return [bare(one, 3) for one in WINDOW[name][2:4]]


def _power(exponent: float) -> str:
    return fraction(exponent) if abs(exponent - 1 / 3) < 1e-9 else bare(exponent, 3)


# where a window comes from that nobody types
UNTYPED = dict([(name, "{} times the pot life of {} (from memory, {} to {}).".format(
    bare(WINDOW[name][1], 3), braces("g", HUNDRED), *_range(name))) for name in ("soft", "film")])
SYSTEM_INPUT = Pick("system", "Resin system", SYSTEM, default="3-1")
INPUTS = (
    (
        Group("pieces", "Pieces in laying order", (
            Text("name", "Name"),
            Number("length", "Length", unit="m", low=0, high=100, above=True),
            Number("putty", "Putty", unit="g/m", low=0, high=5000, help="0 where tape goes on without a cove."),
            Number("wet", "Wet-out resin", unit="g/m", low=0, high=5000, help="0 where no tape goes on."),
            Number("layers", "Layers of tape", low=1, high=8, default=1, whole=True,
                   help="Each is wet out, laid and rolled."),
            Choice("position", "Position", tuple([row[:2] for row in POSITIONS])),
        ), least=1, most=MOST_PIECES, each="Piece", fold="Pieces in laying order"),
        Pick("crew", "People", PEOPLE, default="1"),
        Choice("people", "How many today", (("", "As above"),) + tuple([row[:2] for row in PEOPLE.rows]), fold=PACE),
        Choice("hand", "Hands", tuple([row[:2] for row in HANDS])),
        SYSTEM_INPUT,
        Choice("temperature_is", "Temperature", (("constant", "stays the same"), ("points", "changes over the clock"))),
        Number("temperature", "Wood and air", unit="degC", low=-10, high=50, when=(("temperature_is", ("constant",)),),
               help="The warmest counts.", missing="type it first; all times of the plan depend on it"),
        Group("points", "Temperature over the clock", (
            Clock("at", "At"),
            Number("temperature", "Temperature", unit="degC", low=-10, high=50),
        ), most=24, each="At", when=(("temperature_is", ("points",)),), help="From the start to the end of the work."),
    )
    + sun.inputs()
    + (
        Clock("start", "Start", default="8:00", help="Of the first mixing."),
        Clock("finish", "Finished by", optional=True, fold="Clock and pauses"),
        Number("pause", "Between two batches", unit="min", low=0, high=600, default=start(PAUSE, "min"),
               fold="Clock and pauses", help="Gloves, tidying, the next pieces laid out."),
        HOURS,
        Choice("one_mix", "One mix for both uses", (("sound", "where it is sound"), ("never", "never")), fold=LEFT),
        Choice("long", "A piece too long for one batch",
               (("cut", "is cut, with an overlap"), ("whole", "stays whole")), fold=LEFT),
        remembered("overlap", "overlap", "Overlap of the tape there", "mm", 0, 500, fold=LEFT),
        Pick("scale", "Scale", SCALE, default="1g", fold=LEFT),
        Number("smallest", "Smallest mix in ratio", unit="g", low=0, high=5000, optional=True, fold=LEFT,
               help="Left empty: from the scale, the ratio and the ratio error that the label allows."),
        Number("most", "Largest mix wanted", unit="g", low=10, high=20000, optional=True, fold=LEFT,
               help=MOST_HELP),
        remembered("filler", "filler", "Filler in the putty", "%", 0, 300, before="Wood flour, of the mixed epoxy. ",
                   fold=LEFT),
        remembered("cup bag", "left_putty", "Stays in cup and bag", "g", 0, 500, before="Of each mix. ", fold=LEFT),
        remembered("cup roller", "left_wet", "Stays in cup and roller", "g", 0, 500, before="Of each mix. ", fold=LEFT),
        remembered("spare", "spare", "Spare", "%", 0, 100, fold=LEFT),
        Number("soft", "Soft window of a bead, at " + AT, unit="min", low=1, high=2880, optional=True, fold=TIMES,
               help="Left empty: " + UNTYPED["soft"]),
        Number("film", "Working time of a film, at " + AT, unit="min", low=1, high=2880, optional=True, fold=TIMES,
               help="Left empty: the label's, or " + UNTYPED["film"]),
        Text("timings", "Own timings beside the system's", most=400, fold=TIMES, of="system",
             help="Stiffening 31 min {240 g} cup {20 degC}; the next behind a semicolon. Clock hands them over."),
        Number("exponent", "Pot life goes with mass to minus", low=0, high=1, optional=True, fold=TIMES,
               help="Left empty: {} (from memory, {} to {}).".format(
                   _power(WINDOW["exponent"][1]), *_range("exponent"))),
        Number("doubling", "Faster for each {10 K} warmer", low=1, high=4, default=WINDOW["doubling"][1], fold=TIMES,
               help="{} times: common practice, {} to {}.".format(bare(WINDOW["doubling"][1], 3), *_range("doubling"))),
        Number("share", "Usable share of a window", unit="%", low=10, high=100, default=WINDOW["share"][1] * 100,
               fold=TIMES),
    )
    + tuple([Number(name, label, unit="min", low=0, high=60, default=minutes, fold=TIMES,
                    help="From memory, {} to {}.".format(least, most))
             for name, label, minutes, least, most, _ in MIXING])
    + tuple([Number(name + "_rate", label, unit="m/min", low=0.02, high=20, optional=True, fold=PACE,
                    help="Downhand, one person. Left empty: the crew's, or {} (from memory, {} to {}).".format(
                        rate, least, most))
             for name, label, rate, least, most, _ in RATES])
    + done_so_far.INPUTS
)


def check_asked(values: Values) -> None:
    """What no single field can know: a pot life without its mass, a profile that does not cover the start."""
    system = values["system"]
    pots = own_pots(timings_of(working_times.timed(values)))
    timed = system["pot_time"] is not None or not pots
    for field, asked, words in (
        ("pot_time", timed, "Pot life: the plan needs it, from the label or your own timing"),
        ("pot_mass", timed, "Pot life: at which mass? A pot life without its mass says nothing"),
        ("pot_temperature", timed or system["film_time"] is not None,
         "Pot life: at which temperature? The label says it, often {20 degC} or {25 degC}"),
    ):
        if asked and system[field] is None:
            raise InputError("system." + field, words)
    if values["smallest"] is None and not basis(system).weight_parts:
        raise InputError("system.densities", "Densities: without them there is no smallest mix by weight; type them, "
                                             "or the smallest mix in ratio")
    for row in values["pieces"]:
        if not row["putty"] and not row["wet"]:
            raise InputError("pieces.{}.putty".format(row["place"]), "Putty: with neither putty nor wet-out resin "
                             "there is nothing to do here. Type one of the two, or take the piece out")
    if values["temperature_is"] == "points":
        _check_points(values)


def check(values: Values) -> None:
    """What was asked; and where the work is more than a plan can hold it is refused. Made once, for the answer too."""
    check_asked(values)
    too_many = None
    try:
        planned(values)
    except day.TooMany as error:
        too_many = error.what
    if too_many == day.PIECES:
        raise InputError("pieces", "Cut so that each can be laid in time, these are more than {} pieces. Plan fewer "
                         "seams at a time, one day's work".format(day.MOST_WORK))
    if too_many == day.BATCHES:
        raise InputError("pieces", "These seams take more than {} batches. Plan fewer of them at a time, one day's "
                         "work".format(day.MOST_BATCHES))


def _check_points(values: Values) -> None:
    points = values["points"]
    if not points:
        raise InputError("points", "Temperature over the clock: type the time and the temperature at the start")
    times = on_the_clock([point["at"] for point in points])
    for place, (before, after) in enumerate(zip(times, times[1:])):
        field = "points.{}.at".format(points[place + 1]["place"])
        if after == before:
            raise InputError(field, "At: the same time twice; type a later one")
        if after - times[0] > 86400:
            raise InputError(field, "At: the times must go forward, within one day")
    if times[0] > values["start"]:
        raise InputError("points.{}.at".format(points[0]["place"]),
                         "At: the first temperature must be known at the start, "
                         + clock_text(values["start"], values["hours"]) + ", or before it")


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
