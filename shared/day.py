"""The day: typed values to crews, each with its batches and their starts."""

from . import grouping, under_way
from .catalogue.limits import AIM
from .catalogue.rates import POSITIONS, RATES
from .clock import on_the_clock
from .errors import InputError
from .laying import Crew, Laying, Mixing, Piece
from .paces import paces
from .profile import Profile
from .ratio import basis
from .weighing import smallest_batch
from .working_times import WorkingTimes

MOST_PARTS = 20
MOST_WORK = 120  # pieces, once the long ones are cut
MOST_BATCHES = 60  # of one plan; nobody lays as many in a day (own judgement)
EACH_LAYER = ("wet", "lay", "roll")  # work done again for each layer of tape; peel ply goes over the last


def profile(values) -> Profile:
    """The temperature over the clock as typed."""
    if values["temperature_is"] == "constant":
        return Profile(((0.0, values["temperature"]),), values["doubling"])
    times = on_the_clock([point["at"] for point in values["points"]])
    return Profile(
        tuple([(time, point["temperature"]) for time, point in zip(times, values["points"])]), values["doubling"]
    )


def smallest(values) -> float:
    """The smallest mix of liquids that the scale holds in ratio [kg]."""
    if values["smallest"] is not None:
        return values["smallest"]
    system = values["system"]
    return smallest_batch(basis(system).weight_parts, values["scale"]["step"], system["tolerance"] or AIM)


def hands(values) -> int:
    """How many people: as typed for the day, or the crew's own."""
    return int(values["people"] or values["crew"]["hands"])


def piece(row, speeds, position, cut=1, overlap=0.0, part=0):
    """A row of the form as work: how long each step takes. cut: into how many equal parts; part: which of them."""
    length = (row["length"] + (cut - 1) * overlap) / cut
    name = row["name"] or "Piece " + str(row["place"] + 1)
    if cut > 1:
        name += " ({} of {})".format(part + 1, cut)
    layers = row["layers"]
    times = [length * (layers if rate[0] in EACH_LAYER else 1) / (speed * position[row["position"]])
             for rate, speed in zip(RATES, speeds)]
    return Piece(*([name, length, row["putty"] * length, row["wet"] * length] + times))


def crew(values, people) -> Crew:
    """Two work as a pair; an odd third one mixes."""
    return Crew(values["mix_putty"], values["mix_wet"], values["pause"], people > 1, people > 2 and people % 2 == 1)


def laying(values, pieces, people, windows, warmth) -> Laying:
    """The work of one crew."""
    mixing = Mixing(values["left_putty"], values["left_wet"], values["spare"], smallest(values), values["most"],
                    values["filler"], values["one_mix"] == "sound")
    return Laying(pieces, crew(values, people), windows, mixing, warmth)


def cut_pieces(values, people, windows, warmth):
    """All pieces as work at one temperature, those longer than the reach cut into as few equal parts as can be laid.

    returns: (work, cuts, hopeless); cuts: (name, parts, the group that failed); hopeless: groups no cut can save
    """
    speeds, position = [one.rate for one in paces(values)], dict([(row[0], row[2]) for row in POSITIONS])
    whole = [piece(row, speeds, position) for row in values["pieces"]]
    work = laying(values, whole, people, windows, warmth)
    if grouping.furthest(work, 0.0)[1] is None:  # what can be laid with others can be laid alone
        return work, [], []
    pieces, cuts, hopeless = [], [], []
    for place, row in enumerate(values["pieces"]):
        failed, held = work.one_piece(place)
        parts, found = 1, [whole[place]]
        while not held and values["long"] == "cut" and parts < MOST_PARTS:
            parts += 1
            first = piece(row, speeds, position, parts, values["overlap"])  # they are all alike
            held = laying(values, [first], people, windows, warmth).one_piece(0)[1]
        if not held:
            hopeless.append(failed)
        elif parts > 1:
            cuts.append((whole[place].name, parts, failed))
            found = [piece(row, speeds, position, parts, values["overlap"], part) for part in range(parts)]
        pieces.extend(found)
        if len(pieces) > MOST_WORK:
            raise InputError("pieces", "Cut so that each can be laid in time, these are more than {} pieces. Plan "
                             "fewer seams at a time, one day's work".format(MOST_WORK))
    return laying(values, pieces, people, windows, warmth) if cuts else work, cuts, hopeless


