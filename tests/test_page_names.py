"""The page's scripts name no input, no move and no kind of thing of their own accord: what they are told by the
declarations they read from the page. Where one does name some, it says here why."""
import json
import re

import pytest
from covemix.server.pages import PAGES, learns
from covemix.shared.door import moves
from house import build
from test_page_rooms import FILES, ROOT, code

# words in these places are something else
ELSEWHERE = (
    # a store of the phone
    r'\b(?:all|put|putBack|remove|change|kept|unread|unreadEntry|offerRowUndo)\("(?:kit|log|pots)"',
    r'\bstore [!=]== "\w+"|objectStore\("\w+"|createObjectStore\("\w+"|createIndex\("\w+", "\w+"',
    # a notice
    r'\b(?:notice|dismiss)\("[\w-]+"|offerUndo\(\w+, "\w+"|, \w+, "[\w-]+", (?=[`"]|t\()',
    # the key of a sentence
    r'\bt\("[\w.-]+"',
    # a part of what is on the page, or of an event
    r'\b(?:at|part|span|make|element|line)\((?:"\w+", )?"[\w-]+"|(?:block|state)[:=\s]+"\w+"',
    # a screen; and a view asks the moves of its own
    r'\b(?:recall|remember|leadIn|addressOf)\("\w+"|dataset\.to === "\w+"|\bmove: "\w+"',
)
# by script: [why it names them, what it names]
POT = "the page keeps the running pots, and hands the engine what it keeps of one"
ALLOWED = {
    "answer/figure.js": ("kinds of shape", "note strokes"),
    "form/choices.js": ("how a pick marks what is of the kit", "kit"),
    "form/form.js": ("every kept thing has a name", "name"),
    "form/units.js": ("a figure of a tool; an attribute", "shown learned"),
    "kit/backup.js": (POT, "kit log changes duration"),
    "kit/entries.js": ("by what a batch is told", "what"),
    "kit/putty_batches.js": ("every kept thing has a name", "name"),
    "kit/kit.js": ("every kept thing has a name; where people keep what they learned", "name learned"),
    "kit/log.js": ("whose batch it was; off which can of the shelf it comes, and how much",
                   "crew name lot mass mixture on_shelf"),
    "offline/offline.js": ("what the worker may keep now", "face"),
    "page/settings.js": ("the hand that holds the phone", "hand"),
    "phone/alarm.js": ("the state of the sound", "running"),
    "phone/clocks.js": ("only the page can measure them", "now seen seen_at elapsed watched zone zone_next zone_then"),
    "pots/pot.js": ("a screen", "safety"),
    "pots/pots.js": (POT, "done steps started pot duration share changes left_now sent"),
    "share/numbered.late.js": ("the screen whose card is handed to many", "pour"),
    "share/pot_link.js": (POT, "pot started by sent"),
    "share/sheet.js": ("the sheet's own choice", "carries"),
    "store/schema.js": ("a row's shape as it lies on the phone for years, whatever an input is called by then",
                        "filler mixed before after came_out system said done"),
    "views/backup.js": (POT + "; by which name a row of the file is told", "batch place what name log"),
    "views/clock.js": (POT + "; of one that ends it makes a batch of the log",
                       "pot system air batch container lost unseen duration jumped lasts bound most started by place "
                       "timings said after used own_time seam pieces mass temperature at outcome step in usable side"),
    "views/kit.js": ("which kind of thing is told, by which name, and what people learned",
                     "kind kit name people learned"),
    "views/log.js": ("a move's answer is laid out; whether somebody named a batch", "timings what"),
    "views/plan.js": ("whose rates they are, where the list stands, what its clock is set to, what is logged, a line; "
                      "the air that is read once for the day",
                      "log pieces name crew clock running today kit temperature air run plan part"),
    "views/pour.js": ("where it is kept", "pour"),
    "page/to_safety.js": ("what happened asks the task; what it leads to", "task aid"),
    "views/screen.js": ("a form that stands alone", "alone"),
    "views/trial.js": ("how a pick marks what is of the kit", "kit"),
    "main.js": ("the run that was under way", "plan run"),
    "views/run.js": ("only the page can measure them; two steps of a pour that the run says itself; a piece by its "
                     "link; what a weighed tub teaches",
                     "ran_age ran_wall air_age running clock lasts bound most tape step ran at done pour run plan part "
                     "by batches putty"),
    "views/steps.js": ("only the page can measure a wait", "lasts bound least aid"),
}
PATTERN = re.compile(r"[=(,] ?/((?:\\.|[^/\s])+)/[a-z]*[;,.)]")
TYPED = re.compile(r"\btyped\??\.(?!length\b|find\b)(\w+)")  # a list has these itself
TEXT = re.compile(r'"([^"\n]*)"|`([^`]*)`')


