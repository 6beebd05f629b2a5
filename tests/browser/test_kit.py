"""Kit: own things kept, changed, copied, removed and brought back; what this phone is set to; a store that fails."""
import csv
import io
import json
import re

import pytest
from covemix.server.pages import PAGES
from playwright.sync_api import expect

from .conftest import drawn, figure, grow_old, keep, unanswered

SCHEMA_1 = """(typed) => new Promise((done, failed) => {
  const asked = indexedDB.open("covemix", 1);
  asked.onupgradeneeded = () => {
    asked.result.createObjectStore("kit", { keyPath: "id", autoIncrement: true }).createIndex("record", "record");
    asked.result.createObjectStore("pots", { keyPath: "id", autoIncrement: true });
    asked.result.createObjectStore("log", { keyPath: "id", autoIncrement: true });
  };
  asked.onerror = failed;
  asked.onsuccess = () => {
    const change = asked.result.transaction("kit", "readwrite");
    change.objectStore("kit").put({ record: "system", typed, made: 1 });
    change.oncomplete = () => { HOLD; done(true); };
  };
})"""
# a putty batch as it is kept now and as it was once kept, an own timing as once kept, a poured batch
LOGGED = """async () => {
  const { put } = await part("store/store.js");
  const { logBatch } = await part("kit/log.js");
  const putty = { filler: "Silica", mixed: "100 g", before: "200 g", after: "180 g", came_out: "right" };
  await put("log", { ...putty, kind: "putty", when: Date.now() });
  await put("log", { ...putty, kind: "putty", when: "2024-05-01T10:00:00.000Z" });
  await put("log", { kind: "timing", when: 1, typed: { said: "gone", after: "900 s" }, pairs: [["system", "x"]] });
  await logBatch({ typed: { what: "Seam" } });
}"""
OWN = {"name": "Shed mix", "by_weight": "100:40"}


@pytest.fixture
def kit(phone, standing):
    phone.goto(standing.url + "/kit/")
    expect(phone.locator("[data-listing]")).to_be_visible()
    return phone


def shelf(page, name):
    return page.get_by_role("region", name=name, exact=True)


def add(page, name="Shed mix", ratio="100:40"):
    shelf(page, "Resin system").get_by_role("button", name="Add").click()
    page.get_by_role("combobox", name="Resin system", exact=True).select_option("")
    page.locator("[name='system.name']").fill(name)
    page.locator("[name='system.by_weight']").fill(ratio)
    page.get_by_role("button", name="Save", exact=True).click()
    # kept, refused or said that nothing is: a page that is left before that keeps nothing, and no screen can show it
    refused = "[data-error]:not([data-asks]):visible"  # what only asks stands there before anything is typed
    expect(page.locator(f"[data-listing]:visible, {refused}, [data-notice=store]").first).to_be_visible()


def copies(page):
    """The part of Kit that writes a file and reads one, opened: its keys come with it."""
    fold = page.locator("[data-backup]")
    if not fold.evaluate("(one) => one.open"):
        fold.locator("summary").click()
    expect(page.get_by_label("Bring back from a file")).to_be_visible()


def exported(page):
    copies(page)
    with page.expect_download() as got:
        page.get_by_role("button", name="Save kit and log to a file").click()
    return got.value.path().read_bytes()


def test_a_thing_is_added_used_changed_copied_removed_and_brought_back(kit, standing):
    add(kit)
    mine = shelf(kit, "Resin system").locator(".entry")
    expect(mine).to_contain_text("Parts by weight: 100:40")
    mine.get_by_role("button", name="Change").click()
    kit.locator("[name='system.by_weight']").fill("100:25")
    kit.get_by_role("button", name="Save", exact=True).click()
    expect(mine).to_contain_text("100:25")
    mine.get_by_role("button", name="Copy").click()
    expect(mine).to_have_count(2)
    mine.nth(1).get_by_role("button", name="Remove").click()
    expect(mine).to_have_count(1)
    kit.locator("[data-notice=kit]").get_by_role("button", name="Undo").last.click()
    expect(mine).to_have_count(2)
    kit.goto(standing.url)
    kit.get_by_label("Resin system", exact=True).select_option(label="Shed mix")
    kit.get_by_label("Amount", exact=True).fill("125")
    expect(figure(kit, "reading_a")).to_have_text("100 g")


@pytest.mark.parametrize(("shelved", "typed", "fold", "said"), [
    ("Room", {"name": "Boathouse", "length": "10", "width": "5", "height": "4"}, "The room and its fan", "200 m³"),
    ("Fan", {"name": "Ducted fan", "flow": "900"}, "The room and its fan", "900"),
])
def test_a_room_and_a_fan_of_ones_own_are_picked_on_safety(kit, standing, shelved, typed, fold, said):
    shelf(kit, shelved).get_by_role("button", name="Add").click()
    kit.get_by_role("combobox", name=shelved, exact=True).select_option("")
    for name, text in typed.items():
        kit.locator(f"[name='{shelved.lower()}.{name}']").fill(text)
    kit.get_by_role("button", name="Save", exact=True).click()
    expect(shelf(kit, shelved).locator(".entry")).to_contain_text(typed["name"])
    kit.goto(standing.url + "/safety/?fan_runs=in&opening=0.1")
    kit.locator("details", has_text=fold).last.evaluate("(one) => { one.open = true; }")  # a link may have opened it
    label = {"Room": "Room", "Fan": "Which fan"}[shelved]
    kit.get_by_role("combobox", name=label, exact=True).select_option(label=typed["name"])
    expect(kit.locator("[data-move=air]")).to_contain_text(said)


