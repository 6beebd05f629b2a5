"""Pouring lines: a batch as steps in words, for the eye and the ear."""
from ..catalogue.measuring import COLD, STIR_LONG
from ..clock import sun_lines
from ..forms.late import late
from ..forms.types import Found, Said, Values
from ..mix.label_words import parts_said, unconfirmed
from ..words.lines import ANSWER, MORE, WARN, Line, line, words
from ..words.messages import listed, message, quantity, row, sentences, spoken, with_unit
from . import thicken_lines, time_in_cup_lines, ways
from .by_scale_lines import on_scale, weighed
from .measured_out import FIELDS
from .poured_mix import asked

RESCUE = (("rescue", "yes"),)
# way: how its line of a part is named, how it is said aloud, what is asked when it came out otherwise
WAYS = {"scale": ("reading_", "pouring-said.scale", "pouring-asks.scale"),
        "pumps": ("strokes_", "pouring-said.pumps", "pouring-asks.pumps"),
        "syringes": ("drawn_", "pouring-said.syringes", "pouring-asks.syringes"),
        "graduated": ("level_", "pouring-said.graduated", "pouring-asks.stands"),
        "stick": ("mark_", "pouring-said.stick", "pouring-asks.stands")}
SAID_LATER = ("poured", "pours")  # warnings that have a step or a place of their own


def step(name: str, label: Said, figure: Said = "", under: Said = "", said: Said = "", part: str = "",
         span: "list[float] | tuple[float, ...]" = (), seconds: float = 0, field: str = "", asks: Said = "",
         rank: str = ANSWER, lead: tuple[tuple[str, str], ...] = (), keeps: "list[tuple] | tuple" = (),
         logs: "list[tuple] | tuple" = (), writes: Said = "", mends: bool = False, meets: bool = False) -> dict:
    """One step as data.

    label: as of a line; figure: the large text with its unit; under: a sentence below it; said: words for the ear
    seconds: of a clock that runs in this step; field: where an actual reading is kept, asks: how it is asked for
    writes: what stands in that field once it is done as told, where that is not the figure
    meets: whether what comes after it meets what is in the cup, so that time runs from its end
    mends: whether it brings a pour that is off back into ratio, so that it is gone once it is done
    lead: pairs that mend it, in the form; keeps: pairs that a putty batch of this step starts with
    logs: pairs of the whole batch, as the move `log` reads it
    """
    return {"name": name, "label": label, "figure": figure, "under": under, "said": said or label, "part": part,
            "span": list(span), "seconds": seconds, "field": field, "asks": asks, "rank": rank,
            "writes": writes or figure if field else "", "mends": mends, "meets": meets,
            "lead": [list(pair) for pair in lead], "keeps": [list(pair) for pair in keeps],
            "logs": [list(pair) for pair in logs]}


def steps(found: Found, values: Values) -> list[dict]:
    """All steps of the batch in order, with what was typed of those done. found: pouring.PouringResult"""
    lines = ways.say(found.way, values)
    named = dict([(one.name, one) for one in lines])
    if found.hopeless:  # nothing that could be poured right: say so, and no more
        why = named[found.hopeless]
        return [step(why.name, why.label, "", why.text, rank=WARN)]
    steps_found = []
    if values["way"] == "scale":
        zero = on_scale(0.0, values["scale"]["step_unit"], values)
        steps_found.append(step("cup", "pouring-cup", zero, said="pouring-cup.said"))
    steps_found.extend(_parts(found, named, values))
    _warn_first(steps_found[0], lines + unconfirmed(values["system"], "ratio"))
    steps_found.append(_stir(found, values))
    if found.putty:
        steps_found.extend(_filler(found, values))
    steps_found.append(_done(found, _logs(found, values), values))
    return steps_found


def _parts(found: Found, named: dict[str, Line], values: Values) -> list[dict]:
    """A step for each part, and what to do where those done are off. named: the lines of the way, by name"""
    way, steps_found = values["way"], []
    key, aloud, asks = WAYS[way]
    figures = ways.written(found.way, values)
    group, field, _ = FIELDS[way]
    for place, name in enumerate(parts_said(values["system"])):
        one = named[key + "abcde"[place]]
        under = one.rough
        if way == "scale" and values["zeroing"] == "each" and place:
            under = "pouring-zero"
        if found.times > 1 and not place:
            under = message("pouring-one-of", pours=named["pours"].text, under=under)
        steps_found.append(step(
            one.name, one.label, one.text, under, message(aloud, part=name, figure=spoken(figures[place])), one.part,
            one.span, field="{}.{}.{}".format(group, place, field), asks=asks,
            meets=not place))
        steps_found.extend(_mending(found, named, place, values))
    return steps_found


def _mending(found: Found, named: dict[str, Line], place: int, values: Values) -> list[dict]:
    """What goes in after a part, before the next one does, where those done are off: the tool's own figure, or where it
    has none how far off they are and the way to Rescue. place: of that part"""
    way = values["way"]
    if place + 1 != found.parts:
        return []
    if way == "pumps" and sum(found.way.more):
        short = 0
        while not found.way.more[short]:
            short += 1
        more = found.way.more[short]
        return [_fix(named["more_" + "abcde"[short]], with_unit(str(more), "strokes"),
                     "counted.{}.strokes".format(short),
                     with_unit(str(found.way.strokes.counts[short] + more), "strokes"), named, values)]
    if not found.off:
        return []
    if "fix" in named:
        one = named["fix"]
        if way == "syringes":
            return [_fix(one, one.text, "drawn.{}.volume".format(found.way.fix.place),
                         late("by_marks_lines").drawn_in_all(found.way), named, values)]
        return [_fix(one, one.text, "readings.{}.shown".format(found.done), "", named, values)]
    poured = named["poured"]
    return [step("off", "pouring-off", poured.text, message("pouring-off.under", off=poured.rough), "pouring-off.said",
                 rank=WARN, lead=RESCUE)]


