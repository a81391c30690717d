"""`barkeep add`, and `import --bottles`: bottles in their owner's own words."""

from __future__ import annotations

import pytest


@pytest.fixture
def empty(tmp_path, barkeep):
    """A bar with nothing in it."""
    path = tmp_path / "new.bar"
    barkeep("--bar", path, "--new", "bottles")
    return path


WORDS = ("London dry gin 70 cl half full", "2 x tonic water 200 ml", "sweet vermouth", "6 limes")


def test_bottles_come_in_as_they_are_written_down_and_go_again_with_one_undo(barkeep, empty):
    ran = barkeep("--bar", empty, "add", *WORDS)
    assert ran.status == 0, ran.err
    told = ran.out.splitlines()
    assert told[-2:] == [
        "5 bottles came in. 1 level is guessed: count the shelf when you like.",
        "You can make 2 tonight, and 16 with one more bottle.",
    ]
    shelf = barkeep("--bar", empty, "bottles", "--json").answer["bottles"]
    assert [(each["product"], each["size_ml"], each["level_ml"]) for each in shelf] == [
        ("London dry gin", 700, 350),
        ("Tonic water", 200, 200),
        ("Tonic water", 200, 200),
        ("Sweet vermouth", 750, 375),
    ]
    told = barkeep("--bar", empty, "history", "Sweet vermouth").out
    assert "listed as “sweet vermouth”; size and level guessed" in told
    assert "guessed, nobody looked, ± 375 ml" in told
    ran = barkeep("--bar", empty, "add", "--json", *WORDS).answer
    assert (ran["bottles"], len(ran["same"])) == (0, 4)
    assert "Import 5 bottles" in barkeep("--bar", empty, "undo").out


def test_the_sentence_says_what_tonight_and_buying_say(barkeep, empty):
    said = barkeep("--bar", empty, "add", "--json", *WORDS).answer["tonight"]
    verdicts = [
        each["verdict"] for each in barkeep("--bar", empty, "tonight", "--json").answer["drinks"]
    ]
    bought = barkeep("--bar", empty, "next-bottle", "--json").answer["candidates"]
    assert said == {
        "ready": verdicts.count("ready"),
        "stand_in": verdicts.count("stand_in"),
        "one_more": len({name for each in bought for name in each["unlocks"]}),
    }


def test_what_is_doubtful_is_asked_with_its_likely_answer_and_nothing_comes_in(barkeep, empty):
    words = ("vodka 1L", "Londn dry gin", "Cherry Tree bourbon")
    ran = barkeep("--bar", empty, "add", *words)
    assert ran.status == 1
    assert "line 2, column 1: “Londn dry gin” is likely London dry gin." in ran.err
    assert "Perhaps Bourbon." in ran.err and "--likely takes" in ran.err
    assert barkeep("--bar", empty, "bottles", "--json").answer["bottles"] == []
    ran = barkeep("--bar", empty, "add", "--good-rows", "--json", *words)
    assert '"added": [\n    "Vodka"\n  ]' in ran.out
    ran = barkeep("--bar", empty, "add", "--likely", "--json", *words).answer
    assert ran["added"] == ["London dry gin", "Cherry Tree bourbon"]
    assert [each["row"] for each in ran["guessed"]] == [2, 3]


def test_a_file_of_lines_is_read_as_bottles_where_that_is_said(barkeep, empty, tmp_path):
    file = tmp_path / "shelf.md"
    file.write_text("## Gin\n- Pellow Gate dry\n- Marsh Pike Old Tom 50 cl, 1/4\n", "utf-8")
    ran = barkeep("--bar", empty, "import", "--bottles", "--good-rows", file)
    assert ran.status == 0
    assert "taken for headings, Gin." in ran.err
    assert "row 2 was left out: ingredient: “Pellow Gate dry” is likely London dry gin" in ran.err
    assert "\n1 bottle came in.\n1 row left out.\nYou can make " in ran.out


def test_the_kinds_that_the_book_asks_for_most_are_listed(barkeep, empty):
    common = barkeep("--bar", empty, "add", "--json").answer["common"]
    assert common[0] == {
        "ingredient": "London dry gin",
        "group": "Spirit",
        "specs": 46,
        "there": False,
    }
    names = [each["ingredient"] for each in common]
    assert len(names) == len(set(names)) <= 96
    assert {"Lemon", "Mint", "Sweet vermouth"} <= set(names)
    assert not {"Lemon peel", "Water", "Mint leaf", "Boiling water"} & set(names)
    assert barkeep("--bar", empty, "add", *names[:30]).status == 0
    assert [each["there"] for each in barkeep("--bar", empty, "add", "--json").answer["common"]][
        :30
    ] == [True] * 30


def test_a_table_may_say_how_many_there_are(barkeep, empty, tmp_path):
    file = tmp_path / "bottles.csv"
    file.write_text("product,ingredient,size,qty,level\nDry gin,Gin,70 cl,3,half\n", "utf-8")
    ran = barkeep("--bar", empty, "import", file)
    assert "The level is that of one bottle; the other 2 count as full." in ran.out
    shelf = barkeep("--bar", empty, "bottles", "--json").answer["bottles"]
    assert [each["level_ml"] for each in shelf] == [350, 700, 700]
    ran = barkeep("--bar", empty, "import", file, "--json").answer
    assert [each["row"] for each in ran["same"]] == [2]
    file.write_text("product,ingredient,size,qty\nDry gin,Gin,70 cl,5\n", "utf-8")
    ran = barkeep("--bar", empty, "import", file)
    assert "3 of the 5 are there already." in ran.out and ran.out.splitlines()[-1].startswith("2 b")
