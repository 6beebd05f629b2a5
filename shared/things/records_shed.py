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
from .records import CUP, FILLER, GRADUATED, PUMPS, SCALE, SYRINGES, SYSTEM, Record


def check_room(values):
    """A room is known by its volume, or by all three of its sizes."""
    for name in ("length", "width", "height"):
        if not values["volume"] and not values[name]:
            raise InputError(name, "Room: type length, width and height, or its volume")


ROOM = Record("room", "Room", (
    Text("name", "Name"),
    Number("length", "Length", unit="m", low=0, high=100, above=True, optional=True),
    Number("width", "Width", unit="m", low=0, high=100, above=True, optional=True),
    Number("height", "Height", unit="m", low=0, high=20, above=True, optional=True),
    Number("volume", "Volume, if known", unit="m3", low=0, high=50000, above=True, optional=True,
           help="Used instead of length, width and height"),
), airing.ROOMS, check_room, own=("length", "width", "height", "volume"))

FAN = Record("fan", "Fan", (
    Text("name", "Name"),
    Number("flow", "Air it moves", unit="m3/h", low=0, high=100000, above=True,
           help="From its label; a filter or a hose on it takes up to half"),
), airing.FANS, own=("flow",))


def check_people(values):
    """Rates from own batches are written by the engine; one that was written over must still read."""
    if values["learned"]:
        late("learned_rates").read_learned(values["learned"])


PEOPLE = Record("people", "People", (
    Text("name", "Name"),
    Number("hands", "How many people", low=1, high=6, whole=True),
) + tuple([Number(row[0], row[1], unit="m/min", low=0.02, high=20, optional=True, fold="Rates, downhand, of one person")
           for row in RATES]) + (
    Text("learned", "From own batches", most=400, fold="Rates, downhand, of one person", learned=True,
         help="Learned from the log; a rate typed above is used instead."),
), tuple([(str(place + 1), name, MEMORY, (("name", name), ("hands", str(place + 1))) + tuple(
    [(row[0], plain(row[2]) + " m/min") for row in RATES]))
    for place, name in enumerate(("Alone", "Two", "Three", "Four", "Five", "Six"))]), check_people)


def check_roll(values):
    """Tape and cloth are known by their weight."""
    if not values["of"]:
        raise InputError("of", "Of: choose what is on it")
    if values["of"] != "ply" and not values["weight"]:
        raise InputError("weight", "Dry weight: type it, tape and cloth are known by it")


ROLL = Record("roll", "Roll or remnant", (
    Text("name", "Name"),
    Choice("of", "Of", (("tape", "tape"), ("cloth", "cloth"), ("ply", "peel ply")), unsaid="not known"),
    Number("width", "Width", unit="mm", low=5, high=3000),
    Number("weight", "Dry weight", unit="g/m2", low=10, high=3000, optional=True, help="Peel ply needs none"),
    Number("length", "Length left", unit="m", low=0, high=500, help="The boat can take off it what was cut"),
), glass.ROLLS, check_roll, own=("of", "width", "weight"))

def check_numbers(values):
    """Numbers that are kept under a name are at least one."""
    if values["name"] and not (values["ambulance"] or values["poison"] or values["person"]):
        raise InputError("ambulance", "Ambulance, poison centre or a person: type at least one number to dial")


# what a person typed for an emergency stays on this phone and in the saved file: no link takes it along
NUMBERS = Record("numbers", "Emergency numbers", (
    Text("name", "Name", private=True, help="Where they hold: home, the yard, a harbour"),
    Phone("ambulance", "Ambulance, emergency call", private=True, optional=True),
    Phone("poison", "Poison centre", private=True, optional=True),
    Text("who", "Somebody to call", most=30, private=True),
    Phone("person", "Their number", private=True, optional=True),
), (("none", "None typed yet", "", ()),), check_numbers, own=("ambulance", "poison", "who", "person"))

# in the order of the kit
RECORDS = (SYSTEM, SCALE, PUMPS, CUP, GRADUATED, SYRINGES, FILLER, ROOM, FAN, PEOPLE, ROLL, NUMBERS)
