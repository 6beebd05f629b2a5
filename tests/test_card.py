"""The card and the link: what leaves in plain words, what is refused when it comes back, how much a code holds."""
import json
import random

import house
import pytest
import segno
from covemix.shared.door import card, handover, moves
from covemix.shared.door.call import call as engine
from covemix.shared.forms import links
from covemix.shared.words.messages import message, typed
from covemix.shared.words.texts import said
from covemix.shared.words.written import reader
from starlette.testclient import TestClient

ASKED = [["amount", "200"], ["system", "2-1"], ["way", "syringes"], ["drawn.0.volume", "150"]]
WEIGHED = [["system.by_weight", "3:1"], ["system.densities", "1.15:0.98"]]


def call(**request):
    return json.loads(engine(json.dumps(request)))


@pytest.fixture(scope="module")
def client():
    with TestClient(house.app()) as client:
        yield client


def test_the_card_says_what_was_asked_and_every_answer_in_sight():
    made = call(hand="pour", pairs=ASKED)
    assert "Amount: 200 g" in made["text"] and "Resin system: 2 : 1 by volume" in made["text"]
    answer = moves.screen("pour", links.tree(ASKED))
    for _, one in answer["answers"]:
        for line in one["lines"]:
            kept = line["rank"] != "more" or line["part"] == "tool"
            assert (f"{line['label']}: {line['text']}" in made["text"]) == kept
    assert made["text"].endswith(answer["caution"])


def test_a_card_tells_how_to_weigh_to_somebody_without_the_app():
    made = call(hand="pour", pairs=[["amount", "240"], *WEIGHED])
    for words in (made["text"], made["short"]):
        assert words.index("Zero once. Add") < words.index("Hardener, pour until scale shows: 240 g")
    assert "240 g (do not zero again: this is the total in the cup)" in made["text"]
    each = call(hand="pour", pairs=[["amount", "240"], *WEIGHED, ["zeroing", "each"]])
    assert "Zero the scale before each part." in each["short"] and "Zero once" not in each["text"]


def test_a_question_is_not_told_with_a_colon_behind_its_mark():
    made = call(hand="pour", pairs=[["system.by_weight", "30:100"]])
    assert "The right way round? More hardener" in made["text"]


def test_a_card_of_what_cannot_be_worked_out_says_so():
    assert "No result: Amount: type a number" in call(hand="pour", pairs=[["amount", "none"]])["text"]


@pytest.mark.parametrize("screen", [name for name, _ in moves.SCREENS])
def test_every_screen_has_a_card_with_its_caution_that_fits_a_code(screen):
    """ISO/IEC 18004:2015 Table 7: version 20 at level M holds 666 bytes; above it a code is hard to read in glare."""
    made = call(hand=screen, pairs=[])
    assert len(made["short"].encode()) <= card.SHORT < 666
    assert made["card"]["caution"] in made["short"]
    assert segno.make(made["short"], error="M", boost_error=False, micro=False).version <= 20


@pytest.mark.parametrize(("version", "most"), [(1, 14), (5, 84), (10, 213), (20, 666), (40, 2331)])
def test_what_a_code_holds_is_what_the_standard_says(version, most):
    """ISO/IEC 18004:2015 Table 7, byte mode at level M, asked of an independent maker of codes."""
    made = [segno.make(b"\xe9" * size, error="M", mode="byte", boost_error=False, micro=False).version
            for size in (most, most + 1) if size <= 2331]
    assert made[0] == version
    assert all(other == version + 1 for other in made[1:])


def test_a_link_comes_back_as_it_left():
    link = call(hand="pour", pairs=ASKED)["link"]
    seen = call(brought="pour", pairs=link, length=100)
    assert seen["refused"] == ""
    assert sorted(map(tuple, seen["pairs"])) == sorted(map(tuple, ASKED))
    assert "Amount: 200 g" in seen["words"]


