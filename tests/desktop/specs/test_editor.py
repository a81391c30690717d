"""What the spec editor makes of a text: reading it, completing names, where it starts from."""

from __future__ import annotations

from dataclasses import replace

import pytest

from barkeep.desktop.specs.drafts import for_edit, for_new, for_riff
from barkeep.desktop.specs.line_names import IngredientNames
from barkeep.desktop.specs.reading import see
from barkeep.desktop.specs.text_edit import takes_ingredient
from barkeep.domain.phrases import folded
from barkeep.domain.spec_text.text import read_specs
from tests.worlds import without_id

GOOD = """Fog Lamp
60 ml London dry gin
20 ml lemon juice
Garnish: lemon peel and orange peel
Glass: coupe

Shake with ice and strain.
"""
OTHER = """Second Fog
45 ml bourbon
20 ml lemon juice
"""


@pytest.fixture
def names(tree):
    return IngredientNames(tree)


def lines_of(text: str) -> list[str]:
    return text.split("\n")


class TestReading:
    def test_a_good_text_has_a_usable_spec_and_no_faults(self, tree):
        seen = see(GOOD, tree)
        assert [spec.name for spec in seen.usable] == ["Fog Lamp"]
        assert seen.faults == ()

    def test_nothing_written_is_nothing_seen(self, tree):
        for text in ("", "\n\n  \n", "---\n---"):
            assert see(text, tree).specs == ()
            assert see(text, tree).usable == ()

    def test_every_line_is_found_in_the_text(self, tree):
        numbers = [line.number for line in see(f"\n{GOOD}", tree).specs[0].lines]
        assert numbers == [3, 4, 5, 5]

    def test_lines_of_a_second_spec_are_not_those_of_the_first(self, tree):
        first, second = see(f"{GOOD}---\n{OTHER}", tree).specs
        assert (first.first, first.last) == (1, 8)
        assert second.first == 9
        assert [line.number for line in second.lines] == [10, 11]

    def test_the_spec_at_a_line(self, tree):
        seen = see(f"{GOOD}---\n{OTHER}", tree)
        assert [seen.at(line).name for line in (1, 6, 9, 99)] == [
            "Fog Lamp",
            "Fog Lamp",
            "Second Fog",
            "Second Fog",
        ]

    def test_an_unknown_ingredient_is_located_with_three_names_to_choose_from(self, tree):
        (fault,) = see("Fog Lamp\n60 ml bourbon\n20 ml simple sirop, strained", tree).faults
        assert (fault.line, fault.column, fault.length) == (3, 7, len("simple sirop"))
        assert "simple sirop" in fault.message
        assert len(fault.fixes) == 3
        assert fault.fixes[0].text == "simple syrup"
        assert {(fix.line, fix.column, fix.length) for fix in fault.fixes} == {(3, 7, 12)}

    def test_every_suggestion_is_itself_understood(self, tree):
        for wrong in ("lemn juce", "simple sirop", "zzyzx", "londn dyr gni"):
            (fault,) = see(f"Fog Lamp\n60 ml bourbon\n20 ml {wrong}", tree).faults
            for fix in fault.fixes:
                assert (
                    see(f"Fog Lamp\n60 ml bourbon\n1 {fix.text}", tree).specs[0].lines[1].read.known
                ), fix.text

    def test_a_wrong_amount_has_no_names_to_choose_from(self, tree):
        (fault,) = see("Fog Lamp\n60 g bourbon", tree).faults
        assert (fault.line, fault.column) == (2, 1)
        assert fault.fixes == ()
        assert fault.message[0].isupper()
        assert fault.message.endswith(".")

    def test_the_words_of_a_complaint_decide_nothing(self, tree):
        said = "no ingredient is called lemn juce"
        (fault,) = see(f"Fog Lamp\n60 ml bourbon\nServes: {said}", tree).faults
        assert fault.fixes == ()
        assert fault.message.startswith(f"Serves cannot be “{said}”")

    def test_a_name_that_is_taken_is_a_fault_at_the_name(self, tree):
        (fault,) = see(GOOD, tree, {"fog lamp"}).faults
        assert (fault.line, fault.column, fault.length) == (1, 1, len("Fog Lamp"))
        assert "already" in fault.message
        assert see(GOOD, tree, {"fog lamp"}).usable == ()

    def test_a_name_used_twice_in_one_text_is_a_fault_at_the_second(self, tree):
        (fault,) = see(f"{GOOD}---\n{GOOD.replace('Fog Lamp', 'FOG  LAMP')}", tree).faults
        assert fault.line == 9

    def test_one_bad_spec_makes_none_usable(self, tree):
        seen = see(f"{GOOD}---\nSecond\n30 ml zzyzx", tree)
        assert seen.usable == ()
        assert [len(spec.faults) for spec in seen.specs] == [0, 1]

    def test_a_spec_without_a_name_is_located(self, tree):
        seen = see("\n\n60 ml bourbon\n20 ml lemon juice", tree)
        assert seen.faults[0].line == 3
        assert seen.specs[0].name


