"""The bare name of a flavour in a measure: its juice, or a question with what is likely."""

from __future__ import annotations

from barkeep.application.knowledge import shipped
from barkeep.domain.spec_text.lines import read_line
from tests.walked import walked

TREE = shipped().tree

ASKED = """
½ oz cinnamon | ½ oz cinnamon syrup
20 ml elderflower | 20 ml elderflower liqueur
15 ml elderflower, chilled | 15 ml elderflower liqueur, chilled
½ oz rose | ½ oz rose syrup
2 dashes rose | 2 dashes rose bitters
½ oz mint | ½ oz mint syrup
15 ml ginger | 15 ml ginger syrup
1 tsp ginger | 1 tsp ginger syrup
½ oz jalapeño | ½ oz chilli syrup
½ oz lavender | ½ oz lavender syrup
½ oz Thyme | ½ oz thyme syrup
25 ml peach | 25 ml peach liqueur
½ oz blackcurrant | ½ oz crème de cassis
½ oz vanilla | ½ oz vanilla syrup
½ oz almond | ½ oz orgeat
2 dashes orange | 2 dashes orange bitters
1 part passion fruit | 1 part passion fruit syrup
"""

SURE = """
¾ oz lemon | lemon-juice
20 ml lime | lime-juice
1 oz pineapple | pineapple-juice
1½ oz cranberry | cranberry-juice
1 oz pink grapefruit | pink-grapefruit-juice
½ oz honey | honey
½ oz agave | agave-syrup
½ oz maple | maple-syrup
4 oz rosé | rose-wine
1 oz coffee | coffee
½ tsp cinnamon | cinnamon
1 pinch cinnamon | cinnamon
15 ml ginger, juiced | ginger-juice
1 cup mint | mint
2 oz hot chocolate | hot-chocolate
½ oz simple | simple-syrup
"""


def rows(table: str) -> list[tuple[str, str]]:
    parted = (row.partition(" | ") for row in table.strip().splitlines())
    return [(text, said) for text, _, said in parted]


@walked(("text", "likely"), rows(ASKED))
def test_a_flavour_that_may_be_several_things_asks_with_the_likeliest_ready(text, likely):
    (asked,) = read_line(text, TREE).complaints
    assert asked.answer == likely
    assert f"likely “{likely}”" in asked.say()
    assert not read_line(likely, TREE).complaints


@walked(("text", "key"), rows(SURE))
def test_what_can_only_be_one_thing_is_taken(text, key):
    read = read_line(text, TREE)
    assert not read.complaints
    assert read.line.ingredient == key


def test_the_question_says_what_else_it_may_be():
    (asked,) = read_line("20 ml elderflower", TREE).complaints
    assert asked.say().startswith(
        "“elderflower” may be elderflower liqueur or elderflower cordial; likely"
    )
