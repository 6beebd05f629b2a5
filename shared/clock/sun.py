"""Sun: what is declared of the sun on a mix, once for every screen, and what the mix takes up of it."""
from collections import namedtuple

from ..catalogue.sunlight import COVER, LOOKS, SUN
from ..forms.inputs import Choice
from ..forms.types import Values

SUN_FOLD = "sun-fold"
SHINES = (("sun", tuple([row[0] for row in SUN if row[2]])),)

NAMES = ("sun", "looks", "cover")

# flux: taken up on the level [W/m2]; air: heat given to the air, against uncovered [-]
Sun = namedtuple("Sun", ("flux", "air"))
NO_SUN = Sun(0.0, 1.0)
SUN_ROWS, LOOKS_ROWS, COVER_ROWS = [dict([(row[0], row) for row in rows]) for rows in (SUN, LOOKS, COVER)]


def inputs(fold: str = "", looks_fold: str = SUN_FOLD) -> tuple:
    """The declarations. fold: where the question itself stands, looks_fold: what is asked once there is sun"""
    return (
        Choice("sun", "sun-asked", tuple([row[:2] for row in SUN]), unsaid="sun-unsaid", fold=fold),
        Choice("looks", "sun-looks", tuple([row[:2] for row in LOOKS]), fold=looks_fold, when=SHINES),
        Choice("cover", "sun-cover", tuple([row[:2] for row in COVER]), fold=looks_fold, when=SHINES),
    )


def said(values: Values) -> bool:
    """Whether anybody said how much sun there is."""
    return bool(values.get("sun"))


def sun_of(values: Values) -> Sun:
    """What a mix takes up of the sun that was declared; nothing said: shade.

    >>> sun_of({"sun": "", "looks": "unknown", "cover": "open"}) == NO_SUN
    True
    """
    return _taken_up(values, False)


def least_sun(values: Values) -> Sun:
    """The least that it may be: low or veiled sun on what takes up least of it.

    >>> round(least_sun({"sun": "full", "looks": "white", "cover": "open"}).flux, 6)
    97.6
    """
    return _taken_up(values, True)


def _taken_up(values: Values, least: bool) -> Sun:
    row = SUN_ROWS.get(values.get("sun") or "")
    if row is None or not row[2]:
        return NO_SUN
    cover = COVER_ROWS[values.get("cover") or COVER[0][0]]
    look = LOOKS_ROWS[values.get("looks") or LOOKS[0][0]]
    return Sun((row[3] * cover[2] * look[3]) if least else (row[2] * cover[2] * look[2]), cover[3])


def declared(values: Values) -> Values:
    """What was declared of the sun, and no more."""
    return dict([(name, values[name]) for name in NAMES if name in values])


def shaded(values: Values) -> Values:
    """The same without sun. It keeps its memo."""
    return dict(values, sun="shade")


def pairs(values: Values) -> "list[list[str]]":
    """What was declared, as pairs for another screen; nothing where nobody said."""
    return [[name, values[name]] for name in NAMES if name in values] if said(values) else []
