"""count by each of the four means, tare and dasher: bottles of every shape, sweet and creamy."""

from __future__ import annotations

import pytest

from barkeep.application.bar import Bar
from barkeep.domain.bottles.containers import container_of
from barkeep.domain.bottles.levels import gross_weight_g
from barkeep.domain.bottles.shapes import height_cm, shipped_shapes

GIN = "Pellow & Rudge Lamp Room dry gin"
SHAPES = tuple(shipped_shapes())
HEADER = "product,maker,ingredient,abv,sugar,size,shape,tare\n"
LIQUIDS = {
    "spirit": "gin,,London dry gin,40,",
    "liqueur": "cassis,,crème de cassis,18,450",
    "syrup": "syrup,,simple syrup,0,615",
}


@pytest.fixture
def shelf(barkeep, tmp_path):
    """A bar of its own with bottles out of a CSV file."""
    location = tmp_path / "own.bar"

    def filled(rows: str, header: str = HEADER):
        file = tmp_path / "bottles.csv"
        file.write_text(header + rows, encoding="utf-8")
        new = () if location.exists() else ("--new",)
        assert barkeep("--bar", location, *new, "import", file).status == 0
        return location

    return filled


class TestFourWays:
    @pytest.mark.parametrize("liquid", LIQUIDS)
    def test_each_means_finds_what_is_left(self, barkeep, shelf, liquid):
        location = shelf("".join(f"{each} {LIQUIDS[liquid]},700,{each},520 g\n" for each in SHAPES))
        with Bar.open(location) as opened:
            snapshot = opened.snapshot
        assert len(snapshot.bottles) == len(SHAPES)
        found = {}
        for bottle in snapshot.bottles:
            held = container_of(bottle, snapshot.knowledge.tree, snapshot.bottles)
            found[bottle.id] = self.sigmas_of(barkeep, location, bottle.id, held)
        with Bar.open(location) as opened:
            for bottle, sigmas in found.items():
                written = [entry for entry, _level in opened.inventory.history(bottle)]
                counts = [(each.method, each.sigma) for each in written if each.kind == "count"]
                assert counts == [
                    (method, pytest.approx(sigma, abs=0.01)) for method, sigma in sigmas.items()
                ]

    def sigmas_of(self, barkeep, location, bottle, held):
        left = 0.45 * held.size
        levels = {
            "tenths": "0.45",
            "volume": f"{left:.2f} ml",
            "weight": f"{gross_weight_g(left, held):.2f} g",
            "height": f"{height_cm(held.shape, held.size, left):.3f} cm",
        }
        sigmas = {}
        for method, text in levels.items():
            answer = barkeep("--bar", location, "count", bottle, *text.split(), "--json").answer
            where = (answer["bottle"], method)
            assert answer["counted_ml"] == pytest.approx(left, abs=0.1), where
            assert answer["method"] == method, where
            sigmas[method] = answer["sigma_ml"]
        assert min(sigmas, key=sigmas.get) == "weight", held.shape
        return sigmas

    def test_the_first_count_is_told_apart_and_the_next_ones_are_not(self, barkeep, shelf):
        location = shelf("gin,,London dry gin,40,,700,tall-round,520 g\n")
        flags = [
            barkeep("--bar", location, "count", "1", *text.split(), "--json").answer["flagged"]
            for text in ("0.5", "0.45", "845 g", "845 g", "0.5")
        ]
        assert flags == [True, False, False, False, False]
        assert barkeep("--bar", location, "count", "1", "700 g", "--json").answer["flagged"]

    def test_inches_kilograms_and_commas(self, barkeep, shelf):
        location = shelf("gin,,London dry gin,40,,700,tall-round,520 g\n")
        first = barkeep("--bar", location, "count", "1", "4", "1/2", "in", "--json").answer
        second = barkeep("--bar", location, "count", "1", "11,43 cm", "--json").answer
        assert first["counted_ml"] == second["counted_ml"]
        third = barkeep("--bar", location, "count", "1", "0.812 kg", "--json").answer
        assert third["counted_ml"] == pytest.approx(308.4, abs=0.5)

    def test_text_says_how_sure_each_is(self, barkeep, shelf):
        location = shelf("gin,,London dry gin,40,,700,tall-round,520 g\n")
        shown = barkeep("--bar", location, "count", "1", "812 g").out
        assert shown.startswith("gin: 308 ml ± 3, 392 ml less than expected (700 ml)")
        shown = barkeep("--bar", location, "history", "1").out
        assert "weighed, ± 3 ml" in shown


