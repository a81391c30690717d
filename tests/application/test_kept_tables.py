"""Shipped tables in their quick forms: equal to what was read, and read again where one is not."""

from __future__ import annotations

from collections.abc import Mapping

import pytest

from barkeep import shipped_data
from barkeep.application import quick_form
from barkeep.domain.bottles import shapes
from barkeep.domain.cautions import allergens, cautions
from barkeep.domain.drink import looks
from barkeep.domain.ingredients import composition
from barkeep.domain.liquids import constants, content
from barkeep.domain.specs import glasses, telling_garnishes

TABLES = {
    "allergens": allergens.shipped_allergens,
    "cautions": cautions.shipped_cautions,
    "compositions": composition.shipped_compositions,
    "constants": constants._document,
    "glasses": glasses.shipped_glassware,
    "looks": looks.shipped_looks,
    "portions": composition.shipped_portions,
    "shapes": shapes.shipped_shapes,
    "standard drinks": content._all,
    "telling garnishes": telling_garnishes.shipped_telling_garnishes,
}


@pytest.fixture
def folder(tmp_path, monkeypatch):
    """Where tables are kept from now on."""

    def kept(kind, name, read):
        return quick_form.kept(kind, tmp_path / name, read)

    monkeypatch.setattr(shipped_data, "_keeps", kept)
    return tmp_path


def never(*_parts, **_folder):
    raise AssertionError("it was read anew")


def read_anew(table):
    """As in a process that has not asked before."""
    return table.__wrapped__()


@pytest.mark.parametrize("name", TABLES)
def test_what_is_kept_equals_what_is_read(name, folder, monkeypatch):
    read = read_anew(TABLES[name])
    monkeypatch.setattr(shipped_data.resource_files, "read_text", never)
    kept = read_anew(TABLES[name])
    assert kept == read
    assert type(kept) is type(read)
    if isinstance(read, Mapping):
        assert [*kept] == [*read], "and in the same order"


def test_a_damaged_form_is_read_anew_and_mended(folder):
    read = read_anew(TABLES["looks"])
    (form,) = folder.iterdir()
    sound = form.read_bytes()
    form.write_bytes(sound[:-9] + b"something")
    assert read_anew(TABLES["looks"]) == read
    assert form.read_bytes() == sound


def test_a_form_of_another_program_is_read_anew(folder, monkeypatch):
    read_anew(TABLES["glasses"])
    monkeypatch.setattr(quick_form, "__version__", "0.0.0")
    quick_form._of_what_reads_it.cache_clear()  # as in another process
    try:
        asked = []
        text = shipped_data.resource_files.read_text(glasses.FILE)
        monkeypatch.setattr(
            shipped_data.resource_files,
            "read_text",
            lambda *parts, **_: asked.append(parts) or text,
        )
        read_anew(TABLES["glasses"])
    finally:
        quick_form._of_what_reads_it.cache_clear()
    assert (glasses.FILE,) in asked
