"""Connections whose request does not arrive: closed, so that half-sent ones do not pile up."""
import asyncio
from typing import Any

from uvicorn.protocols.http.h11_impl import H11Protocol

WHOLE = 10.0  # seconds in which a request arrives whole, its body too


class Timed(H11Protocol):
    """uvicorn's protocol, which by itself waits for ever: this one drops a request that is not whole within WHOLE.

    It leans on what uvicorn keeps of a request (`cycle`); `tests/test_serving.py` sees when that changes.
    """

    late: asyncio.TimerHandle | None = None

    def connection_made(self, transport: Any) -> None:
        super().connection_made(transport)
        self._wait()

    def connection_lost(self, exc: Exception | None) -> None:
        self._arrived()
        super().connection_lost(exc)

    def data_received(self, data: bytes) -> None:
        if self.late is None and self._idle():
            self._wait()
        super().data_received(data)
        if not self._idle() and not self.cycle.more_body:
            self._arrived()

    def _idle(self) -> bool:
        """Whether no request is being answered: what comes now begins one."""
        return self.cycle is None or self.cycle.response_complete

    def _wait(self) -> None:
        self._arrived()
        self.late = self.loop.call_later(WHOLE, self._drop)

    def _arrived(self) -> None:
        if self.late:
            self.late.cancel()
            self.late = None

    def _drop(self) -> None:
        self.transport.abort()
