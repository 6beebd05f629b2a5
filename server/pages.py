"""Pages: each screen as plain HTML with its answer, before any script runs."""
from urllib.parse import urlencode

from covemix.shared import links, moves
from covemix.shared.inputs import UNITS_INPUT
from jinja2 import Environment, FileSystemLoader, select_autoescape
from starlette.requests import Request
from starlette.responses import HTMLResponse

from .build import Build

# screen, path below the app's root, heading
PAGES = (
    ("pour", "", "Pour"),
    ("safety", "safety/", "Safety"),
)


class Pages:
    """Renders the screens of one build."""

    def __init__(self, build: Build):
        self.build = build
        self.env = Environment(loader=FileSystemLoader(build.house / "webui" / "templates"),
                               autoescape=select_autoescape(["html"]), trim_blocks=True, lstrip_blocks=True)

    def routes(self):
        """(path, endpoint, name) of every page."""
        return [(f"/{path}", self._endpoint(screen), screen) for screen, path, _ in PAGES]

    def _endpoint(self, screen: str):
        def endpoint(request: Request) -> HTMLResponse:
            return HTMLResponse(self.render(screen, request.query_params.multi_items()[:links.MOST_PAIRS]))

        return endpoint

    def render(self, screen: str, pairs=(), **more) -> str:
        """The page of a screen with the values of a link filled in and answered."""
        tree = links.tree(pairs)
        answer = moves.screen(screen, tree)
        errors = {e["field"]: e["message"] for _, one in reversed(answer["answers"]) for e in one["errors"]}
        units = tree.get("units") if tree.get("units") in ("metric", "us") else "metric"
        path = path_of(screen)
        root = "../" * path.count("/")
        inputs = [item.about(units) for item in moves.screen_inputs(screen)]
        typed, choices = dict(reversed(list(pairs))), default_choices(inputs)
        return self.env.get_template(self._template(screen)).render(
            screen=screen, pages=PAGES, heading=next(page[2] for page in PAGES if page[0] == screen),
            root=root or "./", base=root + self.build.base, build=self.build.id,
            inputs=inputs, units=units, units_input=UNITS_INPUT.about(units), typed=typed, answer=answer, errors=errors,
            address=lambda lead: (root or "./") + path_of(lead["screen"]) + "?" + urlencode(lead["pairs"]),
            picked=lambda path, item: picked(path, item, typed),
            asked=lambda path, item: asked(path, item, typed, choices),
            understood=dict(answer["understood"]), labels={name: label for name, label, _ in moves.MOVES},
            folded=folded, opened=opened, group_rows=lambda name: rows_typed(name, pairs), **more)

    def _template(self, screen: str) -> str:
        own = f"{screen}.html"
        return own if own in self.env.list_templates() else "screen.html"


def path_of(screen: str) -> str:
    """A screen's path below the app's root."""
    return next(path for name, path, _ in PAGES if name == screen)


def folded(inputs: list[dict]) -> list[tuple[str, list[dict]]]:
    """Inputs with the fold they stand under: those in sight first, then each fold where it first appears."""
    found: dict[str, list[dict]] = {"": []}
    for item in inputs:
        found.setdefault(item["fold"], []).append(item)
    return list(found.items())


def opened(items: list[dict], typed: dict[str, str], errors: dict[str, str]) -> bool:
    """A fold opens by itself where something in it was typed or has to be put right."""
    names = {item["name"] for item in items}
    return any(path.partition(".")[0] in names for path in (*typed, *errors))


def rows_typed(name: str, pairs) -> int:
    """How many rows of a group the values of a link reach."""
    places = [path.split(".")[1] for path, _ in pairs if path.startswith(name + ".")]
    return min(60, 1 + max((int(place) for place in places if place.isdecimal() and len(place) < 4), default=-1))


def default_choices(inputs: list[dict], prefix: str = "") -> dict[str, str]:
    """What every choice of a form stands at while nobody has chosen, by its dotted path."""
    found = {}
    for item in inputs:
        path = prefix + item["name"]
        if item["kind"] == "choice":
            found[path] = item["default"]
        elif item["kind"] == "amount":
            found[path + "_is"] = item["options"][0]["value"]
        elif item["kind"] == "pick":
            found.update(default_choices(item["fields"], path + "."))
    return found


def asked(path: str, item: dict, typed: dict[str, str], choices: dict[str, str]) -> bool:
    """Whether a field is in the form with the choices as they stand; the page asks the same of the same declaration."""
    prefix = path[: len(path) - len(item["name"])]
    return not item.get("when") or any(
        (typed.get(prefix + one["name"]) or choices.get(prefix + one["name"])) in one["values"] for one in item["when"])


def picked(path: str, item: dict, typed: dict[str, str]) -> str:
    """The row a pick stands at: the one named, none where its own figures are typed, else the default."""
    own = any(name.startswith(path + ".") for name in typed)
    return typed.get(path) or ("" if own else item["default"])
