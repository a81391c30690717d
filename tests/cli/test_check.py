"""`barkeep check`: any bar looked over, a damaged one saved as far as it can; which is meant."""

from __future__ import annotations

import sqlite3
from contextlib import closing

import pytest

from tests.cli.test_openings import old_bar
from tests.store.damages import Damage

CHEAP = Damage("product", "price", "cheap")
WRONG = "product 3, price: “cheap” stands there, and it must be a number"


def test_a_sound_bar_is_called_sound(barkeep, bar):
    before = bar.read_bytes()
    assert barkeep("--bar", bar, "check").out == f"Nothing is wrong with {bar}.\n"
    assert barkeep("--bar", bar, "check", "--json").answer == {
        "file": str(bar),
        "sound": True,
        "opens": True,
        "acceptable": False,
        "findings": [],
        "saveable": None,
    }
    assert bar.read_bytes() == before


def test_a_damaged_bar_is_refused_in_one_sentence_that_says_where_to_go_on(barkeep, bar):
    CHEAP.do(bar)
    for words in (("bottles",), ("tonight", "--json"), ("undo",), ("count", "1", "0.4")):
        assert barkeep("--bar", bar, *words).refusal == (
            f"{bar} cannot be used: it is damaged ({WRONG}); “barkeep check” says all that is "
            "wrong with it, and saves what can be read."
        )


def test_a_damaged_bar_is_looked_over_and_saved(barkeep, bar, tmp_path):
    CHEAP.do(bar)
    before, new = bar.read_bytes(), tmp_path / "saved.barkeep"
    shown = barkeep("--bar", bar, "check").out
    assert f"The file is damaged: {WRONG}.\n" in shown
    assert "113 products, 81 bottles" in shown and "--save-what-can-be" in shown
    answer = barkeep("--bar", bar, "check", "--json").answer
    assert (answer["sound"], answer["opens"]) == (False, False)
    assert answer["findings"] == [f"The file is damaged: {WRONG}."]
    assert answer["saveable"]["saved"]["bottles"] == 81
    shown = barkeep("--bar", bar, "check", "--save-what-can-be", new).out
    assert shown.splitlines()[1:] == [
        "1 thing could not be read:",
        f"- {WRONG}; that cell is left empty.",
    ]
    assert bar.read_bytes() == before
    assert barkeep("--bar", new, "check", "--json").answer["sound"]
    assert len(barkeep("--bar", new, "bottles", "--json").answer["bottles"]) > 50
    said = barkeep("--bar", bar, "check", "--save-what-can-be", new).refusal
    assert said == (
        f"{new} cannot be written: there is a file of that name already. Nothing was changed."
    )


@pytest.mark.parametrize("schema", [1, 4])
def test_an_old_bar_is_looked_over_as_it_is_and_saved_as_a_new_one(barkeep, tmp_path, schema):
    old = tmp_path / "old.barkeep"
    old.write_bytes(old_bar(schema).read_bytes())
    assert barkeep("--bar", old, "check").out == f"Nothing is wrong with {old}.\n"
    new = tmp_path / "new.barkeep"
    assert barkeep("--bar", old, "check", "--save-what-can-be", new).out.endswith(
        "Everything could be read.\n"
    )
    assert old.read_bytes() == old_bar(schema).read_bytes()
    saved = barkeep("--bar", new, "bottles").out
    assert saved == barkeep("--bar", old, "bottles").out  # which upgrades it


def test_what_is_odd_but_can_be_is_found_and_the_bar_still_opens(barkeep, bar):
    with closing(sqlite3.connect(bar)) as file, file:
        file.execute("UPDATE product SET sugar_g_per_l = 5000 WHERE id = 3")
        file.execute("UPDATE bottle SET made = '2026-03-02', use_by = '2026-03-01' WHERE id = 1")
        file.execute("UPDATE product SET ingredient = 'moon-dust' WHERE id = 2")
        file.execute("UPDATE product SET size = 100 WHERE id = 1")
    assert barkeep("--bar", bar, "check", "--accept").status == 0
    found = barkeep("--bar", bar, "check", "--json").answer
    assert found["opens"] and not found["sound"]
    told = "\n".join(found["findings"])
    assert "has 5,000 g/l of sugar, more than there can be." in told
    assert "was made on 2 March 2026 and to be used by 1 March 2026, before that." in told
    assert "The ingredient “moon-dust” is used in this bar, but not known" in told
    assert "says it holds" in told
    assert barkeep("--bar", bar, "bottles").status == 0


def test_what_another_program_changed_is_refused_until_it_is_taken(barkeep, bar):
    with closing(sqlite3.connect(bar)) as file, file:
        file.execute("UPDATE product SET price = 19.5 WHERE id = 3")
    what = "product 3: it is not as barkeep wrote it"
    before = bar.read_bytes()
    assert barkeep("--bar", bar, "bottles").refusal == (
        f"{bar} cannot be used: damage or another program changed it ({what}); “barkeep check” "
        "says more, and with --accept it takes the bar as it is."
    )
    shown = barkeep("--bar", bar, "check").out.splitlines()
    assert shown[0] == f"Damage or another program changed it: {what}."
    assert shown[-1] == (
        "Where another program was to do that, the bar can be taken as it is: "
        "barkeep check --accept"
    )
    assert barkeep("--bar", bar, "check", "--json").answer["acceptable"]
    assert bar.read_bytes() == before
    taken = barkeep("--bar", bar, "check", "--accept", "--json").answer
    assert taken == {"file": str(bar), "accepted": [f"{what}."]}
    assert barkeep("--bar", bar, "check").out == f"Nothing is wrong with {bar}.\n"
    assert barkeep("--bar", bar, "bottles").status == 0
    assert barkeep("--bar", bar, "check", "--accept").out == (
        "Nothing but barkeep has changed this bar, so there is nothing to take.\n"
    )


