"""`barkeep import` of a list of bottles: the good rows, those that are there, and the rest."""

from __future__ import annotations

import csv

import pytest

HEADER = "product,maker,ingredient,abv,size,level,price,opened,shelf\n"
GOOD = "Signal Dry,Pellow & Rudge,London dry gin,43,70 cl,full,24.50,no,top\n"
SHARE = "Branch Rye,Copperbend,Rye whiskey,0.5,70 cl,half,38,yes,low\n"
UNKNOWN = "Fog Water,,Londn dry gin,40,70 cl,,€20,03/04/2026,low\n"


@pytest.fixture
def empty(tmp_path, barkeep):
    """A bar with nothing in it."""
    path = tmp_path / "new.bar"
    barkeep("--bar", path, "--new", "bottles")
    return path


@pytest.fixture
def listed(tmp_path):
    """Write a list of bottles to a file."""

    def write(text: str | bytes, name: str = "bottles.csv"):
        file = tmp_path / name
        file.write_bytes(text if isinstance(text, bytes) else text.encode())
        return file

    return write


def shelf(barkeep, bar) -> list[tuple[str, float | None, float]]:
    found = barkeep("--bar", bar, "bottles", "--json").answer["bottles"]
    return [(each["product"], each["abv_percent"], each["level_ml"]) for each in found]


def test_good_rows_come_in_and_the_rest_is_written_repaired_and_imported(
    barkeep, empty, listed, tmp_path
):
    file, rest = listed(HEADER + GOOD + SHARE + UNKNOWN), tmp_path / "rest.csv"
    ran = barkeep("--bar", empty, "import", file, "--rest", rest)
    assert ran.status == 0
    assert ran.out == (
        f"1 bottle came in, 1 new product among them.\n2 rows left out; they are in {rest}.\n"
    )
    assert f"{file}: nothing was read from shelf." in ran.err
    assert "row 3 was left out: abv: “0.5” for abv is not clear" in ran.err
    assert "Perhaps 50 %." in ran.err
    assert shelf(barkeep, empty) == [("Pellow & Rudge Signal Dry", 43, 700)]

    with rest.open(encoding="utf-8", newline="") as opened:
        rows = list(csv.DictReader(opened))
    assert [each["product"] for each in rows] == ["Branch Rye", "Fog Water"]
    assert [each["shelf"] for each in rows] == ["low", "low"]
    assert "03/04/2026" in rows[1]["problem"] and "Perhaps London dry gin." in rows[1]["problem"]
    rows[0]["abv"] = "50 %"
    rows[1] |= {"ingredient": "London dry gin", "opened": "3 April 2026"}
    with rest.open("w", encoding="utf-8", newline="") as opened:
        writer = csv.DictWriter(opened, rows[0])
        writer.writeheader()
        writer.writerows(rows)
    answer = barkeep("--bar", empty, "import", rest, "--json").answer
    assert answer["added"] == ["Copperbend Branch Rye", "Fog Water"]
    assert (answer["left"], answer["left_aside"]) == ([], ["shelf", "problem"])
    assert shelf(barkeep, empty)[1:] == [("Copperbend Branch Rye", 50, 350), ("Fog Water", 40, 700)]
    assert barkeep("--bar", empty, "undo").out == "Undone: Import 2 bottles.\n"
    assert barkeep("--bar", empty, "undo").out == "Undone: Import 1 bottle.\n"
    assert shelf(barkeep, empty) == []


def test_json_names_what_was_left_and_where(barkeep, empty, listed):
    file = listed(HEADER + GOOD + UNKNOWN)
    answer = barkeep("--bar", empty, "import", file, "--good-rows", "--json").answer
    assert answer["added"] == ["Pellow & Rudge Signal Dry"]
    assert [(each["row"], each["column"], each["likely"]) for each in answer["left"]] == [
        (3, "ingredient", "London dry gin"),
        (3, "opened", "2026-04-03"),
    ]
    assert answer["left_aside"] == ["shelf"]
    assert answer["rest"] is None


def test_without_a_word_nothing_comes_in_and_the_rows_are_named(barkeep, empty, listed):
    file = listed(HEADER + GOOD + SHARE)
    said = barkeep("--bar", empty, "import", file).refusal
    assert "line 3, column 4: “0.5” for abv is not clear" in said and "Perhaps 50 %." in said
    assert shelf(barkeep, empty) == []


def test_the_same_list_twice_adds_nothing_unless_it_is_asked_to(barkeep, empty, listed):
    file = listed(HEADER + GOOD + GOOD)
    assert len(barkeep("--bar", empty, "import", file, "--json").answer["added"]) == 2
    ran = barkeep("--bar", empty, "import", file)
    assert "2 rows (2 and 3) look like what is there already and were left out" in ran.out
    answer = barkeep("--bar", empty, "import", file, "--json").answer
    assert [(each["row"], each["product"]) for each in answer["same"]] == [
        (2, "Pellow & Rudge Signal Dry"),
        (3, "Pellow & Rudge Signal Dry"),
    ]
    assert len(shelf(barkeep, empty)) == 2
    third = listed(HEADER + GOOD * 3, "third.csv")
    answer = barkeep("--bar", empty, "import", third, "--json").answer
    assert (len(answer["added"]), len(answer["same"])) == (1, 2)
    answer = barkeep("--bar", empty, "import", file, "--again", "--json").answer
    assert (len(answer["added"]), answer["same"]) == (2, [])
    assert len(shelf(barkeep, empty)) == 5


