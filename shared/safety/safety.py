"""Safety: what is told about the task at hand, the product's own statements first, each with where it comes from."""
from ..catalogue.cautions import FIRST, STANDING
from ..catalogue.dusts import POWDERS
from ..catalogue.hazards import CLASSES, HAZARDS, PICTOGRAMS, PRECAUTIONS, PRECEDENCE
from ..catalogue.marks import LABEL
from ..catalogue.pictograms import DIAMOND, SHAPES, SIZE
from ..catalogue.tasks import CURED, TASKS, TOPICS, statements
from ..drawing import shapes as draw
from ..forms.inputs import Choice, Pick
from ..forms.memo import memo_of
from ..things.records import SYSTEM
from ..things.statements import base, codes
from ..words.lines import MORE, SAY, WARN, words
from ..words.provenance import provenance

INPUTS = (
    Choice("task", "What comes next", (("any", "Any work"),) + tuple([(key, label) for key, label, _ in TASKS])),
    Choice("powder", "Which powder", tuple([row[:2] for row in POWDERS]), when=(("task", ("powder",)),)),
    Choice("cured", "How cured", tuple([row[:2] for row in CURED]), when=(("task", ("sand",)),)),
    Pick("system", "Resin system", SYSTEM, default="3-1", fold="Your product"),
)
CHECKS = ()
USUAL = ("resin", "hardener")
REST, PRODUCTS = "rest", "products"
FOLDS = ((REST, "More about this task"), (PRODUCTS, "What such products carry"))


def own_codes(values):
    """The statements typed from the product's own sheet, as codes."""
    system = values.get("system")
    return codes(system["statements"]) if system and system.get("statements") else ()


def answer(values):
    """The product's own sheet first, then the statements of the task, or the standing cautions."""
    lines = [words("first", "First of all", FIRST, rank=SAY)]
    lines.extend(product_lines(own_codes(values)))
    if values["task"] == "any":
        for name, heading, text, mark, source in STANDING:
            lines.append(words(name, heading, text, rough=provenance(mark, source), rank=SAY))
    else:
        lines.extend(task_lines(values))
    if not own_codes(values):
        lines.extend(usual_lines())
    return lines


def task_lines(values):
    """The statements of the task by topic: what must never be and when to stop as warnings."""
    task = values["task"]
    leading = dict([(key, topics) for key, _, topics in TASKS])[task] + ("aid",)
    not_asked = [row[2] for row in CURED if row[0] != values.get("cured")]
    own = statements(task)
    lines = []
    if task == "powder":
        row = dict([(row[0], row) for row in POWDERS])[values["powder"]]
        lines.append(words("powder_kind", row[1], row[3], rough=provenance(row[4], row[5]), rank=WARN))
    for topic, heading in TOPICS:
        rank = WARN if topic in ("never", "stop") else SAY if topic in leading else MORE
        told = []  # [name, text, where]: what has one topic and one origin is read as one piece
        for name, _, about, text, mark, source in own:
            if about == topic and name not in not_asked:
                where = provenance(mark, source)
                if told and told[-1][2] == where and topic != "aid":
                    told[-1][1] += " " + text
                else:
                    told.append([name, text, where])
        lines.extend([words(name, heading, text, rough=where, rank=rank, part=REST if rank == MORE else "")
                      for name, text, where in told])
    return lines


def product_lines(found):
    """What the typed codes say; a code this catalogue does not hold is named, to be read on the sheet."""
    hazards = dict([(row[0], row) for row in HAZARDS])
    precautions = dict([(row[0], row) for row in PRECAUTIONS])
    lines = []
    for place, code in enumerate(found):
        row = hazards.get(base(code)) or precautions.get(code)
        text, where = "Read its words on the sheet: they are not kept here.", LABEL
        if row:
            text, where = row[1] + ("." if row[1][-1:] not in "./" else ""), LABEL + "; words " + provenance(*row[-2:])
        if row and code[0] == "P" and row[2]:
            text += " On an older label: " + row[2]
        lines.append(words("own_" + str(place), "Your product, " + code, text, rough=where,
                           rank=WARN if code[0] != "P" else MORE, part="" if code[0] != "P" else PRODUCTS))
    return lines


def usual_lines():
    """What the usual classes of product carry, while no statements of one's own are typed."""
    return [words("usual_" + key, label, ((typed + ". ") if typed else "") + about
                  + " Your product's own sheet decides.", rough=provenance(mark, source), rank=MORE, part=PRODUCTS)
            for key, label, typed, about, mark, source in CLASSES]


def signs(found):
    """The pictograms that codes bring, after the order of precedence: keys, in the order of the catalogue.

    >>> signs(("H314", "H315", "H317", "H411")), signs(("H315",)), signs(("H302", "H311"))
    (['corrosion', 'exclamation', 'environment'], ['exclamation'], ['skull'])
    """
    plain = [base(code) for code in found]
    carried = [(row[2], row[0]) for row in HAZARDS if row[0] in plain and row[2]]
    present = [sign for sign, _ in carried]
    needless = []
    for sign, cause, replaced, _, _ in PRECEDENCE:
        if sign in present and (not cause or cause in plain):
            needless.extend(replaced)
    kept = [sign for sign, code in carried if sign != "exclamation" or code not in needless]
    return [row[0] for row in PICTOGRAMS if row[0] in kept]


def pictogram(key):
    """One pictogram as a figure."""
    shapes = [draw.area(role, points) for role, points in DIAMOND + dict(SHAPES)[key]]
    row = dict([(row[0], row) for row in PICTOGRAMS])[key]
    return draw.figure("sign_" + key, row[1], SIZE, SIZE, shapes, "Red diamond with " + row[2])


def figures(values):
    """The pictograms of the product's own statements, or of the usual resin and hardener."""
    found, part = own_codes(values), ""
    if not found:
        found, part = [], PRODUCTS
        for row in CLASSES:
            if row[0] in USUAL:
                found.extend(codes(row[2]))
    kept = memo_of(values)
    return [dict(kept.once("pictograms", key, lambda key=key: pictogram(key)), part=part) for key in signs(found)]
