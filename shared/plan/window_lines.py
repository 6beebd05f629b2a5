"""Window lines: how long a window is used, and by what that was reckoned, in words."""
from ..clock.usable_lines import meaning
from ..forms.types import Said
from ..things.own_timings import counted
from ..words.messages import message, quantity
from ..words.numbers import DOWN
from .working_times import HEAT, LABEL, OWN, QUICK, SEEN, TYPED, Window

BY = {LABEL: "plan-by-label", OWN: "plan-by-rule.own", QUICK: "plan-by-rule"}


def window_said(window: Window) -> Said:
    """What a window is a share of, and which of two estimates counts."""
    if window.by == TYPED:
        return message("plan-window-typed", share=quantity(window.share, "%", places=0),
                       time=quantity(window.end, "min", DOWN, places=0))
    means = meaning(window.found, window.end)
    if window.by == SEEN:
        return means
    by = _by(window.by, window)
    if window.other is None:
        return message("plan-window-by", meaning=means, by=by)
    return message("plan-window-by.longer", meaning=means, by=by, other=_by(window.other, window),
                   longer=quantity(window.longer, "min", DOWN, places=0))


def _by(by: str, window: Window) -> Said:
    if by == HEAT:
        return message("plan-by-heat.own", own=counted(window.own)) if window.own else "plan-by-heat"
    return BY[by]