def test_a_thing_kept_in_millimetres_is_the_same_thing_on_a_screen_of_inches(kit, standing):
    shelf(kit, "Cup").get_by_role("button", name="Add").click()
    kit.get_by_role("combobox", name="Cup", exact=True).select_option("")
    for name, text in {"name": "My cup", "bottom": "60", "top": "80", "height": "105"}.items():
        kit.locator(f"[name='cup.{name}']").fill(text)
    kit.get_by_role("button", name="Save", exact=True).click()
    expect(shelf(kit, "Cup").locator(".entry")).to_contain_text("Inside height: 105 mm")
    kit.locator("[name=set-units][value=us]").locator("xpath=..").click()  # a link's units are not the phone's
    kit.goto(standing.url + "/?way=stick&amount=8+oz")
    expect(figure(kit, "mark_b")).to_have_text("2.37 in")
    kit.get_by_text("Tools on the bench").click()
    kit.get_by_label("Cup", exact=True).select_option("tub")
    expect(figure(kit, "mark_b")).not_to_have_text("2.37 in")
    kit.get_by_label("Cup", exact=True).select_option(label="My cup")  # as large as the built-in one at first
    expect(figure(kit, "mark_b")).to_have_text("2.37 in")


def test_what_cannot_be_kept_is_said_at_its_field_and_nothing_is_kept(kit):
    add(kit, ratio="100:0")
    expect(kit.locator("[data-error='system.by_weight']")).to_be_visible()
    expect(kit.locator("[data-editing]")).to_be_visible()
    kit.get_by_role("button", name="Cancel", exact=True).click()
    expect(shelf(kit, "Resin system").locator(".entry")).to_have_count(0)


def test_hand_and_light_are_chosen_once(kit, standing):
    kit.get_by_role("radio", name="Left hand").check()
    kit.get_by_role("radio", name="Bright sun").check()
    kit.goto(standing.url)
    expect(kit.locator("html")).to_have_attribute("data-hand", "left")
    expect(kit.locator("html")).to_have_attribute("data-light", "sun")


def test_export_wipe_import_is_identical(kit):
    add(kit)
    add(kit, name="Öse \"3\"", ratio="2:1")
    expect(kit.locator(".entry")).to_have_count(2)
    kit.evaluate(LOGGED)
    saved = exported(kit)
    assert [row["kind"] for row in json.loads(saved)["log"]] == ["putty", "putty", "timing", "poured"]
    for _ in range(2):
        kit.locator(".entry").first.get_by_role("button", name="Remove").click()
    expect(kit.locator(".entry")).to_have_count(0)
    kit.get_by_label("Bring back from a file").set_input_files({"name": "c.json", "mimeType": "", "buffer": saved})
    expect(kit.locator("[data-preview-words]")).to_contain_text("2 in the kit, 1 batch")
    kit.get_by_role("button", name="Replace all").click()
    expect(kit.locator(".entry")).to_have_count(2)
    assert exported(kit) == saved


@pytest.mark.parametrize(("content", "why"), [
    (b"{", "not from Covemix"), (b"[]", "not from Covemix"), (b"\xff\xd8\xff", "not from Covemix"),
    (json.dumps({"format": "covemix", "schema": 99, "kit": []}).encode(), "newer Covemix"),
    (json.dumps({"format": "covemix", "schema": 1, "kit": [{"record": "cup"}]}).encode(), "not from Covemix"),
    (json.dumps({"format": "covemix", "schema": 1, "kit": [{"id": 1}, {"id": 1}]}).encode(), "not from Covemix"),
    (json.dumps({"format": "covemix", "schema": 1, "kit": {"id": 1}}).encode(), "not from Covemix"),
    (json.dumps({"format": "covemix", "schema": 1, "log": ["row"]}).encode(), "not from Covemix"),
    (b"null", "not from Covemix"),
    (b"<!doctype html><script>document.title = 'run'</script>", "not from Covemix"),
    (b" " * 5_000_001, "too large"),
])
def test_a_file_that_is_none_changes_nothing(same_phone, standing, content, why):
    if not same_phone.url.startswith(standing.url):
        same_phone.goto(standing.url + "/kit/")
        expect(same_phone.locator("[data-listing]")).to_be_visible()
        add(same_phone)
    expect(same_phone.locator(".entry")).to_have_count(1)
    copies(same_phone)
    told = same_phone.locator("[data-import-error]")
    told.evaluate("(words) => { words.textContent = ''; }")  # what was said of the file before this one
    same_phone.get_by_label("Bring back from a file").set_input_files(
        {"name": "c.json", "mimeType": "", "buffer": content})
    expect(told).to_contain_text(why)
    expect(same_phone.locator("[data-preview]")).to_be_hidden()
    expect(same_phone.locator(".entry")).to_have_count(1)


