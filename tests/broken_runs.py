"""Broken runs: the product broken on purpose, one change at a time, and the test that must see it.

`make broken`, or `python tests/broken_runs.py FOLDER [words of a change ...]`: each change is made in a copy of the
tree, the tests named beside it run there, and the first that fails is shown; what nothing sees ends with an error.
It writes docs/PROOF.md where all of them ran. It takes minutes and is no part of `make test`.
"""

import os
import re
import shutil
import subprocess
import sys
from collections import namedtuple
from pathlib import Path

HERE = Path(__file__).resolve().parents[1]
ROOMS = ("shared", "server", "webui")
PAGE = HERE / "docs" / "PROOF.md"
# what: the harm; file, old, new: the text there and what it becomes; tests: that must fail; before: did those of
# commit 0d8e220, before these, saw it: "no", "yes", or "" where that was not tried
Change = namedtuple("Change", ("what", "file", "old", "new", "tests", "before"))
PARTS, SAFETY = "tests/test_which_part.py", "tests/test_safety_table.py"
MARKS, SCREEN = "tests/test_told_marks.py", "tests/browser/test_parts_on_screen.py"
HARM = "tests/browser/test_kept_from_harm.py"
BOTH = "tests/browser/test_both_runtimes.py"
CATALOGUE, WORDS = "shared/catalogue/", "shared/words/en.ftl"

