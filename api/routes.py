"""The routes of version 1: every question by query and by body, its picture, `ask`, and the catalogue."""

import asyncio
from collections.abc import Callable
from functools import cache
from typing import Any, NamedTuple

import msgspec
from litestar import Request
from litestar.handlers import HTTPRouteHandler, route
from litestar.types import ASGIApp

from anchorcalc.answering.answer import answer
from anchorcalc.answering.replies import Answer
from anchorcalc.catalogue import catalogue
from anchorcalc.catalogue import question as named
from anchorcalc.declare import Question
from anchorcalc.doors.python import checked_boat, entry_of, has_picture, questions
from anchorcalc.units.kinds import FIXES, POSITION

from .asking import ask_routes
from .bodies import body_of, given_in_body, given_in_query, only_json
from .common import options_handler, path_of, wanted
from .fleet import fleet_routes
from .negotiation import JSON, SVG, Wishes, wishes
from .options import Options
from .reply import API_POLICY, PRIVATE, PUBLIC, fixed, kept, not_modified, remember, remembered, tag_of, unkept

SVG_POLICY = b"default-src 'none'; frame-ancestors *"
LARGE = 16_384  # bytes of a body from which a question is answered beside the event loop, so that others need not wait
_encode = msgspec.json.Encoder().encode


def route_handlers(options: Options) -> list[HTTPRouteHandler]:
    """Return all handlers of version 1. Further doors of the API add theirs here."""
    handlers = [*_catalogue_handlers(), *ask_routes(options), *fleet_routes(options)]
    for question in catalogue():
        handlers.extend(_question_handlers(question, options))
    return handlers


# --- a question ---------------------------------------------------------------------------------------------------------------------


class Form(NamedTuple):
    """A form that an answer comes in: its media type, policy, and how its bytes are made."""

    media: bytes
    policy: bytes
    write: Callable[[Answer], bytes]


def _drawn(given: Answer) -> bytes:
    import anchorcalc

    drawn: str = anchorcalc.draw(given)
    return drawn.encode()


_FORMS = {JSON: Form(JSON.encode(), API_POLICY, _encode), SVG: Form(SVG.encode(), SVG_POLICY, _drawn)}


def answered(question: Question, given: dict[str, Any]) -> Answer:
    """Return the answer to a question for what a request gave."""
    boat, units = given.pop("boat", None), given.pop("units", None)
    return answer(question, given, boat=checked_boat(boat), units=units)


def _question_handlers(question: Question, options: Options) -> list[HTTPRouteHandler]:
    path, picture = path_of(question.name), has_picture(question.name)
    by_url = _by_url(question)

    @route(path, http_method=["GET", "HEAD"], sync_to_thread=False)
    def by_query(request: Request[Any, Any, Any]) -> ASGIApp:
        wish = wishes(request.scope)
        return by_url(request.scope["query_string"], wanted(wish, picture=picture), wish)

    @route(f"{path}.svg", http_method=["GET", "HEAD"], sync_to_thread=False)
    def by_picture(request: Request[Any, Any, Any]) -> ASGIApp:
        return by_url(request.scope["query_string"], SVG, wishes(request.scope))

    pictures = [options_handler(f"{path}.svg", "GET", "HEAD"), by_picture] if picture else []
    return [options_handler(path, "GET", "HEAD", "POST"), by_query, _by_body(question, options), *pictures]


def _by_url(question: Question) -> Callable[[bytes, str, Wishes], ASGIApp]:
    """Return what answers a question by its query, in a form that was settled."""
    name = question.name
    places = tuple(one.name for one in question.inputs.values() if one.term.kind in (POSITION, FIXES))

    def by_url(query: bytes, media: str, wish: Wishes) -> ASGIApp:
        if wish.none_match:
            known = remembered(name=name, media=media, query=query)
            unchanged = not_modified(known, wish) if known is not None else None
            if unchanged is not None:
                return unchanged
        form, made = _FORMS[media], answered(question, given_in_query(query))
        body = form.write(made)
        tag = tag_of(body, keep=PRIVATE if places and any(getattr(made.read, place) is not None for place in places) else PUBLIC)
        if wish.none_match:
            remember(tag, name=name, media=media, query=query)
        return kept(body, tag, wish, media=form.media, policy=form.policy)

    return by_url


def _by_body(question: Question, options: Options) -> HTTPRouteHandler:
    picture = has_picture(question.name)
    most = options.most_fixes_body if any(one.term.kind is FIXES for one in question.inputs.values()) else options.most_body

    @route(path_of(question.name), http_method="POST", status_code=200)
    async def by_body(request: Request[Any, Any, Any]) -> ASGIApp:
        wish = wishes(request.scope)
        form = _FORMS[wanted(wish, picture=picture)]
        only_json(request.scope)
        body = await body_of(request.receive, most=most, seconds=options.body_seconds)

        def written() -> bytes:
            return form.write(answered(question, given_in_body(body)))

        made = await asyncio.to_thread(written) if len(body) > LARGE else written()
        return unkept(made, wish, media=form.media, policy=form.policy)

    return by_body


# --- the catalogue ------------------------------------------------------------------------------------------------------------------


def _catalogue_handlers() -> list[HTTPRouteHandler]:
    @route("/v1/questions", http_method=["GET", "HEAD"], sync_to_thread=False)
    def all_questions(request: Request[Any, Any, Any]) -> ASGIApp:
        wish = wishes(request.scope)
        wanted(wish, picture=False)
        return fixed(_catalogue(), wish, media=JSON.encode())

    @route("/v1/questions/{question:str}", http_method=["GET", "HEAD"], sync_to_thread=False)
    def one_question(request: Request[Any, Any, Any]) -> ASGIApp:
        wish = wishes(request.scope)
        wanted(wish, picture=False)
        return fixed(_entry(named(request.path_params["question"]).name), wish, media=JSON.encode())

    return [
        options_handler("/v1/questions", "GET", "HEAD"),
        all_questions,
        options_handler("/v1/questions/{question:str}", "GET", "HEAD"),
        one_question,
    ]


@cache
def _catalogue() -> bytes:
    return _encode(questions())


@cache
def _entry(name: str) -> bytes:
    return _encode(entry_of(name))
