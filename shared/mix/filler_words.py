"""Filler words: why a dose of filler cannot be, in words."""
from ..forms.types import Found
from ..words.numbers import DOWN, shown


def packed_text(packed: Found) -> str:
    """Why a dose is more than the liquid can wet, with the most that goes in. packed: filler_dose.Packed"""
    return ("The grains would fill {}% of the putty and they touch at about {}%: no liquid would be left "
            "between them. At most {} for 100 of mix by weight; choose a softer putty or a finer filler.".format(
                shown(packed.share * 100, 0), shown(packed.touch * 100, 0), shown(packed.most * 100, 0, DOWN)))


def shares_text(whole: float) -> str:
    """That the shares of a blend do not make the whole. whole: their sum [-]"""
    return "Shares: together they make {}%, {}% {}; change one until they make 100%".format(
        shown(whole * 100, 1), shown(abs(whole - 1) * 100, 1), "too much" if whole > 1 else "short")
