"""The server: a move's whole answer against an endpoint that answers nothing, both in this process."""
import asyncio
import time

import httpx
from covemix.server.app import create_app
from covemix.server.examples import BODIES
from fastapi import FastAPI

from .paired import Ratio, ratio

ROUNDS, CALLS = 25, 20
BOAT = {"joints": [{**BODIES["boat"]["joints"][0], "length_m": 2 + place / 50} for place in range(10)]}
# what it is called, move, typed
MOVES = (("ratio", "ratio", {}), ("joint", "joint", {}), ("boat of ten", "boat", BOAT))


def measured() -> list[tuple[str, str, Ratio]]:
    """(what, against what, ratio) of the API."""
    return asyncio.run(_measured())


async def _measured():
    empty = FastAPI()

    @empty.post("/nothing")
    def nothing() -> dict:
        return {}

    async with _asking(empty) as floor, _asking(create_app()) as ours:
        found = []
        for name, move, typed in MOVES:
            pairs = []
            for _ in range(ROUNDS + 1):
                pairs.append((await _seconds(ours, f"/api/{move}", typed), await _seconds(floor, "/nothing", typed)))
            found.append((f"`POST /api/{name}`", "an empty FastAPI endpoint", ratio(pairs[1:])))
        return found


def _asking(app):
    return httpx.AsyncClient(transport=httpx.ASGITransport(app), base_url="http://bench")


async def _seconds(client, path, typed):
    began = time.perf_counter()
    for _ in range(CALLS):
        (await client.post(path, json=typed)).raise_for_status()
    return time.perf_counter() - began
