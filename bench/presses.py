"""Key presses in real Chromium, from the browser's stamp of a press to the new figure."""
from statistics import median, quantiles
from urllib.parse import urlencode

from covemix.shared.catalogue.demo_boat import JOINTS

from .paired import Ratio, ratio

FRAME = 1000 / 60  # ms
PRESSES, ROUNDS = 16, 5
TYPED = 80  # presses of a slowed page
BETWEEN, HELD = 100, 40  # ms between presses: a hand that types fast, a key held down
BEAT = 17  # ms: presses come at any moment of a frame
TWO = ("Digit5", "Backspace")
UNFOLDED = "document.querySelectorAll('details').forEach((one) => { one.open = true; })"
BARE_FIELD = ("#amount", "#b", "20")
SCREENS = (("Pour", "", "[name=amount]", "[data-line=drawn_b] .line-text", "20"),
           ("Joint, to its drawing", "joint/", "[name=thickness]", ".sight svg", ""),
           ("Joint, to its figures", "joint/", "[name=thickness]", "[data-line=radius] .line-text", ""))
# the same until nothing of the page changes any more: the path holds what was typed before
TWENTY = "boat/?" + urlencode([(f"joints.{place}.{name}", text) for place in range(20)
                               for name, text in dict(JOINTS[place % len(JOINTS)]).items()])
WHOLE = (("Pour", "", "[name=amount]", "[data-line=drawn_b] .line-text", "20"),
         ("Joint", "joint/", "[name=thickness]", "[data-line=radius] .line-text", ""),
         ("Clock", "clock/?batch=300&air=20", "[name=batch]", "[data-move=heat] .line-text", "30"),
         ("a boat of 20 joints", TWENTY, "[name='joints.0.length']", "[data-line=resin] .line-text", "3"))


def key_presses(phone, ways, hand) -> list[tuple[str, str, Ratio, str]]:
    """Each in turn with a ratio by hand, and what part of one frame a press takes, slowed too.

    The ways alone: a page with one field, whose worker does nothing but send the digit back.
    """
    found = []
    ready(hand, *BARE_FIELD)
    for by, way in zip(("a message", "a channel"), ways, strict=True):
        ready(way, *BARE_FIELD)
        found.append((f"A key press to a worker and back by {by}, nothing else", *in_frames(way, "#b", hand)))
    for name, path, field, output, text in SCREENS:
        phone.open(path)
        phone.page.wait_for_selector(output)  # the first answer is there: from now on a press changes it
        ready(phone, field, output, text)
        found.append((f"A key press on {name}", *in_frames(phone, output, hand)))
    for name, path, field, output, text in WHOLE:
        phone.open(path)
        phone.page.wait_for_selector(output)
        phone.page.evaluate(UNFOLDED)
        ready(phone, field, output, text)
        found.append((f"A key press on {name}, to its whole answer", *in_frames(phone, output, hand, whole=True)))
    return found


def ready(phone, field, output, text):
    """A field with the focus and its text, a first press behind it."""
    phone.page.fill(field, text)
    phone.page.focus(field)
    for key in TWO:
        phone.pressed(output, key)


def in_frames(phone, output, hand, whole=False) -> tuple[str, Ratio, str]:
    """Key presses against those of the page by hand, and in frames. whole: to all of the answer"""
    pairs, ours = [], []
    for _ in range(ROUNDS):
        mine = typed(phone, output, PRESSES, HELD, whole)
        pairs.append((median(mine), max(median(typed(hand, "#b", PRESSES, HELD)), 0.005)))
        ours += mine
    with phone.slowed(4):
        slow = typed(phone, output, TYPED, BETWEEN, whole)
    told = f"{of_a_frame(ours)} of a frame; slowed to a quarter {of_a_frame(slow)}"
    return "the same ratio by hand in JavaScript", ratio(pairs), told


def of_a_frame(times) -> str:
    """The median, and what 19 of 20 stay within."""
    return " and ".join(f"{100 * time / FRAME:.0f} %" for time in (median(times), quantiles(times, n=20)[-1]))


def typed(phone, output, times, between, whole=False) -> list[float]:
    """ms of each of some key presses: a digit and its taking back in turn, as a hand types."""
    found = []
    for place in range(times):
        phone.page.wait_for_timeout(between + place % BEAT)
        found.append(phone.pressed(output, TWO[place % 2], whole))
    return found
