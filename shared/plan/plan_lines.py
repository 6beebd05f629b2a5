"""Plan lines: what a plan says before its batches: how many, until when, what binds, what helps, what to question."""
from ..catalogue.cautions import STANDING
from ..catalogue.losses import BY_KEY
from ..catalogue.plans import COOLER, EARLIER, SLOWER
from ..clock.sun import said
from ..clock.sun_lines import SHADE_FIRST, WHERE, in_sun, not_said, shines
from ..clock.usable_lines import questions
from ..forms.types import Values
from ..mix.label_words import unconfirmed
from ..things import work_rates
from ..things.own_timings import counted_text
from ..words.lines import ANSWER, ASK, BESIDE, MORE, WARN, Line, line, words
from ..words.messages import message, quantity, sentences
from ..words.numbers import DOWN, UP, bare, shown
from ..words.speech import spoken
from ..words.units import braces, told
from .advice import CUP, FILM, POT, SOFT
from .batch_lines import batch_lines, latest, moment, no_less
from .done_so_far import STEPS
from .limit_lines import LIMITS, count_text, limit_words, piece_name, why_text
from .plan_found import Asked, Cuts, Found, NoPlan, Ready, Summary
from .smallest_mix import TooLarge
from .window_lines import window_text
from .working_times import Window

CAUTION = next(text for name, _, text, _, _ in STANDING if name == "heat")
MOST_NAMED = 4  # pieces cut alike that are named; each part has its piece's name in its batch
MEMORY = {"rule": "quick rule", "windows": "windows", "rates": "rates"}
FINER = "A finer scale, pumps or syringes"
HELPS = {"helper": "With a helper",
         "shade": "Shade over all of it",
         "cooler": "Start earlier or move to the shade, " + braces("K", COOLER) + " cooler",
         "earlier": "Start " + spoken(bare(EARLIER / 3600, 1) + " h") + " earlier",
         "slower": "A hardener " + ("half as slow again" if SLOWER == 1.5 else bare(SLOWER, 2) + " times as slow")}
BAGS, TRAY = "Two small {} for each mix", ", or spread in a tray first"
WINDOWS = {POT: "{} in the bag", CUP: "{} in the cup", SOFT: "The cove stays soft", FILM: "Wet tape stays wet"}


def say(found: Found, values: Values) -> "list[Line]":
    """All lines of a plan, what matters first."""
    lines = _cold(found, values) + _sun(values) + _cuts(found.cuts, values)
    if found.none:
        sun = shines(values)
        return lines + (_no_plan(found.none, sun) if found.none.why == "late" else _too_large(found.none, values))
    lines = _summary(found, values) + lines + _questions(found, values)
    for one in found.batches:
        lines.extend(batch_lines(values, found, one))
    return lines


def _summary(found: Found, values: Values) -> "list[Line]":
    all_of, units = found.summary, values["units"]
    crews = "" if all_of.crews == 1 else ", " + str(all_of.crews) + " pairs side by side"
    lines = [
        line("batches", "To mix", all_of.count, "", count_text(all_of.count) + crews, rough=_remembered(all_of),
             rank=ANSWER),
        line("end", "Last peel ply down" if all_of.wet else "Last edges clean", all_of.end, "s",
             moment(values, found.close, all_of.end), rank=ANSWER,
             rough="at these rates, " + shown(values["pause"] / 60) + " min between batches; rounded up"),
        _binds(all_of),
    ]
    least = all_of.slack
    left = shown(least / 60, 0, DOWN) + " min" if least >= 0 else "missed by " + shown(-least / 60, 0, UP) + " min"
    lines.append(line("slack", "Least left of a window", least, "s", left,
                      rough="beyond the " + shown((1 - all_of.share) * 100) + "% kept back"))
    lines.append(line("largest", "Largest mix", all_of.largest, "kg", told(all_of.largest, "g", units, UP),
                      caution=CAUTION, rough=("filler counted in; " if all_of.why.putty else "")
                      + why_text(all_of.why, units)))
    if all_of.over:
        why = ". {} measure less, more seams in a batch use it; tie holes and end grain first".format(FINER)
        lines.append(line("surplus", "More than needed, in all", all_of.over, "kg", told(all_of.over, "g", units, UP),
                          no_less(all_of.least, units) + why, rank=BESIDE))
    lines.append(_lay_ready(all_of.ready))
    rates, whence = work_rates.told(all_of.paces, units)
    lines.append(words("rates", "Rates, one person", rates, whence, rank=MORE))
    return lines + [_window(window, values) for window in all_of.windows] + _helps(all_of, shines(values))