def test_a_bar_with_other_faults_is_not_taken(barkeep, bar):
    CHEAP.do(bar)
    before = bar.read_bytes()
    said = barkeep("--bar", bar, "check", "--accept").refusal
    assert said == f"{bar} cannot be used: it is damaged ({WRONG})."
    assert bar.read_bytes() == before


def test_the_newest_good_backup_is_one_that_nothing_else_has_changed(barkeep, bar):
    for level in ("0.4", "0.5"):
        barkeep("--bar", bar, "count", "1", level)
        barkeep("--bar", bar, "backup")
    folder = bar.with_name(f"{bar.name}.backups")
    kept = sorted(folder.glob("*asked for*"))
    for each in (bar, kept[-1]):
        with closing(sqlite3.connect(each)) as file, file:
            file.execute("UPDATE bottle SET position = position + 1")
    said = barkeep("--bar", bar, "bottles").refusal
    second = kept[-2].name[:19]  # the first write of the day may have been backed up in the same
    good = [each.name for each in folder.iterdir() if each.name[:19] == second]
    assert any(f"Its newest good backup is “{name}”" in said for name in good)
    assert kept[-1].name not in said


def test_what_is_no_bar_is_refused(barkeep, bar, tmp_path):
    text = tmp_path / "notes.txt"
    text.write_text("mine " * 100, encoding="utf-8")
    assert "it is not a SQLite file" in barkeep("--bar", text, "check").refusal
    said = barkeep("--bar", bar.with_name("copy.bra"), "check").refusal
    assert said == (
        f"There is no bar in {bar.with_name('copy.bra')}: there is no such file. "
        f"Did you mean {bar}?"
    )


class TestWhichBarIsMeant:
    """A mistyped name begins no bar, and the likely one is named."""

    @pytest.mark.parametrize("typed", ["cpoy.bar", "copy", "Copy.BAR", "copy.barkeep", "copy.bar "])
    def test_a_like_name_beside_it(self, barkeep, bar, typed):
        path = bar.with_name(typed)
        said = barkeep("--bar", path, "bottles").refusal
        assert said == (
            f"There is no bar in {path}: there is no such file. Did you mean {bar}? "
            "To begin a new bar there, add --new."
        )
        assert not path.exists()

    def test_the_usual_bar_where_nothing_is_alike(self, barkeep, tmp_path):
        assert barkeep("bottles").err.startswith("barkeep: a new bar was begun in ")
        usual = tmp_path / "data" / "barkeep" / "bar.barkeep"
        said = barkeep("--bar", tmp_path / "zebra.db", "bottles").refusal
        assert f"Did you mean {usual}?" in said

    def test_a_usual_bar_that_is_gone(self, barkeep, bar, tmp_path):
        folder = tmp_path / "data" / "barkeep"
        folder.mkdir(parents=True)
        mine = bar.rename(folder / "mine.barkeep")
        said = barkeep("bottles").refusal
        assert said == (
            f"There is no bar in {folder / 'bar.barkeep'}: it is gone, though other bars are "
            f"beside it. Did you mean {mine}? To begin a new bar there, add --new."
        )
        assert [each.name for each in folder.iterdir()] == ["mine.barkeep"]
        assert barkeep("--new", "bottles").status == 0

    def test_what_has_the_name_of_its_journal_is_not_looked_into(self, barkeep, bar, tmp_path):
        folder = tmp_path / "data" / "barkeep"
        folder.mkdir(parents=True)
        (folder / "bar.barkeep").touch()
        bar.rename(folder / "bar.barkeep-journal")
        assert barkeep("bottles").refusal == (
            f"{folder / 'bar.barkeep'} cannot be used: bar.barkeep-journal beside it would be "
            "lost, as SQLite keeps a file of that name; give that one another name first."
        )

    def test_a_usual_bar_that_was_emptied(self, barkeep, tmp_path):
        usual = tmp_path / "data" / "barkeep" / "bar.barkeep"
        usual.parent.mkdir(parents=True)
        usual.touch()
        kept = usual.with_name("bar.barkeep.backups")
        kept.mkdir()
        said = barkeep("bottles").refusal
        assert said.startswith(
            f"There is no bar in {usual}: it is empty, though there are backups of it."
        )
        assert usual.read_bytes() == b""
        kept.rmdir()
        assert barkeep("bottles").err == f"barkeep: a new bar was begun in {usual}.\n"

    def test_new_begins_none_where_one_is(self, barkeep, bar):
        before = bar.read_bytes()
        said = barkeep("--bar", bar, "--new", "bottles").refusal
        assert (
            said == f"{bar} cannot be written: there is a bar in it already. Nothing was changed."
        )
        assert bar.read_bytes() == before
