"""The scripts that come as one, as a browser has them."""
import re

from covemix.server.build import MAIN
from covemix.server.one_script import name_of
from house import build

MADE = re.compile(r"^export (?:const|class|function) (\w+)", re.M)
EXPORTED = """async () => {
  const all = await import(document.querySelector("script[type=module]").src);
  return Object.entries(all).map(([name, one]) => [name, Object.keys(one)]);
}"""


def test_no_two_of_them_have_one_name_and_each_hands_on_what_it_exports(phone, standing):
    """In the browser: the names that each of them exports are those of its own text."""
    paths = [path for path in build().together[MAIN] if path != MAIN]
    assert len({name_of(path) for path in paths}) == len(paths)
    phone.goto(standing.url)
    found = phone.evaluate(EXPORTED)
    names = {path: MADE.findall(build().scripts[path]) for path in paths if path.startswith("js/")}
    told = {name: set(keys) for name, keys in found}
    for path, made in names.items():
        assert made and set(made) <= told[name_of(path)], path