def _binds(all_of: Summary) -> Line:
    limit, ended, all_ended = all_of.binding
    what, why = LIMITS[limit]
    if all_ended:
        text = what + ": it ends " + (
            "{} of {}".format(ended, count_text(all_ended)) if ended < all_ended else "each batch but the last")
    elif all_of.count > 1:
        text = what + ": it has the least left"
    else:
        text = what + ": it has the least left, though all goes into one batch"
    counted = "" if all_of.bound is None else message("window-counted", window=window_text(all_of.bound))
    return words("binds", "What binds", text, rough=sentences([why, counted]))


def _lay_ready(ready: Ready) -> Line:
    things = [_counted(ready.cups, "cup")] + ([_counted(ready.bags, "bag")] if ready.bags else [])
    things.append(_counted(ready.gloves, "pair") + " of gloves")
    return words("ready", "Lay ready", ", ".join(things), rank=MORE,
                 rough="a cup for each mix" + (", a bag for each batch of putty" if ready.bags else ""))


def _counted(count: int, one: str) -> str:
    return str(count) + " " + one + ("" if count == 1 else "s")


def _window(window: Window, values: Values) -> Line:
    """How long a window is, and by which of two estimates."""
    span = message("window-span", time=quantity(window.span, "min", DOWN, 0), air=quantity(window.at, "degC", digits=2))
    label = WINDOWS[window.limit].format(told(window.mass, "g", values["units"]))
    return line("window_" + window.limit, label, window.span, "s", in_sun(span, values), window_text(window), rank=MORE)


def _remembered(all_of: Summary) -> str:
    """Which figures of the plan are from memory."""
    if not all_of.memory:
        return "by your own working times and rates"
    text = ", ".join([MEMORY[name] for name in all_of.memory]) + " from memory"
    return text if all_of.own else text + "; your own timings are used first"


def _vessels(bags: bool) -> str:
    return "bags" if bags else "cups"


def _help(name: str, bags: bool, sun: bool) -> str:
    return BAGS.format(_vessels(bags)) + ("" if sun else TRAY) if name == "bags" else HELPS[name]


def _helps(all_of: Summary, sun: bool) -> "list[Line]":
    if all_of.helps is None:
        return []
    return [line("helps_" + one.name, "Would help", one.batches, "",
                 _help(one.name, one.bags, sun) + ": " + count_text(one.batches), "instead of " + str(all_of.count))
            for one in all_of.helps] or [
        words("helps_nothing", "Would help", "Nothing listed here makes it fewer batches",
              rough="helper, cooler hours, slower hardener and small {} were tried".format(_vessels(all_of.why.putty)),
              rank=MORE)]


def _cold(found: Found, values: Values) -> "list[Line]":
    cold = found.cold
    if cold is None:
        return []
    here, bound = [told(one, "degC", values["units"], places=1) for one in (cold.coldest, cold.least)]
    return [line("cold", "Too cold for this hardener", cold.coldest, "K",
                 "{} is below its lowest, {}. Warm the place, or take a faster hardener.".format(here, bound),
                 rough=cold.how or "the label's", rank=WARN)]


def _sun(values: Values) -> "list[Line]":
    """The sun that all windows are counted in, or that nobody said whether there is any."""
    if not said(values):
        return [not_said()]
    if not shines(values):
        return []
    return [words("sun", SHADE_FIRST, message("plan-in-sun", where=WHERE[values["sun"]]), rank=WARN)]


def _cuts(cuts: "list[Cuts]", values: Values) -> "list[Line]":
    lines, lapped = [], told(values["overlap"], "mm", values["units"], digits=2)
    for one in cuts:
        names = [piece_name(name) for name in one.names]
        text = ", ".join(names[:-1]) + " and " + names[-1] + " are each" if len(names) > 1 else names[0] + " is"
        if len(names) > MOST_NAMED:
            text = ", ".join(names[:MOST_NAMED]) + " and {} more are each".format(len(names) - MOST_NAMED)
        lines.append(words("cut", "Too long for one batch",
                           "{} cut in {}, tape lapped {}.".format(text, one.parts, lapped), rank=WARN,
                           rough=limit_words(one.limit, one.wet)[0] + " binds; overlap " + BY_KEY["overlap"].mark))
    return lines


