"""What the server gives, and to whom."""

import hashlib
import http.client
import json
import os
import socket
import threading
from contextlib import closing

import pytest

from blockgen.errors import MachineError
from blockgen.watching import server
from blockgen.watching.board import Board
from blockgen.watching.server import file_of_set, served

FILES = {"X-1_A_block.step": b"ISO-10303-21;", "summary.md": b"# X-1\n", "drawing 1.svg": b"<svg/>"}
SECRET = b"nobody else's business"


@pytest.fixture
def folder(tmp_path):
    place = tmp_path / "out" / "X-1_A"
    place.mkdir(parents=True)
    (tmp_path / "out" / "secret.txt").write_bytes(SECRET)
    (place / "own.txt").write_bytes(SECRET)
    write_set(place, FILES)
    return place


def write_set(place, files):
    for name, data in files.items():
        (place / name).write_bytes(data)
    entries = [{"name": n, "role": "block", "sha256": hashlib.sha256(d).hexdigest()} for n, d in files.items()]
    (place / "manifest.json").write_text(json.dumps({"files": entries}))


@pytest.fixture
def board(folder):
    board = Board()
    board.turn("<html><body><p>page one</p></body></html>", folder, "built")
    return board


@pytest.fixture
def port(board):
    with served(board) as address:
        yield int(address.rstrip("/").rsplit(":", 1)[1])


def ask(port, path, method="GET", host=None):
    with closing(http.client.HTTPConnection("127.0.0.1", port, timeout=60)) as connection:
        connection.putrequest(method, path, skip_host=True)
        if host != "":
            connection.putheader("Host", host or f"127.0.0.1:{port}")
        connection.endheaders()
        answer = connection.getresponse()
        return answer.status, answer.read(), answer.headers


def test_the_page_with_the_words_above_it(port):
    status, body, headers = ask(port, "/")
    assert status == 200
    assert b"page one" in body
    assert b">built</p>" in body
    assert headers["Content-Type"].startswith("text/html")
    assert headers["Cache-Control"] == "no-store"
    assert ask(port, "/?x=1")[0] == 200


@pytest.mark.parametrize("name", [*FILES, "manifest.json"])
def test_files_of_the_set(port, folder, name):
    status, body, headers = ask(port, "/" + name.replace(" ", "%20"))
    assert (status, body) == (200, (folder / name).read_bytes())
    assert headers["X-Content-Type-Options"] == "nosniff"


def test_a_head_without_a_body(port):
    status, body, headers = ask(port, "/summary.md", method="HEAD")
    assert (status, body, headers["Content-Length"]) == (200, b"", str(len(FILES["summary.md"])))


def test_the_sign_that_every_browser_asks_for_is_no_fault(port):
    assert ask(port, "/favicon.ico")[:2] == (204, b"")


def test_the_script_is_served(port):
    status, body, headers = ask(port, "/watch/live.js")
    assert status == 200
    assert b"EventSource" in body
    assert headers["Content-Type"].startswith("text/javascript")


@pytest.mark.parametrize(
    "path",
    [
        "/own.txt", "/../secret.txt", "/..%2fsecret.txt", "/%2e%2e/secret.txt", "//etc/passwd", "/%2fetc%2fpasswd",
        "/..\\secret.txt", "/..%5csecret.txt", "/./own.txt", "/summary.md/", "/summary.md%00", "/.", "/..",
        "/%00", "/no", "/X-1_A/summary.md", "/file:///etc/passwd", "/watch/", "/watch/news/x",
    ],
)  # fmt: skip
def test_nothing_else(port, path):
    status, body, _ = ask(port, path)
    assert status == 404
    assert SECRET not in body
    assert b"root:" not in body


def test_a_link_out_of_the_set_leads_nowhere(port, folder):
    (folder / "summary.md").unlink()
    (folder / "summary.md").symlink_to(folder.parent / "secret.txt")
    assert ask(port, "/summary.md")[0] == 404


def test_a_manifest_that_names_a_path_opens_nothing(folder):
    entry = {"name": "../secret.txt", "sha256": hashlib.sha256(SECRET).hexdigest()}
    (folder / "manifest.json").write_text(json.dumps({"files": [entry]}))
    assert file_of_set(folder, "../secret.txt") is None


def test_a_set_that_changes_places_meanwhile_is_read_again(folder, monkeypatch):
    real, looks = server.listed_files, []

    def listed(place):
        found = real(place)
        if not looks:
            write_set(place, {**FILES, "summary.md": b"# X-2\n"})
        looks.append(found)
        return found

    monkeypatch.setattr(server, "listed_files", listed)
    assert file_of_set(folder, "summary.md") == b"# X-2\n"
    assert len(looks) == 2


@pytest.mark.parametrize(
    "host", ["", "evil.example", "evil.example:{port}", "127.0.0.1", "127.0.0.1:1", "[::1]:{port}"]
)
@pytest.mark.parametrize("path", ["/", "/summary.md", "/watch/news", "/watch/live.js"])
def test_another_host_is_refused(port, host, path):
    status, body, _ = ask(port, path, host=host.format(port=port))
    assert status == 403
    assert b"page one" not in body


@pytest.mark.parametrize("host", ["127.0.0.1:{port}", "localhost:{port}", "LOCALHOST:{port}"])
def test_this_computer_is_answered(port, host):
    assert ask(port, "/", host=host.format(port=port))[0] == 200


