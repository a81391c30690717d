"""Glasses, tins and ice: their names, and whether a drink fits."""

from __future__ import annotations

from dataclasses import replace
from math import inf, nan

import pytest
from hypothesis import given
from hypothesis import strategies as st

from barkeep import resource_files
from barkeep.domain.specs.glasses import (
    KINDS,
    fits,
    glass_as_written,
    glass_named,
    ice_named,
    read_glassware,
    shipped_glassware,
)
from barkeep.errors import AmountError, KnowledgeError, NegativeAmount
from tests.walked import walked

WARE = shipped_glassware()
GLASSES = WARE.glasses
COUPE, ROCKS, TIN = GLASSES["coupe"], GLASSES["rocks"], GLASSES["large-tin"]


glasses = st.sampled_from(sorted(GLASSES)).map(GLASSES.__getitem__)


def headers(name: str) -> set[str]:
    """Every value a header has in the classics and in the sample bar's specs."""
    texts = [
        resource_files.read_text("classics", file)
        for file in resource_files.names("classics", suffix=".txt")
    ]
    texts.append(resource_files.read_text("specs.txt", folder="sample_db"))
    lines = (line.partition(":") for text in texts for line in text.splitlines())
    return {value.strip() for header, _, value in lines if header == name}


# Names --------------------------------------------------------------------------------------------


def test_every_glass_of_a_classic_or_a_sample_spec_is_known():
    written = headers("Glass")
    assert len(written) > 20
    assert {text for text in written if glass_named(text) is None} == set()


def test_every_ice_of_a_classic_or_a_sample_spec_is_known():
    written = headers("Ice")
    assert len(written) > 3
    assert {text for text in written if ice_named(text) is None} == set()


@walked(
    ("text", "key"),
    [
        ("coupe", "coupe"),
        ("Chilled coupes", "coupe"),
        ("a chilled Coupé glass", "coupe"),
        ("small coupe", "small-coupe"),
        ("nick & nora glass", "small-coupe"),
        ("cocktail", "cocktail"),
        ("Martini glasses", "cocktail"),
        ("rocks", "rocks"),
        ("rocks glasses", "rocks"),
        ("Old-Fashioned glass", "rocks"),
        ("double old fashioned", "large-rocks"),
        ("salt-rimmed rocks glass", "rocks"),
        ("small rocks", "small-rocks"),
        ("whiskey tumblers", "rocks"),
        ("highballs", "highball"),
        ("small highball", "small-highball"),
        ("tall", "tall"),
        ("wine", "wine"),
        ("small wine", "small-wine"),
        ("large wine glasses", "large-wine"),
        ("flutes", "flute"),
        ("pint", "pint"),
        ("mug", "mug"),
        ("julep cups", "julep-cup"),
        ("warmed heatproof mug", "heatproof-mug"),
        ("heatproof glass", "heatproof-glass"),
        ("hot toddy glass", "heatproof-glass"),
        ("hurricane", "hurricane"),
        ("goblet or flute", "goblet"),
        ("thimble or flute", "flute"),
        ("coupe (chilled)", "coupe"),
        ("shaker", "large-tin"),
        ("mixing glasses", "mixing-glass"),
        ("pitcher", "jug"),
        ("punch bowls", "punch-bowl"),
    ],
)
def test_a_glass_is_known_by_its_names(text, key):
    found = glass_named(text)
    assert found is not None
    assert found.key == key


@pytest.mark.parametrize("text", ["", "glass", "chilled", "thimble", "the chilled glass", "coup d"])
def test_what_is_no_glass_is_not_guessed(text):
    assert glass_named(text) is None


@given(st.text(max_size=60))
def test_any_text_is_a_glass_or_none(text):
    found = glass_named(text)
    assert found is None or found.key in GLASSES


@walked("glass", GLASSES.values())
def test_every_name_and_its_plural_finds_its_glass(glass):
    for name in (glass.name, *glass.aliases):
        plural = f"{name}es" if name.endswith("s") else f"{name}s"
        for text in (name, name.upper(), f"chilled {name}", plural):
            assert glass_named(text) == glass, text