CHANGES = (
    # which part is which
    Change(
        "steps: resin and hardener change names",
        "shared/pour/pouring_lines.py",
        'for place, name in enumerate(parts_said(values["system"])):',
        'for place, name in enumerate(parts_said(values["system"])[::-1]):',
        PARTS,
        "no",
    ),
    Change(
        "steps: the figure of the other part",
        "shared/pour/pouring_lines.py",
        'one = named[key + "abcde"[place]]',
        'one = named[key + "abcde"[len(parts_said(values["system"])) - 1 - place]]',
        PARTS,
        "",
    ),
    Change(
        "steps: zero the scale at every one",
        "shared/pour/pouring_lines.py",
        'if way == "scale" and values["zeroing"] == "each" and place:',
        'if way == "scale" and place:',
        PARTS,
        "no",
    ),
    Change(
        "scale: names the other way round",
        "shared/pour/by_scale_lines.py",
        'enumerate(zip(parts_said(values["system"]), spans(display.masses)))]',
        'enumerate(zip(parts_said(values["system"])[::-1], spans(display.masses)))]',
        PARTS,
        "",
    ),
    Change(
        "pumps: names the other way round",
        "shared/pour/by_pumps_lines.py",
        'line("strokes_" + "abcde"[place], names[place]',
        'line("strokes_" + "abcde"[place], names[-1 - place]',
        PARTS,
        "",
    ),
    Change(
        "syringes: names the other way round",
        "shared/pour/by_marks_lines.py",
        'message("marks-drawn", part=names[place])',
        'message("marks-drawn", part=names[-1 - place])',
        PARTS,
        "",
    ),
    Change(
        "marked cup: names the other way round",
        "shared/pour/by_marks_lines.py",
        'message("marks-level", part=names[place])',
        'message("marks-level", part=names[-1 - place])',
        PARTS,
        "",
    ),
    Change(
        "stick: names the other way round",
        "shared/pour/by_stick_lines.py",
        'message("stick-mark", part=names[place])',
        'message("stick-mark", part=names[-1 - place])',
        PARTS,
        "",
    ),
    Change(
        "rescue: adds the other part",
        "shared/pour/rescue_lines.py",
        'message("rescue-add", part=names[place])',
        'message("rescue-add", part=names[-1 - place])',
        PARTS,
        "",
    ),
    Change(
        "off ratio: blames the other part",
        "shared/mix/ratio_error_lines.py",
        "part=names[off.place])",
        "part=names[-1 - off.place])",
        PARTS,
        "",
    ),
    Change(
        "plan: grams of the parts change places",
        "shared/plan/batch_lines.py",
        'lambda: parts_inside(values["system"]))',
        'lambda: parts_inside(values["system"])[::-1])',
        PARTS,
        "",
    ),
    Change(
        "shopping: resin and hardener change places",
        "shared/boat/boat.py",
        "masses = [share * batch.all for share in shares]",
        "masses = [share * batch.all for share in shares][::-1]",
        PARTS,
        "",
    ),
    Change(
        "step view: the name of the next step",
        "webui/js/views/steps.js",
        'this.at("part").textContent = step.head;',
        'this.at("part").textContent = after?.field ? after.head : step.head;',
        SCREEN,
        "no",
    ),
    Change(
        "Pour's large figures: names change places",
        "webui/js/answer/lines.js",
        "  lines.forEach((line, place) => {",
        '  if (lines.length > 1 && lines.every(({ rank }) => rank === "answer")) {\n'
        "    const heads = lines.map(({ head }) => head).reverse();\n"
        "    lines = lines.map((line, place) => ({ ...line, head: heads[place] }));\n  }\n"
        "  lines.forEach((line, place) => {",
        SCREEN,
        "no",
    ),
    Change(
        "card on paper: labels change places",
        "webui/js/share/card.js",
        'part("lines").replaceChildren(...lines.map(line));',
        'part("lines").replaceChildren(...lines.map((one, at) => line({ ...one, '
        "label: lines[lines.length - 1 - at].label })));",
        SCREEN,
        "",
    ),
    # known from the last note
    Change(
        "a told mark is refused when it is typed",
        "shared/pour/ways.py",
        'if late("by_marks").told_in_cup(values):',
        'if False and late("by_marks").told_in_cup(values):',
        MARKS,
        "no",
    ),
    Change(
        "a batch too small for the scale is not said in the steps",
        "shared/pour/pouring_lines.py",
        "    _warn_first(steps_found[0], lines + unconfirmed(values[\"system\"], \"ratio\"))\n",
        "",
        MARKS,
        "no",
    ),
    # safety words and limits
    Change(
        "sand it while it is soft",
        WORDS,
        "can make you allergic. Do not sand it. Warm it",
        "can make you allergic. Sand it now. Warm it",
        SAFETY,
        "no",
    ),
    Change(
        "wash resin off with solvent",
        WORDS,
        "soap and plenty of water, never with solvent.",
        "soap and plenty of water, or with solvent.",
        SAFETY,
        "no",
    ),
    Change(
        "a drop on the skin: solvent",
        WORDS,
        "soap and plenty of water. Never solvent.",
        "soap, plenty of water or solvent.",
        SAFETY,
        "",
    ),
    Change(
        "dust limit 15 for 5",
        CATALOGUE + "dusts.py",
        'Limit("other", FINE, 5e-6',
        'Limit("other", FINE, 15e-6',
        SAFETY,
        "no",
    ),
    Change(
        "solvent limit four times too high",
        CATALOGUE + "solvents.py",
        'Fact("acetone", DAY, 250e-6, "share", PUBLISHED, "npg")',
        'Fact("acetone", DAY, 1000e-6, "share", PUBLISHED, "npg")',
        SAFETY,
        "",
    ),
    Change("all limits of acetone four times too high", CATALOGUE + "solvents.py", "250e-6", "1000e-6", SAFETY, "yes"),
    Change(
        "a limit of 2-butanone four times too high",
        CATALOGUE + "solvents.py",
        'Fact("butanone", DAY, 75e-6',
        'Fact("butanone", DAY, 300e-6',
        SAFETY,
        "no",
    ),
    Change(
        "a remembered value called published",
        CATALOGUE + "cure_times.py",
        '"facts-stages.sand-look", MEMORY)',
        '"facts-stages.sand-look", PUBLISHED)',
        SAFETY,
        "",
    ),
    Change("explosive limit of acetone 5 %", CATALOGUE + "solvents.py", "LOWER, 0.025,", "LOWER, 0.05,", SAFETY, ""),
    Change(
        "warm from 38 °C",
        CATALOGUE + "cautions.py",
        '"caution-from-warm", 301.15',
        '"caution-from-warm", 311.15',
        SAFETY,
        "",
    ),
    Change(
        "a lid on a hot pot",
        WORDS,
        "Never put a lid on a hot pot. Never put it in a bin.",
        "A lid on a hot pot, and into a bin.",
        SAFETY,
        "",
    ),
    Change(
        "a dust mask against vapour",
        WORDS,
        "A dust mask does not stop vapour.",
        "A dust mask will do.",
        SAFETY,
        "",
    ),
    Change(
        "particle masks no longer told while sanding",
        CATALOGUE + "tasks_shared.py",
        'DRY = ("powder", "sand")',
        'DRY = ("powder",)',
        SAFETY,
        "",
    ),
    Change(
        "ratio: 10 % off is good", CATALOGUE + "limits.py", "AIM, STOP = 0.02, 0.05", "AIM, STOP = 0.10, 0.20", SAFETY, ""  # noqa: E501
    ),
    Change(
        "oxygen from 16 % will do",
        WORDS,
        "Oxygen from 19.5 up",
        "Oxygen from 16 up",
        SAFETY,
        "",
    ),
    Change("a burn is cooled two minutes", WORDS, "for 20 minutes", "for 2 minutes", SAFETY, ""),
    Change("silica 5 % lighter", CATALOGUE + "fillers.py", '"2.2 g/mL"', '"2.09 g/mL"', SAFETY, "no"),
    Change("cotton 5 % lighter", CATALOGUE + "fillers.py", '"1.5 g/mL"', '"1.425 g/mL"', SAFETY, "no"),
    Change("glass 5 % lighter", CATALOGUE + "fillers.py", '"2.55 g/mL"', '"2.42 g/mL"', SAFETY, "no"),
    # the caution in place
    Change(
        "the live caution is emptied",
        "webui/js/views/screen.js",
        'document.querySelector("[data-caution]").textContent = bound(got.caution);',
        'document.querySelector("[data-caution]").textContent = "";',
        HARM,
        "no",
    ),
    Change(
        "the live caution stays as it was sent",
        "webui/js/views/screen.js",
        'document.querySelector("[data-caution]").textContent = bound(got.caution);',
        "",
        HARM,
        "",
    ),
    Change("the card has no caution", "webui/js/share/card.js", 'part("caution").textContent = caution;', "", HARM, ""),
    Change(
        "an update does not wait for a pot",
        "webui/js/main.js",
        "holdUpdates(running, whenTold);",
        "holdUpdates(() => false, whenTold);",
        HARM,
        "no",
    ),
    Change(
        "an update that waited is never offered",
        "webui/js/offline/offline.js",
        'if (held?.worker.state === "installed") offer(held.worker, held.save);',
        "",
        HARM,
        "",
    ),
    Change("the alarm makes no sound", "webui/js/phone/alarm.js", "    source.start(from);\n", "", HARM, "no"),
    Change(
        "the alarm is never allowed to sound",
        "webui/js/phone/alarm.js",
        'document.addEventListener("pointerdown", prime, { passive: true });\n',
        "",
        HARM,
        "",
    ),
    Change("the alarm rings once only", "webui/js/phone/alarm.js", "    setTimeout(round, PAUSE);\n", "", HARM, ""),
    Change("the screen is not kept on", "webui/js/views/steps.js", "    stayAwake();\n", "", HARM, "no"),
    Change(
        "the screen goes dark after a look at another app",
        "webui/js/phone/wake_lock.js",
        'document.addEventListener("visibilitychange", ask);\n',
        "",
        HARM,
        "",
    ),
    Change(
        "the export leaves the running pots out",
        "webui/js/kit/backup.js",
        'const STORES = ["kit", "log", "pots"];',
        'const STORES = ["kit", "log"];',
        HARM,
        "no",
    ),
    Change(
        "rescue: off ratio is no warning",
        "shared/pour/rescue_lines.py",
        "rank=WARN if off.off else MORE",
        "rank=MORE",
        f"{SAFETY} {PARTS}",
        "no",
    ),
    # two runtimes
    Change(
        "the server answers in place of the phone's runtime",
        "webui/js/engine/engine.js",
        "export const ask = async (request) => {\n",
        "export const ask = async (request) => {\n  if (request.typed) {\n"
        "    return (await fetch(`/api/${request.move}`, { "
        'method: "POST", headers: { "content-type": "application/json" }, body: JSON.stringify(request.typed) '
        "})).json();\n  }\n",
        BOTH + "::test_two_different_runtimes_answer",
        "yes",
    ),
    Change(
        "an answer does not say which runtime gave it",
        "webui/js/engine/worker.js",
        " got['by'] = interpreter\\n",
        "",
        BOTH + "::test_two_different_runtimes_answer",
        "no",
    ),
)