class TestRefusals:
    def test_each_is_one_sentence_and_writes_nothing(self, barkeep, shelf):
        location = shelf(
            "gin,,London dry gin,40,,700,tall-round,520 g\n"
            "rum,,dark rum,40,,700,tall-round,\n"
            "churn,,cream liqueur,17,200,700,,500 g\n"
        )
        before = location.read_bytes()
        for bottle, level, said in (
            ("gin", "300 g", "less than gin weighs empty (520 g)"),
            ("gin", "1500 g", "more than gin weighs when it is full"),
            ("gin", "90 cm", "above the whole bottle"),
            ("gin", "-3 cm", "below nothing"),
            ("gin", "3 sprigs", "is a number of pieces"),
            ("gin", "812", "a share of the bottle is 0 to 1"),
            ("rum", "812 g", "weighs without its contents is not known yet"),
            ("churn", "812 g", "it holds cream, milk, egg or coconut"),
        ):
            refusal = barkeep("--bar", location, "count", bottle, level).refusal
            assert said in refusal and "\n" not in refusal
        assert location.read_bytes() == before


class TestTare:
    def test_empty(self, barkeep, bar):
        answer = barkeep("--bar", bar, "tare", GIN, "520", "g", "--json").answer
        assert answer == {
            "bottle": GIN,
            "tare_g": 520,
            "tare_sigma_g": 1,
            "density_g_per_ml": None,
            "warning": None,
        }
        counted = barkeep("--bar", bar, "count", GIN, "812 g", "--json").answer
        assert counted["counted_ml"] == pytest.approx(310, abs=0.5)
        barkeep("--bar", bar, "undo")
        assert barkeep("--bar", bar, "undo").out == f"Undone: Weigh {GIN} empty.\n"

    def test_full(self, barkeep, shelf):
        location = shelf("gin,,London dry gin,40,,700,tall-round,\n")
        answer = barkeep("--bar", location, "tare", "gin", "1230 g", "--full", "--json").answer
        assert answer["tare_g"] == pytest.approx(1230 - 662.9, abs=0.2)
        assert answer["tare_sigma_g"] == pytest.approx(7.7, abs=0.1)
        shown = barkeep("--bar", location, "tare", "gin", "1230 g", "--full").out
        assert shown == "gin weighs 567 g ± 15 empty.\n"
        counted = barkeep("--bar", location, "count", "gin", "1230 g", "--json").answer
        assert (counted["counted_ml"], counted["flagged"]) == (700, False)

    def test_an_odd_glass_is_said(self, barkeep, bar):
        answer = barkeep("--bar", bar, "tare", GIN, "1300", "g", "--json").answer
        assert answer["warning"].startswith("that is heavy for a bottle of 700 ml")
        assert "that is light for a bottle" in barkeep("--bar", bar, "tare", GIN, "150 g").out

    def test_a_cream_liqueur_learns_its_density(self, barkeep, shelf):
        location = shelf("churn,,cream liqueur,17,200,700,squat-round,\n")
        first = barkeep("--bar", location, "tare", "churn", "1242 g", "--full")
        assert "Weigh it again once it is empty" in first.out
        answer = barkeep("--bar", location, "tare", "churn", "512 g", "--json").answer
        assert answer["density_g_per_ml"] == pytest.approx(1.044, abs=0.0005)
        counted = barkeep("--bar", location, "count", "churn", "877 g", "--json").answer
        assert counted["counted_ml"] == pytest.approx(350, abs=0.1)
        assert counted["sigma_ml"] == pytest.approx(4.3, abs=0.2)

    @pytest.mark.parametrize(
        ("argv", "said"),
        [
            (("520",), "needs its unit"),
            (("520 ml",), "is a volume"),
            (("0 g",), "more than nothing"),
            (("-5 g",), "below nothing"),
            (("400 g", "--full"), "do not go with the 700 ml"),
            (("some",), "cannot be read"),
            (("5 g",), "is no weight of an empty bottle of 700 ml"),
            (("19 kg",), "is no weight of an empty bottle of 700 ml"),
            (("1500 g", "--full"), "do not go with the 700 ml"),
        ],
    )
    def test_what_is_no_weight_is_refused(self, barkeep, bar, argv, said):
        before = bar.read_bytes()
        refusal = barkeep("--bar", bar, "tare", GIN, *argv).refusal
        assert said in refusal and "\n" not in refusal
        assert bar.read_bytes() == before


