"""Generated cases: whatever is typed into a move or a screen, it answers or refuses at a field. It never breaks."""
import json

import cases
import pytest
from covemix.shared.door import moves
from covemix.shared.door.call import call

NAMES = list(dict.fromkeys([*moves.names(), *dict(moves.SCREENS)]))
# slow moves, and those that few words can be typed into; a thousand more seeds were asked by hand
FEWER = {"heat": 60, "clock": 20, "plan": 25, "boat": 60, "joint": 200, "sources": 2, "timings": 100}


@pytest.mark.parametrize("name", NAMES)
def test_no_generated_case_raises(name):
    for request in cases.requests(name, FEWER.get(name, 200), seed=71):
        try:
            call(json.dumps(request))
        except Exception as broken:
            raise AssertionError(f"{type(broken).__name__}: {broken} on {json.dumps(request)}") from broken
