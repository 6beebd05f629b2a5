"""The authority of `covemix serve --lan`: whom it can vouch for, who can read its keys, and the page that brings it.

Whether a leaf counts is asked of OpenSSL, by a handshake in memory.
"""
import hashlib
import ipaddress
import os
import plistlib
import re
import ssl
import stat

import pytest
from covemix.server import authority, lan
from covemix.server.bare import STYLE
from covemix.server.bringing import Brought, bringing
from covemix.server.own_network import network_of
from covemix.server.running import Unready
from cryptography import x509
from starlette.testclient import TestClient

NAME, ADDRESS = "shop.local", "192.168.77.10"


@pytest.fixture
def own(tmp_path):
    return authority.made(tmp_path / "own", NAME, [ipaddress.ip_network("192.168.77.0/24")])


def verdict(own, host):
    """What OpenSSL says of the leaf at that host: "" where it counts."""
    server = ssl.SSLContext(ssl.PROTOCOL_TLS_SERVER)
    server.load_cert_chain(own.folder / authority.LEAF, own.folder / authority.LEAF_KEY)
    client = ssl.SSLContext(ssl.PROTOCOL_TLS_CLIENT)
    client.load_verify_locations(cadata=own.der)
    to_client, to_server = ssl.MemoryBIO(), ssl.MemoryBIO()
    ends = [client.wrap_bio(to_client, to_server, server_hostname=host),
            server.wrap_bio(to_server, to_client, server_side=True)]
    for _ in range(6):
        for end in list(ends):
            try:
                end.do_handshake()
                ends.remove(end)
            except ssl.SSLWantReadError:
                pass
            except ssl.SSLCertVerificationError as error:
                return error.verify_message
        if not ends:
            return ""
    raise AssertionError("no handshake")


@pytest.mark.parametrize(("name", "address", "host"), [(NAME, "", NAME), ("", ADDRESS, ADDRESS),
                                                       (NAME, ADDRESS, NAME), (NAME, ADDRESS, ADDRESS)])
def test_it_vouches_for_its_laptop(own, name, address, host):
    own.vouch(lan.names(name, address))
    assert verdict(own, host) == ""


@pytest.mark.parametrize(("name", "address"), [
    ("bank.example", ""), ("", "198.51.100.7"), ("printer.local", ""), ("local", ""), ("notshop.local", ""),
    ("", "192.168.1.1"), ("", "192.168.78.10"), ("", "fd00::1"), ("", "127.0.0.1")])
def test_it_can_vouch_for_nobody_else(own, name, address):
    """Not for another device of a network, nor for the router of any other."""
    own.vouch(lan.names(name, address))
    assert verdict(own, name or address) == "permitted subtree violation"
    own.vouch(lan.names(NAME, "") + lan.names(name, address))
    assert verdict(own, NAME) == "permitted subtree violation"


def test_one_for_a_name_alone_vouches_for_no_address(tmp_path):
    own = authority.made(tmp_path, NAME, [])
    own.vouch(lan.names("", ADDRESS))
    assert verdict(own, ADDRESS) == "excluded subtree violation"
    own.vouch(lan.names(NAME, ""))
    assert verdict(own, NAME) == ""


def test_a_leaf_that_is_over_does_not_count(own):
    own.vouch(lan.names(NAME, ""), days=0)
    assert verdict(own, NAME) == "certificate has expired"


def test_both_of_its_certificates_are_limited_and_sign_no_further_one(own):
    for one, depth in ((own.root, 1), (own.signer, 0)):
        limits = one.extensions.get_extension_for_class(x509.NameConstraints)
        assert limits.critical and [str(each.value) for each in limits.value.permitted_subtrees] == [
            NAME, "192.168.77.0/24"]
        basic = one.extensions.get_extension_for_class(x509.BasicConstraints)
        assert basic.critical and basic.value.ca and basic.value.path_length == depth
    leaf = own.vouch(lan.names(NAME, ""))
    assert not leaf.extensions.get_extension_for_class(x509.BasicConstraints).value.ca
    assert leaf.not_valid_after_utc - leaf.not_valid_before_utc <= 398 * authority.DAY


def mode(path):
    return stat.S_IMODE(path.stat().st_mode)


def test_only_its_owner_reads_a_key_whatever_stood_there_before(tmp_path):
    folder = tmp_path / "own"
    folder.mkdir(mode=0o755)
    for name in (authority.SIGNER, authority.LEAF_KEY):
        (folder / name).write_text("open to all")
        (folder / name).chmod(0o644)
    before = os.umask(0)
    try:
        authority.made(folder, NAME, []).vouch(lan.names(NAME, ""))
    finally:
        os.umask(before)
    assert mode(folder) == 0o700
    assert {path.name: mode(path) for path in folder.iterdir()} == dict.fromkeys(
        (authority.ROOT, authority.CHAIN, authority.SIGNER, authority.LEAF, authority.LEAF_KEY), 0o600)


def test_the_key_of_the_root_is_nowhere(own):
    own.vouch(lan.names(NAME, ""))
    keys = [path for path in own.folder.iterdir() if b"PRIVATE KEY" in path.read_bytes()]
    assert sorted(path.name for path in keys) == [authority.LEAF_KEY, authority.SIGNER]
    from cryptography.hazmat.primitives.serialization import load_pem_private_key
    for path in keys:
        assert load_pem_private_key(path.read_bytes(), None).public_key() != own.root.public_key()


