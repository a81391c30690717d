"""Lines that are not understood, kept with their spec: every command names them, and what it took.

And what is counted for a line that leaves something open is said beside the figures.
"""

from __future__ import annotations

from datetime import date

import pytest

TODAY = date.today()
FOG = """Fog Signal
45 ml London dry gin
15 ml moonpetal cordial
top with soda water
Garnish: lemon peel

Shake the first two.
"""
LINE = "15 ml moonpetal cordial"
NAMED = f"“{LINE}”"
QUESTION = "No ingredient is called “moonpetal cordial”"


@pytest.fixture
def write(tmp_path):
    """Write a text to a file; where it is."""

    def write(text: str, name: str = "drinks.txt"):
        file = tmp_path / name
        file.write_text(text, encoding="utf-8")
        return file

    return write


@pytest.fixture
def do(barkeep, bar):
    """Run one command on the bar."""
    return lambda *words: barkeep("--bar", bar, *words)


@pytest.fixture
def fog(do, write):
    """Fog Signal, kept with its question."""
    done = do("spec", "add", write(FOG), "--keep-questions", "--json")
    return done.answer["specs"][0]


@pytest.fixture
def planned(do, fog):
    """Four serves of it, filmed today."""
    return do("shoot", "plan", "Fog night", "--on", TODAY, "--drink", "Fog Signal=1+1+2")


def test_to_ask_is_what_happens_unless_the_owner_says_otherwise(do, write):
    refused = do("spec", "add", write(FOG)).refusal
    assert "line 3, column 7: no ingredient is called" in refused
    assert "--keep-questions keeps such lines" in refused
    assert do("spec", "show", "Fog Signal").status == 1


def test_the_line_is_kept_as_it_was_written_in_its_place(do, fog):
    assert [each["text"] for each in fog["lines"]] == FOG.splitlines()[1:5]
    assert fog["lines"][1]["ingredient"] is None
    (asked,) = fog["unsettled"]
    assert (asked["text"], asked["line"], asked["settles"]) == (LINE, 2, False)
    assert asked["question"].startswith(QUESTION)
    shown = do("spec", "show", "Fog Signal").out
    assert shown.splitlines()[2] == LINE and QUESTION in shown
    assert LINE in do("spec", "show", "Fog Signal", "--in", "oz").out
    lines = do("spec", "show", "Fog Signal", "--in", "oz", "--json").answer["specs"][0]["lines"]
    assert [bool(each["shown"]) for each in lines] == [True, False, False, False]


def test_more_than_a_question_is_never_kept(do, write):
    refused = do("spec", "add", write(FOG + "Serves: none\n"), "--keep-questions")
    nameless = do("spec", "add", write("15 ml gin\n15 ml moonpetal\n"), "--keep-questions")
    for each in (refused, nameless):
        assert each.status == 1 and "--keep-questions keeps" not in each.err


def test_tonight_is_never_ready_with_it(do, fog):
    drinks = do("tonight", "--json").answer["drinks"]
    (drink,) = (each for each in drinks if each["spec"] == "Fog Signal")
    assert (drink["verdict"], drink["serves"], drink["missing"]) == ("one_short", 0, [LINE])
    assert f"Fog Signal: {NAMED} is not understood" in do("tonight", "--all").out


def test_no_bottle_turns_it_ready(do, write, fog):
    two = "Fog Horn\n60 ml vodka\n15 ml moonpetal cordial\n\nStir.\n"
    do("spec", "add", write(two), "--keep-questions")
    answer = do("next-bottle", "--json").answer
    assert all("Fog Horn" not in each["unlocks"] for each in answer["candidates"])
    assert [each.partition(" is counted for no bottle")[0] for each in answer["not_counted"]] == [
        "Fog Horn",
        "Fog Signal",
    ]
    assert f"Fog Horn is counted for no bottle until its questions are settled: {NAMED}." in (
        do("next-bottle").out
    )


def test_a_batch_names_what_is_not_in_it_and_what_it_took(do, fog):
    told = do("batch", "Fog Signal", "--serves", "10")
    assert f"Not in the batch: {NAMED}, for it is not understood" in told.out
    answer = do("batch", "Fog Signal", "--serves", "10", "--json").answer
    assert {"ingredient": None, "as_written": LINE, "why": "not_understood"} in answer["left_out"]
    assert answer["assumed"] == [
        {
            "drink": "Fog Signal",
            "line": "top with soda water",
            "taken": "90 ml a serve, for it gives no amount",
        }
    ]


