"""What `make test` asks, which has a quarter of an hour on two cores. `make night` asks everything.

A file that is not named here is asked whole by day. Of a file that is named, by day: the tests that stand here, each
with one of so many of its rows (1: all of them, 0: none), and of the others as REST says, which is none where it is
missing. What keeps somebody from harm is asked whole: tests/test_by_day.py knows these files.
"""
REST = "*"
ASKED = {
    "browser/axe": {
        "a_screen_has_no_violation": 16, "the_sheet_has_no_violation": 3,
        "a_screen_needs_no_sideways_scrolling_at_320": 6, "every_target_is_large_enough": 6},
    "browser/bar": {"the_english_of_a_german_caution_is_one_tap_away": 1},
    "browser/boat": {
        "without_signal_the_boat_opens_is_changed_and_goes_to_pour": 1,
        "joints_are_removed_moved_and_brought_back_with_their_names_right": 1,
        "without_an_answer_nothing_is_cut_off_the_kits_rolls_and_the_page_says_so": 1,
        "a_link_brings_the_whole_boat_to_another_phone": 1},
    "browser/cards": {"one_card_is_as_before_and_so_is_the_next_one_after_twelve": 1},
    "browser/choices": {
        "one_choice_holds_on_every_screen": 1, "own_timings_are_of_their_system_and_come_back_with_it": 1,
        "another_thing_that_is_chosen_has_nothing_of_what_was_typed_before": 1,
        "typed_over_a_built_in_row_it_stands_as_typed": 1},
    "browser/clock": {
        "one_tap_starts_a_clock_that_survives_a_reload": 1, "of_two_tabs_one_rings": 1,
        "a_second_batch_like_the_first_has_a_clock_too": 1,
        "a_pot_that_is_too_stiff_ends_with_its_own_time_in_the_log": 1,
        "of_two_pots_the_one_that_ends_first_stands_first_and_on_the_way_to_it": 2,
        "a_changed_phone_clock_is_said_and_the_earlier_alarm_counts": 1,
        "a_pot_that_cannot_be_told_leaves_the_others_ringing_and_can_be_ended": 1,
        "a_pot_that_ended_while_the_page_was_closed_says_how_long_ago": 1,
        "the_alarm_of_a_phone_without_a_voice_for_it_sounds_and_says_it_on_the_screen": 1,
        "a_pot_follows_its_air_and_hands_over_the_same_clock": 1, "a_pot_hidden_for_four_minutes_shows_six": 1},
    "browser/clocks": {
        "stirring_is_as_long_as_it_is_whatever_the_clock_shows": 4,
        "set_back_and_loaded_anew_it_has_no_more_left": 3, "after_a_kill_what_passed_unseen_is_in_doubt": 2,
        "set_ahead_and_right_again_the_earlier_end_stays": 1,
        "set_back_while_it_sleeps_no_more_is_left_and_it_is_said": 1,
        "the_wall_time_of_its_end_on_the_night_the_clocks_change": 5},
    "browser/engine_faults": {
        "old_figures_are_marked_in_words_within_a_third_of_a_second": 6,
        "an_answer_that_cannot_be_read_is_an_error_with_its_name": 7,
        "a_hung_engine_is_started_anew_within_ten_seconds_and_says_so": 1,
        "twelve_answers_of_sixteen_come_late_and_no_figure_stands_for_another": 1,
        "a_running_pots_minutes_do_not_stand_unmarked": 1,
        "what_the_server_answered_is_not_old_while_the_engine_is_on_its_way": 2, "an_old_answer_leads_nowhere": 1,
        "whoever_asks_is_told_that_an_answer_cannot_be_read": 1, "normal_key_presses_show_no_mark": 1,
        "a_tap_before_the_answer_waits_for_it_and_is_of_what_is_typed": 1},
    "browser/evicted": {
        "the_page_of_a_phone_that_let_go_names_the_pots_that_run": 3,
        "without_its_copy_and_without_signal_it_says_so": 2,
        "a_page_that_is_open_goes_on_and_keeps_again_what_is_new": 1},
    "browser/face": {"the_first_open_has_no_face_and_the_second_has_it_without_signal": 1},
    "browser/fast_entry": {"a_joint_is_copied_to_the_other_side_by_its_name": 5},
    "browser/files": {
        "a_boat_is_bought_and_cut_by_its_tables": 1, "a_cure_and_a_running_pot_go_into_a_calendar": 1,
        "a_section_and_a_spreader_are_measured_at_true_size": 1,
        "a_country_with_decimal_commas_gets_its_own_tables": 1},
    "browser/first_visit": {
        "nothing_is_fetched_twice_and_all_of_it_is_within_the_limit": 6,
        "nothing_moves_when_the_first_answer_of_the_engine_takes_the_place_of_the_servers": 8,
        "a_first_visit_in_another_language_is_within_the_limit_too": 4,
        "a_part_that_could_not_be_fetched_is_said_and_the_next_tap_has_it": 3,
        "what_the_page_has_unpacked_is_not_unpacked_once_more": 1},
    "browser/half_come": {},
    "browser/hosts": {},
    "browser/in_hand": {
        "the_minutes_of_a_running_pot_stand_on_every_screen_and_in_the_steps": 1, "a_reader_is_told_each_step": 1,
        "remove_says_what_and_the_focus_stays_near": 1, "an_error_and_another_caution_are_announced": 1,
        "a_unit_is_part_of_what_describes_its_field": 1, "whoever_measures_is_past_the_ways_in_by_any_touch": 1},
    "browser/interpreter": {
        "an_interpreter_that_fell_over_is_started_anew": 1, "an_engine_that_cannot_answer_says_so_at_its_start": 1,
        "what_fails_is_told_and_the_next_question_is_answered": 1, "the_interpreter_reaches_nothing_of_the_page": 1},
    "browser/iphone": {
        "a_tap_of_a_finger_lets_a_pot_ring": 1,
        "a_screen_that_may_stay_on_only_after_a_tap_stays_on_after_the_next_one": 1,
        "in_the_browser_it_is_told_how_to_add_the_icon_and_to_bring_things_across": 1},
    "browser/jobs": {"a_first_pour": 1, "eyes_splashed_while_a_pot_runs": 1, "seven_strokes_for_six": 1},
    "browser/joint": {
        "a_notice_covers_neither_the_figures_nor_the_field_in_use": 3, "a_joint_answers_without_signal": 1,
        "narrow_tape_and_stations_out_of_order_are_refused_in_their_row": 1,
        "a_tap_is_not_lost_when_an_answer_comes_under_the_finger": 1,
        "drawing_first_figures_and_fields_stand_in_one_sight": 1,
        "an_empty_form_answers_and_the_drawing_follows_each_key_press": 1,
        "a_key_press_moves_the_points_that_are_there": 1, "joints_that_cannot_be_are_refused_at_their_field": 2},
    "browser/kept_visit": {
        "nothing_moves_where_a_kept_screen_is_opened_for_the_first_time": 8,
        "nothing_moves_where_what_was_typed_last_comes_back": 7,
        "a_list_that_was_seen_before_keeps_its_room_and_never_says_that_nothing_is_kept": 2,
        "a_kept_screen_whose_script_is_broken_is_seen_all_the_same": 1},
    "browser/kit": {
        "a_file_that_is_none_changes_nothing": 4, "a_thing_is_added_used_changed_copied_removed_and_brought_back": 1,
        "export_wipe_import_is_identical": 1,
        "every_import_can_be_undone_also_after_a_second_one_and_a_reload": 1,
        "a_phone_that_keeps_nothing_says_so_and_calculates": 1,
        "a_database_of_a_newer_covemix_is_left_alone_and_said": 1, "data_of_schema_1_is_readable_under_this_build": 1,
        "a_full_phone_says_so_and_what_was_typed_stays": 1},
    "browser/knock": {
        "what_is_no_double_knock_is_no_step": 6, "a_double_knock_is_the_next_step_once_it_was_asked_for_and_tried": 1},
    "browser/lan": {},
    "browser/language": {
        "a_phone_that_speaks_it_gets_it_and_keeps_it_without_signal": 1,
        "where_nothing_is_kept_the_server_answers_in_the_chosen_language": 1},
    "browser/link_view": {
        "a_link_counts_in_one_system_before_and_after_it_is_taken_over": 18,
        "a_fresh_phone_shows_it_and_keeps_nothing_of_it": 1, "the_units_of_a_link_go_with_it": 1},
    "browser/log": {
        "a_batch_is_changed_removed_brought_back_and_poured_again": 1,
        "rows_that_cannot_be_read_are_shown_and_kept_and_the_rest_stands": 1, "a_word_finds_a_batch": 1,
        "an_empty_batch_is_refused_in_words": 1, "a_batch_that_is_brought_back_takes_no_others_place": 1},
    "browser/made_up_kind": {},
    "browser/midway": {
        "steps_that_open_without_an_answer_say_so_and_the_next_tap_asks_again": 1,
        "a_step_back_without_an_answer_takes_nothing_out_of_the_cup": 1},
    "browser/narrow": {
        "nothing_is_clipped_and_no_figure_breaks_from_its_unit": 48, "no_plain_english_is_left_on_a_page": 6,
        "a_list_and_a_name_stand_whole_in_their_field": 3},
    "browser/no_engine": {"every_screen_is_answered": 4, "a_link_and_a_second_one_are_answered_by_the_server": 2},
    "browser/offline": {
        "any_link_opens": 12, "a_first_visit_is_enough": 2,
        "screens_change_without_signal": 2,
        "a_link_is_offered_before_it_replaces_what_was_typed": 2,
        "on_plain_http_it_calculates_and_says_once_what_it_cannot": 1,
        "an_engine_that_does_not_start_leaves_the_server_to_answer": 1},
    "browser/picture": {
        "a_start_from_the_picture_needs_no_bundle_and_answers_alike": 1, "nothing_that_was_typed_is_in_it": 1,
        "a_picture_that_is_not_whole_is_dropped_and_the_bundle_read": 2},
    "browser/pictures_show": {
        "each_picture_is_made_by_one_command_and_has_the_size_that_is_told_of_it": 1,
        "each_picture_that_is_no_screen_is_shown_by_a_page": 1},
    "browser/plan": {
        "a_step_is_told_with_one_tap_and_the_minute_it_is": 1,
        "without_an_answer_the_pieces_stay_and_the_page_says_so": 1, "a_batch_leads_to_its_pour_and_to_its_clock": 1,
        "a_day_that_begins_too_late_says_so": 1},
    "browser/pour_along": {
        "it_goes_on_where_it_was_after_a_reload_and_the_clock_has_run_on": 1,
        "a_tap_that_finds_no_answer_is_no_step": 1, "too_much_is_mended_in_the_step_and_stirring_waits_for_it": 1,
        "a_batch_with_two_misreadings_is_brought_into_ratio": 1,
        "two_taps_of_a_shaking_glove_are_one_step_and_pour_nothing": 1, "a_stroke_too_many_is_mended_in_strokes": 1},
    "browser/privacy": {
        "every_screen_asks_only_its_own_server_only_for_files_and_stores_nothing_unasked": 1,
        "a_hostile_import_is_only_text": 1, "what_is_typed_handed_on_and_kept_is_sent_nowhere": 1},
    "browser/refused": {
        "an_alarm_that_is_tried_is_felt_and_once_sound_is_allowed_heard": 1,
        "an_alarm_whose_voice_fails_is_felt_and_seen_and_goes_on": 1},
    "browser/run": {
        "a_whole_seam_is_a_tap_for_each_step_and_leaves_log_plan_and_dates": 1,
        "a_helper_s_link_that_was_changed_on_its_way_is_refused": 4, "a_killed_app_opens_in_the_run": 1,
        "two_taps_of_a_shaking_glove_start_no_clock": 1,
        "a_clock_that_is_set_ahead_in_sight_takes_its_minutes_off_the_window": 1, "a_joint_leads_into_its_run": 1},
    "browser/share": {
        "an_opened_link_that_is_none_changes_nothing_without_signal": 4,
        "a_scanned_link_is_shown_before_it_replaces_anything": 1,
        "a_pasted_link_that_is_none_is_refused_in_a_sentence": 7,
        "the_card_on_paper_holds_the_figures_the_code_and_the_caution": 1,
        "the_code_is_the_link_and_the_link_opens_the_same_numbers": 1,
        "a_code_on_a_phone_has_modules_of_a_millimetre_or_is_none": 1},
    "browser/slow": {"each_key_press_is_answered_at_a_sixth_of_the_speed": 3},
    "browser/spreader": {
        "a_template_prints_at_true_size": 4, "the_template_opens_without_signal": 1,
        "radii_that_no_sheet_takes_are_refused_in_words": 1},
    "browser/steps_whole": {"at_each_step_of_a_pour_every_field_and_key_is_whole": 12},
    "browser/trial": {"an_undo_takes_the_test_out_of_the_kit_again": 1},
    "browser/typed_below": {"it_is_in_sight_and_outlives_a_reload": 3},
    "browser/units": {
        "every_field_says_what_the_engine_reads_in_both_systems": 4, "the_steps_take_what_the_scale_shows": 1,
        "a_tap_on_the_unit_brings_the_keys_of_other_units_and_fractions": 1, "the_keys_of_a_field_follow_the_units": 1,
        "a_reading_stays_what_it_was_where_another_screen_chooses_another_scale": 1},
    "browser/unpack": {"what_is_hard_to_pack_comes_out_again": 0, REST: 1},
    "browser/update": {
        "a_sign_in_page_in_the_place_of_a_file_leaves_the_old_build_and_is_said": 4,
        "a_new_build_waits_until_it_is_asked_for": 1, "a_new_build_with_a_file_missing_leaves_the_old_one": 1},
    "browser/ways": {
        "each_way_answers_offline_and_the_answer_is_in_sight": 1, "what_cannot_be_well_gets_words_and_a_way_out": 2,
        "what_cannot_be_at_all_is_told_beside_its_field": 2, "only_the_tools_of_the_way_are_asked": 1,
        "every_choice_above_the_figures_can_be_read_whole": 1},
    "browser/whole": {
        "a_kept_file_that_is_damaged_is_fetched_again": 8, "a_damaged_page_or_view_is_made_again_without_signal": 4,
        "what_cannot_be_mended_without_signal_is_said_and_mends_itself_later": 1,
        "a_damaged_engine_without_signal_is_said_by_its_name": 1,
        },
    "browser/whole_keys": {
        "the_caution_and_the_bar_under_it_cut_no_key_and_hide_none_that_is_reached": 24,
        "neighbouring_targets_are_apart": 12},
    "engines/main_way": {"the_main_way": 3},
    "engines/paper": {},
    "abuse_api": {
        "no_answer_is_undocumented": 6,
        "every_route_sends_every_header_that_means_something_there_whatever_it_is_asked": 5, REST: 1},
    "abuse_pages": {
        "hostile_text_in_any_field_is_only_text": 12, "a_hostile_query_gets_a_page": 8,
        "hostile_text_in_any_field_of_a_move_is_answered_or_refused": 5, "generated_links_get_a_page": 4, REST: 1},
    "allowed_origins": {"a_page_of_the_club_may_ask_and_reads_the_answer": 0, REST: 1},
    "apart": {
        "it_gives_way_and_ends_with_the_server": 0, "the_same_app_answers_there": 4,
        "a_long_question_is_answered_by_another_process_and_a_short_one_here": 0,
        "the_other_process_is_asked_the_same_as_this_one_would_be_each_time": 0,
        "where_the_other_process_comes_to_nothing_the_answer_comes_from_here": 0, REST: 1},
    "boat_surfaces": {"a_surface_put_into_the_boat_is_the_same_there": 0, REST: 1},
    "check": {
        "what_is_wrong_is_said_with_what_to_change": 3, "what_could_be_better_keeps_nobody_from_the_app": 3, REST: 1},
    "costs": {
        "no_mixture_of_limits_is_dear": 10, "the_dearest_question_of_each_kind_is_cheap_or_refused_at_once": 3,
        REST: 1},
    "every_fact": {"what_is_said_follows_each_figure": 11, "no_text_keeps_a_figure_when_all_rows_change": 0, REST: 1},
    "facts": {"what_is_said_follows_the_row": 3, REST: 1},
    "figures": {"what_is_drawn_lies_on_its_sheet_and_is_told": 3, REST: 1},
    "first": {"a_number_typed_letter_by_letter_reads_as_if_it_were_new": 2, REST: 1},
    "fuzz": {
        "nothing_traps_and_plain_questions_are_answered_as_before": 0,
        "an_endless_text_is_answered_or_refused_and_takes_no_memory": 8, REST: 1},
    "generated": {"no_generated_case_raises": 6, REST: 1},
    "heat": {"the_minutes_hold_for_every_activation_energy_that_fits_the_label": 4, REST: 1},
    "hosts": {
        "with_the_settings_of_the_guide_there_is_nothing_left_to_better": 0,
        "a_stock_server_serves_the_export_as_it_is": 5, REST: 1},
    "knocks_in_node": {},
    "kept_words": {"what_is_handed_on_is_the_same_in_every_language": 4, REST: 1},
    "lean": {
        "what_others_know_keeps_its_name": 4, "what_a_lean_module_imports_from_another_is_still_there": 0,
        "a_lean_module_is_the_same_program": 4, REST: 1},
    "links": {"every_screen_means_the_same_after_the_journey_of_its_link": 3, REST: 1},
    "memo": {"five_thousand_questions_over_eight_threads_are_answered_as_each_alone": 0, REST: 1},
    "moves": {
        "generated_requests_are_answered_in_finite_lines_or_errors": 3, "a_screen_answers_as_its_moves_do_alone": 3,
        "where_an_answer_leads_next_is_a_screen_that_knows_the_pairs": 3, REST: 1},
    "one_unit": {"no_answer_keeps_a_metric_figure_in_us_units": 3, REST: 1},
    "old_browsers": {"a_browser_that_lacks_more_is_told_so": 0, REST: 1},
    "pages_promise": {"an_export_is_files_alone_and_has_no_api": 0, REST: 1},
    "peak_band": {"finite_volumes_lie_within_the_band": 3, REST: 1},
    "reference": {"the_kit_leads_to_it_and_an_export_has_it": 0, REST: 1},
    "set_apart": {"the_fields_are_the_text_and_nothing_else": 4, REST: 1},
    "sun": {
        "more_sun_never_lasts_longer": 2, "the_trays_advice_is_withdrawn_in_the_sun": 2,
        "a_tray_in_the_sun_against_finite_volumes": 5, "a_cup_in_the_sun_against_finite_volumes": 3, REST: 1},
    "site": {"what_could_not_be_made_is_made_when_it_is_asked_for_again": 0, REST: 1},
    "typed": {"a_linter_finds_nothing_in_the_description": 0, REST: 1},
    "wheel": {},
    "words": {"nothing_is_said_outside_of_a_message": 4, REST: 1},
}


