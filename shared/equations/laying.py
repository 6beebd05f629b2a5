"""Laying: what one crew does with one group of pieces, minute by minute, and whether every window holds.

Times of a group are counted from the start of its mixing, the first contact of resin and hardener. With p, q, c, w,
d, r, y the minutes per metre to place, tool, clean, wet out, lay, roll and cover with peel ply, m_p and m_r the two
mixing times and L the metres:
    bag empty   m_p + p L                   within the pot life of the mass in the bag
    tooled      bag empty + (q + c) L
    rolled      alone: tooled + m_r + (w + d + r) L         within the soft window of the putty
                two: piece by piece max(tooled_i, second person free + w l_i) + (d + r) l_i
    covered     peel ply down; since the wet-out mixing it must be within the film time
Every window counts only up to a share of it.

A group without putty is tape alone, on a face that has no soft cove: nothing is bagged, placed or tooled, its first mix
is the wet-out resin. It is bound by its cup, which must be empty, onto the tray, within the pot life of the mass in it,
and by the film. A group without tape is putty alone: the bag binds it, and the cove must be tooled while it is soft.
Of a group with both, all tape is taken to go on soft coves, also where some of its pieces have only one: the safe side.
"""

from collections import namedtuple

from .types import Like, Pace

POT, CUP, SOFT, FILM, SIZE = "pot", "cup", "soft", "film", "size"
NEAR = 1  # pieces; how far before a guess to begin to look
TOO_BIG = 1.0  # s; stands for a mix that is too big, whatever the time
SLACK = 1e-6  # s; computed times differ in their last bits between runtimes

# pot, cup: functions of the mass [kg] in the bag, and of wet-out resin in its cup -> s; soft, film [s]; all at 25 degC;
# share: used of any of them [-]
Windows = namedtuple("Windows", ("pot", "cup", "soft", "film", "share"))
# times [s]; pause: between batches [s]; pair: two people work side by side; mixer: somebody else mixes
Crew = namedtuple("Crew", ("mix_putty", "mix_wet", "pause", "pair", "mixer"))
# left_putty, left_wet: what stays behind in each mix [kg]; spare [-]; least: smallest mix in ratio of liquids [kg];
# most: the largest mix wanted [kg], or None; filler: per mass of mixed epoxy [-]; one_mix: whether one may serve both;
# alone: whether one piece by itself may take more than the largest
Mixing = namedtuple("Mixing", ("left_putty", "left_wet", "spare", "least", "most", "filler", "one_mix", "alone"))
# length [m]; putty, wet: to be placed [kg]; times to place, tool and clean, wet out, lay and roll, cover [s]
Piece = namedtuple(
    "Piece", ("name", "length", "putty", "wet", "place", "tool", "clean", "wetting", "lay", "roll", "cover")
)
# first, last: pieces, last excluded; one_mix, together (two people at once): how it is done; putty, wet: to mix [kg];
# placed: bag empty, of tape alone its cup; placed .. covered: times [s]; slack: the least of what is left
# of any window [s]; limit: that window's name
Laid = namedtuple(
    "Laid",
    (
        "first",
        "last",
        "one_mix",
        "together",
        "putty",
        "wet",
        "placed",
        "tooled",
        "wet_start",
        "rolled",
        "covered",
        "slack",
        "limit",
    ),
)


def needed(work: "Laying", laid: Laid) -> tuple:
    """What a group takes with what stays behind and the spare [kg], whatever the scale can hold: (putty, wet-out)."""
    return work.needed(laid.first, laid.last)


def bounds_of(laid: Laid) -> tuple:
    """The windows that a group must keep within, by what it has: putty, tape or both."""
    if not laid.putty:
        return CUP, FILM
    return (POT, SOFT, FILM) if laid.wet else (POT, SOFT)


def _sums(values: list) -> list:
    total, found = 0.0, [0.0]
    for value in values:
        total += value
        found.append(total)
    return found


def in_pot(laid: Laid) -> float:
    """What a group has in its bag, of tape alone in its cup [kg]; one mix for both counts whole, until it is parted."""
    return laid.putty + laid.wet if laid.one_mix else laid.putty or laid.wet


def in_one_container(putty: float, wet: float, one_mix: bool, filler: float) -> float:
    """The most that a batch has in one cup or bag [kg]: one mix for both is measured in a cup without its filler, and
    parted before the rest is filled. putty with its filler, wet-out resin [kg]; filler: per mass of mixed epoxy [-]"""
    return max(putty, putty / (1 + filler) + wet if one_mix else wet)


