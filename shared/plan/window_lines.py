"""Window lines: how long a window is used, and by what that was reckoned, in words."""
from ..clock.usable_lines import OWN_TIMING, meaning
from ..things.own_timings import counted_text
from ..words.numbers import DOWN, shown
from .working_times import HEAT, LABEL, OWN, QUICK, SEEN, TYPED, Window

RULE = "the quick rule"
BY = {LABEL: "the label's film time", OWN: RULE + " from " + OWN_TIMING, QUICK: RULE}


def window_text(window: Window, units: str) -> str:
    """What a window is a share of, and which of two estimates counts."""
    if window.by == TYPED:
        return "{}% of {} min, by the time you typed".format(shown(window.share * 100), shown(window.end / 60, 0, DOWN))
    text = meaning(window.found, units, window.end)
    if window.by == SEEN:
        return text
    text += "; by " + _by(window.by, window)
    if window.other is None:
        return text
    return "{}; {} says {} min: the shorter counts".format(text, _by(window.other, window),
                                                           shown(window.longer / 60, 0, DOWN))


def _by(by: str, window: Window) -> str:
    if by == HEAT:
        return "the heat balance" + (" " + counted_text(window.own) if window.own else "")
    return BY[by]
