"""Elapsed: never less than was seen, never less than the truth without a word, the wall on the night clocks change."""

from datetime import UTC, datetime, timedelta
from random import Random
from zoneinfo import ZoneInfo

import pytest
from covemix.shared.clock import elapsed
from covemix.shared.clock.pot_spans import left_text
from covemix.shared.door import moves

BEAT = 5.0
SLACK = elapsed.AWAY + BEAT + 4 * elapsed.APART  # s; what may pass between two looks without a word


class Phone:
    """A phone with both clocks and the truth: what happens to its clocks is known, what it says is held against it."""

    def __init__(self, rng):
        self.rng, self.true, self.wall, self.steady = rng, 0.0, 1e9, 50.0
        self.started, self.beat = 1e9, {"seen": 0.0, "seen_at": 1e9}
        self.last, self.watched, self.stored = 50.0, True, 0.0

    def passes(self, seconds, asleep=False):
        self.true += seconds
        self.wall += seconds
        self.steady += 0.0 if asleep else seconds

    def told(self):
        steady = None if self.last is None else self.beat["seen"] + self.steady - self.last
        found = elapsed.passed(self.started, self.wall, steady, watched=self.watched, **self.beat)
        assert found.seconds >= self.beat["seen"] - 1e-6  # the least that is promised
        self.beat = {"seen": found.seconds, "seen_at": self.wall, "jumped": found.jumped, "unseen": found.unseen,
                     "lost": found.lost}
        self.last, self.watched = self.steady, True
        return found

    def happens(self):
        """One thing that happens to phones; returns whether a clock was touched."""
        what = self.rng.choice(("set", "reload", "sleep", "close", "close and set", "sleep and set", "nothing"))
        if "close" in what or what == "reload":
            self.last, self.steady = None, self.rng.uniform(0, 3)
            self.passes(self.rng.uniform(0, 2) if what == "reload" else self.rng.uniform(0, 900))
        if "sleep" in what:
            self.watched = False
            self.passes(self.rng.uniform(0, 900), asleep=self.rng.choice((True, False)))
        if "set" in what:
            before = self.wall
            self.wall += self.rng.choice((-63, -10, -5, -1, 1, 5, 10, 63)) * 60 + self.rng.uniform(-20, 20)
            if what != "set" and -elapsed.APART <= self.wall - self.beat["seen_at"] <= elapsed.AWAY:
                self.wall = before  # set back by just what passed: no phone can know
                what = what.replace("set", "leave")
        return what


def test_whatever_happens_to_the_clocks_nothing_is_given_back_and_less_than_the_truth_is_said():
    """4,000 lives of a pot with eight events each, looked at every second in between; the measure is the truth."""
    rng = Random(12)
    for _ in range(4000):
        phone = Phone(rng)
        done = []
        for _ in range(8):
            for _ in range(rng.randrange(8)):
                phone.passes(1.0)
                found = phone.told()
            done.append(phone.happens())
            found = phone.told()
            said = found.lost or found.unseen > 0 or found.jumped > 0
            assert said or found.seconds >= phone.true - SLACK, done
            if not any("set" in one for one in done):
                assert not found.lost and not found.jumped and not found.behind, done
                assert found.seconds == pytest.approx(phone.true, abs=8 * elapsed.APART), done
            if found.seconds > phone.true + SLACK:  # counted too many, which is the safe side
                assert found.jumped or found.unseen or any("set" in one for one in done)


@pytest.mark.parametrize("back", [5, 10, 63])
def test_a_clock_set_back_while_the_page_is_closed(back):
    """Twelve of twenty minutes seen, the clock set back, opened again: eight are left, and it is said."""
    found = elapsed.passed(1e9, 1e9 + 720 - back * 60 + 3, None, 720.0, 1e9 + 720)
    assert found.seconds == 720 and found.lost
    assert found.behind == pytest.approx(back * 60 - 3)


def test_set_ahead_and_right_again_leaves_the_earlier_end():
    found = elapsed.passed(1e9, 1e9 + 730, 130.0, 120.0, 1e9 + 120)
    assert found.seconds == 730 and found.jumped == pytest.approx(600)
    again = elapsed.passed(1e9, 1e9 + 140, 740.0, 730.0, 1e9 + 730, jumped=600.0)
    assert again.seconds == 740 and again.jumped == 600


def timer(**typed):
    found = moves.answer("timer", {name: str(text) for name, text in typed.items()})
    assert not found["errors"], found["errors"]
    return {row["name"]: row for row in found["lines"]}


def test_stirring_never_grows_longer_nor_is_cut_short_by_a_clock():
    """Three minutes, one seen: the phone's clock goes back by an hour, then ahead by an hour; both leave two."""
    seen = {"lasts": "3 min", "seen": 60, "seen_at": 1e9 + 60}
    for wall in (-3540, 3660, 61):
        assert timer(now=1e9 + wall, elapsed=61, **seen)["left"]["value"] == 119
    back = timer(now=1e9 - 3540, **seen)
    assert back["left"]["value"] == 120 and "set back" in back["lost"]["text"] and back["keep_lost"]["part"] == "yes"
    assert timer(now=1e9 + 3660, elapsed=61, bound="most", **seen)["left"]["value"] == 0


