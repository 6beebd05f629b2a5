"""How exact a ratio is wanted, and how an error is told."""
from .numbers import UP, shown

AIM, STOP = 0.02, 0.05  # of the hardener, from memory; the label's own figure goes before them
ROUGH_AIM = "2% off is good, 5% too much: from memory, the label goes first"


def tolerance(values) -> float:
    """The ratio error to aim for [-]: typed, else the label's, else what is remembered."""
    return values["tolerance"] or values["system"]["tolerance"] or AIM


def limit(values) -> float:
    """The ratio error beyond which no mark is told [-]: typed, else the label's, else what is remembered."""
    return values["tolerance"] or values["system"]["tolerance"] or STOP


def wanted_text(values) -> str:
    """The ratio error to aim for as text, and where it comes from when it is only remembered."""
    own = values["tolerance"] or values["system"]["tolerance"]
    return aim(tolerance(values)) + ("" if own else " (from memory)")


def aim(wanted: float) -> str:
    """A wanted ratio error in percent, with the decimals that a small one needs.

    >>> aim(0.02), aim(0.0004)
    ('±2.0%', '±0.04%')
    """
    return "±" + shown(wanted * 100, 1 if wanted >= 0.001 else 2) + "%"


def percent(error) -> str:
    """A signed error in percent.

    >>> percent(0.0213), percent(-0.0004), percent(0)
    ('+2.1%', '0.0%', '0.0%')
    """
    text = shown(error * 100, 1)
    return (text if text.startswith("-") else "+" + text if float(text) else text) + "%"


def within(spread) -> str:
    """A spread in percent, rounded up.

    >>> within(0.0501)
    '±5.1%'
    """
    return "±" + shown(spread * 100, 1, UP) + "%"
