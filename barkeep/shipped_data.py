"""Shipped TOML into frozen values, every fault a `KnowledgeError` that names file, key and reason.

msgspec checks each field against its type and builds the value; which field it
was and what stands there is said here, in one sentence made from the type.
"""

from __future__ import annotations

import tomllib
from collections.abc import Callable, Iterable, Mapping
from dataclasses import MISSING, fields, is_dataclass
from functools import cache
from types import UnionType
from typing import (
    Annotated,
    Any,
    Literal,
    NamedTuple,
    TypeVar,
    Union,
    cast,
    get_args,
    get_origin,
    get_type_hints,
)

from msgspec import Meta, MsgspecError, ValidationError, convert, msgpack

from barkeep import resource_files
from barkeep.errors import KnowledgeError

Table = Mapping[str, Any]

Limits = Meta
"""What is said about a type beside it: its least and its most, or what it is in words."""

Read = TypeVar("Read")

MOST = 1e9
"""No shipped number is larger, least of all an infinite one."""

Text = Annotated[str, Meta(pattern=r"(?s)\A\S(.*\S)?\Z")]
"""A text that says something, with nothing around it."""

Texts = tuple[Text, ...]

NotNegative = Annotated[float, Meta(ge=0.0, le=MOST)]

Positive = Annotated[float, Meta(gt=0.0, le=MOST)]

Percent = Annotated[float, Meta(ge=0.0, le=100.0)]

Share = Annotated[float, Meta(gt=0.0, le=1.0)]

Days = Annotated[int, Meta(gt=0, description="whole days")]


Keeps = Callable[[Any, str, Callable[[], Any]], Any]
"""Gives what was kept of a table by its type and name, else what is read, which it keeps."""


def _reads(_kind: Any, _name: str, read: Callable[[], Any]) -> Any:
    return read()


_keeps: Keeps = _reads


def keep_tables(by: Keeps) -> None:
    """Have tables kept from now on; until then each is read out of its file."""
    global _keeps
    _keeps = by


def table_of(file: str, read: Callable[[str], Read], kind: Any) -> Read:
    """What a reader makes of a shipped file: a value of that type.

    Raises `KnowledgeError` for a broken file.
    """
    found: Read = _keeps(kind, read.__name__, lambda: read(resource_files.read_text(file)))
    return found


def parse(text: str, file: str, *known: str) -> Table:
    """The whole document; where names are `known`, any other at its top is refused."""
    try:
        document = tomllib.loads(text)
    except tomllib.TOMLDecodeError as error:
        raise KnowledgeError(file, "the text", f"it is not TOML: {error}") from error
    for name in document:
        if known and name not in known:
            raise KnowledgeError(file, name, "there is no such entry; is it a misspelling?")
    return document


def tables(document: Table, name: str, file: str) -> list[Table]:
    """The tables under `[[name]]`; none where there are none."""
    found = document.get(name, [])
    if not isinstance(found, list) or not all(isinstance(each, dict) for each in found):
        raise KnowledgeError(file, name, f"write each as [[{name}]]")
    return found


def table_in(document: Table, name: str, file: str) -> Table:
    """The tables or values under `[name]`; none where there are none."""
    return _table(document.get(name, {}), file, name)


def read(raw: object, kind: type[Read], file: str, place: str, /, **given: object) -> Read:
    """A table as a dataclass; `given` are its fields that are not written in the file.

    A field whose metadata say that it is `called` otherwise has that name in the file.
    """
    wanted = _wanted(cast(Any, kind))
    values, unknown = dict(given), []
    for name, each in _table(raw, file, place).items():
        field = wanted.get(name)
        if field is None or field.name in given:
            unknown.append(name)
        else:
            values[field.name] = _checked(
                each, wanted=field.type, file=file, place=place, name=name
            )
    for name, field in wanted.items():
        if field.needed and field.name not in values:
            raise KnowledgeError(file, place, _missing(name, field.type))
    if unknown:
        raise KnowledgeError(file, place, f"there is no field “{unknown[0]}”")
    return kind(**values)


