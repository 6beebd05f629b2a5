"""Test cup: how exact a kitchen thermometer and a watch are, and how far what is remembered may be from one cup."""
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
    ("Test cup", (
        ("Mix in a test cup", MASS, "kg", JUDGED),
        ("Mix in a test cup, least", LEAST_MASS, "kg", JUDGED),
        ("Mix in a test cup, most", MOST_MASS, "kg", JUDGED),
        ("Kitchen thermometer off by", READING, "dK", JUDGED),
        ("Kitchen thermometer late by", LAG, "s", JUDGED),
        ("Typed minute off by", MINUTE, "s", JUDGED),
        ("Moment seen by eye off by", MOMENT, "%", JUDGED),
        ("One temperature for a cup off by, of the rise", OFF_MODEL, "%", JUDGED),
        ("One temperature for a cup off by, of the time", OFF_TIME, "%", JUDGED),
        ("Test cup's time off by, at least", OFF_END, "%", JUDGED),
        ("Pulls strings once cured", STRINGY, "%", JUDGED),
        ("Pulls strings, off by", STRINGY_SPREAD, "%", JUDGED),
        ("Loss of heat off by", LOSS_SPREAD, "%", JUDGED),
        ("Heat of the mix off by", HEAT_SPREAD, "%", JUDGED),
        ("Test cup's reading asked back, deviations", STRANGE, "", JUDGED),
        ("Test cup too unsure to be kept", UNSURE, "%", JUDGED),
        ("Test cup tells no loss from a doubt of", NOT_TOLD, "%", JUDGED),
        ("Test cup that cooled and warmed again by", SWINGS, "dK", JUDGED),
        ("Mass that a test cup's high loss is believed up to", UP_TO, "times", JUDGED),
        ("Air of another test cup", ANOTHER, "dK", JUDGED),
        ("Nine times in ten, deviations", NINETY, "", JUDGED)), (0,), (1, 2)),
)
