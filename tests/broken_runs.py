"""Broken runs: the product broken on purpose, one change at a time, and the test that must see it.

`make broken`, or `python tests/broken_runs.py FOLDER [words of a change ...]`: each change is made in a copy of the
tree, the tests named beside it run there, and the first that fails is shown; what nothing sees ends with an error.
What was seen is kept in FOLDER.json and on docs/PROOF.md, and is not run again, so that the table may be run in pieces:
the word `tests/` asks for all that is left. A row of the page counts as long as neither the change nor its tests are
others than when it was run (the row's mark says so), and the text that it changes and the test that saw it still stand.
`make broken` begins anew. It takes an hour or more and is no part of `make test`.
"""

import functools
import hashlib
import json
import os
import re
import shlex
import shutil
import signal
import subprocess
import sys
from collections import namedtuple
from pathlib import Path

from forked import HANGS, Forked

LABOUR = 180  # seconds of the processor's time that tests without a browser may take
HERE = Path(__file__).resolve().parents[1]
ROOMS = ("shared", "server", "webui")
PAGE = HERE / "docs" / "PROOF.md"
# what: the harm; file, old, new: the text there and what it becomes; tests: that must fail; before: did the tests of
# commit 0d8e220, or for what came later of ae6107b, before these, see it: "no", "yes", or "" where that was not tried;
# of a run, those of tests/test_run.py at 2cab29f; of glue, coats, test cups and what came with them those of 4cc34312
Change = namedtuple("Change", ("what", "file", "old", "new", "tests", "before"))
PARTS, SAFETY = "tests/test_which_part.py", "tests/test_safety_table.py"
MARKS, SCREEN = "tests/test_told_marks.py", "tests/browser/test_parts_on_screen.py"
HARM = "tests/browser/test_kept_from_harm.py"
BOTH = "tests/browser/test_both_runtimes.py"
FAULTS = "tests/browser/test_engine_faults.py"
ROW = SCREEN + "::test_each_row_of_what_was_read_stands_by_its_own_part"
NAMED = SCREEN + "::test_large_figures_steps_voice_card_and_pot_name_each_part_with_its_own"
FIRST = SCREEN + "::test_what_follows_a_key_press_before_the_rest_names_the_same_parts"
BARE = SCREEN + "::test_without_scripts_the_server_lays_out_the_same_names"
SIGNS = HARM + "::test_the_signs_of_a_product_and_the_caution_under_a_figure_follow_what_is_typed"
SERVED = HARM + "::test_without_scripts_the_server_says_the_same_caution"
WRONG = HARM + "::test_what_is_wrong_is_said_before_the_first_is_poured_and_looks_like_it"
POT = HARM + "::test_a_running_pot_says_what_is_wrong_with_it"
RINGS = HARM + "::test_an_alarm_is_heard_felt_and_seen"
SPOKEN = HARM + "::test_an_alarm_is_spoken_where_that_was_chosen"
STIRRED = HARM + "::test_the_end_of_stirring_is_heard_and_felt"
AWAKE = HARM + "::test_the_screen_stays_on_while_hands_are_busy"
UPDATE = HARM + "::test_an_update_waits_for_the_pot_and_is_offered_when_it_is_over"
KEPT = HARM + "::test_the_export_has_the_running_pots_and_brings_them_back"
WORDED = HARM + "::test_the_caution_follows_what_is_typed_and_stands_on_the_card"
SHOWS = "tests/browser/test_pictures_show.py::test_each_picture_shows_what_the_screen_says[phone]"
LATE = FAULTS + "::test_twelve_answers_of_sixteen_come_late_and_no_figure_stands_for_another"
TRUSTED = "tests/test_trusted.py"
RUN, STRONG = f"tests/test_run.py {TRUSTED}", f"tests/test_strength.py {TRUSTED}"
TOLD = "tests/test_safety_told.py"
WORK, HELPER = "tests/test_trusted_work.py", "tests/browser/test_run.py"
APART = "tests/test_apart.py::test_the_other_process_is_asked_the_same_as_this_one_would_be_each_time"
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
        NAMED,
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
        NAMED,
        "no",
    ),
    Change(
        "card on paper: labels change places",
        "webui/js/share/card.js",
        'part("lines").replaceChildren(...lines.map(line));',
        'part("lines").replaceChildren(...lines.map((one, at) => line({ ...one, '
        "label: lines[lines.length - 1 - at].label })));",
        NAMED,
        "",
    ),
    Change(
        "cup drawing: its words name the other part",
        "shared/pour/cup_drawing.py",
        'told_marks.append(message("stick-drawing.mark", part=names[place]',
        'told_marks.append(message("stick-drawing.mark", part=names[-1 - place]',
        PARTS,
        "no",
    ),
    Change(
        "cup drawing: the hatches change places",
        "shared/pour/cup_drawing.py",
        'shapes.append(area("abcde"[place], (',
        'shapes.append(area("abcde"[len(marks) - 1 - place], (',
        PARTS,
        "no",
    ),
    Change(
        "pumps: the top-up names the other part",
        "shared/pour/by_pumps_lines.py",
        'message("pumps-top-up", part=names[place])',
        'message("pumps-top-up", part=names[-1 - place])',
        PARTS,
        "no",
    ),
    Change(
        "stick: a mark too high is told of the other part",
        "shared/pour/by_stick_lines.py",
        'message("stick-cost", part=names[place], error',
        'message("stick-cost", part=names[-1 - place], error',
        PARTS,
        "no",
    ),
    Change(
        "marks too coarse: the other part",
        "shared/pour/by_marks_lines.py",
        '"marks-coarse.text", part=names[place]',
        '"marks-coarse.text", part=names[-1 - place]',
        PARTS,
        "no",
    ),
    Change(
        "two labels apart: the other part",
        "shared/mix/ratio_lines.py",
        "part=names[found.apart.place], first=names[0]",
        "part=names[0], first=names[found.apart.place]",
        PARTS,
        "",
    ),
    Change(
        "packs: what is left over names the other part",
        "shared/boat/boat_lines.py",
        "part=small_names[0]) if found.packs",
        "part=small_names[-1]) if found.packs",
        PARTS,
        "no",
    ),
    Change(
        "rescue: the least names the other part",
        "shared/pour/rescue_lines.py",
        'message("rescue-least", part=names[place])',
        'message("rescue-least", part=names[-1 - place])',
        PARTS,
        "",
    ),
    Change(
        "parts of the batch: names the other way round",
        "shared/mix/ratio_lines.py",
        'names = values["system"], parts_said(values["system"])',
        'names = values["system"], parts_said(values["system"])[::-1]',
        PARTS,
        "",
    ),
    Change(
        "sheet of a batch: its code pours the label turned round",
        "shared/plan/batch_cards.py",
        'system + [amount] + sheet["air"]])',
        '[[k, ":".join(t.split(":")[::-1]) if k == "system.by_weight" else t] for k, t in system] + [amount] '
        '+ sheet["air"]])',
        PARTS,
        "no",
    ),
    Change(
        "sheet of a batch: its code pours twice the amount",
        "shared/plan/batch_cards.py",
        'shown(line["value"] * 1000, 0, UP) + " g"]',
        'shown(line["value"] * 2000, 0, UP) + " g"]',
        PARTS,
        "no",
    ),
    Change(
        "plain words leave the names out",
        "shared/door/card.py",
        "def _row(line: dict, who: Reader) -> str:\n",
        'def _row(line: dict, who: Reader) -> str:\n    line = dict(line, label=line["label"].split(", ")[-1])\n',
        PARTS,
        "no",
    ),
    Change(
        "rows: name of the next part",
        "webui/js/form/rows.js",
        '"abcde"[row.dataset.row]',
        '"bcdea"[row.dataset.row]',
        ROW,
        "no",
    ),
    Change(
        "lines: hatch of the first part everywhere",
        "webui/js/answer/lines.js",
        "main.push(ruled(line.span, line.part))",
        'main.push(ruled(line.span, "a"))',
        NAMED,
        "no",
    ),
    Change(
        "step view: hatch of the first part",
        "webui/js/views/steps.js",
        "[ruled(step.span, step.part)]",
        '[ruled(step.span, "a")]',
        NAMED,
        "no",
    ),
    Change(
        "step view: speaks the next step",
        "webui/js/views/steps.js",
        "readOut(words = this.step.said)",
        "readOut(words = (this.steps[this.state.step + 1] ?? this.step).said)",
        NAMED,
        "",
    ),
    Change(
        "step view: say key speaks the next step",
        "webui/js/views/steps.js",
        "if (this.steps) say(this.step.said);",
        "if (this.steps) say((this.steps[this.state.step + 1] ?? this.step).said);",
        NAMED,
        "no",
    ),
    Change(
        "server's page: names turned",
        "webui/templates/lines.html",
        '<span class="line-part">{{ one.head }}</span>',
        '<span class="line-part">{{ one.how or one.head }}</span>',
        BARE,
        "",
    ),
    Change(
        "step view: keeps the reading in the other field",
        "webui/js/views/steps.js",
        "if (fills) this.write(step.field, step.writes);",
        'if (fills) this.write(step.field.replace(".0.", ".1."), step.writes);',
        NAMED,
        "",
    ),
    Change(
        "first figures: names of before",
        "webui/js/answer/lines.js",
        "if (place.dataset.some === move && lines.length) showSome(place, lines);",
        "if (place.dataset.some === move && lines.length) showSome(place, lines.map((one, at) => ({ ...one, "
        "head: lines[lines.length - 1 - at].head })));",
        FIRST,
        "no",
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
        "ratio: 10 % off is good", CATALOGUE + "ratios.py", "AIM, STOP = 0.02, 0.05", "AIM, STOP = 0.10, 0.20", SAFETY, ""  # noqa: E501
    ),
    Change(
        "oxygen from 16 % will do",
        WORDS,
        "Oxygen must be from 19.5 up",
        "Oxygen must be from 16 up",
        SAFETY,
        "",
    ),
    Change("a burn is cooled two minutes", WORDS, "for 20 minutes", "for 2 minutes", SAFETY, ""),
    Change("silica 5 % lighter", CATALOGUE + "fillers.py", '"2.2 g/mL"', '"2.09 g/mL"', SAFETY, "no"),
    Change("cotton 5 % lighter", CATALOGUE + "fillers.py", '"1.5 g/mL"', '"1.425 g/mL"', SAFETY, "no"),
    Change("glass 5 % lighter", CATALOGUE + "fillers.py", '"2.55 g/mL"', '"2.42 g/mL"', SAFETY, "no"),
    Change(
        "more than the scale takes is no warning",
        "shared/pour/by_scale_lines.py",
        'most=weighed(values["scale"]["most"], values, DOWN)), rank=WARN))',
        'most=weighed(values["scale"]["most"], values, DOWN)), rank=MORE))',
        SAFETY,
        "no",
    ),
    Change(
        "a batch that may not be started is no warning",
        "shared/plan/batch_lines.py",
        'message("plan-do-not-start.text", number=batch.number), why, part=part, rank=WARN))',
        'message("plan-do-not-start.text", number=batch.number), why, part=part, rank=MORE))',
        SAFETY,
        "no",
    ),
    # the caution in place
    Change(
        "the live caution is emptied",
        "webui/js/views/screen.js",
        "write(caution, now);",
        'write(caution, "");',
        WORDED,
        "no",
    ),
    Change(
        "the live caution stays as it was sent",
        "webui/js/views/screen.js",
        "    write(caution, now);\n",
        "",
        WORDED,
        "",
    ),
    Change(
        "the card has no caution",
        "webui/js/share/card.js",
        'part("caution").textContent = caution;',
        "",
        WORDED,
        "",
    ),
    Change(
        "an update does not wait for a pot",
        "webui/js/main.js",
        "holdUpdates(running, whenTold);",
        "holdUpdates(() => false, whenTold);",
        UPDATE,
        "no",
    ),
    Change(
        "an update that waited is never offered",
        "webui/js/offline/offline.js",
        'if (held?.worker.state === "installed") offer(held.worker, held.save);',
        "",
        UPDATE,
        "",
    ),
    Change("the alarm makes no sound", "webui/js/phone/alarm.js", "    source.start(from);\n", "", RINGS, "no"),
    Change(
        "the alarm is never allowed to sound",
        "webui/js/phone/alarm.js",
        'for (const name of ["pointerdown", "pointerup", "touchend", "keydown"]) '
        "document.addEventListener(name, prime, { passive: true });\n",
        "",
        RINGS,
        "",
    ),
    Change("the alarm rings once only", "webui/js/phone/alarm.js", "    setTimeout(round, PAUSE);\n", "", RINGS, ""),
    Change("a second batch like the first gets no clock", "webui/js/views/clock.js",
           'view.form.addEventListener("answered", startWaiting);',
           "new MutationObserver(startWaiting).observe(answers, { childList: true, subtree: true });",
           "tests/browser/test_clock.py::test_a_second_batch_like_the_first_has_a_clock_too", ""),
    Change("a link that could not be sent is lost", "webui/js/share/pot_link.js", ".catch(again);", ".catch(() => {});",
           "tests/browser/test_clock.py::test_the_link_of_a_pot_is_sent_or_copied", ""),
    Change("a full phone that keeps the app cannot open a page it lacks", "webui/sw.js",
           "  } catch { // the phone is full: it is fetched\n    return undefined;",
           "  } catch (error) { // the phone is full: it is fetched\n    throw error;",
           "tests/browser/test_kit.py::test_the_page_for_programs_opens_on_a_full_phone_that_keeps_the_app", ""),
    Change("words to be copied by hand lose their lines", "webui/js/share/sheet.js", "if (text === link.value) {",
           "link.value = text;\n  if (true) {",
           "tests/browser/test_share.py::test_what_a_browser_will_not_copy_stands_marked_to_be_copied_by_hand", ""),
    Change("a failing voice ends the alarm", "webui/js/phone/alarm.js",
           "    setTimeout(round, PAUSE);\n    beep();\n    speak(text);\n",
           "    beep();\n    speak(text);\n    setTimeout(round, PAUSE);\n",
           "tests/browser/test_refused.py::test_an_alarm_whose_voice_fails_is_felt_and_seen_and_goes_on", ""),
    Change("a tub of a run is lost for its filler", "webui/js/views/run.js", "filler: filler || TYPED", "filler",
           "tests/browser/test_run.py::test_a_tub_of_a_filler_typed_without_a_name_is_kept_as_pour_knows_it", ""),
    Change("the screen is not kept on", "webui/js/views/steps.js", "    stayAwake();\n", "", AWAKE, "no"),
    Change(
        "the screen goes dark after a look at another app",
        "webui/js/phone/wake_lock.js",
        'document.addEventListener("visibilitychange", ask);\n',
        "",
        AWAKE,
        "",
    ),
    Change(
        "the export leaves the running pots out",
        "webui/js/kit/backup.js",
        'const STORES = ["kit", "log", "pots"];',
        'const STORES = ["kit", "log"];',
        KEPT,
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
    Change(
        "server's page: caution emptied",
        "webui/templates/base.html",
        "<span data-caution>{{ answer.bar | bound }}</span>",
        "<span data-caution></span>",
        SERVED,
        "no",
    ),
    Change(
        "server's page: no caution at all",
        "webui/templates/base.html",
        "{% if answer.caution %}",
        "{% if answer.nothing %}",
        SERVED,
        "",
    ),
    Change(
        "live signs not drawn",
        "webui/js/views/screen.js",
        'draw(document.querySelector("[data-signs]"), got.signs ?? []);',
        'draw(document.querySelector("[data-signs]"), []);',
        SIGNS,
        "no",
    ),
    Change(
        "caution under a figure not laid out",
        "webui/js/answer/lines.js",
        '  if (line.caution) main.push(span("caution", bound(line.caution)));\n',
        "",
        SIGNS,
        "no",
    ),
    Change(
        "caution under a figure not on the server's page",
        "webui/templates/lines.html",
        '{% if one.caution %}<span class="line-caution">{{ one.caution | bound }}</span>{% endif %}',
        "",
        SERVED,
        "no",
    ),
    Change(
        "caution under a figure not on the card",
        "webui/js/share/card.js",
        'if (one.caution) made.append(element("b", "caution", one.caution));',
        "",
        SIGNS,
        "no",
    ),
    Change(
        "steps: what is wrong is not shown",
        "webui/js/views/steps.js",
        'this.at("under").textContent = bound([step.under, this.doubt].filter(Boolean).join(" "));\n'
        '    this.at("next")',
        'this.at("under").textContent = "";\n    this.at("next")',
        WRONG,
        "",
    ),
    Change(
        "steps: a warning looks like a step",
        "webui/js/views/steps.js",
        'this.at("tap").dataset.rank = step.rank;',
        'this.at("tap").dataset.rank = "answer";',
        WRONG,
        "",
    ),
    Change(
        "pot: its warnings emptied",
        "webui/js/pots/pot.js",
        "list(warnings, warned);",
        "list(warnings, []);",
        POT,
        "",
    ),
    Change(
        "warn lines look plain",
        "webui/js/answer/lines.js",
        "{ line: line.name, rank: line.rank, part: line.part }",
        '{ line: line.name, rank: line.rank === "warn" ? "beside" : line.rank, part: line.part }',
        SIGNS,
        "",
    ),
    Change(
        "warn lines left out",
        "webui/js/answer/lines.js",
        "lines.filter((line) => ranks.includes(line.rank))",
        'lines.filter((line) => ranks.includes(line.rank) && line.rank !== "warn")',
        SIGNS,
        "",
    ),
    Change(
        "warn lines are not spoken",
        "webui/js/answer/lines.js",
        'line.rank === "answer" || line.rank === "warn"',
        'line.rank === "answer"',
        SIGNS,
        "",
    ),
    Change(
        "words have no caution",
        "shared/door/card.py",
        '    return "\\n".join([head] + kept + [foot])',
        '    return "\\n".join([head] + kept)',
        WORDED,
        "",
    ),
    Change(
        "a new worker takes over at once",
        "webui/sw.js",
        'self.addEventListener("install", (event) => event.waitUntil(install()));',
        'self.addEventListener("install", (event) => { self.skipWaiting(); event.waitUntil(install()); });',
        UPDATE,
        "",
    ),
    Change(
        "alarm: a tone nobody hears",
        "webui/js/phone/alarm.js",
        "const TONES = [880, 660, 880, 660, 880];",
        "const TONES = [18000, 18000, 18000, 18000, 18000];",
        RINGS,
        "",
    ),
    Change(
        "alarm: quiet",
        "webui/js/phone/alarm.js",
        "setValueAtTime(0.4, from)",
        "setValueAtTime(0.02, from)",
        RINGS,
        "",
    ),
    Change(
        "alarm: not felt",
        "webui/js/phone/alarm.js",
        "  navigator.vibrate?.(SHAKE);\n",
        "",
        RINGS,
        "",
    ),
    Change(
        "alarm: not spoken",
        "webui/js/phone/alarm.js",
        "    speak(text);\n",
        "",
        SPOKEN,
        "no",
    ),
    Change(
        "steps: stirring ends silently",
        "webui/js/views/steps.js",
        "      beep();\n",
        "",
        STIRRED,
        "no",
    ),
    Change(
        "screen sleeps in Clock",
        "webui/js/phone/wake_lock.js",
        "    else stayAwake();\n",
        "",
        AWAKE,
        "",
    ),
    # late answers: nothing old stands as new
    Change(
        "old figures never marked",
        "webui/js/answer/stale.js",
        "else timer ||= setTimeout(put, SOON);",
        "",
        LATE,
        "",
    ),
    Change(
        "steps: a late step is not marked",
        "webui/js/views/steps.js",
        "const late = setTimeout(() => this.behind(true), SOON);",
        "const late = 0;",
        "tests/browser/test_pour_along.py::test_a_tap_that_finds_no_answer_is_no_step",
        "",
    ),
    Change(
        "pot: old minutes unmarked",
        "webui/js/pots/pot.js",
        'article.toggleAttribute("data-behind", Boolean(large && problem));',
        'article.toggleAttribute("data-behind", false);',
        FAULTS + "::test_a_running_pots_minutes_do_not_stand_unmarked",
        "",
    ),
    Change(
        "an old answer leads on",
        "webui/js/views/screen.js",
        "    if (isOld || bounced) {",
        "    if (bounced) {",
        FAULTS + "::test_an_old_answer_leads_nowhere",
        "",
    ),
    # what the pages say
    Change(
        "pictures that say another word than the screen",
        WORDS,
        "heat-usable = Usable for",
        "heat-usable = Good for",
        SHOWS,
        "no",
    ),
    Change(
        "pictures whose words are set in another size",
        "webui/css/lines.css",
        ".line-part { display: block; font-size: var(--name);",
        ".line-part { display: block; font-size: var(--strong);",
        SHOWS,
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
    # the strength of a seam
    Change(
        "strength: glass counts as on the first day",
        "shared/seam/strength.py",
        "carries.laminate_pull(p) * knock",
        "carries.laminate_pull(p)",
        "tests/test_strength.py",
        "",
    ),
    Change(
        "strength: an unknown grain counts as the weaker panel",
        "shared/seam/strength.py",
        'values["grain"] == ALONG',
        'values["grain"] != ACROSS',
        "tests/test_strength.py",
        "",
    ),
    Change(
        "strength: wood under the tape holds whatever the glass does",
        "shared/seam/strength.py",
        "facts.ROLLS * min(flank, useful) / thickness",
        "1e12",
        "tests/test_strength.py",
        "",
    ),
    # the run of a batch: minutes, metres and names that wet gloves follow
    Change(
        "run: a contact tapped twice counts from the later tap",
        "shared/plan/run.py",
        'found[name] = min(found.get(name, row["at"]), row["at"])',
        'found[name] = max(found.get(name, row["at"]), row["at"])',
        RUN,
        "yes",
    ),
    Change(
        "run: a window begins anew at each look",
        "shared/plan/run.py",
        "limit, gone + begun) - gone\n        state",
        "limit, gone + age) - gone\n        state",
        RUN,
        "yes",
    ),
    Change(
        "run: the bag counts from the wet-out's contact",
        "shared/plan/run.py",
        '("pour_mix", "pour_putty") if limit in (POT, SOFT)',
        '("pour_mix", "pour_putty") if limit not in (POT, SOFT)',
        RUN,
        "yes",
    ),
    Change(
        "run: work still to come does not make it late",
        "shared/plan/run.py",
        "LATE if end > by else",
        "LATE if age > by else",
        RUN,
        "yes",
    ),
    Change(
        "run: minutes that are over are told as minutes left",
        "shared/plan/run.py",
        "max(0.0, by - age)",
        "abs(by - age)",
        RUN,
        "yes",
    ),
    Change("run: too late is no warning", "shared/plan/run_lines.py", '"late": WARN', '"late": ASK', RUN, "yes"),
    Change(
        "run: how long a window lasts is rounded up",
        "shared/plan/run_lines.py",
        'quantity(one.by - one.begun, "min", DOWN, 0)',
        'quantity(one.by - one.begun, "min", UP, 0)',
        RUN,
        "no",
    ),
    Change(
        "run: the peel ply comes off by the first contact",
        "shared/plan/run_dates.py",
        "off = dates.last + dates.peel",
        "off = dates.first + dates.peel",
        RUN,
        "no",
    ),
    Change(
        "run: the next coat holds until later than it does",
        "shared/plan/run_dates.py",
        "dates.first + coat.closes)",
        "dates.last + coat.closes)",
        RUN,
        "no",
    ),
    Change(
        "run: its calendar is an hour late",
        "shared/plan/run_lines.py",
        'values["ran_wall"] + time - found.now',
        'values["ran_wall"] + time - found.now + 3600',
        RUN,
        "yes",
    ),
    Change(
        "run: the pour of the putty asks for no filler",
        "shared/plan/run_lines.py",
        '"yes" if name == "putty" else "no"]',
        '"yes" if name == "wet" else "no"]',
        RUN,
        "no",
    ),
    Change(
        "run: the putty is called wet-out",
        "shared/plan/run_lines.py",
        "name = one.key[5:]",
        'name = {"putty": "wet", "wet": "putty"}.get(one.key[5:], "mix")',
        RUN,
        "no",
    ),
    Change(
        "run: the tape is told of the other piece",
        "shared/plan/run_lines.py",
        "_pieces(found)[one.piece].name",
        "_pieces(found)[-1 - one.piece].name",
        RUN,
        "no",
    ),
    Change(
        "run: the putty is poured by the grams of the wet-out",
        "shared/plan/run.py",
        'add("pour_putty", mass=batches.poured(masses["putty"]))',
        'add("pour_putty", mass=batches.poured(masses.get("wet", 0.1)))',
        RUN,
        "no",
    ),
    Change(
        "run: tape that is cut is rounded up",
        "shared/equations/tape_left.py",
        "floor(fits / STEP + 1e-6)",
        "floor(fits / STEP + 1)",
        RUN,
        "yes",
    ),
    # the strength of a seam, told too high
    Change(
        "strength: a share is rounded up",
        "shared/seam/strength_lines.py",
        'quantity(share, "%", DOWN, places=0)',
        'quantity(share, "%", UP, places=0)',
        TRUSTED + "::test_no_share_of_a_strength_is_rounded_up",
        "",
    ),
    Change(
        "strength: the best case stands for the worst",
        "shared/seam/strength.py",
        "key=lambda case: (case.share, case.key)), skins",
        "key=lambda case: (-case.share, case.key)), skins",
        STRONG,
        "",
    ),
    Change(
        "strength: the mildest angle of the hull counts",
        "shared/seam/strength.py",
        "case.share < found[case.key].share",
        "case.share > found[case.key].share",
        "tests/test_strength.py::test_the_angle_that_is_worst_counts",
        "",
    ),
    Change(
        "strength: the tape counts all its width as flank",
        "shared/seam/strength.py",
        "(max([row.width for row in rows]) - bent) / 2",
        "max([row.width for row in rows]) / 2",
        "tests/test_strength.py::test_a_taped_corner_worked_by_hand",
        "",
    ),
    Change(
        "strength: nine tenths of the panel are proposed as enough",
        "shared/seam/strength.py",
        "return case.share < 1",
        "return case.share < 0.9",
        "tests/test_strength.py::test_what_would_carry_does",
        "",
    ),
    Change(
        "strength: the putty twice as strong",
        CATALOGUE + "strength.py",
        "PUTTY_STIFF = 15e6, 40e6, 2.5e9",
        "PUTTY_STIFF = 30e6, 80e6, 2.5e9",
        TRUSTED + "::test_what_a_strength_is_reckoned_with_is_as_it_was_typed_a_second_time",
        "",
    ),
    Change(
        "strength: the wood under the tape ten times as strong",
        CATALOGUE + "strength.py",
        "ROLLS, ROLLS_STIFF = 1.5e6,",
        "ROLLS, ROLLS_STIFF = 15e6,",
        TRUSTED + "::test_what_a_strength_is_reckoned_with_is_as_it_was_typed_a_second_time",
        "",
    ),
    Change(
        "strength: our own guess is called common practice",
        CATALOGUE + "strength.py",
        'ROLLS / 1e6, "MPa", JUDGED)',
        'ROLLS / 1e6, "MPa", COMMON)',
        TRUSTED + "::test_what_a_strength_is_reckoned_with_is_as_it_was_typed_a_second_time",
        "",
    ),
    Change(
        "strength: a lap that is too short is called enough",
        "shared/seam/strength_lines.py",
        "if found.lap <= spec.overlap else",
        "if found.lap >= spec.overlap else",
        TRUSTED + "::test_a_lap_is_enough_only_where_it_is",
        "",
    ),
    Change(
        "strength: a lap is rounded down",
        "shared/seam/strength_lines.py",
        "lap=length(found.lap, UP)",
        "lap=length(found.lap, DOWN)",
        TRUSTED + "::test_a_lap_is_enough_only_where_it_is",
        "",
    ),
    # files that leave the app
    Change(
        "shopping as a file: resin and hardener change places",
        "shared/files/table_rows.py",
        '"part_" + LETTERS[place]',
        '"part_" + LETTERS[len(found.parts) - 1 - place]',
        TRUSTED + "::test_the_parts_that_are_bought_are_those_of_the_label",
        "",
    ),
    Change(
        "cuts as a file: the last piece of each roll is lost",
        "shared/files/table_rows.py",
        "for place in cut.pieces:",
        "for place in cut.pieces[:max(1, len(cut.pieces) - 1)]:",
        TRUSTED + "::test_a_list_of_cuts_has_every_piece_once_under_its_own_name",
        "",
    ),
    Change(
        "cuts as a file: pieces are named as the first joint",
        "shared/files/table_rows.py",
        '"joint": called(row)',
        '"joint": called(pieces[0][1])',
        TRUSTED + "::test_a_list_of_cuts_has_every_piece_once_under_its_own_name",
        "",
    ),
    Change(
        "batches as a file: one that is too late is told as in time",
        "shared/files/table_rows.py",
        '"too_late": one.refused is not None',
        '"too_late": False',
        TRUSTED + "::test_a_batch_that_is_too_late_is_told_so_and_its_latest_start_is_its_line_s",
        "",
    ),
    Change(
        "batches as a file: the latest start is the end",
        "shared/files/table_rows.py",
        '"latest_start": one.latest',
        '"latest_start": one.end',
        TRUSTED + "::test_a_batch_that_is_too_late_is_told_so_and_its_latest_start_is_its_line_s",
        "",
    ),
    Change(
        "calendar: an hour late",
        "shared/files/calendar.py",
        "return day * DAY + int(",
        "return day * DAY + 3600 + int(",
        TRUSTED + "::test_a_calendar_s_batches_have_each_their_own_lines",
        "",
    ),
    Change(
        "calendar: a window closes late",
        "shared/files/calendar.py",
        "on_day(day, mixed + closes, DOWN)",
        "on_day(day, mixed + closes)",
        "tests/test_files.py::test_the_windows_of_a_cure_open_late_and_close_early",
        "",
    ),
    Change(
        "calendar: a pot rings by the clock of wherever it is opened",
        "shared/files/calendar.py",
        '"DTSTART:" + moment(one.begins, one.utc)',
        '"DTSTART:" + moment(one.begins)',
        TRUSTED + "::test_a_pot_s_calendar_names_each_step_at_its_own_time_in_universal_time",
        "",
    ),
    Change(
        "calendar: the steps of a pot change names",
        "shared/files/calendar.py",
        '"alarm_" + str(one.place + 1)',
        '"alarm_" + str(len(found.alarms) - one.place)',
        TRUSTED + "::test_a_pot_s_calendar_names_each_step_at_its_own_time_in_universal_time",
        "",
    ),
    Change(
        "calendar: each batch is told the first one's grams",
        "shared/files/calendar.py",
        'if line["part"] == part and line is not head',
        'if line["part"] == "batch_1" and line is not head',
        TRUSTED + "::test_a_calendar_s_batches_have_each_their_own_lines",
        "",
    ),
    Change(
        "spreader for a cutter: a radius 1 mm too small",
        "shared/files/drawn.py",
        "(40, radius)",
        "(40, radius - 1)",
        "tests/test_files.py::test_the_spreader_is_measured_in_its_dxf",
        "",
    ),
    # a boat: what is cut, what is bought
    Change(
        "cut list: the first piece of each roll is not told",
        "shared/boat/cut_lines.py",
        "_numbered(rows, lengths, each.pieces), part",
        "_numbered(rows, lengths, each.pieces[-max(1, len(each.pieces) - 1):]), part",
        TRUSTED + "::test_the_cut_list_on_screen_has_every_piece_and_none_is_short",
        "",
    ),
    Change(
        "cut list: pieces are cut shorter than they are laid",
        "shared/boat/cut_lines.py",
        "each, count = along(long / 1000, UP)",
        "each, count = along(long / 1000, DOWN)",
        TRUSTED + "::test_the_cut_list_on_screen_has_every_piece_and_none_is_short",
        "",
    ),
    Change(
        "cut list: a remnant is told as long as before",
        "shared/boat/cut_lines.py",
        'left = max(0.0, rest["length"] - used)',
        'left = rest["length"]',
        "tests/test_boat.py::test_what_is_cut_off_the_remnants_and_what_is_left_make_their_length",
        "",
    ),
    Change(
        "boat: the resin of the surfaces is not bought",
        "shared/boat/phases.py",
        "alone.all + more.resin)",
        "alone.all)",
        "tests/test_boat_surfaces.py::test_a_boat_worked_by_hand",
        "",
    ),
    Change(
        "boat: of two faces with the same cloth one is bought",
        "shared/boat/hull.py",
        "for row, given, made in laid:",
        "for row, given, made in laid[-1:]:",
        TRUSTED + "::test_the_cloth_of_two_faces_is_bought_for_both",
        "",
    ),
    Change(
        "boat: a surface is told by another name",
        "shared/boat/boat_surfaces.py",
        'return typed(row["name"])',
        'return typed(row["name"][::-1])',
        TRUSTED + "::test_each_surface_is_told_by_its_own_name",
        "",
    ),
    Change(
        "boat to plan: putty and wet-out change places",
        "shared/boat/boat_pieces.py",
        "_per_metre(putty, length), _per_metre(wet, length)",
        "_per_metre(wet, length), _per_metre(putty, length)",
        "tests/test_boat_pieces.py::test_the_plans_pour_what_the_boat_counts",
        "",
    ),
    Change(
        "boat to plan: the outside is taped on the same day as the inside",
        "shared/boat/boat_pieces.py",
        "1 if face.name in seam.LATE else 0",
        "0",
        "tests/test_boat_pieces.py::test_the_outside_is_a_plan_of_its_own_since_the_hull_is_turned_in_between",
        "",
    ),
    # what hands are told outside the catalogue
    Change(
        "run: a bag that gets hot is held on to",
        WORDS,
        "run-place = If the bag gets hot, stop. Take it outdoors.",
        "run-place = Bag gets hot: press on.",
        TOLD,
        "",
    ),
    Change(
        "run: skin is cleaned with solvent",
        WORDS,
        "run-clean = Never clean skin with solvent.",
        "run-clean = Clean skin with solvent.",
        TOLD,
        "",
    ),
    Change(
        "run: leftovers stay in the cup",
        WORDS,
        "Fresh gloves. Leave none in the cup: it heats up there.",
        "Fresh gloves. Leave the rest in the cup.",
        TOLD,
        "",
    ),
    Change(
        "sanding a fairing without a mask",
        WORDS,
        "Wear a particle mask and goggles, and draw the dust off. Sand only",
        "Draw the dust off. Sand only",
        TOLD,
        "",
    ),
    Change(
        "test cup: a smoking cup is picked up",
        WORDS,
        "leave the cup where it stands. Nobody leans over it. Never hold it.",
        "carry the cup away.",
        TOLD,
        "",
    ),
    Change(
        "cold seam: an open flame under it",
        WORDS,
        "a gentle electric heater outside the vapours, never an open flame.",
        "a heater, or an open flame.",
        TOLD,
        "",
    ),
    Change(
        "strength: no longer called an estimate",
        WORDS,
        "An estimate, not an approval: plans and class rules come first.",
        "By class rules.",
        TOLD,
        "",
    ),
    Change(
        "in German the putty is thinned",
        "shared/words/de.ftl",
        "heiß wird. Nie verdünnen.",
        "heiß wird. Verdünnen.",
        TOLD,
        "",
    ),
    # glue, cloth, fairing, fillets, coats
    Change(
        "glue-up: springback is forgotten",
        "shared/surface/gluing.py",
        "gluing.former_radius(radius, count)",
        "radius",
        WORK + "::test_a_former_is_tighter_than_the_bend_by_its_springback_and_the_hull_itself_is_not",
        "no",
    ),
    Change(
        "glue-up: what is glued to the hull springs back too",
        "shared/surface/gluing.py",
        'former = radius if values["to_hull"] == "yes" else gluing.',
        "former = gluing.",
        WORK + "::test_a_former_is_tighter_than_the_bend_by_its_springback_and_the_hull_itself_is_not",
        "no",
    ),
    Change(
        "glue-up: a former is told too wide",
        "shared/surface/gluing_lines.py",
        '"gluing-former", bent.former, "m", along(bent.former, DOWN)',
        '"gluing-former", bent.former, "m", along(bent.former, UP)',
        WORK + "::test_a_former_is_tighter_than_the_bend_by_its_springback_and_the_hull_itself_is_not",
        "no",
    ),
    Change(
        "glue-up: the wait before the glue does not count",
        "shared/surface/gluing.py",
        '+ values["soak"] + pots.',
        "+ pots.",
        WORK + "::test_a_glue_up_s_pot_lasts_through_the_wait_and_no_longer_than_a_cup",
        "no",
    ),
    Change(
        "glue-up: one pot lasts as long as a film",
        "shared/surface/gluing.py",
        'batch(values["system"], "cup", mix',
        'batch(values["system"], "film", mix',
        WORK + "::test_a_glue_up_s_pot_lasts_through_the_wait_and_no_longer_than_a_cup",
        "no",
    ),
    Change(
        "glue-up: end grain is primed as thin as a face",
        "shared/surface/gluing.py",
        'times = values["end_prime"] if',
        "times = 1.0 if",
        WORK + "::test_a_scarf_s_end_grain_is_primed_twice_as_much_and_a_laminate_s_faces_once",
        "no",
    ),
    Change(
        "scarf: a joined length is told too long",
        "shared/surface/gluing_lines.py",
        "along(scarf.joined, DOWN)",
        "along(scarf.joined, UP)",
        WORK + "::test_a_joined_length_is_told_no_longer_than_it_is_and_each_pour_is_its_own",
        "no",
    ),
    Change(
        "glue-up: all of the mix goes to Pour as glue",
        "shared/surface/gluing.py",
        "surface_leads.thickened(found.glue",
        "surface_leads.thickened(found.mix / 1000",
        WORK + "::test_a_joined_length_is_told_no_longer_than_it_is_and_each_pour_is_its_own",
        "no",
    ),
    Change(
        "a warm day's cup holds as much as a cool one's",
        "shared/surface/pots.py",
        "return BIG_WARM if air >= WARM else BIG",
        "return BIG",
        WORK + "::test_a_warm_day_halves_what_one_cup_may_hold_in_glue_and_pots",
        "",
    ),
    Change(
        "glue-up: one pot will do on a warm day as on a cool one",
        "shared/surface/gluing.py",
        'big = pots.big(values["air"])',
        "big = pots.big(0)",
        WORK + "::test_a_warm_day_halves_what_one_cup_may_hold_in_glue_and_pots",
        "",
    ),
    Change(
        "cloth: dry on an upright bare face is no warning",
        "shared/surface/sheathing_lines.py",
        "(faces.UPRIGHT, faces.UNDER)",
        "(faces.UNDER,)",
        WORK + "::test_cloth_on_an_upright_bare_face_is_warned_of_first",
        "no",
    ),
    Change(
        "boat: its putty without what is spare",
        "shared/boat/hull.py",
        "stirred = max(putty * more, planned.putty)",
        "stirred = putty",
        "tests/test_one_truth.py::test_the_putty_of_a_boat_is_what_its_plans_mix",
        "no",
    ),
    Change(
        "figures will be typed: those of the first system stand for them",
        "shared/forms/rows.py",
        "row = self.default if typed is None else typed",
        "row = self.default if missing(typed) else typed",
        "tests/test_moves.py::test_figures_that_will_be_typed_are_asked_for_and_no_other_things_are_taken",
        "no",
    ),
    Change(
        "an own timing comes back as another one",
        "webui/js/form/beside.js",
        "!told.includes(pair)",
        "!mine.includes(pair)",
        "tests/browser/test_choices.py::test_an_own_timing_comes_back_with_all_that_was_chosen_in_it",
        "no",
    ),
    Change(
        "log: poured again by another system",
        "webui/js/views/log.js",
        'leadIn("pour", pairs);',
        "",
        "tests/browser/test_log.py::test_a_batch_is_poured_again_by_its_own_system",
        "no",
    ),
    Change(
        "a pot that is still good forgets what it is",
        "webui/js/pots/pots.js",
        '([name]) => name !== "duration" && name !== "share" && !name.startsWith("changes.")',
        "() => false",
        "tests/browser/test_clock.py::test_still_good_looks_again_later",
        "no",
    ),
    Change(
        "fairing: a batch is as large as a pass",
        "shared/surface/fairing.py",
        'batches = max(passes, pots.cups_for(placed * density * more, WARMTH, values["cup"] * (1 + dose)))',
        "batches = passes",
        WORK + "::test_no_batch_of_compound_is_a_big_pot_and_pour_gets_one_of_them",
        "no",
    ),
    Change(
        "fairing: Pour gets all of it at once",
        "shared/surface/fairing.py",
        "surface_leads.thickened(found.pot / found.density",
        "surface_leads.thickened(found.placed",
        WORK + "::test_no_batch_of_compound_is_a_big_pot_and_pour_gets_one_of_them",
        "no",
    ),
    Change(
        "fillets: the radii of the two sides change places",
        "shared/surface/fillets.py",
        "for one in (angle, other_angle(angle))]",
        "for one in (other_angle(angle), angle)]",
        WORK + "::test_each_radius_of_a_leaning_panel_stands_on_its_own_side",
        "no",
    ),
    Change(
        "fillets: the joint gets the smaller radius",
        "shared/surface/fillets.py",
        "        max([radius for _, radius in found.sides]), from_si",
        "        min([radius for _, radius in found.sides]), from_si",
        WORK + "::test_each_radius_of_a_leaning_panel_stands_on_its_own_side",
        "no",
    ),
    Change(
        "fillets: a radius is rounded down",
        "shared/surface/fillets_lines.py",
        "length(radius, UP)",
        "length(radius, DOWN)",
        WORK + "::test_each_radius_of_a_leaning_panel_stands_on_its_own_side",
        "no",
    ),
    Change(
        "coats: five degrees too cold is not told",
        "shared/surface/coats.py",
        'values["air"] < least - 1e-9',
        'values["air"] < least - 5',
        WORK + "::test_a_hardener_that_may_never_cure_is_told_from_its_lowest_temperature_down",
        "no",
    ),
    Change(
        "coats: all of the first coat goes to Pour as one pot",
        "shared/surface/coats.py",
        "mass = found.pots.mass if found.pots else found.first",
        "mass = found.first",
        WORK + "::test_what_goes_to_pour_is_one_pot_and_no_more",
        "no",
    ),
    Change(
        "pots: a film is laid as if it were mixed in no time",
        "shared/surface/pots.py",
        "surfaces.reach(window, MIX_LIQUID, pace)",
        "surfaces.reach(window, 0.0, pace)",
        WORK + "::test_a_pot_is_mixed_and_laid_while_its_film_is_worked_at_the_pace_of_its_place",
        "no",
    ),
    Change(
        "pots: overhead goes as quickly as on the level",
        "shared/surface/pots.py",
        "return pace / EASE.get(lie, POSITIONS[2][2])",
        "return pace",
        WORK + "::test_a_pot_is_mixed_and_laid_while_its_film_is_worked_at_the_pace_of_its_place",
        "no",
    ),
    Change(
        "coats: a window closes by the last drop",
        "shared/equations/surfaces.py",
        "None if closes is None else begun + closes",
        "None if closes is None else begun + lasts + closes",
        "tests/test_surface.py::test_the_next_coat_goes_by_the_clock_room",
        "",
    ),
    Change(
        "coats: a coat may start before its window opens",
        "shared/surface/coats_lines.py",
        "clock_said(to_step(earliest, STEP, UP)",
        "clock_said(to_step(earliest, STEP, DOWN)",
        "tests/test_surface.py::test_the_next_coat_goes_by_the_clock_room",
        "",
    ),
    Change(
        "glue-up: a pot that dies first is no warning",
        "shared/surface/gluing.py",
        "needed <= lasts and not big",
        "not big",
        "tests/test_surface.py::test_one_pot_is_refused_where_it_dies_or_burns",
        "",
    ),
    # a plan of coats, a run's dates, a helper
    Change(
        "plan of coats: pots as in the morning's cool",
        "shared/plan/layers.py",
        "plan.profile.pace_at(plan.profile.warmest)",
        'plan.profile.pace_at(plan.profile.at(values["start"]))',
        WORK + "::test_a_coat_s_pots_are_those_of_the_warmest_hour_of_its_day",
        "no",
    ),
    Change(
        "plan of coats: each is poured for the air of the day's begin",
        "shared/plan/layers.py",
        "plan.profile.at(start)))",
        "plan.profile.at(begins)))",
        WORK + "::test_each_coat_is_poured_for_the_air_of_its_own_hour",
        "no",
    ),
    Change(
        "plan of coats: a window closes late on the clock",
        "shared/plan/layers_lines.py",
        "closes = _clock(values, one.closes, DOWN)",
        "closes = _clock(values, one.closes + 900, DOWN)",
        "tests/test_layers.py::test_the_clock_is_told_over_midnight_and_days",
        "",
    ),
    Change(
        "plan of coats: that it is sanded first is not told",
        "shared/plan/layers_lines.py",
        'caution="coats-sand.text" if one.latest is None else ""',
        'caution=""',
        "tests/test_layers.py::test_the_clock_is_told_over_midnight_and_days",
        "",
    ),
    Change(
        "run: a coat goes on through the peel ply",
        "shared/plan/run_dates.py",
        "max(off or 0.0, dates.last + coat.opens)",
        "dates.last + coat.opens",
        WORK + "::test_no_coat_goes_on_through_the_peel_ply",
        "",
    ),
    Change(
        "run: a coat is told where it may never hold",
        "shared/plan/run_dates.py",
        "coat.cold or coat.shut",
        "coat.shut",
        WORK + "::test_no_coat_goes_on_through_the_peel_ply",
        "",
    ),
    Change(
        "helper: the way of the code gives minutes away",
        "webui/js/views/run.js",
        'age: seconds("ran_age") + WAY',
        'age: seconds("ran_age")',
        HELPER + "::test_the_way_of_a_piece_s_code_is_taken_off_the_helper_s_minutes",
        "",
    ),
    Change(
        "helper: another piece than was given",
        "webui/js/views/run.js",
        '[Number(ran.split(".")[1]) + 1, what]',
        '[Number(ran.split(".")[1]), what]',
        HELPER + "::test_a_helper_takes_a_piece_by_link_and_sees_the_same_minutes",
        "",
    ),
    Change(
        "run: of two ages the younger counts",
        "webui/js/views/run.js",
        '["bound", "most"]',
        '["bound", "least"]',
        HELPER + "::test_a_clock_that_is_set_ahead_in_sight_takes_its_minutes_off_the_window",
        "",
    ),
    Change(
        "pots: the one that ends last stands first",
        "webui/js/pots/pots.js",
        "(a, b) => ends(a) - ends(b)",
        "(a, b) => ends(b) - ends(a)",
        "tests/browser/test_clock.py::test_of_two_pots_the_one_that_ends_first_stands_first_and_on_the_way_to_it",
        "",
    ),
    # the second process, a test cup, a shelf, marks of a language
    Change(
        "second process: a query is lost on the way",
        "server/apart.py",
        '"raw_path", "query_string", "root_path"',
        '"raw_path", "root_path"',
        APART,
        "",
    ),
    Change(
        "second process: who asks is lost on the way",
        "server/apart.py",
        '"root_path", "headers")',
        '"root_path")',
        APART,
        "",
    ),
    Change(
        "second process: each gets the answer of the one before",
        "server/apart.py",
        "                return asked.result()\n",
        '                self.kept, found = asked.result(), getattr(self, "kept", None) or '
        "asked.result()\n                return found\n",
        APART,
        "",
    ),
    Change(
        "test cup: what sounds calmer counts in full",
        "shared/clock/trial.py",
        "min(loss[0], max(1.0, loss[1]))",
        "loss[0]",
        WORK + "::test_what_sounds_calmer_of_a_test_cup_is_kept_by_its_cautious_end",
        "",
    ),
    Change(
        "test cup: a cooler mix counts in full",
        "shared/clock/trial.py",
        "max(heat[0], min(1.0, heat[2]))",
        "heat[0]",
        WORK + "::test_what_sounds_calmer_of_a_test_cup_is_kept_by_its_cautious_end",
        "",
    ),
    Change(
        "test cup: half of its doubt is told",
        "shared/clock/trial.py",
        "share = exp(NINETY * min(off, 2.0))",
        "share = exp(NINETY / 2 * min(off, 2.0))",
        WORK + "::test_the_band_of_a_test_cup_is_as_wide_as_its_doubt_and_told_from_least_to_most",
        "",
    ),
    Change(
        "test cup: least and most change places",
        "shared/clock/trial_lines.py",
        "return minutes(times[0]), minutes(times[1])",
        "return minutes(times[1]), minutes(times[0])",
        WORK + "::test_the_band_of_a_test_cup_is_as_wide_as_its_doubt_and_told_from_least_to_most",
        "",
    ),
    Change(
        "test cup: resin that was warm counts as cool",
        "shared/clock/trial.py",
        '"resin": values["stirred"],',
        '"resin": None,',
        WORK + "::test_resin_that_was_warm_when_it_was_stirred_is_kept_so",
        "",
    ),
    Change(
        "shelf: the longer of two shelf lives counts",
        "shared/mix/shelf.py",
        "iso(min(days))",
        "iso(max(days))",
        "tests/test_shelf.py::test_the_earlier_day_is_the_last_one_and_a_word_comes_before_it",
        "",
    ),
    Change(
        "shelf: the part there is more of decides",
        "shared/equations/shelf.py",
        "return min([mass / share",
        "return max([mass / share",
        "tests/test_shelf.py::test_what_is_left_mixes_as_much_as_the_scarcer_part_lets",
        "",
    ),
    Change(
        "German: 1.500 is read and not said back",
        "shared/words/numbers.py",
        'for mark in ",.":\n        before',
        'for mark in ",":\n        before',
        "tests/test_languages.py::test_three_digits_behind_a_mark_are_always_echoed",
        "",
    ),
    Change(
        "German: a table for a spreadsheet has points",
        "shared/files/tables.py",
        'figure(value).replace(".", decimal)',
        "figure(value)",
        "tests/test_files.py::test_a_table_opens_with_its_numbers_as_numbers_in_either_country",
        "",
    ),
    Change(
        "coats: the next one goes on without sanding",
        "shared/words/en.ftl",
        "Wash with water, let dry, sand dull, then coat.",
        "Let dry, then coat.",
        TOLD,
        "",
    ),
    Change(
        "a pot is used until it is stiff",
        "shared/words/en.ftl",
        "Stop at the first sign of thickening.",
        "Use all of it.",
        TOLD,
        "",
    ),
    Change(
        "shelf: a can that ended is used untested",
        "shared/words/en.ftl",
        "Ended on { $day }. Test it first.",
        "Ended on { $day }. Use it up.",
        TOLD,
        "",
    ),
)


def prepared(folder: Path):
    """The whole tree once more, found before the installed one, and where tests look for it in the repository."""
    shutil.rmtree(folder, ignore_errors=True)
    (folder / "covemix").mkdir(parents=True)
    hidden = shutil.ignore_patterns("__pycache__")
    for room in ROOMS:
        shutil.copytree(HERE / room, folder / "covemix" / room, ignore=hidden)
        (folder / room).symlink_to(folder / "covemix" / room)
    for path in HERE.iterdir():
        if path.name in (".git", ".venv", *ROOMS) or path.name.endswith(("cache", ".egg-info")):
            continue
        if path.is_dir():
            shutil.copytree(path, folder / path.name, ignore=hidden)
        else:
            shutil.copy(path, folder)
    for path in set(folder.iterdir()) - {folder / "covemix"}:  # who looks for it from a room finds it too
        if path.name not in ROOMS:
            (folder / "covemix" / path.name).symlink_to(path)
    # most of the work of a browser test is to make and to pack what is sent: unpacked it is the same
    (folder / "sitecustomize.py").write_text(LIGHTLY, encoding="utf-8")


LIGHTLY = """import gzip, os, pathlib, sys
if os.environ.get("PACKED_LIGHTLY"):
    import brotli
    here = pathlib.Path(__file__).parent
    sys.path.append(str(here / "tests"))
    import made_once
    packed, zipped = brotli.compress, gzip.compress
    brotli.compress = lambda data, **how: packed(data, quality=1)
    gzip.compress = lambda data, *how, **more: zipped(data, 1, **more)
    made_once.share(here / "made")
"""


def asked(folder: Path, tests: str, limit: float | None = None):
    """Runs tests in the copy as it is now -> (exit code, the first test that failed, HANGS, or "").

    tests: words for pytest, as a shell reads them. limit: seconds that tests of a browser may take; others have LABOUR.
    """
    if "tests/browser/" not in tests:
        return forked(folder).ask(tests, LABOUR)
    words = ["-x", "-q", "-rfE", "-p", "no:cacheprovider", "-o", "testpaths=", "--force-reruns", "0"]
    run = subprocess.Popen(
        [sys.executable, "-m", "pytest", *words, *shlex.split(tests)],
        cwd=folder,
        env={**os.environ, "PYTHONPATH": str(folder), "PACKED_LIGHTLY": "1"},
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        text=True,
        start_new_session=True,
    )
    try:
        said = run.communicate(timeout=limit)[0]
    except subprocess.TimeoutExpired:
        os.killpg(run.pid, signal.SIGKILL)  # with the browsers that it started
        run.communicate()
        return 2, HANGS
    failed = re.search(r"^(?:FAILED|ERROR) (\S+)", said, re.MULTILINE)
    return run.returncode, failed[1] if failed else ""


@functools.cache
def forked(folder: Path):
    return Forked(folder)


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
    return failed.removeprefix("tests/").removeprefix("browser/") or ("" if code == 0 else "?")


def page(rows):
    """docs/PROOF.md: what was broken, which test saw it, and in which tree; rows: (change, result or None)."""
    lines = [
        "# Broken runs",
        "",
        "Made by `make broken`: each change was made alone in a copy of this tree, and the tests "
        "named in tests/broken_runs.py ran there. Before: whether the tests of commit 0d8e220, of what came later "
        "those of ae6107b, of a run tests/test_run.py of 2cab29f, of glue, coats and test cups those of 4cc34312, saw "
        "the same change (empty: not tried). Tree: the commit whose tree was broken. Mark: of the change and its tests "
        "as they were run; where either is another today, the row is not run yet.",
        "",
        "| what was broken | file | before | the test that fails now | tree | mark |",
        "|---|---|---|---|---|---|",
    ]
    for one, found in rows:
        seen, tree = found or ("not run yet", "")
        test, told = seen.partition("[")[0] or "**none**", mark(one) if found else ""
        lines.append(f"| {one.what} | {one.file} | {one.before} | {test} | {tree} | {told} |")
    run = [found for _, found in rows if found]
    seen = sum(bool(test) for test, _ in run)
    lines += ["", f"{len(rows)} changes, {len(run)} of them made so far, {seen} of these seen."]
    return "\n".join(lines) + "\n"


def mark(change: Change):
    """By what a result is kept: another change, or other tests of it, are run anew."""
    return hashlib.sha256("\0".join(change[:5]).encode()).hexdigest()[:8]


def rows_of(text: str):
    """The cells of the rows of docs/PROOF.md."""
    lines = [line for line in text.splitlines() if line.startswith("| ")]
    return [[cell.strip() for cell in line.split("|")[1:-1]] for line in lines[1:]]


def told_by(text: str):
    """What the page tells as seen and still holds: mark -> (test, tree)."""
    told = {row[5]: (row[3], row[4]) for row in rows_of(text) if "::test_" in row[3]}
    return {mark(one): told[mark(one)] for one in CHANGES if mark(one) in told and stands(one, told[mark(one)][0])}


def stands(change: Change, seen: str):
    """Whether the text that is changed and the test that saw the change are still there."""
    file, _, test = seen.partition("::")
    places = [place for place in (HERE / "tests" / file, HERE / "tests" / "browser" / file) if place.exists()]
    return change.old in (HERE / change.file).read_text(encoding="utf-8") and any(
        f"def {test}(" in place.read_text(encoding="utf-8") for place in places)


if __name__ == "__main__":
    folder, words = Path(sys.argv[1]).resolve(), sys.argv[2:]
    results = folder.with_suffix(".json")
    found = json.loads(results.read_text(encoding="utf-8")) if words and results.exists() else {}
    if words:
        found = {**told_by(PAGE.read_text(encoding="utf-8")), **found}
    wanted = [one for one in CHANGES if not words or (not found.get(mark(one), [""])[0] and any(
        word in one.what + one.file + one.tests for word in words))]
    tree = subprocess.check_output(["git", "rev-parse", "--short=8", "HEAD"], cwd=HERE, text=True).strip()
    prepared(folder)
    unasked = []
    for tests in dict.fromkeys(one.tests for one in wanted):
        if asked(folder, tests)[0] != 0 and asked(folder, tests)[0] != 0:  # a browser on a busy machine is asked again
            unasked.append(tests)
            print(f"{tests} must pass before anything is broken", flush=True)
            continue
        for one in wanted:
            if one.tests == tests:
                found[mark(one)] = broken(folder, one), tree
                results.write_text(json.dumps(found), encoding="utf-8")
                print(f"{one.what}: {found[mark(one)][0] or 'NOTHING SAW IT'}", flush=True)
    PAGE.write_text(page([(one, found.get(mark(one))) for one in CHANGES]), encoding="utf-8")
    sys.exit(bool(unasked) or any(not found[mark(one)][0] for one in wanted))
