"""Tables over HTTP: checked before the answer starts, answered in the form they came in, broken off where they go wrong later."""

import io
import json
import socket
import threading
import time
from collections.abc import Iterator

import httpx
import pyarrow as pa
import pytest

import anchorcalc_api
from anchorcalc import check_table
from tests.api.server import Server, client_of, served

ROWS = {"boat": ["Skarv", "Lom", "Teist"], "depth [m]": [4.0, 900.0, 5.5], "bow_height": ["1 m", "1 m", None]}
CSV = b"boat,depth [m],bow_height\nSkarv,4.0,1 m\nLom,900,1 m\nTeist,5.5,\n"
PATH = "/v1/fleet/rode-to-let-out"


@pytest.fixture(scope="module")
def client() -> Iterator[httpx.Client]:
    with client_of(anchorcalc_api.create_app(most_table_rows=1000, most_table_body=100_000, most_table_json=20_000)) as found:
        yield found


def _asked(client: httpx.Client, body: bytes, kind: str, path: str = PATH, **headers: str) -> httpx.Response:
    return client.post(path, content=body, headers={"Content-Type": kind, **headers})


@pytest.fixture(scope="module")
def wanted() -> dict[str, list[object]]:
    made = check_table("rode_to_let_out", ROWS)
    return {"rode_out [m]": made["rode_out [m]"].tolist(), "problem": made["problem"].tolist()}


def test_csv_is_answered_in_csv(client: httpx.Client, wanted: dict[str, list[object]]) -> None:
    response = _asked(client, CSV, "text/csv; charset=utf-8")
    assert response.status_code == 200
    assert response.headers["content-type"] == "text/csv; charset=utf-8"
    rows = pa.csv.read_csv(io.BytesIO(response.content))
    assert rows["rode_out [m]"].to_pylist() == [35.0, None, wanted["rode_out [m]"][2]]
    assert rows["problem"].to_pylist() == wanted["problem"]


@pytest.mark.parametrize("kind", ["application/x-ndjson", "application/jsonl"])
def test_json_lines_are_answered_in_json_lines(client: httpx.Client, wanted: dict[str, list[object]], kind: str) -> None:
    lines = [{name: column[row] for name, column in ROWS.items()} for row in range(3)]
    response = _asked(client, "\n".join(json.dumps(line) for line in lines).encode(), kind)
    assert response.headers["content-type"] == "application/x-ndjson"
    answers = [json.loads(line) for line in response.text.splitlines()]
    assert [answer["problem"] for answer in answers] == wanted["problem"]
    assert answers[0]["rode_out [m]"] == 35.0
    assert "rode_out [m]" not in answers[1]
    assert answers[2]["bow_height"] is None, "what was given stays as it was"


def test_a_json_array_is_answered_in_a_json_array(client: httpx.Client, wanted: dict[str, list[object]]) -> None:
    lines = [{name: column[row] for name, column in ROWS.items()} for row in range(3)]
    answers = _asked(client, json.dumps(lines).encode(), "application/json").json()
    assert [answer["problem"] for answer in answers] == wanted["problem"]


def test_a_row_of_csv_with_a_cell_too_many_goes_unanswered_alone(client: httpx.Client) -> None:
    response = _asked(client, b"boat,depth [m],bow_height\nSkarv,4.0,1 m\nLom,4,1 m,x\nTeist,5\n", "text/csv")
    assert response.status_code == 200
    rows = pa.csv.read_csv(io.BytesIO(response.content))
    assert rows["boat"].to_pylist() == ["Skarv", "Lom", "Teist"]
    assert rows["rode_out [m]"].to_pylist() == [35.0, None, 43.4]
    assert rows["problem"].to_pylist()[1].startswith("table: 'x' stands beyond the last heading (4 cells, 3 headings)")


