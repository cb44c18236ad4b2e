"""Full addresses of the pages of a series, where its author has said where the site will stand."""

from urllib.parse import urljoin

INDEX = "index.html"


def in_full(address: str | None, path: str) -> str:
    """The address of the file at `path` in the site, a first page without its file name; '' if unknown."""
    if not address:
        return ""
    folder, _, name = path.rpartition("/")
    shown = f"{folder}/".lstrip("/") if name == INDEX else path
    return urljoin(address.rstrip("/") + "/", shown)
