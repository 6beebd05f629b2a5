"""Pouring lines: a batch as steps in words, for the eye and the ear."""
from ..catalogue.measuring import COLD, STIR_LONG
from ..forms.types import Found, Values
from ..mix.label_words import part_names, unconfirmed
from ..words.lines import ANSWER, MORE, WARN, Line, line, said, words
from ..words.messages import message
from ..words.speech import spoken
from ..words.units import told
from ..words.written import reader
from . import thicken_lines, time_in_cup_lines, ways
from .by_scale_lines import on_scale, weighed
from .measured_out import FIELDS
from .poured_mix import asked

# way: how its line of a part is named, what is said before the figure, what is asked when it came out otherwise
WAYS = {"scale": ("reading_", " to ", "It shows"), "pumps": ("strokes_", ", ", "Strokes pumped"),
        "syringes": ("drawn_", ", draw up ", "Drawn up, in all"),
        "graduated": ("level_", " up to the mark ", "It stands at"),
        "stick": ("mark_", " up to ", "It stands at")}
SAID_LATER = ("poured", "pours")  # warnings that have a step or a place of their own
SCRAPE = "Scrape bottom and corners, and the stick."


def step(name: str, label: str, figure: str = "", under: str = "", said: str = "", part: str = "",
         span: "list[float] | tuple[float, ...]" = (), seconds: float = 0, field: str = "", asks: str = "",
         rank: str = ANSWER, lead: tuple[tuple[str, str], ...] = (), keeps: "list[tuple] | tuple" = (),
         logs: "list[tuple] | tuple" = ()) -> dict:
    """One step as data.

    label: as of a line; figure: the large text with its unit; under: a sentence below it; said: words for the ear
    seconds: of a clock that runs in this step; field: where an actual reading is kept, asks: how it is asked for
    lead: pairs that mend it, in the form; keeps: pairs that a putty batch of this step starts with
    logs: pairs of the whole batch, as the move `log` reads it
    """
    return {"name": name, "label": label, "figure": figure, "under": under, "said": said or label, "part": part,
            "span": list(span), "seconds": seconds, "field": field, "asks": asks, "rank": rank,
            "lead": [list(pair) for pair in lead], "keeps": [list(pair) for pair in keeps],
            "logs": [list(pair) for pair in logs]}


def steps(found: Found, values: Values) -> list[dict]:
    """All steps of the batch in order, with what was typed of those done. found: pouring.PouringResult"""
    lines = _in_text(ways.say(found.way, values) + unconfirmed(values["system"], "ratio"), values)
    named = dict([(one.name, one) for one in lines])
    if found.hopeless:  # nothing that could be poured right: say so, and no more
        why = named[found.hopeless]
        return [step(why.name, why.label, "", why.text, rank=WARN)]
    steps_found = []
    if values["way"] == "scale":
        zero = on_scale(0.0, values["scale"]["step_unit"], values)
        steps_found.append(step("cup", "Cup on the scale, set it to", zero, said="Cup on the scale, set it to zero"))
    steps_found.extend(_parts(found, named, values))
    _warn_first(steps_found[0], lines)
    steps_found.append(_stir(found, values))
    if found.putty:
        steps_found.extend(_filler(found, values))
    steps_found.append(_done(found, _logs(found, named, values), values))
    return steps_found


def _in_text(lines: list[Line], values: Values) -> list[Line]:
    """Lines as text, for what still joins it."""
    who = reader(values["units"])
    return [Line(one.name, said(one.label, who), one.value, one.unit, said(one.text, who), said(one.rough, who),
                 said(one.caution, who), one.part, one.rank, one.span) for one in lines]


def _parts(found: Found, named: dict[str, Line], values: Values) -> list[dict]:
    """A step for each part, and what to do where those done are off. named: the lines of the way, by name"""
    way, steps_found = values["way"], []
    key, before, asks = WAYS[way]
    group, field, _ = FIELDS[way]
    for place, name in enumerate(part_names(values["system"])):
        one = named[key + "abcde"[place]]
        under = one.rough
        if way == "scale" and values["zeroing"] == "each" and place:
            under = "Set the scale to 0 first."
        if found.times > 1 and not place:
            under = "One pour of {}. {}".format(named["pours"].text, under)
        steps_found.append(step(
            one.name, one.label, one.text, under, name + before + spoken(one.text), one.part, one.span,
            field="{}.{}.{}".format(group, place, field), asks=asks))
        if place + 1 == found.done and found.off:  # before the next part goes in
            poured = named["poured"]
            steps_found.append(step(
                "off", "Off ratio, by", poured.text, poured.rough + ". Nothing comes out of a cup: add what is short.",
                "Off ratio. Rescue it before you go on.", rank=WARN, lead=(("rescue", "yes"),)))
    return steps_found


