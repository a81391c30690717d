"""What the editor starts from: nothing, a spec to change, or a riff on one."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from barkeep.domain.ingredients import FamilyTree, folded
from barkeep.domain.riffs import riff_on
from barkeep.domain.spec_text import write_spec
from barkeep.domain.specs import Spec
from barkeep.domain.unit_names import US_UNITS, BarUnits


@dataclass(frozen=True, slots=True)
class SpecDraft:
    """`changes` is the spec being changed; `renames` says that a name is still to be chosen.

    `text` is what it starts from; `written` what was written since, where a
    draft is gone on with.
    """

    title: str
    text: str = ""
    changes: Spec | None = None
    renames: bool = False
    written: str | None = None


def for_new() -> SpecDraft:
    """An empty page."""
    return SpecDraft("New spec")


def for_edit(spec: Spec, tree: FamilyTree, units: BarUnits = US_UNITS) -> SpecDraft:
    """The text of a spec that is there."""
    return SpecDraft(f"Edit {spec.name}", write_spec(spec, tree, units), spec)


def for_riff(
    spec: Spec, taken: Iterable[str], tree: FamilyTree, units: BarUnits = US_UNITS
) -> SpecDraft:
    """The text of a spec under a new name, with *Riff of* what it comes from."""
    used = {folded(name) for name in taken}
    riff = riff_on(spec, _free_name(spec.name, used))
    return SpecDraft(f"Riff on {spec.name}", write_spec(riff, tree, units), renames=True)


def _free_name(name: str, used: set[str]) -> str:
    free, number = f"{name} riff", 2
    while folded(free) in used:
        free, number = f"{name} riff {number}", number + 1
    return free
