"""Every fact: a figure of the catalogue is changed, and what is said follows or nothing that is said changes.

All at once: no text keeps a figure of a row. One at a time: an answer follows each, and the screen of sources shows it.
"""
import json
import re

import facts
import pytest

UNIT = (r"(?:g/m[2²]|oz/yd²|g/mL|m³/h|m³|m²|mm|cm|min|mL|kJ/mol|US fl oz|fl oz|oz|in\b|ft\b|°C|°F|°|%|kg|g\b|m\b|h\b"
        r"|s\b|L\b|Pa\b|ppm|times\b)")
TOLD = re.compile(r"(?<![-\w.,])(\d[\d.]*\d|\d)(?:(?: to | : |, )\d[\d.]*)* ?(" + UNIT + ")")
# what keeps a figure though every row changes, and why it may
STAYS = (
    (r"for each 1[08] °[CF] warmer", "how the row is counted: for each so many degrees"),
    (r"per (100 g|3\.53 oz) of epoxy", "per hundred"),
    (r", at (25 °C|77 °F)$", "to which temperature times are kept: an equation's own, whatever a label says"),
    (r"like |: 75 : 100 mm|3 : 3\.94 in|Stiffening 31 min|In the order of the parts|Inside angle|0\.8 : 1\.4",
     "shows how to type"),
    (r"^Air tested before entry|above 65 °C", "a statement that stands in the catalogue whole"),
    (r"measure me: |bar must be 100 mm|bar must be 3|a bar of |^30°$", "a drawing's own measure"),
    (r"^24 h$|first 24 h", "a clock, a day"),
    (r"^used \d+ minutes? after|\b1 minute (left|ago)|^1 min longer$", "what a clock shows, to the minute"),
    (r"^own batches count", "a ratio of two rows that change alike"),
    (r"^(1g|400mL)$", "how a row is called in a link: it stays for years"),
    (r"often (20|68) °", "what labels say"),
    (r"80 to 160 g/m²", "what bare wood takes first, of another row than what a later coat does"),
)
# modules of which each figure is changed, not some of them
LIMITS = ("ratios", "measuring", "damp", "joints", "plans", "pots", "cautions", "airing", "dusts")
SOURCES = [json.dumps({"move": "sources", "typed": {"units": units}}) for units in ("metric", "us")]


@pytest.fixture(scope="module")
def codes():
    return facts.compiled()


@pytest.fixture(scope="module")
def asked():
    return json.loads(facts.ASKED.read_text(encoding="utf-8"))


def texts(item, path=""):
    """(path, text) of all that an answer or a form says; a default has its unit behind it, an id says nothing."""
    if isinstance(item, dict):
        if item.get("unit") and item.get("default"):
            item = dict(item, default=f"{item['default']} {item['unit']}")
        for key, below in item.items():
            if key not in ("id", "screen", "pairs", "understood", "name", "field"):
                yield from texts(below, f"{path}.{key}")
    elif isinstance(item, list):
        for place, below in enumerate(item):
            yield from texts(below, f"{path}.{below.get('name', place) if isinstance(below, dict) else place}")
    elif isinstance(item, str):
        yield path, item


def figures_in(text):
    """{(figure, unit)} that a text tells."""
    return set(TOLD.findall(text))


def shown(sources):
    """{(figure, unit)} that the screen of sources tells of all rows, and the words of its lines."""
    lines = [line["label"] + " | " + line["text"] for answer in sources for line in json.loads(answer)["lines"]]
    return set().union(*map(figures_in, lines)), lines


def kept(before, after, gone, question):
    """[(path, text)] that tell one of the figures both before and after, though nobody typed it."""
    typed = {float(number) for number in re.findall(r"\d+(?:\.\d+)?", question.replace(",", "."))}
    now = dict(texts(json.loads(after)))
    return [(path, text, figure) for path, text in texts(json.loads(before))
            for figure in figures_in(text) & gone & figures_in(now.get(path, ""))
            if float(figure[0]) not in typed and not any(re.search(stays, text) for stays, _ in STAYS)]


def test_no_text_keeps_a_figure_when_all_rows_change(codes, asked):
    """Whatever stays the same in three catalogues comes from none of them: it was typed a second time."""
    pool = list(dict.fromkeys(asked["questions"] + facts.forms()))  # they reach every row
    every = facts.every_figure()
    changes = (), [(figure, figure.up) for figure in every], [(figure, figure.down) for figure in every]
    worlds = [facts.said(change, lambda: [facts.ask(text) for text in pool + SOURCES], codes) for change in changes]
    figures = shown(worlds[0][-2:])[0]
    assert len(figures) > 200
    assert all(len(set(answers)) == 3 for answers in list(zip(*worlds, strict=True))[-2:])  # the rows did change
    found = []
    for question, first, up, down in zip(pool, *worlds, strict=False):
        here = [set(kept(first, other, figures, question)) for other in (up, down)]
        found += [(question[:60], *one) for one in here[0] & here[1]]
    assert found == []


def test_each_figure_has_a_question_that_follows_it_or_a_reason(asked):
    """Also those that the next test does not change: `make facts` found a question for each row of the catalogue."""
    named = facts.named()
    assert [facts.name(named[name]) for name in list(named)[::40]] == list(named)[::40]
    assert {name for name, figure in named.items() if name not in asked["of"] and not facts.why_not(figure)} == set()
    assert set(asked["of"]) - set(named) == set()  # of rows that are gone


@pytest.mark.parametrize("module", facts.MODULES)
def test_what_is_said_follows_each_figure(module, codes, asked):
    """All figures of a limit, every fourth of the others; `make facts` asks for every one of them. The sources show
    the others in both systems where all rows change at once."""
    sources_too = SOURCES if module in LIMITS else SOURCES[:1]
    before, wrong = [facts.ask(text) for text in sources_too], []
    told = shown(before)[0]
    for figure in facts.figures(module):
        if module not in LIMITS and figure.place % 4:
            continue
        name = facts.name(figure)
        if name not in asked["of"]:
            assert facts.why_not(figure), (
                f"no answer follows {name}: run `make facts`; if still none does, delete it or say why in NOT_FOLLOWED")
            continue
        place, new = asked["of"][name]
        question = asked["questions"][place]
        after, *sources = facts.said([(figure, new)], lambda question=question: [facts.ask(text) for text in
                                                                                 [question, *sources_too]], codes)
        answer = facts.ask(question)
        if answer == after:
            wrong.append((name, "its answer does not follow it any more: run `make facts`"))
        if module != "demo_boat" and sources == before and "/" not in figure.text:  # a shape is no fact
            wrong.append((name, "the screen of sources does not show it"))
        gone = told - shown(sources)[0]
        wrong += [(name, *one) for one in kept(answer, after, gone, question)]
    assert wrong == []
