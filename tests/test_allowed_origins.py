"""`covemix serve --allow-origin`: pages of the origins that are named may ask the API, and nobody else anything."""
import house
import pytest
from covemix.server import command
from covemix.server.app import create_app
from starlette.testclient import TestClient

CLUB, OTHER = "https://club.example", "https://other.example"
ASKS = {"access-control-request-method": "POST", "access-control-request-headers": "content-type"}


@pytest.fixture(scope="module")
def allowed():
    with TestClient(create_app(house.build(), origins=[CLUB])) as client:
        yield client


def test_a_page_of_the_club_may_ask_and_reads_the_answer(allowed):
    before = allowed.options("/api/joint", headers={"origin": CLUB, **ASKS})
    assert before.status_code == 200 and before.headers["access-control-allow-origin"] == CLUB
    for response in (allowed.post("/api/joint", json={"thickness_mm": 6}, headers={"origin": CLUB}),
                     allowed.post("/api/joint", json={"thickness": 6}, headers={"origin": CLUB}),
                     allowed.get("/api/joint/coves.csv", headers={"origin": CLUB}),
                     allowed.get("/openapi.json", headers={"origin": CLUB})):
        assert response.headers["access-control-allow-origin"] == CLUB and "Origin" in response.headers["vary"]


def test_no_other_page_and_no_other_address_is_opened(allowed):
    assert allowed.options("/api/joint", headers={"origin": OTHER, **ASKS}).status_code == 400
    assert "access-control-allow-origin" not in allowed.post("/api/joint", json={}, headers={"origin": OTHER}).headers
    for path in ("/", "/kit/", "/health", "/recalled.json"):
        assert "access-control-allow-origin" not in allowed.get(path, headers={"origin": CLUB}).headers
    closed = TestClient(house.app())
    assert "access-control-allow-origin" not in closed.get("/api/joint", headers={"origin": CLUB}).headers


@pytest.mark.parametrize("origin", ["club.example", "https://club.example/page", "*", "", "null"])
def test_what_is_no_origin_is_refused_before_anything_starts(origin, capsys):
    with pytest.raises(SystemExit):
        command.main(["serve", "--allow-origin", origin])
    assert "--allow-origin" in capsys.readouterr().err
