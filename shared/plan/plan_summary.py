"""Summary: what a plan says before its batches: how many, until when, what binds, what helps, what to question."""

from ..catalogue.cautions import STANDING
from ..catalogue.losses import BY_KEY
from ..catalogue.plans import LONG_DAY, MOST_TOLD, POINTS_GAP
from ..clock.usable import contradictions
from ..clock.usable_lines import questions
from ..equations.laying import CUP, POT, SIZE, SOFT, bounds_of, in_one_container, in_pot
from ..things import work_rates
from ..things.lowest_temperature import least_warmth
from ..things.own_timings import counted_text, read_timings
from ..words.lines import ANSWER, ASK, BESIDE, MORE, WARN, line, words
from ..words.numbers import DOWN, UP, shown
from ..words.units import told
from . import advice
from .batch_counts import gloves, of_plan
from .batches import batch_lines, count_text, latest, moment
from .day import has_putty, why_largest
from .smallest_mix import surplus_in_all, too_large
from .steps import STEPS
from .working_times import NAMES, timed

HEAT = next(text for name, _, text, _, _ in STANDING if name == "heat")
MOST_HELPS = 3
MOST_NAMED = 4  # pieces cut alike that are named; each part has its piece's name in its batch


def lines(values, plan):
    """All lines of a plan, what matters first."""
    found = _cold(values, plan) + _cuts(values, plan)
    if not plan.crews:
        return found + _no_plan(values, plan)
    batches = plan.followed()
    found = _summary(values, plan, batches) + found + _questions(values, plan, batches)
    told_fully = MOST_TOLD
    for batch in batches:
        found.extend(batch_lines(values, plan, batch, told_fully > 0))
        told_fully -= not batch.finished
    return found


def _summary(values, plan, batches):
    end = max([batch.steps[-1].end for batch in batches])
    count = len(batches)
    crews = "" if len(plan.crews) == 1 else ", " + str(len(plan.crews)) + " pairs side by side"
    found = [
        line("batches", "To mix", count, "", count_text(count) + crews, rough=_remembered(values, plan), rank=ANSWER),
        line("end", "Last peel ply down" if any([batch.laid.wet for batch in batches]) else "Last edges clean",
             end, "s", moment(plan, end), rank=ANSWER,
             rough="at these rates, " + shown(values["pause"] / 60) + " min between batches; rounded up"),
    ]
    limit, ended, all_ended = advice.binding(plan)
    what, why = advice.words_of(limit)
    if all_ended:
        text = what + ": it ends " + (
            "{} of {}".format(ended, count_text(all_ended)) if ended < all_ended else "each batch but the last")
    else:
        text = what + ": it has the least left, though all goes into one batch"
        if count > 1:
            text = what + ": it has the least left"
    if limit != SIZE:
        most = _largest_of(limit, batches)
        why += " Counted " + plan.times.told(limit, most, plan.profile.warmest, plan.fillers().get(most, 0.0))[1]
    found.append(words("binds", "What binds", text, rough=why))
    least = min([batch.slack for batch in batches])
    left = shown(least / 60, 0, DOWN) + " min" if least >= 0 else "missed by " + shown(-least / 60, 0, UP) + " min"
    found.append(
        line("slack", "Least left of a window", least, "s", left,
             rough="beyond the " + shown((1 - values["share"]) * 100) + "% kept back")
    )
    big = max([in_one_container(batch.laid.putty, batch.laid.wet, batch.laid.one_mix, values["filler"])
               for batch in batches])
    found.append(
        line("largest", "Largest mix", big, "kg", told(big, "g", values["units"], UP), caution=HEAT,
             rough=("filler counted in; " if has_putty(values) else "") + why_largest(values, plan.limit))
    )
    found.extend(surplus_in_all(values, batches))
    ready = of_plan(plan)
    things = [_counted(ready.mixes, "cup")] + ([_counted(ready.bags, "bag")] if ready.bags else [])
    things.append(_counted(gloves(plan.people, ready.batches), "pair") + " of gloves")
    found.append(words("ready", "Lay ready", ", ".join(things), rank=MORE,
                       rough="a cup for each mix" + (", a bag for each batch of putty" if ready.bags else "")))
    rates, whence = work_rates.told(work_rates.paces(values), values["units"])
    found.append(words("rates", "Rates, one person", rates, whence, rank=MORE))
    return found + _windows(values, plan, batches) + _helps(values, plan, count)


