"""A client in process, and a real server."""

from collections.abc import Iterator

import httpx
import pytest

import anchorcalc_api
from anchorcalc_api.front import Front
from tests.api.server import Server, client_of, served


@pytest.fixture(scope="session")
def app() -> Front:
    """The application with the usual options."""
    return anchorcalc_api.create_app()


@pytest.fixture(scope="session")
def client(app: Front) -> Iterator[httpx.Client]:
    """A client that talks to the application in process."""
    with client_of(app) as found:
        yield found


@pytest.fixture(scope="session")
def server() -> Iterator[Server]:
    """A server process of its own, on a free port."""
    with served(access_log="true", metrics="true", body_seconds="1.5") as found:
        yield found
