"""Advice: which limit binds a plan, and what would really help, found by planning anew with that one thing changed."""
from collections import namedtuple

from ..catalogue.plans import COOLER, EARLIER, SLOWER
from ..equations import grouping
from ..equations.laying import CUP, FILM, POT, SIZE, SOFT, Crew, Laying, Windows
from ..equations.temperature_profile import Profile
from .working_times import WorkingTimes

LIMITS = (POT, CUP, SOFT, FILM, SIZE)  # of two that end as many batches the first is named

# limit: of LIMITS; ended: batches that it ends; all_ended: batches that any limit ends, 0 where one batch takes all
Binding = namedtuple("Binding", ("limit", "ended", "all_ended"))
# name: "helper", "shade", "cooler", "earlier", "slower" or "bags"; work: the `Laying` so changed; earlier: start
# earlier by [s];
# bags: whether the crew fills bags with putty, else cups alone
Change = namedtuple("Change", ("name", "work", "earlier", "bags"))
# name, bags: as in `Change`; batches: of the plan so changed
Help = namedtuple("Help", ("name", "bags", "batches"))


def binding(crews: "list[tuple[Laying, list, list[float]]]") -> Binding:
    """The limit that ends most batches when each reaches as far as it can: what fails with one piece more.

    crews: of `day.Plan`; where one batch takes all, it is the scarcest window
    """
    ended: dict[str, int] = {}
    scarcest = crews[0][1][0]
    for work, found, starts in crews:
        run, _ = grouping.furthest(work, starts[0])
        for laid, start in zip(run, grouping.starts_of(work, run, starts[0])):
            failed = work.failed(laid.first, start, laid.last + 1)
            if failed is not None:
                ended[failed.limit] = ended.get(failed.limit, 0) + 1
        for laid in found:
            if laid.slack < scarcest.slack:
                scarcest = laid
    if not ended:
        return Binding(scarcest.limit, 0, 0)
    most = max([ended[limit] for limit in ended])
    limit = next(iter([limit for limit in LIMITS if ended.get(limit, 0) == most]))
    return Binding(limit, most, sum([ended[key] for key in ended]))


def slower_hardener(windows: Windows, times: float) -> Windows:
    """Working times of a hardener that is slower by a factor."""
    return Windows(lambda mass: times * windows.pot(mass), lambda mass: times * windows.cup(mass), windows.soft * times,
                   windows.film * times, windows.share)


def two_bags(windows: Windows) -> Windows:
    """The putty of each batch in two bags of half the mass, the wet-out resin of tape alone in two cups."""
    return Windows(lambda mass: windows.pot(mass / 2), lambda mass: windows.cup(mass / 2), windows.soft,
                   windows.film, windows.share)


def cooler(profile: Profile, less: float) -> Profile:
    """The whole day cooler by so much [K]."""
    return Profile(tuple([(time, temperature - less) for time, temperature in profile.points]), profile.doubling)


def changes(work: Laying, times: WorkingTimes) -> "list[Change]":
    """What could be changed about a crew's work, one thing at a time."""
    profile, bags = times.profile, bool(work.putty[-1])
    found = []
    if not work.crew.pair:
        crew = Crew(work.crew.mix_putty, work.crew.mix_wet, work.crew.pause, True, False)
        found.append(Change("helper", work.changed(crew=crew), 0.0, bags))
    if times.sun.flux:
        found.append(Change("shade", work.changed(windows=times.in_shade().windows()), 0.0, bags))
    if profile.constant:
        shade = cooler(profile, COOLER)
        shaded = work.changed(profile=shade, windows=times.changed(shade).windows())
        found.append(Change("cooler", shaded, 0.0, bags))
    else:
        found.append(Change("earlier", work, EARLIER, bags))
    found.append(Change("slower", work.changed(windows=slower_hardener(work.windows, SLOWER)), 0.0, bags))
    found.append(Change("bags", work.changed(windows=two_bags(work.windows)), 0.0, bags))
    return found


def helps(works: "list[Laying]", starts: "list[float]", times: WorkingTimes, batches: int) -> "list[Help]":
    """The changes that make the batches fewer, best first.

    works: of each crew; starts: of each [s]; batches: of the plan as it is
    """
    sums: list[Help | None] = []
    for work, start in zip(works, starts):
        for place, change in enumerate(changes(work, times)):
            if start - change.earlier < times.profile.points[0][0] and change.earlier:
                continue  # before the first temperature that is known
            run, failed = grouping.furthest(change.work, start - change.earlier)
            while len(sums) <= place:
                sums.append(None)
            old = sums[place] or Help(change.name, change.bags, 0)
            count = None if failed is not None or old.batches is None else old.batches + len(run)
            sums[place] = Help(old.name, old.bags, count)
    better = [(one.batches, place, one) for place, one in enumerate(sums)
              if one is not None and one.batches is not None and one.batches < batches]
    return [one for _, _, one in sorted(better)]
