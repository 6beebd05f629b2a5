"""Advice: which limit binds a plan, and what would really help, found by planning anew with that one thing changed."""

from ..catalogue.plans import COOLER, EARLIER, SLOWER
from ..equations import grouping
from ..equations.laying import CUP, FILM, POT, SIZE, SOFT, Crew, Windows
from ..equations.temperature_profile import Profile
from ..words.numbers import bare
from ..words.speech import spoken
from ..words.units import braces

BINDS = (
    (POT, "the putty in the bag", "The bag must be empty before it stiffens."),
    (CUP, "the wet-out resin in its cup", "The cup must be empty, onto the tray, before it stiffens."),
    (SOFT, "the soft cove", "The tape must be rolled while the cove is soft."),
    (FILM, "the wet-out resin", "The peel ply must be down while the resin on the tape is wet."),
    (SIZE, "the largest mix wanted", "No mix is larger than the largest wanted."),
)


def binding(plan):
    """The limit that ends most batches when each reaches as far as it can: what fails with one piece more.

    returns: (limit, batches that it ends, batches that any limit ends); where one batch takes all, the scarcest window
    """
    ended, scarcest = {}, None
    for work, found, starts in plan.crews:
        run, _ = grouping.furthest(work, starts[0])
        for laid, start in zip(run, grouping.starts_of(work, run, starts[0])):
            failed = work.failed(laid.first, start, laid.last + 1)
            if failed is not None:
                ended[failed.limit] = ended.get(failed.limit, 0) + 1
        for laid in found:
            if scarcest is None or laid.slack < scarcest.slack:
                scarcest = laid
    if not ended:
        return scarcest.limit, 0, 0
    most = max([ended[limit] for limit in ended])
    for limit, _, _ in BINDS:
        if ended.get(limit, 0) == most:
            return limit, most, sum([ended[key] for key in ended])


def slower_hardener(windows, times):
    """Working times of a hardener that is slower by a factor."""
    return Windows(lambda mass: times * windows.pot(mass), lambda mass: times * windows.cup(mass), windows.soft * times,
                   windows.film * times, windows.share)


def two_bags(windows):
    """The putty of each batch in two bags of half the mass, the wet-out resin of tape alone in two cups."""
    return Windows(lambda mass: windows.pot(mass / 2), lambda mass: windows.cup(mass / 2), windows.soft,
                   windows.film, windows.share)


def cooler(profile, less):
    """The whole day cooler by so much [K]."""
    return Profile(tuple([(time, temperature - less) for time, temperature in profile.points]), profile.doubling)


def changes(work, times):
    """What could be changed about a crew's work: (name, what to do, the work so changed, start earlier by [s]).

    times: the day's `WorkingTimes`
    """
    profile = times.profile
    found = []
    if not work.crew.pair:
        crew = Crew(work.crew.mix_putty, work.crew.mix_wet, work.crew.pause, True, False)
        found.append(("helper", "With a helper", work.changed(crew=crew), 0.0))
    if profile.constant:
        shade = cooler(profile, COOLER)
        shaded = work.changed(profile=shade, windows=times.changed(shade).windows())
        found.append(("cooler", "Start earlier or move to the shade, " + braces("K", COOLER) + " cooler", shaded, 0.0))
    else:
        found.append(("earlier", "Start " + spoken(bare(EARLIER / 3600, 1) + " h") + " earlier", work, EARLIER))
    slow = work.changed(windows=slower_hardener(work.windows, SLOWER))
    how = "half as slow again" if SLOWER == 1.5 else bare(SLOWER, 2) + " times as slow"
    found.append(("slower", "A hardener " + how, slow, 0.0))
    halved = work.changed(windows=two_bags(work.windows))
    bags = "bags" if work.putty[-1] else "cups"
    found.append(("bags", "Two small {} for each mix, or spread in a tray first".format(bags), halved, 0.0))
    return found


def helps(works, starts, times, batches):
    """The changes that make the batches fewer, best first: (name, what to do, batches then).

    works: `Laying` of each crew; starts: of each [s]; times: the day's `WorkingTimes`
    batches: of the plan as it is, None where there is none
    """
    sums = []
    for work, start in zip(works, starts):
        for place, (name, label, changed, earlier) in enumerate(changes(work, times)):
            if start - earlier < times.profile.points[0][0] and earlier:
                continue  # before the first temperature that is known
            run, failed = grouping.furthest(changed, start - earlier)
            while len(sums) <= place:
                sums.append(None)
            old = sums[place] or (name, label, 0)
            count = None if failed is not None or old[2] is None else old[2] + len(run)
            sums[place] = (name, label, count)
    better = [
        (count, place, name, label)
        for place, (name, label, count) in enumerate([found or ("", "", None) for found in sums])
        if count is not None and (batches is None or count < batches)
    ]
    return [(name, label, count) for count, _, name, label in sorted(better)]


def words_of(limit):
    """A limit as the screen says it: (what, why)."""
    for known, what, why in BINDS:
        if known == limit:
            return what, why