def test_data_of_schema_1_is_readable_under_this_build(phone, standing):
    phone.goto(standing.url + "/manifest.webmanifest")
    phone.evaluate(SCHEMA_1.replace("HOLD", "asked.result.close()"), OWN)
    phone.goto(standing.url + "/kit/")
    expect(phone.locator(".entry")).to_contain_text("Parts by weight: 100:40")


def test_an_old_tab_that_is_open_hangs_nothing(phone, standing):
    old = phone.context.new_page()
    old.goto(standing.url + "/manifest.webmanifest")
    old.evaluate(SCHEMA_1.replace("HOLD", "window.held = asked.result"), OWN)
    phone.goto(standing.url)
    expect(phone.locator("[data-notice=blocked]")).to_contain_text("Close that tab")
    phone.get_by_label("Amount", exact=True).fill("200")
    expect(figure(phone, "drawn_b")).to_have_text(drawn(200))
    old.close()
    expect(phone.locator("[data-notice=blocked]")).to_have_count(0)  # it is over, and says no more
    phone.goto(standing.url + "/kit/")
    expect(phone.locator(".entry")).to_contain_text("Shed mix")


def test_a_phone_that_keeps_nothing_says_so_and_calculates(phone, standing):
    phone.add_init_script("indexedDB.open = () => { throw new DOMException('no', 'SecurityError'); };")
    phone.goto(standing.url + "/kit/")
    expect(phone.locator("[data-notice=store]")).to_contain_text("cannot save")
    add(phone)
    expect(phone.locator("[data-editing]")).to_be_visible()
    expect(phone.locator("[name='system.name']")).to_have_value("Shed mix")
    phone.goto(standing.url)
    phone.get_by_label("Amount", exact=True).fill("200")
    expect(figure(phone, "drawn_b")).to_have_text(drawn(200))


def test_a_full_phone_says_so_and_what_was_typed_stays(kit, standing):
    tools = kit.context.new_cdp_session(kit)
    tools.send("Storage.overrideQuotaForOrigin", {"origin": standing.url, "quotaSize": 1})
    add(kit)
    expect(kit.locator("[data-notice=store]")).to_contain_text("the phone is full")
    expect(kit.locator("[name='system.name']")).to_have_value("Shed mix")
    with kit.expect_download() as got:  # what is kept already is brought to safety from where one stands
        kit.locator("[data-notice=store]").get_by_role("button", name="Save kit and log to a file").click()
    assert json.loads(got.value.path().read_bytes())["format"] == "covemix"


def test_a_database_that_died_is_opened_again(kit, standing):
    """Eviction closes it under the page, without a word."""
    add(kit)
    expect(kit.locator(".entry")).to_have_count(1)
    tools = kit.context.new_cdp_session(kit)
    tools.send("Storage.clearDataForOrigin", {"origin": standing.url, "storageTypes": "indexeddb"})
    add(kit, name="After it")
    expect(kit.locator(".entry").last).to_contain_text("After it")


NEWER = """() => new Promise((done) => {
  const asked = indexedDB.open("covemix", 99);
  asked.onsuccess = () => { asked.result.close(); done(); };
})"""


def test_a_database_of_a_newer_covemix_is_left_alone_and_said(phone, standing):
    phone.goto(standing.url + "/manifest.webmanifest")
    phone.evaluate(NEWER)
    phone.goto(standing.url + "/kit/")
    expect(phone.locator("[data-notice=store]")).to_contain_text("newer Covemix")
    add(phone)
    expect(phone.locator("[data-editing]")).to_be_visible()


def test_every_screen_says_that_a_newer_covemix_keeps_the_store(same_phone, standing):
    """Also one that only reads, or picks nothing: nobody takes an empty list of pots for no pots."""
    same_phone.goto(standing.url + "/manifest.webmanifest")
    same_phone.evaluate(NEWER)
    told = same_phone.locator("[data-notice=store]")
    for _, path, _ in PAGES:
        same_phone.goto(f"{standing.url}/{path}")
        expect(told).to_contain_text("A newer Covemix saved kit, log and running pots")
    told.get_by_role("button", name="Close").click()
    expect(told).to_have_count(0)
    same_phone.get_by_role("link", name="Pour", exact=True).click()  # and by a tap, without a new page
    expect(told).to_contain_text("newer Covemix")
    same_phone.evaluate("indexedDB.deleteDatabase('covemix')")


