"""Programs of Debian's packages that tests drive, unpacked by `.ci/hosts` or installed: none is started by itself."""
import contextlib
import functools
import os
import re
import shutil
import socket
import subprocess
import sys
import tempfile
from pathlib import Path

import pytest
from covemix.server.build import HOUSE
from covemix.server.command import main
from waits import LONG, STEP

ROOM = Path(__file__).parents[1] / ".venv" / "hosts"


def program(name: str) -> str:
    """Where a program lies; without it the test is skipped."""
    for folder in ("usr/sbin", "usr/bin", "bin"):
        if (ROOM / folder / name).is_file():
            return str(ROOM / folder / name)
    found = shutil.which(name) or shutil.which(name, path="/usr/sbin:/sbin")
    return found or pytest.skip(f"{name} cannot be had here: run .ci/hosts")


def environment(**more) -> dict[str, str]:
    """With the libraries that came with it."""
    libraries = [str(path) for path in sorted((ROOM / "usr" / "lib").glob("*-linux-gnu*"))]
    return {**os.environ, "LD_LIBRARY_PATH": ":".join(libraries), **more}


@functools.cache
def exported(compress: bool = False):
    """An export in the folder covemix/ of a root that any server's user may read, made once for this process.
    """
    room = tempfile.TemporaryDirectory()
    os.chmod(room.name, 0o755)
    main(["export", f"{room.name}/covemix", *(["--compress"] if compress else [])])
    return room


def _etc(name: str) -> Path:
    """Where a package keeps what it is set to."""
    own = ROOM / "etc" / name
    return own if own.is_dir() else Path("/etc") / name


def nginx(port: int, root: str, own: Path, snippet: str = ""):
    """Debian's own configuration; only port, root and places of its own files are others."""
    binary = program("nginx")
    site = snippet.replace("listen 80", f"listen 127.0.0.1:{port}") or (
        f"server {{ listen 127.0.0.1:{port} default_server; root {root}; index index.html; server_name _; "
        "location / { try_files $uri $uri/ =404; } }")
    kept = "".join(f"{name}_temp_path {own}/{name};" for name in ("client_body", "proxy", "fastcgi", "uwsgi", "scgi"))
    etc = _etc("nginx")
    text = (etc / "nginx.conf").read_text()
    text = text.replace("include /etc/nginx/sites-enabled/*;", f"{kept}\n{site}")
    text = text.replace("/run/nginx.pid", f"{own}/pid")
    text = text.replace("/etc/nginx/", f"{etc}/").replace("/var/log/nginx/", f"{own}/")
    (own / "nginx.conf").write_text(text)
    return [binary, "-e", f"{own}/error.log", "-c", f"{own}/nginx.conf", "-g", "daemon off;"], {}


# what Debian switches on when it installs Apache
MODULES = ("mpm_event", "authz_core", "authz_host", "authn_core", "alias", "dir", "autoindex", "env", "mime",
           "negotiation", "setenvif", "filter", "deflate", "status", "reqtimeout")


def apache2(port: int, root: str, own: Path, snippet: str = ""):
    binary, etc = program("apache2"), _etc("apache2")
    loaded = "\n".join((etc / "mods-available" / f"{name}.{part}").read_text()
                       for name in (*MODULES, *(["headers"] if snippet else [])) for part in ("load", "conf")
                       if (etc / "mods-available" / f"{name}.{part}").is_file())
    site = (f"<VirtualHost *:{port}>\nDocumentRoot {root}\n{snippet}\n</VirtualHost>\n<Directory {root}>\n"
            "Options Indexes FollowSymLinks\nAllowOverride None\nRequire all granted\n</Directory>\n")
    text = (etc / "apache2.conf").read_text()
    text = text.replace("Include ports.conf", f"Listen 127.0.0.1:{port}\nServerName localhost")
    text = text.replace("IncludeOptional mods-enabled/*.load", loaded)
    text = text.replace("IncludeOptional sites-enabled/*.conf", site)
    text = re.sub(r"^Include.*", "", text, flags=re.M)
    for place in ("/usr/lib/apache2", "/etc/mime.types"):
        if (ROOM / place[1:]).exists():
            text = text.replace(place, f"{ROOM}{place}")
    text = text.replace('ServerRoot "/etc/apache2"', f'ServerRoot "{etc}"')
    (own / "apache2.conf").write_text(text)
    places = dict.fromkeys(("APACHE_RUN_DIR", "APACHE_LOCK_DIR", "APACHE_LOG_DIR"), str(own))
    return [binary, "-f", f"{own}/apache2.conf", "-DFOREGROUND"], {
        **places, "APACHE_PID_FILE": f"{own}/pid", "APACHE_RUN_USER": "www-data", "APACHE_RUN_GROUP": "www-data"}


def caddy(port: int, root: str, own: Path, snippet: str = ""):
    binary, homes = program("caddy"), {"HOME": str(own), "XDG_DATA_HOME": str(own), "XDG_CONFIG_HOME": str(own)}
    if not snippet:
        return [binary, "file-server", "--root", root, "--listen", f"127.0.0.1:{port}"], homes
    (own / "Caddyfile").write_text("{\n\tadmin off\n\tauto_https off\n}\n"
                                   + snippet.replace("\nexample.org {", f"\nhttp://localhost:{port} {{"))
    return [binary, "run", "--config", f"{own}/Caddyfile", "--adapter", "caddyfile"], homes


def busybox(port: int, root: str, own: Path, snippet: str = ""):
    return [program("busybox"), "httpd", "-f", "-p", f"127.0.0.1:{port}", "-h", root], {}


def python(port: int, root: str, own: Path, snippet: str = ""):
    return [sys.executable, "-m", "http.server", str(port), "--bind", "127.0.0.1", "--directory", root], {}


STOCK = (nginx, apache2, caddy, busybox, python)
SNIPPETS = {nginx: "nginx.conf", apache2: "apache.conf", caddy: "Caddyfile"}


class Host:
    """A stock server of an export, in the folder covemix/; with a snippet, as docs/hosts/ sets it."""

    def __init__(self, kind, snippet: bool = False):
        self.room = exported(compress=snippet)
        self.own = tempfile.TemporaryDirectory()
        os.chmod(self.own.name, 0o755)
        with socket.socket() as free:
            free.bind(("127.0.0.1", 0))
            self.port = free.getsockname()[1]
        text = (HOUSE / "docs" / "hosts" / SNIPPETS[kind]).read_text() if snippet else ""
        text = text.replace("/srv", self.room.name)
        try:
            command, more = kind(self.port, self.room.name, Path(self.own.name), text)
        except BaseException:  # skipped
            self.own.cleanup()
            raise
        self.url = f"http://localhost:{self.port}/covemix/"
        with open(f"{self.own.name}/said", "w") as said:
            self.running = subprocess.Popen(command, env=environment(**more), stdout=said, stderr=said)
        for _ in range(int(LONG / STEP)):
            assert self.running.poll() is None, Path(said.name).read_text()
            with socket.socket() as line:
                if line.connect_ex(("127.0.0.1", self.port)) == 0:
                    return
            with contextlib.suppress(subprocess.TimeoutExpired):
                self.running.wait(STEP)
        told = Path(said.name).read_text()
        self.stop()
        raise AssertionError(f"{command[0]} does not listen within {LONG} s: {told}")

    def stop(self):
        """It is gone; a second time does nothing."""
        if self.running.poll() is None:
            self.running.terminate()
        try:
            self.running.wait(LONG)
        except subprocess.TimeoutExpired:
            self.running.kill()
            self.running.wait(LONG)
        self.own.cleanup()
