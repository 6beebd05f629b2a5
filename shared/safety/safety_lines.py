"""Safety lines: the product's own sheet first, then the statements of the task, or the standing cautions."""
from ..catalogue.cautions import FIRST, STANDING
from ..catalogue.hazards import CLASSES
from ..catalogue.tasks import TOPICS
from ..forms.types import Found, Values
from ..words.lines import MORE, SAY, WARN, Line, words
from ..words.provenance import provenance
from . import own_codes_lines
from .air_lines import dust_limit
from .own_codes_lines import PRODUCTS

REST = "rest"  # part of the answer that folds away


def say(found: Found, values: Values) -> list[Line]:
    """found: `safety.SafetyResult`"""
    lines = [words("first", "First of all", FIRST, rank=SAY)]
    lines.extend(own_codes_lines.say(found.own, found.signal))
    if found.rows is None:
        for name, heading, text, mark, source in STANDING:
            lines.append(words(name, heading, text, rough=provenance(mark, source), rank=SAY))
    else:
        lines.extend(_task(found))
    return lines if found.own else lines + _usual()


def _task(found: Found) -> list[Line]:
    """The statements of the task by topic: what must never be and when to stop as warnings."""
    lines = []
    if found.powder:
        row = found.powder
        lines.append(words("powder_kind", row[1], row[3], rough=provenance(row[4], row[5]), rank=WARN))
        lines.append(dust_limit("Its dust, a working day at the most", found.limit))
    for topic, heading in TOPICS:
        rank = WARN if topic in ("never", "stop") else SAY if topic in found.leading else MORE
        told: list = []  # [name, text, where]: what has one topic and one origin is read as one piece
        for name, about, text, mark, source in found.rows:
            if about == topic:
                where = provenance(mark, source)
                if told and told[-1][2] == where and topic != "aid":
                    told[-1][1] += " " + text
                else:
                    told.append([name, text, where])
        lines.extend([words(name, heading, text, rough=where, rank=rank, part=REST if rank == MORE else "")
                      for name, text, where in told])
    return lines


def _usual() -> list[Line]:
    """What the usual classes of product carry, while no statements of one's own are typed."""
    return [words("usual_" + key, label, ((typed + ". ") if typed else "") + about
                  + " Your product's own sheet decides.", rough=provenance(mark, source), rank=MORE, part=PRODUCTS)
            for key, label, typed, about, mark, source in CLASSES]
