"""Filler dose: which filler, how stiff, and the dose that follows: the table's, or the builder's own."""
from collections import namedtuple
from math import pi

from ..catalogue.fillers import AIR, PACKING, STIFFNESSES
from ..equations.dose_calibration import ALWAYS, AUTO, NEVER, calibrated
from ..equations.putty import packed_dose, solids_share
from ..forms.errors import InputError
from ..forms.inputs import Choice, Group, Number, Pick
from ..forms.memo import once
from ..forms.types import Values
from ..things.records import FILLER
from ..words.messages import message
from .filler_words import shares_text

STIFF = tuple([(key, told, message("filling-trade-word", trade=trade)) for key, told, trade, _ in STIFFNESSES])
ASKED = (("thicken", ("yes",)), ("amount_is", ("putty",)))
PUTTY_FOLD = "filling-fold"
SUM_SLACK = 0.005  # shares of a blend typed as thirds come to 99.9

FILLING = (
    Choice("thicken", "filling-thicken", (("no", "filling-thicken.no"), ("yes", "filling-thicken.yes")), row=True),
    Pick("filler", "kind-filler", FILLER, default="wood-flour", fold=PUTTY_FOLD, when=ASKED),
    Choice("stiffness", "filling-stiffness", STIFF, default="stands", when=ASKED),
    Group("blend", "filling-blend", (
        Pick("filler", "kind-filler", FILLER, default="silica"),
        Number("share", "filling-blend-share", unit="%", low=0, high=100, above=True),
    ), most=4, rows=0, each="kind-filler", fold=PUTTY_FOLD, when=ASKED),
    Group("batches", "filling-batches", (
        Number("mixed", "filling-batches-mixed", unit="g", low=1, high=50000, tool="scale"),
        Number("before", "filling-batches-before", unit="g", low=0, high=100000, above=True, tool="scale"),
        Number("after", "filling-batches-after", unit="g", low=0, high=100000, tool="scale"),
        Choice("came_out", "filling-batches-came-out", STIFF, default="stands"),
        Choice("count", "filling-batches-count", (
            (AUTO, "filling-batches-count.auto"), (ALWAYS, "filling-batches-count.always"),
            (NEVER, "filling-batches-count.never"))),
    ), most=40, rows=0, each="batch-each", fold=PUTTY_FOLD, when=ASKED,
        kept={"as": "putty", "by": "mixed before after came_out", "of": "filler"}),
)

# parts: pairs of filler per mass of mix [kg/kg] and true density [kg/m3]; fillers: values of records.FILLER, in step
# air: share of the putty's volume [-]; calibration: Calibrated
Dose = namedtuple("Dose", ("parts", "fillers", "air", "calibration"))
# share: of the putty's volume that the grains would fill [-]; touch: share at which they touch [-]
# most: the largest dose that the liquid can wet [kg/kg of mix]
Packed = namedtuple("Packed", ("share", "touch", "most"))

# key, label, slope of the steepest face from the horizontal [rad]
POSITIONS = (
    ("level", "filling-position.level", pi / 4),
    ("upright", "filling-position.upright", pi / 2),
    ("overhead", "filling-position.overhead", pi / 2),
)


def blended_dose(shares: tuple[float, ...], doses: "list[float] | tuple[float, ...]") -> float:
    """Dose of a blend in which each filler does its share of the stiffening:
        D = 1 / sum(w_i / D_i)

    shares: w_i, by weight of the blend, sum 1; doses: D_i [kg/kg of mix], of each alone for the same stiffness
    returns: D [kg/kg of mix]; own estimate, no source: fillers taken not to help or hinder each other
    >>> round(blended_dose((0.5, 0.5), (0.3, 0.1)), 6)
    0.15
    """
    return 1 / sum([share / dose for share, dose in zip(shares, doses)])


def place_of(stiffness: str) -> int:
    """The place of a stiffness in the table of doses.

    >>> place_of("stands")
    3
    """
    return [row[0] for row in STIFFNESSES].index(stiffness)


def components(values: Values) -> tuple[tuple[Values, ...], tuple[float, ...]]:
    """Fillers and their shares by weight: the blend where one is typed, else the one filler."""
    rows = values["blend"]
    if not rows:
        return (values["filler"],), (1.0,)
    whole = sum([row["share"] for row in rows])
    return tuple([row["filler"] for row in rows]), tuple([row["share"] / whole for row in rows])


def default_dose(fillers: tuple[Values, ...], shares: tuple[float, ...], stiffness: str) -> float:
    """The table's dose for a stiffness [kg/kg of mix]."""
    place = place_of(stiffness)
    return blended_dose(shares, [filler["doses"][place] / 100 for filler in fillers])


def used(batch: Values) -> float:
    """Filler that went into a batch [kg]: the tub before less the tub after."""
    return batch["before"] - batch["after"]


def own_ratios(values: Values, fillers: tuple[Values, ...], shares: tuple[float, ...]) -> list[float]:
    """Own dose over the table's, for each of the builder's batches [-]."""
    return [used(row) / row["mixed"] / default_dose(fillers, shares, row["came_out"]) for row in values["batches"]]


def dose_of(values: Values) -> Dose:
    """The dose that is asked, moved by the builder's own batches; InputError at the field that can put it right."""
    return once(values, "dose", lambda: _dosed(values))


def _dosed(values: Values) -> Dose:
    check(values)
    fillers, shares = components(values)
    rows = values["batches"]
    found = calibrated(own_ratios(values, fillers, shares) if rows else (), [row["count"] for row in rows])
    dose = default_dose(fillers, shares, values["stiffness"]) * found.factor
    parts = tuple([(dose * share, filler["density"]) for share, filler in zip(shares, fillers)])
    return Dose(parts, fillers, AIR, found)


def overpacked(dose: Dose, density: float) -> "Packed | None":
    """How much a dose is more than the liquid can wet, with the most that goes in; None where it is not.

    density: of the mix [kg/m3]
    """
    share = solids_share(density, dose.parts)
    if share <= PACKING + 1e-9:
        return None
    whole = sum([part for part, _ in dose.parts])
    most = packed_dose(PACKING, density, whole / sum([part / true for part, true in dose.parts]))
    return Packed(share, PACKING, most)


def check(values: Values) -> None:
    """Shares that do not sum, tubs that grew, doses that fall as the putty stiffens."""
    if "filler" not in values:
        return
    rows = values["blend"]
    if rows:
        whole = sum([row["share"] for row in rows])
        if abs(whole - 1) > SUM_SLACK:
            raise InputError("blend.{}.share".format(rows[-1]["place"]), shares_text(whole))
    for row in values["batches"]:
        if used(row) <= 0:
            raise InputError("batches.{}.after".format(row["place"]), "filling-batches-after.less")
        if used(row) > 3 * row["mixed"]:
            raise InputError("batches.{}.after".format(row["place"]), "filling-batches-after.too-much")
    for place, filler in enumerate(components(values)[0]):
        doses = filler["doses"]
        if any([doses[step + 1] <= doses[step] for step in range(len(doses) - 1)]):
            field = "blend.{}.filler.doses".format(rows[place]["place"]) if rows else "filler.doses"
            raise InputError(field, message("field-refused", label="kind-filler-doses", why="filling-doses-rise"))

