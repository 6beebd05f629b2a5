"""Thicken lines: what is said of a putty: the filler, how it goes in, what it makes, whether it stands."""
from ..catalogue.fillers import AIR_RANGE, DOSE_SPREAD, STIFFNESSES, SURE
from ..catalogue.starts import FIRST_PARTS
from ..forms.types import Found, Values
from ..mix.filler_dose import components, place_of
from ..mix.filler_words import packed_text
from ..words.lines import ANSWER, ASK, MORE, WARN, Line, line, words
from ..words.numbers import DOWN, UP, bare, fraction, shown
from ..words.units import told
from .by_scale_lines import weighed


def say(found: Found, values: Values) -> list[Line]:
    """The filler, how it goes in, the putty, and whether it stands. found: putty.PuttyResult"""
    if found.packed:
        return [words("packed", "More than the liquid wets", packed_text(found.packed), part="filler", rank=WARN)]
    lines, fillers = [], components(values)[0]
    for place, (one, filler) in enumerate(zip(found.fillers, fillers)):
        lines.extend(_filler(found, place, one, filler, values))
    lines.append(line("first_filler", "Stir in first", found.first, "kg", weighed(found.first, values), part="filler",
                      rough=first_share() + "; stir, scraping bottom and corners; the rest little by little until it "
                      "is right"))
    lines.extend(_putty(found, values["units"]))
    lines.extend(_room(found, values["units"]))
    lines.extend(_stands(found.stands, values))
    lines.extend(_flags(found, [filler["name"] or "This filler" for filler in fillers]))
    if found.own:
        lines.extend(_own_batches(found.own, [row["place"] + 1 for row in values["batches"]]))
        lines.extend(_contradictions(found.own))
    return lines


def first_share() -> str:
    """How much of the filler is stirred in first, in words."""
    return fraction(FIRST_PARTS[0] / FIRST_PARTS[1])


def dose_mark(found: Found) -> str:
    """How far a dose may be off, and whose figure it is. found: putty.PuttyResult"""
    if not found.counted:
        return "±" + bare(DOSE_SPREAD * 100, 1) + "%, from memory"
    return "±{}%, from {} own {}".format(shown(found.spread * 100, 0, UP), found.counted,
                                         "batch" if found.counted == 1 else "batches")


def _filler(found: Found, place: int, one: Found, filler: Values, values: Values) -> list[Line]:
    """One filler: by weight, by scoops, loose. one: putty.Scooped"""
    units, key = values["units"], "filler" if place == 0 else "filler_" + str(place + 1)
    scoops = told(one.scoops * 1.0, "", units, places=0 if one.scoops == int(one.scoops) else 1)
    name = filler["name"] or "Filler"
    return [
        line(key, name, one.mass, "kg", weighed(one.mass, values), part="filler", rank=ANSWER, rough=dose_mark(found),
             caution="A particle filter on before the tub is opened; the lid back on at once."),
        line(key + "_scoops", name + ", level scoops", one.scoops, "",
             scoops + " of " + told(values["scoop"], "mL", units), part="filler",
             rough="to half a scoop; loose powder differs by a third and more, the weight goes first"),
        line(key + "_loose", name + ", loose", one.loose, "m3", told(one.loose, "mL", units), part="filler", rank=MORE,
             rough="as it lies in the tub, not shaken down; from memory where the filler is ours"),
    ]


def _putty(found: Found, units: str) -> list[Line]:
    text = told(found.volume, "mL", units) + " · " + told(found.mass, "g", units)
    lines = [
        line("putty", "Putty", found.volume, "m3", text, part="filler",
             rough="with {}% air, from memory ({} to {}%)".format(
                 shown(found.air * 100, 0), *[bare(one * 100, 1) for one in AIR_RANGE])),
        line("putty_density", "Density of the putty", found.density, "kg/m3",
             told(found.density, "g/mL", units, places=2), part="filler", rank=MORE, rough="air included"),
        line("dose", "Filler for 100 of mix, by weight", found.dose, "kg/kg", shown(100 * found.dose, 1), part="filler",
             rank=MORE, rough=dose_mark(found)),
    ]
    if found.thicker is not None:
        lines.append(line("thicker", "Thicker than the liquid", found.thicker, "", "about {} times".format(
            shown(found.thicker, 0)), part="filler", rank=MORE, rough="spheres that do not stick to each other, "
                              "Krieger & Dougherty (1959)"))
    return lines