def test_a_file_to_repair_is_never_written_over(barkeep, empty, listed):
    file, rest = listed(HEADER + GOOD + SHARE), listed("mine", "rest.csv")
    said = barkeep("--bar", empty, "import", file, "--rest", rest).refusal
    assert "there is a file of that name already" in said
    assert rest.read_text(encoding="utf-8") == "mine"
    said = barkeep("--bar", empty, "import", file, "--rest", file).refusal
    assert "there is a file of that name already" in said
    assert shelf(barkeep, empty) == []


def test_another_encoding_is_said(barkeep, empty, listed):
    text = "product;ingredient;size;price\nNuit d’été;London dry gin;70 cl;31,00\n"
    ran = barkeep("--bar", empty, "import", listed(text.encode("cp1252")))
    assert "read as Windows-1252" in ran.err and "é" in ran.err
    answer = barkeep(
        "--bar", empty, "import", listed(text.encode("utf-16")), "--again", "--json"
    ).answer
    assert (answer["added"], answer["read_as"]) == (["Nuit d’été"], "It was read as UTF-16.")


def test_a_product_that_the_bar_has_otherwise_is_said(barkeep, empty, listed):
    file = listed(HEADER + GOOD + GOOD.replace("43", "47").replace("24.50", "26"))
    ran = barkeep("--bar", empty, "import", file)
    assert "Row 3: The product’s strength stays as in line 2: 43, not 47." in ran.out
    assert "Row 3: The product’s price stays as in line 2: 24.5, not 26." in ran.out


def test_a_row_with_more_cells_than_columns_stays_so_in_the_rest(barkeep, empty, listed, tmp_path):
    file = listed("product,ingredient,size,price\nFog,London dry gin,700,24,50\n")
    rest = tmp_path / "rest.csv"
    answer = barkeep("--bar", empty, "import", file, "--rest", rest, "--json").answer
    assert [(each["row"], each["column"]) for each in answer["left"]] == [(2, "")]
    again = barkeep("--bar", empty, "import", rest).refusal
    assert "more fields than the header" in again and "“50”" in again


def test_headers_of_another_language_are_known_from_standard_input(
    barkeep, empty, listed, monkeypatch
):
    text = "Name;Zutat;Größe;Füllstand;Geöffnet\nSignal Dry;London dry gin;0,7 l;halb;14.03.2026\n"

    class Bytes:
        class buffer:
            @staticmethod
            def read() -> bytes:
                return text.encode()

    monkeypatch.setattr("sys.stdin", Bytes)
    answer = barkeep("--bar", empty, "import", "-", "--json").answer
    assert answer["added"] == ["Signal Dry"]
    assert shelf(barkeep, empty) == [("Signal Dry", None, 350)]


def test_what_is_for_bottles_is_refused_for_specs(barkeep, empty, listed):
    file = listed("Fog Lamp\n60 ml gin\n", "fog.txt")
    for options in (("--good-rows",), ("--rest", "x.csv"), ("--again",)):
        said = barkeep("--bar", empty, "import", file, *options).refusal
        assert "are for lists of bottles; it holds specs" in said


def test_a_header_alone_is_no_list(barkeep, empty, listed):
    assert "there is no bottle in it" in barkeep("--bar", empty, "import", listed(HEADER)).refusal


def test_free_lines_that_name_bottles_are_not_taken_for_specs_unasked(barkeep, empty, listed):
    file = listed("London dry gin 70 cl half\nsweet vermouth 75 cl\n", "shelf.txt")
    for given in ([], ["--good-rows"]):
        ran = barkeep("--bar", empty, "import", file, *given)
        assert ran.status == 1 and not ran.out
        assert f"{file} reads like a list of bottles: 2 of its 2 lines name one" in ran.err
        assert "Say --bottles to bring them in, or --specs if it holds specs." in ran.err
    taken = barkeep("--bar", empty, "import", file, "--specs")
    assert taken.out == "1 spec came in (London dry gin 70 cl half).\n"
    assert shelf(barkeep, empty) == []
    assert barkeep("--bar", empty, "import", file, "--bottles").status == 0
    assert len(shelf(barkeep, empty)) == 2
    both = barkeep("--bar", empty, "import", file, "--bottles", "--specs")
    assert "--bottles and --specs cannot both be said" in both.err


def test_free_lines_of_a_spec_are_still_taken_as_they_are(barkeep, empty, listed):
    file = listed("Branch Line\n2 oz gin\n1 oz dry vermouth\nStir.\n", "notes.txt")
    assert barkeep("--bar", empty, "import", file).out == "1 spec came in (Branch Line).\n"