def test_a_link_cut_anywhere_or_altered_by_one_letter_is_refused():
    """The mark is a polynomial sum modulo a prime: one altered letter always changes it; a cut loses it."""
    link = call(hand="pour", pairs=ASKED)["link"]
    text = "&".join("=".join(pair) for pair in link)
    for end in range(len("v=1&"), len(text)):
        pairs = [part.partition("=")[::2] for part in text[:end].split("&") if part]
        if len(pairs) > 1 or end > len("v=1&"):
            assert handover.opened(moves.screen_inputs("pour"), pairs, end)[1] == handover.CUT
    draw = random.Random(7)
    for _ in range(200):
        place = draw.randrange(len("v=1&"), len(text) - len("&end=xyz"))
        if text[place] in "&=":
            continue
        other = text[:place] + chr(ord(text[place]) ^ 1) + text[place + 1:]
        pairs = [part.partition("=")[::2] for part in other.split("&")]
        assert handover.opened(moves.screen_inputs("pour"), pairs, 99)[1]


@pytest.mark.parametrize(("pairs", "length", "why"), [
    ([["v", "2"], ["amount", "200"]], 20, handover.NEWER),
    ([["v", "one"], ["amount", "200"]], 20, handover.CUT),
    ([["v", "1"], ["amount", "200"]], 20, handover.CUT),
    ([["q", "boats"]], 20, message("link-foreign", names=typed("'q'"))),
    ([["amount", "2" * 200_000]], 200_000, handover.TOO_LONG),
    ([["amount", "1"]] * 2500, 5000, handover.TOO_LONG),
    ([["<b>", "x"], ["a.b.c.d.e.f.g", "x"], ["readings.9999.shown", "1"]], 60,
     message("link-foreign", names=typed("'<b>', 'a.b.c.d.e.f.g', 'readings.9999.shown'"))),
])
def test_a_link_that_is_none_of_ours_is_refused_in_a_sentence(pairs, length, why):
    seen, why = call(brought="pour", pairs=pairs, length=length), said(why, reader())
    assert seen == {"pairs": [], "refused": why, "words": "", "made": ""}
    assert why.endswith(" Nothing was changed.")


def test_an_old_name_is_read_as_todays():
    item = moves.screen_inputs("pour")[0]
    before = item.was
    try:
        item.was = ("epoxy",)
        assert call(brought="pour", pairs=[["epoxy", "2-1"]], length=9)["pairs"] == [[item.name, "2-1"]]
    finally:
        item.was = before


def test_the_server_gives_the_card_and_refuses_like_the_page(client):
    plain = client.get("/", params={"amount": "200", "as": "text"})
    assert plain.headers["content-type"].startswith("text/plain")
    assert "Amount: 200 g" in plain.text
    refused = client.get("/", params={"v": "9", "amount": "200", "as": "text"})
    assert (refused.status_code, refused.text.strip()) == (422, said(handover.NEWER, reader()))
    page = client.get("/", params={"v": "9", "amount": "777"}).text
    assert said(handover.NEWER, reader()) in page and '"777"' not in page


@pytest.mark.parametrize("record", [option[0] for option in moves.module("kit").INPUTS[0].options])
def test_every_kind_of_the_kit_is_summed_up_in_a_line_or_told_what_it_needs(record):
    answer = moves.answer("kit", {"kind": record})
    assert bool(answer["lines"]) != bool(answer["errors"])
    for error in answer["errors"]:
        assert error["field"].startswith(record + ".")
    if answer["lines"]:
        assert answer["lines"][0]["label"]


def test_a_thing_without_a_name_is_refused_at_its_name():
    answer = moves.answer("kit", {"kind": "system", "system": {"by_weight": "100:30"}})
    assert [error["field"] for error in answer["errors"]] == ["system.name"]


