"""Tape left: how much of a tape can still be laid before a cove is hard."""
from math import floor

STEP = 0.1  # m; what a hand cuts by


def tape_left(left: float, before: float, work: float, length: float, least: float) -> float:
    """Length of tape that is rolled in time [m], down to a tenth of a metre, none where it is less than `least`.
        x = (left - before) * length / work, at most length

    left: of the window [s]; before: what is done before the first of it is wet out [s]; work: wetting, laying and
    rolling all of it [s]; length: all of it [m]

    >>> tape_left(900.0, 180.0, 612.0, 2.4, 0.5), round(tape_left(600.0, 180.0, 612.0, 2.4, 0.5), 6)
    (2.4, 1.6)
    >>> tape_left(300.0, 180.0, 612.0, 2.4, 0.5), tape_left(100.0, 180.0, 612.0, 2.4, 0.5)
    (0.0, 0.0)
    """
    fits = (left - before) * length / work if work else length
    if fits >= length - 1e-9:
        return length
    down = floor(fits / STEP + 1e-6) * STEP
    return down if down >= least - 1e-9 else 0.0
