"""Fillets lines: what is said of fillets without tape. found: a `fillets.Filleted`"""
from ..catalogue.surfaces import BARE_FILLET, BY_KEY
from ..forms.types import Found, Values
from ..words.lines import ANSWER, MORE, SAY, Line, line, words
from ..words.messages import fact, length, message, number, quantity
from ..words.numbers import DOWN, UP, bare, shown


def say(found: Found, values: Values) -> list[Line]:
    """The radii first, then the putty."""
    alike = abs(found.sides[0][1] - found.sides[1][1]) < 1e-9
    lines = []
    for place, (angle, radius) in enumerate(found.sides[:1] if alike else found.sides):
        lines.append(line("radius_" + str(place + 1), "fillets-radius.both" if alike else message(
            "fillets-radius", angle=quantity(angle, "deg", places=0)), radius, "m", length(radius, UP), rank=ANSWER,
            rough=message("fillets-radius.rough", times=number(shown(radius / values["fillet_panel"], 1, UP)),
                          low=number(bare(BARE_FILLET[0], 1)), high=number(bare(BARE_FILLET[1], 1)))))
    lines.append(line("putty", "joint-putty", found.volume, "m3", quantity(found.volume, "mL", UP), rank=ANSWER,
                      rough="fillets-putty.rough"))
    lines.append(line("foot", "fillets-foot", found.foot, "m", length(found.foot, DOWN), rough="joint-tack.rough"))
    lines.append(words("model", "fillets-model", message("fillets-model.text", pull=fact(
        "MPa", *BY_KEY["face_pull"][3:5])), rank=MORE))
    lines.append(words("plans", "gluing-plans", "gluing-plans.text", rank=SAY))
    return lines