def test_timings_stand_against_the_label():
    """Median of three shares by hand: 24/30, 33/30 and 27/30 minus 1 are -0.2, 0.1 and -0.1; the middle is -0.1."""
    rows = [{"own": "24", "label": "30"}, {"own": "33", "label": "30"}, {"own": "27", "label": "30"}]
    answer = moves.answer("timings", {"rows": rows})
    found = {line["name"]: line for line in answer["lines"]}
    assert found["share"]["value"] == pytest.approx(-0.1)
    assert found["share"]["text"] == "10% sooner"
    assert found["shortest"]["text"] == "24 min"
    bars = [shape for shape in answer["figures"][0]["shapes"] if shape["role"] == "mix"]
    tall = [shape["points"][2][1] - shape["points"][0][1] for shape in bars]
    assert tall[0] / tall[1] == pytest.approx(24 / 33, abs=0.001)


PLAN = [["temperature", "20"], ["start", "9:00"], ["system", "2-1"]] + [
    [f"pieces.{place}.{name}", text] for place in range(6)
    for name, text in (("name", f"Seam {place}"), ("length", "4"), ("putty", "150"), ("wet", "90"))]


def test_each_batch_of_a_plan_has_a_card_with_its_amounts_and_its_pours():
    """Nothing of a batch is left out, and what its code pours is what the plan's own lead pours."""
    made = call(hand="plan", pairs=PLAN)["card"]
    [[_, answer]] = moves.screen("plan", links.tree(PLAN))["answers"]
    batches = [line for line in answer["lines"] if line["name"].startswith("batch_")]
    assert len(batches) > 1 and [sheet["title"] for sheet in made["sheets"]] == [line["label"] for line in batches]
    told = [line["name"] + line["text"] for sheet in made["sheets"] for line in sheet["lines"]]
    assert sorted(told) == sorted(line["name"] + line["text"] for line in answer["lines"] if line["part"])
    leads = {lead["label"].partition(": ")[2]: lead["pairs"] for lead in answer["leads"] if lead["screen"] == "pour"}
    assert len(leads) == 2
    for label, pairs in made["sheets"][0]["pours"]:
        assert handover.brought("pour", pairs, 200)["refused"] == ""
        # a link says how it is measured also where that stands there by itself
        wanted = [*[pair for pair in leads[label.partition(": ")[2]] if pair[1]], ["way", "syringes"]]
        assert sorted(handover.brought("pour", pairs, 200)["pairs"]) == sorted(wanted)


def test_the_rows_of_a_group_are_told_in_one_entry_each():
    made = call(hand="plan", pairs=PLAN)["card"]["asked"]
    assert ["Piece 2", "Seam 1, Length: 4 m, Putty: 150 g/m, Wet-out resin: 90 g/m"] in made


def test_a_group_that_is_empty_anyway_says_nothing_in_a_link():
    made = call(hand="pour", pairs=[["amount", "187"], ["batches", "none"]])
    assert [name for name, _ in made["link"]] == ["v", "by", "amount", "way", "end"]
    boat = call(hand="boat", pairs=[["joints", "none"]])
    assert ["joints", "none"] in boat["link"]  # there it is not what nothing typed would be


def test_the_pours_of_a_plan_carry_its_units_with_its_system():
    """A plan in ounces and Fahrenheit: its pours open in them, or the system's figures would be read as metric."""
    units = [["units", "us"], ["system.by_volume", "3:1"], ["system.densities", "1.15:0.98"], ["system.pot_time", "30"],
             ["system.pot_mass", "4"], ["system.pot_temperature", "77"], ["temperature", "68"], ["start", "9:00"]]
    pieces = [[name, text + " g/m" if name.endswith(("putty", "wet")) else text]
              for name, text in PLAN if name.startswith("pieces.")]
    made = call(hand="plan", pairs=units + pieces)
    for label, pairs in made["card"]["sheets"][0]["pours"]:
        opened = handover.brought("pour", pairs, 200)
        assert opened["refused"] == "" and ["units", "us"] in opened["pairs"], label
        answers = dict(moves.screen("pour", links.tree(opened["pairs"]))["answers"])
        assert answers["measure"]["errors"] == []
