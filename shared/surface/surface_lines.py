"""Surface lines: what all moves of a surface say alike: pots, films, faces."""
from ..forms.types import Found, Said
from ..words.lines import ASK, BESIDE, MORE, WARN, Line, line, words
from ..words.messages import fact, message, quantity
from ..words.numbers import DOWN, UP


def thin(thickness: float, toward: str = "nearest") -> Said:
    """A film or a cloth [m] to two figures."""
    return quantity(thickness, "mm", toward, digits=2)


def weight(mass: float) -> Said:
    """What stays on the boat [kg], rounded up: light in grams."""
    return quantity(mass, "kg" if mass >= 1 else "g", UP)


def pot_lines(found: "Found | None", label: Said) -> list[Line]:
    """How far one pot reaches. found: `pots.Pots`, None where nothing tells how long a film is
    worked; label: what they are for"""
    if found is None:
        return [words("no_film_time", "surface-no-pot-life", "surface-no-pot-life.text", rank=ASK)]
    bound = message("surface-pots.by-heat", mass=fact("g", found.big)) if found.big else message(
        "surface-pots.by-film", time=quantity(found.window, "min", DOWN, 0))
    return [line("largest", label, found.mass, "kg", message(
        "surface-pots.text", count=found.count, mass=quantity(found.mass, "g", UP)), rough=bound,
        caution="surface-pots.caution"),
        line("reach", "surface-reach", found.reach, "m2", quantity(found.reach, "m2", DOWN, digits=2), rank=BESIDE,
             rough="" if found.big else "surface-reach.rough")]


def area_line(area: float) -> Line:
    """The area of all faces [m2]."""
    return line("area", "surface-area-line", area, "m2", quantity(area, "m2", UP), rank=MORE,
                rough="surface-area-line.rough")


def warning(name: str, label: Said, text: Said) -> Line:
    """What hurts the work."""
    return words(name, label, text, rank=WARN)
