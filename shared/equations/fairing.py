"""Fairing: from depths under the batten to compound placed, sanded off and kept."""


def mean_depth(depths: "tuple[float, ...]") -> float:
    """Mean of depths read anywhere on a face [m].

    >>> round(mean_depth((0.001, 0.002, 0.0)), 6)
    0.001
    """
    return sum(depths) / len(depths)


def placed(area: float, depth: float, sanded: float) -> float:
    """Compound to place for a mean depth that stays:
        V = A d / (1 - s)

    area: A [m2]; depth: d, the mean [m]; sanded: s, share of what is placed [-], below 1
    returns: [m3]
    >>> round(placed(2.0, 0.001, 0.3) * 1e6, 2)
    2857.14
    """
    return area * depth / (1 - sanded)
