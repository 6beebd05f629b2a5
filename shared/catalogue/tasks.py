"""The tasks a builder is about to do, and what is told about each of them, in the order of reading."""
from . import tasks_cleaning, tasks_mixing, tasks_shared, tasks_trouble

# key, label, the topics that matter most for it (they stand in sight, the others fold away)
TASKS = (
    ("open", "task-open", ("hands", "eyes", "skin")),
    ("mix", "task-mix", ("hands", "eyes", "fire")),
    ("powder", "task-powder", ("breathing", "eyes", "air")),
    ("lay", "task-lay", ("hands", "skin", "clothes")),
    ("confined", "task-confined", ("have", "air", "breathing")),
    ("wipe", "task-wipe", ("fire", "air", "hands")),
    ("clean", "task-clean", ("hands", "skin", "fire")),
    ("peel", "task-peel", ("hands", "eyes", "skin")),
    ("sand", "task-sand", ("hands", "eyes", "breathing", "skin", "air")),
    ("hot", "task-hot", ("have", "fire", "others")),
    ("leftover", "task-leftover", ("fire", "hands", "others")),
    ("waste", "task-waste", ("hands", "fire", "others")),
    ("spill", "task-spill", ("have", "hands", "air")),
    ("fire", "task-fire", ("fire", "others", "breathing")),
)

TOPICS = (
    ("have", "topic-have"),
    ("hands", "topic-hands"),
    ("eyes", "topic-eyes"),
    ("breathing", "topic-breathing"),
    ("skin", "topic-skin"),
    ("clothes", "topic-clothes"),
    ("air", "topic-air"),
    ("fire", "topic-fire"),
    ("others", "topic-others"),
    ("never", "topic-never"),
    ("aid", "topic-aid"),
    ("stop", "topic-stop"),
)

# how cured what is sanded is: key, label, the key of the statement that leads
CURED = (
    ("unknown", "safety-cured.unknown", "sand_unsure"),
    ("soft", "safety-cured.soft", "sand_soft"),
    ("hard", "safety-cured.hard", "sand_hard"),
)


def statements(task: str) -> list:
    """The rows told about a task: (key, tasks, topic, text, mark, source), those of several tasks behind its own."""
    found = []
    for table in (tasks_mixing.MIXING, tasks_cleaning.CLEANING, tasks_trouble.TROUBLE, tasks_shared.SHARED):
        found.extend([row for row in table if task in row[1]])
    return found
