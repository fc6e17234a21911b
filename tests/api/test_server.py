"""The application under a real server: documentation, logs, counts, slow clients, and stopping."""

import json
import re
import signal
import socket
import threading
import time

import httpx

from tests.api.server import Server, served

BODY = b'{"depth": "4 m", "bow_height": "1 m"}'
HEAD = b"POST /v1/rode-to-let-out HTTP/1.1\r\nHost: anchorage.test\r\nContent-Type: application/json\r\nContent-Length: %d\r\n\r\n" % len(BODY)


def received(connection: socket.socket) -> bytes:
    """Return all that the server sends until it is silent for a moment, or closes."""
    connection.settimeout(5.0)
    found = b""
    while b"\r\n\r\n" not in found or len(found.partition(b"\r\n\r\n")[2]) < length_said(found):
        part = connection.recv(65536)
        if not part:
            break
        found += part
    return found


def length_said(found: bytes) -> int:
    """Return the length that a response says its body has."""
    said = re.search(rb"content-length: (\d+)", found.partition(b"\r\n\r\n")[0], re.I)
    return int(said[1]) if said else 0


def test_the_documentation_needs_nothing_from_elsewhere(server: Server) -> None:
    page = httpx.get(f"{server.url}/docs")
    assert page.status_code == 200
    wanted = re.findall(r'(?:src|href)="([^"]+)"', page.text)
    assert {"docs/swagger-ui-bundle.js", "docs/swagger-ui.css", "docs/docs.js"} <= set(wanted)
    for one in wanted:
        if not one.startswith("data:"):
            assert not one.startswith(("http:", "https:", "//"))
            found = httpx.get(f"{server.url}/{one}")
            assert found.status_code == 200, one
            assert len(found.content) > 50
    assert httpx.get(f"{server.url}/docs/swagger-ui-LICENSE.txt").text.count("Apache License") > 0
    policy = page.headers["content-security-policy"]
    assert "script-src 'self'" in policy
    assert "unsafe" not in policy


def test_the_access_log_names_routes_and_no_texts_or_positions(server: Server) -> None:
    httpx.get(f"{server.url}/v1/rode-to-let-out", params={"depth": "4.321 m"}, headers={"X-Request-ID": "logged-1"})
    httpx.get(f"{server.url}/v1/ask", params={"text": "secret cove"}, headers={"X-Request-ID": "logged-2"})
    httpx.get(f"{server.url}/59.314N-18.912E", headers={"X-Request-ID": "logged-3"})
    httpx.post(f"{server.url}/v1/ask", json={"text": "hidden holm"})
    time.sleep(0.5)
    log = server.log.read_text()
    lines = [json.loads(one) for one in log.splitlines() if one.startswith('{"request_id"')]
    by_id = {one["request_id"]: one for one in lines}
    assert by_id["logged-1"].items() >= {"method": "GET", "route": "/v1/rode-to-let-out", "status": 200, "client": "127.0.0.1"}.items()
    assert by_id["logged-3"].items() >= {"route": "(none)", "status": 404}.items()
    assert not re.search(r"4\.321|secret|hidden|59\.314", log)


def test_counts_are_kept_by_route(server: Server) -> None:
    httpx.get(f"{server.url}/v1/swing-radius")
    httpx.get(f"{server.url}/a-path-that-nobody-has")
    text = httpx.get(f"{server.url}/metrics").text
    assert re.search(r'anchorcalc_requests_total\{method="GET",route="/v1/swing-radius",status="422"\} [1-9]', text)
    assert "a-path-that-nobody-has" not in text


def test_a_body_that_does_not_arrive_is_given_up(server: Server) -> None:
    with socket.create_connection(("127.0.0.1", server.port)) as slow:
        slow.sendall(HEAD + BODY[:10])
        found = received(slow)
    assert found.startswith(b"HTTP/1.1 408")
    assert b"application/problem+json" in found
    assert httpx.get(f"{server.url}/health").status_code == 200


def test_a_body_larger_than_it_said_or_may_be_is_refused(server: Server) -> None:
    def parts() -> list[bytes]:
        return [b'{"depth": "' + b"x" * 30_000] * 5

    found = httpx.post(f"{server.url}/v1/rode-to-let-out", content=iter(parts()), headers={"Content-Type": "application/json"})
    assert (found.status_code, found.json()["errors"][0]["code"]) == (413, "too_large")


def test_head_and_kept_answers_leave_the_connection_usable(server: Server) -> None:
    with httpx.Client(base_url=server.url) as client:
        for _ in range(3):
            tag = client.get("/v1/rode-to-let-out", params={"depth": "4 m"}).headers["etag"]
            assert client.head("/v1/rode-to-let-out", params={"depth": "4 m"}).headers["etag"] == tag
            assert client.get("/v1/rode-to-let-out", params={"depth": "4 m"}, headers={"If-None-Match": tag}).status_code == 304


def test_stopping_loses_no_request_in_flight() -> None:
    with served(workers=1) as server:
        with socket.create_connection(("127.0.0.1", server.port)) as one:
            one.sendall(HEAD + BODY[:10])
            time.sleep(0.3)
            server.process.send_signal(signal.SIGTERM)
            time.sleep(0.5)
            one.sendall(BODY[10:])
            found = received(one)
        assert found.startswith(b"HTTP/1.1 200")
        assert json.loads(found.partition(b"\r\n\r\n")[2])["results"]["rode_out"]["si"] == 35.0
        server.process.wait(timeout=15)


def test_stopping_breaks_no_answer_off() -> None:
    broken: list[str] = []
    answered = 0
    lock = threading.Lock()

    def ask(url: str) -> None:
        nonlocal answered
        with httpx.Client(base_url=url, timeout=10.0) as client:
            for number in range(10_000):
                try:
                    found = client.get("/v1/rode-to-let-out", params={"depth": f"{4 + number % 100 / 100} m"})
                except (httpx.ConnectError, httpx.RemoteProtocolError, httpx.ReadError) as error:
                    if not isinstance(error, httpx.ConnectError) and "without sending" not in str(error) and "reset" not in str(error).lower():
                        broken.append(repr(error))
                    return
                with lock:
                    answered += 1
                if found.status_code != 200 or not found.content.endswith(b"}"):
                    broken.append(found.text)

    with served(workers=2) as server:
        askers = [threading.Thread(target=ask, args=(server.url,)) for _ in range(4)]
        for one in askers:
            one.start()
        time.sleep(1.0)
        server.process.send_signal(signal.SIGTERM)
        for one in askers:
            one.join(timeout=20)
    assert answered > 20
    assert broken == []
