"""What is worked out of specs, kept for as long as each is the very same spec."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from typing import Generic, TypeVar

from barkeep.domain.specs.spec import Spec

Value = TypeVar("Value")


@dataclass(frozen=True, slots=True)
class BySpec(Generic[Value]):
    """What is settled of specs, each by its name and for as long as it is the very same spec."""

    _known: dict[str, tuple[Spec, Value]]

    def of(self, spec: Spec, make: Callable[[Spec], Value]) -> Value:
        """What is known of a spec, else what is made of it now."""
        known = self._known.get(spec.name)
        if known is None or known[0] is not spec:
            known = self._known[spec.name] = spec, make(spec)
        return known[1]

    def known(self, spec: Spec) -> Value | None:
        """What is known of a spec; None for nothing."""
        known = self._known.get(spec.name)
        return known[1] if known is not None and known[0] is spec else None

    def each(self, specs: Iterable[Spec], make: Callable[[Spec], Value]) -> list[Value]:
        """The same of several, in their order."""
        known, found = self._known.get, []
        for spec in specs:
            settled = known(spec.name)
            is_there = settled is not None and settled[0] is spec
            found.append(settled[1] if settled and is_there else self.of(spec, make))
        return found