def asked_as_it_stands(port, request):
    """Return the first line of the answer to a request that no library would write."""
    with socket.create_connection(("127.0.0.1", port), timeout=60) as line:
        line.sendall(request.replace("PORT", str(port)).encode("latin-1"))
        return line.makefile("rb").readline().decode("latin-1")


@pytest.mark.parametrize(
    "hosts", ["Host: 127.0.0.1:PORT\r\nHost: evil.example\r\n", "Host: evil.example\r\nHost: 127.0.0.1:PORT\r\n"]
)
def test_two_hosts_are_refused(port, hosts):
    assert " 403 " in asked_as_it_stands(port, f"GET /summary.md HTTP/1.1\r\n{hosts}\r\n")


@pytest.mark.parametrize("target", ["http://evil.example/summary.md", "http://[::1/", "summary.md", "*"])
def test_a_target_that_is_no_path_is_refused_in_words(port, target):
    assert " 400 " in asked_as_it_stands(port, f"GET {target} HTTP/1.1\r\nHost: 127.0.0.1:PORT\r\n\r\n")


@pytest.mark.parametrize(
    ("target", "more", "code"),
    [("/" + 70_000 * "a", "", 414), ("/", f"X: {70_000 * 'a'}\r\n", 431), ("/", 150 * "X: a\r\n", 431)],
)
def test_endless_requests_are_refused(port, target, more, code):
    request = f"GET {target} HTTP/1.1\r\nHost: 127.0.0.1:PORT\r\n{more}\r\n"
    assert f" {code} " in asked_as_it_stands(port, request)


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="no pipes with a name")
def test_what_is_no_file_is_not_opened(folder):
    (folder / "summary.md").unlink()
    os.mkfifo(folder / "summary.md")
    assert file_of_set(folder, "summary.md") is None


@pytest.mark.parametrize("method", ["POST", "PUT", "DELETE", "OPTIONS", "TRACE"])
def test_nothing_can_be_sent(port, method):
    assert ask(port, "/", method=method)[0] == 501


def other_addresses():
    try:
        found = {info[4][0] for info in socket.getaddrinfo(socket.gethostname(), None, socket.AF_INET)}
    except OSError:
        found = set()
    return sorted({"127.0.0.2", *found} - {"127.0.0.1"})


@pytest.mark.parametrize("address", other_addresses())
def test_it_listens_on_one_address_only(port, address):
    with pytest.raises(OSError, match=r"refused|unreachable|assign|timed out"):
        socket.create_connection((address, port), timeout=5).close()


def events(stream):
    for line in stream:
        if line.startswith(b"data: "):
            yield json.loads(line.removeprefix(b"data: "))


def test_news_come_as_they_are_put_up(port, board, folder):
    with closing(http.client.HTTPConnection("127.0.0.1", port, timeout=60)) as connection:
        connection.request("GET", "/watch/news")
        answer = connection.getresponse()
        assert answer.headers["Content-Type"].startswith("text/event-stream")
        news = events(answer)
        first = next(news)
        assert (first["words"], first["wrong"]) == ("built", False)
        board.say("wrong\n<line>", wrong=True)
        second = next(news)
        assert second == {"page": first["page"], "words": "wrong\n<line>", "wrong": True}
        board.turn("<html><body>page two</body></html>", folder, "again")
        third = next(news)
        assert third["page"] != first["page"]
        assert not third["wrong"]
        assert b"page two" in ask(port, "/")[1]


def test_it_says_that_it_is_there_while_nothing_happens(port, monkeypatch):
    monkeypatch.setattr(server, "_ALIVE", 0.05)
    with closing(http.client.HTTPConnection("127.0.0.1", port, timeout=60)) as connection:
        connection.request("GET", "/watch/news")
        assert any(line.startswith(b": ") for line in connection.getresponse())


def test_the_end_closes_what_is_open_and_frees_the_port(board):
    with served(board) as address:
        port = int(address.rstrip("/").rsplit(":", 1)[1])
        connection = http.client.HTTPConnection("127.0.0.1", port, timeout=60)
        connection.request("GET", "/watch/news")
        answer = connection.getresponse()
        assert next(events(answer))
    assert list(events(answer)) == []
    connection.close()
    with served(Board(), port) as again:
        assert again == address


def test_a_port_that_is_taken_is_told(board):
    with socket.create_server(("127.0.0.1", 0)) as taken:
        port = taken.getsockname()[1]
        with (
            pytest.raises(MachineError, match=rf"port {port} of 127\.0\.0\.1 cannot be had.*--port"),
            served(board, port),
        ):
            pass


def test_a_browser_that_hangs_up_disturbs_nobody(port, board, capsys):
    for _ in range(3):
        with socket.create_connection(("127.0.0.1", port)) as line:
            line.sendall(b"GET /watch/news HTTP/1.1\r\nHost: 127.0.0.1:%d\r\n\r\n" % port)
        board.say("x")
    with socket.create_connection(("127.0.0.1", port)) as line:
        line.sendall(b"\x16\x03nonsense\r\n\r\n")
        line.recv(100)
    assert ask(port, "/")[0] == 200
    assert capsys.readouterr() == ("", "")


def test_a_board_wakes_all_who_wait():
    board, woken = Board(), []
    threads = [threading.Thread(target=lambda: woken.append(board.newer(0, 60))) for _ in range(3)]
    for thread in threads:
        thread.start()
    board.say("news")
    for thread in threads:
        thread.join(60)
    assert [shown.words for shown in woken] == ["news"] * 3
    assert board.newer(board.shown.version, 0.01) is None
