"""Rooms and fans: what the kit holds about the place one works in."""
from .catalogue import airing
from .errors import InputError
from .inputs import Number, Text
from .records import Record


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
           help="Goes before length, width and height"),
), airing.ROOMS, check_room)

FAN = Record("fan", "Fan", (
    Text("name", "Name"),
    Number("flow", "Air it moves", unit="m3/h", low=0, high=100000, above=True,
           help="From its label; a filter or a hose on it takes up to half"),
), airing.FANS)
