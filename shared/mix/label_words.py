"""Label words: what the parts of a label are called, how its ratio is written, whence it is, and what is missing."""
from ..forms.choices import option_words
from ..forms.types import Said, Values
from ..things.records import LABEL, LINK, ORIGIN, ROW, SYSTEM
from ..words.lines import ASK, WARN, Line, words
from ..words.messages import message, number, row, typed
from ..words.numbers import BLANKS, bare

# as the form names the first two where nobody typed other names, and how that is said alone and inside a sentence
FIRST_TWO = (("Resin", "part-resin", "part-resin.inside"), ("Hardener", "part-hardener", "part-hardener.inside"))


def _own_names(system: Values) -> list[str]:
    """What was typed for each part; "" where that is no other name than the form's."""
    given = [name.strip(BLANKS) for name in system["parts"].split(":")]
    names = [given[place] if place < len(given) else "" for place in range(count_of(system))]
    return ["" if place < 2 and name == FIRST_TWO[place][0] else name for place, name in enumerate(names)]


def _our_name(place: int, inside: bool = False) -> Said:
    if place < 2:
        return FIRST_TWO[place][2 if inside else 1]
    return message("part-number.inside" if inside else "part-number", number=place + 1)


def count_of(system: Values) -> int:
    """How many parts a label has.

    >>> count_of({"by_weight": (), "by_volume": (3, 1)})
    2
    """
    return len(system["by_weight"] or system["by_volume"])


def parts_said(system: Values) -> "tuple[Said, ...]":
    """A name for every part: the label's own as it stands, else what the trade calls the first two.

    >>> parts_said({"by_weight": (100, 30, 5), "by_volume": (), "parts": "Resin : Slow"})
    ('part-resin', (0, 'Slow'), ('part-number', {'number': 3}))
    """
    return tuple([typed(name) if name else _our_name(place) for place, name in enumerate(_own_names(system))])


def parts_inside(system: Values) -> "tuple[Said, ...]":
    """The same as they stand inside a sentence."""
    return tuple([typed(name) if name else _our_name(place, True) for place, name in enumerate(_own_names(system))])


def notation(parts: "list[float] | tuple[float, ...]") -> Said:
    """Parts as a label writes them: whole numbers as they are, otherwise two decimals.

    >>> notation((100, 28.4057))
    (7, [(4, '100'), (4, '28.41')], ' : ')
    """
    return row([number(bare(part, 2)) for part in parts], " : ")


def no_densities(system: Values, known: str) -> Said:
    """Why there is no answer in the other basis: the label lacks it, or only densities lead there from the amount.

    known: "weight" or "volume"
    """
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
