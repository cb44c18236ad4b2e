"""A web host of the plainest kind, on this machine only: files below a sub-path, nothing else."""

import posixpath
from contextlib import contextmanager
from functools import partial
from http import HTTPStatus
from http.server import SimpleHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from threading import Thread
from urllib.parse import unquote, urlsplit

# Not the root of the host, so that a link that starts with a slash leads nowhere.
SUB_PATH = "/some/where/"


class _Host(ThreadingHTTPServer):
    daemon_threads = True
    block_on_close = False


class _Handler(SimpleHTTPRequestHandler):
    protocol_version = "HTTP/1.1"
    extensions_map = {
        **SimpleHTTPRequestHandler.extensions_map,
        ".atom": "application/atom+xml",
        ".ics": "text/calendar",
        ".js": "text/javascript",
        ".svg": "image/svg+xml",
        ".woff2": "font/woff2",
    }

    def __init__(self, *arguments, folders: dict[str, Path]) -> None:
        self._folders = folders
        super().__init__(*arguments)

    def translate_path(self, path: str) -> str:
        name, _, rest = self._below(path).partition("/")
        folder = self._folders.get(name)
        if folder is None or ".." in rest.split("/"):
            return str(Path(__file__) / "nothing")
        return str(folder / rest) + ("/" if rest.endswith("/") else "")

    def send_error(self, code, message=None, explain=None) -> None:
        """A host shows the site's own page where there is none at an address."""
        folder = self._folders.get(self._below(self.path).partition("/")[0])
        if code != HTTPStatus.NOT_FOUND or folder is None:
            super().send_error(code, message, explain)
            return
        body = (folder / "404.html").read_bytes()
        self.send_response(code)
        self.send_header("Content-Type", "text/html")
        self.send_header("Content-Length", str(len(body)))
        self.end_headers()
        self.wfile.write(body)

    def log_message(self, *_arguments) -> None:
        """Tests look at what the browser says of a request."""

    def _below(self, address: str) -> str:
        path = posixpath.normpath(unquote(urlsplit(address).path))
        kept = "/" if urlsplit(address).path.endswith("/") else ""
        return path.removeprefix(SUB_PATH) + kept if path.startswith(SUB_PATH) else ""


@contextmanager
def served(folders: dict[str, Path]):
    """Serve each folder under its name; gives the address that the names are put behind."""
    host = _Host(("127.0.0.1", 0), partial(_Handler, folders=folders))
    thread = Thread(target=host.serve_forever, kwargs={"poll_interval": 0.05}, daemon=True)
    thread.start()
    try:
        yield f"http://127.0.0.1:{host.server_port}{SUB_PATH}"
    finally:
        host.shutdown()
        host.server_close()
        thread.join()
