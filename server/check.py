"""`covemix check URL`: whether a host serves the app rightly, as a phone would find it, and what to change there."""
import datetime
import ipaddress
import re
import socket
import ssl
from collections.abc import Iterator
from dataclasses import dataclass, field
from typing import Any
from urllib.parse import urljoin, urlsplit

import httpx
from covemix.shared.words.languages import LANGUAGES

from .build import sum_of, told_to
from .language import worker_name
from .pages import PAGES
from .version import VERSION

SCRIPT_TYPES = ("text/javascript", "application/javascript", "application/x-javascript", "application/ecmascript",
                "text/ecmascript")  # of those that a browser runs (WHATWG MIME Sniffing, 4.6), what hosts really send
SOON = 14  # days: an authority that renews by itself has done so by then
LATE = 600  # seconds that a page may be kept: so much later an update comes
TRIES = 3  # of the service worker, each by a connection of its own
NOWHERE = "covemix-check-nothing-is-here"
DAY = 86_400  # seconds
LARGE = 10_000  # bytes of a text that is worth packing
FOREVER = "Files below v/ never change. Send them with: Cache-Control: public, max-age=31536000, immutable"
GUIDE = "docs/HOSTS.md"
KNOWN = ("nginx", "Apache", "Caddy")  # hosts that the guide has a snippet for
MOST = 5  # files that are named; of the others, how many


@dataclass
class Found:
    """What was found: what is right, what must be changed, what would be better."""

    right: list[str] = field(default_factory=list)
    wrong: list[str] = field(default_factory=list)
    better: list[str] = field(default_factory=list)
    host: str = ""  # what the host says that it is

    def lines(self) -> list[str]:
        """What stands on the terminal."""
        known = next((name for name in KNOWN if name.lower() in self.host.lower()), "")
        end = ("All is well: phones keep the app from here." if not self.wrong
               else f"{len(self.wrong)} to change before phones can keep the app from here.")
        help_ = [f"{GUIDE} has tested settings for {known or 'nginx, Apache and Caddy'}."] if (
            self.wrong or self.better) else []
        return [*(f"ok      {one}" for one in self.right), *(f"better  {one}" for one in self.better),
                *(f"WRONG   {one}" for one in self.wrong), end, *help_]


class Stop(Exception):
    """Nothing further can be looked at."""


def check(address: str, client: httpx.Client | None = None) -> Found:
    """Look at a host. client: where one is given, the host is reached by that alone, and its certificate not asked."""
    found = Found()
    own = client or httpx.Client(timeout=30, headers={"User-Agent": f"covemix-check/{VERSION}"})
    try:
        _Look(own, found, reach=client is None).look(address)
    except Stop:
        pass
    except httpx.HTTPError as error:
        found.wrong.append(_unreached(error))
    finally:
        if client is None:
            own.close()
    return found


def _unreached(error: httpx.HTTPError) -> str:
    told = str(error)
    if "CERTIFICATE_VERIFY_FAILED" in told:
        why = told.rpartition("certificate verify failed: ")[2].partition(" (")[0]
        return f"The certificate is not trusted: {why}. Change it for one that phones trust, with its whole chain."
    return f"The host does not answer: {told or type(error).__name__}. Look whether it runs and the address is right."


