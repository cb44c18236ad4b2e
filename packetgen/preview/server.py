"""Serves what is on the board to browsers on this computer, and to nobody else.

Every path is looked up in a mapping in memory, so that none can lead to a file on the disk. Pages hear of
changes by server-sent events (WHATWG HTML, section 9.2).
"""

import json
import socketserver
import sys
import threading
from http import HTTPStatus
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from urllib.parse import unquote, urlsplit

from packetgen.preview.board import Board, Sight
from packetgen.preview.kept import Kept
from packetgen.preview.page import EVENTS, not_found, nothing_yet, own_files, strip, with_strip

LOOPBACK = "127.0.0.1"
# A page of another host whose name has been made to lead here still sends that name.
_LOOPBACK_NAMES = {LOOPBACK, "localhost", "::1"}

_STILL_HERE_S = 10  # a word now and then, or a browser that has gone is never noticed
_IDLE_S = 60

_PLAIN = "text/plain; charset=utf-8"
_KINDS = {
    "atom": "application/atom+xml",
    "css": "text/css; charset=utf-8",
    "html": "text/html; charset=utf-8",
    "ics": "text/calendar; charset=utf-8",
    "jpg": "image/jpeg",
    "js": "text/javascript; charset=utf-8",
    "json": "application/json",
    "pdf": "application/pdf",
    "png": "image/png",
    "svg": "image/svg+xml",
    "ttf": "font/ttf",
    "txt": _PLAIN,
    "woff2": "font/woff2",
    "xml": "application/xml",
    "zip": "application/zip",
}


def served(board: Board, kept: Kept, port: int) -> "Server":
    """A server that runs in threads of its own. `port` 0 takes any free one. Raises OSError."""
    server = Server(board, kept, port)
    threading.Thread(target=server.serve_forever, args=(0.1,), daemon=True).start()
    return server


class Server(ThreadingHTTPServer):
    daemon_threads = True
    allow_reuse_address = sys.platform != "win32"  # there it would let two servers have one port

    def __init__(self, board: Board, kept: Kept, port: int) -> None:
        self.board, self.kept = board, kept
        self.own = own_files()
        super().__init__((LOOPBACK, port), _Handler)

    def server_bind(self) -> None:
        """Without asking a name server what this computer is called."""
        socketserver.TCPServer.server_bind(self)
        self.server_name, self.server_port = LOOPBACK, self.server_address[1]

    @property
    def address(self) -> str:
        return f"http://{LOOPBACK}:{self.server_port}/"

    def handle_error(self, request: object, client_address: object) -> None:
        """A browser that goes away in the middle of an answer is nothing to speak of."""
        error = sys.exception()
        if not isinstance(error, OSError):
            print(f"packetgen: a page could not be served: {error!r}", file=sys.stderr)

    def close(self) -> None:
        self.board.close()
        self.shutdown()
        self.server_close()


class _Handler(BaseHTTPRequestHandler):
    protocol_version = "HTTP/1.1"
    timeout = _IDLE_S
    server: Server

    def do_GET(self) -> None:
        if not self._from_here():
            self._send(HTTPStatus.FORBIDDEN, _PLAIN, b"This is served to this computer alone.\n")
            return
        path = unquote(urlsplit(self.path).path).removeprefix("/")
        if path == EVENTS:
            self._events()
        elif path in self.server.own:
            self._send(HTTPStatus.OK, _kind(path), self.server.own[path])
        else:
            self._site(path, self.server.board.sight)

    do_HEAD = do_GET

    def _refuse(self) -> None:
        self.close_connection = True  # what is sent along is not read
        self._send(HTTPStatus.METHOD_NOT_ALLOWED, _PLAIN, b"", Allow="GET, HEAD")

    do_POST = do_PUT = do_DELETE = do_PATCH = do_OPTIONS = do_TRACE = do_CONNECT = _refuse

    def _from_here(self) -> bool:
        hosts = self.headers.get_all("Host") or []
        try:
            return (
                self.path.startswith("/")
                and len(hosts) == 1
                and urlsplit(f"//{hosts[0].strip()}").hostname in _LOOPBACK_NAMES
            )
        except ValueError:  # brackets that are no address
            return False

    def _site(self, path: str, sight: Sight) -> None:
        if not sight.version:
            self._send(HTTPStatus.SERVICE_UNAVAILABLE, _KINDS["html"], nothing_yet(sight))
            return
        if path and not path.endswith("/") and f"{path}/index.html" in sight.files:
            self._send(HTTPStatus.MOVED_PERMANENTLY, _PLAIN, b"", Location=f"/{path}/")
            return
        if not path or path.endswith("/"):
            path += "index.html"
        status, data = HTTPStatus.OK, sight.files.get(path)
        if data is None:
            status, path = HTTPStatus.NOT_FOUND, "404.html"
            data = sight.files.get(path) or not_found()
        kind = _kind(path)
        if kind == _KINDS["html"]:
            self._send(status, kind, with_strip(data, sight))
        else:
            self._send(status, kind, self.server.kept.drawn(data))

    def _events(self) -> None:
        """One event a sight, until the browser or the server goes away."""
        self.close_connection = True
        self._head(HTTPStatus.OK, {"Content-Type": "text/event-stream"})
        if self.command == "HEAD":
            return
        board, seen = self.server.board, None
        while not board.closed:
            sight = board.after(seen, _STILL_HERE_S)
            if sight is None:
                self.wfile.write(b": still here\n\n")
            else:
                said = json.dumps({"version": sight.version, "strip": strip(sight)})
                self.wfile.write(f"data: {said}\n\n".encode())
                seen = sight
            self.wfile.flush()

    def _send(self, status: HTTPStatus, kind: str, data: bytes, **more: str) -> None:
        self._head(status, {"Content-Type": kind, "Content-Length": str(len(data)), **more})
        if self.command != "HEAD":
            self.wfile.write(data)

    def _head(self, status: HTTPStatus, headers: dict[str, str]) -> None:
        self.send_response(status)
        headers |= {
            "Cache-Control": "no-store",
            "X-Content-Type-Options": "nosniff",
            "Cross-Origin-Resource-Policy": "same-origin",
            "Referrer-Policy": "no-referrer",
        }
        if self.close_connection:
            headers["Connection"] = "close"
        for name, value in headers.items():
            self.send_header(name, value)
        self.end_headers()

    def log_message(self, *_: object) -> None:
        """The terminal is for what the author should read."""


def _kind(path: str) -> str:
    return _KINDS.get(path.rpartition(".")[2], "application/octet-stream")
