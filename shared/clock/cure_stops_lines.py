"""Cure stops, lines: what is said of a cure that stops, of where a seam softens, of a post-cure and of the sun."""
from ..catalogue.softening import COLOURS, POST
from ..forms.types import Found, Said, Values
from ..words.lines import ASK, BESIDE, MORE, SAY, WARN, Line, line, words
from ..words.messages import fact, message, number, quantity, sentences
from ..words.numbers import DOWN, UP, shown
from .cure_stops import FULL_FROM, MAY, POST_AT, POST_FOR, SOFTENS, STAYS

CLIMB = POST[3][1]
VERDICTS = {STAYS: "cure-sun.stays", MAY: "cure-sun.may", SOFTENS: "cure-sun.softens"}
# what to do against the sun, by whether the hull may be painted white and the seam warmed
SHADE = {(True, True): "cure-sun.shade-paint-post", (True, False): "cure-sun.shade-paint",
         (False, True): "cure-sun.shade-post", (False, False): "cure-sun.shade"}


def say(limit: Found, values: Values, said: bool) -> list[Line]:
    """limit: `cure_stops.Stops`; said: `hard_but` stands already in place of the full strength"""
    lines = []
    if limit.after:
        held = _degrees(limit.after.held, DOWN)
        lines.append(line("softens", "cure-softens", limit.after.glass[0], "K", _degrees(limit.after.glass[0], DOWN),
                          rough=message("cure-softens.rough", best=_degrees(limit.after.glass[1], DOWN), held=held)))
        lines.append(line("stops", "cure-stops", limit.after.conversion[0], "", share(limit.after),
                          rough=message("cure-stops.rough", held=held), rank=MORE if said else BESIDE))
    lines.append(_post(limit))
    lines.extend(_sun(limit))
    return lines


def share(one: Found) -> Said:
    """How far a cure comes where it stops, its least first. one: `cure_stops.Stopped`"""
    return message("cure-stops.share", least=number(shown(100 * one.conversion[0], 0, DOWN)),
                   most=number(shown(100 * one.conversion[1], 0, UP)))


def hard_but(limit: Found) -> "tuple[Said, Said]":
    """What is told in place of the full strength where the warmth for it lacks: (text, what to add)."""
    least = _degrees(FULL_FROM, UP)
    values = {"share": share(limit.after), "glass": _degrees(limit.after.glass[0], DOWN)}
    rough = message("cure-full.rough", least=least)
    if limit.after.held < FULL_FROM:
        return message("cure-full.warmer", least=least, **values), rough
    return message("cure-full.longer", **values), rough


def _degrees(kelvin: float, toward: str) -> Said:
    return quantity(kelvin, "degC", toward, 0)


def _hours(seconds: float, toward: str) -> Said:
    return quantity(seconds, "h", toward, 0 if seconds > 10 * 3600 else 1)


def _post(limit: Found) -> Line:
    post, how = limit.post, message("cure-post.how", climb=fact("K", CLIMB))
    usual, usual_at = _hours(POST_FOR, UP), fact("degC", POST_AT)
    if post is None:
        text = message("cure-post.text", time=usual, temperature=usual_at)
        return words("post", "cure-post", sentences([text, how]), rough="mark-common-practice", rank=MORE)
    label = message("cure-post.typed", temperature=_degrees(post.to, DOWN), time=_hours(post.lasting, DOWN))
    if not post.counts:
        return words("post", label, message("cure-post.short", time=_hours(post.needed, UP)), rank=ASK,
                     rough=message("cure-post.short-rough", time=usual, temperature=usual_at))
    if not post.raises:
        return words("post", label, "cure-post.nothing", rank=ASK)
    glass = _degrees(limit.after.glass[0], DOWN)
    text = message("cure-post.raised", glass=glass)
    if limit.before is not None:
        text = message("cure-post.raised-from", glass=glass, before=_degrees(limit.before.glass[0], DOWN))
    return words("post", label, sentences([text, how]), rough="mark-from-memory", rank=SAY)


def _sun(limit: Found) -> list[Line]:
    if len(limit.suns) > 1:
        light, dark = limit.suns[0], limit.suns[-1]
        text = message("cure-sun.any", air=_degrees(dark.air, UP), dark=_degrees(dark.surface[1], UP),
                       white=_degrees(light.surface[1], UP))
        return [words("sun", "cure-sun", sentences([text, "" if dark.verdict in (None, STAYS)
                                                    else "cure-sun.colour"]), rank=SAY)]
    sun, = limit.suns
    text = message("cure-sun.one", most=_degrees(sun.surface[1], UP), least=_degrees(sun.surface[0], UP),
                   air=_degrees(sun.air, UP))
    if sun.verdict is None:
        return [words("sun", "cure-sun", text, rank=SAY)]
    verdict = message(VERDICTS[sun.verdict], glass=_degrees(limit.after.glass[0], DOWN))
    if sun.verdict == STAYS:
        return [words("sun", "cure-sun", sentences([text, verdict]), rough="cure-sun.rough", rank=SAY)]
    do = SHADE[(sun.colour != COLOURS[0][0], not limit.post)]
    return [words("sun", "cure-sun.hot", sentences([text, verdict, do]), rough="cure-sun.rough", rank=WARN)]