def _room(found: Found, units: str) -> list[Line]:
    """Whether the putty fits a cup that was chosen."""
    if found.room is None:
        return []
    return [line("cup_too_small", "The putty does not fit the cup", found.volume, "m3",
                 told(found.volume, "mL", units, UP) + ", the cup takes " + told(found.room, "mL", units, DOWN),
                 part="filler", rank=WARN,
                 rough="with room to stir. Stir the liquids, then tip all of it into a tub for the filler.")]


def _stands(stands: Found, values: Values) -> list[Line]:
    """Whether the putty stays where it is put. stands: putty.Stands"""
    units, enough = values["units"], "" if stands.enough is None else STIFFNESSES[stands.enough][1]
    pass_text = told(stands.thickest, "mm", units, DOWN, digits=2)
    rough = "rho g h, {}: yield stresses are from memory, {}".format(*(
        ("doubled", "half to double") if SURE == 2 else
        ("times " + bare(SURE, 2), "1/{0} to {0} times".format(bare(SURE, 2)))))
    if values["position"] == "overhead":
        rough += "; overhead it must also stick: press it in, thin passes"
    lines = [line("needed", "So that it does not sag", stands.needed, "Pa",
                  enough or "none of the five stands so thick", part="filler", rough=rough,
                  rank=MORE if stands.holds else WARN),
             line("pass", "At most in one pass", stands.thickest, "m", pass_text, part="filler", rank=MORE,
                  rough="of this stiffness, in this position; rounded down")]
    if not stands.holds:
        way_out = "Lay it in passes of at most " + pass_text + "."
        if enough:
            way_out = "Make it stiffer: '" + enough + "'. Or lay it in passes of at most " + pass_text + "."
        lines.append(words("sags", "It would sag", "'{}' is too soft for {} here. {}".format(
            STIFFNESSES[place_of(values["stiffness"])][1], told(values["layer"], "mm", units), way_out),
            part="filler", rank=WARN))
    return lines


def _flags(found: Found, names: list[str]) -> list[Line]:
    """What these fillers may not do. names: of each"""
    lines = []
    if found.soft:
        lines.append(words("fairing_only", "Not for a structural seam", " and ".join([
            names[place] for place in found.soft]) + ": for fairing. It must not carry load in a seam. Take wood "
            "flour, cotton fibre or silica.", part="filler", rough="common practice; the maker's sheet decides",
            rank=WARN))
    if found.unknown:
        lines.append(words("may_it_carry", "May it carry load?", " and ".join([
            names[place] for place in found.unknown]) + ": the kit does not say whether it may carry load in a seam. "
            "Look at the maker's sheet and say it there.", part="filler", rank=ASK))
    if found.runny:
        lines.append(words("not_alone", "It does not stand alone", names[0] + " settles and flows. Blend it, silica "
                           "for a part of it.", part="filler", rough="from memory", rank=ASK))
    return lines


def _own_batches(own: Found, numbers: list[int]) -> list[Line]:
    """The builder's own batches, each in sight, and what they did to the dose.

    own: putty.OwnBatches; numbers: of each row in the form
    """
    lines = [line("own", "Own batches move the dose by", own.moved, "", _signed(own.moved), part="filler",
                  rough="own figures weigh {}%, the table's the rest".format(shown(own.weight * 100, 0)))]
    for place, (dose, change, number) in enumerate(zip(own.doses, own.changes, numbers)):
        lines.append(line("batch_" + str(number), "Own batch " + str(number), dose, "kg/kg",
                          "{} for 100 of mix by weight, {} on the table".format(shown(dose * 100, 1), _signed(change)),
                          rough="counts" if place in own.counted else "left out", part="filler", rank=MORE))
        if place in own.questioned:
            lines.append(words("odd_" + str(number), "Batch {} stands out".format(number),
                               "It took {} on the table, the others agree on another figure. Was the tub read right, "
                               "the stiffness tapped right? Left out until you say it counts; or remove it.".format(
                                   _signed(change)), part="filler", rank=ASK))
    return lines


def _contradictions(own: Found) -> list[Line]:
    if own.apart is not None:
        text = "One took {}% more filler than the other for the same stiffness. A third batch will show which.".format(
            shown(own.apart * 100, 0))
        return [words("contradiction", "Two batches contradict", text, part="filler", rank=ASK)]
    if own.far is not None:
        return [words("contradiction", "Far from the table", "This batch took {} on the table. Were the tub's weights "
                      "and the stiffness typed right?".format(_signed(own.far)), part="filler", rank=ASK)]
    return []


def _signed(change: float) -> str:
    text = shown(change * 100, 0)
    return (text if text.startswith("-") else "+" + text if float(text) else "±0") + "%"
