"""From this laptop to that phone: https in a network of its own, with an authority that is really trusted."""
import json
import shlex
import shutil
import subprocess
import sys
from pathlib import Path

import pytest
from hosts import environment, program

from . import lan_phone

# the phone's network, the shop's router and somebody outside: all answered by this machine
NETWORK = " && ".join((
    "ip link set lo up",
    "(ip link add shop type bridge || ip link add shop type dummy || ip tuntap add shop mode tap) 2>/dev/null",
    *(f"ip addr add {one}/24 dev shop" for one in (lan_phone.ADDRESS, lan_phone.ROUTER, lan_phone.OUTSIDE)),
    "ip link set shop up", f"ip route add default dev shop src {lan_phone.ADDRESS}"))
APART = ("unshare", "--map-root-user", "--net", "sh", "-c")


@pytest.fixture(scope="module")
def seen(tmp_path_factory):
    """What a phone saw, from the QR code on."""
    certutil = program("certutil")
    if not shutil.which("unshare") or not shutil.which("ip"):
        pytest.skip("there is no unshare or no ip here to make a network with")
    if subprocess.run([*APART, NETWORK], capture_output=True).returncode:
        pytest.skip("no network of one's own may be made here")
    phone = [sys.executable, str(Path(lan_phone.__file__)), str(tmp_path_factory.mktemp("lan")), certutil]
    done = subprocess.run([*APART, f"{NETWORK} && exec {shlex.join(phone)}"], env=environment(), text=True,
                          stdout=subprocess.PIPE, timeout=600)
    assert done.returncode == 0
    return json.loads(done.stdout.splitlines()[-1])


def test_the_code_leads_to_a_page_that_brings_the_certificate_of_the_terminal(seen):
    assert seen["page"] == f"http://{lan_phone.ADDRESS}:{lan_phone.PORT + 1}/"
    assert seen["one fingerprint on file, page and terminal"] and seen["finds the name"]
    assert seen["untrusted"] == "ERR_CERT_AUTHORITY_INVALID"


@pytest.mark.parametrize("host", ["name", "address"])
def test_a_phone_that_trusts_it_keeps_the_app_and_needs_no_server(seen, host):
    assert seen[f"{host}: secure"] and seen[f"{host}: kept"]
    assert seen[f"{host}: server gone, another screen, reloaded"] and seen[f"{host}: what it kept is there"]


def test_only_under_an_address_that_may_change_kit_says_so_beside_the_copy(seen):
    assert seen["address: told that the address may change"] and not seen["name: told that the address may change"]


def test_a_renewed_leaf_needs_nothing_done_on_the_phone(seen):
    assert seen["same authority"] and seen["another leaf"]
    assert seen["renewed: over the wire"] == 200 and seen["renewed: updates"]


@pytest.mark.parametrize("who", ["a public name", "a public name beside its own", "a public address",
                                 "a router of another network"])
def test_who_has_the_key_can_pose_as_nobody_else(seen, who):
    assert seen["the same server for its own name"] == "opened"
    assert seen[f"refused: {who}"] == "ERR_CERT_INVALID"


@pytest.mark.parametrize(("when", "why"), [("over", "ERR_CERT_DATE_INVALID"),
                                           ("another authority", "ERR_CERT_AUTHORITY_INVALID")])
def test_what_the_phone_keeps_opens_whatever_becomes_of_the_certificate(seen, when, why):
    assert seen[f"{when}: the wire"] == why and seen[f"{when}: the kept app"] == "opened"
