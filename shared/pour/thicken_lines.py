"""Thicken lines: what is said of a putty: the filler, how it goes in, what it makes, whether it stands."""
from ..catalogue.fillers import AIR_RANGE, DOSE_SPREAD, STIFFNESSES, SURE
from ..catalogue.starts import FIRST_PARTS
from ..forms.types import Found, Said, Values
from ..mix.filler_dose import components, place_of
from ..mix.filler_words import packed_text
from ..things.records import FILLER
from ..words.lines import ANSWER, ASK, MORE, WARN, Line, line, words
from ..words.messages import fact, message, number, quantity, row, typed
from ..words.numbers import DOWN, UP, bare, shown
from .by_scale_lines import weighed

# what is stirred in first, of how much: how that share is said
SHARES = {(1, 2): "thicken-share.half", (1, 3): "thicken-share.third", (2, 3): "thicken-share.two-thirds"}


def say(found: Found, values: Values) -> list[Line]:
    """The filler, how it goes in, the putty, and whether it stands. found: putty.PuttyResult"""
    if found.packed:
        return [words("packed", "thicken-packed", packed_text(found.packed), part="filler", rank=WARN)]
    lines, fillers = [], components(values)[0]
    for place, (one, filler) in enumerate(zip(found.fillers, fillers)):
        lines.extend(_filler(found, place, one, filler, values))
    lines.append(line("first_filler", "thicken-first", found.first, "kg", weighed(found.first, values), part="filler",
                      rough=message("thicken-first.rough", share=first_share())))
    lines.extend(_putty(found))
    lines.extend(_room(found))
    lines.extend(_stands(found.stands, values))
    lines.extend(_flags(found, [FILLER.called(filler) or "thicken-filler.this" for filler in fillers]))
    if found.own:
        lines.extend(_own_batches(found.own, [one["place"] + 1 for one in values["batches"]]))
        lines.extend(_contradictions(found.own))
    return lines


def all_of(names: list[Said]) -> Said:
    """Fillers by name, as one thing that is said."""
    found = names[0]
    for name in names[1:]:
        found = message("thicken-both", one=found, other=name)
    return found


def first_share() -> Said:
    """How much of the filler is stirred in first."""
    return SHARES.get(FIRST_PARTS) or quantity(FIRST_PARTS[0] / FIRST_PARTS[1], "%", places=1)


def dose_mark(found: Found) -> Said:
    """How far a dose may be off, and whose figure it is. found: putty.PuttyResult"""
    if not found.counted:
        return message("thicken-dose.memory", spread=fact("%", DOSE_SPREAD))
    return message("thicken-dose.own", spread=quantity(found.spread, "%", UP, 0), count=found.counted)


def _filler(found: Found, place: int, one: Found, filler: Values, values: Values) -> list[Line]:
    """One filler: by weight, by scoops, loose. one: putty.Scooped"""
    key = "filler" if place == 0 else "filler_" + str(place + 1)
    scoops = number(shown(one.scoops, 0 if one.scoops == int(one.scoops) else 1))
    name = FILLER.called(filler) or "thicken-filler"
    return [
        line(key, name, one.mass, "kg", weighed(one.mass, values), part="filler", rank=ANSWER, rough=dose_mark(found),
             caution="thicken-filler.caution"),
        line(key + "_scoops", message("thicken-scoops", filler=name), one.scoops, "",
             message("thicken-scoops.text", scoops=scoops, volume=quantity(values["scoop"], "mL")), part="filler",
             rough="thicken-scoops.rough"),
        line(key + "_loose", message("thicken-loose", filler=name), one.loose, "m3", quantity(one.loose, "mL"),
             part="filler", rank=MORE, rough="thicken-loose.rough"),
    ]


def _putty(found: Found) -> list[Line]:
    lines = [
        line("putty", "thicken-putty", found.volume, "m3",
             row([quantity(found.volume, "mL"), quantity(found.mass, "g")], " · "), part="filler",
             rough=message("thicken-putty.rough", air=quantity(found.air, "%", places=0),
                           range=fact("%", *AIR_RANGE))),
        line("putty_density", "thicken-density", found.density, "kg/m3", quantity(found.density, "g/mL", places=2),
             part="filler", rank=MORE, rough="thicken-density.rough"),
        line("dose", "thicken-dose", found.dose, "kg/kg", number(shown(100 * found.dose, 1)), part="filler",
             rank=MORE, rough=dose_mark(found)),
    ]
    if found.thicker is not None:
        lines.append(line("thicker", "thicken-thicker", found.thicker, "", message(
            "thicken-thicker.text", times=number(shown(found.thicker, 0))), part="filler", rank=MORE,
            rough="thicken-thicker.rough"))
    return lines