def test_a_tab_under_which_a_newer_covemix_takes_the_store_over_says_so(phone, standing):
    phone.goto(standing.url)
    expect(figure(phone, "drawn_b")).to_be_visible()
    newer = phone.context.new_page()
    newer.goto(standing.url + "/manifest.webmanifest")
    newer.evaluate(NEWER)
    expect(phone.locator("[data-notice=store]")).to_contain_text("newer Covemix")


STRANGE = """async () => {
  const { put } = await part("store/store.js");
  await put("kit", { record: "system", name: "An older shape" });
  await put("kit", { record: "system", typed: { name: "A number", by_weight: 2 } });
  await put("kit", { record: "trestle", typed: { name: "A kind that is no more" } });
  await put("kit", { typed: null });
  await put("pots", { started: 1, duration: 600 });
  await put("pots", { started: Date.now(), typed: [["duration", "25"], ["place", "Bow"], ["batch", "90 g"]], timing: [],
    system: [], done: [], rung: [], said: [] });
  for (const [key, text] of [["set.hand", "{"], ["set.units", "stones"],
    ["typed.joint", '[[1, 2], ["length", "7"], 3]'],
    ["typed.boat", '[["joints.0.old_name", "x"], ["joints.x.length", "3"], ["joints", 5]]'], ["typed.pour", "7"],
    ["answer.pour", "[]"]]) localStorage.setItem("covemix." + key, text);
}"""


POTS = """async () => {
  const { read } = await part("store/store.js");
  return read("pots");
}"""


def test_things_pots_settings_and_typed_rows_of_older_shapes_stop_nothing(kit, standing):
    add(kit)
    kit.evaluate(STRANGE)
    kit.reload()
    mine = shelf(kit, "Resin system").locator(".entry")
    expect(mine).to_have_count(1)
    expect(mine).to_contain_text("Parts by weight: 100:40")
    strange = kit.locator("[data-unread] .entry")
    expect(strange).to_have_count(5)
    expect(strange.first).to_contain_text("An older shape")
    expect(kit.locator("[data-notice=unread-pot]")).to_contain_text("Watch the pot itself")
    kit.goto(standing.url)
    kit.get_by_label("Resin system", exact=True).select_option(label="Shed mix")
    kit.get_by_label("Amount", exact=True).fill("140")
    expect(figure(kit, "reading_a")).to_have_text("100 g")
    kit.goto(standing.url + "/clock/")
    expect(kit.locator(".pot", has_text="Bow").locator(".pot-minutes")).to_be_visible()
    strange = kit.locator(".pot", has_text="cannot be shown")
    strange.get_by_role("button", name="End this pot").click()
    expect(strange).to_have_count(0)
    kit.get_by_role("button", name="Undo").click()
    expect(strange).to_have_count(1)
    assert kit.evaluate(POTS)[0] == {"id": 1, "started": 1, "duration": 600}  # as it was
    for screen in ("joint/", "boat/"):
        kit.goto(standing.url + "/" + screen)
        expect(kit.locator(".answer .line").first).to_be_visible()
    kit.goto(standing.url + "/joint/")
    expect(kit.locator("[name=length]")).to_have_value("7")


def test_a_name_with_markup_is_a_name(kit):
    add(kit, name="<b>Shed</b>")
    expect(shelf(kit, "Resin system").locator(".entry-name")).to_have_text("<b>Shed</b>")
    assert kit.locator(".entry b").count() == 0


def test_what_is_kept_stands_there_also_where_nothing_answers(kit):
    add(kit)
    expect(shelf(kit, "Resin system").locator(".entry")).to_contain_text("Parts by weight: 100:40")
    grow_old(kit)
    kit.reload()
    mine = shelf(kit, "Resin system").locator(".entry")
    expect(mine).to_contain_text("Shed mix")
    expect(mine).to_contain_text("could not be calculated")
    assert kit.workers == []
    mine.get_by_role("button", name="Remove").click()
    expect(mine).to_have_count(0)


def test_the_undo_of_a_copy_ends_when_the_copy_is_changed(kit):
    add(kit)
    mine = shelf(kit, "Resin system").locator(".entry")
    mine.get_by_role("button", name="Copy").click()
    expect(mine).to_have_count(2)
    expect(kit.locator("[data-notice=kit]")).to_be_visible()
    mine.nth(1).get_by_role("button", name="Change").click()
    kit.locator("[name='system.by_weight']").fill("100:25")
    kit.get_by_role("button", name="Save", exact=True).click()
    expect(mine.nth(1)).to_contain_text("100:25")
    expect(kit.locator("[data-notice=kit]")).to_have_count(0)


RUNS = """async ([place, before]) => {
  const { put } = await part("store/store.js");
  await put("pots", { started: Date.now() - before, typed: [["duration", "40"], ["batch", "90 g"], ["place", place]],
    timing: [], system: [], done: [], rung: [], said: [] });
}"""


def names(page):
    return [row["typed"]["name"] for row in json.loads(exported(page))["kit"]]


def places(page):
    return [dict(row["typed"])["place"] for row in json.loads(exported(page))["pots"]]


