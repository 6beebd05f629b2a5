"""The order of work inside one batch: who does what from when to when, counted from the start of its mixing.

Tape alone has no putty to mix, place and tool; putty alone no tape to wet out, lay and cover.
"""

from collections import namedtuple

# key: see STEPS; who: 0 first hand, 1 second, 2 the one who mixes; start, end [s]; done: whether it really was
Step = namedtuple("Step", ("key", "label", "who", "start", "end", "done"))

STEPS = (
    ("mix", "Putty mixed and bagged"),
    ("place", "Bag empty"),
    ("tool", "Cove tooled"),
    ("clean", "Edges clean"),
    ("wet_mix", "Wet-out resin mixed"),
    ("wet", "Tape wet out"),
    ("lay", "Tape laid"),
    ("roll", "Air rolled out"),
    ("peel", "Peel ply down"),
)


def steps(work, laid):
    """The steps of one batch in the order in which they end. work: `laying.Laying`; laid: `laying.Laid`"""
    crew = work.crew
    pieces = work.pieces[laid.first : laid.last]
    mixing, hand = (2 if crew.mixer else 0), (1 if laid.together else 0)
    found = [
        Step("mix",
             "Mix for both: keep the wet-out part, fill the rest, bag it" if laid.one_mix else "Mix and bag the putty",
             mixing, 0.0, crew.mix_putty, False),
        Step("place", "Place the putty", 0, crew.mix_putty, laid.placed, False),
    ] if laid.putty else []
    wet = laid.wet_start + (0.0 if laid.one_mix else crew.mix_wet)
    wet_mix = Step(
        "wet_mix", "Mix the wet-out resin, onto the tray at once", 2 if crew.mixer else hand, laid.wet_start, wet, False
    )
    if laid.together:
        first = pieces[0]
        tooled = laid.placed + first.tool + first.clean if laid.putty else 0.0
        rolled = max(tooled, wet + first.wetting) + first.lay + first.roll
        if laid.putty:
            found.append(Step("clean", "Tool and clean, piece by piece", 0, laid.placed, laid.tooled, False))
        if not laid.one_mix:
            found.append(wet_mix)
        found.append(Step("roll", "Wet out, lay, roll, piece by piece", 1, wet, laid.rolled, False))
        found.append(Step("peel", "Peel ply", 0, max(laid.tooled, rolled), laid.covered, False))
        return sorted(found, key=lambda step: (step.end, step.start, step.key))
    if laid.putty:
        tooled = laid.placed + sum([piece.tool for piece in pieces])
        found.append(Step("tool", "Tool the cove", 0, laid.placed, tooled, False))
        found.append(Step("clean", "Clean the edges", 0, tooled, laid.tooled, False))
    if not laid.wet:
        return found
    if not laid.one_mix:
        found.append(wet_mix)
    laid_at = wet + sum([piece.wetting for piece in pieces])
    roll_at = laid_at + sum([piece.lay for piece in pieces])
    found.append(Step("wet", "Wet out the tape on the tray", 0, wet, laid_at, False))
    where = "Lay the tape on the soft cove" if laid.putty else "Lay the tape"
    found.append(Step("lay", where, 0, laid_at, roll_at, False))
    found.append(Step("roll", "Roll the air out", 0, roll_at, laid.rolled, False))
    found.append(Step("peel", "Peel ply", 0, laid.rolled, laid.covered, False))
    return found
