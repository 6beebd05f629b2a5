"""First aid in words: the official statement large, its code and what else it rests on under it."""
from ..catalogue.first_aid import CALLED, EMERGENCY
from ..catalogue.sources import SOURCES
from ..forms.types import Found, Values
from ..words.lines import MORE, SAY, Line, words
from ..words.numbers import UP, capital, shown
from ..words.provenance import provenance
from ..words.units import told

HOT = "hot"  # part of the answer that folds away


def say(found: Found, values: Values) -> list[Line]:
    """found: `aid.AidResult`"""
    minutes = shown(found.minutes / 60, 0, UP) + " minutes"
    lines = [_step(key, official, added, minutes) for key, official, added in found.steps]
    for name, text, mark, source in EMERGENCY:
        lines.append(words("aid_" + name, "In the EU", text, rough=provenance(mark, source), rank=SAY))
    lines.append(words("aid_sheet", "Your data sheet's own first aid comes first", "This is for what burns skin and "
                       "eyes, as hardener may.", rough="the words of the P codes: " + SOURCES["ghs"], rank=SAY))
    for place, (key, text, mark, source) in enumerate(found.hot):
        lines.append(words("hot_" + key, str(place + 1), text, rough=provenance(mark, source), rank=MORE, part=HOT))
    lines.append(words("aid_water", "Keep at hand", "Clean water for " + minutes + " of rinsing: "
                       + told(found.water, "L", values["units"], UP, 0) + ".",
                       rough=SOURCES["eyewash"] + "; rounded up", rank=MORE, part=HOT))
    return lines


def _step(key: str, official: tuple, added: "list[tuple]", minutes: str) -> Line:
    """One step: its heading stands before the colon of the statement; a choice that labels leave open is made."""
    said = official[1].replace("[", "").replace("]", "").replace("/...", ".")
    heading, colon, text = said.partition(": ")
    if not colon:
        heading, text = dict(CALLED)[key], said
    where = [official[0]]
    for _, more, mark, source in added:
        text += " " + more.replace("{minutes}", minutes)
        if provenance(mark, source) not in where:
            where.append(provenance(mark, source))
    return words("aid_" + key, heading, capital(text), rough="; ".join(where), rank=SAY)
