"""Pouring: a batch as steps, one at a time, each corrected by what was really poured before it."""
from ..catalogue.measuring import COLD, DENSEST, STIR_LONG
from ..equations.stirring import stirring_time
from ..mix import ratio
from ..words.lines import ANSWER, MORE, WARN, line, words
from ..words.speech import spoken
from ..words.units import told
from . import measure, thicken, time_in_cup
from .by_scale import on_scale, weighed
from .measured_out import FIELDS, readings

INPUTS = thicken.INPUTS
CHECKS = measure.CHECKS + (thicken.check,)

# way: how its line of a part is named, what is said before the figure, what is asked when it came out otherwise
WAYS = {"scale": ("reading_", " to ", "It shows"), "pumps": ("strokes_", ", ", "Strokes pumped"),
        "syringes": ("drawn_", ", draw up ", "Drawn up, in all"),
        "graduated": ("level_", " up to the mark ", "It stands at"),
        "stick": ("mark_", " up to ", "It stands at")}
SAID_LATER = ("poured", "pours")  # warnings that have a step or a place of their own
SCRAPE = "Scrape bottom and corners, and the stick."


def step(name, label, figure="", under="", said="", part="", span=(), seconds=0, field="", asks="", rank=ANSWER,
         lead=(), keeps=(), logs=()):
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


def steps(values):
    """All steps of the batch in order, with what was typed of those done."""
    batch, way = ratio.mix(values), values["way"]
    key, before, asks = WAYS[way]
    lines = measure.way_of(way).answer(values)
    found = dict([(one.name, one) for one in lines])
    hopeless = found.get("too_coarse")
    if hopeless is None and _nothing_to_see(values, found):
        hopeless = found.get("too_small")
    if hopeless is not None:  # nothing that could be poured right: say so, and no more
        return [step(hopeless.name, hopeless.label, "", hopeless.text, rank=WARN)]
    steps_found = []
    if way == "scale":
        zero = on_scale(0.0, values["scale"]["step_unit"], values)
        steps_found.append(step("cup", "Cup on the scale, set it to", zero, said="Cup on the scale, set it to zero"))
    several = found.get("pours")
    group, field, _ = FIELDS[way]
    for place, name in enumerate(batch.names):
        one = found[key + "abcde"[place]]
        under = one.rough
        if way == "scale" and values["zeroing"] == "each" and place:
            under = "Set the scale to 0 first."
        if several and not place:
            under = "One pour of {}. {}".format(several.text, under)
        steps_found.append(step(
            one.name, one.label, one.text, under, name + before + spoken(one.text), one.part, one.span,
            field="{}.{}.{}".format(group, place, field), asks=asks))
        if place + 1 == len(readings(values)):  # before the next part goes in
            steps_found.extend(_off(found.get("poured")))
    _warn_first(steps_found[0], lines)
    mix = of_one_pour(values, found)
    steps_found.append(_stir(values, batch, mix))
    if thicken.asked(values):
        steps_found.extend(_filler(values, mix))
    steps_found.append(_done(values, _logs(values, found, key)))
    return steps_found


def _nothing_to_see(values, found):
    """Whether a part to come is so small that the scale would show nothing of it: no reading could be typed either."""
    if values["way"] != "scale":
        return False
    shows = [found["reading_" + "abcde"[place]].value for place in range(len(ratio.part_names(values["system"])))]
    before = [0.0] * len(shows) if values["zeroing"] == "each" else [0.0] + shows[:-1]
    return any([after <= one for one, after in zip(before, shows)][len(readings(values)):])


def _warn_first(first, lines):
    """What is wrong with this batch on this tool is said before the first of it is poured, and in the ear too."""
    warned = [one for one in lines if one.rank == WARN and one.name not in SAID_LATER]
    if not warned:
        return
    told_at_once = [one.label + (": " if one.label[-1:] not in "?." else " ") + one.text for one in warned]
    first["under"] = " ".join([text + ("" if text[-1:] == "." else ".") for text in told_at_once] + [first["under"]])
    first["said"] = ". ".join([one.label for one in warned if one.value is None] + [first["said"]])
    first["rank"] = WARN


def _done(values, logs):
    said = time_in_cup.found(values)
    if said is None:
        return step("done", "Done, use it up", "", "Spread it or lay it now: a full cup heats itself.",
                    "Done. Use it up, a full cup heats itself.", logs=logs)
    here, one, _ = said
    text = time_in_cup.minutes_text(one.time)
    under = "From first contact: " + time_in_cup.told_by(values, here, one)
    return step("done", "Done, use it up within", text, under + ". Spread it or lay it now: a full cup heats itself.",
                "Done. Use it up within " + spoken(text) + " of first contact, a full cup heats itself.", logs=logs)


