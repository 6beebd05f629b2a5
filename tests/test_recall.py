"""Recall: what a recalled build made is told so with what to check; what another made is not; old paper calmly."""
import json

import house
import pytest
from covemix.server.export import export
from covemix.shared.catalogue.recalled import RECALLED, RELEASE
from covemix.shared.door import handover, moves
from covemix.shared.forms import recall
from covemix.shared.words import lines
from covemix.shared.words.written import reader
from starlette.testclient import TestClient
from test_card import PLAN

ROWS = ((3, 4, ("cafe",), "It was wrong.", "Check it."), (6, 6, (), "It was wrong again.", "Check that."))
PAIRS = [["amount", "200"], ["way", "syringes"]]


@pytest.mark.parametrize(("by", "said"), [
    ("2", ""), ("3", "It was wrong. Check it."), ("4.beef", "It was wrong. Check it."), ("5", ""), ("5.beef", ""),
    ("5.cafe", "It was wrong. Check it."), ("6", "It was wrong again. Check that."), ("7", "")])
def test_a_build_is_recalled_by_its_release_or_its_id(by, said):
    found = lines.said(recall.warning(by, ROWS), reader())
    assert found.endswith(said) and bool(found) == bool(said)
    if said:
        assert f"Covemix release {by[0]}, which is recalled" in found


def test_the_list_is_one_that_can_be_told():
    """No row names this release; each is two plain sentences, short enough for a narrow phone."""
    assert max(row[1] for row in RECALLED) < RELEASE and not recall.recalled(RELEASE)
    for first, last, builds, *told in RECALLED:
        wrong, check = [lines.said(one, reader()) for one in told]
        assert 1 <= first <= last and isinstance(builds, tuple)
        wrong, check = lines.said(wrong, reader()), lines.said(check, reader())
        assert wrong.endswith(".") and check.endswith(".") and len(wrong) + len(check) < 400


def opened(pairs):
    return handover.brought("pour", pairs, 100)


def test_a_link_says_what_made_it_and_opens():
    link = handover.handed("pour", PAIRS, "1f3a9c2b77aa")["link"]
    assert ["by", f"{RELEASE}.1f3a9c2b77aa"] in link
    assert opened(link)["pairs"] == PAIRS and opened(link)["made"] == ""


def test_a_link_of_before_the_mark_says_what_to_check():
    """As release 1 sealed it: version, pairs, mark."""
    old = [["v", "1"], *PAIRS, ["end", handover.mark(PAIRS)]]
    found = opened(old)
    assert found["pairs"] == PAIRS and found["refused"] == ""
    assert found["made"].startswith("Made with a Covemix before release 2") and "resin label" in found["made"]


def test_a_mark_that_was_altered_is_a_cut_link():
    link = handover.handed("pour", PAIRS)["link"]
    bent = [[name, "1" if name == "by" else text] for name, text in link]
    assert opened(bent)["refused"] == lines.said(handover.CUT, reader()) and opened(bent)["made"] == ""


def test_a_link_typed_by_hand_is_no_builds():
    assert opened(PAIRS)["made"] == ""


def test_release_one_can_open_a_link_of_today():
    """It marks all pairs but v, end and as, and drops the names it does not know."""
    link = handover.handed("pour", PAIRS, "1f3a9c2b77aa")["link"]
    plain = [pair for pair in link if pair[0] not in ("v", "end", "as")]
    assert [text for name, text in link if name == "end"] == [handover.mark(plain)]


def test_cards_and_their_codes_say_what_made_them():
    made = handover.handed("pour", PAIRS, "1f3a9c2b77aa")
    assert made["card"]["made"] == f"Made with release {RELEASE}, build 1f3a9c2b77aa"
    assert made["card"]["made"] in made["text"]
    sheets = handover.handed("plan", PLAN, "1f3a9c2b77aa")["card"]["sheets"]
    assert sheets
    for sheet in sheets:
        for _, pours in sheet["pours"]:
            assert ["by", f"{RELEASE}.1f3a9c2b77aa"] in pours


def test_a_pot_that_a_recalled_build_shares_says_so():
    typed = {"started": "2000000000", "now": "2000000060", "duration": "20"}
    told = {by: {row["name"] for row in moves.answer("pot", dict(typed, by=by))["lines"]} for by in ("", "1", "2.ab")}
    assert ["made_by" in told[by] for by in ("", "1", "2.ab")] == [False, True, False]


def test_the_server_gives_the_list_fresh_and_the_export_holds_it(tmp_path):
    answer = TestClient(house.app()).get("/recalled.json")
    assert answer.headers["cache-control"] == "no-cache"
    assert answer.json() == recall.as_data(reader()) and answer.json()["release"] == RELEASE
    export(tmp_path, house.build())
    assert json.loads((tmp_path / "recalled.json").read_text()) == recall.as_data(reader())


def test_pages_and_plain_words_of_an_old_link_say_it_and_of_a_new_one_do_not():
    client = TestClient(house.app())
    old = dict([["v", "1"], *PAIRS, ["end", handover.mark(PAIRS)]])
    new = dict(map(tuple, handover.handed("pour", PAIRS)["link"]))
    assert 'data-notice="made"' in client.get("/", params=old).text
    assert 'data-notice="made"' not in client.get("/", params=new).text
    assert client.get("/", params=dict(old, **{"as": "text"})).text.startswith("Made with a Covemix before release 2")
    assert client.get("/", params=dict(new, **{"as": "text"})).text.startswith("Covemix")