POT = {"duration": "31", "started": str(2e9), "batch": "Batch 1"}


def pot(**typed):
    found = moves.answer("pot", dict(POT, **{name: str(text) for name, text in typed.items()}))
    assert not found["errors"], found["errors"]
    return {row["name"]: row for row in found["lines"]}


def test_a_phone_six_minutes_behind_counts_from_the_link_and_says_so():
    """Scanned at once after two minutes: 29 left here too, counting on at once, though the pot starts in the future."""
    first = pot(sent=2e9 + 120, now=2e9 + 122 - 360)
    assert first["left"]["value"] == 29 * 60
    assert first["clocks_differ"]["rank"] == "warn" and "6 minutes behind" in first["clocks_differ"]["text"]
    later = pot(sent=2e9 + 120, now=2e9 + 182 - 360, seen=120, seen_at=2e9 + 122 - 360, elapsed=180, lost="yes")
    assert later["left"]["value"] == 28 * 60 and "clocks_differ" in later


def test_a_phone_six_minutes_ahead_takes_the_earlier_end_and_says_so():
    found = pot(sent=2e9 + 120, now=2e9 + 122 + 360)
    assert found["left"]["value"] == 31 * 60 - 482
    assert "The link was made 6 minutes ago" in found["unseen"]["text"]
    assert "Set below what is left on the other phone" in found["unseen"]["text"]


def test_a_start_in_the_future_without_a_sent_time_is_said():
    found = pot(now=2e9 - 360)
    assert "6 minutes before" in found["clock_changed"]["text"] and found["lost"]["rank"] == "warn"


def test_a_link_made_before_its_pot_is_said():
    found = pot(sent=2e9 - 600, now=2e9 + 60)
    assert found["link_times"]["rank"] == "warn" and found["left"]["value"] == 30 * 60


def test_phones_whose_clocks_agree_say_nothing():
    found = pot(sent=2e9 + 120, now=2e9 + 125)
    assert not {"clocks_differ", "clock_changed", "unseen", "lost", "link_times"} & set(found)


@pytest.mark.parametrize(("typed", "passed"), [("25:12", 348), ("25", 360), ("25.5", 330)])
def test_what_is_left_can_be_set(typed, passed):
    assert pot(now=2e9, left_now=typed)["set"]["value"] == passed


@pytest.mark.parametrize("typed", ["soon", "25:75", "32", "-3", "1:2:3"])
def test_what_cannot_be_left_is_told_at_its_field(typed):
    found = moves.answer("pot", dict(POT, now=str(2e9), left_now=typed))
    assert [error["field"] for error in found["errors"]] == ["left_now"]


NIGHTS = [("Europe/Berlin", 2026, 10, 25), ("Europe/Berlin", 2027, 3, 28), ("America/St_Johns", 2026, 11, 1),
          ("Australia/Lord_Howe", 2027, 4, 4), ("Africa/Cairo", 2027, 4, 30)]


@pytest.mark.parametrize(("place", "year", "month", "day"), NIGHTS, ids=lambda one: str(one))
def test_the_wall_time_of_an_end_on_the_night_the_clocks_change(outside, place, year, month, day):
    """zoneinfo (IANA time zones) for every ten minutes of that night, half an hour before the end and after it."""
    zone = ZoneInfo(place)
    evening = datetime(year, month, day, tzinfo=zone).astimezone(UTC) - timedelta(hours=3)

    def ahead(moment):
        return moment.astimezone(zone).utcoffset().total_seconds() / 60

    minutes = [evening + timedelta(minutes=k) for k in range(12 * 60)]
    change = next((k for k in minutes if ahead(k) != ahead(evening)), None)
    assert change, "no change of the clocks that night"
    for start in minutes[::10]:
        later = change > start
        typed = {"started": start.timestamp(), "zone": ahead(start), "duration": "50"}
        if later:
            typed |= {"zone_next": change.timestamp(), "zone_then": ahead(change)}
        for passed in (20, 80):
            now, end = start + timedelta(minutes=passed), start + timedelta(minutes=50)
            told = end.astimezone(zone)
            days = (told.date() - now.astimezone(zone).date()).days
            wanted = told.strftime("%H:%M") + {0: "", 1: " next day", -1: " the day before"}[days]
            got = pot(now=now.timestamp(), **typed)
            outside.library(f"pot-dst {place} {start:%H:%M}+{passed}",
                    "zoneinfo of the standard library, IANA time zones",
                    wanted, got["end"]["text"])
            assert ("clocks_change" in got) == (now < change <= end)


def test_a_span_is_typed_as_it_is_shown():
    from covemix.shared.clock.pot_spans import span_typed

    for seconds in range(0, 5000, 7):
        assert span_typed(left_text(seconds)) == seconds
