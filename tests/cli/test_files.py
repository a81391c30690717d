"""import, sample, and which bar is used."""

from __future__ import annotations

import os
import stat

import pytest

HEADER = "product,maker,ingredient,abv,size,level,price,opened\n"


class TestImport:
    def test_bottles_come_in(self, barkeep, tmp_path):
        rows = tmp_path / "bottles.csv"
        rows.write_text(
            f"{HEADER}Dry gin,Hollow Lamp,London dry gin,41.2,70 cl,0.4,24.50,2026-01-31\n"
            "Dry gin,Hollow Lamp,London dry gin,41.2,70 cl,,24.50,\n",
            encoding="utf-8",
        )
        bar = tmp_path / "new.bar"
        ran = barkeep("--bar", bar, "--new", "import", rows)
        assert (ran.status, ran.out) == (0, "2 bottles came in, 1 new product among them.\n")
        assert ran.err == f"barkeep: a new bar was begun in {bar}.\n"
        first, second = barkeep("--bar", bar, "bottles", "--json").answer["bottles"]
        assert (first["level_ml"], first["opened"], first["price"]) == (280, "2026-01-31", 24.5)
        assert (second["level_ml"], second["opened"]) == (700, None)
        assert barkeep("--bar", bar, "undo").out == "Undone: Import 2 bottles.\n"
        assert barkeep("--bar", bar, "bottles", "--json").answer == {"bottles": []}

    def test_each_problem_is_said_and_nothing_comes_in(self, barkeep, bar, tmp_path):
        rows = tmp_path / "bottles.csv"
        rows.write_text(
            f"{HEADER}Gin,,gin,,700,,,\nGin,,moss,,700,,,\nGin,,gin,,700,1.4,,\n", encoding="utf-8"
        )
        before = bar.read_bytes()
        said = barkeep("--bar", bar, "import", rows).refusal.splitlines()
        assert said[0].startswith(f"{rows}, line 3, column 3: There is no ingredient called")
        assert said[1].startswith(f"barkeep: {rows}, line 4, column 6: “1.4” cannot be read")
        assert "nothing came in. --good-rows brings in the rows that can be used" in said[2]
        assert len(said) == 3
        assert bar.read_bytes() == before

    def test_what_the_bar_refuses_is_said_too(self, barkeep, bar, tmp_path):
        rows = tmp_path / "bottles.csv"
        rows.write_text(f"{HEADER}Gin,,gin,,700,,,2999-01-01\n", encoding="utf-8")
        said = barkeep("--bar", bar, "import", rows).refusal
        assert said.startswith(f"{rows}, line 2, column 8: ") and "still to come" in said

    def test_one_product_with_two_ingredients_names_both_lines(self, barkeep, bar, tmp_path):
        rows = tmp_path / "bottles.csv"
        rows.write_text(
            "ingredient;product;size\nbourbon;Odd Job;700\nwhite rum;Odd Job;700\n"
            "vodka;Lamp Room dry gin;700\n",
            encoding="utf-8",
        )
        said = barkeep("--bar", bar, "import", rows).refusal.splitlines()
        assert said[0] == (
            f"{rows}, line 3, column 1: white rum here, bourbon on line 2, for the same product. "
            "Perhaps Bourbon."
        )
        assert len(said) == 2

    def test_columns_that_mean_nothing_are_named(self, barkeep, bar, tmp_path):
        rows = tmp_path / "bottles.csv"
        rows.write_text("product,ingredient,size,shelf\nGin,gin,700,top\n", encoding="utf-8")
        ran = barkeep("--bar", bar, "import", rows)
        assert ran.err == f"barkeep: {rows}: nothing was read from shelf.\n"
        answer = barkeep("--bar", bar, "import", rows, "--again", "--json").answer
        assert (answer["products"], answer["bottles"]) == (0, 1)
        assert answer["ignored"] == answer["left_aside"] == ["shelf"]


class TestSample:
    def test_it_is_written_to_a_new_file(self, barkeep, tmp_path):
        path = tmp_path / "mine.bar"
        assert barkeep("sample", path, "--json").answer == {"file": str(path)}
        bottles = barkeep("--bar", path, "bottles", "--json").answer["bottles"]
        assert len(bottles) >= 60

    def test_no_file_is_written_over(self, barkeep, tmp_path):
        path = tmp_path / "mine.txt"
        path.write_text("mine", encoding="utf-8")
        assert "there is a file of that name already" in barkeep("sample", path).refusal
        assert path.read_text(encoding="utf-8") == "mine"

    def test_a_throw_away_copy_forgets(self, barkeep):
        barkeep("--sample", "count", "Limes", "2")
        answer = barkeep("count", "Limes", "2", "--sample", "--json").answer
        assert answer["expected"] != 2


