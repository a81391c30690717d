"""What the page of a spec says of its amounts beside the lines."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtWidgets import QLabel

from barkeep.desktop.specs.page import SpecsScreen
from tests.desktop.pages import shown_page


@pytest.fixture
def said(bar, qtbot, tmp_path):
    """Show a spec with amounts in a style; what its page says."""
    with shown_page(SpecsScreen, bar, qtbot, tmp_path) as page:

        def shown(name: str, style: str) -> list[str]:
            bar.settings.change(replace(bar.snapshot.settings, shown_in=style))
            page.screen.show_thing(name)
            return [each.text() for each in page.screen.detail.widget().findChildren(QLabel)]

        yield shown


def test_parts_say_how_large_one_is(said):
    assert "1 part = 1 oz" in said("Mojito", "parts")


def test_a_spec_without_parts_says_why(said):
    assert any(each.startswith("Not shown in parts: ") for each in said("Old Fashioned", "parts"))


def test_other_styles_leave_nothing_to_say(said):
    assert not any("part" in each for each in said("Mojito", "ml") if "=" in each)
