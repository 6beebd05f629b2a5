"""The order of work inside one batch: who does what from when to when, counted from the start of its mixing.

Tape alone has no putty to mix, place and tool; putty alone no tape to wet out, lay and cover.
"""
from collections import namedtuple

from ..equations.laying import Laid, Laying

# key: of done_so_far.STEPS; who: 0 first hand, 1 second, 2 the one who mixes; start, end [s]; done: whether it really
# was
Step = namedtuple("Step", ("key", "who", "start", "end", "done"))


def steps(work: Laying, laid: Laid) -> "list[Step]":
    """The steps of one batch in the order in which they end, from the start of its mixing."""
    return _side_by_side(work, laid) if laid.together else _in_turn(work, laid)


def _putty_steps(work: Laying, laid: Laid) -> "list[Step]":
    if not laid.putty:
        return []
    mixed = work.crew.mix_putty
    return [Step("mix", 2 if work.crew.mixer else 0, 0.0, mixed, False), Step("place", 0, mixed, laid.placed, False)]


def _wet_mixed(work: Laying, laid: Laid) -> float:
    """When the wet-out resin is mixed [s]."""
    return laid.wet_start + (0.0 if laid.one_mix else work.crew.mix_wet)


def _wet_mix(work: Laying, laid: Laid) -> "list[Step]":
    """Its mixing; one mix for both uses has none of its own."""
    if laid.one_mix:
        return []
    who = 2 if work.crew.mixer else 1 if laid.together else 0
    return [Step("wet_mix", who, laid.wet_start, _wet_mixed(work, laid), False)]


def _side_by_side(work: Laying, laid: Laid) -> "list[Step]":
    """The second hand lays the tape piece by piece behind the first one's cove."""
    first, wet, found = work.pieces[laid.first], _wet_mixed(work, laid), _putty_steps(work, laid)
    tooled = laid.placed + first.tool + first.clean if laid.putty else 0.0
    rolled = max(tooled, wet + first.wetting) + first.lay + first.roll
    if laid.putty:
        found.append(Step("clean", 0, laid.placed, laid.tooled, False))
    found += _wet_mix(work, laid)
    found.append(Step("roll", 1, wet, laid.rolled, False))
    found.append(Step("peel", 0, max(laid.tooled, rolled), laid.covered, False))
    return sorted(found, key=lambda step: (step.end, step.start, step.key))


def _in_turn(work: Laying, laid: Laid) -> "list[Step]":
    """One hand, or the tape after the cove."""
    pieces, found = work.pieces[laid.first : laid.last], _putty_steps(work, laid)
    if laid.putty:
        tooled = laid.placed + sum([piece.tool for piece in pieces])
        found.append(Step("tool", 0, laid.placed, tooled, False))
        found.append(Step("clean", 0, tooled, laid.tooled, False))
    if not laid.wet:
        return found
    wet = _wet_mixed(work, laid)
    laid_at = wet + sum([piece.wetting for piece in pieces])
    roll_at = laid_at + sum([piece.lay for piece in pieces])
    found += _wet_mix(work, laid)
    found.append(Step("wet", 0, wet, laid_at, False))
    found.append(Step("lay", 0, laid_at, roll_at, False))
    found.append(Step("roll", 0, roll_at, laid.rolled, False))
    found.append(Step("peel", 0, laid.rolled, laid.covered, False))
    return found
