"""One opening and one key press in real Chromium, each with where its milliseconds went: the browser's own trace.

What a thread itself worked is told, not what the clock says: on a busy machine they differ.
"""
import json
import sys
from collections import Counter

from playwright.sync_api import sync_playwright

from .phone import CHROMIUM, FLAGS, Phone, Server
from .presses import TWENTY, UNFOLDED, ready

SCREENS = {"Pour": ("", "[name=amount]", "[data-line=drawn_b] .line-text"),
           "Joint": ("joint/", "[name=thickness]", "[data-line=radius] .line-text"),
           "Boat of 20": (TWENTY, "[name='joints.0.length']", "[data-line=resin] .line-text")}
TRACED = "devtools.timeline,disabled-by-default-devtools.timeline,toplevel,v8"
LONG = 50.0  # ms: a task that a hand feels
# event of the trace: what it is called here
PARTS = {"ParseHTML": "read the page", "UpdateLayoutTree": "style", "Layout": "layout", "PrePaint": "paint",
         "Paint": "paint", "Layerize": "paint", "Commit": "paint", "EvaluateScript": "scripts", "v8.compile": "scripts",
         "v8.compileModule": "scripts", "v8.evaluateModule": "scripts", "FunctionCall": "scripts",
         "RunMicrotasks": "scripts", "EventDispatch": "scripts", "TimerFire": "scripts",
         "FireAnimationFrame": "scripts"}
REST = "the browser's own"


def spent(events):
    """(ms by part, the longest task in ms, tasks above LONG) of the page's own thread; each event without those in it.

    events: of a trace
    """
    main = {(one["pid"], one["tid"]) for one in events
            if one["name"] == "thread_name" and one["args"]["name"] == "CrRendererMain"}
    found, longest, long = Counter(), 0.0, 0
    for thread in main:
        mine = sorted((one for one in events if (one["pid"], one.get("tid")) == thread and one.get("ph") == "X"),
                      key=lambda one: (one["ts"], -one["dur"]))
        open_now: list = []
        for one in mine:
            while open_now and open_now[-1][0] <= one["ts"]:
                open_now.pop()
            part, took = PARTS.get(one["name"]), one.get("tdur", 0) / 1000
            if part is None and one["name"].endswith("RunTask") and not open_now:
                part = REST
                longest, long = max(longest, took), long + (took > LONG)
            if part is not None:
                found[part] += took
                if open_now:
                    found[open_now[-1][1]] -= took
                open_now.append((one["ts"] + one["dur"], part))
    return found, longest, long


def traced(browser, page, work):
    """What `spent` says of some work in a page."""
    browser.start_tracing(page=page, categories=TRACED.split(","))
    work()
    return spent(json.loads(browser.stop_tracing())["traceEvents"])


def main(*names):
    """Prints both of each screen."""
    server = Server()
    server.start()
    try:
        with sync_playwright() as playwright:
            browser = playwright.chromium.launch(executable_path=CHROMIUM, args=FLAGS)
            for name in names or SCREENS:
                path, field, output = SCREENS[name]
                phone = Phone(browser, server.url)
                page = phone.page

                def opened(page=page, phone=phone, path=path, output=output):
                    phone.open(path)
                    page.wait_for_selector(output)
                    page.wait_for_timeout(1500)

                def pressed(page=page, phone=phone, output=output):
                    phone.pressed(output, "Digit5")
                    page.wait_for_timeout(300)

                told = [("opening", traced(browser, page, opened))]
                page.evaluate(UNFOLDED)
                ready(phone, field, output, "2")
                page.wait_for_timeout(500)
                told.append(("a press", traced(browser, page, pressed)))
                for what, (parts, longest, long) in told:
                    print(f"{name}, {what}: " + ", ".join(f"{part} {ms:.1f}" for part, ms in parts.most_common())
                          + f" ms; longest task {longest:.0f}, above {LONG:.0f}: {long}", flush=True)
                phone.context.close()
            browser.close()
    finally:
        server.stop()


if __name__ == "__main__":
    main(*sys.argv[1:])
