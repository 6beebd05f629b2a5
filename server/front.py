"""What stands before the app, for whoever serves it: a proxy's prefix, the encodings, redirects, a log of our own."""
import time
from collections.abc import Callable, Sequence
from urllib.parse import quote

from starlette.middleware.cors import CORSMiddleware
from starlette.types import ASGIApp, Message, Receive, Scope, Send

LONGEST = 120  # characters of a path in the log


class Prefixed:
    """ASGI middleware: the app lives below `root`, whether or not the proxy takes that off the path."""

    def __init__(self, app: ASGIApp, root: str):
        self.app, self.root = app, root.rstrip("/")

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        if "path" in scope:
            path = scope["path"]
            inside = path == self.root or path.startswith(self.root + "/")
            scope = dict(scope, root_path=self.root, path=path if inside else self.root + path)
        await self.app(scope, receive, send)


class ForOthers:
    """ASGI middleware: pages of these origins may ask the API from their readers' browsers, and nothing else here."""

    PATHS = ("/api/", "/openapi.json")

    def __init__(self, app: ASGIApp, origins: Sequence[str]):
        self.app = app
        self.told = CORSMiddleware(app, allow_origins=origins, allow_methods=["GET", "HEAD", "POST"],
                                   allow_headers=["Content-Type"], expose_headers=["Content-Disposition"])

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        path = scope.get("path", "").removeprefix(scope.get("root_path", ""))
        await (self.told if path.startswith(self.PATHS) else self.app)(scope, receive, send)


class Accepted:
    """ASGI middleware: what is asked for by Accept-Encoding is told as the names that are truly wanted."""

    def __init__(self, app: ASGIApp):
        self.app = app

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        if scope["type"] == "http":
            asked = ",".join(value.decode("latin-1") for name, value in scope["headers"] if name == b"accept-encoding")
            others = [header for header in scope["headers"] if header[0] != b"accept-encoding"]
            scope = dict(scope, headers=[*others, (b"accept-encoding", ", ".join(accepted(asked)).encode())])
        await self.app(scope, receive, send)


def accepted(header: str) -> list[str]:
    """Those of our encodings that an Accept-Encoding header wants (RFC 9110, 12.5.3): weight 0 is a refusal.

    >>> accepted("gzip, br;q=0"), accepted("*;q=0.5, gzip; q=0.0"), accepted("GZIP"), accepted("")
    (['gzip'], ['br'], ['gzip'], [])
    """
    weights: dict[str, float] = {}
    for one in header[:400].split(","):
        name, *more = (part.strip().lower() for part in one.split(";"))
        weight = next((part[2:].strip() for part in more if part.startswith("q=")), "1")
        try:
            weights[name] = float(weight)
        except ValueError:
            weights[name] = 0.0
    return [name for name in ("br", "gzip") if weights.get(name, weights.get("*", 0.0)) > 0]


class OwnPlace:
    """ASGI middleware: a redirect to the address with or without its last slash names no host and no folder.

    So it is right behind any proxy, and nothing of the Host header comes back.
    """

    def __init__(self, app: ASGIApp):
        self.app = app

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        async def send_own(message: Message) -> None:
            if message["type"] == "http.response.start" and message["status"] == 307:
                to = beside(scope["path"]) + ("?" + scope["query_string"].decode("latin-1")
                                              if scope["query_string"] else "")
                message["headers"] = [(name, to.encode("latin-1") if name == b"location" else value)
                                      for name, value in message["headers"]]
            await send(message)

        await self.app(scope, receive, send_own if scope["type"] == "http" else send)


def beside(path: str) -> str:
    """The same address with its last slash, or without, as seen from itself.

    >>> beside("/name/joint"), beside("/api/ratio/")
    ('./joint/', '../ratio')
    """
    last = quote(path.rstrip("/").rpartition("/")[2])
    return f"../{last}" if path.endswith("/") else f"./{last}/"


class Logged:
    """ASGI middleware: a line for each request, without its query (the user's figures) and without an address."""

    def __init__(self, app: ASGIApp, write: Callable[[str], None]):
        self.app, self.write = app, write

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        if scope["type"] != "http":
            await self.app(scope, receive, send)
            return
        begun, status = time.perf_counter(), "-"

        async def send_seen(message: Message) -> None:
            nonlocal status
            if message["type"] == "http.response.start":
                status = str(message["status"])
            await send(message)

        try:
            await self.app(scope, receive, send_seen)
        finally:
            took = (time.perf_counter() - begun) * 1000
            self.write(f"{scope['method'][:10]} {quote(scope['path'][:LONGEST])} {status} {took:.0f} ms")
