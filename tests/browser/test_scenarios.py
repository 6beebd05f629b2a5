"""Fifteen things that break offline apps at the boat, each with the tests that do it, in both ways where it applies.

Without signal means two things that a browser treats differently: the server is gone, or the network is off.
"""
import ast
from pathlib import Path

import pytest

BOTH = "both ways"
HERE = Path(__file__).parent
SCENARIOS = {
    "1 first visit, no signal, reload, calculate": ("test_offline.test_a_first_visit_is_enough", BOTH),
    "2 links with a query, a bare ? and a # open without signal": ("test_offline.test_any_link_opens", BOTH),
    "2 their values are offered before they replace":
        ("test_offline.test_a_link_is_offered_before_it_replaces_what_was_typed", BOTH),
    "3 killed while it is being kept":
        ("test_offline.test_killed_while_it_was_being_kept_the_next_visit_completes_it",),
    "4 a newer build waits to be asked for": ("test_update.test_a_new_build_waits_until_it_is_asked_for",),
    "4 it is not offered while a pot runs": ("test_clock.test_an_update_waits_while_a_pot_runs",),
    "5 taken: one reload, nothing typed is lost": ("test_update.test_a_new_build_waits_until_it_is_asked_for",),
    "5 two builds side by side in three tabs":
        ("test_update.test_two_tabs_end_on_the_same_build_and_nothing_typed_is_lost",),
    "6 one file of the newer build is missing":
        ("test_update.test_a_new_build_with_a_file_missing_leaves_the_old_one",),
    "7 a pot hidden for four minutes": ("test_clock.test_a_pot_hidden_for_four_minutes_shows_six",),
    "7 a pot without signal": ("test_clock.test_a_pot_runs_on_without_signal", BOTH),
    "8 a pot ends while the page is closed":
        ("test_clock.test_a_pot_that_ended_while_the_page_was_closed_says_how_long_ago",),
    "9 data of an older schema": ("test_kit.test_data_of_schema_1_is_readable_under_this_build",),
    "10 an old tab stands open": ("test_kit.test_an_old_tab_that_is_open_hangs_nothing",),
    "11 export, wipe, import": ("test_kit.test_export_wipe_import_is_identical",),
    "11 a corrupt file": ("test_kit.test_a_file_that_is_none_changes_nothing",),
    "12 the engine breaks": ("test_pour.test_an_engine_that_breaks_says_so_at_the_field_and_goes_on",),
    "13 commas and points": ("test_pour.test_a_comma_is_a_point",),
    "13 what is no number": ("test_pour.test_what_is_no_amount_is_refused_beside_its_field_and_stays",),
    "14 plain http": ("test_offline.test_on_plain_http_it_calculates_and_says_once_what_it_cannot",),
    "15 no violation on any screen": ("test_axe.test_a_screen_has_no_violation",),
    "15 slowed six times": ("test_slow.test_each_key_press_is_answered_at_a_sixth_of_the_speed",),
    "storage: the copy is let go": ("test_evicted.test_without_its_copy_and_without_signal_it_says_so", BOTH),
    "storage: the copy comes back": ("test_evicted.test_opened_once_with_a_connection_it_is_kept_again",),
    "storage: kit and log are let go": ("test_evicted.test_a_page_that_is_open_goes_on_and_keeps_again_what_is_new",),
}


def written(module):
    """The tests of a file by name, as they are written."""
    tree = ast.parse((HERE / f"{module}.py").read_text(encoding="utf-8"))
    return {node.name: node for node in tree.body if isinstance(node, ast.FunctionDef)}


@pytest.mark.parametrize("scenario", SCENARIOS)
def test_a_scenario_has_its_test(scenario):
    where, *ways = SCENARIOS[scenario]
    module, _, name = where.partition(".")
    node = written(module)[name]
    if ways:
        marked = " ".join(ast.unparse(one) for one in node.decorator_list)
        assert "cut" in [one.arg for one in node.args.args] or "'way'" in marked


def test_all_fifteen_are_here():
    assert {scenario.partition(" ")[0] for scenario in SCENARIOS} == {*map(str, range(1, 16)), "storage:"}