@walked(
    ("text", "key"),
    [
        ("cubes", "cubes"),
        ("fresh cubed ice", "cubes"),
        ("on the rocks", "cubes"),
        ("crushed", "crushed"),
        ("pebble ice", "crushed"),
        ("one large cube", "large"),
        ("ice block", "large"),
        ("none", "none"),
        ("no ice", "none"),
    ],
)
def test_ice_is_known_by_its_names(text, key):
    found = ice_named(text)
    assert found is not None
    assert found.key == key


@pytest.mark.parametrize("text", ["", "a lot", "price"])
def test_what_is_no_ice_is_not_guessed(text):
    assert ice_named(text) is None


# Room ---------------------------------------------------------------------------------------------


def test_a_glass_has_its_wash_line_below_its_brim():
    for glass in GLASSES.values():
        assert 0 < glass.wash_line_ml < glass.brim_ml
        assert glass.basis == "common practice"
    assert {glass.kind for glass in GLASSES.values()} == set(KINDS)


def test_ice_takes_its_share_of_the_glass():
    assert WARE.ices["none"].volume_ml(ROCKS) == 0.0
    assert WARE.ices["cubes"].volume_ml(ROCKS) == pytest.approx(90.0)


def test_a_drink_up_to_the_wash_line_needs_no_words():
    assert fits(COUPE.wash_line_ml, COUPE) == fits(0.0, COUPE)
    fit = fits(120.0, COUPE)
    assert (fit.to_wash_line, fit.to_brim, fit.why) == (True, True, "")


def test_a_drink_above_the_wash_line_is_said():
    fit = fits(190.0, COUPE)
    assert (fit.to_wash_line, fit.to_brim) == (False, True)
    assert fit.why == "A 190 ml drink fills a coupe past its wash line of 175 ml."


def test_a_drink_above_the_brim_does_not_fit():
    fit = fits(210.0, COUPE)
    assert (fit.to_wash_line, fit.to_brim) == (False, False)
    assert fit.why == "A 210 ml drink does not fit a coupe of 200 ml."


@pytest.mark.parametrize(
    ("served_ml", "begins"),
    [(80, "An 80 ml"), (800, "An 800 ml"), (180, "A 180 ml"), (110, "A 110 ml")],
)
def test_a_number_has_its_article(served_ml, begins):
    assert fits(served_ml, GLASSES["shot"]).why.startswith(begins)


def test_too_much_ice_is_told_from_too_much_drink():
    assert fits(220.0, ROCKS).to_wash_line
    assert fits(220.0, ROCKS, 90.0).why == (
        "A 220 ml drink with 90 ml of ice does not fit a rocks glass of 300 ml. "
        "Use less ice, or a larger glass."
    )
    assert fits(320.0, ROCKS, 90.0).why == (
        "A 320 ml drink with 90 ml of ice does not fit a rocks glass of 300 ml."
    )


def test_a_batch_is_no_drink():
    assert fits(1500.0, GLASSES["jug"]).why == "A 1500 ml batch does not fit a jug of 1000 ml."


def test_a_round_too_large_to_shake_is_split():
    assert fits(330.0, TIN).to_wash_line
    fit = fits(440.0, TIN)
    assert (fit.to_wash_line, fit.to_brim) == (False, True)
    assert fit.why == (
        "A 440 ml round is too much to shake in a large tin: up to 330 ml before ice shakes well. "
        "Make it in 2 goes."
    )
    assert "to stir in a mixing glass" in fits(440.0, GLASSES["mixing-glass"]).why


def test_a_tin_s_load_leaves_room_for_ice_but_not_for_any_ice():
    assert fits(330.0, TIN, 450.0).to_wash_line
    fit = fits(330.0, TIN, 600.0)
    assert (fit.to_wash_line, fit.to_brim) == (False, False)
    assert fit.why == "A large tin has no room for so much ice. Use less."


@given(glass=glasses, served=st.floats(0.0, 6000.0), ice=st.floats(0.0, 3000.0))
def test_there_are_words_exactly_where_something_is_wrong(glass, served, ice):
    fit = fits(served, glass, ice)
    assert fit.to_wash_line == (fit.why == "")
    assert fit.to_brim or not fit.to_wash_line
    assert fit.to_brim == (served + ice <= glass.brim_ml + 0.5)
    less = fits(served / 2.0, glass, ice)
    assert less.to_wash_line or not fit.to_wash_line


