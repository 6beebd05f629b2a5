"""Scripts that travel as one: each form of import and export is read, and what is not is refused."""
import re

import pytest
from covemix.server.one_script import one_script, through


def one(**texts):
    texts = {f"js/{path}.js": text for path, text in texts.items()}
    return one_script(texts, "js/main.js", list(texts))


@pytest.mark.parametrize(("main", "other", "has"), [
    ('import { a as b } from "./other.js";\nb();\n', "export const a = 1;\n", "const { a: b } = other;"),
    ('import { a } from "./other.js";\n', "const a = 1;\nconst b = 2;\nexport { a, b as c };\n",
     "return { a: a, c: b };"),
    ('import { A } from "./other.js";\n', "export class A extends Error {}\n", "return { A };"),
    ('import { a } from "./other.js";\n', "export async function a() {}\n", "async function a() {}\nreturn { a };"),
    ('import { b } from "./other.js";\n', 'export const a = () => import("./view.js");\nexport const b = 1;\n',
     'import("./view.js")'),
])
def test_each_form_is_read(main, other, has):
    made = one(main=main, other=other)
    assert has in made
    assert made.count("export") == 1 and not re.search(r"^import ", made, re.M)


def test_names_are_handed_on_from_one_to_the_next():
    made = one(speech="export const canSay = true;\n", alarm='export { canSay as canSpeak } from "./speech.js";\n',
               main='import { canSpeak } from "./alarm.js";\n')
    assert "return { canSpeak: speech.canSay };" in made
    assert made.index("const speech =") < made.index("const alarm =")


def test_what_stands_deeper_is_fetched_from_where_the_whole_stands():
    texts = {"js/main.js": 'import { here } from "./form/a.js";\nexport const root = new URL("..", import.meta.url);\n',
             "js/form/a.js": 'export const here = new URL("b.js", import.meta.url);\nimport("../views/c.js");\n'}
    made = one_script(texts, "js/main.js", list(texts))
    assert 'new URL("b.js", new URL("./form/a.js", import.meta.url))' in made
    assert 'import("./views/c.js");' in made
    assert 'root = new URL("..", import.meta.url)' in made


def test_a_library_in_other_quotes_with_a_default_of_its_own_is_taken_too():
    made = one(main='import { a } from "./lib.js";\n', lib="import { b as c, } from './b.js';\nexport const a = c;\n"
               "export default a;\n", b="export const b = 1;\n")
    assert "const { b: c } = b;" in made and "export default" not in made


@pytest.mark.parametrize("text", [
    "export let a = 1;\n", "export default 1;\n", 'import * as all from "./b.js";\n', 'import "./b.js";\n',
    "export const { a, b } = c;\n", 'export * from "./b.js";\n', 'import {\n} from "./outside.js";\n'])
def test_a_form_that_is_not_known_is_refused(text):
    with pytest.raises(ValueError, match=re.escape("js/other.js: ")):
        one(main='import { a } from "./other.js";\n', other=text, b="export const a = 1;\n")


def test_two_that_need_each_other_are_refused():
    with pytest.raises(ValueError, match=re.escape("js/a.js needs js/b.js needs js/a.js")):
        one(main='import { a } from "./a.js";\n', a='import { b } from "./b.js";\n', b='import { a } from "./a.js";\n')


def test_a_script_outside_that_needs_none_of_them_is_left_as_it_is():
    text = 'import { a } from "./a.js";\n'
    assert through(text, "js/views/b.js", "js/main.js", ["js/main.js", "js/form/a.js"]) == text