class _Look:
    """One look at one host."""

    def __init__(self, client: httpx.Client, found: Found, reach: bool):
        self.client, self.found, self.reach = client, found, reach
        self.root = ""

    def look(self, address: str) -> None:
        page = self.open(address)
        self.secure()
        builds = self.workers()
        self.pages(page, builds)
        self.named_by(page)
        self.manifest()
        self.nothing()
        self.headers(page)
        self.recalled()
        self.health(builds)
        if self.reach:
            self.everywhere(next(iter(builds.values())))

    def get(self, path: str, follow: bool = False, **more: Any) -> httpx.Response:
        return self.client.get(urljoin(self.root, path), follow_redirects=follow, **more)

    def right(self, text: str) -> None:
        self.found.right.append(text)

    def wrong(self, text: str) -> None:
        self.found.wrong.append(text)

    def better(self, text: str) -> None:
        self.found.better.append(text)

    def open(self, address: str) -> httpx.Response:
        """The first page, by whatever address it is reached."""
        asked = urlsplit(address)
        bare = asked._replace(query="", fragment="", path=re.sub(r"index\.html$", "", asked.path) or "/").geturl()
        page = self.client.get(bare, follow_redirects=True)
        at = str(page.url)
        self.root = at if at.endswith("/") else at + "/"
        self.found.host = page.headers.get("server", "")
        if page.status_code != 200:
            self.wrong(f"{at} answers {page.status_code}. Let the host answer a folder with the index.html in it.")
            raise Stop
        if "data-build" not in page.text:
            self.wrong(f"{at} is no page of Covemix. Give the address of the folder that the export was put into.")
            raise Stop
        if not at.endswith("/"):
            self.wrong(f"{at} is answered without its slash, and finds no file from there. Let the host redirect it to "
                       f"{self.root}")
        return self.get("")

    def secure(self) -> None:
        """https, and how long its certificate lasts."""
        at = urlsplit(self.root)
        if at.scheme != "https":
            if _is_loopback(at.hostname or ""):
                self.right("This machine's own address needs no https. Every other does.")
            else:
                self.wrong("The address is no https: phones keep nothing from there. Serve it by https.")
            return
        self.right("The address is https.")
        if not self.reach:
            return
        ends = _certificate_ends(at.hostname or "", at.port or 443)
        days = (ends - datetime.datetime.now(datetime.UTC)).days
        (self.right if days >= SOON else self.wrong)(
            f"The certificate lasts {days} more days." + ("" if days >= SOON else " Renew it now, and let that be done "
                                                          "by itself."))

    def workers(self) -> dict[str, dict]:
        """What each language's service worker says of its build; every file of it against its hash."""
        told: dict[str, dict] = {}
        for language in LANGUAGES:
            name = worker_name(language)
            answer = self.get(name)
            if answer.status_code != 200:
                self.wrong(f"{name} answers {answer.status_code}{_to(answer)}. Without it phones do not keep the app: "
                           "upload all files, and redirect none.")
                continue
            if not self.script(name, answer):
                continue
            build = told_to(answer.text)
            if build is None:
                self.wrong(f"{name} is not as it was written. Let the host change no file.")
                continue
            told[language] = build
            allowed = answer.headers.get("service-worker-allowed")
            if allowed and not urlsplit(self.root).path.startswith(urlsplit(urljoin(self.root, allowed)).path):
                self.wrong(f"{name} may not be used for this folder (Service-Worker-Allowed: {allowed}). Leave that "
                           "header out.")
        if not told:
            raise Stop
        self.right(f"The service worker keeps all below {urlsplit(self.root).path}.")
        for language, build in told.items():
            self.files(language, build)
        return told

    def files(self, language: str, build: dict) -> None:
        """Every file of a build."""
        bad, sent, whole = [], 0, 0
        for path, sum_ in build["sums"].items():
            answer = self.get(path)
            why = self.amiss(path, answer, sum_)
            if why:
                bad.append(f"{path.removeprefix(build['base'])}: {why}")
            sent += int(answer.headers.get("content-length", len(answer.content)))
            whole += len(answer.content)
            self.way(path, answer)
        count = len(build["sums"])
        if not bad:
            self.right(f"{count} files of build {build['id']} ({language}) are whole: {sent:,} bytes.")
            return
        more = f" And {len(bad) - MOST} more." if len(bad) > MOST else ""
        self.wrong(f"{len(bad)} of {count} files of build {build['id']} ({language}) are not right: "
                   f"{'; '.join(bad[:MOST])}.{more} Upload the export anew, whole, and let the host change no file.")

    def way(self, path: str, answer: httpx.Response) -> None:
        """How a file crosses the wire; .bin was packed by the build."""
        if (path.endswith((".js", ".css")) and not answer.headers.get("content-encoding")
                and len(answer.content) > LARGE):
            self.better(f"{path} crosses the wire unpacked, {len(answer.content):,} bytes. Let the host send "
                        f"{_kind(answer) or 'it'} in gzip or brotli: that is a third at most.")
        if _age(answer) < DAY and FOREVER not in self.found.better:
            self.better(FOREVER)

    def amiss(self, path: str, answer: httpx.Response, sum_: str) -> str:
        """What is wrong with a file, or ""."""
        kind = _kind(answer)
        if answer.status_code != 200:
            return f"answers {answer.status_code}{_to(answer)}"
        if "html" in kind:
            return "a page comes in its place"
        if sum_of(answer.content) != sum_:
            return "is another file than was written"
        if path.endswith(".js") and kind not in SCRIPT_TYPES:
            return f"comes as {kind or 'nothing'}, and must be text/javascript"
        if path.endswith(".css") and kind != "text/css":
            return f"comes as {kind or 'nothing'}, and must be text/css"
        return ""

    def script(self, name: str, answer: httpx.Response) -> bool:
        """Whether a browser runs it as a script."""
        kind = _kind(answer)
        if kind in SCRIPT_TYPES:
            return True
        self.wrong(f"{name} comes as {kind or 'no type'}. Browsers run no script of that type: let the host send .js "
                   "as text/javascript.")
        return False

    def pages(self, first: httpx.Response, builds: dict[str, dict]) -> None:
        """Every page: there, of this build, and led to from its address without the slash."""
        ids = {build["id"] for build in builds.values()}
        amiss, unled = [], []
        for _, path, _ in PAGES:
            page = self.get(path) if path else first
            own = re.search(r'data-build="(\w+)"', page.text)
            if page.status_code != 200 or "html" not in _kind(page):
                amiss.append(f"{path or '/'} answers {page.status_code} as {_kind(page) or 'no type'}")
            elif not own or own[1] not in ids:
                amiss.append(f"{path or '/'} is of another build ({own[1] if own else 'none'})")
            if not path:
                continue
            led = self.get(path.rstrip("/") + "?amount=1")
            to = urlsplit(urljoin(str(led.url), led.headers.get("location", "")))
            if not led.is_redirect or urljoin(self.root, path) != to._replace(query="").geturl():
                unled.append(f"{path.rstrip('/')} ({led.status_code}{_to(led)})")
        if amiss:
            self.wrong(f"Pages that are not right: {'; '.join(amiss)}. Upload the export anew, whole; a cache before "
                       "the host may hold older ones.")
        else:
            self.right(f"{len(PAGES)} pages are there, of the same build.")
        if unled:
            self.wrong(f"Without its slash an address does not lead to its page: {'; '.join(unled)}. Let the host "
                       "redirect a folder to its address with the slash.")
        else:
            self.right("Addresses without their slash lead to their pages.")

    def named_by(self, page: httpx.Response) -> None:
        """What the first page names."""
        named = sorted(set(re.findall(r'(?:src|href)="([^"#?]+\.(?:js|css|svg|png))"', page.text)))
        missing = []
        for path in named:
            answer = self.get(path)
            if answer.status_code != 200 or (path.endswith(".js") and _kind(answer) not in SCRIPT_TYPES):
                missing.append(f"{path} ({answer.status_code}, {_kind(answer) or 'no type'})")
        if missing:
            self.wrong(f"The first page names files that do not come as they must: {'; '.join(missing[:MOST])}.")

    def manifest(self) -> None:
        """What puts it on the home screen."""
        answer = self.get("manifest.webmanifest")
        try:
            icons = [icon["src"] for icon in answer.json()["icons"]]
        except (ValueError, KeyError, TypeError):
            self.wrong(f"manifest.webmanifest answers {answer.status_code} and cannot be read. Without it nobody can "
                       "put the app on the home screen: upload it anew.")
            return
        gone = [path for path in icons if self.get(path).status_code != 200]
        if gone:
            self.wrong(f"Icons are missing: {', '.join(gone)}. Upload them anew.")
        else:
            self.right("It can be put on the home screen.")
        if _kind(answer) not in ("application/manifest+json", "application/json"):
            self.better(f"manifest.webmanifest comes as {_kind(answer) or 'no type'}. Let the host send .webmanifest "
                        "as application/manifest+json.")

    def nothing(self) -> None:
        """What comes where nothing is."""
        answer = self.get(NOWHERE)
        if answer.status_code == 200:
            self.wrong("Where nothing is, the host answers 200 with a page: a phone could take that for a file. Let it "
                       "answer 404.")
        else:
            self.right(f"Where nothing is, the host says so ({answer.status_code}).")

    def headers(self, page: httpx.Response) -> None:
        """What protects a reader, and how late an update comes."""
        policy = page.headers.get("content-security-policy", "")
        if "script-src" not in policy and 'http-equiv="Content-Security-Policy"' not in page.text:
            self.wrong("No page carries a Content-Security-Policy. Let the host change no page.")
        if "frame-ancestors" not in policy:
            self.better("Another site can put the app into a frame. Send the header: Content-Security-Policy: "
                        "frame-ancestors 'none'")
        if page.headers.get("x-content-type-options", "").lower() != "nosniff":
            self.better("Send the header: X-Content-Type-Options: nosniff")
        for name in ("", "sw.js"):
            age = _age(self.get(name))
            if age > LATE:
                self.better(f"{name or 'The first page'} may be kept for {age:,} seconds: so much later an update "
                            "comes. Send it with: Cache-Control: no-cache")

    def recalled(self) -> None:
        """What tells a phone that its build said something wrong."""
        try:
            self.get("recalled.json").json()
            self.right("Phones can ask which builds were recalled.")
        except ValueError:
            self.wrong("recalled.json is missing or changed: a phone would not learn that its build is wrong. Upload "
                       "it anew.")

    def health(self, builds: dict[str, dict]) -> None:
        """Where `covemix serve` answers: the same build too."""
        answer = self.get("health")
        if answer.status_code != 200 or _kind(answer) != "application/json":
            return
        build = answer.json().get("build")
        if build in {one["id"] for one in builds.values()}:
            self.right(f"covemix serve answers here, version {answer.json().get('version')}.")
        else:
            self.wrong(f"The server says that it is build {build}, and sends another one. Start all of its processes "
                       "from the same version.")

    def everywhere(self, build: dict) -> None:
        """The same build at each address of the host, and at each try."""
        at = urlsplit(self.root)
        seen: dict[str, list[str]] = {}
        for place, answer in _asked_everywhere(at.scheme, at.hostname or "", at.port, urljoin(self.root, "sw.js")):
            seen.setdefault((told_to(answer.text) or {}).get("id", "none"), []).append(place)
        if set(seen) - {build["id"]}:
            told = "; ".join(f"build {one} at {', '.join(sorted(set(places)))}" for one, places in seen.items())
            self.wrong(f"Not the same build everywhere: {told}. Bring all machines and caches to one build.")
        else:
            places = {place for those in seen.values() for place in those}
            self.right(f"The same build at {len(places)} of its addresses, {TRIES} times each.")