def test_it_stays_from_start_to_start_and_goes_only_when_that_is_asked_for(tmp_path):
    first, new = lan.kept(tmp_path, NAME, ADDRESS, False)
    again, renewed = lan.kept(tmp_path, NAME, ADDRESS, False)
    assert new and not renewed and again.der == first.der
    other, new = lan.kept(tmp_path, NAME, ADDRESS, True)
    assert new and other.der != first.der


def test_one_that_ends_before_its_leaf_would_is_told_of(own, monkeypatch):
    monkeypatch.setattr(authority, "LEAF_DAYS", authority.ROOT_DAYS)
    with pytest.raises(Unready, match="--new-authority"):
        lan.kept(own.folder, NAME, ADDRESS, False)


def test_it_says_whom_it_covers(own):
    asked = [NAME, ADDRESS, "printer.local", "192.168.1.1"]
    covered = [one for one in asked if own.covers(lan.names(one, "")[0] if one.endswith("local")
                                                  else lan.names("", one)[0])]
    assert covered == [NAME, ADDRESS]


@pytest.mark.parametrize(("name", "address"), [("bank.example", None), ("shop", None), (None, "198.51.100.7"),
                                               (None, "shop"), (None, "127.0.0.1")])
def test_no_public_name_or_address_is_taken(name, address):
    with pytest.raises(Unready, match="Give one like"):
        lan.wanted(name, address)


def test_a_network_is_never_wider_than_a_house_s_own(monkeypatch):
    told = [(ADDRESS, "255.0.0.0"), ("10.1.2.3", "255.255.0.0")]
    monkeypatch.setattr("covemix.server.own_network._interfaces", lambda: told)
    assert str(network_of(ADDRESS)) == "192.168.77.0/24"
    assert str(network_of("10.1.2.3")) == "10.1.0.0/16"


def brought(own, name=NAME, address=ADDRESS):
    return Brought(name, address, 8000, 8001, own.networks, own.fingerprint, own.der)


@pytest.fixture
def page(own):
    with TestClient(bringing(brought(own))) as client:
        yield client


@pytest.mark.parametrize("language", ["en", "de"])
def test_the_page_gives_the_fingerprint_and_the_name_before_the_address(page, own, language):
    text = page.get("/", headers={"accept-language": language}).text
    assert f'<html lang="{language}">' in text
    assert f"<code>{hashlib.sha256(own.der).digest().hex(' ').upper()}</code>" in text
    links = re.findall(r'href="(https://[^"]+)"', text)
    assert links[:2] == [f"https://{NAME}:8000/", f"https://{ADDRESS}:8000/"]
    assert f"https://{NAME}:8000/kit/#backup" in links
    places = re.findall(r'href="#(\w+)"', text)
    assert places == ["remove"] and all(f'id="{one}"' in text for one in places)
    assert STYLE in text and "<script" not in text


def test_what_the_page_hands_out_is_the_authority_in_the_types_that_phones_know(page, own):
    for path in re.findall(r'href="(covemix\.\w+)"', page.get("/").text):
        assert page.get(path).status_code == 200
    plain = page.get("/covemix.crt")
    assert plain.headers["content-type"] == "application/x-x509-ca-cert" and plain.content == own.der
    profile = page.get("/covemix.mobileconfig")
    assert profile.headers["content-type"] == "application/x-apple-aspen-config"
    inside = plistlib.loads(profile.content)["PayloadContent"]
    assert [one["PayloadType"] for one in inside] == ["com.apple.security.root"]
    assert inside[0]["PayloadContent"] == own.der
    assert page.get("/covemix.mobileconfig").content == profile.content  # twice is one profile on the phone


def test_the_page_lets_nothing_in_and_is_not_kept(page):
    for path in ("/", "/found.svg", "/nothing"):
        headers = page.get(path).headers
        assert headers["cache-control"] == "no-store" and headers["x-content-type-options"] == "nosniff"
        assert "default-src 'none'" in headers["content-security-policy"]
    assert page.get("/nothing").status_code == 404 and "http" not in page.get("/nothing").text


def test_without_an_address_that_it_covers_the_page_gives_the_name_alone(own):
    with TestClient(bringing(brought(own, address=""))) as client:
        text = client.get("/").text
    assert set(re.findall(r'href="https://([\w.]+)', text)) == {NAME} and "<img" not in text


def test_the_terminal_says_the_code_the_fingerprint_and_the_way_back(own):
    lines = "\n".join(lan.told(brought(own), own, True, NAME, ADDRESS))
    assert f"open http://{ADDRESS}:8001/" in lines and f"http://{ADDRESS}:8001/#remove" in lines
    assert re.sub(r"\s", "", own.fingerprint) in re.sub(r"\s", "", lines)
    assert lines.index(f"https://{NAME}:8000/") < lines.index(f"https://{ADDRESS}:8000/")
    elsewhere = "\n".join(lan.told(brought(own, address=""), own, False, NAME, "10.1.2.3"))
    assert "does not cover the address 10.1.2.3" in elsewhere
