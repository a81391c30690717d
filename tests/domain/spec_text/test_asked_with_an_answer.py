"""Lines that may be meant otherwise than they stand: asked about, with the likely line ready."""

from __future__ import annotations

import pytest

from barkeep.application.knowledge import shipped
from barkeep.domain.spec_text.lines import read_line, read_lines
from barkeep.domain.spec_text.text import read_specs
from tests.domain.spec_text.test_lines_as_written import as_said, rows
from tests.walked import walked

TREE = shipped().tree

ANSWERED = """
750 ml gin per 12 guests | 62.5 ml gin
750 ml gin for 12 guests | 62.5 ml gin
300 ml lime juice, serves 10 | 30 ml lime juice
2 oz gin (serves two) | 1 oz gin
2 oz gin (x2) | 4 oz gin
2 oz gin x2 | 4 oz gin
1 oz vermouth | 1 oz sweet vermouth
½ oz syrup | ½ oz simple syrup
1 pt milk | 1 pint milk
1 oz honey, 2:1 | 1 oz honey syrup, 2:1
have an ounce of gin | half an ounce of gin
no, make that an ounce of gin | an ounce of gin
make it two ounces of rye | two ounces of rye
split between 1 oz gin and vodka | ½ oz gin, ½ oz vodka
split 2 oz between bourbon and rye | 1 oz bourbon, 1 oz rye
"""

ASKED = """
1 bottle gin, serves 12 | is for 12
100 g sugar per litre | is a proportion
1 oz of that syrup we made earlier | which syrup is
two ounces of rum half lime | no ingredient is called
2 oz gin, the lime | is another ingredient
rum 2 oz, fizz to top | is another ingredient
1 oz liqueur | which liqueur is this?
an ounce of juice | which juice is this?
2 oz chilli-infused tequila | a kind of tequila
2 oz tequila, chilli-infused | a kind of tequila
2 oz brown-butter-washed bourbon | a kind of bourbon
2 oz bourbon, fat-washed | a kind of bourbon
45 ml gin infused with tea | a kind of gin
5 cl Doppelkorn oder Wodka | no ingredient is called
5 cl moonwater or vodka | no ingredient is called
"""

READ = """
I'm going to start with just under two ounces of gin | 2 oz gin
2 oz vodka vanilla | 2 oz vanilla-vodka
express a lemon peel over | 1 each lemon-peel garnish
express an orange peel over the glass, then drop it in | 1 each orange-peel garnish
1 oz split between gin and vodka | 0.5 oz gin ; 0.5 oz vodka
1 oz overproof Jamaican rum | 1 oz white-overproof-rum
half an ounce of simple, two to one | 0.5 oz rich-simple-syrup
half an ounce of two to one simple | 0.5 oz rich-simple-syrup
1 oz rum infused with coconut | 1 oz strong-coconut-rum
2 oz gin per drink | 2 oz gin
2 cherries (brandied) on a pick | 2 each cocktail-cherry garnish
sugar 15 g | 15 g sugar
2 oz gin, soda to top | 2 oz gin ; - - soda-water
2 oz gin, that's the base | 2 oz gin
ounce and a half of hollow lamp that's the amaro | 1.5 oz amaro
two ounces rum half lime juice | 2 oz rum ; 0.5 oz lime-juice
1 oz gin and 1 oz vermouth | 1 oz gin ; 1 oz vermouth
"""


@walked(("text", "likely"), rows(ANSWERED))
def test_what_may_be_meant_otherwise_is_asked_with_the_likely_line_ready(text, likely):
    asked = read_line(text, TREE).complaints[0]
    assert asked.answer == likely
    assert f"likely “{likely}”" in asked.say()
    assert not any(each.complaints for each in read_lines(likely, TREE))


@walked(("text", "told"), rows(ASKED))
def test_what_only_its_writer_knows_is_asked(text, told):
    said = [complaint.say() for complaint in read_line(text, TREE).complaints]
    assert any(told in each for each in said)


@walked(("text", "said"), rows(READ))
def test_what_can_only_be_meant_one_way_is_read(text, said):
    assert as_said(read_lines(text, TREE)) == said


def test_what_was_made_of_a_kind_is_likely_a_new_ingredient_below_it():
    read = read_line("2 oz chilli-infused tequila", TREE)
    assert [each.unknown for each in read.complaints] == ["chilli-infused tequila"]
    assert [each.key for each in read.guesses] == ["tequila"]
    assert read.known is None


def test_the_origin_of_an_overproof_rum_stays_in_its_words():
    assert read_line("1 oz overproof Jamaican rum", TREE).line.called == "overproof Jamaican rum"


def test_the_hedge_before_an_amount_is_kept_as_a_note():
    read = read_line("I'm going to start with just under two ounces of gin", TREE)
    assert read.line.note == "I'm going to start with just under"


@pytest.mark.parametrize(
    "text",
    [
        "Night Mail (serves two)\n4 oz gin\n",
        "Night Mail, serves two\n4 oz gin\n",
        "Night Mail\n4 oz gin\nserves two\n",
        "Night Mail\nfor two\n4 oz gin\n",
        "Night Mail\n4 oz gin\n\nShake and strain. Serves two.\n",
    ],
)
def test_how_many_it_serves_is_read_wherever_it_is_said(text):
    (read,) = read_specs(text, TREE)
    assert (read.problems, read.name, read.spec.serves) == ((), "Night Mail", 2.0)
    assert read.spec.lines[0].quantity == pytest.approx(59.15, abs=0.01)


def test_times_two_behind_a_name_is_asked_about():
    (read,) = read_specs("Night Mail (x2)\n4 oz gin\n", TREE)
    assert read.problems[0].message.startswith("“x2” may say how many the amounts are for")


def test_a_sentence_said_to_whoever_listens_is_kept_as_a_note_and_told_of():
    text = "Night Mail\n2 oz gin\nokay next one is my sister's favourite\n"
    (read,) = read_specs(text, TREE)
    assert read.spec.notes == "okay next one is my sister's favourite"
    assert read.remarks == ("“okay next one is my sister's favourite” is kept as a note.",)


@pytest.mark.parametrize(
    "row",
    [
        "that goes in a rocks glass with a big cube",
        "Alles kräftig schütteln und doppelt abseihen",
        "Frapper vigoureusement puis filtrer dans une coupe",
        "Shakerare e versare in coppetta ghiacciata",
        "agitar con hielo y colar dos veces",
    ],
)
def test_what_is_done_with_it_is_a_method_in_every_language(row):
    (read,) = read_specs(f"Night Mail\n2 oz gin\n{row}\n", TREE)
    assert (read.problems, read.spec.method) == ((), row)
