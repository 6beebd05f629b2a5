"""Kit: one thing of the builder's own, read and checked before it is kept."""
from collections import namedtuple

from ..catalogue.marks import UNMEASURED
from ..equations.shelf import day_number
from ..forms.declared import alike
from ..forms.errors import InputError
from ..forms.inputs import Choice, Number, Pick, Text
from ..forms.late import late
from ..forms.links import handed_on
from ..forms.types import Values
from ..things.records import SYSTEM, Record
from ..things.records_shed import RECORDS
from ..things.statements import codes
from . import kit_lines

INPUTS = (Choice("kind", "kit-kind", tuple([(record.name, record.label) for record in RECORDS])),) + tuple([
    Pick(record.name, record.label, record, when=(("kind", (record.name,)),),
         help="kit-new-thing")
    for record in RECORDS]) + (
    # what the page says beside a thing: today, and what was poured of it just now, below 0 where that goes back
    Text("day", "kit-shelf", most=10, unseen=True),
    Number("off_shelf", "log-mass", unit="g", low=-100000, high=100000, optional=True, unseen=True),
)


# record: the declaration of this kind of thing; thing: its values; started_from: mark of the built-in row that it was
# started from, "" where from none; as_built_in: fields that stand as in a row that nobody measured; used_up: a roll
# with nothing left; own: own_codes.Statement of each hazard and precaution of its sheet; signal: their word, or ""
# shelf: `mix.shelf.Shelf`, None where nothing is told of it; less: what is left once `off_shelf` is gone [kg], () where
# that is not asked; days: left until the last day, below 0 behind it, None where today or that day is not known
KitResult = namedtuple("KitResult", ("record", "thing", "started_from", "as_built_in", "used_up", "own", "signal",
                                     "shelf", "less", "days"))


def check(values: Values) -> None:
    """A thing without a name is not found again."""
    kind = values["kind"]
    if not values[kind].get("name"):
        raise InputError(kind + ".name", "kit-no-name")


CHECKS = (check,)


def reckon(values: Values) -> KitResult:
    """The thing that will be kept, and what of it is not the builder's own."""
    record = next(iter([one for one in RECORDS if one.name == values["kind"]]))
    mine = values[record.name]
    mark = "".join([row[2] for row in record.rows if row[0] == mine["id"]])
    found = _codes(mine)
    own = late("own_codes").own(found) if found else []
    return KitResult(record, mine, mark, [] if mark else _as_built_in(record, mine["_tree"]), mine.get("length") == 0,
                     own, late("own_codes").signal(own) if own else "", *_shelf(record, mine, values))


def _shelf(record: Record, mine: Values, values: Values) -> tuple:
    """What is told of a system on the shelf: (`mix.shelf.Shelf`, what is left of its parts, days to its last day)."""
    if record is not SYSTEM or not (mine["on_shelf"] or mine["made"] or mine["opened"]):
        return None, (), None
    found, today = late("shelf").shelf(mine), day_number(values["day"])
    less = late("shelf").less(mine, values["off_shelf"]) if values["off_shelf"] is not None else ()
    last = day_number(found.last)
    return found, less, last - today if last is not None and today is not None else None


def _codes(thing: Values) -> "tuple[str, ...]":
    return codes(thing.get("statements") or "")


def _as_built_in(record: Record, tree: dict) -> list:
    """The fields that stand word for word as in a built-in row that nobody measured; one alone may well be typed."""
    best: list = []
    for _, _, mark, typed in record.rows:
        same = [name for name, text in typed if name != "name" and alike(tree.get(name), text)]
        if mark in UNMEASURED and len(same) > max(1, len(best)):
            best = same
    return [field for field in record.fields if field.name in best]


def answer(values: Values) -> list:
    """What will be kept, in one line, and where its figures come from; a roll that is used up; what its codes say."""
    return kit_lines.say(reckon(values), values)


def figures(values: Values) -> list:
    """The pictograms of its own codes."""
    found = _codes(values[values["kind"]])
    return [late("pictogram_drawing").figure(key) for key in late("own_codes").signs(found)] if found else []


def leads(values: Values) -> list:
    """From a system to its test cup."""
    return kit_lines.leads([handed_on(pick, values) for pick in INPUTS if pick.name == values["kind"] == SYSTEM.name])
