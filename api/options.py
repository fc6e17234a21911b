"""What can be set: by arguments of `create_app`, or by environment variables for `anchorcalc_api.app`."""

import os
from collections.abc import Mapping
from difflib import get_close_matches
from typing import Any

import msgspec

from anchorcalc.errors import Fault, InputError, fault


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


def options_from(given: Mapping[str, Any], *, strict: bool = True) -> Options:
    """Return the options that are given, the usual ones for the rest; unless `strict`, texts stand for numbers and for yes and no.

    Raises
    ------
    InputError
        With one fault for every option that is unknown or of the wrong kind.
    """
    known = Options.__annotations__
    faults = [_unknown(name, value) for name, value in given.items() if name not in known]
    chosen: dict[str, Any] = {}
    for name, value in given.items():
        if name in known:
            try:
                chosen[name] = msgspec.convert(value, known[name], strict=strict)
            except msgspec.ValidationError as error:
                faults.append(fault(name, "wrong_kind", value, f"will not do as an option ({error})", _text_of(getattr(Options(), name))))
    if faults:
        raise InputError(faults)
    return Options(**chosen)


def _unknown(name: str, value: Any) -> Fault:
    near = get_close_matches(name, Options.__struct_fields__, n=1, cutoff=0.55)
    return fault(
        name, "unknown_input", value, "is no option of the application", near[0] if near else "one of " + ", ".join(Options.__struct_fields__)
    )


def _text_of(value: Any) -> str:
    return msgspec.json.encode(value).decode()


def options_from_environment() -> Options:
    """Return the options that the environment sets, the usual ones for the rest."""
    given: dict[str, object] = {}
    for name in Options.__struct_fields__:
        text = os.environ.get(f"ANCHORCALC_{name.upper()}")
        if text is not None:
            given[name] = tuple(part.strip() for part in text.split(",") if part.strip()) if name == "cors_origins" else text
    return options_from(given, strict=False)
