"""Pages: each screen as plain HTML with its answer, before any script runs."""
import re
from functools import partial
from typing import Any
from urllib.parse import urlencode

from covemix.shared.catalogue.recalled import RELEASE
from covemix.shared.door import handover, moves
from covemix.shared.forms import links
from covemix.shared.forms.declared import units_of_tools
from covemix.shared.forms.inputs import UNITS_INPUT
from covemix.shared.words.languages import LANGUAGES
from covemix.shared.words.messages import message, row, typed
from covemix.shared.words.texts import said
from covemix.shared.words.units import METRIC, SYSTEMS
from covemix.shared.words.written import reader
from jinja2 import Environment, FileSystemLoader, select_autoescape
from markupsafe import Markup, escape
from starlette.requests import Request
from starlette.responses import HTMLResponse, PlainTextResponse, Response

from .build import Build, File
from .forms import Form, in_both
from .headers import ASK_FIRST, POLICY
from .lean import lean_page
from .sending import sent
from .thread_memo import thread_memo

# screen, path below the app's root, heading
PAGES = tuple((screen, path, moves.TITLES[screen]) for screen, path in (
    ("pour", ""), ("joint", "joint/"), ("surface", "surface/"), ("boat", "boat/"), ("spreader", "spreader/"),
    ("clock", "clock/"), ("trial", "test-cup/"), ("plan", "plan/"), ("kit", "kit/"), ("log", "log/"),
    ("safety", "safety/"), ("sources", "sources/")))
NO_ANSWER = {"lines": [], "figures": [], "leads": [], "errors": []}
# lines of a page without a query: with more they come in short, and only the sources have more still
SOME_LINES, MOST_LINES = 60, 100
IN_SIGHT = 5  # lines of such a page as it opens
NAV = ("pour", "joint", "boat", "clock", "kit")  # under the thumb; Safety stands at the top of every screen


class Pages:
    """Renders the screens of one build."""

    def __init__(self, build: Build):
        self.build = build
        self.language = build.language
        self.t = partial(t, self.language)
        self.env = Environment(loader=FileSystemLoader(build.house / "webui" / "templates"),
                               autoescape=select_autoescape(["html"]), trim_blocks=True, lstrip_blocks=True)
        self.env.filters["bound"] = bound
        # between single quotes: of what is JSON most marks are double ones
        self.env.policies["json.dumps_kwargs"] = {"ensure_ascii": False, "separators": (",", ":")}
        self.env.globals.update(most_rows=most_rows, learns=learns, language=self.language, languages=LANGUAGES,
                                as_is=typed, t=self.t, bold=partial(bold, self.language))
        self.templates = set(self.env.list_templates())
        self.plain: dict[str, File] = {}  # by screen: without a query a page is the same for everyone

    def prepare(self) -> None:
        """Make the pages without a query, and each of their smaller forms."""
        for screen, _, _ in PAGES:
            self.plain[screen] = self.made(screen)

    def made(self, screen: str) -> File:
        """The page of a screen without a query, in its smaller forms."""
        return self.build.page(lean_page(self.render(screen)))

    def answer(self, screen: str, request: Request) -> Response:
        """The page of a screen as it was asked for."""
        pairs = request.query_params.multi_items()[:links.MOST_PAIRS + 1]  # one more tells that it is too long
        if not pairs:
            return sent(self.plain.get(screen) or self.made(screen), request, ASK_FIRST)
        wanted = request.query_params.get("as")
        if wanted == "text":
            return self.text(screen, pairs)
        return HTMLResponse(self.render(screen, pairs, whole=wanted == "page"))

    def kept(self, policy: bool = False) -> dict[str, str]:
        """Every page by its path as a phone keeps it: without an answer, because the phone has the engine."""
        return {path: lean_page(self.render(screen, policy=policy, bare=True)) for screen, path, _ in PAGES}

    @staticmethod
    def _opened(screen: str, pairs: list | tuple, whole: bool = False) -> tuple:
        length = 0 if whole else sum(len(name) + len(text) + 2 for name, text in pairs)
        return handover.opened(moves.screen_inputs(screen), pairs, length, handover.beside_of(screen))

    def text(self, screen: str, pairs: list) -> PlainTextResponse:
        """The card of a link in plain words, for whatever cannot show a page."""
        made = handover.made_by(pairs, self.language)
        pairs, refused = self._opened(screen, pairs)
        if refused:
            return PlainTextResponse(said(refused, reader(language=self.language)) + "\n", status_code=422)
        text = handover.handed(screen, pairs, self.build.id, self.language)["text"]
        return PlainTextResponse((made + "\n\n" if made else "") + text + "\n")

    def render(self, screen: str, pairs: list | tuple = (), policy: bool = False, bare: bool = False,
               whole: bool = False) -> str:
        """The page of a screen with the values of a link filled in and answered.

        policy: write the security policy into the page, for a host that sends no headers of ours
        bare: without the answer, and without rows that nobody typed
        whole: the form itself asks, with all that stands in it, and may be longer than a link
        """
        language = self.language
        made = handover.made_by(pairs, language)
        pairs, refused = self._opened(screen, pairs, whole)
        refused = said(refused, reader(language=language))
        tree = links.tree(pairs)
        answer = moves.screen(screen, tree, memo=thread_memo(), language=language)
        errors = {e["field"]: e["message"] for _, one in reversed(answer["answers"]) for e in reversed(one["errors"])}
        units: str = tree["units"] if tree.get("units") in SYSTEMS else METRIC
        who = reader(units, language)
        inputs = [in_both(item, who) for item in moves.screen_inputs(screen)]
        root = "../" * path_of(screen).count("/")
        template = f"{screen}.html" if f"{screen}.html" in self.templates else "screen.html"
        if bare or refused:  # the defaults would be another mix than the link meant
            errors = {}
            # what asks nothing is the same for everyone, and is there before the engine is
            answer = dict(answer, answers=[[name, NO_ANSWER if moves.module(name).INPUTS else plain(one)]
                                           for name, one in answer["answers"]])
        elif not pairs:
            answer = dict(answer, answers=[[name, self.first_of(one, screen)] for name, one in answer["answers"]])
        return self.env.get_template(template).render(
            screen=screen, heading=self.t(heading_of(screen)), pages=PAGES, nav=NAV,
            policy=POLICY if policy else "", unanswered=bare or policy, bare=bare, early=not (bare or pairs),
            root=root or "./", base=root + self.build.base, build=self.build.id,
            ahead=self.build.ahead(screen),
            release=RELEASE, made="" if refused else made,
            refused=refused, inputs=inputs, units=units, units_input=UNITS_INPUT.about(who),
            errors=errors, answer=answer,
            form=Form(inputs, pairs, errors, dict(answer["understood"]),
                      {line["name"]: line for _, one in answer["answers"] for line in one["lines"]},
                      units_of_tools(moves.screen_inputs(screen), tree, units), bare),
            labels={move.name: self.t(move.label) for move in moves.MOVES},
            stiffness=next(in_both(item, who) for item in moves.module("pouring").INPUTS if item.name == "stiffness"),
            folds={name: [(part, said(fold, who)) for part, fold in getattr(moves.module(name), "FOLDS", ())]
                   for name, _ in answer["answers"]},
            address=lambda lead: ((root or "./") + path_of(lead["screen"]) + "?"
                                  + urlencode([tuple(pair) for pair in lead["pairs"]])))

    def first_of(self, answer: dict, screen: str) -> dict:
        """An answer of hundreds of lines by its first: a phone's engine has all of them a moment later, and where there
        is none a link asks for the page with all. A long one is in short."""
        count = len(answer["lines"])
        if count <= SOME_LINES:
            return answer
        if count <= MOST_LINES:
            rows = [one.told or one.numbered for one in moves.screen_inputs(screen) if one.repeats]
            return in_short(answer, tuple(filter(None, rows)))
        lead = {"label": self.t("sources-page.all", count=count), "screen": screen, "pairs": [["units", METRIC]]}
        return dict(answer, lines=answer["lines"][:MOST_LINES], leads=[*answer["leads"], lead])


