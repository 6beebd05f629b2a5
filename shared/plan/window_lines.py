"""Window lines: how long a window is used, and by what that was reckoned, in words."""
from ..clock.usable_lines import OWN_TIMING, meaning
from ..forms.types import Said
from ..things.own_timings import counted_text
from ..words.messages import message, number
from ..words.numbers import DOWN, shown
from .working_times import HEAT, LABEL, OWN, QUICK, SEEN, TYPED, Window

BY = {LABEL: "window-by.label", OWN: message("window-by.own", whose=OWN_TIMING), QUICK: "window-by.quick"}


def window_text(window: Window) -> Said:
    """What a window is a share of, and which of two estimates counts."""
    if window.by == TYPED:
        return message("window-typed", share=number(shown(window.share * 100)), minutes=_minutes(window.end))
    meant = meaning(window.found, window.end)
    if window.by == SEEN:
        return meant
    if window.other is None:
        return message("window-means", meaning=meant, by=_by(window.by, window))
    return message("window-means.shorter", meaning=meant, by=_by(window.by, window), other=_by(window.other, window),
                   minutes=_minutes(window.longer))


def _minutes(seconds: float) -> Said:
    return number(shown(seconds / 60, 0, DOWN))


def _by(by: str, window: Window) -> Said:
    if by != HEAT:
        return BY[by]
    return message("window-by.timed", counted=counted_text(window.own)) if window.own else "window-by.heat"
