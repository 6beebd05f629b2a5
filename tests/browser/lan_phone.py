"""A phone in a shop's network, from the QR code on: run by `test_lan.py` in a network of its own, where no address is a
loopback. It says what it saw, as JSON.

The authority is really trusted: what the page hands out goes into the browser's own store of certificates, and no error
is ignored.
"""
import argparse
import hashlib
import json
import os
import re
import shutil
import subprocess
import sys
import time
from contextlib import contextmanager
from pathlib import Path

from covemix.server import authority
from covemix.server.lan import names
from playwright.sync_api import Error, sync_playwright

NAME, ADDRESS, ROUTER, OUTSIDE, PUBLIC = "shop.local", "192.168.77.10", "192.168.1.1", "198.51.100.7", "shop.example"
PORT = 8443
CHROMIUM = shutil.which("chromium-headless-shell") or shutil.which("chromium")
FLAGS = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
         f"--host-resolver-rules=MAP {NAME} {ADDRESS},MAP {PUBLIC} {ADDRESS}"]
KEPT = """navigator.serviceWorker.ready.then(async (kept) => {
  while (kept.active?.state !== "activated") await new Promise((next) => setTimeout(next, 50));
  return (await caches.keys()).some((name) => name.startsWith("covemix-"));
})"""


class Told(dict):
    """What was seen, said as it is seen: who waits knows where it stands."""

    def __setitem__(self, what, was):
        print(f"{what}: {was}", file=sys.stderr, flush=True)
        super().__setitem__(what, was)


class Shop:
    """The laptop."""

    def __init__(self, folder: Path):
        self.folder = folder
        self.running = None

    def command(self, *more):
        return [sys.executable, "-m", "covemix.server", "serve", "--lan", "--name", NAME, "--port", str(PORT),
                "--authority", self.folder, *more]

    def start(self, *more):
        """What the terminal said until the app was there."""
        self.running = subprocess.Popen(self.command(*more), stdout=subprocess.PIPE, text=True, encoding="utf-8")
        lines = []
        for line in self.running.stdout:
            lines.append(line)
            if line.startswith("Covemix is at"):
                return "".join(lines)
        raise SystemExit("".join(lines))

    def stop(self):
        self.running.terminate()
        self.running.communicate()


@contextmanager
def other_server(folder: Path, names_of_leaf, days=authority.LEAF_DAYS):
    """Somebody who has the folder, and poses as another."""
    authority.Authority(folder).vouch(names_of_leaf, days)
    posing = ("import http.server, ssl, sys; files = http.server.HTTPServer(('', int(sys.argv[1])), "
              "http.server.SimpleHTTPRequestHandler); context = ssl.SSLContext(ssl.PROTOCOL_TLS_SERVER); "
              "context.load_cert_chain(*sys.argv[2:]); files.socket = context.wrap_socket(files.socket, "
              "server_side=True); print('there', flush=True); files.serve_forever()")
    running = subprocess.Popen([sys.executable, "-c", posing, str(PORT), folder / authority.LEAF,
                                folder / authority.LEAF_KEY], stdout=subprocess.PIPE, stderr=subprocess.DEVNULL)
    running.stdout.readline()
    yield
    running.kill()
    running.wait()


def opened(phone, url):
    """What the browser says to an address: "opened", or the name of what it refuses."""
    page = phone.new_page()
    try:
        page.goto(url)
        return "opened"
    except Error as error:
        return (re.search(r"ERR_\w+", str(error)) or [str(error)])[0]
    finally:
        page.close()


