"""What in one OpenAPI document breaks the programs written against an earlier one.

Version 1 only ever adds. A request may grow looser and an answer may grow richer; whatever was there must stay, under its name. `python -m
tests.api.breaking OLD NEW` lists what breaks and fails where anything does.
"""

import json
import sys
from collections.abc import Iterator
from pathlib import Path
from typing import Any

Schema = dict[str, Any]
_METHODS = ("get", "post", "put", "patch", "delete")
_TIGHTER_UP = ("minLength", "minItems", "minimum", "exclusiveMinimum", "x-minimum", "x-more-than")
_TIGHTER_DOWN = ("maxLength", "maxItems", "maximum", "exclusiveMaximum", "x-maximum")


class Comparison:
    """Two documents, and the pairs of schemas that were looked at already."""

    def __init__(self, *, old: Schema, new: Schema) -> None:
        self.old, self.new = old, new
        self.seen: set[tuple[str, str, bool]] = set()

    def breaks(self) -> Iterator[str]:
        """Yield everything that breaks."""
        for path, operations in self.old["paths"].items():
            for method in _METHODS:
                if method in operations:
                    yield from self._operation(operations[method], self.new["paths"].get(path, {}).get(method), where=f"{method.upper()} {path}")
        for name in self.old["components"]["schemas"]:
            if name not in self.new["components"]["schemas"]:
                yield f"component {name} is gone"

    def _operation(self, old: Schema, new: Schema | None, *, where: str) -> Iterator[str]:
        if new is None:
            yield f"{where} is gone"
            return
        if old["operationId"] != new["operationId"]:
            yield f"{where}: operationId {old['operationId']} became {new['operationId']}"
        yield from self._parameters(old, new, where=where)
        if "requestBody" in old:
            for media, content in old["requestBody"]["content"].items():
                now = new.get("requestBody", {}).get("content", {}).get(media)
                yield from (
                    [f"{where}: body {media} is gone"]
                    if now is None
                    else self._schema(content["schema"], now["schema"], asks=True, where=f"{where} body")
                )
        for status, response in old["responses"].items():
            now = new["responses"].get(status)
            yield from [f"{where}: response {status} is gone"] if now is None else self._response(response, now, where=f"{where} {status}")

    def _parameters(self, old: Schema, new: Schema, *, where: str) -> Iterator[str]:
        before = {one["name"]: one for one in (self._resolved(one, self.old) for one in old.get("parameters", ()))}
        after = {one["name"]: one for one in (self._resolved(one, self.new) for one in new.get("parameters", ()))}
        for name, one in before.items():
            if name not in after:
                yield f"{where}: parameter {name} is gone"
                continue
            if after[name].get("required") and not one.get("required"):
                yield f"{where}: parameter {name} must now be given"
            yield from self._schema(one["schema"], after[name]["schema"], asks=True, where=f"{where} parameter {name}")
        yield from (f"{where}: new parameter {name} must be given" for name, one in after.items() if one.get("required") and name not in before)

    def _response(self, old: Schema, new: Schema, *, where: str) -> Iterator[str]:
        old, new = self._resolved(old, self.old), self._resolved(new, self.new)
        for media, content in old.get("content", {}).items():
            if media not in new.get("content", {}):
                yield f"{where}: {media} is gone"
            else:
                yield from self._schema(content["schema"], new["content"][media]["schema"], asks=False, where=where)
        yield from (f"{where}: header {name} is gone" for name in old.get("headers", {}) if name not in new.get("headers", {}))

    @staticmethod
    def _resolved(one: Schema, document: Schema) -> Schema:
        while "$ref" in one:
            found: Any = document
            for part in one["$ref"].removeprefix("#/").split("/"):
                found = found.get(part, {})
            one = {**found, **{key: value for key, value in one.items() if key != "$ref"}}
        return one

    def _schema(self, old: Schema, new: Schema, *, asks: bool, where: str) -> Iterator[str]:
        """Compare two schemas: of what is asked (`asks`: the new must take all that the old took) or of what is answered."""
        key = (json.dumps(old, sort_keys=True), json.dumps(new, sort_keys=True), asks)
        if key in self.seen:
            return
        self.seen.add(key)
        old, new = self._resolved(old, self.old), self._resolved(new, self.new)
        if "type" in old and old.get("type") != new.get("type") and not (asks and "type" not in new):
            yield f"{where}: type {old['type']} became {new.get('type', 'anything')}"
            return
        if "const" in old and old["const"] != new.get("const"):
            yield f"{where}: constant {old['const']} became {new.get('const')}"
        yield from (f"{where}: word {word} is gone" for word in old.get("enum", ()) if word not in new.get("enum", [word] if asks else ()))
        yield from (f"{where}: code {code} is gone" for code in old.get("x-codes", ()) if code not in new.get("x-codes", ()))
        if asks:
            yield from _tighter(old, new, where=where)
        yield from self._variants(old, new, asks=asks, where=where)
        yield from self._properties(old, new, asks=asks, where=where)
        if "items" in old and "items" in new:
            yield from self._schema(old["items"], new["items"], asks=asks, where=f"{where}[]")

    def _variants(self, old: Schema, new: Schema, *, asks: bool, where: str) -> Iterator[str]:
        for kind in ("anyOf", "oneOf"):
            remaining = list(new.get(kind, ()))
            for place, variant in enumerate(old.get(kind, ())):
                fits = next((one for one in remaining if not list(self._quietly(variant, one, asks=asks))), None)
                if fits is None:
                    yield f"{where}: variant {variant.get('$ref', place + 1)} is gone or changed"
                else:
                    remaining.remove(fits)

    def _quietly(self, old: Schema, new: Schema, *, asks: bool) -> list[str]:
        """Compare two variants with a memory of their own: what does not fit here may fit the next."""
        if "$ref" in old or "$ref" in new:
            if old.get("$ref") != new.get("$ref"):
                return ["another component"]
            return list(self._schema(old, new, asks=asks, where="variant"))
        inner = Comparison(old=self.old, new=self.new)
        return list(inner._schema(old, new, asks=asks, where="variant"))

    def _properties(self, old: Schema, new: Schema, *, asks: bool, where: str) -> Iterator[str]:
        now = new.get("properties", {})
        for name, one in old.get("properties", {}).items():
            if name not in now:
                yield f"{where}: {name} is gone"
            else:
                yield from self._schema(one, now[name], asks=asks, where=f"{where}.{name}")
        needed_before, needed_now = set(old.get("required", ())), set(new.get("required", ()))
        if asks:
            yield from (f"{where}: {name} must now be given" for name in sorted(needed_now - needed_before))
            if new.get("additionalProperties") is False and old.get("additionalProperties") is not False and old.get("type") == "object":
                yield f"{where}: names besides these are no longer taken"
        else:
            yield from (f"{where}: {name} is no longer always there" for name in sorted(needed_before - needed_now) if name in now)


def _tighter(old: Schema, new: Schema, *, where: str) -> Iterator[str]:
    for name in _TIGHTER_UP:
        if name in new and new[name] > old.get(name, float("-inf")):
            yield f"{where}: {name} rose from {old.get(name, 'none')} to {new[name]}"
    for name in _TIGHTER_DOWN:
        if name in new and new[name] < old.get(name, float("inf")):
            yield f"{where}: {name} fell from {old.get(name, 'none')} to {new[name]}"
    if "enum" in new and "enum" not in old:
        yield f"{where}: only some words are taken now"
    for name in ("default", "x-default"):
        if name in old and old[name] != new.get(name):
            yield f"{where}: without it {old[name]} counted, now {new.get(name)}"


def breaking(*, old: Schema, new: Schema) -> list[str]:
    """Return what in the new document breaks programs written against the old one."""
    return list(Comparison(old=old, new=new).breaks())


def main(arguments: list[str]) -> int:
    """List what breaks between two files."""
    old, new = (json.loads(Path(one).read_text(encoding="utf-8")) for one in arguments)
    found = breaking(old=old, new=new)
    print("\n".join(found) or "nothing breaks")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
