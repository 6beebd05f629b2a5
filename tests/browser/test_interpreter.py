"""The interpreter by itself, and what the page does when it falls over."""
import contextlib

import cases
from covemix.server.build import HOUSE
from house import build
from playwright.sync_api import expect

from .conftest import drawn, engine_with, figure, until
from .serve import instead

PROGRAM = """
from json import loads
def down(n):
    return down(n + 1) + 1
def call(text):
    if text == "down":
        return down(0)
    return str(len(loads(text)))
"""
RUN = """async ([program, texts, times]) => {
  const base = document.querySelector("script[type=module]").src;
  const { interpreter } = await import(new URL("engine/interpreter.js", base));
  const { unpacked } = await part("engine/unpack.js");
  const got = async (path) => (await fetch(new URL(`../vendor/${path}`, base))).arrayBuffer();
  const wasm = await unpacked(new Uint8Array(await got("micropython/micropython.bin")), got("ppmd/unpack.wasm"));
  const reaches = WebAssembly.Module.imports(await WebAssembly.compile(wasm)).map((one) => one.name);
  const python = await interpreter(wasm, [], program);
  const asked = Array(times).fill(texts).flat();
  const told = asked.map((text) => { try { return python.call(text); } catch (error) { return error.message; } });
  return { reaches, told };
}"""


def run(phone, standing, texts, program=PROGRAM, times=1):
    phone.route("**/engine/interpreter.js", lambda route: route.fulfill(  # it comes with its worker only
        path=HOUSE / "webui/js/engine/interpreter.js", content_type="text/javascript"))
    phone.goto(standing.url)
    return phone.evaluate(RUN, [program, texts, times])


def test_the_interpreter_reaches_nothing_of_the_page(phone, standing):
    assert run(phone, standing, [])["reaches"] == ["emscripten_notify_memory_growth"]


def test_what_fails_is_told_and_the_next_question_is_answered(phone, standing):
    deep, wrong, right = run(phone, standing, ["down", "what", "[1, 2]"])["told"]
    assert deep.endswith("RuntimeError: pystack exhausted\n")
    assert wrong.endswith("ValueError: syntax error in JSON\n")
    assert right == "2"


def test_what_answers_leave_behind_is_swept_before_memory_is_short(phone, standing):
    """Each question leaves some 0.4 MB: a thousand are more than the 256 MB that the memory may grow to."""
    many = "[" + ", ".join(["1.5"] * 12_000) + "]"
    told = run(phone, standing, [many], times=1000)["told"]
    assert len(told) == 1000 and set(told) == {"12000"}


SIZED = """return {
  call(text) {
    if (text.includes("how large")) return JSON.stringify({ size: python.memory.buffer.byteLength });
    return answer(python.ask(...given(text)));
  },
  sweep: python.sweep,
};
};
"""


def test_dear_questions_without_a_rest_let_the_heap_grow_no_further(phone, served):
    """A heap that is full doubles. 250 of them were 256 MB, and the next one an error."""
    script = (HOUSE / "webui/js/engine/interpreter.js").read_text(encoding="utf-8")
    served.stop()
    served.start(wrap=engine_with(script[:script.index("return { call")] + SIZED))
    phone.goto(served.url)
    asked = cases.different("heat", 60)
    *answers, last = phone.evaluate("""async (requests) => {
      const { ask } = await part("engine/engine.js");
      const answers = [];
      for (const request of [...requests, { move: "how large" }]) answers.push(await ask(request));
      return answers;
    }""", asked)
    assert sum(bool(answer["lines"]) for answer in answers) > 30
    assert last["size"] < 30e6


def test_a_memory_that_an_absurd_question_made_large_is_started_anew_at_rest(phone, served):
    """Memory gives nothing back. Who asks next gets an answer as before, and no notice."""
    script = (HOUSE / "webui/js/engine/interpreter.js").read_text(encoding="utf-8")
    grown = SIZED.replace("if (", "if (text.includes('666')) python.memory.grow(1100);\n    if (", 1).replace(
        "sweep: python.sweep", "sweep: python.sweep, memory: python.memory")
    served.stop()
    served.start(wrap=engine_with(script[:script.index("return { call")] + grown))
    phone.goto(served.url + "/?amount=200")
    expect(figure(phone, "drawn_b")).to_have_text(drawn(200))
    phone.get_by_label("Amount", exact=True).fill("666")
    expect(figure(phone, "drawn_b")).to_have_text(drawn(666))
    phone.get_by_label("Amount", exact=True).fill("300")
    expect(figure(phone, "drawn_b")).to_have_text(drawn(300))
    until(phone, SMALL)
    expect(phone.locator("[data-notice=hung]")).to_have_count(0)


