"""A result is an ordered list of lines. Template, page and card lay lines out and do nothing else."""
from collections import namedtuple
from math import isfinite

NAMES = ("name", "label", "value", "unit", "text", "rough", "caution", "part", "rank")
Line = namedtuple("Line", NAMES)

# How a line is laid out: the answer, what belongs to it, what folds away, a question back, a warning.
ANSWER, BESIDE, MORE, ASK, WARN = "answer", "beside", "more", "ask", "warn"


def line(name, label, value, unit, text, rough="", caution="", part="", rank=BESIDE):
    """One line of an answer.

    name: stable key; label: what it is; value, unit: SI, for tests and the API (None, "" where it is words)
    text: rounded, with its unit, for people; rough: how far off it may be, or where the number comes from
    caution: what can hurt; part: "a", "b", ... for a part of the mix, "filler", "mix"; rank: how to lay it out
    """
    if value is not None and not isfinite(value):
        raise ValueError("a line must hold a finite number: " + name)
    return Line(name, label, value, unit, text, rough, caution, part, rank)


def words(name, label, text, rough="", caution="", part="", rank=BESIDE):
    """A line that says something and holds no number."""
    return line(name, label, None, "", text, rough, caution, part, rank)


def as_data(lines):
    """Lines as plain dicts, for JSON."""
    return [{"name": name, "label": label, "value": value, "unit": unit, "text": text, "rough": rough,
             "caution": caution, "part": part, "rank": rank}
            for name, label, value, unit, text, rough, caution, part, rank in lines]
