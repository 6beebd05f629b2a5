"""The tasks a builder is about to do, and what is told about each of them, in the order of reading."""
from . import tasks_cleaning, tasks_mixing, tasks_shared, tasks_trouble

# key, label, the topics that matter most for it (they stand in sight, the others fold away)
TASKS = (
    ("open", "Opening and measuring", ("hands", "eyes", "skin")),
    ("mix", "Mixing", ("hands", "eyes", "fire")),
    ("powder", "Adding powders", ("breathing", "eyes", "air")),
    ("lay", "Laying and rolling", ("hands", "skin", "clothes")),
    ("confined", "Inside a hull or confined space", ("have", "air", "breathing")),
    ("wipe", "Wiping with solvent", ("fire", "air", "hands")),
    ("clean", "Cleaning tools", ("hands", "skin", "fire")),
    ("peel", "Peeling and washing", ("hands", "eyes", "skin")),
    ("sand", "Sanding", ("hands", "eyes", "breathing", "skin", "air")),
    ("hot", "A pot that heats up", ("have", "fire", "others")),
    ("leftover", "Leftovers", ("fire", "hands", "others")),
    ("waste", "Waste", ("hands", "fire", "others")),
    ("spill", "Spills", ("have", "hands", "air")),
    ("fire", "Fire", ("fire", "others", "breathing")),
)

TOPICS = (
    ("have", "Have ready"),
    ("hands", "Hands"),
    ("eyes", "Eyes"),
    ("breathing", "Breathing"),
    ("skin", "Skin"),
    ("clothes", "Clothes"),
    ("air", "Air"),
    ("fire", "Fire"),
    ("others", "Bystanders and children"),
    ("never", "Never"),
    ("aid", "First aid"),
    ("stop", "When to stop"),
)

# how cured what is sanded is: key, label, the key of the statement that leads
CURED = (
    ("unknown", "Not sure", "sand_unsure"),
    ("soft", "Gummy, or a nail marks it", "sand_soft"),
    ("hard", "Hard, dusts dry", "sand_hard"),
)


def statements(task):
    """The rows told about a task: (key, tasks, topic, text, mark, source), those of several tasks behind its own."""
    found = []
    for table in (tasks_mixing.MIXING, tasks_cleaning.CLEANING, tasks_trouble.TROUBLE, tasks_shared.SHARED):
        found.extend([row for row in table if task in row[1]])
    return found