def in_bag(laid):
    """What a batch has in its bag [kg]: with one mix for both, the wet-out resin until it is poured off."""
    return laid.putty + laid.wet if laid.one_mix else laid.putty


class Plan:
    """A day's work as planned: for each crew its laying, its batches and their starts."""

    def __init__(self, values, people=None):
        self.values = values
        self.people = hands(values) if people is None else people
        self.profile = profile(values)
        self.times = WorkingTimes(values, self.profile)
        self.windows = self.times.windows()
        self.coolest = self.profile.held(min([point[1] for point in self.profile.points]))
        self.warmest = self.profile.held(max([point[1] for point in self.profile.points]))
        self.crews, self.failed, self.standing = [], None, None
        self.whole, self.cuts, self.hopeless = cut_pieces(values, self.people, self.windows, self.coolest)
        if self.hopeless:
            return
        if not self._group() and not self.profile.constant and values["long"] == "cut":
            # a piece that can be laid in the cool of the morning only: cut for the heat of the day
            self.whole, self.cuts, self.hopeless = cut_pieces(values, self.people, self.windows, self.warmest)
            if not self.hopeless:
                self._group()

    def _group(self):
        self.crews, self.failed = [], None
        parts = runs(self.whole.pieces, self.people)
        for place, pieces in enumerate(parts):
            start = self.values["start"] + place * self.values["mix_putty"]  # one scale: one crew after the other
            work = self.work()
            if len(parts) > 1:
                work = laying(self.values, pieces, self.people, self.windows, self.profile)
            run = grouping.furthest(work, start)[0]
            found = grouping.grouped(work, start) if len(run) <= MOST_BATCHES else run
            if found is None:
                self.crews, self.failed = [], grouping.furthest(work, start)[1]
                return False
            if len(found) > MOST_BATCHES:
                raise InputError("pieces", "These seams take more than {} batches. Plan fewer of them at a time, one "
                                 "day's work".format(MOST_BATCHES))
            self.crews.append((work, found, grouping.starts_of(work, found, start)))
        return True

    def work(self):
        """All pieces as the work of one crew, whether it can be done or not."""
        return self.whole.changed(profile=self.profile)

    def followed(self):
        """The batches as they stand, made once for the lines and the figure."""
        if self.standing is None:
            exact = self.times.exact_windows(self.fillers())
            crews = [(work.changed(windows=exact), found, starts) for work, found, starts in self.crews]
            self.standing = under_way.followed(crews, self.values)
        return self.standing

    def fillers(self):
        """Share of the filler [-] by the mass that a batch has in its bag [kg]."""
        share = self.values["filler"] / (1 + self.values["filler"])
        return dict([(in_bag(laid), share * laid.putty / in_bag(laid)) for _, found, _ in self.crews for laid in found])

    def count(self):
        """How many batches; 0: there is no plan."""
        return sum([len(found) for _, found, _ in self.crews])

    def end(self):
        """When the last peel ply is down [s after the first midnight]."""
        return max([starts[-1] + found[-1].covered for _, found, starts in self.crews])


def runs(pieces, people):
    """The pieces of each pair: connected runs in laying order with about the same work in each."""
    pairs = min(max(1, people // 2), len(pieces))
    if pairs == 1:
        return [pieces]
    work = [sum([p.place, p.tool, p.clean, p.wetting, p.lay, p.roll, p.cover]) for p in pieces]
    whole, done, found = sum(work), 0.0, [[]]
    for place, one in enumerate(pieces):
        left = len(pieces) - place
        wanted = pairs - len(found)  # crews that have nothing yet
        half = done + work[place] / 2
        if found[-1] and wanted and (half > whole * len(found) / pairs or left <= wanted):
            found.append([])
        found[-1].append(one)
        done += work[place]
    return found
