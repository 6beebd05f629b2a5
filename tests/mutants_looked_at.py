"""Changes that no test saw, looked at one by one (`make mutants`): how a change is named -> what it is.

"same: why" where the program does the same with it, so that no test could see it; else why no test asks for it.
"""
LOOKED_AT = {
    "shared/equations/integrate.py: if t < 100: -> if t < 99:":
        "same: a guard for a step that runs away downward; no pot is colder than 173 K",
    "shared/equations/grouping.py: before[place] = batches + 1 -> before[place] = batches / 1":
        "same: a bound of the search that is looser by one batch; the search takes longer and ends at the same plan",
    'webui/sw.js: [] -> ["Stryker was here"]':
        "same: a text in the place of a pair; its first letter is no name that is asked for",
    "webui/sw.js: { ignoreSearch: true } -> {}": "same: the address of a page is asked without its search",
    "webui/sw.js: { once: true } -> {}": "same: a promise that is kept twice",
    'webui/sw.js: url.pathname.replace(/index\\.html$/, "").replace(/([^/])$/, "$1/").slice(scope.pathname.length) -> '
    'url.pathname.replace(/index\\.html$/, "").replace(/([^/])$/, "$1/")':
        "same: an address from the root of the host is the same address",
    'webui/sw.js: "error" -> ""':
        "nearly the same: where the database refuses, the answer comes by the two seconds' wait instead of at once",
}
