"""What a key press left as it was is not done again: no field is read, no plan made, no line said twice."""
import json

import pytest
from covemix.shared.boat import boat_pieces
from covemix.shared.door import call, moves
from covemix.shared.forms import inputs
from covemix.shared.forms.memo import Memo
from covemix.shared.plan import day
from covemix.shared.words import lines

BOAT = [("joints.0.kind", "both"), ("joints.0.length", "3 m"), ("joints.1.kind", "inside"), ("joints.1.length", "2 m")]


def asked(memo, pairs, how="screen", screen="boat"):
    return json.loads(call.call(json.dumps({how: screen, "pairs": pairs}), memo))


def changed(pairs, name, text):
    return [(own, text if own == name else was) for own, was in pairs]


def counted(monkeypatch, place, name):
    """A list that grows by one at each call."""
    found, real = [], getattr(place, name)
    monkeypatch.setattr(place, name, lambda *given, **named: (found.append(given), real(*given, **named))[1])
    return found


@pytest.mark.parametrize(("name", "plans"), [("joints.1.length", 1), ("joints.0.length", 2), ("joints.0.name", 0)])
def test_a_boat_makes_only_the_plans_whose_pieces_are_others(monkeypatch, name, plans):
    """The first joint is on both sides of the hull, the second on the inside alone."""
    memo, pairs = Memo(), [*BOAT, ("joints.0.name", "Keel")]
    asked(memo, pairs)
    made = counted(monkeypatch, day, "Plan")
    later = changed(pairs, name, "2.5 m")
    assert asked(memo, later) == asked(Memo(), later)
    assert len(made) == plans + 2  # both of them without a memo


def test_a_boat_makes_its_plans_anew_where_it_says_other_things_of_its_work(monkeypatch):
    memo = Memo()
    asked(memo, [*BOAT, ("people", "1")])
    made = counted(monkeypatch, day, "Plan")
    for more in (("people", "2"), ("temperature", "15"), ("system", "5-1"), ("units", "us"), ("bag", "30")):
        pairs = [*BOAT, more]
        assert asked(memo, pairs) == asked(Memo(), pairs), more
    assert len(made) >= 4 * 5 - 2  # by units no piece is another, but its text is


def test_the_faces_of_a_joint_that_stays_are_not_looked_at_again(monkeypatch):
    memo = Memo()
    asked(memo, BOAT)
    faces = counted(monkeypatch, boat_pieces, "_faces_of")
    asked(memo, changed(BOAT, "joints.1.length", "2.5 m"))
    assert [kept.row["place"] for kept, _ in faces] == [1]


@pytest.mark.parametrize(("screen", "name"), [("pour", "amount"), ("joint", "thickness")])
def test_what_was_shown_first_is_not_read_again_for_the_rest(monkeypatch, screen, name):
    """Also where only one number was read for it: what was understood of the others stands in the order of the form."""
    memo, texts = Memo(), ("1,5", "12", "12,5", "1,2 ", "8")
    others = [(one, "1,25") for one in ("bag", "spare")] if screen == "joint" else [("system.by_weight", "100:30,5")]
    for text in texts:
        pairs = [(name, text), *others]
        alone = asked(Memo(), pairs, screen=screen)
        assert asked(memo, pairs, "first", screen)["answers"]
        with monkeypatch.context() as patched:
            patched.setattr(inputs, "read", None)
            assert asked(memo, pairs, screen=screen) == alone


def test_checks_are_made_once_for_what_is_shown_first_and_for_the_rest(monkeypatch):
    checks, memo, pairs = counted(monkeypatch, inputs, "checked"), Memo(), [("thickness", "6")]
    asked(memo, pairs, "first", "joint")
    asked(memo, pairs, screen="joint")
    assert len(checks) == 1


def test_a_line_that_stays_is_not_said_again_but_to_another_reader(monkeypatch):
    memo, pairs = Memo(), [("thickness", "6 mm"), ("length", "2 m")]
    before = asked(memo, pairs, screen="joint")["answers"][0][1]["lines"]
    told = counted(monkeypatch, lines, "_data")
    later = changed(pairs, "length", "2.5 m")
    now = asked(memo, later, screen="joint")["answers"][0][1]["lines"]
    stayed = [one["name"] for one in now if one in before]
    said = [line.name for line, _ in told]
    assert len(stayed) > 5 and not {"radius", "throat"} & set(said) and len(said) < len(now)
    told.clear()
    asked(memo, [*later, ("units", "us")], screen="joint")
    assert "radius" in [line.name for line, _ in told]
    assert moves.asked("joint", later, memo, "de") == moves.asked("joint", later, None, "de")
