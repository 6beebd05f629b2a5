"""A wait that ends: none of what tests wait for may keep a whole run."""

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
