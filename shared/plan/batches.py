"""Batches: each batch of a plan as it is told: its amounts, containers and steps, what it misses, when it may begin."""
from collections import namedtuple

from ..catalogue.losses import BY_KEY
from ..words.numbers import UP, ceiling, to_step
from . import progress, smallest_mix
from .progress import Batch

PUTTY = BY_KEY["putty_density"].value  # from memory: for how large a bag must be, not for what is weighed
LATE, UNFINISHED = "late", "unfinished"
PASSED = 3.0  # s; a latest start is told where it has passed by more

# name: "putty", "wet", or "mix" for both; mass: without filler [kg]; whole: as it is poured [kg]; parts: masses of it
# [kg], in the order of the label, () where it tells no parts by weight; filler: stirred in [kg]; bag: putty to be
# bagged [m3]; tray: of one mix for both, what goes onto the tray [kg]; over: of that, surplus [kg]
Mix = namedtuple("Mix", ("name", "mass", "whole", "parts", "filler", "bag", "tray", "over"))
# air: when it is mixed [K]; mixes: `Mix` of each; over: mixed only because the scale measures no less [kg], 0 where
# there is no surplus; least: the smallest mix that it measures [kg]; tape: until when the tape must be begun [s], or
# None
Details = namedtuple("Details", ("air", "mixes", "over", "least", "tape"))
# why: LATE where a window would be missed, else UNFINISHED; latest: the latest start that has passed [s], or None
Refused = namedtuple("Refused", ("why", "latest"))
# batch: `progress.Batch`; end: last step done [s]; length: of its seams [m]; names: `day.Named` of its pieces; missed:
# (limit, by when, when) of each window that it misses, under way; refused: `Refused` where it should not be started any
# more, or None; latest: start [s] of one that may be started, None where nothing tells; details: `Details`, None where
# it is finished or far off
Described = namedtuple("Described", ("batch", "end", "length", "names", "missed", "refused", "latest", "details"))


def described(batch: Batch, finish: "float | None", shares: "tuple[float, ...]", fully: bool) -> Described:
    """One batch as it is told. finish: the day's [s], or None; shares: of the parts in a mix by weight [-], or ()

    fully: with its amounts and steps
    """
    pieces = batch.work.pieces[batch.laid.first : batch.laid.last]
    missed = progress.missed(batch) if batch.begun and not batch.finished else []
    refused = None if batch.begun or batch.finished else _refused(batch, finish)
    latest = None if batch.begun or batch.finished or refused else batch.latest
    return Described(batch, batch.steps[-1].end, sum([piece.length for piece in pieces]),
                     [piece.name for piece in pieces], missed, refused, latest,
                     _details(batch, shares) if fully and not batch.finished else None)


def _refused(batch: Batch, finish: "float | None") -> "Refused | None":
    passed = batch.latest is not None and batch.start > batch.latest + 1
    if not (passed or batch.slack < -1 or (finish is not None and batch.steps[-1].end > finish + 1)):
        return None
    return Refused(LATE if batch.slack < -1 else UNFINISHED,
                   batch.latest if passed and batch.latest < batch.start - PASSED else None)


def _details(batch: Batch, shares: "tuple[float, ...]") -> Details:
    over = smallest_mix.surplus(batch.work, batch.laid)
    over = over if over > smallest_mix.TOLD else 0.0
    return Details(batch.work.profile.at(batch.start), mixes(batch, shares, over), over, batch.work.mixing.least,
                   progress.tape_begun_by(batch))


def poured(mass: float) -> float:
    """A mix as it is poured [kg]: whole grams, rounded up, so that what is told here is what the pour is asked for.

    >>> poured(0.1333), poured(0.4)
    (0.134, 0.4)
    """
    return ceiling(mass * 1000) / 1000


def liquids(batch: Batch) -> "tuple[tuple[str, float], ...]":
    """What is poured for a batch, filler left out: (name, mass [kg]) of each mix."""
    laid = batch.laid
    epoxy = laid.putty / (1 + batch.work.mixing.filler)
    if laid.one_mix:
        return (("mix", epoxy + laid.wet),)
    return tuple([mix for mix in (("putty", epoxy), ("wet", laid.wet)) if mix[1]])


def mixes(batch: Batch, shares: "tuple[float, ...]", over: float) -> "list[Mix]":
    """Each mix of a batch. over: its surplus [kg]"""
    laid, filler = batch.laid, batch.work.mixing.filler
    found = []
    for name, mass in liquids(batch):
        whole = poured(mass)
        parts = tuple([share * whole for share in shares])
        if name == "wet":
            found.append(Mix(name, mass, whole, parts, 0.0, 0.0, 0.0, 0.0))
            continue
        both = name == "mix"
        found.append(Mix(name, mass, whole, parts, laid.putty / (1 + filler) * filler,
                         to_step(laid.putty / PUTTY, 1e-5, UP), laid.wet if both else 0.0, over if both else 0.0))
    return found
