"""Own codes: what the hazard and precautionary codes of a product's own sheet mean: words, signs, signal word."""
from collections import namedtuple

from ..catalogue.cautions import OWN_CODES
from ..catalogue.hazards import CLASSES, EVERY, PICTOGRAMS, PRECAUTIONS, PRECEDENCE, SIGNAL_WORDS, hazard, signs_of
from ..things.statements import codes, single

USUAL = ("resin", "hardener")
PRECAUTION = "P"  # first letter of its code
# code: as the standard writes it; row: of catalogue.hazards, None where the catalogue does not hold the code; hazard:
# not a precaution
Statement = namedtuple("Statement", ("code", "row", "hazard"))


def own(found: "tuple[str, ...]") -> "list[Statement]":
    """Each of these codes with its row of the catalogue: `things.statements.codes`."""
    precautions = dict([(row[0], row) for row in PRECAUTIONS])
    said: list = []
    for code in found:
        if code[0] == PRECAUTION:
            # precautions that were joined by hand, and that the standard does not join, are said one by one
            each = [code] if code in precautions else code.split("+")
            said.extend([Statement(one, precautions.get(one), False) for one in each])
        else:
            row = hazard(code)
            # the standard's own letters, where it knows those that were typed
            said.append(Statement(row[0] if row and len(row[0]) == len(code) else code, row, True))
    return said


def signal(said: "list[Statement]") -> str:
    """The signal word of a label with these statements: the stronger one stands alone (GHS 1.4.10.5.3.2).

    >>> signal(own(("H317", "H330"))), signal(own(("H317",))), signal(own(("H412", "P273")))
    ('ghs-danger', 'ghs-warning', '')
    """
    borne = [one.row[3] for one in said if one.hazard and one.row]
    return ([word for word in SIGNAL_WORDS if word in borne] + [""])[0]


def usual() -> "list[str]":
    """The codes of the usual resin and hardener."""
    found: list = []
    for row in CLASSES:
        if row[0] in USUAL:
            found.extend(codes(row[2]))
    return found


def signs(found: "list[str] | tuple[str, ...]") -> "list[str]":
    """The pictograms that codes bring, after the order of precedence: keys, in the order of the catalogue.

    >>> signs(("H314", "H315", "H317", "H411")), signs(("H315",)), signs(("H302", "H330"))
    (['corrosion', 'exclamation', 'environment'], ['exclamation'], ['skull'])
    """
    plain = single(found)
    carried = [(sign, row[0][:4]) for row in [hazard(code) for code in plain] if row for sign in signs_of(row)]
    present = [sign for sign, _ in carried]
    needless: list = []
    for sign, cause, replaced, _, _ in PRECEDENCE:
        if sign in present and (not cause or cause in plain):
            needless.extend(replaced)
    kept = [sign for sign, code in carried if sign != "exclamation" or (code not in needless and EVERY not in needless)]
    return [row[0] for row in PICTOGRAMS if row[0] in kept]


def gravest(caution: str, found: "tuple[str, ...] | list[str]") -> "tuple | None":
    """The row of catalogue.hazards of the code that brings up a caution, the gravest of them; None where none does.

    caution: its name in catalogue.cautions.MOMENT; found: codes as `things.statements.codes` gives them
    >>> gravest("poison", ("H301+H311", "H330"))[:2], gravest("lasting", ("H317", "H360FD"))[0]
    (('H330', 'ghs-h330'), 'H360FD')
    """
    for one in dict(OWN_CODES).get(caution, ()):
        for code in found:
            if one in single((code,)):
                return hazard(code)
    return None
