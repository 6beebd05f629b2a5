"""Safety lines: the product's own sheet first, then the statements of the task, or the standing cautions."""
from ..catalogue.cautions import FIRST, STANDING
from ..catalogue.hazards import CLASSES
from ..catalogue.tasks import TOPICS
from ..forms.types import Found, Values
from ..words.lines import MORE, SAY, WARN, Line, words
from ..words.messages import message, sentences, typed
from ..words.sourced import sourced
from . import own_codes_lines
from .air_lines import dust_limit
from .own_codes_lines import PRODUCTS

REST = "rest"  # part of the answer that folds away


def say(found: Found, values: Values) -> list[Line]:
    """found: `safety.SafetyResult`"""
    lines = [words("first", "safety-first", FIRST, rank=SAY)]
    lines.extend(own_codes_lines.say(found.own, found.signal))
    if found.rows is None:
        for name, heading, text, mark, source in STANDING:
            lines.append(words(name, heading, text, rough=sourced(mark, source), rank=SAY))
    else:
        lines.extend(_task(found))
    return lines if found.own else lines + _usual()


def _task(found: Found) -> list[Line]:
    """The statements of the task by topic: what must never be and when to stop as warnings."""
    lines = []
    if found.powder:
        row = found.powder
        lines.append(words("powder_kind", row[1], row[3], rough=sourced(row[4], row[5]), rank=WARN))
        lines.append(dust_limit("safety-powder-dust", found.limit))
    for topic, heading in TOPICS:
        rank = WARN if topic in ("never", "stop") else SAY if topic in found.leading else MORE
        told: list = []  # [name, texts, (mark, source)]: what has one topic and one origin is read as one piece
        for name, about, text, mark, source in found.rows:
            if about == topic:
                if told and told[-1][2] == (mark, source) and topic != "aid":
                    told[-1][1].append(text)
                else:
                    told.append([name, [text], (mark, source)])
        lines.extend([words(name, heading, sentences(texts), rough=sourced(*where), rank=rank,
                            part=REST if rank == MORE else "") for name, texts, where in told])
    return lines


def _usual() -> list[Line]:
    """What the usual classes of product carry, while no statements of one's own are typed."""
    return [words("usual_" + key, label, message("usual-product" if codes else "usual-product.no-codes",
                                                 codes=typed(codes), about=about),
                  rough=sourced(mark, source), rank=MORE, part=PRODUCTS)
            for key, label, codes, about, mark, source in CLASSES]
