"""A slow phone: processes that stand still most of the time, all their threads with them.

The browser's own way of slowing down reaches the page's thread only, and the engine works in another one.
Run as a program it slows the given processes until its standard input closes: slow.py RATE PID ...
"""
import contextlib
import os
import signal
import subprocess
import sys
import threading
import time

PERIOD = 0.004  # seconds: several of them pass within an answer


@contextlib.contextmanager
def slowed(pids: list[int], rate: float):
    """Within it the processes get one part in `rate` of their time."""
    if rate == 1:
        yield
        return
    command = [sys.executable, __file__, str(rate), *map(str, pids)]
    holder = subprocess.Popen(command, stdin=subprocess.PIPE, stdout=subprocess.PIPE)
    try:
        holder.stdout.readline()  # it has begun
        yield
    finally:
        holder.communicate()


def main(rate: float, pids: list[int]) -> None:
    ended = threading.Event()
    threading.Thread(target=lambda: (sys.stdin.read(), ended.set()), daemon=True).start()
    runs = PERIOD / rate
    print("slow", flush=True)
    try:
        while not ended.is_set():
            _tell(pids, signal.SIGSTOP)
            time.sleep(PERIOD - runs)
            _tell(pids, signal.SIGCONT)
            time.sleep(runs)
    finally:
        _tell(pids, signal.SIGCONT)


def _tell(pids, what):
    for pid in pids:
        with contextlib.suppress(ProcessLookupError):
            os.kill(pid, what)


if __name__ == "__main__":
    main(float(sys.argv[1]), [int(pid) for pid in sys.argv[2:]])
