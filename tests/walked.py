"""A table whose rows are tried one after the other over the same fixtures.

For what is dear to make, such as a window, where no row leaves anything behind that
another would meet: each row is a subtest, and told of by its values.
"""

from __future__ import annotations

import functools
from collections.abc import Callable, Sequence
from inspect import Parameter, Signature, signature
from typing import Any


def walked(names: str, rows: Sequence[Any]) -> Callable[[Callable[..., None]], Callable[..., None]]:
    """As `pytest.mark.parametrize` with the same words, but with one set of fixtures for all."""
    keys = [each.strip() for each in names.split(",")]

    def decorate(test: Callable[..., None]) -> Callable[..., None]:
        @functools.wraps(test)
        def walk(*bound: Any, subtests: Any, **fixtures: Any) -> None:
            wanted = {key: fixtures[key] for key in own}
            for row in rows:
                values = dict(zip(keys, row if len(keys) > 1 else (row,), strict=True))
                with subtests.test(**values):
                    test(*bound, **wanted, **values)

        asked = [each for each in signature(test).parameters.values() if each.name not in keys]
        own = [each.name for each in asked if each.name != "self"]
        if "subtests" not in own:
            asked.append(Parameter("subtests", Parameter.KEYWORD_ONLY))
        walk.__signature__ = Signature(asked)  # type: ignore[attr-defined]
        return walk

    return decorate
