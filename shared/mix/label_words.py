"""Label words: what the parts of a label are called, how its ratio is written, whence it is, and what is missing."""
from ..forms.choices import option_words
from ..forms.types import Said, Values
from ..things.records import LABEL, LINK, ORIGIN, ROW, SYSTEM
from ..words.lines import ASK, WARN, Line, words
from ..words.messages import message, row, typed
from ..words.messages import number as figure
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


# as the form names the first two where nobody typed other names, and how that is said
FIRST_TWO = (("Resin", "part-resin"), ("Hardener", "part-hardener"))


def parts_said(system: Values) -> "tuple[Said, ...]":
    """The same names as they are said: the label's own as they stand, ours in the reader's language.

    >>> parts_said({"by_weight": (100, 30, 5), "by_volume": (), "parts": "Resin : Slow"})
    ('part-resin', (0, 'Slow'), ('part-number', {'number': 3}))
    """
    given = [name.strip(BLANKS) for name in system["parts"].split(":")]
    said: list = []
    for place in range(len(system["by_weight"] or system["by_volume"])):
        name = given[place] if place < len(given) else ""
        if place < 2 and name in ("", FIRST_TWO[place][0]):
            said.append(FIRST_TWO[place][1])
        else:
            said.append(typed(name) if name else message("part-number", number=place + 1))
    return tuple(said)


def notation(parts: "list[float] | tuple[float, ...]") -> str:
    """Parts as a label writes them: whole numbers as they are, otherwise two decimals.

    >>> notation((100, 28.4057)), notation((3, 1))
    ('100 : 28.41', '3 : 1')
    """
    return " : ".join([_short(part) for part in parts])


def notation_said(parts: "list[float] | tuple[float, ...]") -> Said:
    """The same, as it is said."""
    return row([figure(_short(part)) for part in parts], " : ")


def _short(part: float) -> str:
    text = shown(part, 2)
    while text.endswith("0"):
        text = text[:-1]
    return text[:-1] if text.endswith(".") else text


def no_densities(system: Values, known: str) -> str:
    """Why there is no answer in the other basis: the label lacks it, or only densities lead there from the amount.

    known: "weight" or "volume"
    """
    other = "volume" if known == "weight" else "weight"
    if system["by_" + other]:
        return "The amount is by {}: without the density of each part there is no answer by {}.".format(known, other)
    return NO_DENSITIES.format(known, other)


def no_densities_said(system: Values, known: str) -> Said:
    """The same, as it is said."""
    if system["by_" + ("volume" if known == "weight" else "weight")]:
        return message("label-amount-only", known=known)
    return only_by(known)


def only_by(known: str) -> Said:
    """That the label gives parts in one basis alone. known: "weight" or "volume" """
    return message("label-only", known=known)


def whence(system: Values) -> Said:
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

    what: the figure of the label that counts here: "ratio", "pot-life" or "both"
    part: of the answer, for what is an example
    """
    name = SYSTEM.called(system) or "label-no-name"
    if system.get(ORIGIN.name) == LINK:
        return [words("by_link", "label-by-link", message("label-by-link.text", system=name, what=what), rank=ASK)]
    if not is_example(system):
        return []
    return [words("example", "label-example", message("label-example.text", system=name, what=what), rank=WARN,
                  part=part)]
