"""Templates are data: each is whole, and a broken one says where."""

from __future__ import annotations

import pytest

from barkeep import resource_files
from barkeep.documents.printed.blocks import Rows, card_blocks, label_blocks, menu_groups
from barkeep.documents.printed.labels import LabelContent
from barkeep.documents.printed.menus import menu_content
from barkeep.documents.printed.templates import (
    KINDS,
    SHORT,
    TITLES,
    read_template,
    shipped_templates,
)
from barkeep.errors import KnowledgeError
from tests.documents.printed.drinks_to_publish import cards
from tests.walked import walked

SMALL = """\
kind = "label"
title = "Small"
parts = ["name"]
margin_mm = 3
[style.body]
size = 8
"""


@pytest.mark.parametrize("kind", KINDS)
def test_there_is_a_choice_of_each_kind(kind):
    templates = shipped_templates(kind)
    assert len(templates) >= 2
    assert len({each.title for each in templates}) == len(templates)
    assert {each.kind for each in templates} == {kind}


def test_every_file_is_offered():
    files = resource_files.names("print", suffix=".toml")
    offered = {f"{each.key}.toml" for kind in KINDS for each in shipped_templates(kind)}
    assert offered | {"sizes.toml"} == set(files)


@pytest.mark.parametrize("kind", KINDS)
def test_type_is_never_too_small_to_read(kind):
    for template in shipped_templates(kind):
        least = min(style.size for style in template.styles.values()) * template.least_scale
        assert least >= 4.8, template.key  # points: the smallest print of a label on a bottle


@walked(
    ("change", "reason"),
    [
        (("label", "poster"), "must be one of card, menu"),
        (('["name"]', '["name", "price"]'), "a label has no part “price”"),
        (('["name"]', "[]"), "“parts” is missing"),
        (("[style.body]", "[style.name]"), "style.body: it is missing"),
        (("size = 8", "size = 2"), "5 or more"),
        (("size = 8", 'size = 8\ncolour = "red"'), "written as #1d3b44"),
        (("size = 8", "size = 8\nblink = true"), "no field “blink”"),
        (("margin_mm = 3", ""), "“margin_mm” is missing"),
    ],
)
def test_a_broken_template_says_where(change, reason):
    with pytest.raises(KnowledgeError, match=reason):
        read_template(SMALL.replace(*change), "label-small.toml")


def test_a_style_of_no_one_is_that_of_the_body():
    template = read_template(SMALL, "label-small.toml")
    assert template.style("name") is template.style("body")
    assert template.key == "label-small"


def test_blocks_come_in_the_templates_order(tree):
    card = cards(tree)[0]
    blocks = card_blocks(card, ("method", "name", "lines"))
    assert [block.style for block in blocks] == ["method", "method", "name", "lines"]


def test_a_column_that_is_empty_throughout_is_left_out(tree):
    (rows,) = card_blocks(cards(tree)[4], ("lines",))
    assert isinstance(rows, Rows)
    assert rows.rows == (("60\N{NO-BREAK SPACE}ml", "Cognac"),)


def test_what_a_label_does_not_know_is_left_to_be_written():
    (rows,) = label_blocks(LabelContent("Syrup", use_by="2026-12-01"), ("dates",))
    assert rows.rows == (("Made", "__________"), ("Use by", "2026-12-01"))


def test_a_menu_has_its_title_first_and_its_small_print_last(tree):
    menu = menu_content("Platform One", cards(tree)[:2], cautions=("Drive on water.",))
    title, first, second, small = menu_groups(menu, ("name",))
    assert [block.text for block in title] == ["Platform One"]
    assert [first[0].text, second[0].text] == [card.name for card in cards(tree)[:2]]
    assert small[-1].text == "Drive on water."


def test_what_templates_are_called_is_translated():
    assert {each.title for kind in KINDS for each in shipped_templates(kind)} == {
        *TITLES,
        SHORT,
    }
