"""Specs out of foreign documents: looked at, then all of them come in or none."""

from __future__ import annotations

from dataclasses import replace

import pytest

from barkeep.application.imports import Decision, NamedText, preview
from barkeep.documents.specs.files import EXPORT_FORMATS, exported
from barkeep.domain.specs.riffs import line_pairs
from barkeep.errors import DuplicateName, InvalidField, Stopped
from tests.application.conftest import plough

FOG = """Fog Lamp
60 ml London dry gin
20 ml lime juice

Shake with ice.
"""


def look(bar, text: str, file: str = "specs.txt", progress=None):
    return preview(bar.snapshot, [NamedText(file, text)], progress)


def names(specs) -> list[str]:
    return [each.spec.name for each in specs]


def many(count: int) -> str:
    return "---\n".join(FOG.replace("Fog Lamp", f"Fog Lamp {number}") for number in range(count))


class TestPreview:
    def test_a_new_spec_is_new(self, bar):
        found = look(bar, FOG)
        assert names(found.new) == ["Fog Lamp"]
        assert (found.same, found.differing, found.unreadable) == ((), (), ())
        assert bar.undo_label is None

    def test_every_format_of_ours_comes_back_as_the_same(self, bar):
        specs = (
            plough(),
            plough("Second Plough", riff_of="Snow Plough", glass="coupe", ice="none"),
        )
        bar.specs.add(specs)
        tree = bar.snapshot.knowledge.tree
        for suffix in EXPORT_FORMATS:
            text = exported(bar.snapshot.specs, f"specs{suffix}", tree)
            found = look(bar, text, f"specs{suffix}")
            assert sorted(names(found.same)) == ["Second Plough", "Snow Plough"], suffix
            assert (found.new, found.differing, found.unreadable) == ((), (), ()), suffix

    def test_another_of_that_name_is_shown_line_by_line(self, bar):
        bar.specs.add([plough()])
        mine = bar.snapshot.specs[0]
        text = "snow plough\n45 ml London dry gin\n20 ml simple syrup\nGlass: coupe\n\nShake."
        (differing,) = look(bar, text).differing
        changes = [line.change for line in differing.comparison.lines]
        theirs, tree = differing.incoming.spec, bar.snapshot.knowledge.tree
        assert changes == [pair.change for pair in line_pairs(mine, theirs, tree)]
        assert differing.comparison.lines[0].mine == "60 ml London dry gin"
        assert differing.comparison.lines[0].theirs == "45 ml London dry gin"
        assert differing.comparison.lines[-1].mine == ""
        fields = {each.name: (each.mine, each.theirs) for each in differing.comparison.fields}
        assert fields == {"method": ("", "Shake."), "glass": ("", "coupe")}
        assert differing.free_name == "snow plough 2"
        assert differing.replaceable

    def test_a_note_or_the_order_alone_is_a_difference(self, bar):
        bar.specs.add([plough()])
        noted = "Snow Plough\n60 ml London dry gin, cold\n22-30 ml lime juice, sour\n"
        (differing,) = look(bar, noted).differing
        assert [line.change for line in differing.comparison.lines] == ["wording", "same"]
        turned = "Snow Plough\n22-30 ml lime juice, sour\n60 ml London dry gin\n"
        (differing,) = look(bar, turned).differing
        assert [each.name for each in differing.comparison.fields] == ["order of the lines"]

    def test_what_cannot_be_read_is_located_and_given_as_text(self, bar):
        text = f"{FOG}---\nMoss Lamp\n60 ml moss\n"
        found = look(bar, text)
        assert names(found.new) == ["Fog Lamp"]
        (bad,) = found.unreadable
        assert (bad.name, bad.where, bad.problems[0].line) == ("Moss Lamp", "line 7", 8)
        assert bad.text == "Moss Lamp\n60 ml moss\n"

    def test_a_file_that_is_nothing_is_one_problem(self, bar):
        for file, text in (("a.json", "{"), ("b.html", "<p>No recipe</p>"), ("c.txt", " \n")):
            (bad,) = look(bar, text, file).unreadable
            assert (bad.file, bad.name) == (file, "")
            assert bad.problems[0].message

    def test_twice_the_same_counts_once_and_two_of_one_name_are_a_problem(self, bar):
        found = look(bar, f"{FOG}---\n{FOG}")
        assert (names(found.new), names(found.same)) == (["Fog Lamp"], ["Fog Lamp"])
        found = look(bar, f"{FOG}---\n{FOG.replace('60', '50')}")
        (bad,) = found.unreadable
        assert "line 1" in bad.problems[0].message
        assert bad.problems[0].line == 7

    def test_a_riff_of_a_stranger_keeps_that_as_a_note(self, bar):
        (one,) = look(bar, FOG.replace("Fog Lamp\n", "Fog Lamp\nRiff of: Long Gone\n")).new
        assert (one.spec.riff_of, one.spec.notes) == (None, "Riff of: Long Gone")
        assert "Long Gone" in one.remarks[0]

    def test_a_riff_of_another_of_the_same_file_stays_one(self, bar):
        riff = FOG.replace("Fog Lamp\n", "Second Fog\nRiff of: fog lamp\n")
        assert [each.spec.riff_of for each in look(bar, f"{riff}---\n{FOG}").new] == [
            "fog lamp",
            None,
        ]

    def test_a_classic_cannot_be_replaced(self, bar):
        (differing,) = look(bar, "Signal Daisy\n45 ml gin\n").differing
        assert not differing.replaceable
        with pytest.raises(InvalidField, match="classic"):
            bar.imports.specs(look(bar, "Signal Daisy\n45 ml gin\n"), {0: Decision("take_theirs")})
        assert bar.undo_label is None

    def test_it_can_be_stopped_at_any_moment(self, bar):
        text, calls = many(120), []
        whole = look(bar, text, progress=lambda done, total: not calls.append((done, total)))
        assert len(whole.new) == 120
        assert calls[0][0] == 0 and calls[-1][0] == calls[-1][1]
        assert calls == sorted(calls)
        for stop in range(1, len(calls) + 1):
            left = iter(range(stop))
            with pytest.raises(Stopped):
                look(
                    bar,
                    text,
                    progress=lambda _done, _total, left=left, stop=stop: next(left) < stop - 1,
                )


