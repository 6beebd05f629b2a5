"""Response headers: what the page may load, and how long each kind of file is kept."""
from covemix.shared.words.languages import LANGUAGES
from starlette.types import ASGIApp, Message, Receive, Scope, Send

from .language import worker_name

POLICY = ";".join((
    "default-src 'none'",
    "script-src 'self' 'wasm-unsafe-eval'",
    "connect-src 'self'",
    "style-src 'self'",
    "img-src 'self' data:",
    "font-src data:",
    "manifest-src 'self'",
    "base-uri 'none'",
    "form-action 'self'",
))
HEADERS = {
    "Content-Security-Policy": POLICY + ";frame-ancestors 'none'",
    "X-Content-Type-Options": "nosniff",
    "Referrer-Policy": "no-referrer",
    "Cross-Origin-Opener-Policy": "same-origin",
    "Cross-Origin-Resource-Policy": "same-origin",
    "Permissions-Policy": "camera=(self),geolocation=(),microphone=(),payment=(),usb=()",
}
# what a worker has no use for: both are of documents (HTML standard, "cross-origin opener policies"; W3C, Permissions
# Policy, "create a permissions policy for a navigable")
OF_WINDOWS = ("Cross-Origin-Opener-Policy", "Permissions-Policy")
# what holds for a window, or a worker, that a file makes, and for what that asks for; a script, a style or a picture
# makes none, and nothing in it is a secret
OF_PAGES = (*OF_WINDOWS, "Content-Security-Policy", "Referrer-Policy", "Cross-Origin-Resource-Policy")
WORKERS = ("/worker.js", *(f"/{worker_name(language)}" for language in LANGUAGES))
MAKES_ITS_OWN = ("/worker.js", ".svg")  # a worker keeps the policy it came with, and a drawing opens as a page
LISTS = ("/recalled.json", "/manifest.webmanifest")  # each page asks for them; what they say becomes no page
FOREVER = "max-age=31536000,immutable"  # the path holds the hash of the content
ASK_FIRST = "no-cache"


class SecurityHeaders:
    """ASGI middleware: every response carries HEADERS, and a cache rule where the route set none."""

    def __init__(self, app: ASGIApp):
        self.app = app
        self.raw = [(name.lower().encode(), value.encode()) for name, value in HEADERS.items()]
        self.of_files, self.of_workers = (
            [header for header in self.raw if header[0] not in [name.lower().encode() for name in names]]
            for names in (OF_PAGES, OF_WINDOWS))

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        if scope["type"] != "http":
            await self.app(scope, receive, send)
            return

        async def send_with_headers(message: Message) -> None:
            if message["type"] == "http.response.start":
                path = scope["path"].removeprefix(scope.get("root_path", ""))
                own = (self.of_workers if is_worker(path) else self.raw if is_page(path) else [] if needs_none(path)
                       else self.of_files)
                headers = message["headers"] = list(message["headers"]) + own
                if not any(name == b"cache-control" for name, _ in headers):
                    headers.append((b"cache-control", ASK_FIRST.encode()))
            await send(message)

        await self.app(scope, receive, send_with_headers)


def is_page(path: str) -> bool:
    """Whether what is answered there may become a window or a worker: all but the sixty files that a page loads.

    >>> is_page("/joint/"), is_page("/v/abc/js/engine/worker.js"), is_page("/v/abc/js/main.js")
    (True, True, False)
    """
    if path.endswith("/icons/app.svg"):  # our own, and nothing in it runs
        return False
    return (path not in LISTS and not path.startswith("/v/")) or path.endswith(MAKES_ITS_OWN)


def is_worker(path: str) -> bool:
    """Whether what is answered there runs as a worker, without a window.

    >>> is_worker("/sw.js"), is_worker("/v/abc/js/engine/worker.js"), is_worker("/v/abc/js/main.js"), is_worker("/")
    (True, True, False, False)
    """
    return path.endswith(WORKERS)


def needs_none(path: str) -> bool:
    """Whether what is answered there needs no header: a module script, as a browser runs none whose type is not a
    script's (HTML standard, "fetch a single module script"), and bytes that a script fetches, as `nosniff` is looked at
    for scripts and styles alone (Fetch standard, "should response to request be blocked due to nosniff"). Of forty that
    is 1 kB of a first visit.

    >>> [needs_none(path) for path in ("/v/abc/js/main.js", "/v/abc/app.bin", "/v/abc/app.css", "/api/ratio")]
    [True, True, False, False]
    """
    return path.startswith("/v/") and path.endswith((".js", ".mjs", ".bin", ".wasm"))


class BodyLimit:
    """ASGI middleware: a request body above `most` bytes is answered with 413 before anything reads it."""

    def __init__(self, app: ASGIApp, most: int, refusal: bytes):
        self.app, self.most, self.refusal = app, most, refusal

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        if scope["type"] != "http" or scope["method"] in ("GET", "HEAD"):
            await self.app(scope, receive, send)
            return
        body, again = await whole(receive, self.most)
        if len(body) > self.most:
            await send({"type": "http.response.start", "status": 413,
                        "headers": [(b"content-type", b"application/json"), (b"connection", b"close")]})
            await send({"type": "http.response.body", "body": self.refusal})
            return
        await self.app(scope, again, send)


async def whole(receive: Receive, most: int) -> tuple[bytes, Receive]:
    """The body of a request, read no further than beyond `most` bytes, and what gives it once more."""
    body, more = b"", True
    while more and len(body) <= most:
        message = await receive()
        body += message.get("body", b"")
        more = message.get("more_body", False)
    left: list[Message] = [{"type": "http.request", "body": body, "more_body": False}]

    async def again() -> Message:
        return left.pop() if left else await receive()

    return body, again
