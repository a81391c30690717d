"""What Tonight tells of the drink that is chosen: what goes in, line by line, and why."""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial

from barkeep.desktop.drink.analysis_view import correction_words
from barkeep.desktop.drink.bases import base_of
from barkeep.desktop.drink.cautions_in_brief import minded_section
from barkeep.desktop.drink.words import NOT_UNDERSTOOD, line_state, reason, with_duty, written
from barkeep.desktop.widgets.details import DetailRow, DetailSection
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.cautions.cautions import IN_GENERAL
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import as_sentence, capitalised
from barkeep.domain.pouring.assessment import LineAnswer
from barkeep.domain.pouring.garnishes import garnishes_told
from barkeep.domain.pouring.made_first import make_first
from barkeep.domain.pouring.serves_in_words import following_in_words, serves_in_words, serves_of
from barkeep.domain.pouring.verdicts import Drink
from barkeep.domain.specs.called import named_by
from barkeep.domain.specs.shown_lines import ShownLine, shown_lines
from barkeep.domain.specs.spec import UnsettledLine, with_unsettled
from barkeep.domain.stand_ins.corrections import correction_for
from barkeep.translation import tr


def subtitle_of(drink: Drink, tree: FamilyTree) -> str:
    """Its base, its glass, what is not understood, and how many serves there are."""
    parts = [base_of(drink.spec, tree).name, tr(drink.spec.glass), *drink.questions]
    if drink.makeable:
        parts.append(serves_in_words(drink, tree))
    return " · ".join(part for part in parts if part)


def correction_of(drink: Drink, snapshot: Snapshot) -> str:
    """What to pour so that stand-ins leave the drink what it was; empty where they do."""
    found = correction_for(drink, snapshot)
    named = named_by(drink.spec.lines, snapshot.knowledge.tree)
    return "" if found is None else correction_words(found, named)


def sections_of(
    drink: Drink, snapshot: Snapshot, tree: FamilyTree, *, correction: str = ""
) -> list[DetailSection]:
    """All that is told of a drink, in the order one reads it in; `correction` ends what goes in."""
    settings = snapshot.settings
    shown = shown_lines(drink.spec, tree, settings.shown_in, settings.units)
    known = tuple(map(partial(_line, tree=tree), drink.lines, shown))
    lines = with_unsettled(drink.spec, known, _question)
    if correction:
        balance = DetailRow(correction, label=tr("Balance"), picture="stand-ins", tone="stand_in")
        lines = (*lines, balance)
    sections = [
        *minded_section(drink.minded, drink.notices),
        DetailSection(tr("What goes in"), lines),
    ]
    first = make_first(drink.lines, tree) if drink.makeable else ""
    if first:
        sections.insert(0, DetailSection(tr("First"), (_first(first),)))
    if told := tuple(map(DetailRow, garnishes_told(drink, snapshot.all_specs, tree))):
        sections.append(DetailSection(tr("Garnish"), told))
    if drink.then:
        after = tr("After {serves}", serves=serves_of(drink.serves))
        sections.append(DetailSection(after, tuple(_followings(drink, tree)), fold="after"))
    if drink.spec.method:
        method = (DetailRow(drink.spec.method),)
        sections.append(DetailSection(tr("Method"), method, fold="method", opens=True))
    sections.append(DetailSection(tr("Care"), (DetailRow(tr(IN_GENERAL)),), fold="care"))
    return sections


def _first(words: str) -> DetailRow:
    return DetailRow(as_sentence(words), picture="house-made", tone="muted")


def _question(line: UnsettledLine) -> DetailRow:
    state = NOT_UNDERSTOOD
    return DetailRow(
        line.text, label=state.word, note=line.question, picture=state.picture, tone=state.tone
    )


def _line(answer: LineAnswer, shown: ShownLine, tree: FamilyTree) -> DetailRow:
    state = line_state(answer, tree)
    return DetailRow(
        with_duty(answer.line, shown.text),
        label=state.word,
        note=reason(answer, tree),
        picture=state.picture,
        tone=state.tone,
        tip=written(shown),
    )


def _followings(drink: Drink, tree: FamilyTree) -> Iterator[DetailRow]:
    """What is poured once the bottles shown are used up, each with why it may be."""
    named = named_by(drink.spec.lines, tree)
    for each, said in zip(drink.then, following_in_words(drink, named), strict=True):
        why = " ".join(answer.why for answer in each.poured) if each.is_stand_in else ""
        tone = "stand_in" if each.is_stand_in else "plain"
        yield DetailRow(capitalised(said), label=tr("Then"), note=why, tone=tone)
