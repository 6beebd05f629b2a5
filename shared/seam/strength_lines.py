"""Strength lines: what is said of the strength of a seam. found: a `strength.Strength`, or None"""
from ..forms.types import Found, Said, Values
from ..words.lines import MORE, Line, line, words
from ..words.messages import fact, length, message, quantity, sentences
from ..words.numbers import DOWN, UP
from . import seam, strength

BUTTED = {strength.INNER: "joint-strength.one-face", strength.OUTER: "joint-strength.other-face"}
DONE = {strength.INNER: "joint-strength.inner", strength.OUTER: "joint-strength.outer",
        strength.PULL: "joint-strength.pull", strength.SIDEWAYS: "joint-strength.sideways",
        strength.OFF: "joint-strength.off"}
LIMITS = {strength.TEARS: "joint-strength.tears", strength.CRUSHED: "joint-strength.crushed",
          strength.SHEARS: "joint-strength.shears", strength.CRACKS: "joint-strength.cracks",
          strength.PRESSED: "joint-strength.pressed", strength.PEELS: "joint-strength.peels"}


def say(found: Found, spec: seam.Spec, values: Values) -> list[Line]:
    """The weaker of seam and panel, the worst case beside it, what would carry; how it was reckoned folds away."""
    if not found:
        return []
    worst = found.cases[0]
    lines = [line("strength", "joint-strength", worst.share, "", message(
        "joint-strength.seam" if worst.share < 1 else "joint-strength.panel", share=_percent(worst.share)),
        rough="joint-strength.estimate" if spec.kind == seam.BULKHEAD else sentences([
            "joint-strength.estimate", message("joint-strength.knock", left=_percent(values["knock"]))]))]
    for case in found.cases:
        label = BUTTED.get(case.key, DONE[case.key]) if spec.kind == seam.BUTT else DONE[case.key]
        lines.append(line("strength_" + case.key, label, case.share, "", message(
            "joint-strength.share", share=_percent(case.share)), rough=LIMITS[case.limit]))
    if worst.share < 1 and spec.kind != seam.BULKHEAD:
        lines.append(words("would_carry", "joint-would-carry", _would(found.would)))
    if found.flank is not None:
        lines.append(line("strength_flank", "joint-strength-flank", found.flank, "m", message(
            "joint-strength-flank.text", flank=length(found.flank, DOWN), useful=length(found.useful, UP)),
            rough=_flank(found), rank=MORE))
        lines.append(line("strength_lap", "joint-strength-lap", found.lap, "m", message(
            "joint-strength-lap.text", lap=length(found.lap, UP), overlap=length(spec.overlap)), rank=MORE,
            rough="joint-strength-lap.enough" if found.lap <= spec.overlap else "joint-strength-lap.short"))
    return lines + [words("strength_model", "joint-strength-model", message(
        "joint-strength-model.text", strength=fact("MPa", found.strength)), rank=MORE)]


def _flank(found: Found) -> Said:
    if min(found.flank, found.useful) >= found.wanted:
        return "joint-strength-flank.enough"
    if found.wanted > found.useful:
        return "joint-strength-flank.wood"
    return message("joint-strength-flank.short", wanted=length(found.wanted, UP))


def _would(found: Found) -> Said:
    if not found:
        return "joint-would-carry.none"
    return message("joint-would-carry.text" if found.pulls else "joint-would-carry.bends", layers=found.layers,
                   width=length(found.width), weight=quantity(found.areal, "g/m2"))


def _percent(share: float) -> Said:
    return quantity(share, "%", DOWN, places=0)
