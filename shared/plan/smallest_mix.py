"""Honest: what the smallest mix that can be measured honestly does to a plan: a surplus, or no mix small enough."""
from ..equations.laying import in_one_container, needed
from ..words.lines import BESIDE, MORE, WARN, line, words
from ..words.numbers import DOWN, UP
from ..words.units import told

FINER = "A finer scale, pumps or syringes"


def surplus(work, laid) -> float:
    """How much more a batch mixes than it takes, so that each mix is large enough to be measured [kg]."""
    putty, wet = needed(work, laid)
    return laid.putty + laid.wet - putty - wet


def surplus_at_most(work, laid) -> float:
    """The same where putty and wet-out resin are each made large enough [kg]. Groups that reach as far as they can are
    the most unlike, and so have the most surplus."""
    least, (putty, wet) = work.mixing.least, needed(work, laid)
    return (max(0.0, least * (1 + work.mixing.filler) - putty) if putty else 0.0) + (
        max(0.0, least - wet) if wet else 0.0)


def surplus_line(values, batch, part):
    """What of a batch is surplus; what would save it is told once, of all batches."""
    over = surplus(batch.work, batch.laid)
    if over <= 1e-4:
        return []
    return [line("over", "More than needed", over, "kg", told(over, "g", values["units"], UP), _why(values, batch.work),
                 part=part, rank=MORE)]


def surplus_in_all(values, batches):
    """What all batches have that is surplus, why, and what would save it."""
    over = sum([surplus(batch.work, batch.laid) for batch in batches])
    if over <= 1e-4:
        return []
    why = _why(values, batches[0].work) + (". {} measure less, more seams in a batch use it; tie holes and end grain "
                                           "first")
    return [line("surplus", "More than needed, in all", over, "kg", told(over, "g", values["units"], UP),
                 why.format(FINER), rank=BESIDE)]


def _why(values, work):
    return "no mix below {} is measured honestly".format(told(work.mixing.least, "g", values["units"], UP))


def lowest(mixing, laid) -> float:
    """What is in the pot at least, however little is wanted [kg]: putty with its filler where it is mixed apart."""
    apart = laid.putty and not (mixing.one_mix and laid.wet)
    return mixing.least * (1 + mixing.filler if apart else 1.0)


def too_large(values, work, failed):
    """No plan because each mix is larger than the largest wanted: by the scale, or by what one piece takes.

    failed: the `laying.Laid` of a piece that does not hold
    """
    mixing, units = work.mixing, values["units"]
    most, floor, own = told(mixing.most, "g", units, DOWN), lowest(mixing, failed), max(needed(work, failed))
    name, over = work.pieces[failed.first].name, mixing.most * (1 + 1e-9)
    if floor <= over < own:
        text, change = "{} cannot be laid: it takes a mix of {}, and the largest wanted is {}.", "a larger mix."
        if values["long"] == "whole":
            change = "Cut it at a bulkhead or where an overlap may be, and plan again; or " + change
        else:
            text = "{} cannot be laid: whole it takes a mix of {}, cut small still above the largest wanted, {}."
            change = FINER + ", or " + change
        return [words("no_plan", "No plan", text.format(name, told(own, "g", units, UP), most),
                      rough="filler counted in" if failed.putty else "", rank=WARN),
                words("change", "Change", change, rank=BESIDE)]
    mixed = in_one_container(failed.putty, failed.wet, failed.one_mix, mixing.filler)
    least = told(floor if floor > over else mixed, "g", units, UP)
    text = "{} cannot be laid: no mix below {} is measured honestly, and the largest wanted is {}."
    why = "by the scale, the ratio and the ratio error that the label allows" if values["smallest"] is None else (
        "the smallest honest mix was typed")
    return [words("no_plan", "No plan", text.format(name, least, most), rank=WARN,
                  rough=why + ("; filler counted in" if failed.putty else "")),
            words("change", "Change", FINER + ", or a larger mix.", rank=BESIDE)]
