"""Grouping: pieces in laying order into batches.

Wanted, in this order: every window holds; the fewest batches; the least mixed in all, so that as little as may be is
mixed only because the scale holds no less; the smallest largest batch; the earliest end; most slack.
Slack falls with length, so from each piece the groups that hold are found up to the first that does not. At one
temperature a run of furthest reaches already gives the fewest batches; over a changing one it only gives a bound, and
the dynamic programme over (batches, pieces) decides. There one start is kept for each (batches, pieces): with a helper,
whose batches end a little apart, the largest batch may then be a few grams above the smallest possible. Where a piece
must wait for a cooler hour, up to six batches beyond the bound are tried.
"""

from .laying import Laid, Laying
from .temperature_profile import Held

# batches beyond the bound that are tried where the run of furthest reaches meets a piece that it cannot lay
FURTHER = (0, 1, 2, 3, 4, 5, 6)
TIE = 1e-6  # s or kg; sums in another order differ in their last bits


def size(laid: Laid) -> float:
    """What one batch asks to be mixed [kg]."""
    return laid.putty + laid.wet


def furthest(laying: Laying, start: float) -> tuple:
    """The groups of a run in which each batch reaches as far as it can, and the group that failed (None: all are laid).

    start: of the first mixing [s]
    """
    if laying.profile.constant:
        start = 0.0  # at one temperature the hour changes nothing
    if laying.run is None or laying.run[0] != start:
        laying.run = (start, _furthest(laying, start))
    return laying.run[1]


def _furthest(laying: Laying, start: float) -> tuple:
    found, first, guess = [], 0, 0
    while first < len(laying.pieces):
        laid = laying.reach(first, start, laying.profile, guess)
        if laid is None:
            return found, laying.failed(first, start)
        found.append(laid)
        start = laying.next_start(laid, start)
        first, guess = laid.last, laid.last + (laid.last - first)
    return found, None


def starts_of(laying: Laying, found: list, start: float) -> list:
    """When each of several batches in a row is mixed [s]."""
    starts = []
    for laid in found:
        starts.append(start)
        start = laying.next_start(laid, start)
    return starts


def batches_left(laying: Laying, start: float, most: int) -> list:
    """For each piece a bound on the batches from it to the end: as many as at the coolest moment it may meet.

    start: of the first mixing [s]; most: batches that are certainly enough
    """
    count = len(laying.pieces)
    left, guess = [0] * (count + 1), 0
    before = [] if laying.profile.constant else batches_before(laying, start, most)
    for first in range(count - 1, -1, -1):
        if laying.profile.constant:
            groups = laying.from_piece(first, 0.0)[0]
            reach = groups[-1].last if groups else None
        else:
            reach = _reach_at_best(laying, start, first, (before[first], most - left[first + 1]), first, guess)
            guess = reach or 0
        left[first] = count + 1 if reach is None else left[reach] + 1
    return left


def batches_before(laying: Laying, start: float, most: int) -> list:
    """For each piece a bound on the batches before it: as few as where each meets the coolest moment it may."""
    count = len(laying.pieces)
    before, first, batches, guess = [0] * (count + 1), 0, 0, 0
    while first < count and batches < most:
        # so many batches hold at least as many pieces: the work of these lies behind
        reach = _reach_at_best(laying, start, first, (batches, batches), min(batches, first), guess)
        if reach is None:
            break
        batches += 1
        for place in range(first + 1, count + 1):
            before[place] = batches
        first, guess = reach, reach + (reach - first)
        for place in range(first + 1, count + 1):
            before[place] = batches + 1
    return before


def _reach_at_best(laying: Laying, start: float, first: int, batches: tuple, behind: int, guess: int) -> "int | None":
    """How far a batch from a piece on may reach at best: at the coolest moment it may meet.

    batches: before it, at least and at most; behind: pieces surely laid before it
    guess: piece at which a batch from here may end, to start looking there
    """
    profile, crew, share = laying.profile, laying.crew, laying.windows.share
    least, most = batches
    early = start + laying.place[behind] + laying.tool[behind] + laying.cover[behind]
    late = start + laying.place[first] + laying.tool[first] + laying.tape[first] + laying.cover[first]
    late += most * (crew.mix_putty + crew.mix_wet + crew.pause)
    if not crew.pair:
        early += laying.tape[behind]
    early += least * (crew.pause + (0.0 if crew.mixer else laying.mixed))
    # a batch that holds at all is over by then; the one so found bounds it once more, and closer
    longest = share * min(laying.windows.soft + laying.windows.film, laying.windows.soft * laying.whole)
    if laying.bare:  # tape alone has no soft cove to be in time for
        longest = max(longest, share * laying.windows.film)
    ends = late + longest / profile.pace_coolest
    ends = late + longest / profile.pace_at(profile.between(early, ends)[0])
    found, coolest = None, 0.0
    for _ in range(4):
        way = profile.trend(early, ends)
        if way:  # while it gets warmer none lasts longer than the earliest, while it cools the latest
            return _last(laying.reach(first, early if way > 0 else late, profile, guess))
        closer = profile.between(early, ends)[0]
        if closer < coolest + 0.2:
            break
        coolest = closer
        found = laying.reach(first, 0.0, Held(profile.pace_at(coolest)), guess)
        if found is None:
            return None
        guess, ends = found.last, late + found.covered
    return _last(found)


