"""A search that asks what is cheap first and keeps what it knows, beside one that asks all of each.

The plain one reads a spec's words and kinds anew, analyses it and looks at every bottle.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace
from datetime import timedelta
from random import Random

import pytest

from barkeep.application.benchmarks.invented_bars import invented_bar
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.cautions.allergens import allergen_words, allergens_of
from barkeep.domain.drink import analysis
from barkeep.domain.drink.analysis import analyse
from barkeep.domain.drink.search import search
from barkeep.domain.phrases import folded
from barkeep.domain.pouring.memory import Memory
from barkeep.domain.specs.spec import Spec, UnsettledLine, base
from tests.worlds import TODAY

Holds = Callable[[Spec], bool]


def kinds_of(spec: Spec, bar: Snapshot) -> set[str]:
    tree = bar.knowledge.tree
    return {kind for key in spec.wanted for kind in (key, *tree.ancestors(key))}


def words_of(spec: Spec, bar: Snapshot) -> str:
    called = (line.called for line in spec.lines)
    unsettled = (each.text for each in spec.unsettled)
    own = (spec.name, spec.riff_of or "", spec.glass, spec.technique, *spec.tags, *called)
    names = (bar.knowledge.tree.folded_names[kind] for kind in sorted(kinds_of(spec, bar)))
    return " ".join((folded(" ".join((*own, *unsettled))), *names))


def strength_of(spec: Spec, bar: Snapshot) -> float | None:
    found = analyse(spec, bar)
    return found.abv_percent if found.served_volume_ml and not spec.unsettled else None


def carries(spec: Spec, bar: Snapshot) -> set[str]:
    return {each.word for each in allergens_of(spec.wanted, bar.knowledge.tree)}


def some_words(chance: Random, bar: Snapshot) -> str:
    """A piece of a word, a word, or several in a row, out of what some spec says."""
    text = words_of(chance.choice(bar.all_specs), bar)
    start = chance.randrange(len(text))
    piece = text[start : start + chance.randint(1, 18)]
    return piece.strip(' "-') or "gin"


def terms(chance: Random, bar: Snapshot) -> Iterator[tuple[str, Holds]]:
    """Terms as they are typed, each with what it asks of a spec."""
    tree = bar.knowledge.tree
    key = chance.choice(sorted(kinds_of(chance.choice(bar.all_specs), bar)))
    words, low = some_words(chance, bar), chance.randint(0, 30)
    yield f'"{words}"', lambda spec: folded(words) in words_of(spec, bar)
    yield f'-"{words}"', lambda spec: folded(words) not in words_of(spec, bar)
    yield f'with:"{tree[key].name}"', lambda spec: key in kinds_of(spec, bar)
    yield f"base:{key}", lambda spec: key in kinds_of(spec, bar) and is_base(spec, key, bar)
    yield f"strength:>{low}", lambda spec: (strength_of(spec, bar) or -1.0) >= low
    yield f"-strength:>{low}", lambda spec: not (strength_of(spec, bar) or -1.0) >= low
    word = chance.choice(sorted(allergen_words(tree)))
    means = allergen_words(tree)[word]

    def without(spec: Spec) -> bool:
        of_kind = tree.called(word) in kinds_of(spec, bar)
        return not (of_kind or carries(spec, bar) & means or spec.unsettled)

    yield f'no:"{word}"', without
    glass = chance.choice(bar.all_specs).glass
    yield f'glass:"{glass or "coupe"}"', lambda s: folded(glass or "coupe") in folded(s.glass)
    yield "own", lambda spec: not spec.classic


def is_base(spec: Spec, key: str, bar: Snapshot) -> bool:
    built_on, tree = base(spec, bar.knowledge.tree), bar.knowledge.tree
    return built_on is not None and tree.is_a(built_on, key)


def changed(chance: Random, bar: Snapshot) -> Snapshot:
    """The bar after a count, a spec that is put differently, taken out or put back, or a night."""
    kind = chance.choice(["count", "spec", "remove", "classics", "day"])
    if kind == "count":
        place = chance.randrange(len(bar.bottles))
        level = replace(bar.bottles[place].level, amount=chance.choice([0.0, 30.0, 500.0]))
        counted = replace(bar.bottles[place], level=level)
        return bar.changed(bottles=(*bar.bottles[:place], counted, *bar.bottles[place + 1 :]))
    if kind == "classics":
        return bar.changed(settings=replace(bar.settings, classics=not bar.settings.classics))
    if kind == "day":
        return bar.changed(on=bar.on + timedelta(days=chance.randint(1, 40)))
    specs = list(bar.specs)
    place = chance.randrange(len(specs))
    if kind == "remove" and len(specs) > 5:
        del specs[place]
    else:
        lines = chance.choice(bar.all_specs).lines
        asked = (UnsettledLine("15 ml fog cordial", 0, "it is not understood"),)
        name = chance.choice([specs[place].name, f"Put {chance.random():.6f}"])
        specs[place] = replace(
            specs[place],
            name=name,
            lines=lines,
            unsettled=chance.choice([(), (), asked]),
            tags=("house",),
        )
    return bar.changed(specs=tuple(specs))


@pytest.mark.parametrize("seed", range(6))
def test_after_any_changes_a_search_finds_what_asking_all_of_each_spec_finds(knowledge, seed):
    chance = Random(seed)
    bar = invented_bar(knowledge, 25, 40, seed=seed, on=TODAY)
    bar = bar.changed(knowledge=replace(knowledge, classics=knowledge.classics[seed::20]))
    memory, matched = Memory(), 0
    for _ in range(12):
        bar = changed(chance, bar)
        typed, holds = zip(
            *chance.sample(list(terms(chance, bar)), chance.randint(1, 3)), strict=True
        )
        found = [spec.name for spec in search(bar, " ".join(typed), memory)]
        plain = [spec.name for spec in bar.all_specs if all(each(spec) for each in holds)]
        assert found == plain, typed
        matched += bool(found)
    assert matched


@pytest.mark.parametrize("seed", range(4))
def test_the_book_after_any_changes_is_the_one_put_together_from_nothing(knowledge, seed):
    chance = Random(seed)
    bar = invented_bar(knowledge, 30, 3, seed=seed, on=TODAY)
    names = [each.name for each in knowledge.classics]
    for _ in range(60):
        _ = bar.all_specs
        bar = changed(chance, bar)
        if chance.random() < 0.3:  # one of the owner's takes a classic's name, which it then hides
            own = replace(bar.specs[0], name=chance.choice(names).upper())
            if own.name not in {each.name for each in bar.specs}:
                bar = bar.changed(specs=(own, *bar.specs[1:]))
        assert bar.all_specs == replace(bar).all_specs


def test_what_is_asked_of_words_may_run_from_one_name_into_the_next(knowledge):
    bar = invented_bar(knowledge, 12, 3, seed=3, on=TODAY)
    for spec in bar.all_specs:
        words = words_of(spec, bar)
        for start in range(0, len(words) - 20, 29):
            wanted = words[start : start + 20].strip()
            assert spec in search(bar, f'"{wanted}"'), wanted


def test_dear_figures_are_worked_out_of_what_the_cheap_ones_leave(knowledge, monkeypatch):
    bar = invented_bar(knowledge, 60, 20, seed=5, on=TODAY)
    few = {spec.name for spec in search(bar, "with:absinthe")}
    asked = []
    plain = analysis.strength_of
    monkeypatch.setattr(
        analysis, "strength_of", lambda spec, bar: (asked.append(spec.name), plain(spec, bar))[1]
    )
    memory = Memory()
    search(bar, "strength:>1 with:absinthe", memory)
    assert set(asked) == few and 0 < len(few) < 60
    asked.clear()
    search(bar, "with:absinthe strength:<60", memory)
    assert asked == []