class TestNeverOverABar:
    """Whatever the bar's file is called, and whatever lies beside it, no command writes over it."""

    OPEN = "it is the bar that is open; choose another name"
    WRITERS = (("export",), ("publish", "Upper Berth", "--to"))

    @pytest.fixture
    def open_bar(self, bar, tmp_path):
        """A bar with a name that an export could have."""
        return bar.rename(tmp_path / "shelf.json")

    @pytest.fixture(params=WRITERS, ids=["export", "publish"])
    def write(self, request, barkeep, open_bar):
        """Write a file; what is said, the bar being as it was."""

        def run(name):
            before = open_bar.read_bytes()
            said = barkeep("--bar", open_bar, *request.param, name).refusal
            assert open_bar.read_bytes() == before
            assert "\n" not in said
            return said

        return run

    def test_by_its_own_name(self, write, open_bar):
        assert write(open_bar) == f"{open_bar} cannot be written: {self.OPEN}. Nothing was changed."

    def test_by_a_relative_name(self, write, open_bar, monkeypatch, tmp_path):
        (tmp_path / "deep").mkdir()
        monkeypatch.chdir(tmp_path / "deep")
        assert self.OPEN in write("../shelf.json")

    def test_by_the_home_folder(self, write, open_bar, monkeypatch, tmp_path):
        monkeypatch.setenv("HOME", str(tmp_path))
        assert self.OPEN in write("~/shelf.json")

    def test_by_a_link(self, write, open_bar, tmp_path):
        (tmp_path / "link.json").symlink_to(open_bar)
        (tmp_path / "round.json").symlink_to("link.json")
        assert self.OPEN in write(tmp_path / "round.json")
        assert (tmp_path / "round.json").is_symlink()

    def test_by_another_name_of_the_same_file(self, write, open_bar, tmp_path):
        # As on a disk that tells no capitals apart, this is one file under two names.
        os.link(open_bar, tmp_path / "SHELF.json")
        assert self.OPEN in write(tmp_path / "SHELF.json")

    def test_where_the_bar_itself_is_named_by_a_link(self, barkeep, open_bar, tmp_path):
        (tmp_path / "link").symlink_to(open_bar)
        before = open_bar.read_bytes()
        assert self.OPEN in barkeep("--bar", tmp_path / "link", "export", open_bar).refusal
        assert open_bar.read_bytes() == before

    def test_another_bar_or_a_backup(self, write, barkeep, tmp_path):
        other = tmp_path / "other.json"
        assert barkeep("sample", other).status == 0
        before = other.read_bytes()
        assert "it is a bar or another SQLite file; choose another name" in write(other)
        assert other.read_bytes() == before

    @pytest.mark.parametrize("suffix", ["-journal", "-wal", "-shm", "-JOURNAL"])
    def test_the_name_of_its_journal(self, barkeep, open_bar, suffix):
        name = open_bar.with_name(f"{open_bar.name}{suffix}")
        said = barkeep("--bar", open_bar, "publish", "Upper Berth", "--to", name).refusal
        assert "SQLite keeps this name for the journal of shelf.json" in said
        for command in (("sample", name), ("--bar", name, "--new", "bottles")):
            assert (
                "SQLite keeps this name for the journal of shelf.json" in barkeep(*command).refusal
            )
        assert not name.exists()

    def test_the_sample_takes_the_place_of_no_bar(self, barkeep, open_bar, tmp_path):
        (tmp_path / "link").symlink_to(open_bar)
        before = open_bar.read_bytes()
        for name in (open_bar, tmp_path / "link"):
            said = barkeep("--bar", open_bar, "sample", name).refusal
            assert "there is a file of that name already" in said
        assert open_bar.read_bytes() == before

    def test_any_other_file_is_written_in_place_of_the_old_one(self, barkeep, open_bar, tmp_path):
        target, link = tmp_path / "specs.json", tmp_path / "link.json"
        target.write_text("old", encoding="utf-8")
        target.chmod(0o640)
        link.symlink_to(target)
        assert barkeep("--bar", open_bar, "export", link).status == 0
        assert link.is_symlink()
        assert "Upper Berth" in target.read_text(encoding="utf-8")
        assert stat.S_IMODE(target.stat().st_mode) == 0o640


class TestWhichBar:
    def test_without_a_name_the_one_in_the_data_folder(self, barkeep, tmp_path):
        ran = barkeep("bottles")
        path = tmp_path / "data" / "barkeep" / "bar.barkeep"
        assert ran.err == f"barkeep: a new bar was begun in {path}.\n"
        assert path.exists()
        assert barkeep("bottles").err == ""

    def test_a_url(self, barkeep, bar):
        assert barkeep("--bar", f"sqlite:///{bar}", "bottles", "--json").answer["bottles"]

    def test_what_is_no_bar_is_refused_and_left_alone(self, barkeep, tmp_path):
        text = tmp_path / "notes.txt"
        text.write_text("mine " * 100, encoding="utf-8")
        for name in (text, tmp_path, "mysql://host/bar"):
            said = barkeep("--bar", name, "bottles").refusal
            assert "cannot be used" in said and "\n" not in said
        nowhere = tmp_path / "no" / "where.bar"
        assert f"There is no bar in {nowhere}" in barkeep("--bar", nowhere, "bottles").refusal
        said = barkeep("--bar", nowhere, "--new", "bottles").refusal
        assert f"cannot be used: the folder {nowhere.parent} does not exist." in said
        assert text.read_text(encoding="utf-8") == "mine " * 100

    def test_a_newer_bar_is_refused_untouched(self, barkeep, bar):
        content = bytearray(bar.read_bytes())
        content[60:64] = (999).to_bytes(4, "big")
        bar.write_bytes(content)
        assert "written by a newer barkeep" in barkeep("--bar", bar, "tonight").refusal
        assert bar.read_bytes() == content
