"""Plan lines: what a plan says before its batches: how many, until when, what binds, what helps, what to question."""
from ..catalogue.cautions import STANDING
from ..catalogue.losses import BY_KEY
from ..catalogue.plans import COOLER, EARLIER, SLOWER
from ..clock.sun import said
from ..clock.sun_lines import SHADE_FIRST, WHERE, in_sun, not_said, shines
from ..clock.usable_lines import other_sun, questions
from ..forms.types import Said, Values
from ..mix.label_words import unconfirmed
from ..things import work_rates
from ..things.lowest_temperature import lowest_mark
from ..things.own_timings import counted
from ..words.lines import ANSWER, ASK, BESIDE, MORE, WARN, Line, line, words
from ..words.messages import fact, listed, message, noted, number, quantity, sentences
from ..words.numbers import DOWN, UP, bare
from ..words.provenance import marked
from . import layers_lines
from .advice import CUP, FILM, POT, SOFT
from .batch_lines import batch_lines, latest, moment
from .done_so_far import STEPS
from .limit_lines import LIMITS, count_said, limit_words, piece_name, why_said
from .plan_found import Asked, Cuts, Found, NoPlan, Ready, Summary
from .smallest_mix import TooLarge
from .window_lines import window_said
from .working_times import Window

CAUTION = next(text for name, _, text, _, _ in STANDING if name == "heat")
LAYERS = layers_lines.PART
MOST_NAMED = 4  # pieces cut alike that are named; each part has its piece's name in its batch
MEMORY = {"rule": "plan-memory.rule", "windows": "plan-memory.windows", "rates": "plan-memory.rates"}
HELPS = {"helper": "plan-help-helper",
         "shade": "plan-help-shade",
         "cooler": message("plan-help-cooler", cooler=fact("K", COOLER)),
         "earlier": message("plan-help-earlier", hours=number(bare(EARLIER / 3600, 1))),
         "slower": message("plan-help-slower", times=number(bare(SLOWER, 2)))}
WINDOWS = {POT: "plan-window-bag", CUP: "plan-window-cup", SOFT: "plan-window-cove", FILM: "plan-window-film"}


def say(found: Found, values: Values) -> "list[Line]":
    """All lines of a plan, what matters first."""
    lines = _cold(found, values) + _sun(values) + _cuts(found.cuts, values)
    coated = layers_lines.say(found, values)
    if found.none:
        late = found.none.why == "late"
        return lines + (_no_plan(found.none, shines(values)) if late else _too_large(found.none, values))
    if found.summary is None:
        return coated + lines
    lines = _summary(found, values) + coated + lines + _questions(found, values)
    for one in found.batches:
        lines.extend(batch_lines(values, found, one))
    return lines


def _summary(found: Found, values: Values) -> "list[Line]":
    all_of = found.summary
    count, largest = count_said(all_of.count), why_said(all_of.why)
    if all_of.crews > 1:
        count = message("plan-batches.crews", count=all_of.count, crews=all_of.crews)
    lines = [
        line("batches", "plan-count", all_of.count, "", count, rough=_remembered(all_of), rank=ANSWER),
        line("end", "plan-end-tape" if all_of.wet else "plan-end-cove", all_of.end, "s",
             moment(values, found.close, all_of.end), rank=ANSWER,
             rough=message("plan-end-rough", pause=quantity(values["pause"], "min", places=0))),
        _binds(all_of),
    ]
    least = all_of.slack
    left = quantity(least, "min", DOWN, places=0)
    if least < 0:
        left = message("plan-slack.missed", time=quantity(-least, "min", UP, places=0))
    lines.append(line("slack", "plan-slack", least, "s", left,
                      rough=message("plan-slack.rough", share=quantity(1 - all_of.share, "%", places=0))))
    lines.append(line("largest", "plan-largest", all_of.largest, "kg", quantity(all_of.largest, "g", UP),
                      caution=CAUTION,
                      rough=message("plan-largest.filler", why=largest) if all_of.why.putty else largest))
    if all_of.over:
        lines.append(line("surplus", "plan-surplus", all_of.over, "kg", quantity(all_of.over, "g", UP),
                          message("plan-surplus.rough", least=quantity(all_of.least, "g", UP)), rank=BESIDE))
    lines.append(_lay_ready(all_of.ready))
    rates, whence = work_rates.told(all_of.paces)
    lines.append(words("rates", "plan-rates", rates, whence, rank=MORE))
    return lines + [_window(window, values) for window in all_of.windows] + _helps(all_of, shines(values))


