"""A server in a thread of the tests, which can be killed and started again in no time."""
import socket
import threading
from pathlib import Path

import uvicorn
from covemix.server.build import HOUSE
from house import made
from waits import LONG, until


def without(app, missing: str):
    """The app with one file gone, as after half an upload."""

    async def answer(scope, receive, send):
        if scope["type"] == "http" and scope["path"].endswith(missing):
            scope = dict(scope, path="/nothing")
        await app(scope, receive, send)

    return answer


def instead(endings: tuple[str, ...], kind: str, body: bytes):
    """What wraps an app so that the paths with these endings are answered with something else, as if all were well."""

    def wrap(app):
        async def answer(scope, receive, send):
            if scope["type"] != "http" or not scope["path"].endswith(endings):
                await app(scope, receive, send)
                return
            headers = [(b"content-type", kind.encode())]
            await send({"type": "http.response.start", "status": 200, "headers": headers})
            await send({"type": "http.response.body", "body": body})

        return answer

    return wrap


class Server:
    """Serves one house on a port of its own, and after a restart the same house or another on the same port."""

    def __init__(self):
        with socket.socket() as free:
            free.bind(("127.0.0.1", 0))
            self.port = free.getsockname()[1]
        self.url = f"http://localhost:{self.port}"
        self.running = self.thread = None

    def start(self, house: Path = HOUSE, missing: str = "", wrap=lambda app: app, made=made):
        served = wrap(without(made(house), missing) if missing else made(house))
        config = uvicorn.Config(served, port=self.port, log_level="critical", lifespan="off",
                                timeout_graceful_shutdown=0)
        self.running = uvicorn.Server(config)
        self.thread = threading.Thread(target=self.running.run, daemon=True)
        self.thread.start()
        until(lambda: self.running.started, self.thread)
        return self

    def stop(self):
        """Killed: connections that stand open are dropped."""
        if self.running:
            self.running.should_exit = self.running.force_exit = True
            self.thread.join(LONG)
            assert not self.thread.is_alive()
            self.running = None