class TestImporting:
    def test_all_of_it_is_one_step_of_undo(self, bar, clock):
        bar.specs.add([plough()])
        text = f"{FOG}---\nSnow Plough\n45 ml London dry gin\n"
        found = look(bar, text)
        done = bar.imports.specs(found, {0: Decision("take_theirs")})
        assert done.label == "Import 2 specs"
        assert (done.value.added, done.value.replaced) == (("Fog Lamp",), ("Snow Plough",))
        changed = next(each for each in bar.snapshot.specs if each.name == "Snow Plough")
        assert [line.text for line in changed.lines] == ["45 ml London dry gin"]
        assert changed.added == clock().date()
        bar.undo()
        assert [each.name for each in bar.snapshot.specs] == ["Snow Plough"]
        assert len(bar.snapshot.specs[0].lines) == 2
        bar.redo()
        assert [each.name for each in bar.snapshot.specs] == ["Fog Lamp", "Snow Plough"]

    def test_mine_is_kept_unless_said_otherwise(self, bar):
        bar.specs.add([plough()])
        found = look(bar, "Snow Plough\n45 ml London dry gin\n")
        done = bar.imports.specs(found)
        assert (done.value.added, done.value.kept) == ((), ("Snow Plough",))
        assert done.changes == frozenset()
        assert bar.undo_label == "Add spec Snow Plough"

    @pytest.mark.parametrize(("asked", "came"), [("", "Snow Plough 2"), (" My  one ", "My one")])
    def test_theirs_may_come_in_under_another_name(self, bar, asked, came):
        bar.specs.add([plough()])
        found = look(bar, "Snow Plough\n45 ml London dry gin\n")
        bar.imports.specs(found, {0: Decision("add", asked)})
        assert came in [each.name for each in bar.snapshot.specs]
        assert len(bar.snapshot.specs) == 2

    def test_another_name_that_is_taken_is_refused_and_nothing_is_written(self, bar):
        bar.specs.add([plough()])
        found = look(bar, f"{FOG}---\nSnow Plough\n45 ml London dry gin\n")
        for taken in ("Snow Plough", "signal daisy", "FOG LAMP"):
            with pytest.raises(DuplicateName):
                bar.imports.specs(found, {0: Decision("add", taken)})
        assert [each.name for each in bar.snapshot.specs] == ["Snow Plough"]

    def test_a_bar_that_changed_meanwhile_is_not_written_over(self, bar):
        bar.specs.add([plough()])
        found = look(bar, "Snow Plough\n45 ml London dry gin\n")
        bar.specs.replace(replace(bar.snapshot.specs[0], notes="Mine."))
        with pytest.raises(InvalidField, match="changed since"):
            bar.imports.specs(found, {0: Decision("take_theirs")})
        assert bar.snapshot.specs[0].notes == "Mine."

    def test_stopped_anywhere_it_leaves_nothing_behind(self, bar, bar_file):
        bar.specs.add([plough(f"Plough {number}") for number in range(60)])
        theirs = "---\n".join(f"Plough {number}\n45 ml gin\n" for number in range(60))
        found = look(bar, f"{many(600)}---\n{theirs}")
        decisions = {place: Decision("take_theirs") for place in range(60)}
        before, content = bar.snapshot, bar_file.read_bytes()
        calls: list[int] = []
        for stop in range(1, 100):
            calls.clear()
            try:
                bar.imports.specs(
                    found,
                    decisions,
                    lambda done, _total, at=stop: calls.append(done) or len(calls) < at,
                )
            except Stopped:
                assert bar.snapshot is before
                assert bar_file.read_bytes() == content
            else:
                break
        assert stop > 5
        assert len(bar.snapshot.specs) == 660
        bar.undo()
        assert bar.snapshot.specs == before.specs

    def test_another_thread_imports_through_the_bar_opened_once_more(self, bar):
        found = look(bar, FOG)
        with bar.beside() as beside:
            beside.imports.specs(found)
        assert bar.snapshot.specs == ()
        assert bar.refresh()
        assert [each.name for each in bar.snapshot.specs] == ["Fog Lamp"]
        assert bar.undo_label == "Import 1 spec"