def _binds(all_of: Summary) -> Line:
    limit, ended, all_ended = all_of.binding
    what, why = LIMITS[limit]
    if all_ended and ended < all_ended:
        text = message("plan-binds.some", what=what, ended=ended, all=count_said(all_ended))
    else:
        text = message("plan-binds.all" if all_ended else "plan-binds.least" if all_of.count > 1 else "plan-binds.one",
                       what=what)
    if all_of.bound is not None:
        why = sentences([why, message("plan-binds.counted", window=window_said(all_of.bound))])
    return words("binds", "plan-binds", text, rough=why)


def _lay_ready(ready: Ready) -> Line:
    things = [message("plan-ready.cups", count=ready.cups)]
    if ready.bags:
        things.append(message("plan-ready.bags", count=ready.bags))
    things.append(message("plan-ready.gloves", count=ready.gloves))
    return words("ready", "plan-ready", listed(things, "plain"), rank=MORE,
                 rough="plan-ready.for-putty" if ready.bags else "plan-ready.for-mix")


def _window(window: Window, values: Values) -> Line:
    """How long a window is, and by which of two estimates."""
    span = message("plan-window-at", time=quantity(window.span, "min", DOWN, places=0),
                   air=quantity(window.at, "degC", digits=2))
    return line("window_" + window.limit, message(WINDOWS[window.limit], mass=quantity(window.mass, "g")), window.span,
                "s", in_sun(span, values), window_said(window), rank=MORE)


def _remembered(all_of: Summary) -> Said:
    """Which figures of the plan are from memory."""
    if not all_of.memory:
        return "plan-memory.none"
    return message("plan-memory" if all_of.own else "plan-memory.own-first",
                   what=listed([MEMORY[name] for name in all_of.memory], "plain"))


def _vessels(bags: bool) -> str:
    """The case of a message that speaks of bags or of cups."""
    return "bags" if bags else "cups"


def _help(name: str, bags: bool, sun: bool) -> Said:
    if name != "bags":
        return HELPS[name]
    return message("plan-help-small" if sun else "plan-help-small.tray", of=_vessels(bags))


def _helps(all_of: Summary, sun: bool) -> "list[Line]":
    if all_of.helps is None:
        return []
    return [line("helps_" + one.name, "plan-help", one.batches, "",
                 message("plan-help.batches", help=_help(one.name, one.bags, sun), batches=count_said(one.batches)),
                 message("plan-help.instead", count=all_of.count))
            for one in all_of.helps] or [
        words("helps_nothing", "plan-help", "plan-help.nothing",
              rough=message("plan-help.tried", of=_vessels(all_of.why.putty)), rank=MORE)]


def _cold(found: Found, values: Values) -> "list[Line]":
    cold = found.cold
    if cold is None:
        return []
    return [line("cold", "plan-cold", cold.coldest, "K",
                 message("plan-cold.text", air=quantity(cold.coldest, "degC", places=1),
                         lowest=quantity(cold.least, "degC", places=1)),
                 rough=lowest_mark(values["system"]) or "plan-cold.label", rank=WARN)]


def _sun(values: Values) -> "list[Line]":
    """The sun that all windows are counted in, or that nobody said whether there is any."""
    if not said(values):
        return [not_said()]
    if not shines(values):
        return []
    return [words("sun", SHADE_FIRST, message("plan-sun", where=WHERE[values["sun"]]), rank=WARN)]


