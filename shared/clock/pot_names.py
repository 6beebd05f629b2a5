"""Pot names: what a running pot keeps of its batch and its steps, as keys and figures that are words of no language.

A link is read in another language than it was made in. An earlier build kept English words: they are read for ever.
"""
from ..forms.types import Said
from ..words.messages import message, number, typed
from ..words.numbers import digits

# steps of a batch, by the key that links and pots keep
STEPS = (
    ("mix", "plan-done-step.mix"),
    ("place", "plan-done-step.place"),
    ("tool", "plan-done-step.tool"),
    ("clean", "plan-done-step.clean"),
    ("wet_mix", "plan-done-step.wet-mix"),
    ("wet", "plan-done-step.wet"),
    ("lay", "plan-done-step.lay"),
    ("roll", "plan-done-step.roll"),
    ("peel", "plan-done-step.peel"),
)
ROLLED, PEEL = "rolled", "peel"
KNOWN = dict(STEPS + ((ROLLED, "pot-start-next"),))
BEFORE = {"Putty mixed and bagged": "mix", "Bag empty": "place", "Cove tooled": "tool", "Edges clean": "clean",
          "Wet-out resin mixed": "wet_mix", "Tape wet out": "wet", "Tape laid": "lay", "Air rolled out": "roll",
          "Peel ply down": PEEL, "Tape rolled on the soft cove": ROLLED}
MIXED, MIXED_BEFORE = "; ", " at "  # between how much there is and how warm it is
BATCH_BEFORE = "Batch "


def step_said(name: str) -> Said:
    """A step as it is said; one that somebody named himself as typed.

    >>> step_said("lay"), step_said("Tape laid"), step_said("Eyelets in")
    ('plan-done-step.lay', 'plan-done-step.lay', (0, 'Eyelets in'))
    """
    return KNOWN.get(BEFORE.get(name, name), typed(name))


def mixed(mass: str, air: str) -> str:
    """What a batch is called that has no number: how much there is, and how warm it is where it is mixed."""
    return mass + MIXED + air


def batch_said(name: str) -> Said:
    """A batch as it is said: by its number in a plan, by how much and how warm, or as typed.

    >>> batch_said("3") == batch_said("Batch 3"), batch_said("240 g; 20 °C") == batch_said("240 g at 20 °C")
    (True, True)
    >>> batch_said("240 g; 20 °C")[1]["air"], batch_said("Bow at noon"), batch_said("")
    ((4, '20 °C'), (0, 'Bow at noon'), 'pot-unnamed')
    """
    count = name[len(BATCH_BEFORE):] if name.startswith(BATCH_BEFORE) else name
    if digits(count, 3):
        return message("plan-batch", number=int(count))
    for between in (MIXED, MIXED_BEFORE):
        mass, found, air = name.partition(between)
        if found and digits(mass[:1], 1) and digits(air.lstrip("-")[:1], 1):
            return message("pot-start-batch", mass=number(mass), air=number(air))
    return typed(name) if name else "pot-unnamed"
