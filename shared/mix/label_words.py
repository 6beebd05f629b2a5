"""Label words: what the parts of a label are called, how its ratio is written, whence it is, and what is missing."""
from ..forms.choices import option_words
from ..forms.types import Values
from ..things.records import LABEL, LINK, ORIGIN, ROW
from ..words.lines import ASK, WARN, Line, words
from ..words.numbers import BLANKS, shown

NO_DENSITIES = "The label gives parts by {} only: without the density of each part there is no answer by {}."


def part_names(system: Values) -> tuple[str, ...]:
    """A name for every part: the label's, or what the trade calls the first two.

    >>> part_names({"by_weight": (100, 30, 5), "by_volume": (), "parts": "Resin : Hardener"})
    ('Resin', 'Hardener', 'Part 3')
    """
    given = [name.strip(BLANKS) for name in system["parts"].split(":")]
    count = len(system["by_weight"] or system["by_volume"])
    names = []
    for place in range(count):
        name = given[place] if place < len(given) else ""
        names.append(name or ("Resin", "Hardener")[place] if place < 2 else name or "Part " + str(place + 1))
    return tuple(names)


def notation(parts: "list[float] | tuple[float, ...]") -> str:
    """Parts as a label writes them: whole numbers as they are, otherwise two decimals.

    >>> notation((100, 28.4057)), notation((3, 1))
    ('100 : 28.41', '3 : 1')
    """
    texts = []
    for part in parts:
        text = shown(part, 2)
        while text.endswith("0"):
            text = text[:-1]
        texts.append(text[:-1] if text.endswith(".") else text)
    return " : ".join(texts)


def no_densities(system: Values, known: str) -> str:
    """Why there is no answer in the other basis: the label lacks it, or only densities lead there from the amount.

    known: "weight" or "volume"
    """
    other = "volume" if known == "weight" else "weight"
    if system["by_" + other]:
        return "The amount is by {}: without the density of each part there is no answer by {}.".format(known, other)
    return NO_DENSITIES.format(known, other)


def whence(system: Values) -> str:
    """Where its figures are from, as its own choice says it; "" where nobody said so."""
    return option_words(ORIGIN.options, system.get(ORIGIN.name) or "")


def is_example(system: Values) -> bool:
    """Whether its ratio is one of the built-in rows, and nobody said that it was compared with a label.

    >>> is_example({"id": "3-1", "origin": ""}), is_example({"id": "", "origin": "label"})
    (True, False)
    """
    origin = system.get(ORIGIN.name)
    return origin == ROW or (bool(system["id"]) and origin != LABEL)


DOUBT = "doubt"  # part of an answer: what is to be known of every figure of it, and is said beside them in short


def unconfirmed(system: Values, what: str, part: str = "") -> list[Line]:
    """What is said beside a figure that nobody has compared with a label: an example's, or one of a link.

    what: the figure of the label that counts here; part: of the answer, for what is an example
    """
    name = system["name"] or "This resin system"
    if system.get(ORIGIN.name) == LINK:
        return [words("by_link", "From a link", name + " is from a link: compare its " + what
                      + " with the label. Then say so under its figures.", rank=ASK)]
    if not is_example(system):
        return []
    return [words("example", "Example, not your label", name + ": no label has confirmed its " + what
                  + ".", rank=WARN, part=part)]
