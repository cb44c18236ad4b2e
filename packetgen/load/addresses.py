"""Whether an address that leads outside could be right: its form alone, nothing is ever fetched.

Parts of an address: RFC 3986, section 3. Names of hosts: RFC 1123, section 2.1, and RFC 3490 for letters
beyond ASCII. A mailto address: RFC 6068, section 2.
"""

import re
from ipaddress import ip_address
from urllib.parse import SplitResult, urlsplit

from packetgen.diagnostics import Report
from packetgen.load.words import said, shown

# Nothing of these may stand in an address unescaped: RFC 3986, section 2 (and it says so of no backslash).
_NOT_IN_ADDRESS = re.compile(r"[\s<>\"'`\\{}|^\x00-\x1f\x7f]")
_NO_SCHEME = re.compile(r"(?:https?)?[:;]?/{0,2}", re.IGNORECASE)  # what may be left of it
_FILE = re.compile(
    r"\.(?:html?|md|txt|pdf|png|jpe?g|gif|svg|csv|ya?ml)$", re.IGNORECASE
)  # one of her own
_MAILBOX = re.compile(r"[\w.!#$%&*+/=?^~-]+@(?P<host>[^@\s?]+)(\?\S*)?")
_LABEL = re.compile(r"[a-z0-9]([a-z0-9-]{0,61}[a-z0-9])?", re.IGNORECASE)
_LONGEST_HOST = 253
_NOT_WORLDWIDE = (".localhost", ".local", ".internal")


def check_address(text: str, report: Report, mail: bool = False) -> bool:
    """Whether `text` may stand as a link: http or https in full, or a mailto address where `mail` allows it.

    `report(code, **facts)` hears what is wrong.
    """
    parts = _split(text)
    scheme = parts.scheme if parts else ""
    if scheme == "mailto" and mail:
        return _check_mail(text, report)
    if scheme and scheme not in ("http", "https") and not re.match(r"[\w.-]+:\d", text):
        report("address-scheme", scheme=said(scheme + ":"))
        return False
    if not parts or scheme not in ("http", "https") or not parts.hostname:
        report("not-an-address", said=said(text), hint=_hint(text))
        return False
    if "@" in parts.netloc:
        report("address-login", better=said(parts._replace(netloc=_host(parts)).geturl()))
        return False
    if _NOT_IN_ADDRESS.search(text):
        report("not-an-address", said=said(text), hint=_hint(text))
        return False
    port = parts.netloc.rpartition("]")[2].partition(":")[2]
    if port and not (re.fullmatch(r"\d{1,5}", port, re.ASCII) and 0 < int(port) < 65536):
        report("address-port", port=said(port))
        return False
    return _check_host(parts.hostname, report)


def _hint(text: str) -> str:
    if re.match("https?://.*\\s", text):
        return "take the spaces out of it"
    whole = "https://" + _NO_SCHEME.sub("", text, count=1)
    sound = whole != text and check_address(whole, lambda *_, **__: None)
    if sound and not _FILE.search(text):
        return f"write {shown(whole)}"
    return "write it in full, for example https://example.org/counter"


def _split(text: str) -> SplitResult | None:
    try:
        return urlsplit(text)
    except ValueError:  # a bracket of an IPv6 address that is not closed, and the like
        return None


def _host(parts: SplitResult) -> str:
    return parts.netloc.rpartition("@")[2]


def _check_mail(text: str, report: Report) -> bool:
    match = _MAILBOX.fullmatch(text.partition(":")[2])
    if match:
        return _check_host(match["host"], report)
    report("not-a-mail-address", said=said(text))
    return False


def _check_host(host: str, report: Report) -> bool:
    """A host that any reader can reach, by name or by a number that is not of one's own network."""
    try:
        reached = ip_address(host).is_global
    except ValueError:
        reached = _is_name(host)
        if reached and host.casefold().endswith(_NOT_WORLDWIDE):
            reached = False
    if not reached:
        report("address-host", host=said(host))
    return reached


def _is_name(host: str) -> bool:
    try:
        plain = host.rstrip(".").encode("idna").decode("ascii")
    except UnicodeError:  # a part that is empty or too long, or a letter that no name may have
        return False
    labels = plain.split(".")
    return (
        len(labels) > 1
        and len(plain) <= _LONGEST_HOST
        and all(_LABEL.fullmatch(label) for label in labels)
        and not labels[-1].isdigit()
    )
