"""The engine on a phone answers as the one here: generated requests through the page's own worker in real Chromium."""
import json
import os
import sys

import parity
import pytest
import questions
from covemix.server.build import HOUSE

from .conftest import PART

# of the whole; fewer where an answer is long in coming or there is little to type
MANY = 600
COUNTS = {"ratio": 1200, "measure": 1200, "heat": 120, "plan": 2000, "boat": 2000, "sources": 4, "pour": 400,
          "clock": 120, "trial": 60, "aid": 5,  # first aid asks nothing
          "hand clock": 60, "hand trial": 40, "hand boat": 200, "hand plan": 200, "hand sources": 4,
          "alone heat": 60, "alone plan": 400, "alone boat": 400, "alone joint": 200}
FEWER = {"hand": 300, "brought": 150, "first": 500}  # by the word in front, where nothing stands above
DEAR = ("plan", "boat")  # thousands of them at night; `make test` asks an eighth
LEAST_DISTINCT = 0.5  # of the answers to a name's questions


def whole(name):
    """How many questions of a name `make parity` asks."""
    return COUNTS.get(name) or FEWER.get(name.partition(" ")[0], MANY)


WHOLE = sum(map(whole, questions.NAMES))
ASKED = int(os.environ.get("COVEMIX_CASES", "7000"))  # `make parity` asks the whole


def count(name):
    """How many requests of a move or a screen: its share of what is asked."""
    share = min(1, ASKED / WHOLE)
    return max(4, round(whole(name) * (share if share == 1 or name.split()[-1] not in DEAR else share / 3)))


ASK = """async (texts) => {
  const { ask } = await part("engine/engine.js");
  const answers = [];
  for (const text of texts) {
    try { answers.push(JSON.stringify(await ask(JSON.parse(text)))); }
    catch (error) { answers.push("raised " + error.message); }
  }
  return answers;
}"""
PINNED = json.loads((HOUSE / "webui/vendor/vendor.json").read_text(encoding="utf-8"))
SECOND = "MicroPython " + next(one["version"] for one in PINNED if one["name"] == "micropython").partition("+")[0]


def unsigned(text):
    """An answer of the second runtime without its signature: which interpreter it says it is must be the pinned one."""
    try:
        answer = json.loads(text)
    except ValueError:
        return text  # the report tells it
    if not isinstance(answer, dict):
        return text
    assert answer.pop("by", "nobody") == SECOND, f"not answered by {SECOND}: {text[:200]}"
    return json.dumps(answer)


def engine_of(chromium, url, language):
    """The engine of a page in a language, as parity wants it; a batch at a time, so that no single call runs long."""
    page = chromium.new_page()
    page.add_init_script(PART)
    page.context.add_cookies([{"name": "language", "value": language, "url": url}])
    page.goto(url)
    assert page.evaluate("document.documentElement.lang") == language

    def answers(texts):
        found = []
        for start in range(0, len(texts), 250):
            found += page.evaluate(ASK, texts[start:start + 250])
        return [unsigned(text) for text in found]

    return page, answers


@pytest.fixture(scope="module")
def ask(chromium, standing):
    page, answers = engine_of(chromium, standing.url, "en")
    yield answers
    page.close()


@pytest.fixture(scope="module")
def ask_in_german(chromium, standing):
    page, answers = engine_of(chromium, standing.url, "de")
    yield answers
    page.close()


@pytest.mark.parametrize("name", questions.NAMES)
def test_generated_cases_are_answered_alike(ask, ask_in_german, name, record_property):
    """Half of them in German. What is asked is worth asking: most of it is answered, and not always alike."""
    requests = questions.different(name, count(name))
    assert len(requests) == count(name)
    refused = sum(map(questions.refused, requests))
    distinct = len({questions.here(request) for request in requests})
    record_property("asked", [name, len(requests), refused, distinct])
    assert parity.report(requests[::2], ask, questions.told) == ""
    assert parity.report(requests[1::2], ask_in_german, questions.told_in("de")) == ""
    if name not in questions.WORDS_OF_ONE:
        assert refused <= questions.MOST_REFUSED * len(requests)
        assert distinct >= LEAST_DISTINCT * len(requests), f"{distinct} different answers to {len(requests)} questions"


def test_the_whole_is_twenty_thousand_and_asks_all_that_a_page_asks():
    """Plans and boats by the thousand; the screens, their moves alone, what follows a key press, leaves and comes."""
    assert WHOLE >= 20_000
    assert min(whole("plan"), whole("boat")) >= 2000
    ways = {name.rpartition(" ")[0] for name in questions.NAMES}
    assert ways == {"", "first", "hand", "brought", "alone"}
    asked = {word for name in questions.NAMES for word in next(questions.drawn(name, 1))}
    assert asked == {"move", "typed", "pairs", "screen", "first", "hand", "brought", "length"}


def test_two_different_runtimes_answer(ask):
    """Each says which it is: what this process answers is not taken for the phone's."""
    assert sys.implementation.name == "cpython"
    [text] = ask(['{"move": "ratio", "typed": {"amount": "240"}}'])
    assert "240 g" in text
    [here] = questions.told(['{"move": "ratio", "typed": {"amount": "240"}}'])
    with pytest.raises(AssertionError, match="not answered by MicroPython"):
        unsigned(here)


def test_the_comparison_sees_a_last_digit(ask):
    def other(texts):
        return [text.replace("240 g", "241 g") for text in ask(texts)]

    told = parity.report([{"move": "ratio", "typed": {"amount": "240", "units": "metric"}}], other)
    assert '{"move": "ratio", "typed": {}}' in told  # 240 g is the amount that stands there by itself
    assert "'240 g' here, '241 g' there" in told
