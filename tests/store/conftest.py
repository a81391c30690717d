"""A store in a temporary file, and rows to put into it."""

from __future__ import annotations

from datetime import datetime

import pytest
from sqlalchemy import select

from barkeep.domain.bottles.bottle import Bottle, Label, Level
from barkeep.domain.specs.spec import Line, Spec
from barkeep.store.bottles import read_product
from barkeep.store.schema import METADATA, seal
from barkeep.store.store import Store

NOON = datetime(2026, 11, 21, 12, 0)


@pytest.fixture
def path(tmp_path):
    return tmp_path / "signal-box.bar"


@pytest.fixture
def location(engine, request):
    """Where a bar may be begun: in a file, or on a server."""
    if engine == "sqlite":
        return request.getfixturevalue("path")
    return request.getfixturevalue("server").new_bar()


@pytest.fixture
def store(location):
    opened = Store.open(location, lambda: NOON, busy_ms=50)
    yield opened
    opened.close()


def fill(store, bottles=2):
    """One product, some bottles of it with a ledger, and one spec; the bottles' ids."""
    label = Label("London dry gin", "Hollow Lamp", "london-dry-gin", 700.0)
    line = Line("60 ml gin", "gin", 60.0, None, "ml", 60.0)
    with store.unit_of_work("Fill") as work:
        (product_id,) = work.insert("product", [label])
        product = read_product(work.connection, product_id)
        along = [Bottle(0, product, Level(), place) for place in range(bottles)]
        ids = work.insert("bottle", along)
        for bottle_id in ids:
            work.append(bottle_id, "receive", 700.0)
        work.insert("spec", [Spec("Snow Plough", (line, line))])
    return ids


def contents(file):
    """Every row of every table of a file, as text."""
    return "\n".join(file.iterdump())


def rows(store):
    """Every row of every table of an open bar, wherever it lies; but the seal that files have."""
    with store.reading() as connection:
        return {
            table.name: connection.execute(select(table).order_by(*table.primary_key.columns)).all()
            for table in METADATA.sorted_tables
            if table is not seal
        }
