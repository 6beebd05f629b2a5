"""Kit lines: one thing of the builder's own in one line, and where its figures come from."""
from ..catalogue.ratios import SOON, WARM
from ..forms.choices import option_words
from ..forms.late import late
from ..forms.types import Found, Said, Values
from ..things.records import ORIGIN
from ..words.lines import BESIDE, SAY, WARN, Line, line, words
from ..words.messages import listed, message, quantity, row, typed
from ..words.numbers import DOWN, UP
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
    if found.shelf:
        lines.extend(_shelf_lines(found))
    return lines + late("own_codes_lines").say(found.own, found.signal) if found.own else lines


def _shelf_lines(found: Found) -> list[Line]:
    """What a system on the shelf still mixes, how long it keeps, what crystals need, what is left once some is gone."""
    lines, shelf, days = [], found.shelf, found.days
    if shelf.mixes is not None:
        lines.append(line("mixes", "shelf-mixes", shelf.mixes, "kg", quantity(shelf.mixes, "kg", DOWN), rank=BESIDE))
    if shelf.last:
        last = typed(shelf.last)
        if days is not None and days < 0:
            lines.append(words("last_day", "kit-shelf", message("shelf-last.past", day=last), rank=WARN))
        elif days is not None and days * 86400 <= SOON:
            lines.append(words("last_day", "kit-shelf", message("shelf-last.soon", day=last), rank=WARN))
        else:
            lines.append(words("last_day", "kit-shelf", message("shelf-last", day=last), rank=SAY))
    if shelf.through is not None:
        lines.append(words("crystals", "shelf-crystals", message(
            "shelf-crystals.text", warm=quantity(WARM, "degC", places=0),
            hours=quantity(shelf.through, "h", UP, 0)), rank=BESIDE))
    if found.less:
        left = [quantity(mass, "g", DOWN, 1) for mass in found.less]  # as a form takes it
        lines.append(words("on_shelf", "kind-system-left", row(left, " : "), rank=SAY))
    return lines


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
