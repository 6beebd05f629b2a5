"""The face of the figures: no first visit waits for it, nothing moves when it comes, and it is there without signal."""
import face
import pytest
from playwright.sync_api import expect

from .conftest import body, figure, fresh, keep
from .test_first_visit import SHIFT
from .test_narrow import BROKEN, CLIPPED
from .test_targets import SHIFTS


@pytest.fixture
def second(phone, served):
    """A phone that kept the app, and the face after that."""
    keep(phone, served.url)
    assert body(phone, face.KEPT)
    return phone


def has_it(page):
    return (face.BOLD in body(page, face.FACES) and body(page, face.FIRST) == "Figures"
            and abs(body(page, face.WIDE) - face.width()) < 0.5)


def test_the_first_open_has_no_face_and_the_second_has_it_without_signal(second, served):
    assert body(second, face.FACES) == []
    served.stop()
    second.reload()
    expect(figure(second, "drawn_b")).to_be_visible()
    assert has_it(second)


def test_nothing_more_moves_in_an_open_with_the_face(chromium, served):
    """Held against a phone that has none. By itself a later open moves what a first one does not (its own folds)."""
    moved = []
    for missing in ("/face.css", ""):
        served.stop()
        served.start(missing=missing)
        with fresh(chromium) as (phone, _):
            keep(phone, served.url)
            assert missing or body(phone, face.KEPT)
            phone.add_init_script(SHIFTS)
            moved.append([])
            for path in ("clock/", "plan/", "joint/", ""):
                phone.goto(f"{served.url}/{path}")
                expect(phone.locator("form.live").first).to_be_visible()
                phone.wait_for_timeout(500)
                assert (face.BOLD in body(phone, face.FACES)) == (not missing)
                moved[-1].append(sum(phone.evaluate("window.shifts")))
    assert all(abs(one - other) < SHIFT for one, other in zip(*moved, strict=True)), moved


def test_a_newer_build_has_the_face_from_the_first(second, served, other_build):
    """It is fetched with the build, not after it: no figure changes its face by an update."""
    before = second.evaluate("document.documentElement.dataset.build")
    served.stop()
    served.start(other_build)
    second.evaluate("navigator.serviceWorker.ready.then((kept) => kept.update())")
    second.get_by_role("button", name="Update now").click()
    second.wait_for_function("(before) => document.documentElement.dataset.build !== before", arg=before)
    served.stop()
    expect(figure(second, "drawn_b")).to_be_visible()
    assert has_it(second)


@pytest.mark.parametrize("missing", ["/face.css", "/js/share/decoder.js"])
def test_a_first_visit_is_kept_where_the_host_lacks_what_comes_later(chromium, served, missing):
    """And the face comes at a later open, when the host has it."""
    served.stop()
    served.start(missing=missing)
    with fresh(chromium) as (phone, _):
        keep(phone, served.url)
        phone.reload()
        expect(figure(phone, "drawn_b")).to_be_visible()
        expect(phone.locator("[data-notice=damaged]")).to_have_count(0)
        served.stop()
        served.start()
        phone.reload()
        assert body(phone, face.KEPT)
        later = phone.context.new_page()
        later.goto(served.url)
        expect(figure(later, "drawn_b")).to_be_visible()
        assert has_it(later)


@pytest.mark.parametrize("language", ["en", "de"])
def test_on_the_narrowest_phone_nothing_is_cut_off_by_the_face(chromium, served, language):
    with fresh(chromium, locale=language, viewport={"width": 320, "height": 640}) as (phone, _):
        keep(phone, served.url)
        assert body(phone, face.KEPT)
        for path in ("", "clock/", "plan/", "safety/", "joint/"):
            phone.goto(f"{served.url}/{path}")
            expect(phone.locator("form.live").first).to_be_visible()
            assert face.BOLD in body(phone, face.FACES)
            assert phone.evaluate(CLIPPED) == [] and phone.evaluate(BROKEN) == [], path
