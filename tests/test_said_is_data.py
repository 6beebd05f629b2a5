"""Said is data: each number that a line or a step of an answer says stands in the answer's data too, or in what was
asked. What is said as a number and is none of these is excused below by the name of its line, with the reason.
"""
import re

import cases
import pytest
from covemix.server import examples
from covemix.server.data import FUNCTIONS, data
from covemix.server.typed import Taken, switched_on
from covemix.shared.door import moves
from covemix.shared.forms import inputs, links
from covemix.shared.forms.inputs import UNITS_INPUT
from covemix.shared.words.units import BY_NAME, from_si
from covemix.shared.words.written import reader

SCALES = (1.0, 100.0, 1 / 60, 1 / 3600)  # a bare number is one, per cent, or a time in minutes or hours
STEPS = (60.0, 300.0, 900.0, 1800.0, 3600.0)  # to which a time is told [s]
DEGREES = 5.0  # to which a peak is told [K]
NUMBERED = "pouring-step"  # a label that counts steps


def said(what):
    """(value in SI, unit, half a step of its last digit or None) of every figure in what is said.

    >>> list(said(("key", {"mass": (1, 0.24, "g", "", None, 3), "count": 2})))
    [(0.24, 'g', None), (2, '', 0.0)]
    """
    if isinstance(what, int) and not isinstance(what, bool):
        yield what, "", 0.0
    if not isinstance(what, tuple):
        return
    head = what[0]
    if isinstance(head, str) and isinstance(what[1], dict):
        for name, value in what[1].items():
            if (head, name) != (NUMBERED, "number"):
                yield from said(value)
    elif head in (1, 14):
        yield what[1], what[2], None
    elif head == 2:
        for value in what[1]:
            yield value, "mm", None
    elif head == 3:
        yield what[1], "m", None
    elif head in (4, 13):
        digits = re.match(r"-?\d+(\.\d+)?", what[1])  # a bare text may have its unit in it
        if digits:
            yield float(digits[0]), what[2] if head == 13 else "", 10.0**-len((digits[1] or ".")[1:])
    elif head in (7, 8):
        for one in what[1]:
            yield from said(one)
    elif head in (9, 11, 12):
        yield from said(what[1])


def numbers(found):
    """Every number in a tree of dicts and lists."""
    if isinstance(found, dict):
        for key, one in found.items():
            if not str(key).startswith("_"):
                yield from numbers(one)
    elif isinstance(found, (list, tuple)):
        for one in found:
            yield from numbers(one)
    elif isinstance(found, (int, float)) and not isinstance(found, bool):
        yield float(found)


def is_told(value, unit, step, pool):
    """Whether a figure that is said is one of the numbers, as it is told: exactly, or rounded to where it is read.

    step: of its last digit, None where it is not rounded yet
    """
    if step is not None:
        if unit and unit in BY_NAME:
            return any(abs(from_si(one, unit) - value) <= step + 1e-9 for one in pool)
        if any(abs(one * scale - value) <= step + 1e-9 for one in pool for scale in SCALES):
            return True
        if any(abs(from_si(one, own) - value) <= step + 1e-9 for one in pool for own in ("degC", "degF")):
            return True
        return is_told(value * 60, "min", None, pool) or is_told(value * 3600, "min", None, pool)
    if any(abs(one - value) <= 1e-6 * max(abs(value), 1e-9) for one in pool):
        return True
    quantity = BY_NAME[unit].quantity if unit in BY_NAME else ""
    if quantity == "temperature":
        steps, shown = (DEGREES,), from_si(value, "degC")
    else:
        steps, shown = STEPS if quantity == "time" else (), value
    return any(abs(one - value) < own and abs(shown / own - round(shown / own)) < 1e-6 for own in steps for one in pool)


def gaps(move, tree):
    """{name of a line without its numbers: figures} that no datum tells; None where the move refuses."""
    module = moves.module(move)
    values, errors = inputs.read(module.INPUTS, tree)
    if errors or inputs.checked(module.CHECKS, values):
        return None
    pool = [*numbers(data(move, values, reader())), *numbers(values)]
    found = {}
    lines = [(one.name, (one.value, one.unit, None), (one.label, one.text, one.rough)) for one in module.answer(values)]
    steps = [(f"step {one['name']}", (None, "", None), (one["label"], one["figure"], one["under"]))
             for one in (module.steps(values) if hasattr(module, "steps") else ())]
    for name, own, texts in [*lines, *steps]:
        figures = [one for text in texts for one in said(text)]
        if own[0] is not None:
            figures.append(own)
        name = name.removeprefix("step ")
        strange = [one[:2] for one in figures if not is_told(*one, pool)]
        if strange:
            found.setdefault(re.sub(r"\d+", "#", name), []).extend(strange)
    return found

