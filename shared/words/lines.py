"""A result is an ordered list of lines. Template, page and card lay lines out and do nothing else."""
from collections import namedtuple
from math import isfinite

from ..equations.types import Figures
from .languages import Reader
from .numbers import shown
from .texts import in_two, large, said
from .types import Said

Line = namedtuple("Line", ("name", "label", "value", "unit", "text", "rough", "caution", "part", "rank", "span"))

# How a line is laid out: the answer, what belongs to it, a sentence, what folds away, a question back, a warning.
# CALL: its text is a number to be dialled.
ANSWER, BESIDE, SAY, MORE, ASK, WARN, CALL = "answer", "beside", "say", "more", "ask", "warn", "call"


def line(name: str, label: Said, value: "float | None", unit: str, text: Said,
         rough: Said = "", caution: str = "", part: str = "", rank: str = BESIDE,
         span: "list | tuple" = ()) -> Line:
    """One line of an answer.

    name: stable key; label: what it is; value, unit: SI, for tests and the API (None, "" where it is words)
    text: rounded, with its unit, for people; rough: how far off it may be, or where the number comes from
    caution: what can hurt; part: "a", "b", ... for a part of the mix, "filler", "mix"; rank: how to lay it out
    span: (from, to) [percent], where this piece lies on the rule under a large figure; empty: no rule
    The label of an answer starts with its name; what is to be done stands behind the first comma of its sentence:
    "Resin, until it shows". Values may have commas of their own.
    """
    if value is not None and not isfinite(value):
        raise ValueError("a line must hold a finite number: " + name)
    return Line(name, label, value, unit, text, rough, caution, part, rank, span)


def words(name: str, label: Said, text: Said, rough: Said = "", caution: str = "",
          part: str = "", rank: str = BESIDE) -> Line:
    """A line that says something and holds no number."""
    return line(name, label, None, "", text, rough, caution, part, rank)


def spans(amounts: Figures) -> list:
    """Where each of several amounts lies on one rule, for `span` [percent, two decimals].

    >>> spans((3.0, 1.0))
    [[0.0, 75.0], [75.0, 100.0]]
    """
    whole, before, found = sum(amounts), 0.0, []
    for amount in amounts:
        after = before + amount
        found.append([float(shown(100 * before / whole, 2)), float(shown(100 * after / whole, 2))])
        before = after
    return found


def as_data(lines: list, reader: Reader, before: "dict | None" = None) -> list:
    """Lines as plain dicts, for JSON, as this reader reads them. before: what the last ones were said as, by name: most
    stay as they are from one key press to the next. Nobody changes them."""
    found, kept = [], {} if before is None else before
    for one in lines:
        known = kept.get(one.name)
        if not known or known[0] != one:
            known = kept[one.name] = one, _data(one, reader)
        found.append(known[1])
    return found


def _data(one: Line, reader: Reader) -> dict:
    name, label, value, unit, text, rough, caution, part, rank, span = one
    found = {"name": name, "label": said(label, reader), "value": value, "unit": unit, "text": said(text, reader),
             "rough": said(rough, reader), "caution": said(caution, reader), "part": part, "rank": rank, "span": span}
    if rank == ANSWER:
        found.update(set_apart(label, text, reader))
    return found


def set_apart(label: Said, text: Said, reader: Reader) -> dict:
    """What a page sets large of an answer or a step, and what stands small beside it: its name, what is to be done, the
    figure, and the rest of the text with its blank. What is empty is left out."""
    head, how = in_two(label, reader)
    figure, small = large(text, reader)
    return dict([(key, one) for key, one in (("head", head), ("how", how), ("large", figure), ("small", small))
                 if one != ""])
