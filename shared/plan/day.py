"""The day: typed values to crews, each with its batches and their starts."""

from collections import namedtuple

from ..catalogue.plans import MOST_BATCHES, MOST_PARTS, MOST_WORK
from ..catalogue.rates import POSITIONS, RATES
from ..catalogue.ratios import AIM
from ..clock.hot_pot import largest_pot
from ..clock.sun import sun_of
from ..equations import grouping
from ..equations.laying import Crew, Laid, Laying, Mixing, Piece, Windows, in_pot
from ..equations.temperature_profile import Profile
from ..equations.weighing import smallest_batch
from ..forms.clock_times import on_the_clock
from ..forms.memo import once
from ..forms.types import Values
from ..mix.ratio import basis
from ..mix.ratio_doubt import step_of
from ..things.own_timings import read_timings
from ..things.work_rates import factors, paces
from . import progress
from .working_times import WorkingTimes

# why a mix is no larger: typed; what stays calm; what the scale measures; but for one piece by itself; not held at all
TYPED, CALM, COARSE, ALONE, NOT = "typed", "calm", "coarse", "alone", "not"
# most: the largest mix [kg], None: only the time decides; alone: one piece by itself may be more; why: TYPED ..
Limit = namedtuple("Limit", ("most", "alone", "why"))
# why: TYPED ..; most: the largest mix wanted [kg]; calm: what does not run away [kg]; putty: whether there is any
WhyLargest = namedtuple("WhyLargest", ("why", "most", "calm", "putty"))
# typed: the name that was typed, "" where there is none; place: of its row, from 0; part: from 0, of so many parts;
# face: of its seam, a key of `joints.FACES`, or ""
Named = namedtuple("Named", ("typed", "place", "part", "parts", "face"))
# name: `Named`; parts: into how many it is cut; limit, wet: what binds it whole, and its wet-out resin [kg]
Cut = namedtuple("Cut", ("name", "parts", "limit", "wet"))
PIECES, BATCHES = "pieces", "batches"
OF_PUTTY = ("place", "tool", "clean")  # the rest is work on tape
EACH_LAYER = ("wet", "lay", "roll")  # work done again for each layer of tape; peel ply goes over the last


def profile(values: Values) -> Profile:
    """The temperature over the clock as typed."""
    if values["temperature_is"] == "constant":
        return Profile(((0.0, values["temperature"]),), values["doubling"])
    times = on_the_clock([point["at"] for point in values["points"]])
    return Profile(
        tuple([(time, point["temperature"]) for time, point in zip(times, values["points"])]), values["doubling"]
    )


def smallest(values: Values) -> float:
    """The smallest mix of liquids that the scale holds in ratio [kg]."""
    if values["smallest"] is not None:
        return values["smallest"]
    system = values["system"]
    return smallest_batch(basis(system).weight_parts, step_of(values["scale"]), system["tolerance"] or AIM)


def has_putty(values: Values) -> bool:
    """Whether any piece takes putty; else there is no bag and no filler."""
    return bool([1 for row in values["pieces"] if row["putty"]])


def lowest(values: Values) -> float:
    """The smallest mix that the scale measures in ratio [kg], of putty with its filler; wet-out resin takes no more."""
    return smallest(values) * (1 + values["filler"] if has_putty(values) else 1)


def calm(values: Values) -> float:
    """What bag and cup each hold without running away at the warmest of the day [kg]; no bag where none is filled."""
    cup = once(values, "calm_cup", lambda: _calm(values, "cup", 0.0))
    if not has_putty(values):
        return cup
    return min(once(values, "calm_bag", lambda: _calm(values, "bag", values["filler"] / (1 + values["filler"]))), cup)


def _calm(values: Values, container: str, filler: float) -> float:
    warmest = max([point[1] for point in profile(values).points])
    return largest_pot(values["system"], container, warmest, filler=filler, timings=read_timings(values["timings"]),
                       sun=sun_of(values))


def largest(values: Values) -> float:
    """The largest mix that is wanted, putty with its filler [kg]: as typed, else what stays calm; never less than the
    scale can measure, so that a coarse scale has a plan too."""
    return max(calm(values), lowest(values)) if values["most"] is None else values["most"]


