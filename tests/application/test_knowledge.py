"""The shipped knowledge: whole, shared, and without a guess in it."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path
from zipfile import ZipFile

import pytest

import barkeep
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


@pytest.mark.parametrize("beside", ["package", "."], ids=["wheel", "plain clone"])
def test_the_folders_are_found_inside_the_package_or_beside_it(monkeypatch, tmp_path, beside):
    folder = tmp_path / beside / "resources"
    folder.mkdir(parents=True)
    (folder / "__init__.py").touch()
    (folder / "own.txt").write_text("½ oz gin", "utf-8")
    monkeypatch.setattr(resource_files, "__file__", str(tmp_path / "package" / "here.py"))
    assert resource_files.names(suffix=".txt") == ("own.txt",)
    assert resource_files.read_text("own.txt") == "½ oz gin"


def test_the_folders_of_a_zipped_program_are_found(tmp_path):
    zipped = tmp_path / "program.zip"
    with ZipFile(zipped, "w") as program:
        for name in ("__init__", "resource_files", "errors"):
            program.write(Path(barkeep.__file__).with_name(f"{name}.py"), f"barkeep/{name}.py")
        program.writestr("barkeep/resources/__init__.py", "")
        program.writestr("barkeep/resources/own.txt", "½ oz gin")
    asked = (
        f"import sys; sys.path.insert(0, {str(zipped)!r}); from barkeep import resource_files; "
        "print(resource_files.__file__, resource_files.read_text('own.txt').encode())"
    )
    done = subprocess.run([sys.executable, "-c", asked], capture_output=True, text=True, check=True)
    assert str(zipped) in done.stdout and str("½ oz gin".encode()) in done.stdout
