"""Bottles for the tests of levels: one of every shape, with something of every kind in it."""

from __future__ import annotations

from dataclasses import replace

from barkeep.application.knowledge import shipped
from barkeep.domain.bottles.bottle import Label, Tare
from barkeep.domain.bottles.containers import Container, container_for
from barkeep.domain.bottles.shapes import shipped_shapes

TREE = shipped().tree
SHAPES = tuple(shipped_shapes())
TARE = Tare(520.0, 1.0)


GIN = Label("Dry gin", "Hollow Lamp", "london-dry-gin", 700.0, abv_percent=40.0)

LIQUEUR = Label(
    "Cassis", "Pinchweir", "creme-de-cassis", 500.0, abv_percent=18.0, sugar_g_per_l=450.0
)

CREAM = Label("Milk Churn", "Tansy Lock", "cream-liqueur", 700.0, abv_percent=17.0)

KNOWN_CREAM = replace(CREAM, density_g_per_ml=1.043)
LIQUIDS = {"spirit": GIN, "sweet liqueur": LIQUEUR, "cream liqueur": KNOWN_CREAM}


def container(draft: Label = GIN, tare: Tare | None = TARE, **label: object) -> Container:
    """A bottle as a scale and a ruler see it."""
    return container_for(replace(draft, **label), TREE, tare)  # type: ignore[arg-type]