def _off(poured):
    if poured is None or poured.rank != WARN:
        return []
    return [step("off", "Off ratio, by", poured.text, poured.rough + ". Nothing comes out of a cup: add what is short.",
                 "Off ratio. Rescue it before you go on.", rank=WARN, lead=(("rescue", "yes"),))]


def of_one_pour(values, found):
    """What is stirred and thickened at once: the mix as it was poured, and of several equal pours one.

    found: the lines of the way of measuring by name
    """
    mix, several, measured = thicken.poured(values), found.get("pours"), found.get("measured")
    if several is None or readings(values):  # what was typed is of one pour already
        return mix
    if not mix.density:
        return ratio.mix_of_volume(values["system"], mix.volume / several.value)
    volume = measured.value if measured else mix.volume / several.value
    return ratio.mix_of_mass(values["system"], volume * mix.density)


def _logs(values, found, key):
    """The batch as it is written down: what is known of it, the rest is for the builder."""
    system, units, batch = values["system"], values["units"], thicken.poured(values)
    much = told(batch.mass, "g", units) if batch.mass else told(batch.volume, "mL", units)
    read = [found[key + "abcde"[place]].text for place in range(len(readings(values)))]
    pairs = [("what", much + " " + (system["name"] or "mixed") + (", thickened" if thicken.asked(values) else "")),
             ("lot", system["lot"]), ("readings", ", ".join(read)),
             ("mass", much if batch.mass else ""),
             ("temperature", told(values["temperature"], "degC", units, places=0)
              if values["temperature"] is not None else ""),
             ("label_time", told(system["pot_time"], "min", units, places=0) if system["pot_time"] else "")]
    return [pair for pair in pairs if pair[1]]


def _stir(values, batch, mix):
    cold, mass = values["temperature"], mix.mass
    if mass is None:
        mass = batch.volume * DENSEST
    seconds = stirring_time(mass, cold)
    text = told(seconds, "min", "metric", places=0)
    under = "Tap, and the clock runs. " + SCRAPE + " Common practice"
    if cold is None:
        under += "; {} below {} too".format(told(STIR_LONG, "min", places=0),
                                             told(COLD, "degC", values["units"], places=0))
    return step("stir", "Stir, both liquids", text, under + ".", "Stir for " + spoken(text) + ". " + SCRAPE, "mix",
                seconds=seconds)


def _filler(values, batch):
    lines = thicken.lines_of(values, batch)
    packed = [one for one in lines if one.name == "packed"]
    if packed:
        return [step("packed", packed[0].label, "", packed[0].text, rank=WARN)]
    found = dict([(one.name, one) for one in lines])
    first = found["first_filler"]
    fillers = [one for one in lines if one.rank == ANSWER]
    names = " and ".join([one.label for one in fillers])
    whole = sum([one.value for one in fillers])
    rest = weighed(whole - first.value, values)
    caution = "Only now, the liquids being one. " + fillers[0].caution
    keeps = [("filler", values["filler"]["name"] if not values["blend"] else names),
             ("mixed", weighed(batch.mass, values)), ("came_out", values["stiffness"])]
    return [
        step("first_filler", names + ", two thirds first", first.text, caution,
             "Now the filler. First " + spoken(first.text) + ". Stir it in.", "filler"),
        step("rest", names + ", little by little, about", rest, "Stop when it is right: " + fillers[0].rough + ". "
             + SCRAPE, "The rest little by little, about " + spoken(rest) + ". Stop when it is right.", "filler"),
        step("weigh", "Weigh the filler tub again", "", "Before and after, and how stiff it came out: from then on the "
             "dose leans on your own batches.", "Weigh the filler tub again.", "filler",
             keeps=keeps if not values["blend"] else ()),
    ]


def answer(values):
    """The steps as lines, for a card or a program."""
    lines, done = [], len(readings(values))
    for place, one in enumerate(steps(values)):
        label = "{}. {}".format(place + 1, one["label"])
        lines.append(words(one["name"], label, one["figure"] or one["under"], one["under"] if one["figure"] else "",
                           part=one["part"], rank=WARN if one["name"] in ("off", "too_coarse") else MORE))
    lines.append(line("done_parts", "Parts poured", done, "", str(done), rank=MORE))
    return lines
