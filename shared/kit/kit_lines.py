"""Kit lines: one thing of the builder's own in one line, and where its figures come from."""
from ..forms.choices import option_words
from ..forms.late import late
from ..forms.types import Found, Said, Values
from ..things.records import ORIGIN
from ..words.lines import SAY, Line, words
from ..words.messages import listed, message, row
from ..words.provenance import marked

MOST_TOLD = 4  # facts in the one line that a list shows


def say(found: Found, values: Values) -> list[Line]:
    """found: `kit.KitResult`"""
    mark = found.started_from
    lines = [words("summary", found.record.called(found.thing), _summary(found, values["units"]), rank=SAY,
                   rough=message("kit-started-from", mark=marked(mark)) if mark else "")]
    same = [field.label for field in found.as_built_in]
    if same:
        lines.append(words("as_built_in", "kit-as-built-in",
                           message("kit-as-built-in.text", fields=listed(same, "plain")), rank=SAY))
    if found.used_up:
        lines.append(words("used_up", "kit-used-up", "kit-used-up.text", rank=SAY))
    return lines + late("own_codes_lines").say(found.own, found.signal) if found.own else lines


def _summary(found: Found, system: str) -> Said:
    """One line for a list: the first facts of a thing."""
    first = _facts(found, system)[:MOST_TOLD]
    told = listed([message("card-field", field=label, text=text) for label, text in first], "plain")
    origin = found.thing.get(ORIGIN.name) or ""
    return row([told, option_words(ORIGIN.options, origin)], " · ") if origin else told


def _facts(found: Found, system: str) -> "list[tuple[Said, Said]]":
    """(label, text) of every fact that was typed for a thing, in the order of its fields, the name left out."""
    facts, mine = [], found.thing
    for field in found.record.fields:
        typed = mine["_tree"].get(field.name)
        if field.name in ("name", ORIGIN.name) or typed is None or typed == "" or mine.get(field.name) is None:
            continue
        facts.append((field.label, field.in_words(str(typed), mine["_tree"], system, {})))
    return facts


def leads(systems: list) -> list[dict]:
    """To the test cup. systems: the pairs of each system"""
    return [{"label": "kit-test-cup", "screen": "trial", "pairs": pairs} for pairs in systems]
