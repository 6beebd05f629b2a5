"""Smallest mix: what the least that the scale measures in ratio does to a plan: a surplus, or no mix small enough."""
from collections import namedtuple

from ..equations.laying import Laid, Laying, Mixing, in_one_container, needed

TOLD = 1e-4  # kg; less than this is no surplus

# why: "piece" where the piece takes more than the largest mix wanted, "scale" where the scale measures no mix as small;
# name: its `day.Named`; least: the mix that it is at least [kg], filler counted in; most: the largest wanted [kg]
TooLarge = namedtuple("TooLarge", ("why", "name", "least", "most", "putty"))


def surplus(work: Laying, laid: Laid) -> float:
    """How much more a batch mixes than it takes, so that each mix is large enough to be measured [kg]."""
    putty, wet = needed(work, laid)
    return laid.putty + laid.wet - putty - wet


def surplus_at_most(work: Laying, laid: Laid) -> float:
    """The same where putty and wet-out resin are each made large enough [kg]. Groups that reach as far as they can are
    the most unlike, and so have the most surplus."""
    least, (putty, wet) = work.mixing.least, needed(work, laid)
    return (max(0.0, least * (1 + work.mixing.filler) - putty) if putty else 0.0) + (
        max(0.0, least - wet) if wet else 0.0)


def lowest(mixing: Mixing, laid: Laid) -> float:
    """What is in the pot at least, however little is wanted [kg]: putty with its filler where it is mixed apart."""
    apart = laid.putty and not (mixing.one_mix and laid.wet)
    return mixing.least * (1 + mixing.filler if apart else 1.0)


def too_large(work: Laying, failed: Laid) -> TooLarge:
    """Why each mix of a piece is larger than the largest wanted: by the scale, or by what one piece takes.

    failed: of a piece that does not hold
    """
    mixing, name, putty = work.mixing, work.pieces[failed.first].name, bool(failed.putty)
    floor, own, over = lowest(mixing, failed), max(needed(work, failed)), mixing.most * (1 + 1e-9)
    if floor <= over < own:
        return TooLarge("piece", name, own, mixing.most, putty)
    mixed = in_one_container(failed.putty, failed.wet, failed.one_mix, mixing.filler)
    return TooLarge("scale", name, floor if floor > over else mixed, mixing.most, putty)
