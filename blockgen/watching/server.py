"""The set under watch in a browser on the same computer: the page, the files of the set, and news.

It listens on 127.0.0.1 and nowhere else. A request must name this address or localhost as its host: another name that
leads here was bent by somebody whose page wants to read what only this computer may. Of the files only those are served
that the manifest lists, with the contents that it lists, so that no path and no link leads out of the set.
"""

from __future__ import annotations

import json
import secrets
import socketserver
import threading
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from hashlib import sha256
from http import HTTPStatus
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from urllib.parse import unquote

from blockgen.errors import MachineError
from blockgen.outputs.manifest import listed_files
from blockgen.outputs.names import MANIFEST
from blockgen.watching import live_page
from blockgen.watching.board import Board, Shown

ADDRESS = "127.0.0.1"
NEWS = "/watch/news"
SCRIPT = "/watch/live.js"

_ALIVE = 10.0  # seconds after which a browser is told that there is still somebody
_PATIENCE = 30.0  # seconds for a browser that says nothing or takes nothing
_TRIES = 3  # a set may change places between the look at its manifest and at its file
_TYPES = {
    ".html": "text/html; charset=utf-8",
    ".json": "application/json",
    ".md": "text/plain; charset=utf-8",
    ".toml": "text/plain; charset=utf-8",
    ".csv": "text/csv; charset=utf-8",
    ".svg": "image/svg+xml",
    ".pdf": "application/pdf",
    ".step": "model/step",
    ".stl": "model/stl",
    ".dxf": "image/vnd.dxf",
}


class _Server(ThreadingHTTPServer):
    daemon_threads = True

    def __init__(self, port: int, board: Board) -> None:
        self.board = board
        self.run = secrets.token_hex(4)  # a browser that outlives this server must not take a new one for it
        super().__init__((ADDRESS, port), _Answer)

    def server_bind(self) -> None:
        """Bind without asking the net for this computer's name, which can take seconds."""
        socketserver.TCPServer.server_bind(self)
        self.server_name, self.server_port = ADDRESS, self.server_address[1]

    def handle_error(self, request: object, client_address: object) -> None:
        """Say nothing: a browser that went away is no fault of ours."""

    @property
    def hosts(self) -> set[str]:
        """The hosts that a request may name."""
        names = {ADDRESS, "localhost"}
        return {f"{name}:{self.server_port}" for name in names} | (names if self.server_port == 80 else set())


@contextmanager
def served(board: Board, port: int = 0) -> Iterator[str]:
    """Serve a board for the length of the block, and yield the address of its page.

    Args:
        board: What is shown.
        port: Port on 127.0.0.1; 0 for any that is free.

    Raises:
        MachineError: the port cannot be had.
    """
    try:
        server = _Server(port, board)
    except (OSError, OverflowError) as error:
        reason = getattr(error, "strerror", None) or str(error)
        remedy = "Choose another with --port, or leave it out for one that is free."
        raise MachineError(f"port {port} of {ADDRESS} cannot be had: {reason}. {remedy}") from error
    thread = threading.Thread(target=server.serve_forever, kwargs={"poll_interval": 0.1}, daemon=True)
    thread.start()
    try:
        yield f"http://{ADDRESS}:{server.server_port}/"
    finally:
        board.close()
        server.shutdown()
        server.server_close()
        thread.join()


class _Answer(BaseHTTPRequestHandler):
    server: _Server
    server_version, sys_version = "blockgen", ""
    timeout = _PATIENCE

    def do_GET(self) -> None:
        with suppress(OSError):  # the browser has gone
            self._route(body=True)

    def do_HEAD(self) -> None:
        with suppress(OSError):
            self._route(body=False)

    def log_message(self, format: str, *args: object) -> None:  # noqa: A002 # the name is that of the library
        """Say nothing: the terminal is for the watch."""

    def _route(self, *, body: bool) -> None:
        path = unquote(self.path.partition("?")[0])
        if not self._is_for_us():
            self.send_error(HTTPStatus.FORBIDDEN, "This address is for the computer itself")
        elif not self.path.startswith("/"):  # a whole address would name another host
            self.send_error(HTTPStatus.BAD_REQUEST, "Ask for a path that begins with /")
        elif path == "/":
            self._send(live_page.page(self.server.board.shown, self.server.run).encode(), ".html", body=body)
        elif path == SCRIPT:
            self._send(live_page.script().encode(), ".js", body=body)
        elif path == "/favicon.ico":  # every browser asks
            self.send_response(HTTPStatus.NO_CONTENT)
            self.end_headers()
        elif path == NEWS and body:
            self._send_news()
        else:
            self._send_file(path.removeprefix("/"), body=body)

    def _is_for_us(self) -> bool:
        """Tell whether the request names one host, and that this computer."""
        named = self.headers.get_all("Host", [])
        return len(named) == 1 and named[0].lower() in self.server.hosts

    def _send_file(self, name: str, *, body: bool) -> None:
        folder = self.server.board.shown.folder
        data = None if folder is None else file_of_set(folder, name)
        if data is None:
            self.send_error(HTTPStatus.NOT_FOUND, "No such file in the set")
        else:
            self._send(data, Path(name).suffix, body=body)

    def _send(self, data: bytes, suffix: str, *, body: bool) -> None:
        kind = "text/javascript; charset=utf-8" if suffix == ".js" else _TYPES.get(suffix, "application/octet-stream")
        self._head(kind)
        self.send_header("Content-Length", str(len(data)))
        self.end_headers()
        if body:
            self.wfile.write(data)

    def _head(self, kind: str) -> None:
        self.send_response(HTTPStatus.OK)
        self.send_header("Content-Type", kind)
        for name, value in (
            ("Cache-Control", "no-store"),
            ("X-Content-Type-Options", "nosniff"),
            ("X-Frame-Options", "DENY"),
            ("Cross-Origin-Resource-Policy", "same-origin"),
            ("Referrer-Policy", "no-referrer"),
        ):
            self.send_header(name, value)

    def _send_news(self) -> None:
        """Send what is shown as it changes, as server-sent events, for as long as the browser listens."""
        self._head("text/event-stream; charset=utf-8")
        self.end_headers()
        board, version = self.server.board, -1
        while not board.closed:
            shown = board.newer(version, _ALIVE)
            if shown is not None:
                version = shown.version
            self.wfile.write(_news(shown, self.server.run))
            self.wfile.flush()


def _news(shown: Shown | None, run: str) -> bytes:
    """Return one event, or a comment that keeps the line open."""
    if shown is None:
        return b": still here\n\n"
    told = {"page": live_page.page_key(shown, run), "words": shown.words, "wrong": shown.wrong}
    return f"retry: 1000\ndata: {json.dumps(told)}\n\n".encode()


def file_of_set(folder: Path, name: str) -> bytes | None:
    """Return the contents of a file of the set in a folder; None where the set has no such file.

    Args:
        folder: Folder of the set.
        name: Name without any path; it must stand in the manifest, and the contents must have the hash given there.
    """
    for _ in range(_TRIES):
        hashes = listed_files(folder) or {}
        if name not in {*hashes, MANIFEST}:
            return None
        with suppress(OSError):
            data = _contents(folder / name)
            if name == MANIFEST or sha256(data).hexdigest() == hashes[name]:
                return data
    return None


def _contents(path: Path) -> bytes:
    """Return the contents of a file; OSError where it is none."""
    if not path.is_file():  # a pipe would keep us waiting
        raise FileNotFoundError(path)
    return path.read_bytes()
