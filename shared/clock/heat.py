"""Heat: how long this batch in this container can be used, how hot it will get, what a tray or half of it would buy."""
from ..catalogue.containers import AIR, CONTAINERS
from ..catalogue.glass import FOR_BUYING
from ..catalogue.pots import SIZES
from ..catalogue.starts import BATCH
from ..forms.errors import InputError
from ..forms.inputs import Choice, Group, Number, Pick, Text
from ..forms.remembered import start
from ..forms.types import Values
from ..things.own_timings import MOST
from ..things.records import SYSTEM
from ..words.messages import fact, message, number
from ..words.numbers import bare
from . import heat_lines, sun
from .heat_drawing import curves
from .heat_found import reckon, reckoned  # noqa: F401  (reckon: the move's own, as every move has one)
from .pot_heat import FLOUR
from .pot_start import USES
from .usable import known

USE_FOLD, SIZE_FOLD, MORE_FOLD = "heat-fold.use", "heat-fold.sizes", "heat-fold.more"
OWN_FOLD = "heat-timings"
GRAIN = "heat-grain"

KINDS = tuple([(row[0], row[1], row[2]) for row in CONTAINERS])


def _mm(name: str) -> float:
    return float(bare((SIZES[name] or 0.0) * 1000, 3))


SYSTEM_INPUT = Pick("system", "heat-system", SYSTEM, default="3-1")
INPUTS = (
    Number("air", "heat-temperature", unit="degC", low=-10, high=50, missing="heat-temperature.missing"),
    SYSTEM_INPUT,
    Number("batch", "heat-batch", unit="g", low=1, high=20000, default=start(BATCH, "g"),
           help="heat-batch.help"),
    Choice("container", "heat-container", KINDS),
    sun.inputs()[0],
    Choice("use", "heat-use", USES, fold=USE_FOLD),
    Text("where", "heat-where", most=60, help="heat-where.help", fold=USE_FOLD),
    Number("resin_temperature", "heat-resin", unit="degC", low=-5, high=60, optional=True,
           help="heat-resin.help", fold=MORE_FOLD),
    Number("filler", "heat-filler", unit="%", low=0, high=80, optional=True, fold=MORE_FOLD,
           help=message("heat-filler.help", glass=number(bare(FOR_BUYING[0] * 100, 1)))),
    Number("grain", GRAIN, unit="g/mL", low=0.05, high=8, optional=True, fold=MORE_FOLD,
           help=message("heat-grain.help", flour=fact("g/mL", FLOUR))),
    Number("wanted", "heat-wanted", unit="min", low=1, high=600, optional=True,
           help="heat-wanted.help", fold=MORE_FOLD),
    Number("cup_width", "heat-cup-width", unit="mm", low=20, high=400, optional=True, fold=SIZE_FOLD,
           help="heat-cup-width.help"),
    Number("bag_width", "heat-bag-width", unit="mm", low=10, high=200, default=_mm("bag_width"),
           fold=SIZE_FOLD),
    Number("tray_length", "heat-tray-length", unit="mm", low=50, high=2000, default=_mm("tray_length"), fold=SIZE_FOLD),
    Number("tray_width", "heat-tray-width", unit="mm", low=50, high=1000, default=_mm("tray_width"), fold=SIZE_FOLD),
    Number("radius", "heat-radius", unit="mm", low=3, high=100, default=_mm("radius"), fold=SIZE_FOLD),
    Number("panel", "heat-panel", unit="mm", low=1, high=50, default=_mm("panel"), fold=SIZE_FOLD),
    Number("tape_width", "heat-tape-width", unit="mm", low=20, high=500, default=_mm("tape_width"), fold=SIZE_FOLD),
    Number("film", "heat-film", unit="mm", low=0.05, high=5, default=_mm("film"), fold=SIZE_FOLD),
    Choice("moving", "heat-moving", tuple([(row[0], row[1]) for row in AIR]), fold=SIZE_FOLD),
) + sun.inputs()[1:] + (
    Group("timings", "heat-timings", (
        Choice("said", "heat-timing.said", (("stiffening", "heat-timing.stiffening"), ("good", "heat-timing.good"),
                                            ("gone", "heat-timing.gone"))),
        Number("after", "heat-timing.after", unit="min", low=1, high=2880),
        Number("mass", "heat-timing.mass", unit="g", low=1, high=20000),
        Choice("in", "heat-timing.in", KINDS),
        Number("at", "heat-temperature", unit="degC", low=-10, high=50),
        Number("filler", "heat-filler", unit="%", low=0, high=80, optional=True),
        Number("grain", GRAIN, unit="g/mL", low=0.05, high=8, optional=True),
        Number("resin", "heat-resin", unit="degC", low=-5, high=60, optional=True),
    ) + sun.inputs(looks_fold=""), most=MOST, fold=OWN_FOLD, each="heat-timings.each", of="system"),
)


def check_label(system: Values) -> None:
    """A pot life means nothing without its mass and temperature, nor a film's time without its own."""
    if system["pot_time"] is not None:
        for field, why in (("pot_mass", "heat-label.mass"), ("pot_temperature", "heat-label.temperature")):
            if system[field] is None:
                raise InputError("system." + field, why)
    elif system["film_time"] is not None and system["pot_temperature"] is None:
        raise InputError("system.pot_temperature", "heat-label.film")


def check(values: Values) -> None:
    """What the label tells is whole, and some time is known."""
    check_label(values["system"])
    if not known(values["system"], values["timings"]):
        raise InputError("system.pot_time", "heat-label.unknown")


CHECKS = (check,)


def answer(values: Values) -> list:
    """Usable minutes, the peak, what would help, what can hurt; the reasons folded away."""
    return heat_lines.say(reckoned(values), values)


def figures(values: Values) -> list:
    """The curve of this container, and of the tray beside a pot."""
    found = reckoned(values)
    return [curves(values["container"], found.run, found.tray_run, found.best.time, values["units"])]


def leads(values: Values) -> list:
    """A clock for this batch, and the day planned in the same air with this system and what was timed of it here."""
    return heat_lines.leads(reckoned(values), values, SYSTEM_INPUT)