def seen(room: Path, certutil: str):
    home, folder = room / "home", room / "authority"
    home.mkdir()
    database = home / ".pki" / "nssdb"
    database.mkdir(parents=True)
    subprocess.run([certutil, "-N", "--empty-password", "-d", f"sql:{database}"], check=True)
    found, shop = Told(), Shop(folder)
    terminal = shop.start()
    bring = re.search(r"open (http://\S+)", terminal)[1]
    found["page"] = bring

    def phone_of(playwright, profile):
        phone = playwright.chromium.launch_persistent_context(
            room / profile, executable_path=CHROMIUM, args=FLAGS, env={**os.environ, "HOME": str(home)},
            viewport={"width": 390, "height": 844}, locale="en-GB", accept_downloads=True)
        phone.set_default_timeout(30_000)
        return phone

    with sync_playwright() as playwright:
        phone = phone_of(playwright, "before")
        page = phone.new_page()
        page.goto(bring)
        said = page.locator("code").inner_text()
        with page.expect_download() as download:
            page.get_by_role("link", name="Download the certificate").first.click()
        brought = room / "brought.crt"
        download.value.save_as(brought)
        sums = {hashlib.sha256(brought.read_bytes()).hexdigest(), said.replace(" ", "").lower(),
                "".join(re.findall(r"^  ((?:[0-9A-F]{2} ?)+)$", terminal, re.M)).replace(" ", "").lower()}
        found["one fingerprint on file, page and terminal"] = len(sums) == 1
        found["finds the name"] = page.evaluate("document.querySelector('img').naturalWidth > 0")
        by_name, by_address = (
            page.get_by_role("link", name=f"https://{host}:{PORT}/", exact=True).get_attribute("href")
            for host in (NAME, ADDRESS))
        found["untrusted"] = opened(phone, by_name)
        phone.close()

        subprocess.run([certutil, "-A", "-d", f"sql:{database}", "-t", "C,,", "-n", "shop", "-i", brought], check=True)
        phone = phone_of(playwright, "phone")
        for host, url in (("name", by_name), ("address", by_address)):
            page = phone.new_page()
            page.goto(url)
            found[f"{host}: secure"] = page.evaluate("isSecureContext")
            found[f"{host}: kept"] = page.evaluate(KEPT)
            page.get_by_role("link", name="Kit", exact=True).click()
            page.evaluate("localStorage['shop.mark'] = location.hostname")
            page.goto(url + "kit/#backup")
            page.get_by_role("button", name="Save kit and log to a file").wait_for()
            found[f"{host}: told that the address may change"] = page.get_by_text("If the router gives").is_visible()
            page.close()
        first = authority.Authority(folder).root.serial_number, (folder / authority.LEAF).read_bytes()
        shop.stop()

        for host, url in (("name", by_name), ("address", by_address)):
            page = phone.new_page()
            page.goto(url + "joint")  # without its slash, too
            page.reload()
            found[f"{host}: server gone, another screen, reloaded"] = page.url == url + "joint/" and page.evaluate(
                "document.styleSheets.length > 0 && [...document.styleSheets].every((one) => one.cssRules.length > 9)")
            found[f"{host}: what it kept is there"] = page.evaluate("localStorage['shop.mark'] === location.hostname")
            page.close()

        terminal = shop.start()
        found["same authority"] = authority.Authority(folder).root.serial_number == first[0]
        found["another leaf"] = (folder / authority.LEAF).read_bytes() != first[1]
        page = phone.new_page()
        page.goto(by_name)
        found["renewed: over the wire"] = page.evaluate(
            "(url) => fetch(url, { cache: 'no-store' }).then(({ status }) => status)", by_name + "health")
        found["renewed: updates"] = page.evaluate(
            "navigator.serviceWorker.ready.then((kept) => kept.update()).then(() => true)")
        page.close()
        shop.stop()

        router, public = f"https://{ROUTER}:{PORT}/x", f"https://{PUBLIC}:{PORT}/x"
        for what, leaf, url in (
            ("a public name", names(PUBLIC, ""), public),
            ("a public name beside its own", names(NAME, "") + names(PUBLIC, ""), public),
            ("a public address", names("", OUTSIDE), f"https://{OUTSIDE}:{PORT}/x"),
            ("a router of another network", names("", ROUTER), router),
        ):
            with other_server(folder, leaf):
                found[f"refused: {what}"] = opened(phone, url)
        with other_server(folder, names(NAME, ADDRESS)):
            found["the same server for its own name"] = opened(phone, by_name + "health")
        with other_server(folder, names(NAME, ADDRESS), days=0):
            time.sleep(2)  # its last second is over
            found["over: the wire"] = opened(phone, by_name + "health")
            found["over: the kept app"] = opened(phone, by_name)
        shop.start("--new-authority")
        found["another authority: the wire"] = opened(phone, by_name + "health")
        found["another authority: the kept app"] = opened(phone, by_name + "kit/")
        shop.stop()
        phone.close()
    return found


if __name__ == "__main__":
    parser = argparse.ArgumentParser()
    parser.add_argument("room", type=Path)
    parser.add_argument("certutil")
    given = parser.parse_args()
    print(json.dumps(seen(given.room, given.certutil)))
