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
from ..words.numbers import bare
from . import heat_lines, sun
from .heat_drawing import curves
from .heat_found import reckon, reckoned  # noqa: F401  (reckon: the move's own, as every move has one)
from .pot_heat import FLOUR
from .pot_start import USES
from .usable import known

USE_FOLD = "What it is for, where it goes"
SIZE_FOLD, OWN_FOLD = "Sizes and air", "Own timings of this system"
MORE_FOLD = "Warm resin, filler, a wanted time"
GRAIN = "True density of that filler"

KINDS = tuple([(row[0], row[1], row[2]) for row in CONTAINERS])


def _mm(name: str) -> float:
    return float(bare((SIZES[name] or 0.0) * 1000, 3))


SYSTEM_INPUT = Pick("system", "Resin system", SYSTEM, default="3-1")
INPUTS = (
    Number("air", "Air temperature", unit="degC", low=-10, high=50,
           missing="type it first, as it is where the pot stands. All times here depend on it."),
    SYSTEM_INPUT,
    Number("batch", "In the container", unit="g", low=1, high=20000, default=start(BATCH, "g"),
           help="All in it, filler too"),
    Choice("container", "Container", KINDS),
    sun.inputs()[0],
    Choice("use", "It is for", USES, fold=USE_FOLD),
    Text("where", "Where it goes", most=60, help="Shown with the pot.", fold=USE_FOLD),
    Number("resin_temperature", "Temperature of the resin", unit="degC", low=-5, high=60, optional=True,
           help="When it is mixed. Left empty: as the air.", fold=MORE_FOLD),
    Number("filler", "Filler or glass in it", unit="%", low=0, high=80, optional=True,
           help="Of the whole weight. Left empty: none; in wet tape " + bare(FOR_BUYING[0] * 100, 1)
           + "% glass (from memory).", fold=MORE_FOLD),
    Number("grain", GRAIN, unit="g/mL", low=0.05, high=8, optional=True, fold=MORE_FOLD,
           help="Left empty: wood flour's, {" + bare(FLOUR / 1000, 2) + " g/mL} (from memory). Not asked of wet tape."),
    Number("wanted", "Must stay usable for", unit="min", low=1, high=600, optional=True,
           help="Shows the largest batch that lasts as long.", fold=MORE_FOLD),
    Number("cup_width", "Cup, inside width", unit="mm", low=20, high=400, optional=True, fold=SIZE_FOLD,
           help="Left empty: as wide as it is full."),
    Number("bag_width", "Bag, thickness when full", unit="mm", low=10, high=200, default=_mm("bag_width"),
           fold=SIZE_FOLD),
    Number("tray_length", "Tray, length", unit="mm", low=50, high=2000, default=_mm("tray_length"), fold=SIZE_FOLD),
    Number("tray_width", "Tray, width", unit="mm", low=50, high=1000, default=_mm("tray_width"), fold=SIZE_FOLD),
    Number("radius", "Cove, radius", unit="mm", low=3, high=100, default=_mm("radius"), fold=SIZE_FOLD),
    Number("panel", "Panel thickness", unit="mm", low=1, high=50, default=_mm("panel"), fold=SIZE_FOLD),
    Number("tape_width", "Tape width", unit="mm", low=20, high=500, default=_mm("tape_width"), fold=SIZE_FOLD),
    Number("film", "Film thickness", unit="mm", low=0.05, high=5, default=_mm("film"), fold=SIZE_FOLD),
    Choice("moving", "Air around it", tuple([(row[0], row[1]) for row in AIR]), fold=SIZE_FOLD),
) + sun.inputs()[1:] + (
    Group("timings", "Own timings of this system", (
        Choice("said", "It was", (("stiffening", "stiffening"), ("good", "still good"), ("gone", "gone"))),
        Number("after", "after", unit="min", low=1, high=2880),
        Number("mass", "with a mass of", unit="g", low=1, high=20000),
        Choice("in", "in a", KINDS),
        Number("at", "Air temperature", unit="degC", low=-10, high=50),
        Number("filler", "Filler or glass in it", unit="%", low=0, high=80, optional=True),
        Number("grain", GRAIN, unit="g/mL", low=0.05, high=8, optional=True),
        Number("resin", "Temperature of the resin", unit="degC", low=-5, high=60, optional=True),
    ), most=MOST, fold=OWN_FOLD, each="Timing", of="system"),
)


def check_label(system: Values) -> None:
    """A pot life means nothing without its mass and temperature, nor a film's time without its own."""
    if system["pot_time"] is not None:
        for field, what in (("pot_mass", "mass"), ("pot_temperature", "temperature")):
            if system[field] is None:
                raise InputError("system." + field, "Pot life: type the " + what + " it was measured with too. The "
                                 "same label time means another thing in another cup.")
    elif system["film_time"] is not None and system["pot_temperature"] is None:
        raise InputError("system.pot_temperature", "Working time as a thin film: type the temperature it holds for")


def check(values: Values) -> None:
    """What the label tells is whole, and some time is known."""
    check_label(values["system"])
    if not known(values["system"], values["timings"]):
        raise InputError("system.pot_time", "Type the label's pot life with its mass and temperature, or a timing of "
                         "your own when a pot was stiffening")


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
