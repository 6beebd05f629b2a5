"""Changes that no test saw, looked at one by one (`make mutants`): how a change is named -> what it is.

"same: why" where the program does the same with it, so that no test could see it; else why no test asks for it.
"""
LOOKED_AT = {
    "shared/clock/cure_lines.py: last, following, every = [number(shown(time / 3600, 0)) for time in (before, after, "
    "most)] -> last, following, every = [number(shown(time / 3599, 0)) for time in (before, after, most)]":
        "hours beside a gap of typed points, told whole: another one only where a point lies at a half hour",
    "shared/equations/integrate.py: if t < 100: -> if t < 99:":
        "same: a guard for a step that runs away downward; no pot is colder than 173 K",
    "shared/equations/integrate.py: if top is not None and (temp >= top or (slope <= 0 and 3 * a > 1)): -> "
    "if top is not None and (temp >= top or (slope <= 0 and 2 * a > 1)):":
        "same: past the peak of a run that asks for the peak alone; it ends some steps later with the same peak",
    "shared/equations/calibrate_heat.py: slope, turn, before = -0.9, 0.0, 0.0 -> slope, turn, before = -0.9, 1.0, 0.0":
        "same: the first step of a secant, which ends within the same tolerance of the same root",
    "shared/equations/grouping.py: before[place] = batches + 1 -> before[place] = batches / 1":
        "same: a bound of the search that is looser by one batch; the search takes longer and ends at the same plan",
    "webui/sw.js: const pairs = (Array.isArray(typed) ? typed : []).filter(Array.isArray); -> "
    'const pairs = (Array.isArray(typed) ? typed : ["Stryker was here"]).filter(Array.isArray);':
        "same: what is no pair is left out behind it",
    "webui/sw.js: return cache.match(at(path), { ignoreSearch: true }); -> return cache.match(at(path), {});":
        "same: the address of a page is asked without its search",
    "webui/sw.js: return cache.match(at(path), { ignoreSearch: true }); -> "
    "return cache.match(at(path), { ignoreSearch: false });":
        "same: the address of a page is asked without its search",
    'webui/sw.js: if (found?.state === "installing") await new Promise((next) => { '
    'found.addEventListener("statechange", next, { once: true }); }); -> if (found?.state === "installing") '
    'await new Promise((next) => { found.addEventListener("statechange", next, {}); });':
        "same: a promise that is kept twice",
    'webui/sw.js: const path = url.pathname.replace(/index\\.html$/, "").replace(/([^/])$/, "$1/")'
    '.slice(scope.pathname.length); -> '
    'const path = url.pathname.replace(/index\\.html$/, "").replace(/([^/])$/, "$1/");':
        "same: an address from the root of the host is the same address",
    'webui/sw.js: got.addEventListener("error", () => resolve(unread)); -> '
    'got.addEventListener("", () => resolve(unread));':
        "the answer comes by the two seconds' wait and not at once: the same answer, later",
    'webui/sw.js: got.addEventListener("error", () => resolve(unread)); -> '
    'got.addEventListener("error", () => undefined);':
        "the answer comes by the two seconds' wait and not at once: the same answer, later",
    "webui/sw.js: const kept = await cache.match(at(path), { ignoreVary: true }); -> "
    "const kept = await cache.match(at(path), { ignoreVary: false });":
        "same: it is asked by its address alone, as it was kept, and not by a request with headers of its own",
    "shared/clock/heat_drawing.py: return note(role, x - 4 if left else x + 4, min(max(y + (12 if y < TOP + 20 else "
    "-4), TOP + 20), base - 4), text, -> return note(role, x - 4 if left else x + 4, min(max(y + (12 if y < TOP / 20 "
    "else -4), TOP + 20), base - 4), text,":
        "a note beside a curve, 16 px higher where the curve runs within 20 px of the top: it stays on its sheet",
    "shared/clock/heat_drawing.py: return note(role, x - 4 if left else x + 4, min(max(y + (12 if y < TOP + 20 else "
    "-4), TOP + 20), base - 4), text, -> return note(role, x - 4 if left else x + 5, min(max(y + (12 if y < TOP + 20 "
    "else -4), TOP + 20), base - 4), text,":
        "a note beside a curve, one pixel further from it",
    "webui/js/form/undo.js: const row = async () => JSON.stringify((await read(store).catch(() => "
    "[])).find((one) => one.id === id)); -> const row = async () => JSON.stringify((await "
    "read(store).catch(() => undefined)).find((one) => one.id === id));":
        "where the store cannot be read just after it was written: the way back stands there either way",
    "webui/js/views/knock.late.js: on = false; -> on = true;":
        "same: its constructor ends what it would have begun",
    "webui/js/kit/boat_rolls.js: let rolls = []; -> let rolls = [\"Stryker was here\"];":
        "before the kit's rolls are read, for a moment, and where they cannot be read",
    "webui/js/kit/reference.late.js: if (navigator.serviceWorker?.controller) { -> if (true) {":
        "where no worker keeps the app, a copy of this page that nothing looks for",
    "webui/js/form/memory.js: && typeof pair[0] === \"string\" && [\"string\", \"number\", "
    "\"boolean\"].includes(typeof pair[1]); -> && typeof pair[0] === \"string\" && [\"string\", \"\", "
    "\"boolean\"].includes(typeof pair[1]);":
        "kept values are texts; a number would be another program's",
    "webui/js/page/to_safety.js: place.scrollIntoView({ block: \"start\" }); -> "
    "place.scrollIntoView({});":
        "same: a browser scrolls to the start where nothing else is said",
    "webui/js/pots/pot.js: const says = () => (unit.textContent && input.value && bare(input) ? "
    "`${input.value} ${unit.textContent}` : input.value); -> const says = () => (true && bare(input)"
    " ? `${input.value} ${unit.textContent}` : input.value);":
        "same: an empty field is no bare number, and a blank behind one is not read",
    "webui/js/views/steps.js: this.doubt = got.lines.filter(({ rank }) => rank === \"warn\" || rank "
    "=== \"ask\").map(({ text }) => text).join(\" \"); -> this.doubt = got.lines.filter(({ rank }) => "
    "rank === \"warn\" || rank === \"\").map(({ text }) => text).join(\" \");":
        "the questions beside a stirring time's doubt; the tests see its warnings",
    "webui/js/engine/picture.js: if (count % SOME === 0) python.sweep(); -> if (false) "
    "python.sweep();":
        "a picture of memory is larger without it, and shows the same",
    "webui/js/views/clock.js: const usable = answer.lines.find((one) => one.name === \"usable\"); -> "
    "const usable = answer.lines.find((one) => true);":
        "the minutes are the first line of that answer wherever it tells them",
}
