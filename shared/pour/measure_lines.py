"""Measure lines: what is said of a batch on its tool: each way's own, the room in the cup, the time, other tools."""
from ..forms.late import late
from ..forms.types import Found, Values
from ..words.lines import MORE, Line, line
from ..words.messages import quantity
from ..words.numbers import UP
from . import ways


def say(found: Found, values: Values) -> list[Line]:
    """What the tool must show in the order of pouring, then how far it can be trusted. found: measure.MeasureResult"""
    lines = ways.say(found.way, values)
    if found.room:
        lines.extend(late("by_stick_lines").room(found.room, values))
    if found.in_use:
        lines.extend(late("time_in_cup_lines").say(found.in_use, values))
    if found.held:
        lines.append(in_cup(found.held.mass, "measure-in-cup" if found.held.filler else "measure-in-cup.plain"))
    if found.tools:
        lines.extend(late("compare_tools_lines").say(found.tools, values))
    return lines


def in_cup(mass: float, label: str) -> Line:
    """All that the cup holds, by which the caution goes. mass: [kg]"""
    return line("in_cup", label, mass, "kg", quantity(mass, "g", UP), rank=MORE)
