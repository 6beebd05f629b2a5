"""The engine on a phone answers as the one here: generated requests through the page's own worker in real Chromium."""
import os

import cases
import parity
import pytest
from covemix.shared.door import moves

from .conftest import PART

# of the whole; fewer where an answer is long in coming or there is little to type
MANY = 1300
COUNTS = {"ratio": 2000, "measure": 2000, "heat": 120, "plan": 40, "boat": 100, "sources": 4, "pour": 200, "clock": 40,
          "spreader": 800, "timings": 600, "own_rates": 600, "safety": 500, "trial": 60,
          "aid": 5}  # first aid asks nothing
NAMES = list(dict.fromkeys([*moves.names(), *dict(moves.SCREENS)]))
WHOLE = sum(COUNTS.get(name, MANY) for name in NAMES)
ASKED = int(os.environ.get("COVEMIX_CASES", "7000"))  # `make parity` asks the whole


def count(name):
    """How many requests of a move or a screen: its share of what is asked."""
    return max(4, round(COUNTS.get(name, MANY) * ASKED / WHOLE))


ASK = """async (texts) => {
  const { ask } = await part("engine/engine.js");
  const answers = [];
  for (const text of texts) {
    try { answers.push(JSON.stringify(await ask(JSON.parse(text)))); }
    catch (error) { answers.push("raised " + error.message); }
  }
  return answers;
}"""


@pytest.fixture(scope="module")
def ask(chromium, standing):
    """The page's engine, as parity wants it; a batch at a time, so that no single call runs long."""
    page = chromium.new_page()
    page.add_init_script(PART)
    page.goto(standing.url)

    def answers(texts):
        found = []
        for start in range(0, len(texts), 250):
            found += page.evaluate(ASK, texts[start:start + 250])
        return found

    yield answers
    page.close()


@pytest.mark.parametrize("name", NAMES)
def test_generated_cases_are_answered_alike(ask, name):
    requests = cases.different(name, count(name))
    assert len(requests) == count(name)
    assert parity.report(requests, ask) == ""


def test_the_whole_is_twenty_thousand():
    assert WHOLE >= 20_000


def test_the_comparison_sees_a_last_digit(ask):
    def other(texts):
        return [text.replace("240 g", "241 g") for text in ask(texts)]

    told = parity.report([{"move": "ratio", "typed": {"amount": "240", "units": "metric"}}], other)
    assert '{"move": "ratio", "typed": {}}' in told  # 240 g is the amount that stands there by itself
    assert "'240 g' here, '241 g' there" in told