def choose(page, saved):
    copies(page)
    page.get_by_label("Bring back from a file").set_input_files({"name": "c.json", "mimeType": "", "buffer": saved})
    expect(page.locator("[data-preview]")).to_be_visible()


def test_of_many_things_the_first_are_named_and_the_others_counted(kit):
    kit.evaluate("""async () => {
      const { put } = await part("store/store.js");
      for (const name of "ABCDEF") await put("kit", { record: "scale", typed: { name, step: "1" } });
    }""")
    kit.reload()
    expect(kit.locator(".entry")).to_have_count(6)
    saved = exported(kit)
    kit.evaluate("""async () => {
      const { read, remove } = await part("store/store.js");
      for (const { id } of await read("kit")) await remove("kit", id);
    }""")
    choose(kit, saved)
    named = kit.locator("[data-preview-add]")
    expect(named).to_contain_text(re.compile(r"Added: 6 kit items \(\w(\W+\w){3} and 2 more\)"))


def test_a_file_stops_no_pot_shows_what_would_change_and_is_added_or_replaces(kit):
    kit.evaluate(RUNS, ["Bow", 90_000])
    add(kit, name="In the file")
    expect(kit.locator(".entry")).to_have_count(1)
    saved = exported(kit)
    kit.locator(".entry").get_by_role("button", name="Remove").click()
    expect(kit.locator(".entry")).to_have_count(0)
    add(kit, name="Only here")
    expect(kit.locator(".entry")).to_have_count(1)
    kit.evaluate("""async () => {
      const { read, remove } = await part("store/store.js");
      for (const { id } of await read("pots")) await remove("pots", id);
    }""")
    kit.evaluate(RUNS, ["Stern", 30_000])
    choose(kit, saved)
    for part in ("add", "replace"):
        expect(kit.locator(f"[data-preview-{part}]")).to_contain_text("Added: 1 kit item (In the file)")
        expect(kit.locator(f"[data-preview-{part}]")).to_contain_text("Added: 1 running pot (90 g, Bow")
    expect(kit.locator("[data-preview-replace]")).to_contain_text("Removed: 1 kit item (Only here)")
    expect(kit.locator("[data-preview-add]")).not_to_contain_text("Removed")
    expect(kit.locator("[data-preview-pots]")).to_contain_text("keep running: 90 g, Stern")
    foot = kit.locator("[data-foot]").bounding_box()["y"]
    for name in ("Leave as it is", "Add to mine", "Replace all"):
        button = kit.get_by_role("button", name=name)
        button.evaluate("(one) => one.scrollIntoView({ block: 'center' })")
        box = button.bounding_box()
        assert box["height"] >= 48
        assert box["y"] + box["height"] <= foot
    kit.get_by_role("button", name="Add to mine").click()
    expect(kit.locator(".entry")).to_have_count(2)
    assert sorted(names(kit)) == ["In the file", "Only here"]
    assert sorted(places(kit)) == ["Bow", "Stern"]
    choose(kit, saved)
    expect(kit.locator("[data-preview-add]")).to_contain_text("Nothing: all of it is here already.")
    kit.get_by_role("button", name="Replace all").click()
    expect(kit.locator(".entry")).to_have_count(1)
    assert names(kit) == ["In the file"]
    assert sorted(places(kit)) == ["Bow", "Stern"]


def test_every_import_can_be_undone_also_after_a_second_one_and_a_reload(kit):
    add(kit, name="First")
    expect(kit.locator(".entry")).to_have_count(1)
    first = exported(kit)
    second = first.replace(b"First", b"Second")
    kit.locator(".entry").get_by_role("button", name="Remove").click()
    expect(kit.locator(".entry")).to_have_count(0)
    add(kit, name="Mine")
    expect(kit.locator(".entry")).to_have_count(1)
    for saved, name in ((first, "First"), (second, "Second")):
        choose(kit, saved)
        kit.get_by_role("button", name="Replace all").click()
        expect(kit.locator(".entry-name")).to_have_text([name])
    kit.reload()
    add(kit, name="Since")  # entered after both: it stays, whatever is undone
    expect(kit.locator(".entry")).to_have_count(2)
    copies(kit)
    undo = kit.get_by_role("button", name="Undo the newest")
    undo.click()
    expect(kit.locator(".entry-name")).to_have_text(["First", "Since"])
    undo.click()
    expect(kit.locator(".entry")).to_have_count(2)
    assert sorted(names(kit)) == ["Mine", "Since"]
    expect(undo).to_be_hidden()


def test_two_tabs_that_change_one_thing_lose_nothing_of_either(kit, standing):
    add(kit)
    tabs = [kit, kit.context.new_page()]
    tabs[1].goto(standing.url + "/kit/")
    for page in tabs:
        shelf(page, "Resin system").get_by_role("button", name="Change").click()
        page.get_by_text("More from the label").first.wait_for()
    for page, field, text in ((tabs[0], "lot", "A 12"), (tabs[1], "tolerance", "3 %")):
        page.locator(f"[name='system.{field}']").fill(text)
        page.get_by_role("button", name="Save", exact=True).click()
        expect(shelf(page, "Resin system").locator(".entry-line")).to_be_visible()
    for page in tabs:
        page.reload()
        shelf(page, "Resin system").get_by_role("button", name="Change").click()
        expect(page.locator("[name='system.lot']")).to_have_value("A 12")
        expect(page.locator("[name='system.tolerance']")).to_have_value("3 %")
        page.get_by_role("button", name="Cancel", exact=True).click()


