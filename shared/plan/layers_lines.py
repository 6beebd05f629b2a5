"""Layers lines: what is said of coats and cloth in a plan: the next one, the end, and each with its window."""
from ..forms.clock_times import clock_said
from ..forms.types import Said, Values
from ..surface.faces import SHEATHE
from ..words.lines import ANSWER, MORE, Line, line
from ..words.messages import listed, message, quantity, row, typed
from ..words.numbers import DOWN, UP
from .layers import Layer, ahead
from .plan_found import Found
from .progress import dated

PART = "layers"


def say(found: Found, values: Values) -> "list[Line]":
    """The next coat and the end of all, then each coat with its pots."""
    layers = found.layers
    if not layers:
        return []
    lines = [_layer(values, (ahead(layers, values) or layers[-1:])[0], "layer_next", ANSWER, ""),
             line("layers_end", "plan-layers-end", layers[-1].end, "s", _clock(values, layers[-1].end), rank=ANSWER,
                  rough="plan-layers-end.rough")]
    for place, one in enumerate(layers):
        lines.append(_layer(values, one, "layer_" + str(place + 1), MORE, PART))
        if one.pots.count > 1:
            lines.append(line("mixing_" + str(place + 1), "plan-layers-mixing", one.pots.count, "", listed(
                [_clock(values, start) for start in one.starts], "plain"), rank=MORE, part=PART))
    return lines


def _clock(values: Values, time: float, toward: str = UP) -> Said:
    return clock_said(time, values["hours"], toward, dated=dated(values))


def called(one: Layer) -> Said:
    """A coat as it is called: its face, and which coat of it."""
    face = one.row["name"]
    name = typed(face) if face else row(["surface-face", one.row["place"] + 1], " ")
    if one.number == 1 and one.row["work"] == SHEATHE:
        return message("plan-layer.cloth", name=name)
    return message("plan-layer", name=name, number=one.number, count=int(one.row["coats"]))


def _layer(values: Values, one: Layer, name: str, rank: str, part: str) -> Line:
    span = message("plan-span", start=_clock(values, one.starts[0]), end=_clock(values, one.end))
    pots = message("surface-pots.text", count=one.pots.count, mass=quantity(one.pots.mass, "g", UP))
    said = [span, pots] + (["plan-step-done"] if one.finished else [])
    return line(name, called(one), one.starts[0], "s", row(said, " · "), rough=_next(values, one), rank=rank,
                part=part, caution="coats-sand.text" if one.latest is None else "")


def _next(values: Values, one: Layer) -> Said:
    """When the next coat of the face may follow."""
    if one.number == one.row["coats"]:
        return ""
    if one.opens is None:
        return "coats-no-window.text"
    opens = _clock(values, one.opens)
    if one.closes is None:
        return message("plan-layer-next.open", opens=opens)
    closes = _clock(values, one.closes, DOWN)
    if one.sands is None:
        return message("coats-start.text", earliest=opens, latest=closes)
    return message("plan-layer-next" if one.opens < one.closes else "plan-layer-next.late", opens=opens, closes=closes,
                   sands=_clock(values, one.sands))