def limits(values: Values) -> "tuple[Limit, ...]":
    """Each limit to try in turn, until the work fits: `Limit`. One that nobody typed never makes a plan impossible."""
    if values["most"] is not None:
        return (Limit(values["most"], False, TYPED),)
    most = largest(values)
    why = CALM if most <= calm(values) else COARSE
    return Limit(most, False, why), Limit(most, True, ALONE), Limit(None, True, NOT)


def why_largest(values: Values, limit: Limit) -> WhyLargest:
    """Why no mix is larger, or why it is, all the same."""
    return WhyLargest(limit.why, largest(values), calm(values), has_putty(values))


def hands(values: Values) -> int:
    """How many people: as typed for the day, or the crew's own."""
    return int(values["people"] or values["crew"]["hands"])


def _kind(row: Values) -> "tuple":
    """What a row is but for its name and its place."""
    return row["length"], row["putty"], row["wet"], row["layers"], row["position"]


def piece(row: Values, speeds: "list[float]", position: "dict[str, float]", cut: int = 1, overlap: float = 0.0,
          part: int = 0) -> Piece:
    """A row of the form as work: how long each step takes. cut: into how many equal parts; part: which of them."""
    length = (row["length"] + (cut - 1) * overlap) / cut
    layers = row["layers"]
    # what has no putty is not placed and tooled, what has no tape not wet out, laid and covered
    times = [length * (layers if rate[0] in EACH_LAYER else 1) / (speed * position[row["position"]])
             if row["putty" if rate[0] in OF_PUTTY else "wet"] else 0.0 for rate, speed in zip(RATES, speeds)]
    name = Named(row["name"], row["place"], part, cut, row["face"])
    return Piece(*([name, length, row["putty"] * length, row["wet"] * length] + times))


def crew(values: Values, people: int) -> Crew:
    """Two work as a pair; an odd third one mixes."""
    return Crew(values["mix_putty"], values["mix_wet"], values["pause"], people > 1, people > 2 and people % 2 == 1)


def laying(values: Values, pieces: "list[Piece]", people: int, windows: Windows, warmth: Profile,
           limit: Limit) -> Laying:
    """The work of one crew."""
    mixing = Mixing(values["left_putty"], values["left_wet"], values["spare"], smallest(values), limit.most,
                    values["filler"], values["one_mix"] == "sound", limit.alone)
    return Laying(pieces, crew(values, people), windows, mixing, warmth)


def _rooms(values: Values, most: float) -> "list[float]":
    """What goes into one mix of that size beside what stays behind and the spare [kg]: (putty, wet-out resin)."""
    return [(most - values[left]) / (1 + values["spare"]) for left in ("left_putty", "left_wet")]


def _parts_by_size(values: Values, row: Values, most: float) -> int:
    """In how many parts a piece is cut at least, so that none takes more than the largest mix [kg]."""
    rooms = _rooms(values, most)
    longest = min([room / row[name] if row[name] else 1e30 for room, name in zip(rooms, ("putty", "wet"))])
    parts = 1
    while parts < MOST_PARTS and (row["length"] + (parts - 1) * values["overlap"]) / parts > longest * (1 + 1e-6):
        parts += 1
    return parts


