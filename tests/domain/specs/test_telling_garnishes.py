"""Which garnish a drink is, and which one only adorns it."""

from __future__ import annotations

import pytest

from barkeep.domain.spec_text.text import read_specs
from barkeep.domain.specs.telling_garnishes import read_telling_garnishes, shipped_telling_garnishes
from barkeep.errors import KnowledgeError
from tests.walked import walked

STIRRED = "\n\nStir with ice and strain."
SHAKEN = "\n\nShake with ice and strain."
FOUR = "2 oz gin\n1 oz dry vermouth\n1 oz fino sherry\n1 dash orange bitters\n"


@walked(
    ("lines", "method", "told_by", "required"),
    [
        ("2 oz gin\n1/2 oz dry vermouth\nGarnish: cocktail onion", STIRRED, "cocktail-onion", True),
        ("2 oz gin\n1/2 oz dry vermouth\nGarnish: olive", STIRRED, "olive", False),
        ("2 oz gin\n1/2 oz dry vermouth\nGarnish: lemon peel", STIRRED, None, False),
        # With a choice, another garnish, or many lines beside it, none of them tells the drink.
        ("2 oz gin\n1/2 oz dry vermouth\nGarnish: olive or lemon peel", STIRRED, None, False),
        ("2 oz gin\nGarnish: lemon peel\nGarnish: cocktail onion", STIRRED, None, False),
        (f"{FOUR}Garnish: cocktail onion", STIRRED, None, False),
        ("2 oz prosecco\n2 oz soda\nGarnish: olive", "\n\nBuild over ice.", None, False),
        # A rim does wherever it stands; salt that is no rim does not.
        ("2 oz tequila\n1 oz lime juice\nGarnish: salt rim", SHAKEN, "salt", False),
        ("2 oz tequila\n1 oz lime juice\nGarnish: salted rim", SHAKEN, "salt", False),
        ("2 oz tequila\nGarnish: salt rim\nGarnish: lime wedge", SHAKEN, "salt", False),
        ("2 oz tequila\n1 oz lime juice\nGarnish: pinch of salt", SHAKEN, None, False),
    ],
)
def test_the_garnish_that_a_drink_is(tree, lines, method, told_by, required):
    (read,) = read_specs(f"Try\n{lines}{method}", tree)
    spec = read.spec
    assert (spec.told_by and spec.told_by.ingredient) == told_by
    assert (spec.told_by in spec.required_lines) == required


def test_what_is_shipped_is_of_kinds_that_are_known(tree):
    assert set(shipped_telling_garnishes()) <= set(tree)


def test_a_broken_table_names_its_fault():
    with pytest.raises(KnowledgeError, match="why"):
        read_telling_garnishes("[olive]\nrim = true")
