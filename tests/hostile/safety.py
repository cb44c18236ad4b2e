"""What a page may not hold, whatever an author wrote."""

import json
import re
from collections import Counter
from collections.abc import Mapping
from html.parser import HTMLParser

_LOADED = {"src", "srcset", "data", "poster", "background", "action", "formaction", "xlink:href"}
_NOTHING = "data:,"  # asks for nothing at all, where a browser would ask for an icon
_LOADS = {"link", "image", "use", "base", "object", "embed", "iframe"}
_SCHEME = re.compile(r"\s*([a-z][a-z0-9+.\-\s]*):", re.IGNORECASE)
_SAFE = {"http", "https", "mailto", "asset", "webcal"}
_SAFE_LINKS = {"canonical", "alternate", "license", "me", "author"}
_STYLE_LOADS = re.compile(r"(?:url\(|@import)\s*[\"']?\s*(https?:|ftp:|file:|//|javascript:)", re.I)


class Page(HTMLParser):
    """Reads a page and keeps what could do harm."""

    def __init__(self, html: str) -> None:
        super().__init__()
        self.harm: list[str] = []
        self.tags: Counter[str] = Counter()
        self._inside, self._script = "", ""
        self._data: list[str] = []
        self.feed(html)
        self.close()

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        given = {name: value or "" for name, value in attrs}
        self.tags[tag] += 1
        if tag in ("script", "style"):
            self._inside, self._script, self._data = tag, given.get("type", ""), []
        if tag in ("iframe", "object", "embed", "base", "form", "applet", "frame"):
            self.harm.append(f"<{tag}>")
        for name, value in given.items():
            if value == _NOTHING:
                continue
            scheme = _SCHEME.match(value)
            if name.startswith("on"):
                self.harm.append(f"{tag} {name}={value}")
            elif name == "style" and _STYLE_LOADS.search(value):
                self.harm.append(f"{tag} style={value}")
            elif name == "href" and scheme and scheme[1].lower() not in _SAFE:
                self.harm.append(f"{tag} href={value}")
            far = bool(scheme and scheme[1].lower() != "asset") or value.startswith("//")
            named = tag in _LOADS and given.get("rel") not in _SAFE_LINKS
            if far and (name in _LOADED or (name == "href" and named)):
                self.harm.append(f"{tag} {name}={value}")

    def handle_data(self, data: str) -> None:
        if self._inside:
            self._data.append(data)

    def handle_endtag(self, tag: str) -> None:
        if tag != self._inside:
            return
        text, self._inside = "".join(self._data), ""
        if tag == "style" and _STYLE_LOADS.search(text):
            self.harm.append(f"style {text[:60]}")
        if tag == "script" and "json" in self._script:
            json.loads(text)


def harm_in(files: Mapping[str, str], usual: Mapping[str, str]) -> list[str]:
    """What could do harm in pages by their names; scripts and drawings are counted against `usual` ones."""
    found = []
    for name, html in files.items():
        page = Page(html)
        found += [f"{name}: {what}" for what in page.harm]
        if name in usual:
            own = Page(usual[name]).tags
            more = {tag: page.tags[tag] - own[tag] for tag in ("script", "style", "img", "meta")}
            found += [f"{name}: {times} more <{tag}>" for tag, times in more.items() if times > 0]
    return found