def test_the_undo_of_a_copy_takes_the_copy_away_and_nothing_else(kit):
    add(kit)
    mine = shelf(kit, "Resin system").locator(".entry")
    mine.get_by_role("button", name="Copy").click()
    expect(mine.locator(".entry-name")).to_have_text(["Shed mix", "Shed mix, copy"])
    kit.locator("[data-notice=kit]").get_by_role("button", name="Undo").click()
    expect(mine.locator(".entry-name")).to_have_text(["Shed mix"])
    assert names(kit) == ["Shed mix"]


@pytest.mark.parametrize(("key", "stays"), [("Add to mine", ["Mine", "In the file"]), ("Replace all", ["In the file"])])
def test_a_file_that_was_brought_back_is_taken_back_where_it_is_said(kit, key, stays):
    add(kit, name="In the file")
    entries = kit.locator(".entry-name")
    expect(entries).to_have_count(1)
    saved = exported(kit)
    kit.locator(".entry").get_by_role("button", name="Remove").click()
    expect(entries).to_have_count(0)
    add(kit, name="Mine")
    expect(entries).to_have_text(["Mine"])
    choose(kit, saved)
    kit.get_by_role("button", name=key).click()
    expect(entries).to_have_count(len(stays))
    assert sorted(names(kit)) == sorted(stays)
    kit.locator("[data-notice=import]").get_by_role("button", name="Undo").click()
    expect(entries).to_have_text(["Mine"])
    assert names(kit) == ["Mine"]
    expect(kit.get_by_role("button", name="Undo the newest")).to_be_hidden()


# a disk that fails in the midst of a step, at what is written into one of the stores
FAILING = """(store) => {
  const { put } = IDBObjectStore.prototype;
  window.failed = 0;
  IDBObjectStore.prototype.put = function (...row) {
    const asked = put.apply(this, row);
    if (this.name === store) {
      window.failed += 1;
      this.transaction.abort();
    }
    return asked;
  };
}"""


def test_a_file_that_comes_in_by_half_is_not_brought_back_at_all(kit):
    """Its kit is in when its log fails: the kit stays as it was, and what was done is not said to be done."""
    add(kit, name="In the file")
    expect(kit.locator(".entry")).to_have_count(1)
    kit.evaluate(LOGGED)
    saved = exported(kit).replace(b"Shed mix", b"In the file").replace(b"Seam", b"Other seam")
    kit.locator(".entry").get_by_role("button", name="Change").click()
    kit.locator("[name='system.name']").fill("Mine")
    kit.get_by_role("button", name="Save", exact=True).click()
    expect(kit.locator(".entry-name")).to_have_text(["Mine"])
    choose(kit, saved)
    kit.evaluate(FAILING, "log")
    kit.get_by_role("button", name="Replace all").click()
    expect(kit.locator("[data-notice=store]")).to_contain_text("cannot save")
    expect(kit.locator("[data-notice=import]")).to_have_count(0)
    expect(kit.locator("[data-preview]")).to_be_visible()  # to be tried again
    kit.locator("[data-notice=store]").get_by_role("button", name="Close").click()
    assert names(kit) == ["Mine"]


def test_a_store_that_cannot_be_read_makes_no_file_and_takes_none_in(kit):
    """An empty file would pass for a copy."""
    add(kit)
    saved = exported(kit)
    kit.add_init_script("indexedDB.open = () => { throw new DOMException('no', 'SecurityError'); };")
    kit.reload()
    copies(kit)
    told = kit.locator("[data-notice=store]")
    expect(told).to_contain_text("cannot save")
    made = []
    kit.on("download", lambda file: made.append(file.suggested_filename))
    kit.locator("[data-export]").click()
    expect(told).to_contain_text("could not be read. Nothing was saved")
    told.get_by_role("button", name="Close").click()
    kit.get_by_label("Bring back from a file").set_input_files({"name": "c.json", "mimeType": "", "buffer": saved})
    expect(told).to_contain_text("could not be read. Nothing was saved")
    expect(kit.locator("[data-preview]")).to_be_hidden()
    expect(kit.locator("[data-imports]")).to_be_hidden()
    assert made == []


