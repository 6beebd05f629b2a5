"""The crowd: a served process beside heavy questions, two worker processes against one, and memory over many requests.

Server and load share two cores, so the server is pinned to the first of them and the load to the other, where the
machine can pin. Run as a program it asks the heavy question until it is ended, and tells how often:
`python -m bench.crowd PORT CLIENTS`.
"""
import contextlib
import http.client
import json
import os
import signal
import socket
import subprocess
import sys
import threading
import time
from collections.abc import Iterator
from pathlib import Path
from statistics import quantiles

from covemix.server.examples import BODIES

from .paired import ratio

HOUSE = Path(__file__).parents[1]
LIGHT, HEAVY = "/api/ratio", "/api/boat"
BOAT = json.dumps({"joints": [{**BODIES["boat"]["joints"][0], "length_m": 2 + place / 50} for place in range(60)]})
CLIENTS = 4
TURNS, CALLS = 6, 600  # of light questions alone and beside the heavy ones
WINDOWS, SECONDS = 3, 5.0  # of heavy ones, with one process and with two
WARM, MANY, LOOKS = 5_000, 50_000, 5  # requests; memory is looked at after the first, and so often while the rest come
LINES = 2  # that ask for them
LONG = 120  # seconds that a start may take
ENDED = signal.SIGTERM
JSON = {"content-type": "application/json"}


def measured() -> list[tuple[str, str, str]]:
    """(what, against what, ratio) of a served process."""
    beside = f"p99 of `POST {LIGHT}` beside {CLIENTS} clients that ask for a boat of 60"
    light = [(beside, "its own p99 alone", _held_up())]
    many = [("Boats of 60 answered by two processes", "by one, as many clients", _two_against_one())]
    return light + many + [(f"Memory after {MANY:,} requests more", f"after {WARM:,}", _memory())]


def _held_up() -> str:
    pairs = []
    with served(cores={0}) as (_, port), pinned({1}):
        _times(port, CALLS)
        with heavy(port):  # which begins the process that answers them
            time.sleep(SECONDS)
        for _ in range(TURNS):
            alone = _p99(_times(port, CALLS))
            with heavy(port):
                pairs.append((_p99(_times(port, CALLS)), alone))
    return str(ratio(pairs))


def _two_against_one() -> str:
    pairs = []
    with served(workers=2) as (_, two), served(workers=1) as (_, one), pinned({1}):
        for _ in range(WINDOWS):
            counts = []
            for port in (two, one):
                with heavy(port) as asking:
                    time.sleep(SECONDS)
                counts.append(asking.answered)
            pairs.append((counts[0], counts[1]))
    return str(ratio(pairs))


def _memory() -> str:
    pairs = []
    with served() as (process, port), pinned({1}):
        _ask_many(port, WARM)
        before = _held(process.pid)
        for _ in range(LOOKS):
            _ask_many(port, MANY // LOOKS)
            pairs.append((_held(process.pid), before))
    found = ratio(pairs)
    return f"{found.middle:.3f} ({found.low:.3f} to {found.high:.3f}), at the end {pairs[-1][0] / before:.3f}"


def _held(pid: int) -> int:
    """What a process has written in memory of its own, in kB."""
    rows = Path(f"/proc/{pid}/smaps_rollup").read_text(encoding="ascii").splitlines()
    return next(int(row.split()[1]) for row in rows if row.startswith("Private_Dirty:"))


def _ask_many(port: int, count: int) -> None:
    lines = [threading.Thread(target=_times, args=(port, count // LINES)) for _ in range(LINES)]
    for one in lines:
        one.start()
    for one in lines:
        one.join()


def _p99(times: list[float]) -> float:
    return quantiles(times, n=100, method="inclusive")[98]


def _times(port: int, count: int) -> list[float]:
    """How long light questions take on one line, each with another amount [s]."""
    line, found = http.client.HTTPConnection("127.0.0.1", port), []
    for place in range(count):
        body = json.dumps({"amount": f"{100 + place % 400} g"})
        began = time.perf_counter()
        _ask(line, LIGHT, body)
        found.append(time.perf_counter() - began)
    line.close()
    return found


def _ask(line: http.client.HTTPConnection, path: str, body: str) -> None:
    line.request("POST", path, body, JSON)
    answer = line.getresponse()
    answer.read()
    assert answer.status == 200, answer.status


@contextlib.contextmanager
def pinned(cores: set[int]) -> Iterator[None]:
    """Within it this process, and what it starts, keeps to these cores."""
    if not hasattr(os, "sched_getaffinity"):
        yield
        return
    before = os.sched_getaffinity(0)
    os.sched_setaffinity(0, cores & before or before)
    try:
        yield
    finally:
        os.sched_setaffinity(0, before)


@contextlib.contextmanager
def served(workers: int | None = None, cores: set[int] | None = None) -> Iterator[tuple[subprocess.Popen, int]]:
    """`covemix serve`, or that many processes as docs/SERVER.md says, and the port."""
    with socket.socket() as free:
        free.bind(("127.0.0.1", 0))
        port = free.getsockname()[1]
    command = ["covemix.server", "serve", "--port", str(port)] if not workers else [
        "uvicorn", "covemix.server.app:create_app", "--factory", "--workers", str(workers), "--port", str(port),
        "--timeout-graceful-shutdown", "3", "--no-access-log", "--log-level", "warning"]
    with pinned(cores) if cores else contextlib.nullcontext():
        process = subprocess.Popen([sys.executable, "-m", *command], stdout=subprocess.DEVNULL)
    try:
        end = time.monotonic() + LONG
        while True:
            try:
                _ask(http.client.HTTPConnection("127.0.0.1", port), HEAVY, BOAT)
                break
            except OSError:
                assert time.monotonic() < end and process.poll() is None, "it does not start"
                time.sleep(0.2)
        yield process, port
    finally:
        process.send_signal(ENDED)
        process.wait(LONG)


class Asking:
    """Clients that ask the heavy question, in a process of their own."""

    answered = 0


@contextlib.contextmanager
def heavy(port: int) -> Iterator[Asking]:
    """Within it they ask; behind it stands how many were answered."""
    asking = Asking()
    with subprocess.Popen([sys.executable, "-m", "bench.crowd", str(port), str(CLIENTS)], stdin=subprocess.PIPE,
                          stdout=subprocess.PIPE, text=True, cwd=HOUSE) as process:
        assert process.stdout and process.stdout.readline()  # the first is answered: they are all under way
        yield asking
        told, _ = process.communicate("\n")
    asking.answered = int(told)


def main(port: int, clients: int) -> None:
    """The load gives way to the clock that it shares a core with: what is measured is the server."""
    os.nice(19)
    ended, counts = threading.Event(), [0] * clients

    def ask(place: int) -> None:
        line = http.client.HTTPConnection("127.0.0.1", port)
        while not ended.is_set():
            _ask(line, HEAVY, BOAT)
            counts[place] += 1

    lines = [threading.Thread(target=ask, args=(place,)) for place in range(clients)]
    for one in lines:
        one.start()
    while not any(counts):
        time.sleep(0.005)
    begun = sum(counts)
    print("begun", flush=True)
    sys.stdin.readline()
    told = sum(counts) - begun
    ended.set()
    for one in lines:
        one.join()
    print(told)


if __name__ == "__main__":
    main(*map(int, sys.argv[1:]))
