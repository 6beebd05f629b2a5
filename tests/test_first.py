"""What a key press shows first: part of the answer, asked alone, and the very same that the whole answer holds."""
import json

import cases
import pytest
from covemix.shared.door import moves
from covemix.shared.door.call import call

NUMBERS = {"pour": "amount", "joint": "thickness"}


def asked(request):
    return json.loads(call(json.dumps(request)))


def part_of(first, whole):
    """Whether what was shown first stands in the whole answer, word for word."""
    (move, shown), = first["answers"]
    answer = dict(whole["answers"])[move]
    drawn = len(shown["figures"])
    return all(line in answer["lines"] for line in shown["lines"]) and shown["figures"] == answer["figures"][:drawn]


@pytest.mark.parametrize("screen", NUMBERS)
def test_what_is_shown_first_is_part_of_the_answer_and_changes_nothing_in_it(screen):
    """The answer behind it finds what was reckoned, and is the same as if nothing had been asked before."""
    shown = 0
    for request in cases.requests(screen, 150, seed=11):
        pairs = request["pairs"]
        alone = asked({"screen": screen, "pairs": pairs})
        first = asked({"first": screen, "pairs": pairs})
        assert asked({"screen": screen, "pairs": pairs}) == alone
        if first["answers"]:
            assert part_of(first, alone)
            shown += 1
    assert shown > 50


@pytest.mark.parametrize("screen", NUMBERS)
def test_a_number_typed_letter_by_letter_reads_as_if_it_were_new(screen):
    """Only what changed is read again; what that gives is what the whole form gives."""
    name, shown = NUMBERS[screen], 0
    for request in cases.requests(screen, 60, seed=12):
        others = [pair for pair in request["pairs"] if pair[0] != name]
        for text in ("1", "12", "12 1/2", "12 1/2 x", "0", "0.9"):
            pairs = [*others, [name, text]]
            first = asked({"first": screen, "pairs": pairs})
            whole = asked({"screen": screen, "pairs": pairs})
            moves.first(screen, [])  # another form in between: nothing is known of this one any more
            assert asked({"first": screen, "pairs": pairs}) == first
            assert asked({"screen": screen, "pairs": pairs}) == whole
            if first["answers"]:
                assert part_of(first, whole)
                shown += 1
    assert shown > 30


def test_pour_shows_its_readings_and_joint_its_drawing_first():
    readings = asked({"first": "pour", "pairs": [["amount", "240"], ["system.by_weight", "345:98"]]})["answers"][0][1]
    assert [line["text"] for line in readings["lines"] if line["rank"] == "answer"] == ["187 g", "240 g"]
    drawing = asked({"first": "joint", "pairs": [["thickness", "6"]]})["answers"][0][1]
    assert not drawing["lines"] and len(drawing["figures"]) == 1


def test_what_cannot_be_read_shows_nothing_first():
    assert asked({"first": "pour", "pairs": [["amount", "soon"]]}) == {"answers": []}
