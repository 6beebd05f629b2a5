"""Fuzz, the short version: the phone's runtime in Node, asked what nobody would ask. `make fuzz` asks 100,000."""
import json
import shutil

import fuzz
import pytest

pytestmark = pytest.mark.skipif(not shutil.which("node"), reason="Node is missing")
FEW, SEED = 300, 3
ENDLESS = {letter: letter * (1_000_000 // len(letter.encode())) for letter in ("9", "x", "½", "a.", "🛶", "\u2028")}


@pytest.fixture(scope="module")
def phone():
    with fuzz.Phone() as found:
        yield found


def test_nothing_traps_and_plain_questions_are_answered_as_before():
    found = fuzz.run(FEW, SEED)
    assert found.faults == []
    assert sum(found.ends.values()) == FEW
    assert all(found.ends[way, "answered"] for way in fuzz.WAYS)


def test_an_engine_that_ends_is_a_fault_and_no_wait():
    with fuzz.Phone() as phone:
        phone.node.kill()
        with pytest.raises(fuzz.Ended, match="process ended"):
            list(phone.answers([{"text": "{}"}]))


@pytest.mark.parametrize("share", ["0\u2028.30", "12\u2028345", "6\u20139", "7\u00b85"])
def test_a_letter_that_shares_bytes_with_a_dash_is_read_alike(phone, share):
    """A text stripped of a dash lost the first bytes of another letter, and was no text any more."""
    asked = {"text": json.dumps({"move": "pouring", "typed": {"thicken": "yes", "blend": {
        "0": {"share": "2"}, "1": {"filler": "milled-glass", "share": share}}}})}
    [found] = phone.answers([asked])
    assert fuzz.fault(asked, found) == ""
    assert [error["field"] for error in json.loads(found["text"])["errors"]] == ["blend.1.share"]


@pytest.mark.parametrize("letter", ENDLESS)
@pytest.mark.parametrize("way", ["screen", "hand", "first", "brought"])
def test_an_endless_text_is_answered_or_refused_and_takes_no_memory(phone, way, letter):
    """A megabyte in any field, as its name and in a link: what cannot be read goes no further than the door."""
    text = ENDLESS[letter]
    for pairs in ([["amount", text]], [[text, "1"]], [["system.name", text]], [["units", text]]):
        request = {way: "pour", "pairs": pairs} | ({"length": len(text)} if way == "brought" else {})
        asked = {"text": json.dumps(request, ensure_ascii=False)}
        [found] = phone.answers([asked])
        assert fuzz.fault(asked, found) == ""
        assert len(found["text"]) < 30_000
        assert found["bytes"] < 64 << 20


RAISED = 'Traceback:\n  File "<stdin>", line 5, in call\nKeyError: of\ntwo lines\n'


def test_a_fault_is_seen():
    asked = {"text": '{"screen": "pour", "pairs": []}'}
    assert fuzz.fault(asked, {"broken": "unreachable", "fell": True}).startswith("trap")
    assert fuzz.fault(asked, {"broken": "Traceback:\n  File \"a\", line 1, in b\nValueError: x\n", "fell": False})
    for raised in (RAISED, "UnicodeError: \n"):
        assert fuzz.fault({"text": "{"}, {"broken": raised, "fell": False}) == ""
    assert fuzz.fault({"text": "{"}, {"broken": "no name", "fell": False})
    assert fuzz.fault(asked, {"text": "[1]"}) and fuzz.fault(asked, {"text": "{"})
