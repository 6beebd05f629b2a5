"""Each drawing is the one that was looked at last: a line that moves, or goes, changes its hash."""
import json

from held_figures import TABLE, drawn


def test_what_is_drawn_is_what_was_looked_at():
    """Where a drawing was meant to change: look at it, then `python tests/held_figures.py`."""
    held, now = json.loads(TABLE.read_text(encoding="utf-8")), drawn()
    assert len(held) > 25
    assert sorted(name for name in held.keys() | now.keys() if held.get(name) != now.get(name)) == []
