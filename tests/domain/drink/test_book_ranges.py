"""The usual ranges against the book they are drawn from."""

from __future__ import annotations

import re
from dataclasses import replace

from barkeep.domain.drink.analysis import analyse
from barkeep.domain.drink.balance import QUALITIES, styles
from barkeep.domain.drink.words import measured, place_word
from tests.domain.drink.ranges import FEWEST, as_table, counted, families, places
from tests.domain.drink.test_analysis import BARE, written
from tests.walked import walked

FAMILIES = families(BARE)
MADE = [analyse(spec, BARE) for spec in BARE.knowledge.classics]


def test_the_table_holds_the_families_that_have_enough_classics():
    assert FAMILIES.keys() == styles().keys()
    assert min(map(len, FAMILIES.values())) >= FEWEST


@walked("key", styles())
def test_a_range_is_where_the_classics_lie(key):
    style = styles()[key]
    table = as_table(style.name, FAMILIES[key])
    there = [style.range_of(each) for each in QUALITIES]
    kept = [
        *(f'name = "{style.name}"', f"classics = {style.classics}"),
        *(f"{each} = {list(usual)}" for each, usual in zip(QUALITIES, there, strict=True)),
        f"middle = {list(style.middle)}",
    ]
    assert "\n".join(kept) == table, (
        f"resources/balance_ranges.toml should have\n\n[{key}]\n{table}"
    )


@walked("key", styles())
def test_no_more_than_a_fifth_of_a_family_lies_outside_on_either_side(key):
    print("\n".join(counted(styles()[key], FAMILIES[key])))
    for found in places(styles()[key], FAMILIES[key]).values():
        assert max(found.count("below"), found.count("above")) * 5 <= len(found)


def test_a_classic_outside_its_range_says_so_in_its_notes():
    unsaid = [each for made in MADE for each in _unsaid(made)]
    assert unsaid == []


def _unsaid(made):
    """What lies outside the ranges of a drink's family with no word of it in its notes."""
    if made.style is None:
        return
    noted = re.findall(r"[a-z-]+", made.spec.notes.lower().replace("less sour", "less-sour"))
    for quality, value in measured(made):
        place = made.style.range_of(quality).place_of(value)
        if place != "within" and place_word(quality, place).replace(" ", "-") not in noted:
            yield made.spec.name, quality, place, round(value, 1)


def test_every_classic_names_a_glass_and_fits_it_to_the_wash_line():
    assert [each.spec.name for each in MADE if each.fit is None] == []
    assert [each.fit.why for each in MADE if not each.fit.to_wash_line] == []


def test_a_classic_fits_its_glass_with_what_is_optional_too():
    with_all = [
        replace(each.spec, lines=tuple(replace(line, optional=False) for line in each.spec.lines))
        for each in MADE
        if any(line.optional and not line.garnish for line in each.spec.lines)
    ]
    assert len(with_all) > 5
    fits = [analyse(spec, BARE).fit for spec in with_all]
    assert [each.why for each in fits if not each.to_wash_line] == []


@walked(
    ("text", "key"),
    [
        ("60 ml bourbon\n22.5 ml lemon juice\n22.5 ml simple syrup\n\nShake.", "shaken"),
        ("60 ml white rum\n22.5 ml lime juice\n22.5 ml simple syrup\n\nShake.", "shaken"),
        ("50 ml blanco tequila\n25 ml triple sec\n25 ml lime juice\n\nShake.", "shaken_liqueur"),
        ("60 ml pisco\n22.5 ml lemon juice\n22.5 ml simple syrup\n30 ml egg white\n\nShake.",
         "shaken_egg_white"),
        ("60 ml rye whiskey\n30 ml sweet vermouth\n\nStir.", "stirred"),
        ("60 ml gin\n15 ml dry vermouth\n\nStir.", "stirred_dry"),
        ("60 ml rye whiskey\n5 ml rich simple syrup\n\nStir.", "stirred_spirit"),
        ("50 ml gin\n120 ml tonic water\nIce: cubes\n\nBuild.", "long"),
        ("50 ml white rum\n15 ml lime juice\n120 ml ginger beer\nIce: cubes\n\nBuild.",
         "long_sour"),
        ("90 ml prosecco\n60 ml light orange aperitivo\n30 ml soda water\nIce: cubes\n\nBuild.",
         "sparkling"),
    ],
)  # fmt: skip
def test_what_bars_pour_every_day_reads_as_usual(text, key):
    made = analyse(written(f"Drink\n{text}"), BARE)
    assert made.style is not None
    assert made.style.key == key
    assert {made.style.range_of(each).place_of(value) for each, value in measured(made)} == {
        "within"
    }
