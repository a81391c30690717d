"""Lines that are not understood on a menu and on camera: in their place, and said to be so."""

from __future__ import annotations

from barkeep.application.knowledge import shipped
from barkeep.documents.printed.camera import camera_drink
from barkeep.documents.printed.cards import card_content
from barkeep.documents.printed.menus import menu_content
from barkeep.domain.bar.snapshot import Settings
from barkeep.domain.spec_text.text import read_specs

TEXT = "Fog Signal\n45 ml gin\n15 ml moonpetal cordial\n20 ml lemon juice\n\nShake.\n"
PRINTED = "15 ml moonpetal cordial (not understood)"


def fog():
    (read,) = read_specs(TEXT, shipped().tree)
    assert read.spec is None and read.with_questions is not None
    return read.with_questions


def test_the_sheet_on_camera_pours_it_in_its_place():
    drink = camera_drink(fog(), shipped().tree, Settings())
    assert drink.lines[1] == PRINTED
    assert [each.text for each in drink.steps if each.line == 1] == [PRINTED]


def test_a_menu_names_it_among_what_is_in_the_drink():
    card = card_content(fog(), shipped().tree, Settings())
    (drink,) = menu_content("Tonight", [card]).drinks
    assert drink.description == f"Gin, {PRINTED}, lemon juice"
