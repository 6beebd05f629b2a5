"""Safety: what is told about the task at hand, the product's own statements first, each with where it comes from."""
from collections import namedtuple

from ..catalogue.dusts import POWDERS, strictest
from ..catalogue.hazards import CLASSES, EVERY, PICTOGRAMS, PRECAUTIONS, PRECEDENCE, SIGNAL_WORDS, hazard
from ..catalogue.tasks import CURED, TASKS, statements
from ..forms.inputs import Choice, Pick
from ..forms.memo import memo_of, once
from ..forms.types import Values
from ..things.records import SYSTEM
from ..things.statements import codes, single
from . import pictogram_drawing
from .safety_lines import PRODUCTS, REST, say

INPUTS = (
    Choice("task", "What comes next", (("any", "Any work"),) + tuple([(key, label) for key, label, _ in TASKS])),
    Choice("powder", "Which powder", tuple([row[:2] for row in POWDERS]), when=(("task", ("powder",)),)),
    Choice("cured", "How cured", tuple([row[:2] for row in CURED]), when=(("task", ("sand",)),)),
    Pick("system", "Resin system", SYSTEM, default="3-1", fold="Your product"),
)
CHECKS = ()
USUAL = ("resin", "hardener")
PRECAUTION = "P"  # first letter of its code
FOLDS = ((REST, "More about this task"), (PRODUCTS, "What such products carry"))

# own: `Statement` of each code typed from the product's own sheet; powder: its row of catalogue.dusts, None where none
# is asked; limit: the strictest of its dust; rows: statements of the task that hold (name, topic, text, mark, source),
# None where no task is chosen; leading: topics that lead in it; signs: keys of the pictograms, of the own codes or else
# of the usual product; signal: the stronger signal word of the own codes, "" where they have none
SafetyResult = namedtuple("SafetyResult", ("own", "powder", "limit", "rows", "leading", "signs", "signal"))
# code: as the standard writes it; row: of catalogue.hazards, None where the catalogue does not hold the code; hazard:
# not a precaution
Statement = namedtuple("Statement", ("code", "row", "hazard"))


def reckon(values: Values) -> SafetyResult:
    """What the product's own codes are, which statements of the task hold, and which signs the product bears."""
    system, task = values.get("system"), values["task"]
    found = codes(system["statements"]) if system and system.get("statements") else ()
    rows, leading, powder = None, None, None
    if task != "any":
        not_asked = [row[2] for row in CURED if row[0] != values.get("cured")]
        rows = [(name, topic, text, mark, source) for name, _, topic, text, mark, source in statements(task)
                if name not in not_asked]
        leading = dict([(key, topics) for key, _, topics in TASKS])[task] + ("aid",)
    if task == "powder":
        powder = dict([(row[0], row) for row in POWDERS])[values["powder"]]
    own = _own(found)
    return SafetyResult(own, powder, strictest(powder[2]) if powder else None, rows, leading,
                        signs(found or _usual()), signal(own))


def _own(found: "tuple[str, ...]") -> "list[Statement]":
    precautions = dict([(row[0], row) for row in PRECAUTIONS])
    own: list = []
    for code in found:
        if code[0] == PRECAUTION:
            # precautions that were joined by hand, and that the standard does not join, are said one by one
            each = [code] if code in precautions else code.split("+")
            own.extend([Statement(one, precautions.get(one), False) for one in each])
        else:
            row = hazard(code)
            # the standard's own letters, where it knows those that were typed
            own.append(Statement(row[0] if row and len(row[0]) == len(code) else code, row, True))
    return own


def signal(own: "list[Statement]") -> str:
    """The signal word of a label with these statements: the stronger one stands alone (GHS 1.4.10.5.3.2).

    >>> signal(_own(("H317", "H330"))), signal(_own(("H317",))), signal(_own(("H412", "P273")))
    ('Danger', 'Warning', '')
    """
    borne = [one.row[3] for one in own if one.hazard and one.row]
    return ([word for word in SIGNAL_WORDS if word in borne] + [""])[0]


def _usual() -> "list[str]":
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
    carried = [(row[2], row[0][:4]) for row in [hazard(code) for code in plain] if row and row[2]]
    present = [sign for sign, _ in carried]
    needless: list = []
    for sign, cause, replaced, _, _ in PRECEDENCE:
        if sign in present and (not cause or cause in plain):
            needless.extend(replaced)
    kept = [sign for sign, code in carried if sign != "exclamation" or (code not in needless and EVERY not in needless)]
    return [row[0] for row in PICTOGRAMS if row[0] in kept]


def reckoned(values: Values) -> SafetyResult:
    """`reckon`, once for one question: lines and drawings share it."""
    return once(values, "safety", lambda: reckon(values))


def answer(values: Values) -> list:
    """The product's own sheet first, then the statements of the task, or the standing cautions."""
    return say(reckoned(values), values)


def figures(values: Values) -> list:
    """The pictograms of the product's own statements, or of the usual resin and hardener."""
    found, kept = reckoned(values), memo_of(values)
    part = "" if found.own else PRODUCTS
    return [dict(kept.once("pictograms", key, lambda key=key: pictogram_drawing.figure(key)), part=part)
            for key in found.signs]
