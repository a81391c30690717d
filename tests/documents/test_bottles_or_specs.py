"""Free lines that might be specs: which of them list bottles, as people write both."""

from __future__ import annotations

from datetime import date

import pytest

from barkeep.application.knowledge import shipped
from barkeep.documents.bottles_csv import Terms
from barkeep.documents.bottles_or_specs import ListsBottles, lists_bottles
from barkeep.documents.specs.files import holds_specs
from tests.walked import walked

BOTTLES = {
    "makers, sizes and levels": (
        "Grey Ferry London dry gin 70 cl half\n2 x sweet vermouth, 3/4 full\naromatic bitters 10 cl"
    ),
    "bare kinds": "gin\nvodka\ndry vermouth\nred bitter aperitivo",
    "a heading and ticks": "My shelf:\n- [x] cognac\n- [x] white rum\n- [ ] pisco",
    "headings of Markdown": (
        "## Spirits\nLondon dry gin\nbourbon 70cl\n\n## Bitters\naromatic bitters"
    ),
    "a blank line between": "London dry gin 70 cl\n\nsweet vermouth 75 cl\n\nred bitter aperitivo",
    "sizes first": "700 ml gin\n1 l vodka\n500 ml simple syrup",
    "one, with all of it": "gin, 70 cl, 40 %, 19.50 EUR, opened 2026-11-01",
    "a pantry": "6 limes\n4 lemons\neggs",
    "German": "Gin 0,7 l halb voll\nWodka 1 Liter",
    "ages and shares": "Scotch 12 years 70cl\nBourbon 1L 3/4",
    "a miniature among bottles": (
        "orange bitters 5 cl\ngin 70 cl\nsweet vermouth 75 cl\ncognac 70 cl"
    ),
    "a line that is not known": "gin 70 cl\nvodka 70 cl half\nthe good stuff from Dad",
    "numbered": "1. gin 70 cl\n2. cognac 50 cl\n3. Campfire liqueur\n4. triple sec 70 cl",
    "bold, in Markdown": "- **Gin** 70 cl\n- **Cognac** 50 cl",
}
SPECS = {
    "ounces": "Brazier\n2 oz aged rum\n1 oz port\nBuild in the mug.",
    "millilitres": "Tall Order\n60 ml gin\n30 ml lemon juice\n20 ml simple syrup\nShake",
    "no method": "Night Mail\n60 ml gin\n30 ml lemon juice",
    "a punch": "Harbour Punch\n750 ml rum\n500 ml lemon juice\n1 l water\nEnough for 12",
    "amounts behind": "Rum Thing\nrum 2 oz\nlime juice 1 oz",
    "parts": "Equal Parts\n1 part gin\n1 part dry vermouth",
    "a line without an amount": "Long Platform\n45 ml bourbon\nsoda water\nBuild over ice.",
    "no amounts at all": "Gin and tonic\ngin\ntonic water",
    "no title": "2 dashes aromatic bitters\n1 sugar cube\n2 oz bourbon",
    "much of one thing": "Sunday\n5 oz sparkling wine\norange juice",
    "Markdown": "# Brazier\n\n- 2 oz aged rum\n- 1 oz port\n\nBuild in the mug.",
    "two of them": "One\n2 oz gin\n1 oz dry vermouth\n\nOther\n2 oz rum\n1 oz lime juice",
    "fractions": "Small Hours\n1 1/2 oz gin\n¾ oz lemon juice\n½ oz honey syrup",
    "prose": "I like gin very much, and there is a bar in the cellar.",
    "a name alone": "gin",
    "fruit": "Garden\n1 sugar cube\nhalf a lime\n10 mint leaves\nTop with soda",
    "nothing": "",
    "cups": "Cellar Cup\n1 cup rum\n1 cup black tea",
    "centilitres": "Kiosk\n4 cl gin\n2 cl Zitronensaft\n1 cl Zuckersirup",
}


@pytest.fixture(scope="module")
def terms() -> Terms:
    return Terms(shipped().tree, today=date(2026, 11, 21))


@walked("case", tuple(BOTTLES))
def test_what_lists_bottles_is_seen_though_it_might_be_specs(case, terms):
    assert holds_specs(BOTTLES[case], "notes.txt")
    assert lists_bottles(BOTTLES[case], "notes.txt", terms) is not None


@walked("case", tuple(SPECS))
def test_what_reads_like_specs_is_taken_as_such(case, terms):
    assert lists_bottles(SPECS[case], "notes.txt", terms) is None


def test_it_says_how_many_of_the_lines_name_a_bottle(terms):
    text = BOTTLES["a line that is not known"]
    assert lists_bottles(text, "notes.txt", terms) == ListsBottles(2, 3)


def test_what_is_no_free_text_is_what_it_says_it_is(terms):
    assert lists_bottles("product,size\ngin,70 cl\n", "list.csv", terms) is None
    assert lists_bottles('[{"name": "gin"}]', "list.json", terms) is None
