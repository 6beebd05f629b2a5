"""Kit: one thing of the builder's own, read and checked before it is kept."""
from ..catalogue.marks import MEMORY
from ..forms.choices import option_words
from ..forms.errors import InputError
from ..forms.inputs import Choice, Pick
from ..things.records import ORIGIN
from ..things.records_shed import RECORDS
from ..words.lines import SAY, words
from ..words.numbers import small
from ..words.units import in_system

KINDS = {record.name: record for record in RECORDS}
MOST_TOLD = 4  # facts in the one line that a list shows

INPUTS = (Choice("kind", "Kind of thing", tuple([(record.name, record.label) for record in RECORDS])),) + tuple([
    Pick(record.name, record.label, record, when=(("kind", (record.name,)),),
         help="A new thing is what you type. Or start from a typical one, and type your own figures over it.")
    for record in RECORDS])


def check(values):
    """A thing without a name is not found again."""
    kind = values["kind"]
    if not values[kind].get("name"):
        raise InputError(kind + ".name", "Name: type one, so that you find it again")


CHECKS = (check,)


def facts(record, values, system):
    """(label, text) of every fact that was typed for a thing, in the order of its fields, the name left out."""
    found = []
    for field in record.fields:
        typed = values["_tree"].get(field.name)
        if field.name in ("name", ORIGIN.name) or typed is None or typed == "" or values.get(field.name) is None:
            continue
        text = field.in_words(str(typed), values["_tree"], system, {})
        found.append((in_system(field.label, system), text))
    return found


def as_built_in(record, values):
    """Labels of the fields that stand word for word as in a built-in row from memory; one alone may well be typed."""
    best, tree = [], values["_tree"]
    for _, _, mark, typed in record.rows:
        same = [name for name, text in typed if name != "name" and tree.get(name) == text]
        if mark == MEMORY and len(same) > max(1, len(best)):
            best = same
    return [small(field.label[:1]) + field.label[1:] for field in record.fields if field.name in best]


def summary(record, values, system):
    """One line for a list: the first facts of a thing."""
    first = facts(record, values, system)[:MOST_TOLD]
    told = ", ".join([small(label[:1]) + label[1:] + " " + text for label, text in first])
    whence = option_words(ORIGIN.options, values.get(ORIGIN.name) or "", system)
    return told + (" · " + whence if whence else "")


def answer(values):
    """What will be kept, in one line, and where its figures come from; whether a roll is used up."""
    record = KINDS[values["kind"]]
    mine = values[record.name]
    mark = "".join([row[2] for row in record.rows if row[0] == mine["id"]])
    lines = [words("summary", mine["name"], summary(record, mine, values["units"]), rank=SAY,
                   rough="started from figures " + mark + ": type your own over them" if mark else "")]
    same = as_built_in(record, mine)
    if same and not mark:
        lines.append(words("as_built_in", "From memory", "As built in, from memory: " + ", ".join(same), rank=SAY))
    if mine.get("length") == 0:  # only a roll has one
        lines.append(words("used_up", "Used up", "Nothing is left of it: the boat cuts from the others.", rank=SAY))
    return lines