def by_day(tests, table=None):
    """(what is asked by day, what is left for the night) of tests in the order in which they stand.

    tests: (file from tests/, without its `test_` and end; name of the test without its `test_`), a row each

    >>> rows = [("a", "wide"), ("a", "wide"), ("a", "wide"), ("a", "dear"), ("a", "plain"), ("b", "any")]
    >>> by_day(rows, {"a": {"wide": 2, "dear": 0, REST: 1}})
    ([0, 2, 4, 5], [1, 3])
    >>> by_day(rows, {"a": {"plain": 1}})
    ([4, 5], [0, 1, 2, 3])
    """
    table = ASKED if table is None else table
    asked, left, turns = [], [], {}
    for place, (file, name) in enumerate(tests):
        own = table.get(file, {REST: 1})
        one_of = own.get(name, own.get(REST, 0))
        turn = turns[file, name] = turns.get((file, name), -1) + 1
        (asked if one_of and turn % one_of == 0 else left).append(place)
    return asked, left


def split(items, root):
    """The same of pytest's items. root: the folder of the tests."""
    files = {path: (path.parent.relative_to(root) / path.stem.removeprefix("test_")).as_posix()
             for path in {item.path for item in items} if root in path.parents}
    named = [(files.get(item.path, ""), item.name.partition("[")[0].removeprefix("test_")) for item in items]
    return tuple([items[place] for place in part] for part in by_day(named))
