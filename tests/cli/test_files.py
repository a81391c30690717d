"""import, sample, and which bar is used."""

from __future__ import annotations

HEADER = "product,maker,ingredient,abv,size,level,price,opened\n"


class TestImport:
    def test_bottles_come_in(self, barkeep, tmp_path):
        rows = tmp_path / "bottles.csv"
        rows.write_text(
            f"{HEADER}Dry gin,Ninepin,London dry gin,41.2,70 cl,0.4,24.50,2026-01-31\n"
            "Dry gin,Ninepin,London dry gin,41.2,70 cl,,24.50,\n",
            encoding="utf-8",
        )
        bar = tmp_path / "new.bar"
        ran = barkeep("--bar", bar, "import", rows)
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
        assert len(said) == 2
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
        said = barkeep("--bar", bar, "import", rows).refusal
        assert said == (
            f"{rows}, line 3, column 1: white rum here, bourbon on line 2, for the same product."
        )

    def test_columns_that_mean_nothing_are_named(self, barkeep, bar, tmp_path):
        rows = tmp_path / "bottles.csv"
        rows.write_text("product,ingredient,size,shelf\nGin,gin,700,top\n", encoding="utf-8")
        ran = barkeep("--bar", bar, "import", rows)
        assert ran.err == f"barkeep: {rows}: nothing was read from shelf.\n"
        answer = barkeep("--bar", bar, "import", rows, "--json").answer
        assert answer == {"products": 0, "bottles": 1, "ignored": ["shelf"]}


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
        for name in (text, tmp_path, tmp_path / "no" / "where.bar", "postgresql://host/bar"):
            said = barkeep("--bar", name, "bottles").refusal
            assert "cannot be used" in said and "\n" not in said
        assert text.read_text(encoding="utf-8") == "mine " * 100

    def test_a_newer_bar_is_refused_untouched(self, barkeep, bar):
        content = bytearray(bar.read_bytes())
        content[60:64] = (999).to_bytes(4, "big")
        bar.write_bytes(content)
        assert "written by a newer barkeep" in barkeep("--bar", bar, "tonight").refusal
        assert bar.read_bytes() == content