def test_a_file_is_looked_at_and_brought_back_where_nothing_answers(kit):
    """Its pot has the name that was typed, and is not taken for one that is over."""
    kit.evaluate(RUNS, ["Bow", 90_000])
    add(kit)
    saved = exported(kit)
    kit.evaluate("""async () => {
      const { read, remove } = await part("store/store.js");
      for (const store of ["kit", "pots"]) for (const { id } of await read(store)) await remove(store, id);
    }""")
    expect(kit.locator(".entry")).to_have_count(0)
    unanswered(kit)
    choose(kit, saved)
    for way in ("add", "replace"):
        expect(kit.locator(f"[data-preview-{way}]")).to_contain_text("Added: 1 kit item (Shed mix)")
        expect(kit.locator(f"[data-preview-{way}]")).to_contain_text("Added: 1 running pot (90 g, Bow, started")
    kit.get_by_role("button", name="Add to mine").click()
    expect(kit.locator(".entry")).to_contain_text("Shed mix")
    assert places(kit) == ["Bow"]


def test_putty_batches_of_a_file_are_named_by_their_filler(kit):
    """A built-in one by its words, as its pick has them, one's own by its name."""
    silica = kit.locator("[data-pick=filler] option[value]:not([value=''])").first
    key, label = silica.get_attribute("value"), silica.text_content().strip()
    assert key != label
    row = {"kind": "putty", "when": 1, "mixed": "100 g", "before": "200 g", "after": "180 g", "came_out": "right"}
    file = {"format": "covemix", "schema": 2, "log": [
        {**row, "id": 1, "filler": key}, {**row, "id": 2, "filler": "Own dust"}]}
    choose(kit, json.dumps(file).encode())
    expect(kit.locator("[data-preview-add]")).to_contain_text(f"Added: 2 log entries ({label}; Own dust)")


LAID = """async () => {
  const { put } = await part("store/store.js");
  const { logBatch } = await part("kit/log.js");
  await put("kit", { record: "people", typed: { name: "Two of us", hands: "2" }, made: 1 });
  await logBatch({ typed: { what: "Keel", crew: "Two of us", laid: "5.00 m", roll: "10 min" } });
}"""


def test_people_with_batches_in_the_log_stand_in_the_kit_also_where_nothing_answers(kit):
    kit.evaluate(LAID)
    mine = shelf(kit, "People").locator(".entry")
    expect(mine).to_have_count(1)
    grow_old(kit)
    kit.reload()
    expect(mine).to_contain_text("Two of us")
    expect(mine).to_contain_text("could not be calculated")
    expect(mine.get_by_role("button", name="Use my rates")).to_have_count(0)


def test_the_page_for_programs_is_opened_once_it_can_be_had(kit):
    """The signal is gone, a server says no, and then it answers."""
    link, address, told = kit.get_by_role("link", name="Use from a program"), "**/reference/", kit.locator(
        "[data-notice=unfetched]")
    for answer in (lambda route: route.abort(), lambda route: route.fulfill(status=503, body="busy")):
        kit.route(address, answer)
        link.click()
        expect(told).to_contain_text("Try again with a connection")
        expect(kit.get_by_role("heading", level=1)).to_have_text("Kit")
        told.get_by_role("button", name="Close").click()
        kit.unroute(address)
    link.click()
    expect(kit.get_by_role("heading", level=1)).to_contain_text("the API")


# no more than a few letters can be kept beside the store
FULL = """() => {
  for (const place of [localStorage, sessionStorage]) {
    let more = "x".repeat(1 << 20);
    for (let count = 0; more; count += 1) {
      try { place.setItem(`filler.${count}`, more); } catch { more = more.slice(0, more.length >> 1); }
    }
  }
}"""


def test_a_list_stands_there_where_its_room_cannot_be_kept(phone, standing):
    phone.goto(standing.url + "/manifest.webmanifest")
    phone.evaluate(FULL)
    phone.goto(standing.url + "/kit/")
    expect(phone.locator("[data-listing][data-read]")).to_be_visible()
    add(phone)
    expect(shelf(phone, "Resin system").locator(".entry")).to_contain_text("Parts by weight: 100:40")
    assert phone.evaluate("localStorage['covemix.told.lists.kit']") is None


def test_own_rates_that_cannot_be_written_down_are_not_said_to_be(kit):
    kit.evaluate(LAID)
    mine = shelf(kit, "People").locator(".entry")
    kit.evaluate(FAILING, "kit")
    mine.get_by_role("button", name="Use my rates").click()
    expect(kit.locator("[data-notice=store]")).to_contain_text("cannot save")
    expect(kit.locator("[data-notice=kit]")).to_have_count(0)
    kit.reload()
    expect(mine.get_by_role("button", name="Use my rates")).to_be_visible()


MANY = """async (count) => {
  const { put } = await part("store/store.js");
  for (let place = 1; place <= count; place += 1) {
    await put("log", { kind: "poured", when: Date.UTC(2026, 5, 1) + place * 60_000, pairs: [],
      typed: { what: `Batch no. ${place}` } });
  }
}"""


