"""A table whose rows are tried one after the other over the same fixtures.

For what is dear to make, such as a window, and for long tables, where a test a
row takes longer than what it tries; where no row leaves anything behind that
another would meet. Each row that fails is a subtest, and told of by its values.
"""

from __future__ import annotations

import functools
from collections.abc import Callable, Iterable
from inspect import Parameter, Signature, signature
from typing import Any

import pytest


def walked(
    names: str | tuple[str, ...], rows: Iterable[Any]
) -> Callable[[Callable[..., None]], Callable[..., None]]:
    """As `pytest.mark.parametrize` with the same words, but with one set of fixtures for all."""
    keys = [each.strip() for each in names.split(",")] if isinstance(names, str) else list(names)
    table = [dict(zip(keys, row if len(keys) > 1 else (row,), strict=True)) for row in rows]
    assert table  # or nothing would be tried

    def decorate(test: Callable[..., None]) -> Callable[..., None]:
        @functools.wraps(test)
        def walk(*bound: Any, subtests: Any, **fixtures: Any) -> None:
            wanted = {key: fixtures[key] for key in own if key != "subtests"}
            if "subtests" in own:
                wanted["subtests"] = subtests
            for values in table:
                try:
                    test(*bound, **wanted, **values)
                except (Exception, pytest.fail.Exception):
                    with subtests.test(**values):
                        raise

        asked = [each for each in signature(test).parameters.values() if each.name not in keys]
        own = [each.name for each in asked if each.name != "self"]
        if "subtests" not in own:
            asked.append(Parameter("subtests", Parameter.KEYWORD_ONLY))
        walk.__signature__ = Signature(asked)  # type: ignore[attr-defined]
        return walk

    return decorate
