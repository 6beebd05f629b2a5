"""Styles as old browsers read them: whole and readable from iOS 16.0, Chrome 107 and Firefox 114.

`tests/engines` shows the same in a WebKit of iOS 16.0.
"""
import re

import house
import pytest
import tinycss2
from covemix.server.build import Build
from covemix.server.flat_style import flat
from covemix.server.pages import Pages
from covemix.shared.words.languages import LANGUAGES
from covemix.shared.words.written import sentences

SHEET = house.build().files["app.css"].body.decode()
LIGHT, DARK = (house.build().value_names[name] for name in ("--light", "--dark"))
# what a browser of 2022 does not read, and since when it does: Chrome, iOS, Firefox, by MDN's browser-compat-data 8.1.9
NEWER = {
    "light-dark(": (123, 17.5, 120), "color-mix(": (111, 16.2, 113), "subgrid": (117, 16.0, 71),
    ":has(": (105, 15.4, 121), "dvh": (108, 15.4, 101), "::details-content": (131, 18.4, 143),
    "@starting-style": (117, 17.5, 129), "@scope": (118, 26.4, 146), "@property": (85, 16.4, 128),
    "text-wrap": (114, 17.4, 121), "field-sizing": (123, 26.2, 152), "anchor-name": (125, 26, 147),
    ":dir(": (120, 16.4, 49), ":popover-open": (114, 17, 125), ":user-invalid": (119, 16.5, 88),
    "animation-timeline": (115, 26, 159), "view-transition": (111, 18, 144), "lh": (109, 16.4, 120),
    "rlh": (111, 16.4, 120), "text-box": (133, 18.2, 154), "linear(": (113, 17.2, 112), "(from ": (125, 18, 128),
}
FLOOR = (107, 16.0, 114)
# goes without: what is seen where a browser drops the rule
WITHOUT = {
    "color-mix(": "the ground behind a sheet is the browser's own grey",
    "subgrid": "fields side by side stand each at its own height",
    ":has(": "Firefox before 121: a list shows no arrow, a wrong field no broken line; the sentence under it stands",
    "::details-content": "a folded part stays folded on paper",
}


def blocks(nodes, within=""):
    """(what stands before the brackets, what stands in them), each with the name of the rule around it."""
    for node in nodes:
        if node.type in ("qualified-rule", "at-rule") and node.content is not None:
            head = tinycss2.serialize(node.prelude).strip()
            kind = node.at_keyword if node.type == "at-rule" else ""
            yield within, kind, head, node.content
            if kind in ("media", "container", "supports", "layer"):
                yield from blocks(tinycss2.parse_stylesheet(node.content, skip_comments=True, skip_whitespace=True),
                                  f"{within}@{kind} ")


SENT = list(blocks(tinycss2.parse_stylesheet(SHEET, skip_comments=True, skip_whitespace=True)))


def test_no_rule_stands_inside_another():
    styled = [(head, body) for _, kind, head, body in SENT if not kind]
    assert len(styled) > 400
    for head, body in styled:
        assert not any(one.type == "{} block" for one in body), head
        assert all(one.type == "declaration" for one in tinycss2.parse_declaration_list(
            body, skip_comments=True, skip_whitespace=True)), head
        assert "&" not in head


def test_what_is_newer_than_the_oldest_phone_is_known_and_can_be_missed():
    text = re.sub(r"@supports[^{]*\{(?:[^{}]|\{[^{}]*\})*\}", "", SHEET)  # asks first
    found = {name for name, since in NEWER.items()
             if any(a > b for a, b in zip(since, FLOOR, strict=True))
             and re.search(r"(?<![\w-])" + re.escape(name) if name[0].isalpha() and name not in ("dvh", "lh", "rlh")
                           else (r"\d" + name + r"\b" if name in ("dvh", "lh", "rlh") else re.escape(name)), text)}
    assert found == set(WITHOUT)


def test_a_colour_is_one_of_two_by_what_every_browser_reads():
    """`var(--light, A) var(--dark, B)`: of both names one is nothing, the other is not set."""
    roots = [(within, head, {one.name: tinycss2.serialize(one.value) for one in tinycss2.parse_declaration_list(
        body, skip_comments=True, skip_whitespace=True)}) for within, kind, head, body in SENT
        if not kind and head.startswith(":root")]
    set_ = [(within, head, told[LIGHT].strip(), told[DARK].strip()) for within, head, told in roots
            if LIGHT in told]
    assert {(light, dark) for _, _, light, dark in set_} == {("initial", ""), ("", "initial")}
    assert [("@media" in within, light) for within, head, light, _ in set_ if head == ":root"] == [
        (False, "initial"), (True, "")]
    colours = [value for _, _, told in roots for value in told.values() if f"var({LIGHT}," in value]
    assert len(colours) > 15
    assert all(re.fullmatch(rf"\s*var\({LIGHT}, ?#\w+\) var\({DARK}, ?#\w+\)", value) for value in colours)


@pytest.mark.parametrize(("nested", "plain"), [
    (".a { @media print { .b { top: 0; } } }", "@media print {\n.a .b {\ntop: 0;\n}\n}"),
    (".a { b: c; .d { e: f; } g: h; }", ".a {\nb: c;\n}\n.a .d {\ne: f;\n}\n.a {\ng: h;\n}"),
    ("@layer a, b; @page x { margin: 0; }", "@layer a, b;\n@page x {\nmargin: 0;\n}"),
    ("@keyframes k { from { top: 0; } }", "@keyframes k {\nfrom { top: 0; }\n}"),
    ("""a::before { content: "{;}"; }""", """a::before {\ncontent: "{;}";\n}"""),
])
def test_nested_rules_are_made_plain(nested, plain):
    assert flat(nested) == plain


def test_a_browser_that_lacks_more_is_told_so():
    """The sentence stands on each page, and a rule that such a browser does not read hides it."""
    hidden = [(within, head) for within, kind, head, body in SENT
              if not kind and ".old-browser" in head and "none" in tinycss2.serialize(body) and "@media" not in within]
    assert hidden == [("@layer @container ", ".old-browser")]
    for language in LANGUAGES:
        for page in Pages(Build(language=language)).kept().values():
            assert sentences(language)["page-old-browser"] in page