class TestDasher:
    def test_set_and_forgotten(self, barkeep, bar):
        title = "Hollow Lamp Aromatic bitters"
        answer = barkeep("--bar", bar, "dasher", "Aromatic bitters", "0.3", "ml", "--json").answer
        assert answer == {"bottle": title, "dash_ml": 0.3}
        assert (
            barkeep("--bar", bar, "dasher", title, "0.9 ml").out
            == f"A dash of {title} is 0.9 ml.\n"
        )
        assert barkeep("--bar", bar, "dasher", title, "usual").out == (
            f"A dash of {title} is what the bar means by a dash, 0.8 ml.\n"
        )

    @pytest.mark.parametrize(
        ("dash", "said"),
        [
            *(("30 ml", "0.05 to 2 ml"), ("3 g", "write it in ml"), ("much", "cannot be")),
            *(("0.5-0.6 ml", "dash cannot be “0.5-0.6 ml”"), ("1 dash", "write it in ml")),
        ],
    )
    def test_what_is_no_dash_is_refused(self, barkeep, bar, dash, said):
        assert said in barkeep("--bar", bar, "dasher", "Aromatic bitters", dash).refusal

    def test_a_bare_number_is_ml_and_ounces_are_the_bars(self, barkeep, bar):
        def dash_ml(text):
            return barkeep("--bar", bar, "dasher", "Aromatic bitters", text, "--json").answer[
                "dash_ml"
            ]

        assert dash_ml("0.3") == 0.3
        assert dash_ml("1/32 oz") == 0.9242
        barkeep("--bar", bar, "setting", "ounce", "imperial")
        assert dash_ml("1/32 oz") == 0.8879


class TestTheSample:
    """Nearly all of its open bottles can be counted on a scale."""

    def test_every_shape_stands_on_the_shelf(self, bar):
        with Bar.open(bar) as opened:
            snapshot = opened.snapshot
        tree = snapshot.knowledge.tree
        held = [container_of(each, tree, snapshot.bottles) for each in snapshot.bottles]
        assert {each.shape.key for each in held if each.shape} == set(SHAPES)
        weighable = sum(
            each.tare is not None and each.contents.density is not None for each in held
        )
        assert weighable > 40
        methods = {each.level.method for each in snapshot.bottles}
        assert {"tenths", "volume", "weight", "height"} <= methods

    @pytest.mark.parametrize(
        ("bottle", "level"),
        [
            ("Pinchweir Crème de cassis", "700 g"),
            ("Tansy Lock Milk Churn cream liqueur", "900 g"),
            ("Oddlamp Triple sec", "10 cm"),
            ("Simple syrup", "10 cm"),
        ],
    )
    def test_sweet_and_creamy_ones_are_counted(self, barkeep, bar, bottle, level):
        answer = barkeep("--bar", bar, "count", bottle, level, "--json").answer
        assert 0 < answer["counted_ml"] < 700
        assert 0 < answer["sigma_ml"] < 40
