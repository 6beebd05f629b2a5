"""The app: pages, API and the versioned files, put together."""
from concurrent.futures import ThreadPoolExecutor

from covemix.shared.door import moves
from covemix.shared.forms import recall
from covemix.shared.words.written import reader
from fastapi import FastAPI
from fastapi.responses import JSONResponse
from starlette.exceptions import HTTPException
from starlette.middleware.gzip import GZipMiddleware
from starlette.requests import Request
from starlette.responses import Response

from . import api
from .build import BUNDLE, Build
from .headers import ASK_FIRST, FOREVER, BodyLimit, SecurityHeaders
from .pages import Pages
from .sending import sent
from .version import VERSION


def create_app(build: Build | None = None) -> FastAPI:
    """The whole app for one build of the files."""
    build = build or Build()
    app = FastAPI(title="Covemix", version=VERSION, docs_url=None, redoc_url=None, separate_input_output_schemas=False,
                  description="The mixing maths of an epoxy seam. Every number is SI; every text is for people.")
    app.include_router(api.router())
    api.add_handlers(app)
    pages = Pages(build)
    _add_pages(app, pages)
    _add_files(app, build, pages)
    app.add_middleware(BodyLimit, most=api.MOST_BODY, refusal=api.TOO_MUCH)
    app.add_middleware(GZipMiddleware)
    app.add_middleware(SecurityHeaders)
    for name in moves.names():  # a phone imports a move when it is asked; a server has time for it now
        moves.module(name)
    return app


def _add_pages(app: FastAPI, pages: Pages) -> None:
    for path, endpoint, name in pages.routes():
        app.add_route(path, endpoint, methods=["GET", "HEAD"], name=name, include_in_schema=False)


def _add_files(app: FastAPI, build: Build, pages: Pages) -> None:
    # made once and well, which takes seconds: pages are served meanwhile, as they are made for each request
    maker = ThreadPoolExecutor(1)
    maker.submit(pages.prepare)
    bundle = maker.submit(lambda: build.bundle(pages.kept()))

    @app.api_route("/v/{build_id}/{path:path}", methods=["GET", "HEAD"], include_in_schema=False)
    def versioned(build_id: str, path: str, request: Request) -> Response:
        file = bundle.result() if path == BUNDLE else build.files.get(path)
        file = file if build_id == build.id else None
        if file is None:
            raise HTTPException(404)
        return sent(file, request, FOREVER)

    worker_file = maker.submit(lambda: build.worker_file(bundle.result()))

    @app.api_route("/sw.js", methods=["GET", "HEAD"], include_in_schema=False)
    def worker(request: Request) -> Response:
        return sent(worker_file.result(), request, ASK_FIRST)

    @app.api_route("/recalled.json", methods=["GET", "HEAD"], include_in_schema=False)
    def recalled() -> JSONResponse:
        return JSONResponse(recall.as_data(reader()))

    @app.api_route("/manifest.webmanifest", methods=["GET", "HEAD"], include_in_schema=False)
    def manifest() -> JSONResponse:
        return JSONResponse(build.manifest(), media_type="application/manifest+json")

    @app.api_route("/favicon.ico", methods=["GET", "HEAD"], include_in_schema=False)
    def favicon() -> Response:
        return Response(build.files["icons/app.svg"].body, media_type="image/svg+xml")
