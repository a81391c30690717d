"""Drinks that leave something unsaid: an amount, the ice, how many they are for, which bottle."""

from __future__ import annotations

from dataclasses import replace

import pytest

from barkeep.cli.spec_analyse import _analysis_json
from barkeep.desktop.drink.analysis_view import view_of
from barkeep.domain.drink.analysis import analyse
from barkeep.domain.drink.search import _strengths
from barkeep.domain.drink.words import facts, in_brief, place_in_words
from tests.domain.drink.test_analysis import BARE, TREE, bar, bottle, classic, written
from tests.walked import walked

PER_SERVE, NO_DRIVING = "One serve holds", "Do not drive"
NO_AMOUNT = "gin\ntonic water\n\nBuild over ice."


def of(text: str, snapshot=BARE):
    return analyse(written(f"Drink\n{text}"), snapshot)


def rows(found) -> dict[str, str]:
    return {each.label: each.value for each in facts(found, TREE)}


def cautions(found) -> str:
    return " ".join(each.text for each in (*found.cautions, *found.general_cautions))


class TestAnAmountOfAlcohol:
    def test_no_strength_is_said_where_gin_has_no_amount(self):
        found = of(NO_AMOUNT, bar(bottle("london-dry-gin")))
        assert (found.abv_percent, found.ethanol_g, found.standard_drinks) == (None,) * 3
        assert (found.kcal, found.frozen, found.style) == (None,) * 3
        assert "Strength not known: London dry gin has no amount." in found.uncertain
        assert rows(found)["Strength"] == "Not known: London dry gin has no amount"
        assert not {"Alcohol", "Energy"} & rows(found).keys()
        said = in_brief(found, TREE)
        assert said == "90 ml, strength not known: London dry gin has no amount"
        assert "strength is not known" in place_in_words(found)

    def test_the_cautions_of_alcohol_stay_but_the_one_with_a_figure(self):
        assert NO_DRIVING in cautions(of(NO_AMOUNT))
        assert PER_SERVE not in cautions(of(NO_AMOUNT))
        assert PER_SERVE in cautions(of("60 ml gin\n\nBuild over ice."))

    def test_in_json_it_is_null_and_no_bar_is_drawn(self):
        answer = _analysis_json(of(NO_AMOUNT))
        keys = ("abv_percent", "ethanol_g", "standard_drinks", "kcal")
        assert [answer[key] for key in keys] == [None] * 4
        view = view_of(written(f"Drink\n{NO_AMOUNT}"), BARE)
        assert [each.label for each in view.bars] == ["Sugar", "Acid"]

    def test_a_known_part_makes_no_strength_of_the_whole(self):
        found = of("gin\n30 ml sweet vermouth\nvodka\n\nStir with ice.")
        assert found.abv_percent is None and found.unknown_alcohol == ("gin", "vodka")
        assert rows(found)["Strength"] == "Not known: gin and vodka have no amount"

    def test_bitters_to_taste_leave_the_strength_known(self):
        found = of("60 ml gin\norange bitters\n\nStir with ice.")
        assert found.abv_percent > 20.0 and found.unknown_alcohol == ()
        assert of("orange bitters\n100 ml tonic water\n\nPour.").abv_percent is None

    def test_a_search_by_strength_does_not_take_it_for_none(self):
        from barkeep.domain.pouring.memory import Memory

        spec = written(f"Drink\n{NO_AMOUNT}")
        assert _strengths([spec], BARE, Memory())[spec.name] is None

    def test_an_optional_line_is_named(self):
        found = of("gin (optional)\n120 ml tonic water\n\nBuild over ice.")
        assert in_brief(found, TREE) == "120 ml, without the optional gin"
        assert rows(found)["Strength"] == "No alcohol without the optional gin"
        assert NO_DRIVING in cautions(found) and PER_SERVE not in cautions(found)
        strength = next(
            each for each in facts(analyse(classic("Champagne Cocktail"), BARE), TREE)[1:2]
        )
        assert strength.note == "Without the optional Cognac"
        assert in_brief(analyse(classic("Lemonade"), BARE), TREE).endswith("without alcohol")


class TestIce:
    @pytest.mark.parametrize(
        "method",
        [
            *("Pour into the glass without ice", "Serve neat", "Combine without any ice."),
            "Stir without ice and serve at room temperature",
            "Stir together, bottle, keep in the freezer. Pour straight from the freezer",
            *("Build in the glass. No ice.", "Stir, never over ice."),
        ],
    )
    def test_what_is_served_without_is_not_thinned(self, method):
        found = of(f"60 ml gin\n20 ml sweet vermouth\n\n{method}")
        assert found.dilution.share == 0.0
        assert "dilution is counted" in found.uncertain[0]

    @pytest.mark.parametrize(
        "method",
        [
            "Stir with ice and strain into a glass without ice.",
            "Stir. Strain into a chilled glass without ice.",
            "Stir and pour into a glass from the freezer.",
            *("Stir.", "Shake hard. Strain into a glass without ice."),
        ],
    )
    def test_a_glass_without_ice_says_nothing_of_the_mixing(self, method):
        assert of(f"60 ml gin\n20 ml sweet vermouth\n\n{method}").dilution.share > 0.3

    TODDY = "60 ml bourbon\n120 ml {}\n15 ml honey syrup\n15 ml lemon juice\n\n"

    @pytest.mark.parametrize("hot", ["boiling water", "hot water", "hot coffee", "hot milk"])
    @walked("method", ["Stir in a mug until it is dissolved.", "Shake.", ""])
    def test_what_is_made_with_boiling_water_is_hot(self, hot, method):
        found = of(self.TODDY.format(hot) + method)
        assert (found.technique, found.dilution.share) == ("hot", 0.0)
        assert any("Heat drives off some alcohol" in each for each in found.uncertain)

    def test_unless_ice_is_named_or_the_method_given(self):
        toddy = self.TODDY.format("boiling water")
        assert of(f"{toddy}Stir, then pour over ice.").dilution.share > 0.0
        iced = replace(written(f"Drink\n{toddy}Stir."), ice="cubes")
        assert analyse(iced, BARE).dilution.share > 0.0
        spec = written(f"Drink\n{toddy}Stir.")
        assert analyse(spec, BARE, "stirred").technique == "stirred"
        assert of("60 ml vodka\n30 ml espresso\n\nShake.").technique == "shaken"

    def test_all_added_over_the_ice_is_told_from_no_ice(self):
        lines = "100 ml sparkling wine\n50 ml soda water\n\n"
        over, without = of(f"{lines}Build over ice."), of(f"{lines}Build in the glass.")
        added = "All of it is added over the ice; what that melts is not counted."
        unnamed = "No ice is named, so no dilution is counted."
        assert added in over.uncertain and unnamed not in over.uncertain
        assert unnamed in without.uncertain and added not in without.uncertain


