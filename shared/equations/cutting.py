"""Cutting: which piece comes off which remnant or roll, for the fewest rolls and the least cut from them.

A roll's end stays a long remnant; what is lost is what a remnant has left over. Lengths are whole millimetres, so that
the answer is exact and alike on every runtime. Where the search ends before it has looked everywhere, the answer says
how much better a cut could be at most.
"""
from collections import namedtuple

# stock: "remnant" or "roll"; place: which one; length [mm]; pieces: their places in the list given
Cut = namedtuple("Cut", ("stock", "place", "length", "pieces"))
# from_rolls [mm]: cut off rolls; proven: nothing better exists; at least these many rolls and mm are needed in any case
Cutting = namedtuple("Cutting", ("cuts", "rolls", "from_rolls", "proven", "least_rolls", "least_from_rolls"))

EFFORT = 400  # pieces tried on: about 40 ms of a phone's time
LONG = 10000  # mm; of a longer remnant only the end is filled to the millimetre: its sums are a bit each
MANY = 1000  # remnants x pieces; above it they are filled in one order only
REMNANT, ROLL = "remnant", "roll"


def cut(pieces: tuple, roll: int, remnants: tuple = (), effort: int = EFFORT) -> Cutting:
    """Cut pieces from remnants and rolls: first the fewest rolls, then the least length cut from rolls.

    pieces: lengths [mm], whole, none longer than the roll; roll: length of a new one [mm]; remnants: lengths [mm]
    effort: how many trials before the search gives up; the answer then says how far from the best it may be
    returns: Cutting, the remnants first, then the rolls; one-dimensional cutting stock, exact where `proven`
    >>> found = cut((900, 700, 700, 500), 5000, (1400, 1000))
    >>> [(each.stock, each.length, each.pieces) for each in found.cuts]
    [('remnant', 1400, (1, 2)), ('remnant', 1000, (0,)), ('roll', 5000, (3,))]
    >>> found.proven
    True
    """
    # longest first, then as given: one whole number for both sorts several times faster than a pair
    count = max(1, len(pieces))
    order = [mark % count for mark in sorted([place - pieces[place] * count for place in range(len(pieces))])]
    sizes = [pieces[place] for place in order]
    stock = sorted(range(len(remnants)), key=lambda place: (-remnants[place], place))
    caps = [remnants[place] for place in stock]
    sums = [0] * (len(sizes) + 1)
    for place in range(len(sizes) - 1, -1, -1):
        sums[place] = sums[place + 1] + sizes[place]
    alone = [fullest(sizes, cap) if cap <= LONG else None for cap in caps]
    least_from = max(0, sums[0] - sum([min(cap, sums[0]) if some is None else sum([sizes[place] for place in some])
                                       for cap, some in zip(caps, alone)]))
    least_rolls = -(-least_from // roll)
    best = _filled(sizes, caps, roll, alone, (least_rolls, least_from))
    proven = best[0] == (least_rolls, least_from)
    effort = min(effort, effort * 4 * LONG // max(1, sum(caps)))  # every look at a long remnant takes longer
    if not proven and effort > 6 * len(sizes):  # a search that could hardly turn back once is not begun
        best, proven = _search(sizes, caps, roll, sums, Fits(sizes, caps, sums), best, effort)
    (rolls, from_rolls), bins = best
    groups = [[] for _ in range(len(caps) + rolls)]
    for place, chosen in enumerate(bins):
        groups[chosen].append(order[place])
    cuts = []
    for chosen, group in enumerate(groups):
        if group:
            cuts.append(Cut(REMNANT, stock[chosen], caps[chosen], tuple(sorted(group))) if chosen < len(caps)
                        else Cut(ROLL, chosen - len(caps), roll, tuple(sorted(group))))
    if proven:
        least_rolls, least_from = rolls, from_rolls
    return Cutting(tuple(cuts), rolls, from_rolls, proven, least_rolls, least_from)


class Fits:
    """The most that pieces from a place on can fill of a length: their reachable sums as the bits of whole numbers."""

    def __init__(self, sizes: list, caps: list, sums: list) -> None:
        self.sums, self.known, self.bits = sums, {}, [1] * (len(sizes) + 1)
        if caps:
            mask = (1 << (max(caps) + 1)) - 1
            for place in range(len(sizes) - 1, -1, -1):
                later = self.bits[place + 1]
                self.bits[place] = (later | (later << sizes[place])) & mask

    def best(self, place: int, length: int) -> int:
        if self.sums[place] <= length:
            return self.sums[place]
        known = self.known.get((place, length))
        if known is None:
            known = self.known[(place, length)] = top_bit(self.bits[place] & ((1 << (length + 1)) - 1))
        return known


def top_bit(number: int) -> int:
    """The place of the highest bit of a whole number above 0.

    >>> top_bit(1), top_bit(8), top_bit(9)
    (0, 3, 3)
    """
    found, step = 0, 1
    while number >> step:
        step *= 2
    while step:
        if number >> step:
            number >>= step
            found += step
        step //= 2
    return found


def _filled(sizes: list, caps: list, roll: int, alone: list, least: tuple) -> tuple:
    """A good cut to begin with: each remnant filled as full as can be, in several orders; the rest falls on rolls.

    alone: the fullest filling of each remnant from all pieces, None of a long one
    least: (rolls, mm) that no cut can do without
    """
    best = None
    # the shortest remnant first: where it makes no difference the odds and ends go before a long roll
    ways = [list(reversed(range(len(caps)))), list(range(len(caps)))]
    if len(caps) == 3:
        ways += [[0, 2, 1], [1, 0, 2], [1, 2, 0], [2, 0, 1]]
    for way in ways if 1 < len(caps) <= MANY // max(1, len(sizes)) else ways[:1]:
        bins: list = [None] * len(sizes)
        left = list(range(len(sizes)))
        for chosen in way:
            known = len(left) == len(sizes) and alone[chosen] is not None
            for place in alone[chosen] if known else fullest([sizes[place] for place in left], caps[chosen]):
                bins[left[place]] = chosen
            left = [place for place in left if bins[place] is None]
        spare, first = [], 0
        for place in left:
            size = sizes[place]
            chosen = first
            while chosen < len(spare) and spare[chosen] < size:
                chosen += 1
            if chosen == len(spare):
                spare.append(roll)
            spare[chosen] -= size
            bins[place] = len(caps) + chosen
            while first < len(spare) and spare[first] < sizes[-1]:
                first += 1  # full for good: not even the shortest piece fits
        cost = (len(spare), sum([sizes[place] for place in left]))
        if best is None or cost < best[0]:
            best = (cost, bins)
        if best[0] == least:
            break
    return best  # type: ignore[return-value]  # one way is always tried


def fullest(sizes: list, length: int) -> list:
    """Places of the pieces that fill a length as full as can be; of one above LONG the end, behind the longest pieces.

    sizes: [mm], the longest first; length: [mm]

    >>> fullest([900, 700, 700, 500], 1400)
    [1, 2]
    """
    if sum(sizes) <= length:
        return list(range(len(sizes)))
    if length > LONG:
        some, rest = [], []
        for place, size in enumerate(sizes):
            if length > LONG and size <= length:
                length -= size
                some.append(place)
            else:
                rest.append(place)
        return sorted(some + [rest[place] for place in fullest([sizes[place] for place in rest], length)])
    # of equal pieces no more than fit can matter: a long list of few lengths stays short
    copies, places = {}, []
    for place, size in enumerate(sizes):
        count = copies.get(size, 0)
        if (count + 1) * size <= length:
            copies[size] = count + 1
            places.append(place)
    full = 1 << length
    mask, reached = full + full - 1, [1]
    for place in places:
        reached.append((reached[-1] | (reached[-1] << sizes[place])) & mask)
        if reached[-1] >= full:
            break  # filled to the last millimetre
    at, found, high = top_bit(reached[-1]), [], len(reached) - 1
    while at:
        # the piece with which this sum was first reached, by halving: every look makes a large number
        bit, low = 1 << at, 0
        while high - low > 1:
            middle = (low + high) // 2
            if reached[middle] & bit:
                high = middle
            else:
                low = middle
        found.append(places[high - 1])
        at -= sizes[places[high - 1]]
        high -= 1
    return list(reversed(found))


def _search(sizes: list, caps: list, roll: int, sums: list, fits: "Fits", best: tuple, effort: int) -> tuple:
    """Branch and bound over the pieces, longest first; equal pieces and equally full stock are not tried twice.

    returns: ((cost, bins), whether the search looked everywhere)
    """
    count, kept = len(sizes), len(caps)
    room, bins = list(caps), [None] * count
    options: list = [None] * count
    from_rolls, depth, tried = 0, 0, 0
    while depth >= 0:
        if depth == count:
            cost = (len(room) - kept, from_rolls)
            if cost < best[0]:
                best = (cost, list(bins))
            depth -= 1
        elif options[depth] is None:
            tried += 1
            if tried > effort:
                return best, False
            options[depth] = _choices(depth, sizes, caps, roll, sums, fits, best, room, bins, from_rolls)
            continue
        if depth < 0:
            break
        chosen = bins[depth]
        if chosen is not None:  # take the piece back off
            bins[depth] = None
            room[chosen] += sizes[depth]
            if chosen >= kept:
                from_rolls -= sizes[depth]
                if chosen == len(room) - 1 and room[chosen] == roll:
                    room.pop()
        if not options[depth]:
            options[depth] = None
            depth -= 1
            continue
        chosen = options[depth].pop()
        if chosen == len(room):
            room.append(roll)
        room[chosen] -= sizes[depth]
        if chosen >= kept:
            from_rolls += sizes[depth]
        bins[depth] = chosen
        depth += 1
    return best, True


def _choices(depth: int, sizes: list, caps: list, roll: int, sums: list, fits: "Fits", best: tuple, room: list,
             bins: list, from_rolls: int) -> list:
    """Where the next piece may go, the best guess last; none where nothing better than the best can come of it."""
    kept, size = len(caps), sizes[depth]
    usable = 0
    for chosen in range(kept):
        usable += fits.best(depth, room[chosen])
    least = from_rolls + max(0, sums[depth] - usable)
    rolls = max(len(room) - kept, -(-least // roll))
    if (rolls, least) >= best[0]:
        return []
    first = bins[depth - 1] if depth and sizes[depth - 1] == size else 0
    seen, found = [], []
    for chosen in range(first, len(room)):
        mark = (chosen < kept, room[chosen])
        if room[chosen] >= size and mark not in seen:
            seen.append(mark)
            found.append((chosen >= kept, room[chosen], chosen))
    if len(room) - kept < best[0][0]:
        found.append((True, roll + 1, len(room)))
    # remnants before rolls, the tightest first; the last of the list is tried first
    return [each[2] for each in sorted(found, key=lambda each: (-int(each[0]), -each[1], -each[2]))]