def _counted(count, one):
    return str(count) + " " + one + ("" if count == 1 else "s")


def _largest_of(limit, batches):
    """The largest mass that a window hangs on, of the batches that it bounds [kg]."""
    return max([in_pot(batch.laid) for batch in batches if limit in bounds_of(batch.laid)])


def _windows(values, plan, batches):
    """How long each window is, and by which of two estimates: at the warmest of the day, for the largest bag."""
    warmest = plan.profile.warmest
    found = []
    for limit, label in NAMES:
        if not [1 for batch in batches if limit in bounds_of(batch.laid)]:
            continue
        most = _largest_of(limit, batches)
        span, by = plan.times.told(limit, most, warmest, plan.fillers().get(most, 0.0))
        text = shown(span / 60, 0, DOWN) + " min at " + told(warmest, "degC", values["units"], digits=2)
        if limit == POT:
            label = told(most, "g", values["units"]) + " in the bag"
        elif limit == CUP:
            label = told(most, "g", values["units"]) + " in the cup"
        found.append(line("window_" + limit, label, span, "s", text, by, rank=MORE))
    return found


def _remembered(values, plan):
    """Which figures of the plan are from memory."""
    found = []
    if values["exponent"] is None:
        found.append("quick rule")
    if values["soft"] is None or (values["film"] is None and values["system"]["film_time"] is None):
        found.append("windows")
    if any([one.whence == work_rates.REMEMBERED for one in work_rates.paces(values)]):
        found.append("rates")
    if not found:
        return "by your own working times and rates"
    text = ", ".join(found) + " from memory"
    return text if plan.times.own else text + "; your own timings go before them"


def words_of(laid):
    """What ends a group, in words: (what, why). A cove without tape is only tooled while it is soft."""
    what, why = advice.words_of(laid.limit)
    return (what, "The cove must be tooled while it is soft.") if laid.limit == SOFT and not laid.wet else (what, why)


def _helps(values, plan, count):
    works = [work for work, _, _ in plan.crews]
    starts = [starts[0] for _, _, starts in plan.crews]
    if count <= len(works):
        return []
    better = advice.helps(works, starts, plan.times, count)
    found = [
        line("helps_" + name, "Would help", fewer, "", label + ": " + count_text(fewer), "instead of " + str(count))
        for name, label, fewer in better[:MOST_HELPS]
    ]
    return found or [
        words("helps_nothing", "Would help", "Nothing listed here makes it fewer batches",
              rough="helper, cooler hours, slower hardener and small {} were tried".format(
                  "bags" if has_putty(values) else "cups"), rank=MORE)
    ]


def _cold(values, plan):
    least, remembered = least_warmth(values["system"])
    coldest = min([point[1] for point in plan.profile.points])
    if coldest >= least:
        return []
    here, bound = [told(one, "degC", values["units"], places=1) for one in (coldest, least)]
    return [
        line("cold", "Too cold for this hardener", coldest, "K",
             "{} is below its lowest, {}. Warm the place, or take a faster hardener.".format(here, bound),
             rough=remembered + "; the label's own figure goes before it" if remembered else "the label's", rank=WARN)
    ]


def _cuts(values, plan):
    alike, order, lapped = {}, [], told(values["overlap"], "mm", values["units"], digits=2)
    for name, parts, failed in plan.cuts:
        kind = parts, words_of(failed)[0]
        if kind not in alike:
            order.append(kind)
        alike.setdefault(kind, []).append(name)
    found = []
    for parts, what in order:
        names = alike[(parts, what)]
        text = ", ".join(names[:-1]) + " and " + names[-1] + " are each" if len(names) > 1 else names[0] + " is"
        if len(names) > MOST_NAMED:
            text = ", ".join(names[:MOST_NAMED]) + " and {} more are each".format(len(names) - MOST_NAMED)
        found.append(words("cut", "Too long for one batch", "{} cut in {}, tape lapped {}.".format(text, parts, lapped),
                           rough=what + " binds; overlap " + BY_KEY["overlap"].mark, rank=WARN))
    return found