def test_csv_that_has_lost_its_ends_of_line_is_refused(client: httpx.Client) -> None:
    for body in (CSV.replace(b"\n", b""), CSV.replace(b"\n", b"") * 1500, CSV.splitlines()[0]):
        response = _asked(client, body, "text/csv")
        assert response.status_code == 400
        assert response.json()["detail"].startswith("body: is one line: it has no rows, or the ends of its lines were lost on the way; ")
    assert _asked(client, CSV.splitlines()[0] + b"\n", "text/csv").status_code == 200
    assert len(_asked(client, CSV.replace(b"\n", b"\r"), "text/csv").text.splitlines()) == 4


def test_an_arrow_stream_is_answered_in_an_arrow_stream(client: httpx.Client, wanted: dict[str, list[object]]) -> None:
    table = pa.table(ROWS)
    file = io.BytesIO()
    with pa.ipc.new_stream(file, table.schema) as writer:
        writer.write_table(table)
    response = _asked(client, file.getvalue(), "application/vnd.apache.arrow.stream")
    answered = pa.ipc.open_stream(io.BytesIO(response.content)).read_all()
    assert answered.select(table.schema.names).equals(table)
    assert answered["problem"].to_pylist() == wanted["problem"]


def test_a_list_stands_in_json_as_a_list(client: httpx.Client) -> None:
    body = b'{"rode_aboard": "60 m", "mark_interval": "20 m"}'
    answer = json.loads(_asked(client, body, "application/x-ndjson", "/v1/fleet/mark-plan").content)
    assert [row["mark"]["value"] for row in answer["plan"]] == [1.0, 2.0, 3.0]


@pytest.mark.parametrize(
    ("body", "kind", "path", "status", "code"),
    [
        (CSV, "text/plain", PATH, 415, "unsupported_media_type"),
        (CSV, "text/csv; charset=latin-1", PATH, 415, "unsupported_media_type"),
        (CSV, "text/csv", "/v1/fleet/rode-to-let-ot", 404, "unknown_question"),
        (b"boat,notes\nSkarv,none\n", "text/csv", PATH, 422, "missing"),
        (b"depth [parsec]\n4\n", "text/csv", PATH, 422, "unknown_unit"),
        (b"depth [kg]\n4\n", "text/csv", PATH, 422, "wrong_dimension"),
        (b"depth [m],depth\n4,4 m\n", "text/csv", PATH, 422, "given_twice"),
        (b"depth [m],bow heigth\n4,1 m\n", "text/csv", PATH + "?strict=true", 422, "unknown_input"),
        (b"depth [m]\n4\n", "text/csv", PATH + "?units=roman", 422, "unknown_word"),
        (b"depth [m]\n4\n", "text/csv", PATH + "?unit=us", 422, "unknown_input"),
        (b"", "text/csv", PATH, 400, "unreadable"),
        (b"depth [m]\n\xff\xfe\n", "text/csv", PATH, 400, "unreadable"),
        (b"[1, 2]", "application/json", PATH, 400, "unreadable"),
        (b'{"depth": ', "application/x-ndjson", PATH, 400, "unreadable"),
        (b"no arrow", "application/vnd.apache.arrow.stream", PATH, 400, "unreadable_request"),
        (b"depth [m]\n" + b"4\n" * 1002, "text/csv", PATH, 413, "too_large"),
        (b"depth [m]\n" + b"4" * 100_000, "text/csv", PATH, 413, "too_large"),
        (b"[" + b'{"depth": "4 m"},' * 1001 + b'{"depth": "4 m"}]', "application/json", PATH, 413, "too_large"),
    ],
)
def test_what_will_not_do_is_refused_before_the_answer_starts(
    client: httpx.Client, body: bytes, kind: str, path: str, status: int, code: str
) -> None:
    response = _asked(client, body, kind, path)
    assert (response.status_code, response.json()["errors"][0]["code"]) == (status, code)
    assert response.headers["content-type"] == "application/problem+json"


