"""The second bar, built once; and a copy of it to change."""

from __future__ import annotations

import pytest

from tests.second_bar.asking import SecondBar, build


@pytest.fixture(autouse=True)
def own_folders(tmp_path, monkeypatch):
    """No test touches the folders of whoever runs it."""
    for name in ("DATA", "CONFIG", "STATE", "CACHE"):
        monkeypatch.setenv(f"XDG_{name}_HOME", str(tmp_path / name.lower()))


@pytest.fixture(scope="session")
def bar(tmp_path_factory) -> SecondBar:
    """The bar as it stands, to be asked and never changed."""
    return build(tmp_path_factory.mktemp("second") / "second.bar")


@pytest.fixture
def changed(bar, tmp_path) -> SecondBar:
    """A copy of the bar to change."""
    copy = tmp_path / "copy.bar"
    copy.write_bytes(bar.path.read_bytes())
    return SecondBar(copy, bar.on)
