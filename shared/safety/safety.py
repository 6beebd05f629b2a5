"""Safety: what is told about the task at hand, the product's own statements first, each with where it comes from."""
from collections import namedtuple

from ..catalogue.dusts import POWDERS, strictest
from ..catalogue.tasks import CURED, TASKS, statements
from ..forms.inputs import Choice, Pick
from ..forms.memo import memo_of, once
from ..forms.types import Values
from ..things.records import SYSTEM
from ..things.statements import codes
from . import pictogram_drawing
from .own_codes import own, signal, signs, usual
from .own_codes_lines import PRODUCTS
from .safety_lines import REST, say


def check_codes(system: Values) -> None:
    """What a product can do to somebody hangs on its codes alone: here its label needs no ratio."""
    codes(system["statements"])


INPUTS = (
    Choice("task", "safety-task", (("any", "safety-task.any"),) + tuple([(key, label) for key, label, _ in TASKS])),
    Choice("powder", "safety-powder", tuple([row[:2] for row in POWDERS]), when=(("task", ("powder",)),)),
    Choice("cured", "safety-cured", tuple([row[:2] for row in CURED]), when=(("task", ("sand",)),)),
    Pick("system", "safety-system", SYSTEM, default="3-1", check=check_codes, fold="safety-system.fold"),
)
CHECKS = ()
FOLDS = ((REST, "safety-rest"), (PRODUCTS, "safety-products"))

# own: `own_codes.Statement` of each code typed from the product's own sheet; powder: its row of catalogue.dusts, None
# where none is asked; limit: the strictest of its dust; rows: statements of the task that hold (name, topic, text,
# mark, source), None where no task is chosen; leading: topics that lead in it; signs: keys of the pictograms, of the
# own codes or else of the usual product; signal: the stronger signal word of the own codes, "" where they have none
SafetyResult = namedtuple("SafetyResult", ("own", "powder", "limit", "rows", "leading", "signs", "signal"))


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
    mine = own(found)
    return SafetyResult(mine, powder, strictest(powder[2]) if powder else None, rows, leading,
                        signs(found or usual()), signal(mine))


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
