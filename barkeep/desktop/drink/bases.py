"""What drinks are built on, in words, read once for each spec of a book."""

from __future__ import annotations

from dataclasses import dataclass

from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.pouring.memory import Memory
from barkeep.domain.specs.called import named_by
from barkeep.domain.specs.spec import Spec, base, base_kind


@dataclass(frozen=True, slots=True)
class Base:
    """The ingredient a drink is built on, in its spec's words, and its kind; of none, nothing."""

    name: str
    kind: str | None


@dataclass(frozen=True, slots=True)
class Bases:
    """The bases of specs over one family tree; a spec that is the same object is read once."""

    tree: FamilyTree
    _known: dict[int, tuple[Spec, Base]]

    def of(self, spec: Spec) -> Base:
        """What a spec is built on."""
        known = self._known.get(id(spec))
        if known is None or known[0] is not spec:
            known = self._known[id(spec)] = spec, base_of(spec, self.tree)
        return known[1]


def base_of(spec: Spec, tree: FamilyTree) -> Base:
    """What a spec is built on."""
    key = base(spec, tree)
    if not key:
        return Base("", None)
    return Base(named_by(spec.lines, tree).name(key), base_kind(key, tree))


def bases_in(tree: FamilyTree, memory: Memory) -> Bases:
    """The bases of specs over a tree, as far as they are in memory already."""
    return memory.once("bases", (tree,), lambda: Bases(tree, {}))