def _fix(one: Line, figure: Said, field: str, writes: Said, named: dict[str, Line], values: Values) -> dict:
    """The step that mends a pour.

    one: the line that says what to add, figure: of it; field: where what is read then is typed, writes: what it is
    """
    rough, off = one.rough, named["poured"].text if "poured" in named else ""
    if not off:
        under = rough
    elif rough in ("", "pouring-zero"):  # a sentence, or none
        under = sentences([rough, message("fix-why", off=off)])
    else:
        under = message("fix-why.with", rough=rough, off=off)
    _, _, asks = WAYS[values["way"]]
    return step("mend", one.label, one.text, under, message(
        "fix-said", what=one.label, figure=spoken(figure)), one.part, field=field,
        asks="fix-asks.pumps" if values["way"] == "pumps" else asks, rank=WARN, lead=RESCUE, writes=writes, mends=True)


def _warn_first(first: dict, lines: list[Line]) -> None:
    """What is wrong with this batch on this tool is said before the first of it is poured, and in the ear too."""
    warned = [one for one in lines if one.rank == WARN and one.name not in SAID_LATER]
    if not warned:
        return
    told_at_once = [message("pouring-warned" if one.value is None else "pouring-warned.figure", label=one.label,
                            text=one.text) for one in warned]
    first["under"] = row(told_at_once + [first["under"]], " ")
    for one in reversed(warned):
        if one.value is None:
            first["said"] = message("pouring-warned.said", label=one.label, then=first["said"])
    first["rank"] = WARN


def _done(found: Found, logs: list[tuple[str, Said]], values: Values) -> dict:
    do = "pouring-done.in-sun" if sun_lines.shines(values) else "pouring-done.under"
    if found.in_use is None:
        return step("done", "pouring-done", "", do, "pouring-done.said", logs=logs)
    time = found.in_use.usable.time
    under = sentences([do, message("pouring-done-within.under",
                                   rest=time_in_cup_lines.told_by(values, found.in_use))])
    return step("done", "pouring-done-within", time_in_cup_lines.minutes(time), under, message(
        "pouring-done-within.said", time=spoken(time_in_cup_lines.minutes(time))), logs=logs)


def _logs(found: Found, values: Values) -> list[tuple[str, Said]]:
    """The batch as it is written down: what is known of it, the rest is for the builder."""
    system, batch = values["system"], found.mix
    much = quantity(batch.mass, "g") if batch.mass else quantity(batch.volume, "mL")
    read = ways.written(found.way, values)[:found.done]
    pairs = [("mixture", system["name"] or "mixed"), ("thicken", "yes" if asked(values) else ""),
             ("volume", "" if batch.mass else much), ("lot", system["lot"]),
             ("readings", listed(read, "plain") if read else ""), ("mass", much if batch.mass else ""),
             ("temperature", quantity(values["temperature"], "degC", places=0)
              if values["temperature"] is not None else ""),
             ("label_time", quantity(system["pot_time"], "min", places=0) if system["pot_time"] else "")]
    return [pair for pair in pairs if pair[1]]


def _stir(found: Found, values: Values) -> dict:
    under = "pouring-stir.under"
    if values["temperature"] is None:
        under = message("pouring-stir.cold", longer=quantity(STIR_LONG, "min", places=0),
                        cold=quantity(COLD, "degC", places=0))
    return step("stir", "pouring-stir", quantity(found.stir, "min", places=0), under, message(
        "pouring-stir.said", time=spoken(quantity(found.stir, "min", places=0))), "mix", seconds=found.stir)


def _filler(found: Found, values: Values) -> list[dict]:
    lines = thicken_lines.say(found.putty, values)
    if found.putty.packed:
        return [step("packed", lines[0].label, "", lines[0].text, rank=WARN)]
    named = dict([(one.name, one) for one in lines])
    first, fillers = named["first_filler"], [one for one in lines if one.rank == ANSWER]
    names = thicken_lines.all_of([one.label for one in fillers])
    # a blend is no filler of the kit
    keeps = [] if values["blend"] else [("filler", values["filler"].get("id") or values["filler"]["name"]),
                                        ("mixed", weighed(found.one, values)), ("came_out", values["stiffness"])]
    return [
        step("first_filler", message("pouring-first", fillers=names, share=thicken_lines.first_share()), first.text,
             sentences(["pouring-first.caution", fillers[0].caution]),
             message("pouring-first.said", mass=spoken(weighed(found.putty.first, values))), "filler"),
        step("rest", message("pouring-rest", fillers=names), weighed(found.rest, values),
             message("pouring-rest.under", dose=fillers[0].rough),
             message("pouring-rest.said", mass=spoken(weighed(found.rest, values))), "filler"),
        step("weigh", "pouring-weigh", "", "pouring-weigh.under", "pouring-weigh.said", "filler", keeps=keeps),
    ]


def say(found: Found, values: Values) -> list[Line]:
    """The steps as lines, for a card or a program. found: pouring.PouringResult"""
    lines = []
    for place, one in enumerate(steps(found, values)):
        label = message("pouring-step", number=place + 1, label=one["label"])
        lines.append(words(one["name"], label, one["figure"] or one["under"], one["under"] if one["figure"] else "",
                           part=one["part"], rank=WARN if one["name"] in ("off", "too_coarse") else MORE))
    lines.append(line("done_parts", "pouring-parts", found.parts, "", found.parts, rank=MORE))
    return lines