def test_a_log_of_more_batches_than_one_question_takes_is_one_table(phone, standing):
    """One heading, and each batch once, newest first."""
    phone.goto(standing.url + "/safety/")
    phone.evaluate(MANY, 205)
    phone.goto(standing.url + "/log/")
    expect(phone.locator(".entry").first).to_contain_text("Batch no. 205")
    with phone.expect_download() as got:
        phone.get_by_role("button", name="Save as a table").click()
    rows = list(csv.reader(io.StringIO(got.value.path().read_text(encoding="utf-8-sig"))))
    place = rows[0].index("What was poured")
    assert [row[place] for row in rows[1:]] == [f"Batch no. {count}" for count in range(205, 0, -1)]


def test_what_cannot_be_kept_as_it_is_typed_stays_typed_and_is_asked_for_at_its_field(phone, standing):
    """A system without a name: none is in the kit, and what was typed is not lost."""
    phone.goto(standing.url)
    expect(phone.locator("[data-form].live")).to_be_attached()
    phone.get_by_text("Resin system: figures").click()
    phone.locator("[name='system.by_weight']").fill("100:44")
    phone.get_by_role("button", name="Save in the kit").first.click()
    asked = phone.locator("[data-error='system.name']")
    expect(asked).to_be_visible()
    expect(phone.locator("[name='system.name']")).to_be_focused()
    expect(phone.locator("[name='system.by_weight']")).to_have_value("100:44")
    expect(phone.locator("[data-notice=kit]")).to_have_count(0)
    phone.keyboard.type("Harbour mix")
    expect(asked).to_have_count(0)
    phone.get_by_role("button", name="Save in the kit").first.click()
    expect(phone.get_by_role("combobox", name="Resin system", exact=True).locator("option:checked")).to_have_text(
        "Harbour mix")


def test_what_was_kept_on_one_screen_and_is_undone_on_another_is_chosen_nowhere(phone, standing):
    phone.goto(standing.url)
    expect(phone.locator("[data-form].live")).to_be_attached()
    phone.get_by_text("Resin system: figures").click()
    for name, text in (("name", "Harbour mix"), ("by_weight", "100:44")):
        phone.locator(f"[name='system.{name}']").fill(text)
    phone.get_by_role("button", name="Save in the kit").first.click()
    phone.get_by_role("link", name="Kit", exact=True).click()
    mine = shelf(phone, "Resin system").locator(".entry")
    expect(mine).to_have_count(1)
    phone.locator("[data-notice=kit]").get_by_role("button", name="Undo").click()
    expect(mine).to_have_count(0)
    phone.get_by_role("link", name="Clock", exact=True).click()
    expect(phone.locator("[data-form].live [data-pick=system]")).to_have_value("3-1")


def test_a_copy_is_undone_also_where_nothing_can_be_read_at_that_time(kit):
    add(kit)
    mine = shelf(kit, "Resin system").locator(".entry")
    expect(mine).to_have_count(1)
    kit.evaluate("""() => {
      IDBObjectStore.prototype.getAll = () => { throw new DOMException("no", "UnknownError"); };
    }""")
    mine.get_by_role("button", name="Copy").click()
    kit.locator("[data-notice=store]").get_by_role("button", name="Close").click()
    kit.locator("[data-notice=kit]").get_by_role("button", name="Undo").click()
    expect(kit.locator("[data-notice=kit]")).to_have_count(0)
    kit.reload()
    expect(mine.locator(".entry-name")).to_have_text(["Shed mix"])


def test_the_page_for_programs_is_read_also_on_a_phone_that_has_no_room_for_it(phone, served):
    keep(phone, served.url)
    phone.goto(served.url + "/kit/")
    expect(phone.locator("[data-listing][data-read]")).to_be_visible()
    phone.evaluate("""() => {
      Cache.prototype.put = async () => { throw new DOMException("no", "QuotaExceededError"); };
    }""")
    phone.get_by_role("link", name="Use from a program").click()
    expect(phone.get_by_role("heading", level=1)).to_contain_text("the API")


def test_what_is_wrong_with_a_figure_that_no_field_shows_is_said_all_the_same(phone, standing):
    """A batch of the log has figures that nobody types; one that came in by a file may be out of bounds."""
    phone.goto(standing.url + "/log/")
    phone.evaluate("""async () => (await part("kit/log.js")).logBatch({ typed: { what: "Seam", used: "4000 min" } })""")
    phone.get_by_role("button", name="Change").click()
    expect(phone.locator("[data-status]")).to_contain_text("type 0 to 2880 min")
    expect(phone.get_by_label("What was poured")).to_have_value("Seam")
    expect(phone.locator("[data-error]")).to_have_count(0)


def test_the_page_for_programs_opens_on_a_full_phone_that_keeps_the_app(phone, served):
    keep(phone, served.url)
    phone.goto(served.url + "/kit/")
    expect(phone.locator("[data-listing][data-read]")).to_be_visible()
    tools = phone.context.new_cdp_session(phone)
    tools.send("Storage.overrideQuotaForOrigin", {"origin": served.url, "quotaSize": 1})
    phone.get_by_role("link", name="Use from a program").click()
    expect(phone.get_by_role("heading", level=1)).to_contain_text("the API")
