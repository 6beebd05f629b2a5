"""Sheathing lines: what is said of cloth, its resin and its weave. found: a `sheathing.Sheathed`"""
from ..catalogue.surfaces import BY_KEY
from ..forms.types import Found, Said, Values
from ..words.lines import ANSWER, ASK, MORE, SAY, Line, line, words
from ..words.messages import along, fact, length, listed, message, quantity
from ..words.numbers import UP
from . import faces
from .strips_drawing import strips_said
from .surface_lines import area_line, pot_lines, thin, warning, weight

WAYS = ("sheathing-way.along", "sheathing-way.across")


def say(found: Found, values: Values) -> list[Line]:
    """Cloth and resin first, the pot, where strips join; then what the resin is made of."""
    lines = []
    if values["wood"] == "bare" and values["lie"] in (faces.UPRIGHT, faces.UNDER):
        lines.append(warning("dry", "sheathing-dry", "sheathing-dry.text"))
    lines.append(line("mix", "sheathing-mix", found.mix, "kg", quantity(found.mix, "g", UP), rank=ANSWER,
                      rough="sheathing-mix.rough"))
    lines.append(line("cloth", "sheathing-cloth", found.cloth, "m", message(
        "joint-ply.text", length=along(found.cloth, UP), width=length(values["cloth_width"])), rank=ANSWER,
        rough="sheathing-cloth.rough"))
    lines.extend(pot_lines(found.pots, "surface-pots.cloth"))
    lines.extend([_cut(cut) for cut in found.cuts])
    lines.append(line("fill", "sheathing-fill", found.fill, "kg", message(
        "sheathing-fill.text", mass=quantity(found.fill, "g", UP), count=found.fills,
        each=quantity(found.fill_areal / max(1, found.fills), "g/m2", UP)), rough=message(
            "sheathing-fill.rough", sanded=fact("mm", *BY_KEY["sanded_off"][3:5]))))
    lines.append(line("stays", "surface-stays", found.stays, "kg", weight(found.stays),
                      rough="sheathing-stays.rough"))
    lines.append(words("pour_out", "sheathing-pour-out", "sheathing-pour-out.text", rank=SAY))
    if found.ply:
        lines.append(words("ply", "sheathing-ply", "sheathing-ply.text", rank=SAY))
    lines.extend(_made_of(found))
    if found.thick and found.depth > found.thick:
        lines.append(words("deep_weave", "sheathing-deep-weave", "sheathing-deep-weave.text", rank=ASK))
    return lines


def _cut(cut: Found) -> Line:
    """The strips of one row."""
    joins: Said = "sheathing-strips.no-join"
    if cut.joins:
        joins = message("sheathing-strips.joins", joins=listed([along(one) for one in cut.joins]))
    return line("strips_" + str(cut.place + 1), message("sheathing-strips", place=cut.place + 1), len(cut.lengths), "",
                listed([strips_said(cut), WAYS[cut.across]], "plain"), rough=joins)


def _made_of(found: Found) -> list[Line]:
    lines = [line("glass", "sheathing-glass", found.glass, "kg", quantity(found.glass, "kg", UP), rank=MORE),
             line("wet", "joint-wet-out", found.wet, "kg", quantity(found.wet, "g", UP), rank=MORE,
                  rough=message("sheathing-wet.rough", share=quantity(found.fraction, "%", digits=2)))]
    if found.drinks:
        lines.append(line("drinks", "sheathing-drinks-line", found.drinks, "kg", quantity(found.drinks, "g", UP),
                          rank=MORE))
    if found.ply:
        lines.append(line("ply_takes", "joint-ply-takes", found.ply, "kg", quantity(found.ply, "g", UP), rank=MORE,
                          rough="joint-ply-takes.rough"))
    lines.append(line("thick", "sheathing-thick", found.thick, "m", thin(found.thick), rank=MORE,
                      rough="joint-laminate.rough"))
    lines.append(line("depth", "sheathing-depth", found.depth, "m", thin(found.depth), rank=MORE,
                      rough="sheathing-depth.rough"))
    lines.append(line("lapped", "sheathing-lapped", found.lapped, "m2", quantity(found.lapped, "m2", UP), rank=MORE))
    lines.append(area_line(found.area))
    return lines
