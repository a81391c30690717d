"""The sample bar: what it shows, and that its texts are refused where they are wrong."""

from __future__ import annotations

from collections import Counter
from datetime import timedelta

import pytest

from barkeep import resource_files
from barkeep.application import sample, sample_copy
from barkeep.application.bar import Bar
from barkeep.application.knowledge import shipped
from barkeep.domain.bottles.bottle import history
from barkeep.domain.phrases import folded
from barkeep.domain.pouring import verdicts
from barkeep.domain.shoots.log import as_planned, expected_after
from barkeep.domain.specs.riffs import family
from barkeep.domain.specs.trials import winner
from barkeep.errors import KnowledgeError
from barkeep.store.refusals import CannotWrite
from tests.conftest import NOON


@pytest.fixture
def clock():
    return lambda: NOON


@pytest.fixture
def tree():
    return shipped().tree


@pytest.fixture
def bar(sample_bar, clock):
    with Bar.open(sample_bar, clock=clock) as opened:
        yield opened


@pytest.fixture
def texts():
    files = (sample.BAR, *sample.SHELVES, sample.KNOWN, sample.SPECS, sample.TRIALS)
    return {file: resource_files.read_text(file, folder=sample.FOLDER) for file in files}


def bottle_called(bar, title):
    return next(each for each in bar.snapshot.bottles if each.product.title == title)


def check_digit(twelve: str) -> int:
    """GS1's rule: weights 3 and 1 from the right, then what is missing to the next ten."""
    total = sum(
        int(digit) * (3 if place % 2 == 0 else 1) for place, digit in enumerate(reversed(twelve))
    )
    return -total % 10


class TestTheShelf:
    def test_sixty_bottles_of_drink_at_least(self, bar):
        poured = [each for each in bar.snapshot.bottles if each.product.unit == "ml"]
        assert len({each.product.title for each in poured}) >= 60

    def test_every_ingredient_is_known(self, bar, tree):
        assert bar.check() == ()
        assert {each.ingredient for each in bar.snapshot.products} <= tree.ingredients.keys()

    def test_every_level_lies_between_nothing_and_full(self, bar):
        for bottle in bar.snapshot.bottles:
            assert 0.0 <= bottle.level.amount <= bottle.product.size, bottle.product.title

    def test_the_shelf_is_in_the_order_of_the_texts(self, bar, texts, tree):
        text = sample.read_sample(texts, tree)
        titles = [each.product.title for each in bar.snapshot.bottles]
        assert titles == [each.draft.title for each in text.bottles]

    def test_it_shows_every_state(self, bar):
        states = Counter(each.level.state for each in bar.snapshot.bottles)
        assert min(states["sealed"], states["open"], states["empty"]) >= 1

    def test_two_bottles_of_one_product_one_open_one_sealed(self, bar):
        pair = [each for each in bar.snapshot.bottles if each.ingredient == "london-dry-gin"]
        assert sorted(each.level.state for each in pair) == ["open", "sealed"]

    def test_one_bottle_is_too_low_for_a_serve(self, bar):
        left = bottle_called(bar, "Old Sidings Coal Scuttle dark rum").level.amount
        assert 0.0 < left < 30.0

    def test_a_vermouth_was_opened_too_long_ago(self, bar, tree):
        vermouth = bottle_called(bar, "Vantry Loop Sweet vermouth")
        days = (bar.snapshot.on - vermouth.level.opened).days
        assert days > tree[vermouth.ingredient].shelf_life_days

    def test_the_stale_juice_cannot_be_poured(self, bar):
        assert "grapefruit-juice" in bar.snapshot.past
        assert "grapefruit-juice" not in bar.snapshot.usable

    def test_lime_juice_from_yesterday_keeps_until_tomorrow(self, bar):
        juice = bottle_called(bar, "Lime juice")
        assert juice.made == bar.snapshot.on - timedelta(days=1)
        assert juice.use_by == bar.snapshot.on + timedelta(days=1)

    def test_a_bottle_has_no_known_strength(self, bar, tree):
        unknown = bottle_called(bar, "Walnut liqueur from next door").product
        assert unknown.abv_percent is None
        assert tree[unknown.ingredient].abv_percent > 0