def names():
    """Every name of an input, a move and a kind of thing."""
    found = {move.name for move in moves.MOVES}

    def add(inputs):
        for item in inputs:
            found.add(item.name)
            add(item.inner())
            if item.kind == "pick":
                found.add(item.record.name)

    for move in moves.MOVES:
        add(moves.module(move.name).INPUTS)
    return found


NAMES = names()


def named(script):
    """The names that a script has in its texts: as a text, as a step of a dotted name, in a selector or a pattern, or
    asked of what was typed."""
    script = code(script)
    for one in ELSEWHERE:
        script = re.sub(one, "", script)
    patterns = " ".join(PATTERN.findall(script))
    found = {word for word in re.findall(r"\w+", patterns) + TYPED.findall(script) if word in NAMES}
    for plain, filled in TEXT.findall(script):
        text = plain or re.sub(r"\$\{[^}]*\}", "0", filled)
        steps = re.findall(r'data-group="?(\w+)|name\$?="?\.?(\w+)', text)
        words = text.split(".") if re.fullmatch(r"[a-z_.\d]+", text) else [word for step in steps for word in step]
        found |= {word for word in words if word in NAMES}
    return found


@pytest.mark.parametrize(("script", "found"), [
    ('const GROUP = "batches";', {"batches"}),
    ('const PICKED = { plan: ["people", "scale"] };', {"people", "scale"}),
    ('name.startsWith("system.") || name.startsWith(`timings.${place}.`)', {"system", "timings"}),
    ('form.querySelector("[data-group=pieces]")', {"pieces"}),
    ('const TAKEN = /^(readings|counted)\\./;\nconst text = name.match(/^zone$/);', {"readings", "counted", "zone"}),
    ('rows.filter(({ typed }) => typed.own_time)', {"own_time"}),
    ('await put("log", { kind: "putty" }); notice("log", "Kept."); ask({ move: "kit" });', {"putty"}),
])
def test_a_name_is_found_however_it_is_written(script, found):
    assert named(script) == found


@pytest.mark.parametrize("path", FILES)
def test_a_script_names_no_input(path):
    script = (ROOT / path).read_text(encoding="utf-8")
    assert named(script) == set(ALLOWED.get(path, ("", ""))[1].split())


def test_who_may_name_some_says_why():
    assert ALLOWED.keys() <= set(FILES) and all(why for why, _ in ALLOWED.values())


def told():
    """What the script that tells the others starts with, as it is sent."""
    first = build().scripts["js/form/declarations.js"].splitlines()[0]
    return json.loads(first.removeprefix("const DECLARED = ").removesuffix(";"))


@pytest.mark.parametrize("screen", [screen for screen, _, _ in PAGES if screen not in ("kit", "log")])
def test_the_page_knows_what_every_screen_picks(screen):
    """Left in each cup, on Joint, is a number: the cup that Pour picked is not that."""
    picks = {item.name: item.record.name for item in moves.screen_inputs(screen) if item.kind == "pick"}
    assert told().get(screen, {}).get("picks", {}) == picks
    assert len(set(picks.values())) == len(picks)  # or one choice would stand for two


def test_the_page_knows_what_was_really_measured_and_of_what():
    pour = told()["pour"]
    assert pour["measured"] == ["readings", "counted", "drawn", "levels", "heights"]
    assert pour["anew"] == ["amount", "amount_is", "system", "way"]
    inputs = {name for item in moves.screen_inputs("pour") for name in (item.name, *item.extra_names())}
    assert {*pour["measured"], *pour["anew"]} <= inputs


@pytest.mark.parametrize("move", ["thicken", "boat"])
def test_what_the_phone_keeps_of_rows_is_theirs(move):
    """Every name that a group says of its kept rows is a field of it, and the pick is beside it."""
    inputs = moves.module(move).INPUTS
    kept = [item for item in inputs if getattr(item, "kept", None)]
    assert len(kept) == 1
    for item in kept:
        assert {*item.kept["by"].split(), *item.kept.get("left", "").split()} <= {one.name for one in item.fields}
        assert item.kept.get("of", inputs[0].name) in {one.name for one in inputs}


def test_what_the_log_teaches_is_what_the_log_keeps():
    """The page hands rows of the log on as they are: both declare the same names."""
    logged = {item.name for item in moves.module("log").INPUTS}
    for move in ("timings", "own_rates"):
        assert set(learns(move).split()) <= logged
    old = moves.answer("timings", {"rows": [{"own": "24", "label": "30"}]})  # as programs once asked
    assert old == moves.answer("timings", {"rows": [{"own_time": "24", "label_time": "30"}]})