class TestCompletion:
    def test_names_begin_with_the_words_whatever_their_accents(self, names):
        assert names.beginning_with("creme de cass")[0] == "crème de cassis"
        assert names.beginning_with("CRÈME DE CASS")[0] == "crème de cassis"

    def test_later_words_count_after_first_words(self, names, tree):
        found = names.beginning_with("lemon ju")
        assert found[0] == "lemon juice"

    def test_one_letter_offers_nothing(self, names):
        assert names.beginning_with("g") == ()

    def test_each_ingredient_is_offered_once(self, names, tree):
        found = names.beginning_with("cr")
        keys = [tree.by_name[folded(name)] for name in found]
        assert len(keys) == len(set(keys))

    @pytest.mark.parametrize(
        ("before", "tail"),
        [
            ("60 ml lond", "lond"),
            ("30 ml dry verm", "dry verm"),
            ("3/4 oz creme de ca", "creme de ca"),
            ("London dry gi", "London dry gi"),
            ("Garnish: lemon pe", "lemon pe"),
            ("60 ml ", ""),
            ("60 ml lond ", ""),
            ("", ""),
            ("60 ml zzyzx", ""),
        ],
    )
    def test_the_longest_end_that_could_be_a_name(self, names, before, tail):
        found, offers = names.unfinished(before)
        assert found == tail
        assert bool(offers) == bool(tail)

    def test_a_finished_name_that_can_be_no_other_offers_nothing(self, names):
        assert names.unfinished("20 ml crème de cassis") == ("", ())

    @pytest.mark.parametrize("number", [1, 2, 3, 9, 10])
    def test_lines_below_the_name_take_ingredients(self, number):
        assert takes_ingredient(lines_of(f"{GOOD}---\n{OTHER}"), number)

    @pytest.mark.parametrize("number", [0, 4, 6, 8])
    def test_names_glasses_and_methods_do_not(self, number):
        assert not takes_ingredient(lines_of(f"{GOOD}---\n{OTHER}"), number)

    def test_two_blank_lines_begin_another_spec(self):
        text = lines_of(f"{GOOD}\n\n{OTHER}")
        assert not takes_ingredient(text, text.index("Second Fog"))
        assert takes_ingredient(text, text.index("Second Fog") + 1)


class TestDrafts:
    def test_a_new_one_is_empty(self):
        assert for_new().text == ""

    def test_an_edit_reads_back_to_the_same_spec(self, tree):
        spec = replace(see(GOOD, tree).usable[0], id=4)
        draft = for_edit(spec, tree)
        assert draft.changes == spec
        assert read_specs(draft.text, tree)[0].spec == without_id(spec)

    def test_a_riff_has_a_free_name_and_says_what_it_riffs_on(self, tree):
        spec = see(GOOD, tree).usable[0]
        draft = for_riff(replace(spec, classic=True), ["Fog Lamp", "fog lamp riff"], tree)
        riff = read_specs(draft.text, tree)[0].spec
        assert draft.text.splitlines()[1] == "Riff of: Fog Lamp"
        assert riff == replace(spec, name="Fog Lamp riff 2", riff_of="Fog Lamp")
        assert draft.changes is None