def _no_plan(values, plan):
    """No grouping holds: which piece, which limit, and what to change."""
    failed = plan.hopeless[0] if plan.hopeless else plan.failed
    # of the crew that failed: the places of its pieces are its own
    work = plan.stuck or plan.work()
    if failed and failed.limit == SIZE:
        return too_large(values, work, failed)
    what, why = words_of(failed) if failed else ("the changing temperature", "")
    name = work.pieces[failed.first].name if failed else "the pieces"
    over = shown(-failed.slack / 60, 0, UP) + " min too late for " if failed else ""
    found = [
        words("no_plan", "No plan", name + " cannot be laid in time: " + over + what + ".", rough=why, rank=WARN)
    ]
    if values["long"] == "whole":
        found.append(
            words("cut_it", "Change", "Cut it at a bulkhead or where an overlap may be, and plan again.", rank=BESIDE)
        )
    # one at a time: what would let the piece that failed be laid at all
    for name, label, changed, _ in advice.changes(work, plan.times):
        if failed and changed.one_piece(failed.first)[1]:
            found.append(words("helps_" + name, "Would help", label, rank=BESIDE))
    if len(found) == 1:
        found.append(
            words("change", "Change", "Shorter pieces, more hands, cooler hours and a slower hardener together.",
                  rank=BESIDE)
        )
    return found


def _questions(values, plan, batches):
    """What is asked back or warned of: a profile with a gap, a finish that is missed, steps told for no batch."""
    found = []
    points = plan.profile.points
    if not plan.profile.constant:
        for before, after in zip(points, points[1:]):
            if after[0] - before[0] > POINTS_GAP:
                found.append(
                    words(
                        "gap",
                        "Temperature",
                        "None typed between {} and {}: does it change evenly there?".format(
                            latest(values, before[0]), latest(values, after[0])
                        ),
                        rank=ASK,
                    )
                )
    end = max([batch.steps[-1].end for batch in batches])
    if values["temperature_is"] == "points" and end > points[-1][0] + 60:
        found.append(
            words(
                "after_profile",
                "Temperature",
                "After {} none was typed: the last one is taken to stay.".format(latest(values, points[-1][0])),
                rank=ASK,
            )
        )
    if end - values["start"] > LONG_DAY:
        text = "This is until {}. Plan the pieces of one day at a time, with the hours you can work.".format(
            moment(plan, end)
        )
        found.append(line("long_day", "More than a day?", end - values["start"], "s", text, rank=ASK))
    if values["finish"] is not None and end > values["finish"] + 1:
        found.append(
            line("too_late", "Not finished in time", end - values["finish"], "s",
                 shown((end - values["finish"]) / 60, 0, UP) + " min after " + latest(values, values["finish"])
                 + ". Leave batches for another day, whole ones.", rank=WARN)
        )
    typed = len(read_timings(values["timings"]))
    if typed:  # nothing clears them when another system is picked, and a slow one's would lengthen every window
        text = "Windows are counted {} typed on this plan, under Working times. Of another system? Empty the field."
        found.append(words("own_typed", "Own timings of this system?", text.format(counted_text(typed)), rank=ASK))
    found.extend(questions(contradictions(timed(values)), values["units"]))
    names = dict(STEPS)
    for row in values["done"]:
        number = int(row["batch"])
        if number > len(batches):
            found.append(
                words("no_batch", "Done so far", "There is no batch " + str(number) + " in this plan.", rank=ASK)
            )
        elif row["step"] not in [step.key for step in batches[number - 1].steps]:
            found.append(
                words(
                    "no_step",
                    "Done so far",
                    "Batch {}: '{}' is no step of its own here; tell the next one.".format(number, names[row["step"]]),
                    rank=ASK,
                )
            )
    return found
