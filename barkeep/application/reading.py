"""What is read of a bar's file into a snapshot: all of it at first, then what was written.

It stands apart from the session, which loads it only once something is to be
read: what was kept of a bar is shown without SQL.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from barkeep.domain.bar.changes import Part
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.store.after_changes import bottles_after, products_after, specs_after
from barkeep.store.knowledge import (
    read_own_ingredients,
    read_own_recipes,
    read_own_stand_ins,
    read_settings,
)
from barkeep.store.shoots import read_shoots
from barkeep.store.specs import read_trials
from barkeep.store.unit_of_work import Touched

if TYPE_CHECKING:
    from sqlalchemy import Connection

__all__ = ["read_own_ingredients", "read_own_recipes", "read_own_stand_ins", "renewed"]


def renewed(connection: Connection, new: Snapshot, touched: Touched) -> Snapshot:
    """The snapshot with the parts that changed; the others stay the very same objects."""
    if Part.PRODUCTS in touched.changes:
        new = new.changed(products=products_after(connection, new.products, touched))
    if Part.BOTTLES in touched.changes:
        new = new.changed(bottles=bottles_after(connection, new.bottles, new.products, touched))
    if Part.SPECS in touched.changes:
        new = new.changed(specs=specs_after(connection, new.specs, touched))
    if touched.changes & {Part.SPECS, Part.TRIALS}:  # a spec takes its trials along
        new = new.changed(trials=read_trials(connection))
    if Part.SHOOTS in touched.changes:
        new = new.changed(shoots=read_shoots(connection))
    if Part.SETTINGS in touched.changes:
        new = new.changed(settings=read_settings(connection))
    return new
