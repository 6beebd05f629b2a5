"""Batch record: what a finished batch of a plan really took, step by step."""
from collections import namedtuple

from ..catalogue.rates import AT_ONCE, BEHIND, RATES
from ..forms.types import Values
from ..things.work_rates import paces
from .day import EACH_LAYER, OF_PUTTY
from .progress import Batch

TRAY = [row[0] for row in RATES].index("wet")

# number: of the batch; names: `day.Named` of its pieces; temperature: when it was mixed [K]; mass: mixed in all [kg];
# crew: the name of one typed here, "" of one of the kit's own rows; hands; metres: laid, as if downhand [m]; took: how
# long each work took one hand, (name of a rate, [s]), in the order of RATES
Record = namedtuple("Record", ("number", "names", "temperature", "mass", "crew", "hands", "metres", "took"))


def spans(batch: Batch, ends: "dict[str, float]") -> "dict[str, float]":
    """How long each kind of work took one hand [s]: {name of a rate: span}.

    ends: when each step was told done [s on the clock], by its key. A step counts where the one before it was told too;
    mixing the wet-out resin is told beside them.
    Side by side, tooling and cleaning share their span as planned; so do wetting, laying and rolling, where the tape
    came so far behind the cove that nobody waited for it. Peel ply then waits for the tape, and tells nothing.
    """
    found: dict[str, float] = {}
    work, laid = batch.work, batch.laid
    pieces = work.pieces[laid.first:laid.last]
    mixed = "clean" if laid.one_mix else "wet_mix"
    if not laid.together:
        chain = ("mix", "place", "tool", "clean", mixed, "wet", "lay", "roll", "peel")
        for before, key in zip(chain, chain[1:]):
            _share(found, ends, before, key, ((key, 1.0),))
        return found
    tape = (("wet", sum([piece.wetting for piece in pieces])), ("lay", sum([piece.lay for piece in pieces])),
            ("roll", sum([piece.roll for piece in pieces])))
    if not laid.putty:  # nothing but tape, for which nobody waits
        _share(found, ends, "wet_mix", "roll", tape)
        return found
    if not work.crew.mixer:  # where somebody else mixes, the bag may have waited for the hand
        _share(found, ends, "mix", "place", (("place", 1.0),))
    _share(found, ends, "place", "clean", (("tool", sum([piece.tool for piece in pieces])),
                                           ("clean", sum([piece.clean for piece in pieces]))))
    if laid.one_mix or work.crew.mixer or not ("wet_mix" in ends and "roll" in ends and "clean" in ends):
        return found
    span, planned = ends["roll"] - ends["wet_mix"], sum([time for _, time in tape])
    if ends["roll"] - ends["clean"] > BEHIND * (pieces[-1].lay + pieces[-1].roll) * span / planned:
        _share(found, ends, "wet_mix", "roll", tape)
    return found


def _share(found: "dict[str, float]", ends: "dict[str, float]", before: str, key: str,
           shares: "tuple[tuple[str, float], ...]") -> None:
    """The span between two steps, shared as planned among the works in it."""
    if before in ends and key in ends and ends[key] - ends[before] >= AT_ONCE:
        whole = sum([share for _, share in shares])
        for name, share in shares:
            found[name] = (ends[key] - ends[before]) * share / whole


def record(values: Values, batch: Batch, now: float) -> Record:
    """What is kept of a batch whose last step is done now [s on the clock]."""
    ends = dict([(step.key, step.end) for step in batch.steps if step.done])
    ends[batch.steps[-1].key] = now
    laid, work = batch.laid, batch.work
    pieces = work.pieces[laid.first:laid.last]
    pace = paces(values)
    # as planned, so as if downhand; peel ply goes on once, however many layers, and on every piece that is tape alone
    metres = sum([max(piece.place * pace[0].rate, piece.cover * pace[-1].rate) for piece in pieces])
    hands = 1 if not work.crew.pair else (3 if work.crew.mixer else 2)
    took = spans(batch, ends)
    for names, worked in ((OF_PUTTY, sum([piece.place for piece in pieces]) * pace[0].rate),
                          (EACH_LAYER, sum([piece.wetting for piece in pieces]) * pace[TRAY].rate),
                          (("peel",), sum([piece.cover for piece in pieces]) * pace[-1].rate)):
        if abs(worked - metres) > metres * 1e-6:
            # several layers of tape, or pieces without putty or tape: what it took says nothing of one metre done once
            took = dict([(name, took[name]) for name in took if name not in names])
    return Record(batch.number, [piece.name for piece in pieces], work.profile.at(batch.start), laid.putty + laid.wet,
                  "" if values["crew"]["id"] else values["crew"]["name"], hands, metres,
                  [(row[0], took[row[0]]) for row in RATES if row[0] in took])