def _warn_first(first: dict, lines: list[Line]) -> None:
    """What is wrong with this batch on this tool is said before the first of it is poured, and in the ear too."""
    warned = [one for one in lines if one.rank == WARN and one.name not in SAID_LATER]
    if not warned:
        return
    told_at_once = [one.label + (": " if one.label[-1:] not in "?." else " ") + one.text for one in warned]
    first["under"] = " ".join([text + ("" if text[-1:] == "." else ".") for text in told_at_once] + [first["under"]])
    first["said"] = ". ".join([one.label for one in warned if one.value is None] + [first["said"]])
    first["rank"] = WARN


def _done(found: Found, logs: list[tuple[str, str]], values: Values) -> dict:
    if found.in_use is None:
        return step("done", "Done, use it up", "", "Spread it or lay it now: a full cup heats itself.",
                    "Done. Use it up, a full cup heats itself.", logs=logs)
    text = time_in_cup_lines.minutes_text(found.in_use.usable.time)
    under = message("cup-time-done", rests=time_in_cup_lines.told_by(values, found.in_use))
    return step("done", "Done, use it up within", text, under,
                "Done. Use it up within " + spoken(text) + " of first contact, a full cup heats itself.", logs=logs)


def _logs(found: Found, named: dict[str, Line], values: Values) -> list[tuple[str, str]]:
    """The batch as it is written down: what is known of it, the rest is for the builder."""
    system, units, batch, key = values["system"], values["units"], found.mix, WAYS[values["way"]][0]
    much = told(batch.mass, "g", units) if batch.mass else told(batch.volume, "mL", units)
    read = [named[key + "abcde"[place]].text for place in range(found.done)]
    pairs = [("what", much + " " + (system["name"] or "mixed") + (", thickened" if asked(values) else "")),
             ("lot", system["lot"]), ("readings", ", ".join(read)),
             ("mass", much if batch.mass else ""),
             ("temperature", told(values["temperature"], "degC", units, places=0)
              if values["temperature"] is not None else ""),
             ("label_time", told(system["pot_time"], "min", units, places=0) if system["pot_time"] else "")]
    return [pair for pair in pairs if pair[1]]


def _stir(found: Found, values: Values) -> dict:
    text = told(found.stir, "min", "metric", places=0)
    under = "Tap, and the clock runs. " + SCRAPE + " Common practice"
    if values["temperature"] is None:
        under += "; {} below {} too".format(told(STIR_LONG, "min", places=0),
                                             told(COLD, "degC", values["units"], places=0))
    return step("stir", "Stir, both liquids", text, under + ".", "Stir for " + spoken(text) + ". " + SCRAPE, "mix",
                seconds=found.stir)


def _filler(found: Found, values: Values) -> list[dict]:
    lines = thicken_lines.say(found.putty, values)
    if found.putty.packed:
        return [step("packed", lines[0].label, "", lines[0].text, rank=WARN)]
    named = dict([(one.name, one) for one in lines])
    first, fillers = named["first_filler"], [one for one in lines if one.rank == ANSWER]
    names = " and ".join([one.label for one in fillers])
    rest = weighed(found.rest, values)
    caution = "Only now, the liquids being one. " + fillers[0].caution
    keeps = [("filler", values["filler"]["name"] if not values["blend"] else names),
             ("mixed", weighed(found.one, values)), ("came_out", values["stiffness"])]
    return [
        step("first_filler", "{}, {} first".format(names, thicken_lines.first_share()), first.text, caution,
             "Now the filler. First " + spoken(first.text) + ". Stir it in.", "filler"),
        step("rest", names + ", little by little, about", rest, "Stop when it is right: " + fillers[0].rough + ". "
             + SCRAPE, "The rest little by little, about " + spoken(rest) + ". Stop when it is right.", "filler"),
        step("weigh", "Weigh the filler tub again", "", "Before and after, and how stiff it came out: from then on the "
             "dose leans on your own batches.", "Weigh the filler tub again.", "filler",
             keeps=keeps if not values["blend"] else ()),
    ]


def say(found: Found, values: Values) -> list[Line]:
    """The steps as lines, for a card or a program. found: pouring.PouringResult"""
    lines = []
    for place, one in enumerate(steps(found, values)):
        label = "{}. {}".format(place + 1, one["label"])
        lines.append(words(one["name"], label, one["figure"] or one["under"], one["under"] if one["figure"] else "",
                           part=one["part"], rank=WARN if one["name"] in ("off", "too_coarse") else MORE))
    lines.append(line("done_parts", "Parts poured", found.done, "", str(found.done), rank=MORE))
    return lines