class TestLabels:
    def test_barcodes_are_a_shop_s_own_and_their_check_digits_hold(self, bar):
        codes = [each.barcode for each in bar.snapshot.products if each.barcode]
        assert len(codes) >= 12
        assert len(set(codes)) == len(codes)
        for code in codes:
            assert len(code) == 13 and code.isdigit()
            assert 20 <= int(code[:2]) <= 29, "restricted circulation within a company"
            assert int(code[-1]) == check_digit(code[:-1])

    def test_the_check_digit_agrees_with_published_examples(self):
        # Worked on the pages of GS1, GS1 Sweden and GS1 India.
        assert check_digit("629104150021") == 3
        assert check_digit("730001100001") == 7
        assert check_digit("890400021003") == 7

    def test_nothing_is_there_twice(self, bar):
        titles = Counter(folded(each.title) for each in bar.snapshot.products)
        specs = Counter(folded(each.name) for each in bar.snapshot.all_specs)
        assert max(titles.values()) == 1
        assert max(specs.values()) == 1

    def test_prices_are_known_of_what_is_not_owned(self, bar):
        owned = {each.ingredient for each in bar.snapshot.bottles}
        wanted = bar.snapshot.price_of.keys() - owned
        assert {"maraschino-liqueur", "green-herbal-liqueur", "mezcal"} <= wanted
        assert len(wanted) >= 25

    def test_label_strengths_are_near_the_usual_ones(self, bar, tree):
        for product in bar.snapshot.products:
            usual = tree[product.ingredient].abv_percent
            if usual is not None and product.abv_percent is not None:
                assert product.abv_percent == pytest.approx(usual, abs=12), product.title


class TestShoots:
    def test_four_logged_one_filmed_one_planned(self, bar):
        shoots = bar.snapshot.shoots
        assert Counter(each.state for each in shoots) == {"logged": 4, "filmed": 1, "planned": 1}
        assert [each.theme for each in shoots][:2] == ["Summer Excursion", "Snow Plough"]
        assert all(len(each.drinks) == 3 for each in shoots)

    def test_a_log_says_what_the_ledger_says(self, bar):
        """Every bottle of every log: its pours of that day, and the count that came next."""
        for shoot in (each for each in bar.snapshot.shoots if each.log):
            assert len(shoot.log.bottles) >= 5
            for logged in shoot.log.bottles:
                steps = bar.inventory.history(logged.bottle_id)
                day = [entry for entry, _level in steps if entry.at.date() == shoot.on]
                poured = [e.amount for e in day if e.note.startswith(shoot.theme)]
                assert logged.poured == pytest.approx(sum(poured)), (shoot.theme, logged.title)
                later = [
                    entry.amount
                    for entry, _level in steps
                    if entry.kind == "count" and entry.at.date() > shoot.on
                ]
                assert logged.counted == (later[0] if later else None)

    def test_the_filmed_one_has_poured_nothing_yet_and_can_be_logged(self, bar):
        shoot = next(each for each in bar.snapshot.shoots if each.state == "filmed")
        assert shoot.log is None and shoot.on == NOON.date() - timedelta(days=3)
        for bottle in bar.snapshot.bottles:
            noted = [entry.note for entry, _level in bar.inventory.history(bottle.id)]
            assert not any(each.startswith("Snow Plough:") for each in noted)
        found = expected_after(shoot, bar.snapshot, as_planned(shoot))
        assert len(found) >= 10
        assert all(each.poured <= each.bottle.level.amount for each in found)

    def test_what_it_will_pour_is_what_the_specs_say(self, bar):
        shoot = next(each for each in bar.snapshot.shoots if each.state == "filmed")
        drawn = expected_after(shoot, bar.snapshot, as_planned(shoot))
        asked = Counter()
        for drink in shoot.drinks:
            for line in bar.specs.get(drink.name).required_lines:
                asked[line.ingredient] += 2 * (line.quantity or 0.0)
        for each in drawn:
            if each.bottle.product.unit == "ml" and each.bottle.ingredient in asked:
                assert each.poured == pytest.approx(asked[each.bottle.ingredient])


class TestOwnSpecs:
    def test_six_episodes_of_three_drinks_and_the_riffs_on_two(self, bar):
        own = bar.snapshot.specs
        assert len(own) == 21
        riffs = [each for each in own if each.riff_of is not None]
        assert [(each.name, each.riff_of) for each in riffs] == [
            ("Request Stop on Sunday", "Request Stop"),
            ("Upper Berth by the Window", "Upper Berth"),
            ("Upper Berth in the Corridor", "Upper Berth by the Window"),
        ]

    def test_each_says_how_it_is_made(self, bar):
        for spec in bar.snapshot.specs:
            assert spec.glass and spec.method and spec.notes, spec.name
            assert spec.technique != "unknown", spec.name
            assert any(line.garnish for line in spec.lines), spec.name
            assert spec.added < bar.snapshot.on

    def test_every_line_is_what_it_says(self, bar, tree):
        """No line was matched to a mere neighbour: each names its ingredient."""
        for spec in bar.snapshot.specs:
            for line in spec.required_lines:
                assert line.quantity is not None, (spec.name, line.text)
                names = {folded(each) for each in tree[line.ingredient].all_names}
                assert any(name in folded(line.text) for name in names), line.text

    def test_the_planned_episode_still_lacks_something(self, bar):
        drinks = {each.spec.name: each for each in verdicts.tonight(bar.snapshot, "exact")}
        for name in ("Deckchair Special", "Sand in the Points", "Ices on Platform Three"):
            assert not drinks[name].makeable


