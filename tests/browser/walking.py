"""A site as its files say it: pages, and what they point to. No browser is asked."""

import posixpath
import re
from dataclasses import dataclass
from functools import cached_property
from html.parser import HTMLParser
from pathlib import Path
from urllib.parse import unquote, urljoin, urlsplit

# The address a site stands at while its links are followed; nobody asks for it.
_HERE = "http://site.invalid/"


class PageFile(HTMLParser):
    """One page: its title, its ids, and every address in it, each with the tag that holds it."""

    def __init__(self, html: str) -> None:
        super().__init__()
        self.title = ""
        self.ids: list[str] = []
        self.addresses: list[tuple[str, str]] = []
        self.canonical: str | None = None
        self._within = ""
        self.feed(html)

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        values = {name: value or "" for name, value in attrs}
        self._within = tag
        if "id" in values:
            self.ids.append(values["id"])
        if tag == "link" and values.get("rel") == "canonical":
            self.canonical = values["href"]
        names = ["href", "src", "poster", "data", "action"]
        if tag == "meta" and re.search(r"(image|url|audio|video)$", values.get("property", "")):
            names.append("content")
        found = [values[name] for name in names if name in values]
        for candidate in values.get("srcset", "").split(","):
            found += candidate.split()[:1]
        found += in_style(values.get("style", ""))
        self.addresses += [(tag, address) for address in found]

    def handle_endtag(self, _tag: str) -> None:
        self._within = ""

    def handle_data(self, data: str) -> None:
        if self._within == "title" and not self.title:
            self.title = data.strip()
        if self._within == "style":
            self.addresses += [("style", address) for address in in_style(data)]


def in_style(css: str) -> list[str]:
    """The addresses in a style sheet."""
    return [each.strip("\"' ") for each in re.findall(r"url\(([^)]*)\)", css)]


@dataclass(frozen=True)
class SiteFiles:
    """The folder of a site."""

    folder: Path

    @cached_property
    def all_pages(self) -> dict[str, PageFile]:
        """Path → page, of every page that lies in the folder."""
        return {
            path.relative_to(self.folder).as_posix(): PageFile(path.read_text("utf-8"))
            for path in sorted(self.folder.rglob("*.html"))
        }

    @cached_property
    def walked(self) -> tuple[str, ...]:
        """The pages that a reader finds who starts at the first page and follows every link."""
        found, ahead = ["index.html"], ["index.html"]
        while ahead:
            page = ahead.pop()
            for tag, address in self.all_pages[page].addresses:
                path = self.local(page, address)[0] if tag == "a" else None
                if path in self.all_pages and path not in found:
                    found.append(path)
                    ahead.append(path)
        return tuple(sorted(found))

    @property
    def pages(self) -> tuple[str, ...]:
        """What is tested: the pages found, and the one shown where there is none."""
        return tuple(sorted({*self.walked, "404.html"}))

    @property
    def patterns(self) -> tuple[str, ...]:
        """The pages of patterns: each has a folder."""
        return tuple(page for page in self.walked if page.endswith("/index.html"))

    def local(self, holder: str, address: str) -> tuple[str | None, str]:
        """(path in the site, fragment) of an address that the file `holder` points to.

        The path is None when the address leads out of the site.
        """
        whole = urljoin(self._root + holder, address)
        path, _, fragment = whole.partition("#")
        if not path.startswith(self._root):
            return None, fragment
        inside = unquote(urlsplit(path.removeprefix(self._root)).path)
        return (posixpath.normpath(inside) if inside else ""), unquote(fragment)

    def named(self, holder: str, address: str) -> str | None:
        """The file of an address that programs read, as in a canonical link: a host is then there,
        and shows the index of a folder."""
        path, _ = self.local(holder, address)
        if path is not None and (self.folder / path).is_dir():
            return posixpath.normpath(posixpath.join(path, "index.html"))
        return path

    @cached_property
    def _root(self) -> str:
        """Where the site says that it stands; its pages may name each other by whole addresses."""
        first = self.all_pages["index.html"].canonical
        return urljoin(first, ".") if first else _HERE