def by_key(
    raw: Table, kind: type[Read], file: str, within: str = "", /, **given: object
) -> dict[str, Read]:
    """One value a table, each with its name as its `key`; `within` names the table around them."""
    return {
        key: read(each, kind, file, f"{within}.{key}" if within else key, key=key, **given)
        for key, each in raw.items()
    }


def amounts(raw: object, file: str, place: str) -> dict[str, float]:
    """A table of names, each with an amount above nothing."""
    written = _table(raw, file, place)
    return {
        name: _checked(each, wanted=Positive, file=file, place=place, name=name)
        for name, each in written.items()
    }


def read_field(written: Table, name: str, kind: Any, file: str, place: str) -> Any:
    """One field by itself, which must be there; `kind` is its type."""
    if name not in written:
        raise KnowledgeError(file, place, _missing(name, kind))
    return _checked(written[name], wanted=kind, file=file, place=place, name=name)


def without(written: Table, *names: str) -> Table:
    """What is left of a table when some of its fields are read."""
    return {name: each for name, each in written.items() if name not in names}


def parted(raw: object, kind: type, file: str, place: str) -> tuple[Table, Table]:
    """What of a table belongs to a dataclass, and the rest of it."""
    written, names = _table(raw, file, place), _wanted(kind)
    own = {name: each for name, each in written.items() if name in names}
    return own, without(written, *own)


def refuse_twice(keys: Iterable[str], file: str) -> None:
    """Raise for the first of the keys that was there before."""
    seen: set[str] = set()
    for each in keys:
        if each in seen:
            raise KnowledgeError(file, each, "it is there twice")
        seen.add(each)


class _Field(NamedTuple):
    """A field of a dataclass: its name there, its type, and whether it must be in the file."""

    name: str
    type: Any
    needed: bool


@cache
def _wanted(kind: type) -> Mapping[str, _Field]:
    """Name in the file -> the field."""
    if not is_dataclass(kind):
        raise TypeError(f"{kind} is no dataclass")
    types = get_type_hints(kind, include_extras=True)
    return {
        each.metadata.get("called", each.name): _Field(
            each.name,
            types[each.name],
            each.default is MISSING and each.default_factory is MISSING,
        )
        for each in fields(kind)
    }


def _table(raw: object, file: str, place: str) -> Table:
    if not isinstance(raw, dict):
        raise KnowledgeError(file, place, f"write it as a table, [{place}]")
    return raw


def _checked(raw: object, wanted: Any, file: str, place: str, name: str) -> Any:
    if isinstance(raw, dict):
        kind, _ = _plain(wanted)
        if is_dataclass(kind):
            return read(raw, kind, file, f"{place}.{name}")  # type: ignore[arg-type]
        if get_origin(wanted) is Mapping:
            each = get_args(wanted)[1]
            return {
                one: _checked(raw[one], wanted=each, file=file, place=f"{place}.{name}", name=one)
                for one in raw
            }
    elif isinstance(raw, list):
        texts = [each for each in raw if isinstance(each, str)]
        if len(set(texts)) < len(texts):
            twice = next(each for each in texts if texts.count(each) > 1)
            raise KnowledgeError(file, place, f"“{name}” has “{twice}” twice")
    try:
        return convert(raw, wanted)
    except ValidationError:
        raise KnowledgeError(file, place, _fault(name, raw, wanted)) from None


def _missing(name: str, wanted: Any) -> str:
    plain, _ = _plain(wanted)
    choice = f"; it must be {_said(plain)}" if get_origin(plain) is Literal else ""
    return f"“{name}” is missing{choice}"