@pytest.mark.parametrize(("served", "ice"), [(-1.0, 0.0), (50.0, -1.0)])
def test_less_than_nothing_is_refused(served, ice):
    with pytest.raises(NegativeAmount):
        fits(served, COUPE, ice)


@pytest.mark.parametrize("value", [nan, inf])
def test_what_is_no_number_is_refused(value):
    with pytest.raises(AmountError):
        fits(value, COUPE)
    with pytest.raises(AmountError):
        fits(50.0, COUPE, value)


# Broken resources ---------------------------------------------------------------------------------

SOUND = """
basis = "common practice"
[glass.cup]
name = "cup"
aliases = ["beaker"]
kind = "glass"
brim_ml = 200
wash_line_ml = 170
[glass.bowl]
name = "bowl"
kind = "jug"
brim_ml = 2000
wash_line_ml = 1700
[ice.cubes]
name = "cubes"
names = ["cubes"]
share = 0.3
"""


def test_a_sound_text_is_read():
    ware = read_glassware(SOUND)
    assert ware.by_name["beaker"] == ware.glasses["cup"]
    assert ware.glasses["bowl"].aliases == ()


@walked(
    ("old", "new", "key", "reason"),
    [
        ("[glass.cup]", "[glass.cup", "the text", "it is not TOML"),
        ("[ice.cubes]", "[ise.cubes]", "ise", "there is no such entry"),
        ('basis = "common practice"', "", "the text", "“basis” is missing"),
        ("brim_ml = 200\n", "", "glass.cup", "“brim_ml” is missing"),
        ("wash_line_ml = 170\n", "wash_line_ml = 300\n", "glass.cup", "at most 200"),
        ('kind = "jug"', 'kind = "tub"', "glass.bowl", "it must be one of"),
        ('kind = "jug"', "", "glass.bowl", "it must be one of"),
        ('name = "bowl"', 'name = "Beaker"', "glass.bowl", "belongs to cup already"),
        ('name = "bowl"', 'name = "bowl"\nsize = 2', "glass.bowl", "there is no field “size”"),
        ("share = 0.3", "share = 1.3", "ice.cubes", "at most 1"),
        ("share = 0.3", "share = 0.3\nmelts = true", "ice.cubes", "there is no field “melts”"),
        (
            "[glass.cup]\n",
            "glass.mug = 3\n[glass.cup]\n",
            "glass.mug",
            "as a table, [glass.mug]",
        ),
    ],
)
def test_a_broken_glass_names_file_key_and_reason(old, new, key, reason):
    assert old in SOUND
    with pytest.raises(KnowledgeError) as caught:
        read_glassware(SOUND.replace(old, new, 1), "g.toml")
    assert (caught.value.file, caught.value.key) == ("g.toml", key)
    assert reason in caught.value.reason


def test_too_much_by_less_than_is_known_fits():
    over = COUPE.wash_line_ml + 8.0
    assert not fits(over, COUPE).to_wash_line
    assert fits(over, COUPE, doubt_ml=9.0).to_wash_line
    assert not fits(over, COUPE, doubt_ml=7.0).to_wash_line
    with pytest.raises(NegativeAmount):
        fits(over, COUPE, doubt_ml=-1.0)


@walked(
    ("written", "called"),
    [
        ("Nick and Nora", "Nick and Nora"),
        ("chilled Nick & Nora glasses", "Nick & Nora glass"),
        ("Old Fashioned glass", "Old Fashioned glass"),
        ("Martini", "Martini glass"),
        ("a chilled coupe", "coupe"),
        ("highball", "highball glass"),
        ("Coupe, chilled", "Coupe"),
        ("flutes", "flute"),
        ("coupe or flute", "coupe"),
    ],
)
def test_a_glass_is_called_what_its_writer_calls_it(written, called):
    found = glass_as_written(written)
    assert found.name == called
    assert replace(found, name=glass_named(written).name) == glass_named(written)


def test_what_is_no_glass_has_no_name():
    assert glass_as_written("frosty nonsense") is None
    assert glass_as_written("") is None