CASES = {"heat": 8, "plan": 14, "boat": 8, "run": 14}
# what is said as a number and is no result of its own, by the name of its line (# stands for a number); "sources" has
# facts alone
EXCUSED = {
    # a label's doubt, which `ratio` tells; what one batch is taken for before the plan; ranges of a dose; what is left
    # of a roll and the cards are sums of `cuts` and `phases`; a joint's own makings are what `joint` tells, a face's
    # what `sheathing` does, and `cuts` to the whole millimetre that each strip is cut to; shares of the cost
    "boat": "resin batches filler cut_t_#_roll_# cut_p_#_roll_# cut_c_#_roll_# wall_# mixed joint_# surface_# tape_# "
            "cloth_# cost",
    # what is left is 1 less `window_share`; limits and rates of the catalogue; from `start` to `end`
    "plan": "slack largest rates long_day",
    # both are mass over mass; a laminate in a thousandth of an inch
    "joint": "resin_on laminate",
    # steps of a scale; errors of each part alone; a band of a peak ends at 150 degC; what an error of ratio costs; what
    # mends a pour is what `rescue` tells; the least batch of a pump or a syringe
    "measure": "reading_a marks_error peak mark_cost_a ratio_cost fix more_a more_b poured smallest",
    "rescue": "ratio_cost",
    # the empty cup; how to stir and how warm; marks of the syringe; the rest of the usable share; as in `measure`
    "pouring": "cup stir done drawn_a drawn_b mark_a level_a mend",
    # ranges of the catalogue; how well the model meets each fact; hours and minutes apart; a peak's band, as above
    "heat": "heat energy fact_pot fact_# in_tray thick by_heat half peak",
    # hours and minutes apart, and the usual batch that is shown; how far the cup was from the model's own
    "trial": "usable usual quicker not_sure",
    # what is usual of a post-cure, and ranges of the catalogue; half hours of a day that is not the first
    "cure": "post day_counts sand turn light full",
    # differences in the user's own degrees
    "dew": "margin night_margin",
    # twice the radius
    "spreader": "radius_#",
    # half hours of a day that is not the first
    "coats": "start_#",
    # minutes since the end, and clocks that are wrong by years
    "pot": "end unseen keep_unseen clock_changed again clocks_differ set",
    # what was typed, in another unit; a share of the label's time
    "kit": "summary", "log": "own_time", "timings": "share", "own_rates": "summary",
    # numbers of the steps
    "aid": "hot_carry hot_spread hot_water hot_burns hot_watch",
    # facts of the catalogue; minutes and hours apart; figures of a dust mask
    "safety": "dust_limit", "air": "clear changes dust_mask dust_limit dust_room",
}


def trees(move):
    """What is asked: the question of the description, and generated ones."""
    taken = Taken((UNITS_INPUT, *moves.module(move).INPUTS), examples.BODIES[move])
    yield switched_on(move, taken.tree)
    for request in cases.requests(move, CASES.get(move, 25), seed=5):
        yield request["typed"] if "typed" in request else links.tree(request["pairs"])


@pytest.mark.parametrize("move", [name for name in moves.names() if name != "sources"])
def test_every_number_that_is_said_stands_in_the_data_or_is_excused(move):
    found, looked = {}, 0
    for tree in trees(move):
        here = gaps(move, tree)
        looked += here is not None
        for name, figures in (here or {}).items():
            found.setdefault(name, figures[:3])
    excused = set(EXCUSED.get(move, "").split())  # which of them a draw needs is chance
    assert looked
    assert {name: figures for name, figures in found.items() if name not in excused} == {}


def test_a_number_that_no_datum_tells_is_seen(monkeypatch):
    monkeypatch.setitem(FUNCTIONS, "fillets", lambda found, values, who: {})
    assert "putty" in gaps("fillets", next(iter(trees("fillets"))))
