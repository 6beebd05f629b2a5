"""Limits of a day's plan and of a boat's list: where they give up, and what they ask back."""
from .marks import JUDGED

MOST_PIECES, MOST_WORK, MOST_PARTS, MOST_BATCHES = 60, 120, 20, 60
MOST_TOLD = 20  # batches step by step; nobody lays more before planning anew
LONG_DAY = 12 * 3600.0  # s
POINTS_GAP = 6 * 3600.0  # s
BEFORE = 6 * 3600.0  # s
COOLER, EARLIER, SLOWER = 5.0, 7200.0, 1.5  # K, s, times: what is tried as a help
# of a boat: an answer within them is worked out on a slow phone in a second (measured)
MOST_CUT, MOST_FACES, MOST_ANGLES, MOST_ROLLS = 1000, 600, 240, 60
WIDEST_PACKS = 100
WARMTH = 293.15  # K, where no temperature is typed

# title, rows: what, value, unit, mark
TABLES = (
    ("Plan, where it gives up", (
        ("Most pieces of a day", MOST_PIECES, "", JUDGED),
        ("Most pieces once the long ones are cut", MOST_WORK, "", JUDGED),
        ("Most parts of one piece", MOST_PARTS, "", JUDGED),
        ("Most batches of a day", MOST_BATCHES, "", JUDGED),
        ("Most batches shown step by step", MOST_TOLD, "", JUDGED)), (0,), (1, 2)),
    ("Plan, what is asked back", (
        ("A long day, hours of work", LONG_DAY, "hours", JUDGED),
        ("Hours between two temperatures", POINTS_GAP, "hours", JUDGED),
        ("Looked at before its start, nothing late yet", BEFORE, "hours", JUDGED)), (0,), (1, 2)),
    ("Plan, what might help", (
        ("Move to the shade, cooler by", COOLER, "dK", JUDGED),
        ("Start earlier by", EARLIER, "hours", JUDGED),
        ("A slower hardener, working times", SLOWER, "times", JUDGED)), (0,), (1, 2)),
    ("Boat, most that one list takes", (
        ("Pieces of tape and peel ply", MOST_CUT, "", JUDGED),
        ("Faces to work on", MOST_FACES, "", JUDGED),
        ("Angles along all seams", MOST_ANGLES, "", JUDGED),
        ("Rolls of one kind", MOST_ROLLS, "", JUDGED),
        ("Largest pack, of the smallest", WIDEST_PACKS, "times", JUDGED),
        ("Temperature counted with where none is typed", WARMTH, "K", JUDGED)), (0,), (1, 2)),
)