class TestTheGlass:
    def test_a_blended_drink_has_its_ice_in_it(self):
        assert analyse(classic("Piña Colada"), BARE).fit.why == ""
        assert "of ice" not in analyse(classic("Strawberry Daiquiri"), BARE).fit.why

    def test_less_than_its_doubt_too_much_is_no_reason_to_speak(self):
        spec = classic("Margarita")
        found = analyse(spec, BARE)
        assert 175.5 < found.served_volume_ml < 175.0 + found.sigma.served_volume_ml
        assert found.fit.why == ""


class TestABatch:
    TEXT = "4 l white rum\n4 l lime juice\n2 l simple syrup\nGlass: coupe\n\nShake with ice."

    def test_figures_are_for_the_whole(self):
        found = of(self.TEXT)
        said = "As written this makes about 14.4 l; figures are for the whole"
        assert f"{said}." in found.uncertain
        assert in_brief(found, TREE).startswith(said)
        assert rows(found)["In all"] == "14.4 ± 0.7 l"
        assert "In the glass" not in rows(found)
        assert PER_SERVE not in cautions(found) and NO_DRIVING in cautions(found)
        assert found.fit is None

    def test_it_begins_at_a_bottle_or_five_drinks(self):
        assert of("700 ml lemonade\n\nPour.").is_batch is False
        assert of("710 ml lemonade\n\nPour.").is_batch
        assert of("210 ml vodka\n\nPour.").is_batch is False
        assert of("230 ml vodka\n\nPour.").is_batch
        assert in_brief(analyse(classic("Zombie"), BARE), TREE).split()[1] == "ml"


class TestFigures:
    def test_ice_never_forms_at_minus_nothing(self):
        found = of("1 egg white\n\nShake with ice.")
        notes = [each.note for each in facts(found, TREE) if each.label == "In a freezer"]
        assert notes == ["Ice forms at 0 °C; a freezer has −18 °C"]
        assert str(_analysis_json(found)["freezing_point_c"]) != "-0.0"

    def test_a_bound_is_no_figure(self):
        found = of("60 ml overproof rum\n\nPour.")
        notes = [each.note for each in facts(found, TREE) if each.label == "In a freezer"]
        assert notes == ["Ice forms below −28 °C; a freezer has −18 °C"]
        assert found.frozen.is_bound and _analysis_json(found)["freezing_point_c"] is None
        weaker = of("60 ml vodka\n\nPour.")
        assert not weaker.frozen.is_bound
        assert _analysis_json(weaker)["freezing_point_c"] == pytest.approx(-23.1, abs=0.1)

    def test_nothing_is_called_none_and_no_doubt_is_not_shown(self):
        plain = rows(of("60 ml vodka\n\nPour."))
        assert (plain["Sugar"], plain["Acid"]) == ("None", "None")
        wine = rows(of("100 ml dry white wine\n\nPour."))
        assert wine["Sugar"] == "3 g/l"
        trace = rows(of("300 ml vodka\n1 ml lime juice\n\nPour."))
        assert trace["Sugar"] == "Less than 1 g/l"


class TestWhichBottle:
    FERNET = bottle("fernet", 4, abv_percent=39.0)
    ORANGE = bottle("orange-amaro", 1, abv_percent=29.0)
    MILD = bottle("mild-amaro", 2, abv_percent=23.0)
    SOUR = "45 ml amaro\n20 ml lime juice\n\nShake."
    SAID = "Amaro is poured from Hollow Lamp bottle 1 (29 % vol); another would differ."

    def test_another_that_would_do_as_well_but_differs_is_told(self):
        assert self.SAID in of(self.SOUR, bar(self.ORANGE, self.MILD)).uncertain

    def test_not_where_there_is_no_other_or_it_is_alike_or_named(self):
        alike = bottle("fernet", 3, abv_percent=39.0)
        only_when_asked = bar(self.ORANGE, self.FERNET)
        for shelf in (bar(self.FERNET), bar(self.FERNET, alike), only_when_asked):
            assert not any(
                "another would differ" in each for each in of(self.SOUR, shelf).uncertain
            )
        named = of(self.SOUR.replace("amaro", "fernet"), bar(self.FERNET, self.MILD))
        assert not any("another would differ" in each for each in named.uncertain)