def _no_plan(none: NoPlan, sun: bool) -> "list[Line]":
    """No grouping holds: which piece, which limit, and what to change."""
    if none.limit is None:
        what, why, name, over = "the changing temperature", "", "the pieces", ""
    else:
        what, why = limit_words(none.limit, none.wet)
        name, over = piece_name(none.name), shown(none.over / 60, 0, UP) + " min too late for "
    lines = [words("no_plan", "No plan", name + " cannot be laid in time: " + over + what + ".", rough=why, rank=WARN)]
    if none.whole:
        lines.append(words("cut_it", "Change", "Cut it at a bulkhead or where an overlap may be, and plan again.",
                           rank=BESIDE))
    lines += [words("helps_" + change.name, "Would help", _help(change.name, change.bags, sun), rank=BESIDE)
              for change in none.helps]
    return lines if len(lines) > 1 else lines + [
        words("change", "Change", "Shorter pieces, more hands, cooler hours and a slower hardener together.",
              rank=BESIDE)]


def _too_large(none: TooLarge, values: Values) -> "list[Line]":
    """No plan because a mix is larger than the largest wanted."""
    units, name = values["units"], piece_name(none.name)
    most, least = told(none.most, "g", units, DOWN), told(none.least, "g", units, UP)
    counted, change = "filler counted in" if none.putty else "", FINER + ", or a larger mix."
    if none.why == "scale":
        text = "{} cannot be laid: no mix below {} can be measured in ratio, and the largest wanted is {}."
        why = "by the scale, the ratio and the ratio error that the label allows" if values["smallest"] is None else (
            "the smallest mix in ratio was typed")
        counted = why + ("; " + counted if counted else "")
    elif values["long"] == "whole":
        text = "{} cannot be laid: it takes a mix of {}, and the largest wanted is {}."
        change = "Cut it at a bulkhead or where an overlap may be, and plan again; or a larger mix."
    else:
        text = "{} cannot be laid: whole it takes a mix of {}, cut small still above the largest wanted, {}."
    return [words("no_plan", "No plan", text.format(name, least, most), rough=counted, rank=WARN),
            words("change", "Change", change, rank=BESIDE)]


def _questions(found: Found, values: Values) -> "list[Line]":
    """What is asked back or warned of: a profile with a gap, a finish that is missed, steps told for no batch."""
    asked, end = found.asked, found.summary.end
    lines = [words("gap", "Temperature", "None typed between {} and {}: does it change evenly there?".format(
        latest(values, before), latest(values, after)), rank=ASK) for before, after in asked.gaps]
    if asked.after is not None:
        text = "After {} none was typed: the last one is taken to stay."
        lines.append(words("after_profile", "Temperature", text.format(latest(values, asked.after)), rank=ASK))
    if asked.long is not None:
        text = "This is until {}. Plan the pieces of one day at a time, with the hours you can work."
        lines.append(line("long_day", "More than a day?", asked.long, "s",
                          text.format(moment(values, found.close, end)), rank=ASK))
    if asked.late is not None:
        lines.append(line("too_late", "Not finished in time", asked.late, "s",
                          shown(asked.late / 60, 0, UP) + " min after " + latest(values, values["finish"])
                          + ". Leave batches for another day, whole ones.", rank=WARN))
    if asked.own:  # nothing clears them when another system is picked, and a slow one's would lengthen every window
        text = "Windows are counted {} typed on this plan, under Working times. Of another system? Empty the field."
        lines.append(words("own_typed", "Own timings of this system?", text.format(counted_text(asked.own)), rank=ASK))
    lines.extend(unconfirmed(values["system"], "both"))
    return lines + questions(asked.apart) + _not_here(asked)


def _not_here(asked: Asked) -> "list[Line]":
    lines, names = [], dict(STEPS)
    for number, step in asked.done:
        text = "There is no batch " + str(number) + " in this plan."
        if step:
            text = "Batch {}: '{}' is no step of its own here; type the next one.".format(number, names[step])
        lines.append(words("no_step" if step else "no_batch", "Done so far", text, rank=ASK))
    return lines
