"""The shipped knowledge: whole, shared, and without a guess in it."""

from __future__ import annotations

import pytest

from barkeep import resource_files
from barkeep.application.knowledge import read_classics, shipped
from barkeep.errors import KnowledgeError
from tests.application.conftest import small_knowledge


def test_the_shipped_knowledge_is_read_once():
    assert shipped() is shipped()


def test_every_part_of_it_is_there():
    known = shipped()
    assert len(known.tree) > 100 and len(known.tree.confusables) > 20
    assert len(known.stand_ins) > 50 and known.none and known.made_from
    assert len(known.classics) > 40
    assert all(spec.classic and spec.id is None for spec in known.classics)


def test_a_classic_that_cannot_be_read_is_located():
    tree = small_knowledge().tree
    with pytest.raises(KnowledgeError) as fault:
        read_classics({"odd.txt": "Signal Daisy\n\n2 oz unobtainable moss dew\n"}, tree)
    assert fault.value.file == "odd.txt"


def test_two_classics_of_one_name_are_refused():
    tree = small_knowledge().tree
    text = "Signal Daisy\n\n60 ml gin\n\nShake.\n"
    (spec,) = read_classics({"a.txt": text}, tree)
    assert spec.classic
    with pytest.raises(KnowledgeError, match="two classics of this name"):
        read_classics({"a.txt": text, "b.txt": text}, tree)


def test_resources_are_found_by_name():
    assert "ingredients.toml" in resource_files.names(suffix=".toml")
    assert resource_files.names("no such folder") == ()
    with pytest.raises(FileNotFoundError):
        resource_files.read_text("no-such.toml")
    with pytest.raises(ModuleNotFoundError):
        resource_files.root("no_such_root")


def test_a_plain_clone_finds_its_folders(monkeypatch):
    def not_installed(package):
        raise ModuleNotFoundError(package)

    monkeypatch.setattr(resource_files, "files", not_installed)
    assert resource_files.read_text("ingredients.toml").startswith("#")