def prepared(folder: Path):
    """The whole tree once more, found before the installed one."""
    shutil.rmtree(folder, ignore_errors=True)
    (folder / "covemix").mkdir(parents=True)
    hidden = shutil.ignore_patterns("__pycache__")
    for room in ROOMS:
        shutil.copytree(HERE / room, folder / "covemix" / room, ignore=hidden)
    shutil.copytree(HERE / "tests", folder / "tests", ignore=hidden)
    shutil.copytree(HERE / "docs", folder / "docs", ignore=shutil.ignore_patterns("pictures"))
    for name in ("pyproject.toml", "README.md"):
        shutil.copy(HERE / name, folder)


def asked(folder: Path, tests: str, *more: str):
    """Runs tests in the copy -> (exit code, the first test that failed or "")."""
    env = {**os.environ, "PYTHONPATH": str(folder)}
    run = subprocess.run(
        [
            sys.executable,
            "-m",
            "pytest",
            "-x",
            "-q",
            "-rf",
            "-p",
            "no:cacheprovider",
            "-o",
            "testpaths=",
            *tests.split(),
            *more,
        ],
        cwd=folder,
        env=env,
        capture_output=True,
        text=True,
        check=False,
    )
    failed = re.search(r"^(?:FAILED|ERROR) \S*?(test_[^\s]+)", run.stdout, re.MULTILINE)
    return run.returncode, failed[1] if failed else ""


