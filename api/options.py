"""What can be set: by arguments of `create_app`, or by environment variables for `anchorcalc_api.app`."""

import os

import msgspec


class Options(msgspec.Struct, frozen=True, kw_only=True, forbid_unknown_fields=True):
    """How the application behaves. In the environment each name stands in capitals behind `ANCHORCALC_`: `ANCHORCALC_METRICS=true`."""

    cors_origins: tuple[str, ...] = ("*",)  # who may read answers from a web page; empty: nobody
    docs: bool = True  # serve /docs
    access_log: bool = False  # a line of JSON a request, to standard output (or what the logger `anchorcalc_api.access` was given)
    metrics: bool = False  # serve /metrics for Prometheus
    rate_per_minute: int = 0  # requests a client and minute, in each worker; 0: no limit
    most_query: int = 8192  # bytes of a query
    most_headers: int = 16384  # bytes of all headers
    most_body: int = 65536  # bytes of a body
    most_fixes_body: int = 2_097_152  # bytes of a body that may hold fixes
    body_seconds: float = 20.0  # for the whole body to arrive; of a table, for its next part
    most_table_body: int = 268_435_456  # bytes of a table
    most_table_json: int = 16_777_216  # bytes of a table that is one JSON array, which must be read whole
    most_table_rows: int = 5_000_000  # rows of a table
    most_tables: int = 2  # tables answered at once, in each worker


def options_from_environment() -> Options:
    """Return the options that the environment sets, the usual ones for the rest."""
    given: dict[str, object] = {}
    for name in Options.__struct_fields__:
        text = os.environ.get(f"ANCHORCALC_{name.upper()}")
        if text is not None:
            given[name] = tuple(part.strip() for part in text.split(",") if part.strip()) if name == "cors_origins" else text
    return msgspec.convert(given, Options, strict=False)