@pytest.mark.parametrize(
    ("head", "row", "status", "code"),
    [
        (b"depth [parsec]\n", b"4.123" + b" " * 100 + b"\n", 422, "unknown_unit"),
        (b"depth [m]\n", b"\xff" * 100 + b"\n", 400, "unreadable"),
        (b"depth [m],x\n", b"4.123," + b"x" * 100 + b"\n", 200, ""),
    ],
)
def test_a_large_table_is_checked_and_answered_alike(client: httpx.Client, head: bytes, row: bytes, status: int, code: str) -> None:
    body = head + row * (70_000 // len(row))
    response = _asked(client, body, "text/csv")
    assert response.status_code == status
    if code:
        assert response.json()["errors"][0]["code"] == code
    else:
        assert response.content.count(b"\n") == body.count(b"\n")


def test_another_form_than_the_table_s_own_is_not_given(client: httpx.Client) -> None:
    assert _asked(client, CSV, "text/csv", Accept="application/json").status_code == 406
    assert _asked(client, CSV, "text/csv", Accept="text/*").status_code == 200


def test_a_boat_lies_under_every_row(client: httpx.Client) -> None:
    response = client.post(PATH, params={"boat": '{"bow_height": "2 m"}'}, content=b"depth [m]\n4\n", headers={"Content-Type": "text/csv"})
    assert b"42" in response.content


@pytest.fixture(scope="module")
def server() -> Iterator[Server]:
    with served(most_tables="1") as found:
        yield found


def test_a_fault_on_the_way_breaks_the_connection_off(server: Server) -> None:
    rows = b"".join(b"4.%d,1 m\n" % (row % 10) for row in range(400_000))
    body = b"depth [m],bow_height\n" + rows + b"4,\xff m\n" + rows
    with pytest.raises(httpx.RemoteProtocolError), httpx.Client(timeout=60) as client:
        client.post(f"{server.url}{PATH}", content=body, headers={"Content-Type": "text/csv"})


def test_a_slow_or_broken_body_leaves_the_server_free_for_the_next(server: Server) -> None:
    with socket.create_connection(("127.0.0.1", server.port)) as half:
        half.sendall(b"POST /v1/fleet/rode-to-let-out HTTP/1.1\r\nHost: a\r\nContent-Type: text/csv\r\nContent-Length: 100\r\n\r\ndepth")
    _wait_until_free(server)


def _wait_until_free(server: Server) -> None:
    for _ in range(50):
        response = httpx.post(f"{server.url}{PATH}", content=CSV, headers={"Content-Type": "text/csv"})
        if response.status_code == 200:
            return
        assert response.status_code == 429
        time.sleep(0.1)
    pytest.fail("a table that nobody waits for is still under way")


def test_a_client_that_goes_away_ends_its_table(server: Server) -> None:
    body = b"depth [m]\n" + b"4.5\n" * 2_000_000
    with httpx.Client(timeout=30) as client, client.stream("POST", f"{server.url}{PATH}", content=body, headers={"Content-Type": "text/csv"}) as got:
        next(got.iter_raw())
    _wait_until_free(server)


def test_single_questions_are_answered_while_a_table_is(server: Server) -> None:
    body = b"depth [m],bow_height [m],scope\n" + b"".join(
        b"%d.%d,1.%d,%d\n" % (row % 40 + 1, row % 10, row % 7, row % 5 + 4) for row in range(300_000)
    )
    done: list[httpx.Response] = []
    table = threading.Thread(
        target=lambda: done.append(httpx.post(f"{server.url}{PATH}", content=body, headers={"Content-Type": "text/csv"}, timeout=60))
    )
    singles = 0
    with httpx.Client(base_url=server.url) as client:
        table.start()
        while table.is_alive():
            assert client.get("/v1/rode-to-let-out?depth=4+m").status_code == 200
            singles += 1
        table.join()
    assert done[0].content.count(b"\n") == 300_001
    assert singles > 20