def broken(folder: Path, change: Change):
    """The test that saw the change, or "" where none did."""
    place = folder / "covemix" / change.file
    whole = place.read_text(encoding="utf-8")
    assert change.old in whole, f"{change.what}: {change.file} no longer has {change.old!r}"
    place.write_text(whole.replace(change.old, change.new), encoding="utf-8")
    try:
        code, failed = asked(folder, change.tests)
    finally:
        place.write_text(whole, encoding="utf-8")
    return failed or ("" if code == 0 else "?")


def page(rows):
    """docs/PROOF.md: what was broken, and which test saw it."""
    lines = [
        "# Broken runs",
        "",
        "Made by `make broken`: each change was made alone in a copy of this tree, and the tests "
        "named in tests/broken_runs.py ran there. Before: whether the tests of commit 0d8e220 saw the same change "
        "(empty: not tried).",
        "",
        "| what was broken | file | before | the test that fails now |",
        "|---|---|---|---|",
    ]
    lines += [f"| {one.what} | {one.file} | {one.before} | {seen or '**none**'} |" for one, seen in rows]
    unseen = sum(not seen for _, seen in rows)
    lines += ["", f"{len(rows)} changes, {len(rows) - unseen} seen."]
    return "\n".join(lines) + "\n"


if __name__ == "__main__":
    folder, words = Path(sys.argv[1]).resolve(), sys.argv[2:]
    wanted = [one for one in CHANGES if not words or any(word in one.what + one.tests for word in words)]
    prepared(folder)
    for tests in sorted({one.tests for one in wanted}):
        assert asked(folder, tests)[0] == 0, f"{tests} must pass before anything is broken"
    rows = []
    for one in wanted:
        rows.append((one, broken(folder, one)))
        print(f"{one.what}: {rows[-1][1] or 'NOTHING SAW IT'}", flush=True)
    if not words:
        PAGE.write_text(page(rows), encoding="utf-8")
    sys.exit(any(not seen for _, seen in rows))