class TestTrials:
    def test_two_families_were_tasted_and_one_settled_on(self, bar):
        snapshot = bar.snapshot
        names = {spec.id: spec.name for spec in snapshot.specs}
        assert [names[each.spec_id] for each in snapshot.trials if each.won] == ["Upper Berth"]
        assert len({names[each.spec_id] for each in snapshot.trials}) == 5
        for name in ("Upper Berth in the Corridor", "Request Stop"):
            kin = [each.spec.id for each in family(name, snapshot.all_specs)]
            assert sum(each.spec_id in kin for each in snapshot.trials) >= 2
            won = winner(snapshot.trials, kin)
            assert names.get(won) == ("Upper Berth" if "Berth" in name else None)

    def test_specs_carry_tags(self, bar):
        assert bar.specs.get("Upper Berth").tags == ("winter", "stirred and brown")


class TestTheMix:
    def test_every_verdict_shows_in_its_share(self, bar):
        drinks = verdicts.tonight(bar.snapshot)
        shares = {
            verdict: sum(each.verdict == verdict for each in drinks) / len(drinks)
            for verdict in verdicts.VERDICTS
        }
        assert 0.30 <= shares["ready"] <= 0.45
        assert 0.05 <= shares["stand_in"] <= 0.18
        assert 0.20 <= shares["one_short"] <= 0.40
        assert 0.12 <= shares["short"] <= 0.40


class TestBuilding:
    def test_there_is_nothing_to_undo(self, bar):
        assert bar.undo_label is None
        assert bar.redo_label is None

    def test_what_is_done_next_can_be_undone(self, bar):
        gin = bottle_called(bar, "Pellow & Rudge Brass Bell Old Tom gin")
        bar.inventory.pour(gin.id, 45.0)
        bar.undo()
        assert bottle_called(bar, gin.product.title).level == gin.level
        assert bar.undo_label is None

    def test_the_same_day_builds_the_same_bar(self, bar, tmp_path, clock):
        sample.build(tmp_path / "again.bar", clock)
        with Bar.open(tmp_path / "again.bar", clock=clock) as again:
            assert again.snapshot == bar.snapshot
            for bottle in again.snapshot.bottles:
                assert again.inventory.history(bottle.id) == bar.inventory.history(bottle.id)

    def test_it_never_ages(self, bar, tmp_path):
        later = NOON + timedelta(days=800)
        sample.build(tmp_path / "later.bar", lambda: later)
        with Bar.open(tmp_path / "later.bar", clock=lambda: later) as aged:
            levels = [each.level.amount for each in aged.snapshot.bottles]
            assert levels == [each.level.amount for each in bar.snapshot.bottles]
            assert aged.snapshot.past.keys() == bar.snapshot.past.keys()

    def test_the_ledger_tells_the_past_in_order(self, bar):
        for bottle in bar.snapshot.bottles:
            entries = [entry for entry, _level in bar.inventory.history(bottle.id)]
            assert entries[0].kind == "receive"
            moments = [entry.at for entry in entries]
            assert moments == sorted(moments)
            assert moments[-1] < NOON
            assert bottle.received == moments[0].date()
            assert history(entries)[-1][1] == bottle.level.amount

    def test_a_file_that_is_there_is_left_alone(self, tmp_path, clock):
        there = tmp_path / "notes.txt"
        there.write_text("mine")
        with pytest.raises(CannotWrite, match="already"):
            sample.build(there, clock)
        assert there.read_text() == "mine"

    def test_a_mistake_leaves_no_half_built_bar(self, tmp_path, clock, texts, monkeypatch):
        broken = {
            **texts,
            "bottles.toml": texts["bottles.toml"].replace("pour -52 60", "pour -52 690"),
        }
        monkeypatch.setattr(sample, "_texts", lambda: broken)
        with pytest.raises(KnowledgeError, match=r"bottles.toml, Pellow & Rudge Lamp Room.*690 ml"):
            sample.build(tmp_path / "broken.bar", clock)
        assert list(tmp_path.iterdir()) == []

    def test_a_throw_away_copy_is_gone_afterwards(self, clock):
        with sample_copy.throw_away(clock) as path, Bar.open(path, clock=clock) as bar:
            assert bar.snapshot.settings.name == "Tallowby signal box"
        assert not path.exists()


