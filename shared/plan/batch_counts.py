"""Batch counts: what a plan fills and uses: batches, cups, bags. What is bought and laid ready goes by this count."""
from collections import namedtuple

from . import day, smallest_mix

# batches; mixes: cups filled; bags of putty; wets: mixes with wet-out resin; surplus: mixed because the scale could not
# measure less [kg]; poured, putty: resin with hardener, and putty, of all mixes [kg], 0 where no plan tells; planned:
# whether a plan counted all of it; why: `day.WhyLargest` where some mix is above the limit, else None
Counted = namedtuple("Counted", ("batches", "mixes", "bags", "wets", "surplus", "poured", "putty", "planned", "why"))


def gloves(people: int, batches: int) -> int:
    """Pairs of gloves: for each person a pair for each batch, and one more.

    >>> gloves(2, 6)
    14
    """
    return people * (batches + 1)


def together(counts: "list[Counted]") -> Counted:
    """Several counts as one."""
    sums = [sum([one[place] for one in counts]) for place in range(7)]
    why = [one.why for one in counts if one.why]
    return Counted(*(sums + [all([one.planned for one in counts]), why[0] if why else None]))


def of_plan(made: day.Plan) -> Counted:
    """What a plan takes, as it was planned; of one that is only counted no less."""
    why = day.why_largest(made.values, made.limit) if made.limit.alone else None
    found = Counted(0, 0, 0, 0, 0.0, 0.0, 0.0, True, why)
    for work, groups, _ in made.crews:
        for laid in groups:
            putty, wet = laid.putty > 0, laid.wet > 0
            mixes = 1 if laid.one_mix and not made.counted else int(putty) + int(wet)
            epoxy = laid.putty / (1 + work.mixing.filler)
            over = smallest_mix.surplus_at_most(work, laid) if made.counted else smallest_mix.surplus(work, laid)
            found = together([found, Counted(1, mixes, int(putty), int(wet), over, epoxy + laid.wet,
                                             laid.putty, True, None)])
    return found
