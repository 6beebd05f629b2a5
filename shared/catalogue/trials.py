"""Trials: how exact a kitchen thermometer and a watch are, and how far what is remembered may be from one cup."""
from .marks import JUDGED

MASS = 0.100  # kg
LEAST_MASS, MOST_MASS = 0.020, 0.150  # kg
# how exact what is typed is, as deviations: a reading, a minute that is typed whole, a moment judged by eye
READING, MINUTE, MOMENT = 1.0, 20.0, 0.06  # K, s, of the time
LAG = 15.0  # s: a thermometer shows what was so long ago
# one temperature for a cup whose middle runs ahead of it: how far off, of the rise, and of the time
OFF_MODEL, OFF_TIME = 0.1, 0.05
OFF_END = 0.08  # of the time until it is thick, whatever the readings say
STRINGY, STRINGY_SPREAD = 0.50, 0.06  # cured, and how far from it
# how far a cup may be from what is estimated of it, as deviations of the logarithm
LOSS_SPREAD, HEAT_SPREAD = 0.4, 0.2
STRANGE = 6.0  # deviations: further off, and a reading does not belong to the others
UNSURE = 0.2  # deviation of the time until it is thick, above it no figure is given
NOT_TOLD = 0.75  # of what was remembered: a doubt that is no smaller tells nothing of the loss
SWINGS = 5.0  # K: a cup that cooled by more and warmed again, or is colder than air and mix by more, was misread
UP_TO = 2.0  # times its mass: from there on a cup that shed more heat than estimated tells nothing of others
ANOTHER = 3.0  # K: a test in other air than this is another one, and is kept beside it
NINETY = 1.645  # deviations: nine of ten lie within

# title, rows: what, value, unit, mark
TABLES = (
    ("facts-test-cup", (
        ("facts-test-cup.mass", MASS, "kg", JUDGED),
        ("facts-test-cup.least-mass", LEAST_MASS, "kg", JUDGED),
        ("facts-test-cup.most-mass", MOST_MASS, "kg", JUDGED),
        ("facts-test-cup.reading", READING, "dK", JUDGED),
        ("facts-test-cup.lag", LAG, "s", JUDGED),
        ("facts-test-cup.minute", MINUTE, "s", JUDGED),
        ("facts-test-cup.moment", MOMENT, "%", JUDGED),
        ("facts-test-cup.off-model", OFF_MODEL, "%", JUDGED),
        ("facts-test-cup.off-time", OFF_TIME, "%", JUDGED),
        ("facts-test-cup.off-end", OFF_END, "%", JUDGED),
        ("facts-test-cup.stringy", STRINGY, "%", JUDGED),
        ("facts-test-cup.stringy-spread", STRINGY_SPREAD, "%", JUDGED),
        ("facts-test-cup.loss-spread", LOSS_SPREAD, "%", JUDGED),
        ("facts-test-cup.heat-spread", HEAT_SPREAD, "%", JUDGED),
        ("facts-test-cup.strange", STRANGE, "", JUDGED),
        ("facts-test-cup.unsure", UNSURE, "%", JUDGED),
        ("facts-test-cup.not-told", NOT_TOLD, "%", JUDGED),
        ("facts-test-cup.swings", SWINGS, "dK", JUDGED),
        ("facts-test-cup.up-to", UP_TO, "times", JUDGED),
        ("facts-test-cup.another", ANOTHER, "dK", JUDGED),
        ("facts-test-cup.ninety", NINETY, "", JUDGED)), (0,), (1, 2)),
)
