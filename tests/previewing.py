"""A preview that runs as its author runs it: a process of its own, a browser's requests, real sockets."""

import json
import os
import queue
import signal
import socket
import subprocess
import sys
import threading
import time
from collections.abc import Callable, Iterator
from contextlib import closing, contextmanager
from functools import cached_property
from http.client import HTTPConnection
from pathlib import Path
from urllib.parse import urlsplit

LONG_S = 60  # a machine that is busy with other tests is slow to begin


class Lines:
    """What a process says, line by line, while it runs on."""

    def __init__(self, stream) -> None:
        self.all: list[str] = []
        self._new: queue.Queue[str] = queue.Queue()
        self._stream = stream
        self._reader = threading.Thread(target=self._read, daemon=True)
        self._reader.start()

    def _read(self) -> None:
        for line in self._stream:
            self.all.append(line)
            self._new.put(line)

    def close(self) -> None:
        """Once the process has ended."""
        self._reader.join(LONG_S)
        self._stream.close()

    def until(self, words: str) -> str:
        """The next line that holds the words."""
        while True:
            line = self._new.get(timeout=LONG_S)
            if words in line:
                return line


class Page:
    """A browser tab that listens for news of the preview."""

    def __init__(self, port: int) -> None:
        self._connection = HTTPConnection("127.0.0.1", port, timeout=LONG_S)
        self._connection.request("GET", "/~preview/events")
        self._line = self._connection.sock  # the answer takes it over
        self._answer = self._connection.getresponse()
        assert self._answer.status == 200
        assert self._answer.headers["Content-Type"] == "text/event-stream"

    def hears(self, wait_s: float = LONG_S) -> dict[str, str]:
        """The next news. Raises TimeoutError where there is none in that time; nothing is heard after it."""
        until = time.monotonic() + wait_s
        while True:
            self._line.settimeout(max(0.01, until - time.monotonic()))
            line = self._answer.readline()
            assert line, "the preview ended"
            if line.startswith(b"data: "):
                return json.loads(line[6:])

    def hears_of(
        self, fits: Callable[[dict[str, str]], bool], within_s: float = LONG_S
    ) -> dict[str, str]:
        """The first news that fits."""
        until = time.monotonic() + within_s
        while not fits(news := self.hears(until - time.monotonic())):
            pass
        return news

    def settled(self) -> dict[str, str]:
        """The first news of a site with all its pictures."""
        return self.hears_of(lambda news: news["version"] and "Drawing" not in news["strip"])

    def close(self) -> None:
        self._answer.close()
        self._connection.close()
        self._line.close()


class Preview:
    def __init__(self, content: Path, *words: str) -> None:
        self.content = content
        self.process = subprocess.Popen(
            [sys.executable, "-m", "packetgen", "preview", "--content", str(content), *words],
            stdout=subprocess.PIPE,
            stderr=subprocess.PIPE,
            text=True,
            encoding="utf-8",
            cwd=Path(__file__).parent.parent,
            env=os.environ | {"PYTHONUNBUFFERED": "1", "PYTHONUTF8": "1"},
        )
        self.out, self.err = Lines(self.process.stdout), Lines(self.process.stderr)
        self._pages: list[Page] = []

    @cached_property
    def address(self) -> str:
        return self.out.until("http://").split()[2]

    @property
    def port(self) -> int:
        return urlsplit(self.address).port

    def page(self) -> Page:
        self._pages.append(Page(self.port))
        return self._pages[-1]

    def get(self, path: str, method: str = "GET", **headers: str) -> tuple[int, bytes, dict]:
        with closing(HTTPConnection("127.0.0.1", self.port, timeout=LONG_S)) as connection:
            connection.request(method, path, headers=headers)
            answer = connection.getresponse()
            return answer.status, answer.read(), dict(answer.headers)

    def said_to(self, request: str) -> bytes:
        """The whole answer to a request of exactly these bytes."""
        with socket.create_connection(("127.0.0.1", self.port), timeout=LONG_S) as line:
            line.sendall(request.encode())
            line.shutdown(socket.SHUT_WR)
            return b"".join(iter(lambda: line.recv(65536), b""))

    def close_pages(self) -> None:
        while self._pages:
            self._pages.pop().close()

    def interrupt(self) -> int:
        """Ctrl-C; the exit code."""
        self.process.send_signal(signal.SIGINT)
        return self.process.wait(LONG_S)


@contextmanager
def previewing(content: Path, *words: str) -> Iterator[Preview]:
    preview = Preview(content, *words)
    try:
        assert preview.port
        yield preview
    finally:
        preview.process.kill()
        preview.process.wait()
        preview.close_pages()
        preview.out.close()
        preview.err.close()