def _cuts(cuts: "list[Cuts]", values: Values) -> "list[Line]":
    lines, lap = [], quantity(values["overlap"], "mm", digits=2)
    for one in cuts:
        names = [piece_name(name) for name in one.names]
        if len(names) == 1:
            text = message("plan-cut.one", name=names[0], parts=one.parts, lap=lap)
        elif len(names) <= MOST_NAMED:
            text = message("plan-cut.each", names=listed(names), parts=one.parts, lap=lap)
        else:
            text = message("plan-cut.more", names=listed(names[:MOST_NAMED], "plain"), more=len(names) - MOST_NAMED,
                           parts=one.parts, lap=lap)
        lines.append(words("cut", "plan-cut", text, rank=WARN,
                           rough=message("plan-cut.rough", limit=limit_words(one.limit, one.wet)[0],
                                         mark=marked(BY_KEY["overlap"].mark))))
    return lines


def _no_plan(none: NoPlan, sun: bool) -> "list[Line]":
    """No grouping holds: which piece, which limit, and what to change."""
    text, why = "plan-none.temperature", ""
    if none.limit is not None:
        what, why = limit_words(none.limit, none.wet)
        text = message("plan-none.late", name=piece_name(none.name), limit=what,
                       over=quantity(none.over, "min", UP, places=0))
    lines = [words("no_plan", "plan-none", text, rough=why, rank=WARN)]
    if none.whole:
        lines.append(words("cut_it", "plan-change", "plan-change.cut", rank=BESIDE))
    lines += [words("helps_" + change.name, "plan-help", _help(change.name, change.bags, sun), rank=BESIDE)
              for change in none.helps]
    return lines if len(lines) > 1 else lines + [words("change", "plan-change", "plan-change.all", rank=BESIDE)]


def _too_large(none: TooLarge, values: Values) -> "list[Line]":
    """No plan because a mix is larger than the largest wanted."""
    counted, change = ["plan-none.filler"] if none.putty else [], "plan-change.scale"
    if none.why == "scale":
        key = "plan-none.scale"
        counted.insert(0, "plan-none.by-scale" if values["smallest"] is None else "plan-none.by-typed")
    elif values["long"] == "whole":
        key, change = "plan-none.whole", "plan-change.cut-or-mix"
    else:
        key = "plan-none.cut"
    text = message(key, name=piece_name(none.name), least=quantity(none.least, "g", UP),
                   most=quantity(none.most, "g", DOWN))
    return [words("no_plan", "plan-none", text, rough=noted(counted), rank=WARN),
            words("change", "plan-change", change, rank=BESIDE)]


def _questions(found: Found, values: Values) -> "list[Line]":
    """What is asked back or warned of: a profile with a gap, a finish that is missed, steps told for no batch."""
    asked, end = found.asked, found.summary.end
    lines = [words("gap", "plan-asked-temperature", message("plan-asked-temperature.gap", before=latest(values, before),
                                                            after=latest(values, after)), rank=ASK)
             for before, after in asked.gaps]
    if asked.after is not None:
        text = message("plan-asked-temperature.after", time=latest(values, asked.after))
        lines.append(words("after_profile", "plan-asked-temperature", text, rank=ASK))
    if asked.long is not None:
        text = message("plan-long-day.text", end=moment(values, found.close, end))
        lines.append(line("long_day", "plan-long-day", asked.long, "s", text, rank=ASK))
    if asked.late is not None:
        text = message("plan-too-late.text", over=quantity(asked.late, "min", UP, places=0),
                       finish=latest(values, values["finish"]))
        lines.append(line("too_late", "plan-too-late", asked.late, "s", text, rank=WARN))
    if asked.own:  # nothing clears them when another system is picked, and a slow one's would lengthen every window
        text = message("plan-own-timings.text", own=counted(asked.own))
        lines.append(words("own_typed", "plan-own-timings", text, rank=ASK))
    lines.extend(unconfirmed(values["system"], "both"))
    return lines + questions(asked.apart) + other_sun(asked.other_sun) + _not_here(asked)


def _not_here(asked: Asked) -> "list[Line]":
    lines, names = [], dict(STEPS)
    for count, step in asked.done:
        text = message("plan-not-here.batch", number=count)
        if step:
            text = message("plan-not-here.step", number=count, step=names[step])
        lines.append(words("no_step" if step else "no_batch", "plan-not-here", text, rank=ASK))
    return lines
