"""Kit lines: one thing of the builder's own in one line, and where its figures come from."""
from ..forms.choices import option_words
from ..forms.late import late
from ..forms.types import Found, Values
from ..things.records import ORIGIN
from ..words.lines import SAY, Line, words
from ..words.numbers import small
from ..words.units import in_system

MOST_TOLD = 4  # facts in the one line that a list shows


def say(found: Found, values: Values) -> list[Line]:
    """found: `kit.KitResult`"""
    mark = found.started_from
    lines = [words("summary", found.thing["name"], _summary(found, values["units"]), rank=SAY,
                   rough="started from figures " + mark + ": type your own over them" if mark else "")]
    same = [_inside(field.label) for field in found.as_built_in]
    if same:
        lines.append(words("as_built_in", "As built in", "Not measured by anybody: " + ", ".join(same), rank=SAY))
    if found.used_up:
        lines.append(words("used_up", "Used up", "Nothing is left of it: the boat cuts from the others.", rank=SAY))
    return lines + late("own_codes_lines").say(found.own, found.signal) if found.own else lines


def _summary(found: Found, system: str) -> str:
    """One line for a list: the first facts of a thing."""
    first = _facts(found, system)[:MOST_TOLD]
    told = ", ".join([_inside(label) + " " + text for label, text in first])
    whence = option_words(ORIGIN.options, found.thing.get(ORIGIN.name) or "", system)
    return told + (" · " + whence if whence else "")


def _inside(label: str) -> str:
    """A label as it stands inside a sentence."""
    return small(label[:1]) + label[1:]


def _facts(found: Found, system: str) -> "list[tuple[str, str]]":
    """(label, text) of every fact that was typed for a thing, in the order of its fields, the name left out."""
    facts, mine = [], found.thing
    for field in found.record.fields:
        typed = mine["_tree"].get(field.name)
        if field.name in ("name", ORIGIN.name) or typed is None or typed == "" or mine.get(field.name) is None:
            continue
        facts.append((in_system(field.label, system), field.in_words(str(typed), mine["_tree"], system, {})))
    return facts


def leads(systems: list) -> list[dict]:
    """To the test cup. systems: the pairs of each system"""
    return [{"label": "Test cup: your own times", "screen": "trial", "pairs": pairs} for pairs in systems]