def _last(found: "Laid | None") -> "int | None":
    return None if found is None else found.last


def grouped(laying: Laying, start: float) -> "list | None":
    """The wanted grouping as a list of `Laid`, or None when no grouping holds.

    laying: a `laying.Laying`; start: of the first mixing [s]
    """
    if not laying.pieces:
        return []
    run, failed = furthest(laying, start)
    if failed is None:
        return _two_passes(laying, start, batches_left(laying, start, len(run)), len(run))
    count = len(laying.pieces)
    least = batches_left(laying, start, count)[0]
    for more in FURTHER:
        if least + more <= count:
            found = _two_passes(laying, start, batches_left(laying, start, least + more), least + more)
            if found is not None:
                return found
    return None


def _two_passes(laying: Laying, start: float, left: list, most: int) -> "list | None":
    best = _programme(laying, start, left, most, None, False)
    if best is None:
        return None
    largest = max([size(laid) for laid in best])
    found = _programme(laying, start, left, len(best), largest * (1 + 1e-12))
    return found or _programme(laying, start, left, len(best), None)


def _programme(laying: Laying, start: float, left: list, most: int, largest: "float | None",
               by_slack: bool = True) -> "list | None":
    """One pass over (batches, pieces): the least mixed, then the smallest largest batch, or within `largest` the
    earliest end, then slack.

    left: bound on the batches still needed from each piece; most: batches that are certainly enough
    by_slack: whether it decides in the end; what comes after two states that are alike else is the same
    A state is [largest batch, start of the next mixing or the end of all, group, its start, state before, least slack,
    mixed in all]; the slack is None until two states are alike in all else.
    """
    count, mixer, pause = len(laying.pieces), laying.crew.mixer, laying.crew.pause
    layer: dict = {0: [0.0, start, None, start, None, 1e30, 0.0]}
    for batches in range(1, most + 1):
        following = {}
        for first in sorted(layer):
            state, least = layer[first], first + 1
            while least < count and batches + left[least] > most:
                least += 1
            for laid in laying.from_piece(first, state[1], least)[0]:
                if batches + left[laid.last] > most:
                    continue
                own = laid.putty + laid.wet
                if largest is not None and own > largest:
                    continue
                end = state[1] + laid.covered
                if laid.last < count:
                    end = laying.next_start(laid, state[1]) if mixer else end + pause
                old, big, mixed = following.get(laid.last), own if own > state[0] else state[0], state[6] + own
                spared = 0.0 if old is None else mixed - old[6]
                if spared > TIE * 1e-3:
                    continue
                if old is not None and spared >= -TIE * 1e-3:
                    # by size in the first pass only; then by the end
                    much = big - old[0] if largest is None else 0.0
                    if much > TIE * 1e-3 or (much >= -TIE * 1e-3 and end - old[1] > TIE):
                        continue
                new = [big, end, laid, state[1], state, None, mixed]
                if old is None or spared < -TIE * 1e-3 or _better(laying, new, old, largest is None, by_slack):
                    following[laid.last] = new
        if count in following:
            return _groups(laying, following[count])
        layer = following
    return None


def _better(laying: Laying, new: list, old: list, by_size: bool, by_slack: bool) -> bool:
    if by_size and abs(new[0] - old[0]) > TIE * 1e-3:
        return new[0] < old[0]
    if abs(new[1] - old[1]) > TIE:
        return new[1] < old[1]
    return by_slack and _slack(laying, new) > _slack(laying, old) + TIE


def _slack(laying: Laying, state: list) -> float:
    """The least slack of the groups up to a state [s], reckoned when it is first asked for."""
    chain = []
    while state[5] is None:
        chain.append(state)
        state = state[4]
    least = state[5]
    for one in reversed(chain):
        least = min(least, laying.measured(one[2], one[3]).slack)
        one[5] = least
    return least


def _groups(laying: Laying, state: list) -> list:
    found = []
    while state[2] is not None:
        found.append(laying.measured(state[2], state[3]))
        state = state[4]
    return list(reversed(found))
