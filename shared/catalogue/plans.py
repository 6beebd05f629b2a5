"""Limits of a day's plan and of a boat's list: where they give up, and what they ask back."""
from .marks import JUDGED

MOST_PIECES, MOST_WORK, MOST_PARTS, MOST_BATCHES = 60, 120, 20, 60
MOST_TOLD = 20  # batches step by step; nobody lays more before planning anew
LONG_DAY = 12 * 3600.0  # s
POINTS_GAP = 6 * 3600.0  # s
BEFORE = 6 * 3600.0  # s
COOLER, EARLIER, SLOWER = 5.0, 7200.0, 1.5  # K, s, times: what is tried as a help
# of a run: a shorter piece of tape is not begun; what a window keeps spare, or it is a hurry: this long, or this share
# of the work to come
LEAST_TAPE, SPARE_TIME, SPARE_SHARE = 0.5, 120.0, 0.15  # m, s, -
# of a boat: an answer within them is worked out on a slow phone in a second (measured)
MOST_CUT, MOST_FACES, MOST_ANGLES, MOST_ROLLS = 1000, 600, 240, 60
WIDEST_PACKS = 100
WARMTH = 293.15  # K, where no temperature is typed

# title, rows: what, value, unit, mark
TABLES = (
    ("facts-plan-most", (
        ("facts-plan-most.most-pieces", MOST_PIECES, "", JUDGED),
        ("facts-plan-most.most-work", MOST_WORK, "", JUDGED),
        ("facts-plan-most.most-parts", MOST_PARTS, "", JUDGED),
        ("facts-plan-most.most-batches", MOST_BATCHES, "", JUDGED),
        ("facts-plan-most.most-told", MOST_TOLD, "", JUDGED)), (0,), (1, 2)),
    ("facts-plan-odd", (
        ("facts-plan-odd.long-day", LONG_DAY, "hours", JUDGED),
        ("facts-plan-odd.points-gap", POINTS_GAP, "hours", JUDGED),
        ("facts-plan-odd.before", BEFORE, "hours", JUDGED)), (0,), (1, 2)),
    ("facts-plan-help", (
        ("facts-plan-help.cooler", COOLER, "dK", JUDGED),
        ("facts-plan-help.earlier", EARLIER, "hours", JUDGED),
        ("facts-plan-help.slower", SLOWER, "times", JUDGED)), (0,), (1, 2)),
    ("facts-run", (
        ("facts-run.least-tape", LEAST_TAPE, "m", JUDGED),
        ("facts-run.spare-time", SPARE_TIME, "min", JUDGED),
        ("facts-run.spare-share", SPARE_SHARE, "%", JUDGED)), (0,), (1, 2)),
    ("facts-boat-most", (
        ("facts-boat-most.most-cut", MOST_CUT, "", JUDGED),
        ("facts-boat-most.most-faces", MOST_FACES, "", JUDGED),
        ("facts-boat-most.most-angles", MOST_ANGLES, "", JUDGED),
        ("facts-boat-most.most-rolls", MOST_ROLLS, "", JUDGED),
        ("facts-boat-most.widest-packs", WIDEST_PACKS, "times", JUDGED),
        ("facts-boat-most.warmth", WARMTH, "K", JUDGED)), (0,), (1, 2)),
)
