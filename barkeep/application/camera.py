"""What is shown on camera of a shoot, or of one spec."""

from __future__ import annotations

from collections.abc import Iterable

from barkeep.application.publishing import drink_facts
from barkeep.documents.camera import CameraDrink, camera_drink
from barkeep.domain.shoots import Shoot, as_poured
from barkeep.domain.snapshot import Snapshot
from barkeep.domain.specs import Spec


def camera_drinks_of(shoot: Shoot, snapshot: Snapshot) -> tuple[CameraDrink, ...]:
    """Every drink of a shoot as it will be poured; those whose spec was removed are left out."""
    poured = ((each, as_poured(each, snapshot)) for each in shoot.drinks)
    return camera_drinks(
        ((spec, each.serves.camera) for each, spec in poured if spec is not None), snapshot
    )


def camera_drinks(specs: Iterable[tuple[Spec, int]], snapshot: Snapshot) -> tuple[CameraDrink, ...]:
    """Specs with their serves on camera, with the cautions that belong to them."""
    tree, settings = snapshot.knowledge.tree, snapshot.settings
    return tuple(
        camera_drink(
            spec, tree, settings, serves=max(1, serves), cautions=_cautions(spec, snapshot)
        )
        for spec, serves in specs
    )


def _cautions(spec: Spec, snapshot: Snapshot) -> tuple[str, ...]:
    facts = drink_facts(spec, snapshot)
    allergens = (f"Allergens: {', '.join(facts.allergens)}.",) if facts.allergens else ()
    return (*allergens, *facts.cautions)
