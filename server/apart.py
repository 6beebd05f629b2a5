"""What takes long is answered by another process of this server, which gives way: a short question waits for none.

Threads would share one interpreter: beside four clients that ask for boats of sixty joints, a ratio took thirteen times
as long (`python -m bench crowd`).
"""
import asyncio
import contextlib
import functools
import gc
import multiprocessing
import os
import signal
import threading
from collections.abc import Callable, Hashable
from concurrent.futures import Future, ProcessPoolExecutor
from concurrent.futures.process import BrokenProcessPool
from multiprocessing.process import BaseProcess
from typing import Any

from starlette.types import ASGIApp, Message, Receive, Scope, Send

from .headers import whole

LONG = 1000  # characters of a query, bytes of a body: a boat of some ten joints
HEAVY = ("boat", "plan", "trial", "test-cup", "sources")  # moves and screens that take long whatever they are asked
GIVES_WAY = 19  # how much nicer the other process is: with 10 its slices can be felt in one short question of a hundred
PATIENCE = 2.0  # s without any answer of the other process, until a question is answered here
SENT_ON = ("type", "http_version", "method", "scheme", "path", "raw_path", "query_string", "root_path", "headers")

Answer = list[Message]
Make = Callable[..., ASGIApp]


class Apart:
    """ASGI middleware: sends what takes long to another process, once that has started; until then, and where it
    cannot be had, the app answers it here.

    app: what answers; most: bytes of a body that it takes at all; make, given: a function of a module, and what it is
    given to make the same app in the other process
    """

    def __init__(self, app: ASGIApp, most: int, make: Make, *given: Hashable):
        self.app, self.most, self.make, self.given = app, most, make, given
        self.pool: ProcessPoolExecutor | None = None
        self.first: Future | None = None
        self.answers = 0  # of the other process

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        if scope["type"] == "lifespan":
            await self.app(scope, receive, send)
            self.end()
            return
        if not takes_long(scope, self.most) or not self.ready():
            await self.app(scope, receive, send)
            return
        body, given = await whole(receive, self.most)
        plain = {name: scope[name] for name in SENT_ON if name in scope}
        try:
            found = await self.from_there(answered, self.make, self.given, plain, body)
        except BrokenProcessPool:  # it is not begun anew: what ended it may end it again
            found = None
        if not found:
            await self.app(scope, given, send)
            return
        for message in found:
            await send(message)

    async def from_there(self, *question: Any) -> Answer | None:
        """What the other process answers; None where it comes to nothing, because others take the whole machine."""
        asked = asyncio.get_running_loop().run_in_executor(self.pool, *question)
        while True:
            before = self.answers
            await asyncio.wait({asked}, timeout=PATIENCE)
            if asked.done():
                self.answers += 1
                return asked.result()
            if self.answers == before:
                asked.cancel()
                return None

    def ready(self) -> bool:
        """Whether the other process answers; the first to ask begins it."""
        if not self.first:
            self.pool = ProcessPoolExecutor(1, multiprocessing.get_context("spawn"), begun, (self.make, self.given))
            self.first = self.pool.submit(os.getpid)
        return self.first.done() and not self.first.exception()

    def end(self) -> None:
        """Let the other process end with what it is at; what is still starting ends with this one."""
        if self.pool and self.ready():
            self.pool.shutdown(cancel_futures=True)
        self.pool = self.first = None
        gc.collect()  # its locks are given back: a server that a signal ends does nothing at its exit


def takes_long(scope: Scope, most: int) -> bool:
    """Whether a request is for the other process. most: bytes; a longer body, and one of unknown length, is not

    >>> takes_long({"type": "http", "path": "/api/ratio", "query_string": b"amount=100", "headers": []}, 5000)
    False
    >>> [takes_long({"type": "http", "path": "/api/ratio", "query_string": b"", "headers": [(b"content-length", n)]},
    ...             5000) for n in (b"90", b"4000", b"9000", b"none")]
    [False, True, False, False]
    >>> [takes_long({"type": "http", "path": "/boat/", "query_string": query, "headers": []}, 5000)
    ...  for query in (b"", b"joints.0.length=2")]
    [False, True]
    """
    if scope["type"] != "http":
        return False
    length = next((value for name, value in scope["headers"] if name == b"content-length"), b"0")
    size = int(length) if length.isdigit() else most + 1
    asked = max(size, len(scope["query_string"]))
    if not asked or size > most or any(name == b"transfer-encoding" for name, _ in scope["headers"]):
        return False
    return asked > LONG or scope["path"].rstrip("/").rpartition("/")[2] in HEAVY


def begun(make: Make, given: tuple) -> None:
    """Make the app of this process, then give way; it ends with the server, however that ends."""
    server = multiprocessing.parent_process()
    assert server, "the server itself gives way to nobody"
    signal.signal(signal.SIGINT, signal.SIG_IGN)  # the terminal sends it to both
    threading.Thread(target=ended_with, args=(server,), daemon=True).start()
    at_work(make, given)  # at once: until then the server answers all, and its short questions wait for the long ones
    with contextlib.suppress(OSError):
        os.nice(GIVES_WAY)  # this thread, and those that it starts from now on
    made(make, given)


def ended_with(server: BaseProcess) -> None:
    """Wait until the server is gone, and go as well."""
    server.join()
    os._exit(0)


@functools.cache
def at_work(make: Make, given: tuple) -> ASGIApp:
    """The app of this process."""
    return make(*given)


@functools.cache
def made(make: Make, given: tuple) -> tuple[ASGIApp, asyncio.AbstractEventLoop]:
    """The app of this process and the loop that it answers in, which runs in a thread of its own: threads that work
    for it, and what they remember, last as long as what it runs."""
    loop = asyncio.new_event_loop()
    threading.Thread(target=loop.run_until_complete, args=(asyncio.Event().wait(),), daemon=True).start()
    return at_work(make, given), loop


def answered(make: Make, given: tuple, scope: Scope, body: bytes) -> Answer:
    """All that the app of this process sends for one request."""
    app, loop = made(make, given)
    left: Answer = [{"type": "http.request", "body": body, "more_body": False}]
    found: Answer = []

    async def receive() -> Message:
        return left.pop() if left else {"type": "http.disconnect"}

    async def send(message: Message) -> None:
        found.append(message)

    async def ask() -> None:
        await app(scope, receive, send)

    asyncio.run_coroutine_threadsafe(ask(), loop).result()
    return found