def test_a_shoot_names_it_in_its_plan_its_mise_en_place_and_its_log(do, planned):
    check = do("shoot", "check", "fog", "--json").answer
    assert not check["possible"] and f"{NAMED} is not understood" in check["verdict"]
    assert any(NAMED in each for each in check["not_counted"])
    assert f"See to {NAMED} of Fog Signal yourself" in do("shoot", "show", "fog").out
    sheet = do("shoot", "show", "fog", "--run-sheet").out
    assert f"See to {NAMED} of Fog Signal" in sheet and f"{LINE} (not understood)" in sheet
    assert f"{LINE} (not understood)" in do("shoot", "show", "fog", "--publish").out
    buy = do("buy", "--shoot", "fog", "--no-pars")
    assert f"Not counted in Fog Signal: {NAMED}, for it is not understood." in buy.out
    log = do("shoot", "log", "fog", "--plan-only")
    assert f"Nothing is taken for {NAMED} of Fog Signal: it is not understood." in log.out


def test_a_card_prints_it_and_promises_no_strength(do, fog):
    text = do("publish", "Fog Signal").out
    assert f"\n{LINE} (not understood)\n" in text
    assert f"{NAMED} is not understood: what it adds, its strength and allergens" in text
    assert "% vol" not in text
    for form in ("markdown", "html"):
        assert "moonpetal cordial (not understood)" in do("publish", "Fog Signal", "--as", form).out


def test_an_analysis_a_search_and_a_comparison_name_it(do, fog):
    uncertain = do("spec", "analyse", "Fog Signal", "--json").answer["uncertain"]
    assert uncertain[0].startswith(f"Not counted, for it is not understood: {NAMED}. {QUESTION}")
    found = do("spec", "list", "moonpetal", "--json").answer["specs"]
    assert [each["name"] for each in found] == ["Fog Signal"]
    assert f"not understood: {NAMED}" in do("spec", "list", "moonpetal").out
    without = do("spec", "list", "fog", "without:moonpetal-cordial").status
    assert without == 1  # nothing is called that
    do("spec", "riff", "Fog Signal", "Fog Signal Two", "--add")
    assert (
        f"not understood: {NAMED} of Fog Signal Two" in do("spec", "compare", "Fog Signal Two").out
    )


@pytest.mark.parametrize("name", ["out.txt", "out.md", "out.csv", "out.json", "out.jsonld"])
def test_every_format_gives_it_back_as_it_was(do, barkeep, fog, tmp_path, name):
    file = tmp_path / name
    do("export", file, "Fog Signal")
    other = tmp_path / "other.barkeep"
    asked = barkeep("--bar", other, "--new", "import", file)
    assert asked.status == 1 and "--keep-questions keeps such lines" in asked.err
    assert barkeep("--bar", other, "spec", "show", "Fog Signal").status == 1
    came = barkeep("--bar", other, "import", file, "--keep-questions")
    assert f"{NAMED} is kept as it is. {QUESTION}" in came.out
    again = barkeep("--bar", other, "spec", "show", "Fog Signal", "--json").answer["specs"][0]
    assert again["unsettled"] == fog["unsettled"]
    assert [each["text"] for each in again["lines"]] == [each["text"] for each in fog["lines"]]
    # The very same is there already; another question in its place is a difference.
    assert "1 spec there already" in barkeep("--bar", other, "import", file, "--keep-questions").out


def test_a_spec_that_differs_in_its_question_alone_is_set_beside_mine(do, write, fog):
    theirs = write(FOG.replace("15 ml moonpetal", "20 ml moonpetal"))
    answer = do("import", theirs, "--keep-questions", "--json").answer
    (differing,) = answer["differing"]
    assert {"mine": LINE, "theirs": "", "change": "left out"} in differing["lines"]
    added = LINE.replace("15", "20")
    assert {"mine": "", "theirs": added, "change": "added"} in differing["lines"]
    assert (
        do("spec", "show", "Fog Signal", "--json").answer["specs"][0]["unsettled"]
        == (fog["unsettled"])
    )


def test_undo_takes_it_back_and_redo_brings_it_with_its_question(do, fog):
    do("undo")
    assert do("spec", "show", "Fog Signal").status == 1
    do("redo")
    again = do("spec", "show", "Fog Signal", "--json").answer["specs"][0]
    assert again["unsettled"] == fog["unsettled"]


def test_it_is_settled_when_the_owner_says_so_and_not_before(do, fog):
    assert "nothing of it can be settled yet" in do("spec", "settle", "Fog Signal").refusal
    do("ingredient", "add", "Moonpetal cordial", "--kind", "syrup", "--sugar", "500")
    shown = do("spec", "show", "Fog Signal")
    assert f"? {NAMED} is understood now and can be settled." in shown.out
    (asked,) = do("spec", "show", "Fog Signal", "--json").answer["specs"][0]["unsettled"]
    assert asked["settles"]
    assert "Fog Signal" in do("next-bottle").out  # stored as it was, so still a question
    settled = do("spec", "settle", "Fog Signal", "--json").answer["specs"][0]
    assert settled["unsettled"] == []
    assert [each["ingredient"] for each in settled["lines"]][1] == "Moonpetal cordial"
    do("undo")
    assert do("spec", "show", "Fog Signal", "--json").answer["specs"][0]["unsettled"]


