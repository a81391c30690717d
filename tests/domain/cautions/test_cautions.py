"""Cautions: each is raised by what should raise it and by nothing else."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from barkeep import resource_files
from barkeep.domain.cautions.caution_words import caution_in_words
from barkeep.domain.cautions.cautions import (
    BASES,
    LEVELS,
    Caution,
    Occasion,
    cautions_for,
    occasion_of,
    read_cautions,
    shipped_cautions,
)
from barkeep.domain.phrases import Phrases
from barkeep.domain.spec_text.text import read_specs
from barkeep.domain.specs.spec import Line, Spec
from barkeep.errors import KnowledgeError
from tests.domain.cautions.cautioned_words import NOT_RAISED, RAISED
from tests.walked import walked

RULES = {rule.caution.key: rule for rule in shipped_cautions()}


def occasion(words: str = "", *keys: str, **more) -> Occasion:
    return Occasion(frozenset(keys), words, **{"technique": "unknown", "alcoholic": False, **more})


def raised(asked: Occasion, tree, *, general: bool = True) -> set[str]:
    return {each.key for each in cautions_for(asked, tree, general=general)}


def examples_of(phrase: str) -> list[str]:
    """Words that a phrase is found in: its gaps filled with this and that, or left empty."""
    parts = phrase.replace(" ... ", " ").replace(" *", " #")
    fillers = ("it", "mug", "cherry", "wine")
    return [parts.replace("*", "").replace("#", filler) for filler in fillers]


def of(spec: Spec, tree) -> list[str]:
    """The danger and care cautions of a spec as it is written."""
    return [each.key for each in cautions_of(spec, tree) if each.level != "note"]


def cautions_of(spec: Spec, tree) -> tuple[Caution, ...]:
    """Every caution of a spec as it is written, but the general ones."""
    keys = {line.ingredient for line in spec.lines}
    return cautions_for(occasion_of(spec, keys, tree), tree)


class TestTheWords:
    def test_every_caution_is_tried(self):
        assert RAISED.keys() == RULES.keys()
        with_words = {key for key, rule in RULES.items() if rule.when.phrases}
        assert with_words == {key for key, words in RAISED.items() if words}
        assert with_words <= NOT_RAISED.keys() <= RULES.keys()

    @walked(("key", "words"), [(key, each) for key, words in RAISED.items() for each in words])
    def test_words_that_raise_a_caution(self, tree, key, words):
        assert key in raised(occasion(words), tree)

    @walked(("key", "words"), [(key, each) for key, words in NOT_RAISED.items() for each in words])
    def test_words_that_do_not(self, tree, key, words):
        assert key not in raised(occasion(words), tree)

    @walked("key", [key for key, words in RAISED.items() if words])
    def test_no_phrase_is_dead(self, key):
        """Each phrase raises its caution, and each that disarms has something to disarm."""
        phrases = RULES[key].when.phrases
        for said in phrases.said:
            assert any(map(phrases.found_in, examples_of(said))), said
        for unless in phrases.unless:
            armed = Phrases(phrases.said)
            assert any(map(armed.found_in, examples_of(unless))), unless
            assert not any(map(phrases.found_in, examples_of(unless))), unless

    def test_words_that_disarm_one_mention_leave_another(self, tree):
        words = "Keep the bottle away from flame. Flame the peel."
        assert raised(occasion(words), tree) == {"flame"}

    def test_a_name_raises_nothing(self, tree):
        named = Spec("Flaming Tobacco Distillery", (Line("2 oz gin", "gin"),), "Stir.")
        assert of(named, tree) == []

    def test_a_phrase_does_not_run_from_line_to_line(self, tree):
        lines = (Line("1 clove garlic", "gin"), Line("oil", "olive-oil"))
        assert of(Spec("Two lines", lines), tree) == []

    @pytest.mark.parametrize("place", ["method", "glass", "ice", "notes"])
    def test_every_part_of_a_spec_is_read(self, tree, place):
        spec = replace(Spec("Fog", (Line("2 oz gin", "gin"),)), **{place: "with dry ice"})
        assert of(spec, tree) == ["dry-ice-and-nitrogen"]

    def test_a_line_and_its_note_are_read(self, tree):
        assert of(Spec("Fog", (Line("gin over dry ice", "gin"),)), tree)
        assert of(Spec("Fog", (Line("gin", "gin", note="over dry ice"),)), tree)


class TestWhatGoesIn:
    @walked(
        ("key", "ingredient"),
        [
            ("raw-egg", "egg"),
            ("raw-egg", "egg-white"),
            ("raw-egg", "egg-yolk"),
            ("home-cinchona", "cinchona-bark"),
            ("grapefruit-and-medicines", "pink-grapefruit-juice"),
            ("grapefruit-and-medicines", "grapefruit"),
            ("hot", "boiling-water"),
            ("quinine", "tonic-water"),
            ("quinine", "white-quinquina"),
            ("liquorice", "pastis"),
            ("coconut", "cream-of-coconut"),
        ],
    )
    def test_an_ingredient_or_a_kind_of_it_raises_it(self, tree, key, ingredient):
        assert key in raised(occasion("", ingredient), tree)

    @walked(
        ("key", "ingredient"),
        [
            ("raw-egg", "pasteurised-egg-white"),
            ("raw-egg", "egg-liqueur"),
            ("raw-egg", "aquafaba"),
            ("grapefruit-and-medicines", "grapefruit-peel"),
            ("grapefruit-and-medicines", "grapefruit-bitters"),
            ("grapefruit-and-medicines", "orange-juice"),
            ("hot", "hot-sauce"),
            ("hot", "water"),
            ("quinine", "soda-water"),
        ],
    )
    def test_its_neighbours_do_not(self, tree, key, ingredient):
        assert key not in raised(occasion("", ingredient), tree)

    def test_the_technique(self, tree):
        assert "hot" in raised(occasion(technique="hot"), tree)
        assert "hot" not in raised(occasion(technique="stirred"), tree)

    @pytest.mark.parametrize(
        ("strength", "is_raised"), [(None, 0), (49.9, 0), (50.0, 1), (96.0, 1)]
    )
    def test_the_strength_of_the_strongest_bottle(self, tree, strength, is_raised):
        found = raised(occasion(strongest_percent=strength), tree)
        assert ("strong-spirit" in found) == bool(is_raised)

    @pytest.mark.parametrize(("acid", "is_raised"), [(True, True), (None, True), (False, False)])
    def test_copper_is_minded_unless_the_drink_is_known_not_to_be_acid(self, tree, acid, is_raised):
        found = raised(occasion("copper mug", ph_below_6=acid), tree)
        assert ("copper-and-acid" in found) == is_raised

    @pytest.mark.parametrize("key", ["coffee", "espresso", "cold-brew-coffee", "cola"])
    def test_caffeine_is_minded_with_alcohol_only_and_is_a_mere_note(self, tree, key):
        found = cautions_for(occasion("", key, alcoholic=True), tree)
        assert [(each.key, each.level) for each in found] == [("caffeine-with-alcohol", "note")]
        assert raised(occasion("", key), tree) == set()
        assert raised(occasion("", "coffee-liqueur", alcoholic=True), tree, general=False) == set()

    def test_acid_alone_is_no_caution(self, tree):
        assert raised(occasion(ph_below_6=True), tree) == set()

    def test_an_ingredient_the_tree_does_not_know_raises_nothing(self, tree):
        assert raised(occasion("", "moss-dew"), tree) == set()


GENERAL = {key for key, rule in RULES.items() if rule.general}


class TestGeneral:
    def test_there_are_the_usual_ones(self):
        usual = {"driving", "pregnancy", "under-age", "alcohol-and-medicines", "standard-drinks"}
        assert usual < GENERAL

    def test_they_are_kept_back_unless_asked_for(self, tree):
        asked = occasion(alcoholic=True, abv_percent=30.0, standard_drinks=1.5)
        assert raised(asked, tree, general=False) == set()
        assert raised(asked, tree) == GENERAL

    def test_they_are_not_said_of_a_drink_without_alcohol(self, tree):
        assert (
            raised(occasion(alcoholic=False, abv_percent=0.0, standard_drinks=0.0), tree) == set()
        )

    def test_a_figure_is_shown_and_where_it_is_not_known_nothing_is_said(self, tree):
        known = occasion(alcoholic=True, abv_percent=31.6, standard_drinks=1.84)
        texts = {each.key: each.text for each in cautions_for(known, tree, general=True)}
        assert "about 1.8 standard drinks" in texts["standard-drinks"]
        assert "about 32 % vol" in texts["strong-serve"]
        assert "standard-drinks" not in raised(replace(known, standard_drinks=None), tree)
        assert "strong-serve" not in raised(replace(known, abv_percent=None), tree)
        assert "strong-serve" not in raised(replace(known, abv_percent=24.9), tree)


class TestTheOccasion:
    SPEC = Spec(
        "Trial",
        (Line("2 oz gin", "gin"), Line("1 oz lime juice", "lime-juice")),
        "Shake.",
        "shaken",
        "coupe",
    )

    def test_is_read_off_a_spec(self, tree):
        found = occasion_of(self.SPEC, ["gin", "lime-juice"], tree)
        assert found.ingredients == {"gin", "lime-juice"}
        assert (found.technique, found.alcoholic, found.ph_below_6) == ("shaken", True, True)
        assert (found.strongest_percent, found.abv_percent) == (40.0, None)
        assert "Shake." in found.words and "coupe" in found.words and "2 oz gin" in found.words

    def test_a_label_goes_before_what_is_usual(self, tree):
        labels = {"gin": 57.0}
        assert occasion_of(self.SPEC, ["gin"], tree, strengths=labels).strongest_percent == 57.0
        weak = {"overproof-rum": 40.0}
        found = occasion_of(self.SPEC, ["overproof-rum", "lime-juice"], tree, strengths=weak)
        assert found.strongest_percent == 40.0

    def test_what_is_not_known_stays_unknown(self, tree):
        assert occasion_of(self.SPEC, [], tree).strongest_percent is None
        assert occasion_of(self.SPEC, ["gin"], tree).ph_below_6 is None
        assert occasion_of(self.SPEC, ["lime-juice"], tree, ph_below_6=False).ph_below_6 is False
        assert not occasion_of(self.SPEC, ["lime-juice"], tree).alcoholic


# Each looked at by eye: a drink that is not here raises neither danger nor care.
CLASSICS = {
    "raw-egg": """
        Silver Fizz / Golden Fizz / Royal Fizz / Ramos Fizz / Morning Glory Fizz / Brandy Flip /
        Rum Flip / Whiskey Flip / Sherry Flip / Port Flip / Coffee Cocktail / Eggnog /
        Tom and Jerry / Whiskey Sour / Pisco Sour / Amaretto Sour / White Lady / Clover Club /
        Pink Lady / Boston Sour / Rattlesnake / Illegal
    """,
    "grapefruit-and-medicines": """
        Paloma / Greyhound / Salty Dog / Sea Breeze / Brown Derby / Papa Doble / Zombie /
        Navy Grog / Hemingway Special
    """,
    "hot": """
        Hot Toddy / Hot Whiskey / Irish Coffee / Hot Buttered Rum / Hot Milk Punch / Tom and Jerry /
        Mulled Wine / Bishop / Hot Spiced Cider / Hot Gin Punch / Grog / Coffee Royal
    """,
}
SAMPLE = {
    "raw-egg": "Drift Fence",
    "grapefruit-and-medicines": "Dropped Bag",
    "hot": "Brazier",
}


# Mere notes, which Tonight leaves out.
NOTED = {
    "caffeine-with-alcohol": """
        Coffee Royal / Espresso Martini / Fernandito / Irish Coffee / Long Island Iced Tea /
        Rum and Cola / Cuba Libre
    """,
}


def by_drink(table: dict[str, str]) -> dict[str, set[str]]:
    found: dict[str, set[str]] = {}
    for key, names in table.items():
        for name in names.split("/"):
            found.setdefault(name.strip(), set()).add(key)
    return found


class TestRealDrinks:
    def test_every_classic_raises_what_it_should_and_nothing_else(self, knowledge, tree):
        cautions = {spec.name: set(of(spec, tree)) for spec in knowledge.classics}
        assert len(cautions) >= 268
        assert {name: keys for name, keys in cautions.items() if keys} == by_drink(CLASSICS)

    def test_caffeine_is_noted_in_every_classic_that_has_it(self, knowledge, tree):
        noted = {
            spec.name: {each.key for each in cautions_of(spec, tree)} & NOTED.keys()
            for spec in knowledge.classics
        }
        assert {name: keys for name, keys in noted.items() if keys} == by_drink(NOTED)

    def test_so_does_every_spec_of_the_sample_bar(self, tree):
        read = read_specs(resource_files.read_text("specs.txt", folder="sample_db"), tree)
        cautions = {each.name: set(of(each.spec, tree)) for each in read}
        assert len(cautions) >= 19
        assert {name: keys for name, keys in cautions.items() if keys} == by_drink(SAMPLE)

    def test_a_classic_without_alcohol_gets_none_of_the_general_cautions(self, knowledge, tree):
        (lemonade,) = (spec for spec in knowledge.classics if spec.name == "Lemonade")
        asked = occasion_of(lemonade, {line.ingredient for line in lemonade.lines}, tree)
        assert raised(replace(asked, standard_drinks=0.0, abv_percent=0.0), tree) == set()


class TestTheTexts:
    def test_each_is_short_and_ends_as_a_sentence(self):
        for key, rule in RULES.items():
            text = rule.caution.text
            assert len(text) <= 190, key
            assert text[0].isupper() and text.endswith("."), key

    def test_each_names_whose_word_comes_first(self):
        deferring = re.compile(
            r"local|your food|doctor|pharmacist|medical advice|poison centre|label|legal|country",
            re.IGNORECASE,
        )
        assert [key for key, rule in RULES.items() if not deferring.search(rule.caution.text)] == []

    def test_each_says_what_it_rests_on(self):
        for key, rule in RULES.items():
            assert rule.caution.authority, key
            assert any(each in rule.caution.basis for each in BASES), key
            if rule.caution.authority == "no authority found":
                assert not rule.caution.basis.startswith("read"), key

    def test_a_reader_is_told_the_source_and_not_how_it_was_looked_up(self):
        for rule in RULES.values():
            caution = rule.caution
            said = caution_in_words(caution)
            if caution.authority == "no authority found":
                assert said == caution.text
            else:
                assert said == f"{caution.text} Source: {caution.authority}."
            assert "authority found" not in said and "common practice" not in said
            assert "copy of the source" not in said and "from memory" not in said

    def test_every_kind_is_an_ingredient(self, tree):
        kinds = {kind for rule in RULES.values() for kind in rule.when.kinds}
        assert kinds and {kind for kind in kinds if kind not in tree} == set()

    def test_the_worst_comes_first_whatever_the_order_of_the_rules(self, tree):
        everything = occasion(
            " ; ".join(words[0] for words in RAISED.values() if words),
            "egg",
            "tonic-water",
            "coconut",
            "espresso",
            technique="hot",
            abv_percent=30.0,
            strongest_percent=60.0,
            standard_drinks=2.0,
            alcoholic=True,
        )
        found = cautions_for(everything, tree, general=True)
        assert {each.key for each in found} == RULES.keys()
        levels = [LEVELS.index(each.level) for each in found]
        assert levels == sorted(levels, reverse=True)
        backwards = cautions_for(everything, tree, shipped_cautions()[::-1], general=True)
        assert set(backwards) == set(found)
        assert [each.level for each in backwards] == [each.level for each in found]


@given(st.text(max_size=200))
def test_no_words_can_break_it(tree, words):
    assert raised(occasion(words), tree) <= RULES.keys()


TOML = """
[smoke]
level = "care"
text = "Smoke of {abv_percent} % vol. Local rules come first."
authority = "nobody"
basis = "common practice"
words = ["smoke*"]
not = ["smoke free"]
technique = ["hot"]
strength_at_least = 50
all = true
"""


class TestReading:
    def test_a_rule_says_what_its_table_says(self, tree):
        (rule,) = read_cautions(TOML)
        smoky = occasion("smoked", technique="hot", strongest_percent=55.0, abv_percent=20.0)
        (caution,) = cautions_for(smoky, tree, [rule])
        assert (caution.key, caution.level, caution.authority) == ("smoke", "care", "nobody")
        assert caution.text == "Smoke of 20 % vol. Local rules come first."
        for less in (
            {"words": "smoke-free"},
            {"technique": "shaken"},
            {"strongest_percent": 40.0},
            {"abv_percent": None},
        ):
            assert cautions_for(replace(smoky, **less), tree, [rule]) == ()

    def test_without_all_any_condition_will_do(self, tree):
        rules = read_cautions(TOML.replace("all = true", "all = false"))
        assert cautions_for(occasion("smoke", abv_percent=0.0), tree, rules)
        assert cautions_for(occasion(technique="hot", abv_percent=0.0), tree, rules)
        assert not cautions_for(occasion("steam", abv_percent=0.0), tree, rules)

    def test_no_rules_raise_nothing(self, tree):
        assert cautions_for(occasion("flaming dry ice", "egg"), tree, ()) == ()

    @walked(
        ("old", "new", "reason"),
        [
            ('level = "care"', 'level = "grave"', "“level” is “grave”"),
            ('level = "care"', "", "“level” is missing; it must be one of note, care, danger"),
            ('authority = "nobody"', "", "“authority” is missing"),
            ("Local rules come first.", "{colour}", "“text” shows {colour}"),
            ("{abv_percent}", "{abv_percent", "a brace without its fellow"),
            ("{abv_percent}", "{}", "“text” shows {}"),
            ("common practice", "hearsay", "“basis” must say one of these"),
            ('["smoke*"]', '["smoke ..."]', "“smoke ...” says too little"),
            ('["smoke*"]', '["*"]', "“*” says too little"),
            ('["smoke*"]', '"smoke"', "“words” must be a list of texts"),
            ('words = ["smoke*"]', "", "“not” needs “words”"),
            ('["hot"]', '["boiled"]', "“technique” has “boiled”"),
            ("= 50", "= 101", "at most 100"),
            ("= 50", "= 0", "more than 0"),
            ("all = true", 'all = "yes"', "“all” must be true or false"),
            ("strength_at_least", "strength_at_most", "no field “strength_at_most”"),
        ],
    )
    def test_a_fault_is_located(self, old, new, reason):
        text = TOML.replace(old, new, 1)
        assert text != TOML
        with pytest.raises(KnowledgeError) as fault:
            read_cautions(text, "own.toml")
        assert (fault.value.file, fault.value.key) == ("own.toml", "smoke")
        assert reason in fault.value.reason

    def test_a_caution_that_nothing_raises_is_refused(self):
        bare = TOML.split("words")[0]
        with pytest.raises(KnowledgeError, match=r"cautions\.toml, smoke: nothing raises it"):
            read_cautions(bare)
        with pytest.raises(KnowledgeError, match="nothing raises it"):
            read_cautions(bare + "all = true")

    def test_what_is_no_table_or_no_toml_is_located(self):
        with pytest.raises(KnowledgeError, match=r"cautions\.toml, smoke: write it as a table"):
            read_cautions("smoke = 7")
        with pytest.raises(KnowledgeError, match=r"cautions\.toml, the text: it is not TOML"):
            read_cautions("[smoke")

    def test_the_shipped_rules_are_read_once(self):
        assert shipped_cautions() is shipped_cautions()