def _room(found: Found) -> list[Line]:
    """Whether the putty fits a cup that was chosen."""
    if found.room is None:
        return []
    return [line("cup_too_small", "thicken-room", found.volume, "m3",
                 message("thicken-room.text", volume=quantity(found.volume, "mL", UP),
                         room=quantity(found.room, "mL", DOWN)),
                 part="filler", rank=WARN, rough="thicken-room.rough")]


def _stands(stands: Found, values: Values) -> list[Line]:
    """Whether the putty stays where it is put. stands: putty.Stands"""
    enough = None if stands.enough is None else STIFFNESSES[stands.enough][1]
    one_pass = quantity(stands.thickest, "mm", DOWN, digits=2)
    rough = "thicken-needed.doubled" if SURE == 2 else message("thicken-needed.times", sure=number(bare(SURE, 2)))
    if values["position"] == "overhead":
        rough = message("thicken-needed.overhead", how=rough)
    lines = [line("needed", "thicken-needed", stands.needed, "Pa", enough or "thicken-needed.none", part="filler",
                  rough=rough, rank=MORE if stands.holds else WARN),
             line("pass", "thicken-pass", stands.thickest, "m", one_pass, part="filler", rank=MORE,
                  rough="thicken-pass.rough")]
    if not stands.holds:
        chosen, layer = STIFFNESSES[place_of(values["stiffness"])][1], quantity(values["layer"], "mm")
        text = message("thicken-sags.passes", stiffness=chosen, layer=layer, thickest=one_pass)
        if enough:
            text = message("thicken-sags.stiffer", stiffness=chosen, layer=layer, stiffer=enough, thickest=one_pass)
        lines.append(words("sags", "thicken-sags", text, part="filler", rank=WARN))
    return lines


def _flags(found: Found, names: list[Said]) -> list[Line]:
    """What these fillers may not do. names: of each"""
    lines = []
    if found.soft:
        lines.append(words("fairing_only", "thicken-fairing-only", message(
            "thicken-fairing-only.text", fillers=all_of([names[place] for place in found.soft])), part="filler",
            rough="thicken-fairing-only.rough", rank=WARN))
    if found.unknown:
        lines.append(words("may_it_carry", "thicken-may-it-carry", message(
            "thicken-may-it-carry.text", fillers=all_of([names[place] for place in found.unknown])), part="filler",
            rank=ASK))
    if found.runny:
        lines.append(words("not_alone", "thicken-not-alone", message("thicken-not-alone.text", filler=names[0]),
                           part="filler", rough="thicken-not-alone.rough", rank=ASK))
    return lines


def _own_batches(own: Found, numbers: list[int]) -> list[Line]:
    """The builder's own batches, each in sight, and what they did to the dose.

    own: putty.OwnBatches; numbers: of each row in the form
    """
    lines = [line("own", "thicken-own", own.moved, "", _signed(own.moved), part="filler",
                  rough=message("thicken-own.rough", share=quantity(own.weight, "%", places=0)))]
    for place, (dose, change, count) in enumerate(zip(own.doses, own.changes, numbers)):
        text = message("thicken-batch.text", dose=number(shown(dose * 100, 1)), change=_signed(change))
        lines.append(line("batch_" + str(count), message("thicken-batch", number=count), dose, "kg/kg", text,
                          rough="thicken-batch.counts" if place in own.counted else "thicken-batch.left-out",
                          part="filler", rank=MORE))
        if place in own.questioned:
            lines.append(words("odd_" + str(count), message("thicken-odd", number=count),
                               message("thicken-odd.text", change=_signed(change)), part="filler", rank=ASK))
    return lines


def _contradictions(own: Found) -> list[Line]:
    if own.apart is not None:
        text = message("thicken-contradict.text", more=quantity(own.apart, "%", places=0))
        return [words("contradiction", "thicken-contradict", text, part="filler", rank=ASK)]
    if own.far is not None:
        return [words("contradiction", "thicken-far", message("thicken-far.text", change=_signed(own.far)),
                      part="filler", rank=ASK)]
    return []


def _signed(change: float) -> Said:
    """A change in whole percent, with its sign."""
    text = shown(change * 100, 0)
    mark = "-" if text.startswith("-") else "+" if float(text) else "±"
    return row([typed(mark), quantity(abs(change), "%", places=0)], "")