def test_a_spec_of_nothing_but_questions_is_kept_too(do, write):
    do("spec", "add", write("Mist\n15 ml moonpetal cordial\n\nStir.\n"), "--keep-questions")
    drinks = do("tonight", "--json").answer["drinks"]
    assert next(each["verdict"] for each in drinks if each["spec"] == "Mist") == "one_short"
    assert "none of its lines has a volume" in do("batch", "Mist", "--serves", "4").refusal
    assert NAMED in do("spec", "analyse", "Mist").out
    assert LINE in do("publish", "Mist").out
    assert do("next-bottle").status == 0


@pytest.mark.parametrize(
    ("line", "taken", "planned_as"),
    [
        ("45-60 ml gin", "52.5 ml a serve, the middle", "45 ml a serve, the lower end"),
        ("45 ml gin or vodka", "London dry gin", "whichever of them is there"),
        ("2 parts gin", "60 ml a serve, a part being 30 ml", "60 ml a serve, a part being 30 ml"),
        ("a few dashes aromatic bitters", "3 dashes", "3 dashes"),
        ("top with soda water", "90 ml a serve", "90 ml a serve"),
    ],
)
def test_what_counting_takes_for_granted_is_named_with_its_line(do, write, line, taken, planned_as):
    do("spec", "add", write(f"Guess\n1 oz lemon juice\n1 oz London dry gin\n{line}\n\nShake.\n"))
    batch = do("batch", "Guess", "--serves", "8", "--json").answer
    assert [(each["drink"], each["line"]) for each in batch["assumed"]] == [("Guess", line)]
    assert batch["assumed"][0]["taken"].startswith(taken)
    assert f"Counted in Guess: “{line}” as {taken}" in do("batch", "Guess", "--serves", "8").out

    do("shoot", "plan", "Guessing", "--on", TODAY, "--drink", "Guess=1+1+0")
    for answer in (
        do("shoot", "check", "guessing", "--json").answer,
        do("buy", "--shoot", "guessing", "--json").answer,
    ):
        assert [each["line"] for each in answer["assumed"]] == [line]
        assert answer["assumed"][0]["taken"].startswith(planned_as)
        assert any(f"“{line}”" in each for each in answer["not_counted"])
    assert f"“{line}”" in do("shoot", "check", "guessing").out


def test_a_reading_prints_everything_it_read(do, write):
    text = (
        "Full Read\n60 ml gin\n15 ml moonpetal cordial\nGlass: coupe\nIce: cubes\n"
        "Garnish: a dried thistle head\nServes: 2\nTags: house\nCredit: the signalman\n"
        "Notes: from the valley\n\nShake hard.\nStrain.\n"
    )
    out = do("spec", "read", write(text)).out
    for each in (
        "60 ml Gin",
        "? 15 ml moonpetal cordial",
        "Glass: coupe",
        "Ice: cubes",
        "Serves: 2",
        "Tags: house",
        "Credit: the signalman",
        "Notes: from the valley",
        "Method: Shake hard.",
        "Strain.",
        "? Garnish: a dried thistle head",
        "no ingredient is called “moonpetal cordial”",
    ):
        assert each in out, each


def test_room_without_a_vessel_is_refused(do):
    refused = do("batch", "Request Stop", "--serves", "8", "--room", "120%").refusal
    assert "room cannot be “120%”" in refused and "--vessel" in refused
    assert "a share below 1" in do("batch", "Request Stop", "--vessel", "4 l", "--room", "120%").err


def test_a_log_of_more_than_there_is_asks_with_the_likely_answer(do):
    do("shoot", "plan", "Signal night", "--on", TODAY, "--drink", "Request Stop=1+2+0")
    gin = "Pellow & Rudge Lamp Room dry gin"
    spilled = do("shoot", "log", "signal", "--spill", f"{gin}=2 l", "--plan-only").refusal
    assert f"2000 ml cannot have been spilled of {gin}" in spilled and "is left" in spilled
    for only in (("--plan-only",), ()):
        refused = do("shoot", "log", "signal", "--made", "Request Stop=40", *only).refusal
        assert "The serves made take more than there is" in refused
        assert "There is enough for " in refused and "of Request Stop" in refused
        assert "--what-there-is" in refused
    assert do("shoot", "list", "signal", "--json").answer["shoots"][0]["state"] != "logged"
    done = do("shoot", "log", "signal", "--made", "Request Stop=40", "--what-there-is", "--json")
    assert any("Not all is taken from a bottle" in each for each in done.answer["not_taken"])
