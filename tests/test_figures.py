"""Drawings of every screen: nothing is drawn beside the sheet, and every drawing is told in words."""
import json

import cases
import pytest
from covemix.shared.door import moves
from covemix.shared.door.call import call

SLACK = 4.01  # units: half of the widest line


def places(shape):
    """Every point of a shape."""
    if shape["kind"] == "rungs":
        return [(x, y) for x in shape["xs"] for y in (shape["top"], shape["bottom"])]
    if shape["kind"] == "notes":
        return [(x, shape["y"]) for x in shape["xs"]]
    return shape["points"]


@pytest.mark.parametrize("screen", [screen for screen, _ in moves.SCREENS])
def test_what_is_drawn_lies_on_its_sheet_and_is_told(screen):
    for request in cases.requests(screen, 40, seed=21):
        answers = json.loads(call(json.dumps(request)))["answers"]
        for drawn in (figure for _, one in answers for figure in one["figures"]):
            assert len(drawn["told"]) > 20, drawn["name"]
            for shape in drawn["shapes"]:
                for x, y in places(shape):
                    assert -SLACK <= x <= drawn["width"] + SLACK, (request, drawn["name"], shape)
                    assert -SLACK <= y <= drawn["height"] + SLACK, (request, drawn["name"], shape)