SMALL = """async () => (await (await part("engine/engine.js")).ask({ move: "how large" })).size < 30e6"""
FALLEN = """let fell = false;
return {
  call(text) {
    fell ||= text.includes("%s");
    if (fell) throw new WebAssembly.RuntimeError("unreachable");
    return answer(python.ask(...given(text)));
  },
  sweep() { if (%s) throw new WebAssembly.RuntimeError("unreachable"); },
};
};
"""


def fallen_at(words, at_rest="false"):
    """The app with an interpreter that falls over at some words and answers nothing more, as after a fault in it."""
    script = (HOUSE / "webui/js/engine/interpreter.js").read_text(encoding="utf-8")
    script = script[:script.index("return { call")] + FALLEN % (words, at_rest)
    return engine_with(script)


def test_an_interpreter_that_fell_over_is_started_anew(phone, served):
    served.stop()
    served.start(wrap=fallen_at("666"))
    phone.goto(served.url)
    amount = phone.get_by_label("Amount", exact=True)
    amount.fill("200")
    expect(figure(phone, "drawn_b")).to_have_text(drawn(200))
    amount.fill("666")
    expect(figure(phone, "drawn_b")).to_be_hidden()
    amount.fill("300")
    expect(figure(phone, "drawn_b")).to_have_text(drawn(300))


def test_one_that_fell_over_while_nobody_asked_is_started_anew(phone, served):
    served.stop()
    served.start(wrap=fallen_at("240", at_rest="fell = true"))  # after its first rest it answers nothing
    phone.goto(served.url + "/?amount=200")
    expect(figure(phone, "drawn_b")).to_have_text(drawn(200))
    amount = phone.get_by_label("Amount", exact=True)
    for grams in ("300", "321", "187"):
        for _ in range(1000):  # until it rests, falls, and is ended; one that nobody asked stays
            if not phone.workers:
                break
            phone.wait_for_timeout(10)
        pressed_until_answered(phone, amount, grams)


def pressed_until_answered(phone, amount, grams):
    """On a slow machine it rests, and falls, between the two questions of one key press: the next press is answered."""
    for patience in (5_000, 5_000, 5_000, 20_000):
        amount.fill(grams)
        with contextlib.suppress(AssertionError):
            expect(figure(phone, "drawn_b")).to_have_text(drawn(grams), timeout=patience)
            return
        amount.fill("1")
    raise AssertionError(f"{grams} was never answered")


NO_CHANNEL = b"self.BroadcastChannel = class { constructor() { throw new Error(); } };"


def test_an_engine_that_cannot_answer_says_so_at_its_start(phone, served):
    served.stop()
    script = build().files["js/engine/worker.js"].body
    served.start(wrap=instead(("js/engine/worker.js",), "text/javascript", script + NO_CHANNEL))
    phone.goto(served.url + "/?amount=200")
    expect(phone.locator("[data-notice=engine]")).to_be_visible()
    expect(phone.locator("[data-notice=link]")).to_contain_text("This is from a link. Your values are unchanged.")
    phone.get_by_label("Amount", exact=True).fill("300")
    expect(figure(phone, "drawn_b")).to_be_hidden()


ASK = """async (amounts) => {
  const { ask } = await part("engine/engine.js");
  const asked = amounts.map((amount) => ask({ move: "measure", typed: { amount } }));
  return Promise.all(asked.map((one) => one.then(() => "answered", () => "broken")));
}"""


def test_of_several_that_wait_when_it_falls_each_is_told_and_the_next_is_answered(phone, served):
    served.stop()
    served.start(wrap=fallen_at("666"))
    phone.goto(served.url)
    expect(figure(phone, "drawn_b")).to_be_visible()
    assert phone.evaluate(ASK, ["200", "666", "300", "350"]) == ["answered", "broken", "broken", "broken"]
    assert phone.evaluate(ASK, ["400", "450"]) == ["answered", "answered"]


LOST = """() => {
  const post = Worker.prototype.postMessage;
  Worker.prototype.postMessage = () => { Worker.prototype.postMessage = post; window.lost = true; };
}"""


def test_a_page_that_was_put_away_asks_again_what_it_waits_for(phone, standing):
    """It hears no channel meanwhile; here the question itself is lost, which leaves it waiting alike."""
    phone.goto(standing.url)
    assert phone.evaluate(ASK, ["200"]) == ["answered"]  # its start is no question
    phone.evaluate(LOST)
    phone.get_by_label("Amount", exact=True).fill("300")
    phone.wait_for_function("window.lost")  # it is asked a moment behind the key
    phone.evaluate("dispatchEvent(new PageTransitionEvent('pageshow', { persisted: true }))")
    expect(figure(phone, "drawn_b")).to_have_text(drawn(300), timeout=8_000)  # sooner than patience ends
