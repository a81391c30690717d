"""A sample bar built by the command line itself, and a way to run commands in process."""

from __future__ import annotations

import json
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import pytest

from barkeep.cli import main


@dataclass(frozen=True)
class Ran:
    """What a command did."""

    status: int
    out: str
    err: str

    @property
    def answer(self) -> dict[str, Any]:
        """The JSON object of a command that was done."""
        assert (self.status, self.err) == (0, "")
        answer = json.loads(self.out)
        assert isinstance(answer, dict)
        return answer

    @property
    def refusal(self) -> str:
        """The sentence of a command that was refused."""
        assert (self.status, self.out) == (1, "")
        assert "Traceback" not in self.err
        return self.err.removeprefix("barkeep: ").strip()


@pytest.fixture(autouse=True)
def own_folders(tmp_path, monkeypatch):
    """No test touches the folders of whoever runs it."""
    for name in ("DATA", "CONFIG", "STATE"):
        monkeypatch.setenv(f"XDG_{name}_HOME", str(tmp_path / name.lower()))


@pytest.fixture
def barkeep(capsys) -> Callable[..., Ran]:
    """Run one command."""

    def run(*argv: str | Path) -> Ran:
        capsys.readouterr()
        status = main([str(each) for each in argv])
        shown = capsys.readouterr()
        return Ran(status, shown.out, shown.err)

    return run


@pytest.fixture(scope="session")
def built_sample(tmp_path_factory) -> Path:
    """The sample bar, built today."""
    path = tmp_path_factory.mktemp("sample") / "sample.bar"
    assert main(["sample", str(path), "--json"]) == 0
    return path


@pytest.fixture
def bar(built_sample, tmp_path) -> Path:
    """A copy of the sample bar to change."""
    copy = tmp_path / "copy.bar"
    copy.write_bytes(built_sample.read_bytes())
    return copy
