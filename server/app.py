"""The app: pages, API and the versioned files, put together."""
from collections.abc import Callable, Sequence
from concurrent.futures import ThreadPoolExecutor

from covemix.shared.door import moves
from covemix.shared.forms import recall
from covemix.shared.words.languages import LANGUAGES
from covemix.shared.words.written import reader
from fastapi import FastAPI
from fastapi.responses import JSONResponse
from starlette.exceptions import HTTPException
from starlette.middleware.gzip import GZipMiddleware
from starlette.requests import Request
from starlette.responses import Response
from starlette.types import Receive, Scope, Send

from . import api, file_routes, reference
from .build import BUNDLE, Build
from .front import Accepted, ForOthers, OwnPlace
from .headers import ASK_FIRST, FOREVER, BodyLimit, SecurityHeaders
from .language import BY, of_page, worker_name
from .pages import PAGES
from .sending import sent
from .site import Site
from .version import VERSION


def create_app(build: Build | None = None, origins: Sequence[str] = (), packs: bool = True) -> FastAPI:
    """The whole app for one build of the files, and the same house in the other languages.

    origins: of pages on other hosts that may ask the API; packs: whether it makes the copy that phones keep as soon as
    it starts, and not before somebody asks for that
    """
    build = build or Build()
    maker = ThreadPoolExecutor(1)
    first = Site(build, maker)
    sites = {build.language: first}
    sites.update((name, Site(type(build)(build.house, name), maker)) for name in LANGUAGES if name not in sites)
    app = FastAPI(title="Covemix", version=VERSION, docs_url=None, redoc_url=None, separate_input_output_schemas=False,
                  description=api.ABOUT, openapi_tags=[{"name": "moves", "description": api.ABOUT_MOVES}])
    app.include_router(api.router())
    app.include_router(file_routes.router())
    api.add_handlers(app)
    if packs:
        first.begin()
    app.state.first = first
    _add_pages(app, sites, packs)
    _add_reference(app, first)
    _add_files(app, sites, first)
    app.add_middleware(BodyLimit, most=api.MOST_BODY, refusal=api.TOO_MUCH)
    app.add_middleware(Compressed, compresslevel=5)  # half the time of the highest, and a fiftieth more bytes
    app.add_middleware(Accepted)
    app.add_middleware(OwnPlace)
    app.add_middleware(SecurityHeaders)
    if origins:
        app.add_middleware(ForOthers, origins=origins)
    for name in moves.names():  # a phone imports a move when it is asked; a server has time for it now
        moves.module(name)
    return app


class Compressed(GZipMiddleware):
    """ASGI middleware: what is made for one answer is compressed; a versioned file comes in the form that it has."""

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        await (self.app if scope.get("path", "").startswith("/v/") else super().__call__)(scope, receive, send)


def _add_pages(app: FastAPI, sites: dict[str, Site], packs: bool) -> None:
    def endpoint_of(screen: str) -> Callable[[Request], Response]:
        def endpoint(request: Request) -> Response:
            site = sites[of_page(request)]
            if packs:
                site.begin()
            return differing(site.pages.answer(screen, request))

        return endpoint

    for screen, path, _ in PAGES:
        app.add_route(f"/{path}", endpoint_of(screen), methods=["GET", "HEAD"], name=screen, include_in_schema=False)


def _add_reference(app: FastAPI, first: Site) -> None:
    made = first.build.page(reference.page("../" + first.build.base))

    def endpoint(request: Request) -> Response:
        return sent(made, request, ASK_FIRST)

    app.add_route("/" + reference.PATH, endpoint, methods=["GET", "HEAD"], include_in_schema=False)


def differing(response: Response) -> Response:
    """A response that is another in another language."""
    response.headers["Vary"] = ", ".join(filter(None, (response.headers.get("Vary"), BY)))
    return response


def _add_files(app: FastAPI, sites: dict[str, Site], first: Site) -> None:
    build = first.build

    @app.api_route("/v/{build_id}/{path:path}", methods=["GET", "HEAD"], include_in_schema=False)
    def versioned(build_id: str, path: str, request: Request) -> Response:
        site = next((one for one in sites.values() if one.build.id == build_id), None)
        file = None if site is None else site.bundle() if path == BUNDLE else site.build.files.get(path)
        if file is None:
            raise HTTPException(404)
        return sent(file, request, FOREVER)

    def worker_of(site: Site) -> Callable[[Request], Response]:
        def worker(request: Request) -> Response:
            return sent(site.worker(), request, ASK_FIRST)

        return worker

    for name, site in sites.items():
        app.add_api_route("/" + worker_name(name), worker_of(site), methods=["GET", "HEAD"], include_in_schema=False)

    @app.api_route("/recalled.json", methods=["GET", "HEAD"], include_in_schema=False)
    def recalled(request: Request) -> Response:
        return differing(JSONResponse(recall.as_data(reader(language=of_page(request)))))

    @app.api_route("/health", methods=["GET", "HEAD"], include_in_schema=False)
    def health() -> Response:
        return JSONResponse({"version": VERSION, "build": build.id}, headers={"Cache-Control": "no-store"})

    @app.api_route("/manifest.webmanifest", methods=["GET", "HEAD"], include_in_schema=False)
    def manifest(request: Request) -> Response:
        own = sites[of_page(request)].build.manifest()
        return differing(JSONResponse(own, media_type="application/manifest+json"))

    @app.api_route("/favicon.ico", methods=["GET", "HEAD"], include_in_schema=False)
    def favicon() -> Response:
        return Response(build.files["icons/app.svg"].body, media_type="image/svg+xml")
