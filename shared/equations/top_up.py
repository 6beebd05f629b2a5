"""Top up: what goes in next to a pour that is off ratio, by mass or in whole strokes. Nothing comes out of a cup."""
from .pumping import MOST_FURTHER, SLACK, Strokes
from .types import Figures
from .weighing import ratio_error


def top_up(volumes: "list | tuple", parts: tuple) -> tuple:
    """What each part still lacks to stand in ratio with the part that is furthest ahead:
        add_i = p_i max(m_j / p_j) - m_i

    volumes: m, poured, 0 or more [m3, or kg]; parts: p, the label's in the same basis, above 0
    returns: of each part, 0 or more, at least one of them 0; plain proportion
    >>> [round(v, 3) for v in top_up((30.0, 9.0), (3, 1))], [round(grams, 5) for grams in top_up((120, 40), (100, 30))]
    ([0.0, 1.0], [13.33333, 0.0])
    """
    ahead = max([volume / part for volume, part in zip(volumes, parts)])
    return tuple([max(0.0, ahead * part - volume) for volume, part in zip(volumes, parts)])


def most_short(poured: "list | tuple", parts: tuple) -> int:
    """Which part lacks most, measured by its own share: the next that goes in.

    poured: amounts [any unit]; parts: the label's, above 0, in the same basis
    returns: its place; of parts that lack alike the first
    >>> most_short((187.0, 75.0), (100, 28.4)), most_short((200.0, 50.0), (100, 28.4))
    (0, 1)
    """
    lacks = [lack / part for lack, part in zip(top_up(poured, parts), parts)]
    place = 0
    for other in range(1, len(lacks)):
        if lacks[other] > lacks[place] * (1 + 1e-9):
            place = other
    return place


def with_additions(poured: tuple, parts: tuple, additions: tuple) -> tuple:
    """The parts after all that was added, each addition to the part that lacked most before it.

    poured: amounts [any unit]; parts: the label's, above 0, in the same basis; additions: in their order
    >>> with_additions((180.0, 75.0), (3, 1), (45.0,)), with_additions((180.0, 75.0), (3, 1), (50.0, 1.6))
    ((225.0, 75.0), (230.0, 76.6))
    """
    amounts = list(poured)
    for addition in additions:
        amounts[most_short(amounts, parts)] += addition
    return tuple(amounts)


def further_strokes(done: Figures, parts: Figures, strokes: Figures, tolerance: float) -> "Strokes | None":
    """Whole strokes on top of those that are pumped until the ratio stands: the fewest of the first pump that come
    within tolerance, or None where none of MOST_FURTHER more do.

    done: strokes pumped of each part [-], of the first so many pumps; parts: by volume [-] or wanted [m3]
    strokes: volume of one stroke of each pump [m3]; tolerance [-]
    returns: pumping.Strokes of all parts, none fewer than done
    >>> [further_strokes(done, (2, 1), (1e-5, 1e-5), 0.02).counts for done in ((7,), (7, 3), (6, 4))]
    [(8, 4), (8, 4), (8, 4)]
    >>> further_strokes((13,), (3, 1), (1e-5, 1e-5), 0.02).counts
    (15, 5)
    """
    for more in range(MOST_FURTHER + 1):
        first = int(max(done[0], 1)) + more
        counts = [first]
        for place in range(1, len(parts)):
            exact = first * strokes[0] * parts[place] / parts[0] / strokes[place]
            least = int(done[place]) if place < len(done) else 1
            over = max(0, int(exact - least + 0.5 + SLACK))
            counts.append(least + over)
        volumes = tuple([count * stroke for count, stroke in zip(counts, strokes)])
        error = ratio_error(volumes, parts)
        if abs(error) <= tolerance + SLACK:
            return Strokes(tuple(counts), volumes, error)
    return None