MISTAKES = [
    ("bottles.toml", 'ingredient = "vodka"', 'ingredient = "vokda"', "Clear Signal.*not an ingr"),
    ("bottles.toml", "price = 18.90", "prize = 18.90", "Clear Signal.*no field “prize”"),
    ("bottles.toml", "received = -150", "received = 150", "Clear Signal.*in the past"),
    ("bottles.toml", "size = 700", 'size = "700"', "Lamp Room.*a number"),
    ("bottles.toml", "pour -52 60 ml", "pour -92 60 ml", "Lamp Room.*comes before"),
    ("bottles.toml", "pour -52 60 ml", "pour -52 60 g", "Lamp Room.*is in g"),
    ("bottles.toml", "pour -52 60 ml", "poor -52 60 ml", "Lamp Room.*no line of a history"),
    ("bottles.toml", "pour -52 60 ml Request", "pour -52 Request", "Lamp Room.*cannot be read"),
    ("bottles.toml", '"open -90"', '"open -90 gently"', "Lamp Room.*says too much"),
    ("bottles.toml", "for Mail Train: Late", "for Male Train: Late", "Brass Bell.*no logged shoot"),
    (
        "bottles.toml",
        "for Mail Train: Late",
        "for Snow Plough: Late",
        "Brass Bell.*no logged shoot",
    ),
    ("bottles.toml", "made = -8", "received = -8", "Simple syrup.*“made” is missing"),
    ("bottles.toml", "made = -8", "made = -8\nreceived = -8", "Simple syrup.*no field “received”"),
    ("bottles.toml", "count -9 0.45", "count -9 1.45", "Lamp Room.*count -9 1.45"),
    (
        "bottles.toml",
        'another = "Pellow',
        'another = "Hollow Lamp',
        "another Hollow Lamp.*comes before",
    ),
    ("bottles.toml", 'shape = "tall-round"', 'shape = "amphora"', "Lamp Room.*must be one of"),
    ("bottles.toml", "tare_g = 486", "tare_g = 0", "Lamp Room.*more than 0"),
    ("bottles.toml", "dash_ml = 0.5", "dash_ml = 30", "Anise-cherry.*at most 2"),
    ("bottles.toml", "count -9 964 g", "count -9 1364 g", "Walnut.*more than"),
    ("bottles.toml", "count -9 964 g", "count -9 364 g", "Walnut.*weighs empty"),
    ("bottles.toml", "count -9 10.4 cm", "count -9 104 cm", "Lock Gate.*whole bottle"),
    ("pantry.toml", 'name = "Limes"', 'name = "Lime juice"', "Lime juice.*described before"),
    ("known_products.toml", "price = 42.00", "", "Pit Oven mezcal.*price"),
    ("known_products.toml", "Dark crème", "White crème", "White crème de cacao.*on the shelves"),
    ("bar.toml", '"Gangway"', '"Gangplank"', "Gangplank.*no such spec"),
    ("bar.toml", "written = -67", "written = 67", "Night Sleeper.*in the past"),
    (
        "trials.toml",
        '"Request Stop on Sunday"',
        '"Gangplank"',
        "Gangplank: there is no such spec",
    ),
    ("trials.toml", "day = -66", "day = -68", "Upper Berth: it was tasted before it was written"),
    ("trials.toml", "Wren Balance 5", "Wren Balance 6", "Upper Berth: .*runs from 1 to 5"),
    ("trials.toml", "Wren Balance 5", "Wren Nose 5", "Upper Berth: .*no scale called “Nose”"),
    ("trials.toml", "Wren Balance 5", "Balance 5", "Upper Berth: .*each score needs who gave it"),
    ("trials.toml", "won = true", "one = true", "Upper Berth: there is no field “one”"),
    ("specs.txt", "Gangway\n1 1/2 oz navy", "Gangway\n1 1/2 qx navy", "specs.txt, Gangway"),
]


@pytest.mark.parametrize(("file", "right", "wrong", "said"), MISTAKES)
def test_a_mistake_is_named_with_its_place(
    file, right, wrong, said, texts, tmp_path, clock, monkeypatch
):
    assert right in texts[file]
    broken = {**texts, file: texts[file].replace(right, wrong, 1)}
    monkeypatch.setattr(sample, "_texts", lambda: broken)
    with pytest.raises(KnowledgeError, match=said) as raised:
        sample.build(tmp_path / "broken.bar", clock)
    place = raised.value.file
    assert place == file or said.startswith(("Gangplank",))
