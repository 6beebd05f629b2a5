"""`covemix serve`: listens, says what it does, and ends soon when it is told to."""
import argparse
import asyncio
import contextlib
import logging
import os
import socket
import ssl
import stat
import time
from collections.abc import Iterator
from concurrent.futures import Future
from pathlib import Path
from typing import Any

import uvicorn
from starlette.types import ASGIApp

from .apart import Apart
from .api import MOST_BODY
from .app import create_app
from .front import Logged, Prefixed
from .timed import WHOLE, Timed

LAST = 3  # seconds in which what is being answered may end, once the server is told to stop
HERE = "127.0.0.1"
ALL = "0.0.0.0"


class Unready(Exception):
    """Why the server cannot start, in a sentence for whoever started it."""


def say(text: str) -> None:
    """A line on the terminal, at once."""
    print(text, flush=True)


def serve(given: argparse.Namespace) -> None:
    """Serve until somebody stops it. given: the options of the command."""
    secure = {}
    if given.certificate:
        fits(given.certificate, given.key)
        secure = {"ssl_certfile": given.certificate, "ssl_keyfile": given.key}
    with listening(given) as listener:
        host = given.host or HERE
        shown = "localhost" if host in (HERE, ALL) else f"[{host}]" if ":" in host else host
        address = f"http{'s' if secure else ''}://{shown}:{given.port}{given.root_path.rstrip('/')}/"
        run(listener, given, f"Covemix is at {given.socket or address}", **secure)


def run(listener: socket.socket, given: argparse.Namespace, ready: str, **secure: Path) -> None:
    """Serve the app on a socket. ready: what is said once it answers."""
    made = create_app(origins=given.allow_origin)
    app: ASGIApp = Apart(made, MOST_BODY, that_answers, *given.allow_origin)
    app = Prefixed(app, given.root_path) if given.root_path else app
    server = Said(config(Logged(app, say) if given.log else app, **secure))
    server.ready = ready
    begun = time.monotonic()
    made.state.first.told(lambda worker: say(_kept(worker, time.monotonic() - begun)))
    with contextlib.suppress(KeyboardInterrupt):
        server.run(sockets=[listener])


def that_answers(*origins: str) -> ASGIApp:
    """The same app in another process, which packs no copy."""
    return create_app(origins=origins, packs=False)


class Said(uvicorn.Server):
    """A server that says when it listens."""

    ready = ""

    async def startup(self, sockets: list[socket.socket] | None = None) -> None:
        await super().startup(sockets=sockets)
        say(self.ready)


def _kept(worker: Future, seconds: float) -> str:
    if worker.cancelled() or worker.exception():
        return "The copy for phones could not be made. Start again; if that does not help, report it."
    return f"The copy that phones keep is ready (packed in {seconds:.0f} s)."


def config(app: ASGIApp, **more: Any) -> uvicorn.Config:
    """How the app is served: nothing that names a reader is written, and half a request holds no connection.
    """
    logging.getLogger("uvicorn.error").addFilter(_tells)
    asyncio.constants.SSL_HANDSHAKE_TIMEOUT = WHOLE  # type: ignore[attr-defined]  # uvicorn hands on none of its own
    return uvicorn.Config(app, http=Timed, ws="none", log_level="warning", access_log=False, server_header=False,
                          date_header=False, timeout_graceful_shutdown=LAST, **more)


def _tells(record: logging.LogRecord) -> bool:
    """That the last requests were not waited for is no error."""
    why = (record.exc_info or (None,))[0]
    return "timeout graceful shutdown exceeded" not in record.msg and not (
        why is not None and issubclass(why, asyncio.CancelledError))


def fits(certificate: Path, key: Path) -> None:
    """Refuse a certificate and a key that cannot serve."""
    for file in (certificate, key):
        if not file.is_file():
            raise Unready(f"there is no file {file}.")
    try:
        ssl.SSLContext(ssl.PROTOCOL_TLS_SERVER).load_cert_chain(certificate, key)
    except (ssl.SSLError, OSError) as error:
        raise Unready(f"{certificate} and {key} do not go together, or one of them is no PEM file.") from error


@contextlib.contextmanager
def listening(given: argparse.Namespace) -> Iterator[socket.socket]:
    """The socket that the options ask for, taken before anything slow is done."""
    if given.socket is None:
        with taken(given.host or HERE, given.port) as listener:
            yield listener
        return
    with at_path(given.socket) as listener:
        yield listener


def taken(host: str, port: int) -> socket.socket:
    """A socket at that address."""
    try:
        family, kind, protocol, _, address = socket.getaddrinfo(host, port, type=socket.SOCK_STREAM)[0]
        listener = socket.socket(family, kind, protocol)
    except OSError as error:
        raise Unready(f"{host} is no address of this machine.") from error
    if os.name == "posix":
        listener.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
    try:
        listener.bind(address)
    except OSError as error:
        listener.close()
        raise Unready(f"cannot listen at {host}, port {port}: {error.strerror}. Stop what uses it, or choose another "
                      f"port with --port.") from error
    return listener


@contextlib.contextmanager
def at_path(path: Path) -> Iterator[socket.socket]:
    """A unix socket for its owner and group; what was left there by a server that is gone is taken away."""
    if path.exists():
        if not stat.S_ISSOCK(path.stat().st_mode):
            raise Unready(f"{path} is no socket. Choose another path with --socket.")
        with socket.socket(socket.AF_UNIX) as asked:
            if asked.connect_ex(str(path)) == 0:
                raise Unready(f"another server listens at {path}.")
        path.unlink()
    before = os.umask(0o117)
    listener = socket.socket(socket.AF_UNIX)
    try:
        listener.bind(str(path))
    except OSError as error:
        listener.close()
        raise Unready(f"cannot make the socket {path}: {error.strerror}.") from error
    finally:
        os.umask(before)
    try:
        with listener:
            yield listener
    finally:
        path.unlink(missing_ok=True)
