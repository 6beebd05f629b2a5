"""Tape: pieces that a pair of hands can lay, overlapping end to end, staggered from layer to layer."""
from .rounding import ceiling


def count(length: float, reach: float, overlap: float) -> int:
    """How many pieces one layer takes; counted and not laid out, because so many may be too many to be told.

    length, reach, overlap: as for `pieces`
    >>> count(4.0, 2.5, 0.05), count(200.0, 0.1, 0.0)
    (2, 2000)
    """
    return 1 if length <= reach * (1 + 1e-12) else ceiling((length - overlap) / (reach - overlap))


def pieces(length: float, reach: float, overlap: float, stagger: float = 0.0, layer: int = 0) -> tuple:
    """Lengths of the pieces of one layer, in laying order.

    length: of the seam [m]; reach: longest piece that is laid in one go [m]; overlap: where two meet [m]
    stagger: least distance of this layer's ends from those of the layer below [m]; layer: 0 for the first
    returns: lengths [m]; they add up to the seam and one overlap for each meeting; reach above overlap + 2 stagger
    >>> [round(piece, 3) for piece in pieces(4.0, 2.5, 0.05)], [round(p, 3) for p in pieces(4.0, 2.5, 0.05, 0.1, 1)]
    ([2.025, 2.025], [2.125, 1.925])
    """
    many = count(length, reach, overlap)
    if many == 1:
        return (length,)
    each = (length + (many - 1) * overlap) / many
    if layer % 2 == 0 or not stagger:
        return (each,) * many
    if each + stagger <= reach * (1 + 1e-12) and each - stagger > 2 * overlap:
        return (each + stagger,) + (each,) * (many - 2) + (each - stagger,)
    # no room to shift: half a piece at either end, like bricks
    end = (each + overlap) / 2
    return (end,) + (each,) * (many - 1) + (end,)


def ends(lengths: tuple, overlap: float) -> tuple:
    """Where the pieces of a layer meet: the middle of each overlap, from the start of the seam [m].

    >>> [round(end, 3) for end in ends((2.025, 2.025), 0.05)]
    [2.0]
    """
    at, found = 0.0, []
    for piece in lengths[:-1]:
        at += piece - overlap
        found.append(at + overlap / 2)
    return tuple(found)