def surely_too_many(values: Values, most: float, people: int) -> bool:
    """Whether mixes of at most so much [kg] are more pieces or batches than a plan takes, whatever the time."""
    rows = values["pieces"]
    uses = [(room, name) for room, name in zip(_rooms(values, most), ("putty", "wet"))
            if [1 for row in rows if row[name]]]
    if min([room for room, _ in uses]) <= 0:
        return True
    if values["long"] == "cut" and sum([_parts_by_size(values, row, most) for row in rows]) > MOST_WORK:
        return True
    batches = max([sum([row["length"] * row[name] for row in rows]) / room for room, name in uses])
    return batches > MOST_BATCHES * max(1, people // 2)


def cut_pieces(values: Values, people: int, windows: Windows, warmth: Profile,
               limit: Limit) -> "tuple[Laying, list[Cut], list[Laid]]":
    """All pieces as work at one temperature, those longer than the reach cut into as few equal parts as can be laid.

    returns: (work, cuts, hopeless); hopeless: groups no cut can save
    """
    speeds, position = [one.rate for one in paces(values)], factors(POSITIONS)
    whole = _whole_pieces(values, speeds, position)
    work = laying(values, whole, people, windows, warmth, limit)
    if grouping.furthest(work, 0.0)[1] is None:  # what can be laid with others can be laid alone
        return work, [], []
    pieces, cuts, hopeless, alike = [], [], [], {}
    for place, row in enumerate(values["pieces"]):
        kind, found = _kind(row), [whole[place]]
        if kind not in alike:
            failed, held = work.one_piece(place)
            parts = 1
            if not held and values["long"] == "cut" and limit.most is not None and not limit.alone:
                parts = max(1, _parts_by_size(values, row, limit.most) - 1)  # fewer are surely too large
            while not held and values["long"] == "cut" and parts < MOST_PARTS:
                parts += 1
                first = piece(row, speeds, position, parts, values["overlap"])  # they are all alike
                held = laying(values, [first], people, windows, warmth, limit).one_piece(0)[1]
            alike[kind] = parts, failed, held
        parts, failed, held = alike[kind]
        if not held:
            hopeless.append(failed)
        elif parts > 1:
            cuts.append(Cut(whole[place].name, parts, failed.limit, failed.wet))
            found = [piece(row, speeds, position, parts, values["overlap"], part) for part in range(parts)]
        pieces.extend(found)
        if len(pieces) > MOST_WORK:
            raise TooMany(PIECES)
    if hopeless:
        return work, cuts, hopeless  # the group that failed names its piece by its place in what was typed
    return laying(values, pieces, people, windows, warmth, limit) if cuts else work, cuts, hopeless


def _whole_pieces(values: Values, speeds: "list[float]", position: "dict[str, float]") -> "list[Piece]":
    """The pieces uncut; those that are alike but for their names, as copies are, are looked at once."""
    alike: dict[tuple, Piece] = {}
    whole = []
    for row in values["pieces"]:
        known = alike.get(_kind(row))
        if known is None:
            known = alike[_kind(row)] = piece(row, speeds, position)
        whole.append(Piece(*((Named(row["name"], row["place"], 0, 1, row["face"]),) + tuple(known)[1:])))
    return whole


class TooMany(Exception):
    """More than a plan takes. what: PIECES, of MOST_WORK, or BATCHES, of MOST_BATCHES"""

    def __init__(self, what: str) -> None:
        super().__init__(what)
        self.what = what


class Plan:
    """A day's work as planned: for each crew its laying, its batches and their starts."""

    def __init__(self, values: Values, people: "int | None" = None, counted: bool = False) -> None:
        """counted: the number of batches is all that is wanted, and the groups are those found soonest"""
        self.values, self.counted = values, counted
        self.people = hands(values) if people is None else people
        self.profile = profile(values)
        self.times = WorkingTimes(values, self.profile)
        self.windows = self.times.windows()
        self.coolest = self.profile if self.profile.constant else self.profile.held(
            min([point[1] for point in self.profile.points]))
        self.warmest = self.profile.held(max([point[1] for point in self.profile.points]))
        self.crews: list[tuple[Laying, list[Laid], list[float]]] = []
        self.failed: Laid | None = None
        self.standing: list[progress.Batch] | None = None
        self.parts: tuple[Laying, list[tuple[Laying, float]]] | None = None
        self.stuck: Laying | None = None  # the work of the crew whose group failed
        self.hopeless: list[Laid] = []
        self.cuts: list[Cut] = []
        if not values["pieces"]:
            return
        self.limit, warmth, cut = self._fitting()
        if not cut:
            self._cut(warmth)
        if self.hopeless:
            return
        if not self._group() and warmth is self.coolest and self._may_cut_shorter():
            # a piece that can be laid in the cool of the morning only: cut for the heat of the day
            self._cut(self.warmest)
            if not self.hopeless:
                self._group()

    def _may_cut_shorter(self) -> bool:
        return not self.profile.constant and self.values["long"] == "cut"

    def _cut(self, warmth: Profile) -> None:
        self.whole, self.cuts, self.hopeless = cut_pieces(
            self.values, self.people, self.windows, warmth, self.limit)

    def _fitting(self) -> "tuple[Limit, Profile, bool]":
        """The first limit under which all is laid in time, the temperature the pieces are cut for, whether they are."""
        tried = limits(self.values)
        for self.limit in tried[:-1]:
            if not self.limit.alone and surely_too_many(self.values, self.limit.most, self.people):
                continue
            for warmth in (self.coolest, self.warmest) if self._may_cut_shorter() else (self.coolest,):
                try:
                    self._cut(warmth)
                except TooMany:  # pieces, cut so small
                    continue
                if not self.hopeless and self._fits():
                    return self.limit, warmth, True
        return tried[-1], self.coolest, False

    def _fits(self) -> bool:
        for work, start in self._parts():
            run, failed = grouping.furthest(work, start)
            if failed or len(run) > MOST_BATCHES:
                return False
        return True

    def _parts(self) -> "list[tuple[Laying, float]]":
        """(work, start of the first mixing [s]) of each crew."""
        parts = self.parts
        if parts is None or parts[0] is not self.whole:
            parts = self.parts = (self.whole, self._parts_of_whole())
        return parts[1]

    def _parts_of_whole(self) -> "list[tuple[Laying, float]]":
        parts = runs(self.whole.pieces, self.people)
        made = [self.work()] if len(parts) == 1 else [
            laying(self.values, pieces, self.people, self.windows, self.profile, self.limit) for pieces in parts]
        # one scale: one crew after the other
        mixing = self.values["mix_putty" if has_putty(self.values) else "mix_wet"]
        return [(work, self.values["start"] + place * mixing) for place, work in enumerate(made)]

    def _group(self) -> bool:
        self.crews, self.failed, self.stuck = [], None, None
        for work, start in self._parts():
            run, failed = grouping.furthest(work, start)
            found = run if self.counted or len(run) > MOST_BATCHES else grouping.grouped(work, start)
            if found is None or (self.counted and failed):
                self.crews, self.failed, self.stuck = [], failed, work
                return False
            if len(found) > MOST_BATCHES:
                raise TooMany(BATCHES)
            self.crews.append((work, found, grouping.starts_of(work, found, start)))
        return True

    def work(self) -> Laying:
        """All pieces as the work of one crew, whether it can be done or not."""
        return self.whole.changed(profile=self.profile)

    def followed(self) -> "list[progress.Batch]":
        """The batches as they stand, made once for the lines and the figure."""
        standing = self.standing
        if standing is None:
            exact = self.times.exact_windows(self.fillers())
            crews = [(work.changed(windows=exact), found, starts) for work, found, starts in self.crews]
            standing = self.standing = progress.followed(crews, self.values)
        return standing

    def fillers(self) -> "dict[float, float]":
        """Share of the filler [-] by the mass that a batch has in its bag or cup [kg]."""
        share = self.values["filler"] / (1 + self.values["filler"])
        return dict([(in_pot(laid), share * laid.putty / in_pot(laid)) for _, found, _ in self.crews for laid in found])

    def count(self) -> int:
        """How many batches; 0: there is no plan."""
        return sum([len(found) for _, found, _ in self.crews])

    def end(self) -> float:
        """When the last peel ply is down [s after the first midnight]."""
        return max([starts[-1] + found[-1].covered for _, found, starts in self.crews])


def runs(pieces: "list[Piece]", people: int) -> "list[list[Piece]]":
    """The pieces of each pair: connected runs in laying order with about the same work in each."""
    pairs = min(max(1, people // 2), len(pieces))
    if pairs == 1:
        return [pieces]
    work = [sum([p.place, p.tool, p.clean, p.wetting, p.lay, p.roll, p.cover]) for p in pieces]
    whole, done = sum(work), 0.0
    found: list[list[Piece]] = [[]]
    for place, one in enumerate(pieces):
        left = len(pieces) - place
        wanted = pairs - len(found)  # crews that have nothing yet
        half = done + work[place] / 2
        if found[-1] and wanted and (half > whole * len(found) / pairs or left <= wanted):
            found.append([])
        found[-1].append(one)
        done += work[place]
    return found