def _asked_everywhere(scheme: str, host: str, port: int | None, url: str) -> Iterator[tuple[str, httpx.Response]]:
    """(address, the answer) of each try at each address of a host; an address that this machine cannot reach is none.
    """
    places = {str(info[4][0]) for info in socket.getaddrinfo(host, port or scheme, type=socket.SOCK_STREAM)}
    for place in sorted(places):
        inside = f"[{place}]" if ":" in place else place
        there = urlsplit(url)._replace(netloc=inside + (f":{port}" if port else "")).geturl()
        for _ in range(TRIES):
            try:
                with httpx.Client(timeout=30) as fresh:
                    yield place, fresh.get(there, headers={"Host": urlsplit(url).netloc},
                                           extensions={"sni_hostname": host})
            except httpx.TransportError:
                break


def _certificate_ends(host: str, port: int) -> datetime.datetime:
    with (socket.create_connection((host, port), timeout=30) as line,
          ssl.create_default_context().wrap_socket(line, server_hostname=host) as safe):
        told = safe.getpeercert() or {}
    return datetime.datetime.fromtimestamp(ssl.cert_time_to_seconds(str(told["notAfter"])), datetime.UTC)


def _is_loopback(host: str) -> bool:
    """
    >>> _is_loopback("localhost"), _is_loopback("127.0.0.1"), _is_loopback("192.168.1.20"), _is_loopback("shop.local")
    (True, True, False, False)
    """
    try:
        return ipaddress.ip_address(host).is_loopback
    except ValueError:
        return host == "localhost" or host.endswith(".localhost")


def _kind(answer: httpx.Response) -> str:
    return answer.headers.get("content-type", "").partition(";")[0].strip().lower()


def _age(answer: httpx.Response) -> int:
    """For how many seconds an answer may be kept without asking.

    >>> _age(httpx.Response(200, headers={"cache-control": "public, max-age=600"})), _age(httpx.Response(200))
    (600, 0)
    """
    rule = answer.headers.get("cache-control", "")
    found = re.search(r"max-age=(\d+)", rule)
    return int(found[1]) if found and "no-cache" not in rule and "no-store" not in rule else 0


def _to(answer: httpx.Response) -> str:
    return f" to {answer.headers['location']}" if answer.headers.get("location") else ""