def in_short(answer: dict, rows: tuple[str, ...]) -> dict:
    """An answer without its drawings, what lies folded and where its lines come from: the phone's engine has all of it
    a moment later, and so has a page with a query. What is in sight stands as it will, so that nothing moves then.

    rows: how the names of the lines begin that rows of the form stand for
    """
    lines = [line for line in answer["lines"] if line["rank"] != "more" or line["name"].startswith(rows)]
    return dict(answer, figures=[], lines=lines[:IN_SIGHT] + [dict(line, rough="") for line in lines[IN_SIGHT:]])


def plain(answer: dict) -> dict:
    """An answer without where each line comes from."""
    return dict(answer, lines=[dict(line, rough="") for line in answer["lines"]])


def bound(text: str) -> str:
    """A number and its unit stay on one line, and so does a sum of two.

    >>> bound("0.333 kg + 0.0944 kg").count(chr(160)), bound("300 g/m²").count(" ")
    (4, 0)
    """
    held = re.sub(r"(\d) (?=[^\d\s])", "\\1\u00a0", text)
    return re.sub(r"\s\+\s", "\u00a0+\u00a0", held) if held.count("+") == 1 else held


def t(language: str, key: str, **values: Any) -> str:
    """A sentence of a template."""
    return said(message(key, **values), reader(language=language))


def bold(language: str, key: str, **values: Any) -> Markup:
    """A sentence whose values stand out. values: keys

    >>> bold("en", "backup-would", button="backup-add")
    Markup('<b>Add to mine</b> would change:')
    """
    marked = {name: row([typed("\0"), value, typed("\1")], "") for name, value in values.items()}
    return Markup(escape(t(language, key, **marked)).replace("\0", Markup("<b>")).replace("\1", Markup("</b>")))


def most_rows(move: str) -> int:
    """How many rows a move takes that is asked with what this phone keeps.

    >>> most_rows("own_rates")
    60
    """
    return next(item.most for item in moves.module(move).INPUTS if item.name == "rows")


def learns(move: str) -> str:
    """Which figures of a batch of the log a move learns from; one without the first teaches nothing.

    >>> learns("timings")
    'own_time label_time'
    """
    return " ".join(field.name for item in moves.module(move).INPUTS if item.name == "rows" for field in item.fields)


def heading_of(screen: str) -> str:
    """The key of a screen's heading."""
    return next(label for name, _, label in PAGES if name == screen)


def path_of(screen: str) -> str:
    """A screen's path below the app's root."""
    return next(path for name, path, _ in PAGES if name == screen)
