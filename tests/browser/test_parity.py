"""Two runtimes, one engine: the same questions to CPython and to the page's own worker in real Chromium."""
import pytest
from covemix.shared import moves

from ..cases import SEED, requests
from ..parity import report

# more than 20,000 in all; fewer where one answer takes a phone a tenth of a second
FEWER = {"heat": 120, "plan": 40, "boat": 100, "sources": 4}
MANY = 1600
BATCH = 250

WORKER = """async () => {
  const here = document.querySelector("script[type=module]").src.replace("js/main.js", "");
  const file = async (path, as) => (await fetch(here + path))[as]();
  const worker = new Worker(here + "js/worker.js", { type: "module" });
  const answer = () => new Promise((resolve) => { worker.onmessage = ({ data }) => resolve(data); });
  worker.postMessage({ wasm: await file("vendor/micropython/micropython.wasm", "arrayBuffer"),
                       bundle: await file("app.json", "text") });
  await answer();
  window.askAll = async (texts) => {
    const found = [];
    for (const [id, text] of texts.entries()) {
      worker.postMessage({ id, text });
      const data = await answer();
      found.push(data.text ?? `raised ${data.broken}`);
    }
    return found;
  };
}"""


@pytest.fixture(scope="module")
def ask(chromium, standing):
    """The engine of a phone, as an `ask` of many texts."""
    page = chromium.new_page()
    page.goto(standing.url)
    page.evaluate(WORKER)

    def answers(texts):
        found = []
        for start in range(0, len(texts), BATCH):
            found += page.evaluate("(texts) => window.askAll(texts)", texts[start:start + BATCH])
        return found

    yield answers
    page.close()


@pytest.mark.parametrize("name", [*moves.names(), *(f"screen {name}" for name, _ in moves.SCREENS)])
def test_both_runtimes_answer_alike(ask, name):
    """Numbers to 1e-12 relative, texts and errors exactly; a failure shows the smallest question that still differs."""
    is_screen = name.startswith("screen ")
    count = 40 if is_screen else FEWER.get(name, MANY)
    made = requests(name.removeprefix("screen "), count, SEED)
    if is_screen:
        made = [one for one in made if "screen" in one]
    failed = report(made, ask)
    assert not failed, failed