def _fault(name: str, raw: object, wanted: Any) -> str:
    """What is wrong with a value that was refused."""
    plain, meta = _plain(wanted)
    if _is_list_type(plain) and isinstance(raw, list):
        return _fault_in_list(name, raw, plain)
    if isinstance(raw, str) and get_origin(plain) is Literal:
        return f"“{name}” is “{raw}”; it must be {_said(plain)}"
    if plain is str and _is_blank(raw):
        return f"“{name}” is empty or has blanks around it"
    if meta is not None and _fits_but_for_limits(raw, plain):
        said = f" ({meta.description})" if meta.description else ""
        return f"“{name}” is {raw:g}; it must be {_limits(meta)}{said}"
    said = meta.description if meta is not None and meta.description else _said(plain)
    return f"“{name}” must be {said}, not {raw!r}"


def _fault_in_list(name: str, raw: list[object], wanted: Any) -> str:
    item, _ = _plain(get_args(wanted)[0])
    for each in raw:
        if get_origin(item) is Literal and isinstance(each, str) and each not in get_args(item):
            return f"“{name}” has “{each}”; it must be {_said(item)}"
        if item is str and _is_blank(each):
            return f"“{name}” has an empty text, or one with blanks around it"
    return f"“{name}” must be {_said(wanted)}, not {raw!r}"


def _is_blank(raw: object) -> bool:
    return isinstance(raw, str) and (not raw or raw != raw.strip())


def _plain(wanted: Any) -> tuple[Any, Meta | None]:
    """A type without what is said about it, and that; of *this or None* this."""
    if get_origin(wanted) in (Union, UnionType):
        wanted = next(each for each in get_args(wanted) if each is not type(None))
    if get_origin(wanted) is Annotated:
        plain, *said = get_args(wanted)
        return plain, said[-1]
    return wanted, None


def _is_list_type(plain: Any) -> bool:
    """Whether it is a list of so many as there are."""
    args = get_args(plain)
    return get_origin(plain) is frozenset or (get_origin(plain) is tuple and args[-1] is ...)


def _fits_but_for_limits(raw: object, plain: Any) -> bool:
    if isinstance(raw, bool) or not isinstance(raw, int | float):
        return False
    return plain is float or (plain is int and isinstance(raw, int))


def _limits(meta: Meta) -> str:
    found = []
    if meta.gt is not None:
        found.append(f"more than {meta.gt:g}")
    if meta.ge is not None:
        found.append(f"{meta.ge:g} or more")
    if meta.le is not None and meta.le < MOST:
        found.append(f"at most {meta.le:g}")
    if meta.lt is not None:
        found.append(f"less than {meta.lt:g}")
    return " and ".join(found)


_NAMES: Mapping[Any, str] = {
    str: "a text",
    bool: "true or false",
    int: "a whole number",
    float: "a number",
}


def _said(plain: Any) -> str:
    """A type in words, as it stands after *it must be*."""
    if get_origin(plain) is Literal:
        return f"one of {', '.join(get_args(plain))}"
    if _is_list_type(plain):
        item, _ = _plain(get_args(plain)[0])
        row = _row(item)
        return f"a list of rows of {row}, zero or more" if row else "a list of texts"
    return _row(plain) or _NAMES.get(plain, "a table")


def _row(plain: Any) -> str:
    """A row of so many numbers in words; empty for any other type."""
    if get_origin(plain) is tuple:
        return f"{len(get_args(plain))} numbers"
    return f"{len(plain._fields)} numbers" if hasattr(plain, "_fields") else ""


def fits(raw: object, wanted: Any) -> bool:
    """Whether what JSON gives is a value of a type, its dataclasses and limits included."""
    try:
        convert(raw, wanted)
    except ValidationError:
        return False
    return True


def packed(value: object) -> bytes:
    """Frozen values as bytes that `unpacked` turns into equal ones."""
    return msgpack.encode(value)


def unpacked(content: bytes, kind: type[Read]) -> Read:
    """The value of a type that `packed` made these bytes of, each field checked against its type.

    Raises `ValueError` for any other bytes.
    """
    try:
        return msgpack.decode(content, type=kind)
    except MsgspecError as error:
        raise ValueError(f"these bytes are no {kind.__name__}: {error}") from error
