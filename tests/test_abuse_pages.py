"""Pages without scripts under abuse: whatever a link holds, a page comes back, and what was typed is only ever text."""
import functools
import random
from html.parser import HTMLParser
from urllib.parse import urlencode

import cases
import house
import pytest
from covemix.server.models import query_parameters
from covemix.server.pages import PAGES, path_of
from covemix.shared.door import moves
from covemix.shared.forms import links
from covemix.shared.words.units import SYSTEMS
from starlette.testclient import TestClient

SCREENS = [screen for screen, _, _ in PAGES]
HOSTILE = (
    '"><script>alert(1)</script>', "<img src=x onerror=alert(1)>", "' autofocus onfocus='alert(1)", "{{ 7 * 7 }}",
    "javascript:alert(1)", "</textarea></select><svg onload=alert(1)>", "%3Cscript%3E", "\u202e<b>\u2066", "²", "٣",
    "½½", "∞", "1e308", "-1e-308", "999999999999", "0.000000000001", "1:0", "0:0", "1:" * 400, "9" * 400, "\x00",
    "🛶 3", "../../etc/passwd", "' OR 1=1 --", "${7*7}", "-0", "+", "1/0", "1 mol", "12:60", "31.2.", "units",
)
QUERIES = (
    "", "?", "&&&==", "%ff=%ff", "%ed%a0%80=%ed%a0%80", "readings.%C2%B2.shown=1", "readings.-1.shown=1",
    "readings.99999999999999999999.shown=1", "joints.%D9%A3.angle=1", "amount.amount.x.y=1", "system.system.system=1",
    "system=&system.id=&system.id.id=3", "units.x=3&units=us&units=metric", "a.b.c.d.e.f.g=1", "....=1",
    "as=text&as=html", "as=text", "v=%C2%B2&end=abc", "v=999&amount=3", "v=1&end=&amount=3", "a" * 60_000,
    "x=" + "1:" * 20_000, "&".join(f"joints.{n}.angle=90" for n in range(900)),
    "&".join(f"x{n}=1" for n in range(5000)),
)
TAGS = {"meta", "link", "base", "script", "iframe", "object", "embed", "form"}


class Reader(HTMLParser):
    """What a browser would act on: tags that load, run or send, handlers, and addresses."""

    def __init__(self, page):
        super().__init__()
        self.acts, self.strange = [], []
        self.feed(page)

    def handle_starttag(self, tag, attrs):
        if tag in TAGS:
            self.acts.append((tag, tuple(one for one in attrs if one[0] != "data-units" or one[1] not in SYSTEMS)))
        for name, value in attrs:
            leads_out = name in ("href", "src", "action", "formaction") and ":" in (value or "").partition("?")[0]
            if name.startswith("on") or name in ("style", "srcdoc") or leads_out:
                self.strange.append((tag, name, value))


@functools.cache
def read(page):
    """What is in a page. Many links give the very same one: it is read once."""
    return Reader(page)


@pytest.fixture(scope="module")
def client():
    with TestClient(house.app(), raise_server_exceptions=False) as client:
        yield client


@pytest.fixture(scope="module")
def acts(client):
    """What each screen's own page acts on."""
    return {screen: read(client.get("/" + path_of(screen)).text).acts for screen in SCREENS}


def looked_at(client, acts, screen, query):
    """Gets a page as a browser without scripts does, and asserts that it is a page and nothing but this screen's."""
    response = client.get(f"/{path_of(screen)}?{query}")
    assert response.status_code in ((200, 422) if "as=text" in query else (200,)), (screen, query[:200])
    if response.headers["content-type"].startswith("text/html"):
        found = read(response.text)
        assert found.strange == [], (screen, query[:200])
        assert found.acts == acts[screen], (screen, query[:200])
    else:
        assert response.headers["content-type"] == "text/plain; charset=utf-8"


@pytest.mark.parametrize("query", QUERIES, ids=lambda query: query[:30] or "nothing")
def test_a_hostile_query_gets_a_page(client, acts, query):
    for screen in SCREENS:
        looked_at(client, acts, screen, query)
    looked_at(client, acts, "pour", "as=text&" + query)


@pytest.mark.parametrize("screen", SCREENS)
def test_hostile_text_in_any_field_is_only_text(client, acts, screen):
    """Every declared name gets a hostile text with two others, then all names at once get one each."""
    draw = random.Random(screen)
    names = [one["name"] for one in query_parameters(moves.screen_inputs(screen))]
    draw.shuffle(names)
    for some in [names[start:start + 3] for start in range(0, len(names), 3)] + [names] * 2:
        looked_at(client, acts, screen, urlencode([(name, draw.choice(HOSTILE)) for name in some]))


@pytest.mark.parametrize("screen", SCREENS)
def test_generated_links_get_a_page(client, acts, screen):
    """The cases of the two runtimes, slips and nonsense among them, through the whole server."""
    for request in cases.requests(screen, 6, seed=4):
        looked_at(client, acts, screen, urlencode([(name, str(text)) for name, text in request["pairs"]]))


@pytest.mark.parametrize("name", moves.names())
def test_hostile_text_in_any_field_of_a_move_is_answered_or_refused(client, name):
    draw = random.Random(name)
    for one in query_parameters(moves.module(name).INPUTS):
        body = links.tree([(one["name"], draw.choice(HOSTILE))])
        assert client.post(f"/api/{name}", json=body).status_code in (200, 422)
