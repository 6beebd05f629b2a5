"""Which language is answered in: what was chosen on the phone, else what its browser asks for, else the first."""
from covemix.shared.words.languages import LANGUAGES
from covemix.shared.words.written import FIRST
from starlette.requests import Request

COOKIE = "language"  # written by a page (`webui/js/page/language.js`) where somebody chose one, and only there
BY = "Accept-Language, Cookie"  # of the request: what an answer differs by


def of_page(request: Request) -> str:
    """The language of a page."""
    chosen = request.cookies.get(COOKIE, "")
    return chosen if chosen in LANGUAGES else of_program(request)


def of_program(request: Request) -> str:
    """The language of an answer to a program, which keeps no choice."""
    return accepted(request.headers.get("accept-language", ""))


def accepted(header: str) -> str:
    """The first of our languages by an Accept-Language header (RFC 9110, 12.5.4); "de-AT" is served by "de".

    >>> accepted("fr, de-AT;q=0.8, en;q=0.5"), accepted("de;q=0, *"), accepted("")
    ('de', 'en', 'en')
    """
    weights: dict[str, float] = {}
    for one in header[:200].split(","):
        name, _, more = one.partition(";")
        try:
            weight = float(more.strip().removeprefix("q=") or 1)
        except ValueError:
            continue
        weights.setdefault(name.strip().lower().partition("-")[0], weight)
    best = max(LANGUAGES, key=lambda name: (weights.get(name, 0), name == FIRST))
    return best if weights.get(best, 0) > 0 else FIRST


def worker_name(language: str) -> str:
    """The service worker of a language: where one takes the place of another, so does all that it keeps.

    >>> worker_name("en"), worker_name("de")
    ('sw.js', 'sw.de.js')
    """
    return "sw.js" if language == FIRST else f"sw.{language}.js"
