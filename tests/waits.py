"""A wait that ends: none of what tests wait for may keep a whole run."""

from concurrent.futures import ThreadPoolExecutor

LONG = 60  # seconds until a test gives up; what is right comes long before
STEP = 0.01  # seconds between two looks


def until(seen, thread):
    """Wait for what a thread brings about; red where it does not come, also where the thread has ended.

    >>> import threading
    >>> until(lambda: True, threading.Thread())
    """
    for _ in range(int(LONG / STEP)):
        if seen():
            return
        if not thread.is_alive():
            break
        thread.join(STEP)
    assert seen(), f"it did not come within {LONG} s, or its thread has ended"


def in_own_thread(call, *given):
    """What a call answers that runs a loop: the browser tests of the same run keep one in this thread.

    >>> in_own_thread(max, 2, 3)
    3
    """
    with ThreadPoolExecutor(1) as alone:
        return alone.submit(call, *given).result(LONG)
