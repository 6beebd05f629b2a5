"""Filler words: why a dose of filler cannot be, in words."""
from ..forms.types import Found, Said
from ..words.messages import message, number, quantity
from ..words.numbers import DOWN, NEAREST, shown


def packed_text(packed: Found) -> Said:
    """Why a dose is more than the liquid can wet, with the most that goes in. packed: filler_dose.Packed"""
    return message("filling-packed", share=quantity(packed.share, "%", NEAREST, 0),
                   touch=quantity(packed.touch, "%", NEAREST, 0), most=number(shown(packed.most * 100, 0, DOWN)))


def shares_text(whole: float) -> Said:
    """That the shares of a blend do not make the whole. whole: their sum [-]"""
    off = quantity(abs(whole - 1), "%", NEAREST, 1)
    return message("filling-shares-over" if whole > 1 else "filling-shares-short",
                   whole=quantity(whole, "%", NEAREST, 1), off=off)