class Laying:
    """The pieces in laying order with their crew, windows and temperature: what goes into one batch from where on."""

    def __init__(self, pieces: list, crew: Crew, windows: Windows, mixing: Mixing, profile: Pace,
                 like: Like = None) -> None:
        self.pieces, self.crew, self.windows, self.mixing, self.profile = pieces, crew, windows, mixing, profile
        self.held = {}
        self.run: "tuple | None" = None
        self.seen: "tuple | None" = None
        self.hands = (True, False) if crew.pair else (False,)
        self.bare = bool([1 for p in pieces if not p.putty]) if like is None else like.bare  # some are tape alone
        # how long a batch is mixed before its first work, at least
        self.mixed = min(crew.mix_putty, crew.mix_wet) if self.bare else crew.mix_putty
        if like is not None:  # of the same pieces: their sums are kept
            self.place, self.tool, self.tape, self.cover = like.place, like.tool, like.tape, like.cover
            self.putty, self.wet, self.after = like.putty, like.wet, like.after
            self.whole = 1 + self.after * len(self.hands)
            return
        self.place = _sums([p.place for p in pieces])
        self.tool = _sums([p.tool + p.clean for p in pieces])
        self.tape = _sums([p.wetting + p.lay + p.roll for p in pieces])
        self.cover = _sums([p.cover for p in pieces])
        self.putty = _sums([p.putty for p in pieces])
        self.wet = _sums([p.wet for p in pieces])
        # what follows the rolling is no more than this share of the work before it, which as many hands do at once
        self.after = max([p.cover / (p.tool + p.clean + p.wetting + p.lay + p.roll) for p in pieces] + [0.0])
        self.whole = 1 + self.after * len(self.hands)  # a whole batch, as times of its rolling

    def needed(self, first: int, last: int) -> tuple:
        """What the pieces from `first` to before `last` take, what stays behind and spare in it [kg]: (putty, wet)."""
        mixing = self.mixing
        more, putty, wet = 1 + mixing.spare, self.putty[last] - self.putty[first], self.wet[last] - self.wet[first]
        return putty * more + mixing.left_putty if putty else 0.0, wet * more + mixing.left_wet if wet else 0.0

    def changed(self, crew: "Crew | None" = None, windows: "Windows | None" = None, profile: Pace = None) -> "Laying":
        """The same pieces with other hands, another hardener or at another temperature."""
        if crew is None and windows is None and profile is self.profile:
            return self  # with what was found of it
        return Laying(
            self.pieces, crew or self.crew, windows or self.windows, self.mixing, profile or self.profile, self
        )

    def from_piece(self, first: int, start: float, least: int = 0) -> tuple:
        """Every group from one piece on that can be laid: (those that hold, shortest first; the first that does not).

        first: index; start: of its mixing [s]; least: groups that end before this piece are of no use and left out
        The second is None when all the rest can be laid in one go.
        """
        if self.profile.constant:
            start, least = 0.0, 0
        key = (first, start, least)
        kept = self.held.get(key)
        if kept is None:
            kept = self.held[key] = self._from_piece(first, start, self.profile, least)
        return kept

    def failed(self, first: int, start: float, least: int = 0) -> "Laid | None":
        """The first group from one piece on that does not hold, told fully; None where all the rest can be laid.

        least: groups that end before this piece are known to hold
        """
        return self._from_piece(first, start, self.profile, least, 1000, True)[1]

    def reach(self, first: int, start: float, profile: Pace, guess: int) -> "Laid | None":
        """The furthest group from one piece on, or None where one is too much.

        start: of its mixing [s]; profile: the temperature it meets; guess: piece at which it may end
        """
        # slack falls with length: where the guess holds, the shorter groups need not be looked at
        near, back = guess - NEAR, 2
        while near > first + 1:
            found = self._from_piece(first, start, profile, near)[0]
            if found:
                return found[-1]
            near, back = near - back, 2 * back
        found = self._from_piece(first, start, profile)[0]
        return found[-1] if found else None

    def one_piece(self, place: int) -> tuple:
        """One piece as a batch of its own at the start of the day, and whether it can be."""
        found, failed = self._from_piece(place, 0.0, self.profile, 0, 1, True)
        return (found[0], True) if found else (failed, False)

    def _from_piece(self, first: int, start: float, profile: Pace, least: int = 0, most: int = 1000,
                    why: bool = False) -> tuple:
        """(groups that hold, the first that does not); without `why` the second is left out where that saves time.

        Groups that surely hold are only counted: their slack is None, `measured` tells it.
        One function: a plan runs its loop thousands of times, and on a phone each call in it costs as much as its sums.
        """
        pieces, crew, mixing, windows = self.pieces, self.crew, self.mixing, self.windows
        place, tool, tape, cover, putties, wets = self.place, self.tool, self.tape, self.cover, self.putty, self.wet
        place0, tool0, tape0, cover0 = place[first], tool[first], tape[first], cover[first]
        putty0, wet0 = putties[first], wets[first]
        share, pot, found, pair = windows.share, windows.pot, [], crew.pair
        mix_putty, mix_wet, more, filled = crew.mix_putty, crew.mix_wet, 1 + mixing.spare, 1 + mixing.filler
        floor = mixing.least * (1 - 1e-9)
        most_mix = 1e30 if mixing.most is None else mixing.most
        roof = 1e30 if mixing.alone else most_mix
        over, alone = most_mix * (1 + 1e-9), first + 1 if mixing.alone else first
        # by when the cove must be rolled; the paces between which a mix ages until well after that
        if profile.constant:
            hot, gained = profile.pace_held, None
            cold = hot
            soft_by, horizon = share * windows.soft / hot, 1e30
        else:
            soft_by, cold, hot, gained = profile.ahead(start, share * windows.soft, self.whole)
            horizon = self.whole * soft_by + 1e-3
        film = share * windows.film
        film_span = film / hot
        # chains of the second person: rolled, covered, counted from the empty bag; covered, counted from wet resin
        rolled, covered, unhindered = 0.0, 0.0, 0.0
        for last in range(first + 1, min(first + most, len(pieces)) + 1):
            piece = pieces[last - 1]
            if last > first + 1:
                roof = most_mix
            worked = tool[last] - tool0
            if pair:
                lay_roll = piece.lay + piece.roll
                rolled = max(worked, rolled + piece.wetting if last > first + 1 else 0.0) + lay_roll
                covered = max(covered, rolled) + piece.cover
                unhindered = max(unhindered, tape[last] - tape0) + piece.cover
            if last < least:
                continue
            if putties[last] == putty0 or wets[last] == wet0:
                # of one kind only: what is here below is bound by a soft cove
                laid = self._best(first, last, (start, profile), (rolled, covered, unhindered) if pair else None)
                if laid.slack < -SLACK:
                    return found, laid
                found.append(laid)
                continue
            placed = mix_putty + place[last] - place0
            tooled = placed + worked
            taped, covering = tape[last] - tape0, cover[last] - cover0
            putty = (putties[last] - putty0) * more + mixing.left_putty
            wet = (wets[last] - wet0) * more + mixing.left_wet
            # surely too late, however it is done: alone the tape comes after the tooling, with a helper its last piece
            if not why and tooled + (piece.lay + piece.roll if pair else taped) > soft_by + 1e-3:
                return found, last
            # the first way in the order of preference, the second hand at work where there is one: what most groups are
            if not why and (putty > over or wet > over) and last > alone:
                return found, last  # above the largest mix, however it is done
            small = putty < floor * filled or wet < floor
            one = small and mixing.one_mix
            epoxy = putty / filled
            if one and max(putty, epoxy + wet, mixing.least) > roof:
                one = False  # one pot for both is too much; two are not
            if one:
                wet, mixed = max(wet, mixing.least - epoxy), 0.0
                in_pot, holds = putty + wet, max(putty, epoxy + wet)
            else:
                if small:
                    putty, wet = max(putty, mixing.least * filled), max(wet, mixing.least)
                in_pot, holds, mixed = putty, max(putty, wet), mix_wet
            lasts = share * pot(in_pot)
            aged = placed * hot
            if aged > lasts and cold < hot:  # as much as surely; now as much as really
                aged = gained(placed)  # type: ignore[misc]
            rolled_at = 0.0
            if aged <= lasts and holds <= roof:
                if pair:
                    head = pieces[first]
                    begin, earliest = placed + head.tool + head.clean - head.wetting - mixed, mix_putty if one else 0.0
                    rolled_at, covered_at = placed + rolled, max(tooled + covering, placed + covered)
                    if begin < earliest:
                        begin = earliest
                        rolled_at = max(rolled_at, earliest + mixed + taped)
                        covered_at = max(covered_at, earliest + mixed + unhindered)
                else:
                    begin, rolled_at = tooled, tooled + mixed + taped
                    covered_at = rolled_at + covering
                lying = covered_at if one else covered_at - begin
                if (rolled_at <= soft_by and covered_at <= horizon and (lying <= film_span or (cold < hot and
                        gained(covered_at) - gained(covered_at - lying) <= film))):  # type: ignore[misc]
                    found.append(Laid(first, last, one, pair, putty, wet, placed, tooled, begin, rolled_at, covered_at,
                                      None, ""))
                    continue
            if not why and not small and holds <= roof:
                if aged > lasts + 1e-3:
                    return found, last
                if rolled_at > soft_by + 1e-3:
                    # one mix for both saves the second mixing, but puts more into the pot, which then lasts less long
                    lasts = share * pot(putty + wet) if mixing.one_mix else 0.0
                    if cold < hot:
                        aged = gained(placed)  # type: ignore[misc]
                    if aged > lasts + 1e-3:
                        return found, last
                    rolled_at = tooled + taped
                    covered_at = rolled_at + covering
                    if not pair and aged <= lasts and max(putty, epoxy + wet) <= roof and rolled_at <= soft_by:
                        lying = gained(covered_at) if cold < hot else covered_at * hot  # type: ignore[misc]
                        if lying <= film and covered_at <= horizon:
                            found.append(Laid(first, last, True, False, putty, wet, placed, tooled, tooled, rolled_at,
                                              covered_at, None, ""))
                            continue
                        if lying > film + 1e-3:
                            return found, last
            laid = self._best(first, last, (start, profile), (rolled, covered, unhindered) if pair else None)
            if laid.slack < -SLACK:
                return found, laid
            found.append(laid)
        return found, None

    def measured(self, laid: Laid, start: float) -> Laid:
        """A group with its slack and limit [s], where they were left out."""
        if laid.slack is not None:
            return laid
        slack, limit = self.slack_of(laid, start)
        return Laid(*(tuple(laid)[:-2] + (slack, limit)))

    def _best(self, first: int, last: int, moment: tuple, chains: "tuple | None") -> Laid:
        """The first way of working that holds, in the order of preference; else the one that misses by least."""
        mixing = self.mixing
        least, filled = mixing.least * (1 - 1e-9), 1 + mixing.filler
        putty, wet = self.needed(first, last)
        if not (putty and wet):
            return self._of_one_kind(first, last, moment, chains, putty, wet)
        # a mix that the scale could not hold is made larger; one mix for both may already be large enough
        small = putty < least * filled or wet < least
        two = (max(putty, mixing.least * filled), max(wet, mixing.least)) if small else (putty, wet)
        nearest = None
        for one_mix in ((True, False) if small else (False, True)) if mixing.one_mix else (False,):
            amounts = two
            if one_mix:
                amounts = (putty, max(wet, mixing.least - putty / filled))
            for together in self.hands:
                laid = self._laid(first, last, moment, chains if together else None, one_mix, amounts)
                if laid.slack >= -SLACK:
                    return laid
                if nearest is None or laid.slack > nearest.slack + SLACK:
                    nearest = laid
                if laid.limit != FILM:
                    break  # one after the other empties the bag no sooner and rolls later
            if laid.limit == POT and not one_mix:
                break  # one mix for both puts more into the pot
        return nearest  # type: ignore[return-value]  # one way is always tried

    def _of_one_kind(self, first: int, last: int, moment: tuple, chains: "tuple | None", putty: float,
                     wet: float) -> Laid:
        """The same of tape alone or putty alone: one mix, side by side where there are two."""
        mixing, nearest = self.mixing, None
        amounts = (max(putty, mixing.least * (1 + mixing.filler)) if putty else 0.0,
                   max(wet, mixing.least) if wet else 0.0)
        for together in self.hands if wet else (False,):
            laid = self._laid(first, last, moment, chains if together else None, False, amounts)
            if laid.slack >= -SLACK:
                return laid
            if nearest is None or laid.slack > nearest.slack + SLACK:
                nearest = laid
        return nearest  # type: ignore[return-value]  # one way is always tried

    def _laid(self, first: int, last: int, moment: tuple, chains: "tuple | None", one_mix: bool,
              amounts: tuple) -> Laid:
        crew = self.crew
        mix_putty = crew.mix_putty if amounts[0] else 0.0
        placed = mix_putty + self.place[last] - self.place[first]
        tooled = placed + self.tool[last] - self.tool[first]
        tape, cover = self.tape[last] - self.tape[first], self.cover[last] - self.cover[first]
        mixed = 0.0 if one_mix or not amounts[1] else crew.mix_wet  # of the wet-out resin alone
        if chains is None:
            wet_start = tooled
            rolled = tooled + mixed + tape
            covered = rolled + cover
        else:
            piece = self.pieces[first]
            wet_start = placed + piece.tool + piece.clean - piece.wetting - mixed
            rolled, covered = placed + chains[0], max(tooled + cover, placed + chains[1])
            earliest = mix_putty if one_mix else 0.0
            if wet_start < earliest:
                # slow hands at the tray, a short first piece: the tape and not the cove is waited for
                wet_start = earliest
                rolled = max(rolled, earliest + mixed + tape)
                covered = max(covered, earliest + mixed + chains[2])
        putty, wet = amounts
        if not putty:
            placed = mixed  # the cup, onto the tray
        in_pot = putty + wet if one_mix else putty or wet
        slack, limit = self._slack(*(moment + (placed, rolled, covered, 0.0 if one_mix else wet_start, in_pot,
                                               putty, wet)))
        most = self.mixing.most
        if most is not None and not (self.mixing.alone and last == first + 1) and (
                in_one_container(putty, wet, one_mix, self.mixing.filler) > most * (1 + 1e-9)):
            slack, limit = min(slack, -TOO_BIG), SIZE
        return Laid(first, last, one_mix, chains is not None, putty, wet, placed, tooled, wet_start, rolled, covered,
                    slack, limit)

    def slack(self, start: float, laid: Laid, placed: float, rolled: float, covered: float, since: float) -> tuple:
        """What is left of the window that has least left [s], and its name; below nought: it is missed by so much.

        start: of the mixing [s on the clock]; laid: the group, for what it has; placed, rolled, covered, since (wet-out
        mixing): times from there [s]
        """
        return self._slack(start, self.profile, placed, rolled, covered, since, in_pot(laid), laid.putty, laid.wet)

    def _slack(self, start: float, profile: Pace, placed: float, rolled: float, covered: float, since: float,
               in_pot: float, putty: float, wet: float) -> tuple:
        windows = self.windows
        share = windows.share
        lasts = share * (windows.pot(in_pot) if putty else windows.cup(in_pot))
        # in time at 25 degC first, so that a changing temperature costs one reckoning for each end of a window
        soft = film = 1e30  # of what there is not
        if profile.constant:
            pace = profile.pace_held
            pot = lasts - placed * pace
            if putty:
                soft = share * windows.soft - rolled * pace
            if wet:
                film = share * windows.film - (covered - since) * pace
        else:
            seen = self.seen
            if seen is None or seen[0] != start or seen[1] is not profile:
                seen = self.seen = (start, profile, profile.ahead(start, share * windows.soft, 1.0)[3])
            gained = seen[2]
            pot = lasts - gained(placed)
            if putty:
                soft = share * windows.soft - gained(rolled)
            if wet:
                film = share * windows.film - gained(covered) + (gained(since) if since else 0.0)
        if pot <= soft and pot <= film:
            least, limit, end = pot, POT if putty else CUP, placed
        elif soft <= film:
            least, limit, end = soft, SOFT, rolled
        else:
            least, limit, end = film, FILM, covered
        return least / (pace if profile.constant else profile.pace(start + end)), limit

    def slack_of(self, laid: Laid, start: float) -> tuple:
        """The same for a group that is mixed at another time."""
        return self.slack(start, laid, laid.placed, laid.rolled, laid.covered,
                          0.0 if laid.one_mix else laid.wet_start)

    def next_start(self, laid: Laid, start: float) -> float:
        """When the batch after this one may be mixed [s]: peel ply down and a pause, or by somebody else meanwhile."""
        crew = self.crew
        after = laid.covered + crew.pause
        if crew.mixer:
            # putty alone leaves nothing more to mix
            mixed = 0.0 if not laid.wet else laid.wet_start + (0.0 if laid.one_mix else crew.mix_wet)
            begins = crew.mix_putty
            if laid.last < len(self.pieces) and not self.pieces[laid.last].putty:
                begins = self.mixed
            after = max(after - begins, mixed, laid.placed)
        return start + after
