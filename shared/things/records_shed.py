"""What the kit holds of the shed: rooms, fans, hands, rolls of tape; and all its kinds in their order.

Apart from `records`: a phone that only pours never loads them.
"""
from ..catalogue import airing, glass
from ..catalogue.marks import MEMORY
from ..catalogue.rates import RATES
from ..forms.declared import plain
from ..forms.errors import InputError
from ..forms.inputs import Choice, Number, Phone, Text
from ..forms.late import late
from .kept_words import RATES as KEPT_RATES
from .kept_words import SPELT
from .records import CUP, FILLER, GRADUATED, PUMPS, SCALE, SYRINGES, SYSTEM, UNSAID, Record


def check_room(values: dict) -> None:
    """A room is known by its volume, or by all three of its sizes."""
    for name in ("length", "width", "height"):
        if not values["volume"] and not values[name]:
            raise InputError(name, "kind-room-no-size")


ROOM = Record("room", "kind-room", (
    Text("name", "kind-name"),
    Number("length", "kind-room-length", unit="m", low=0, high=100, above=True, optional=True),
    Number("width", "kind-room-width", unit="m", low=0, high=100, above=True, optional=True),
    Number("height", "kind-room-height", unit="m", low=0, high=20, above=True, optional=True),
    Number("volume", "kind-room-volume", unit="m3", low=0, high=50000, above=True, optional=True,
           help="kind-room-volume.help"),
), airing.ROOMS, check_room, own=("length", "width", "height", "volume"))

FAN = Record("fan", "kind-fan", (
    Text("name", "kind-name"),
    Number("flow", "kind-fan-flow", unit="m3/h", low=0, high=100000, above=True,
           help="kind-fan-flow.help"),
), airing.FANS, own=("flow",))


def check_people(values: dict) -> None:
    """Rates from own batches are written by the engine; one that was written over must still read."""
    if values["learned"]:
        late("learned_rates").read_learned(values["learned"])


# what is said, and what the thing is called that starts from it
CREWS = (("kind-people.alone", "Alone"), ("kind-people.two", "Two"), ("kind-people.three", "Three"),
         ("kind-people.four", "Four"), ("kind-people.five", "Five"), ("kind-people.six", "Six"))

PEOPLE = Record("people", "kind-people", (
    Text("name", "kind-name"),
    Number("hands", "kind-people-hands", low=1, high=6, whole=True),
) + tuple([Number(row[0], row[1], unit="m/min", low=0.02, high=20, optional=True, fold="kind-people-fold")
           for row in RATES]) + (
    Text("learned", "kind-people-learned", most=400, keys=KEPT_RATES, spelt=SPELT, fold="kind-people-fold",
         learned=True, help="kind-people-learned.help"),
), tuple([(str(place + 1), said, MEMORY, (("name", name), ("hands", str(place + 1))) + tuple(
    [(row[0], plain(row[2]) + " m/min") for row in RATES]))
    for place, (said, name) in enumerate(CREWS)]), check_people)


def check_roll(values: dict) -> None:
    """Tape and cloth are known by their weight."""
    if not values["of"]:
        raise InputError("of", "kind-roll-no-kind")
    if values["of"] != "ply" and not values["weight"]:
        raise InputError("weight", "kind-roll-no-weight")


ROLL = Record("roll", "kind-roll", (
    Text("name", "kind-name"),
    Choice("of", "kind-roll-of", (("tape", "kind-roll-of.tape"), ("cloth", "kind-roll-of.cloth"),
                                  ("ply", "kind-roll-of.ply")), unsaid=UNSAID),
    Number("width", "kind-roll-width", unit="mm", low=5, high=3000),
    Number("weight", "kind-roll-weight", unit="g/m2", low=10, high=3000, optional=True, help="kind-roll-weight.help"),
    Number("length", "kind-roll-length", unit="m", low=0, high=500, help="kind-roll-length.help"),
), glass.ROLLS, check_roll, own=("of", "width", "weight"))

def check_numbers(values: dict) -> None:
    """Numbers that are kept under a name are at least one."""
    if values["name"] and not (values["ambulance"] or values["poison"] or values["person"]):
        raise InputError("ambulance", "kind-numbers-no-number")


# what a person typed for an emergency stays on this phone and in the saved file: no link takes it along
NUMBERS = Record("numbers", "kind-numbers", (
    Text("name", "kind-name", private=True, help="kind-numbers-name.help"),
    Phone("ambulance", "kind-numbers-ambulance", private=True, optional=True),
    Phone("poison", "kind-numbers-poison", private=True, optional=True),
    Text("who", "kind-numbers-who", most=30, private=True),
    Phone("person", "kind-numbers-person", private=True, optional=True),
), (("none", "kind-numbers.none", "", ()),), check_numbers, own=("ambulance", "poison", "who", "person"))

# in the order of the kit
RECORDS = (SYSTEM, SCALE, PUMPS, CUP, GRADUATED, SYRINGES, FILLER, ROOM, FAN, PEOPLE, ROLL, NUMBERS)
