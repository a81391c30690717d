"""An analysis as the analysis panel shows it: words, and shares of a scale for its picture."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.cautions.allergens import brought_in_sentence
from barkeep.domain.cautions.cautions import IN_GENERAL, Caution, Level, of_tier
from barkeep.domain.drink.analysis import Analysis, analyse
from barkeep.domain.drink.balance import Place, Range
from barkeep.domain.drink.kin import Figure, Kin, figures_of, kin_of, usual_water
from barkeep.domain.drink.picture import DrinkPicture, picture_of
from barkeep.domain.drink.words import (
    LABEL_FIRST,
    Fact,
    about_ranges,
    facts,
    in_brief,
    place_in_words,
    place_word,
    tags_in_words,
)
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import capitalised
from barkeep.domain.pouring.minded import Minded
from barkeep.domain.pouring.warnings import allergens_in_words
from barkeep.domain.specs.quantities import in_dashes_of
from barkeep.domain.specs.spec import Spec
from barkeep.domain.stand_ins.corrections import Correction, in_words
from barkeep.translation import tr, tr_noop

if TYPE_CHECKING:
    from barkeep.domain.spec_text.text import ReadSpec  # reading is loaded by who reads

UNREAD = tr_noop("Lines that cannot be read yet are not counted.")
_SCALES: Mapping[Figure, tuple[str, float, str]] = {
    "strength": (tr_noop("Strength"), 45.0, "% vol"),
    "sugar": (tr_noop("Sugar"), 150.0, "g/l"),
    "acid": (tr_noop("Acid"), 15.0, "g/l"),
    "water": (tr_noop("Water of the ice"), 80.0, "%"),
}
"""What each bar is called, where its scale ends, and its unit."""


_LEVELS: Mapping[Level, str] = {
    "danger": tr_noop("Danger"),
    "care": tr_noop("Caution"),
    "note": tr_noop("Note"),
}


@dataclass(frozen=True, slots=True)
class KinMark:
    """Another drink of the family on the same scale; `own` is one of the owner's."""

    name: str
    value: str
    mark: float
    own: bool

    @property
    def in_words(self) -> str:
        """Its name and its figure."""
        return f"{self.name} {self.value}"


@dataclass(frozen=True, slots=True)
class BalanceBar:
    """One quality on a scale from 0 to 1; `usual` is the family's range on it.

    A `mark` above 1 lies beyond the scale. `range_words` name the usual range,
    `place_words` say where in it the drink lies; both are empty without one.
    `kin` are the others of the family, the least first.
    `was` is where the drink stood before it was changed, and `was_value` says so.
    """

    label: str
    value: str
    mark: float
    sigma: float
    usual: tuple[float, float] | None = None
    range_words: str = ""
    place_words: str = ""
    kin: tuple[KinMark, ...] = ()
    was: float | None = None
    was_value: str = ""

    @property
    def in_words(self) -> str:
        """All that the bar shows."""
        before = tr("as written {value}", value=self.was_value) if self.was_value else ""
        said = (
            f"{self.label} {self.value}",
            before,
            self.place_words,
            self.range_words,
            self._among,
        )
        return ", ".join(each for each in said if each)

    @property
    def _among(self) -> str:
        """How many of the family have less."""
        if not self.kin:
            return ""
        less = sum(each.mark < self.mark for each in self.kin)
        return tr(
            "more than {less} of the {number} others of its family", less=less, number=len(self.kin)
        )


@dataclass(frozen=True, slots=True)
class AnalysisView:
    """Everything the panel shows of one drink."""

    brief: str
    bars: tuple[BalanceBar, ...]
    place: str
    ranges: str
    facts: tuple[Fact, ...]
    name: str
    minded: Minded
    general: tuple[Caution, ...]
    uncertain: tuple[str, ...]
    picture: DrinkPicture | None

    @property
    def before_anyone_drinks(self) -> str:
        """The general cautions in one sentence, where any applies."""
        return tr(IN_GENERAL) if self.general else ""


@dataclass(frozen=True, slots=True)
class CautionRow:
    """A caution as a page shows it; `tone` is a field of `Tones`, `meaning` says its level.

    `source` is a sentence, or empty.
    """

    text: str
    source: str
    tone: str
    meaning: str


def before_you_pour(minded: Minded, notices: Sequence[str] = ()) -> tuple[CautionRow, ...]:
    """What can hurt now with its authority, the allergens in a line, what to know of the bottles.

    Nothing of the rest is dropped: `every_caution` says all of it.
    """
    rows = [_caution_row(each) for each in of_tier(minded.all_cautions, "now")]
    if tags := tags_in_words(minded):
        rows.append(CautionRow(tags, tr(LABEL_FIRST), "warning", tr("Allergens")))
    if minded.brought_in:
        rows.append(
            CautionRow(brought_in_sentence(minded.brought_in), "", "warning", tr("Allergens"))
        )
    rows += [CautionRow(each, "", "warning", tr("Caution")) for each in notices]
    return tuple(rows)


def every_caution(
    minded: Minded, general: Iterable[Caution]
) -> tuple[tuple[str, tuple[CautionRow, ...]], ...]:
    """Headings with their cautions: of this drink, and of every drink with alcohol."""
    carried = [
        CautionRow(each, "", "warning", tr("Allergens")) for each in allergens_in_words(minded)
    ]
    own = (*map(_caution_row, minded.all_cautions), *carried)
    parts = (
        (tr("With this drink"), own),
        (tr("Before anyone drinks"), tuple(map(_caution_row, general))),
    )
    return tuple((heading, rows) for heading, rows in parts if rows)


def _caution_row(caution: Caution) -> CautionRow:
    tone = "danger" if caution.level == "danger" else "warning"
    return CautionRow(caution.text, caution.source, tone, tr(_LEVELS[caution.level]))


def correction_words(correction: Correction | None, tree: FamilyTree) -> str:
    """The correction as a sentence, empty where there is none."""
    if correction is None:
        return ""
    said = in_words(correction, tree)
    return f"{capitalised(said)}."


def view_of(spec: Spec, snapshot: Snapshot) -> AnalysisView | None:
    """A spec's analysis; None where nothing in it can be poured."""
    analysis = analyse(spec, snapshot)
    if not analysis.served_volume_ml:
        return None
    style = analysis.style
    return AnalysisView(
        brief=in_brief(analysis, snapshot.knowledge.tree),
        bars=tuple(_bars(analysis)),
        place=place_in_words(analysis),
        ranges="" if style is None else about_ranges(style),
        facts=facts(analysis, snapshot.knowledge.tree),
        name=spec.name,
        minded=analysis.minded,
        general=analysis.general_cautions,
        uncertain=analysis.uncertain,
        picture=picture_of(analysis, snapshot.knowledge.tree),
    )


def view_of_read(read: ReadSpec, snapshot: Snapshot) -> AnalysisView | None:
    """The analysis of a text while it is written: of the lines understood so far."""
    tree = snapshot.knowledge.tree
    view = view_of(in_dashes_of(snapshot.settings.units, read.understood, tree), snapshot)
    if view is None or not read.understood.unsettled:
        return view
    return replace(view, uncertain=(tr(UNREAD), *view.uncertain))


def bars_among_kin(spec: Spec, snapshot: Snapshot) -> tuple[BalanceBar, ...]:
    """The bars of a spec with all others of its family on them; the first time this takes long."""
    analysis = analyse(spec, snapshot)
    return tuple(_bars(analysis, kin_of(analysis, snapshot)))


def _bars(analysis: Analysis, kin: Sequence[Kin] = ()) -> Iterator[BalanceBar]:
    sigma = analysis.sigma
    doubts: Mapping[Figure, float] = {
        "strength": sigma.abv_percent,
        "sugar": sigma.sugar_g_per_l,
        "acid": sigma.acid_g_per_l,
        "water": 100.0 * analysis.dilution.sigma,
    }
    for figure, value in figures_of(analysis).items():
        label, end, _unit = _SCALES[figure]
        marks = (_kin_mark(each, figure) for each in kin if figure in each.figures)
        bar = BalanceBar(
            label=tr(label),
            value=_shown(figure, value),
            mark=value / end,
            sigma=doubts[figure] / end,
            kin=tuple(sorted(marks, key=lambda each: (each.mark, each.name))),
        )
        usual = _usual(figure, analysis, kin)
        if usual is None:
            yield bar
            continue
        place = usual.place_of(value)
        yield replace(
            bar,
            usual=(usual.low / end, usual.high / end),
            range_words=tr("usual {low:g} to {high:g}", low=usual.low, high=usual.high),
            place_words=tr(_WATERED[place]) if figure == "water" else place_word(figure, place),
        )


def _kin_mark(kin: Kin, figure: Figure) -> KinMark:
    value = kin.figures[figure]
    return KinMark(kin.name, _shown(figure, value), value / _SCALES[figure][1], kin.own)


_WATERED: Mapping[Place, str] = {
    "below": tr_noop("less watered"),
    "within": tr_noop("as usual"),
    "above": tr_noop("more watered"),
}


def _usual(figure: Figure, analysis: Analysis, kin: Sequence[Kin]) -> Range | None:
    if analysis.style is None:
        return None
    return usual_water(kin) if figure == "water" else analysis.style.range_of(figure)


def _shown(figure: Figure, value: float) -> str:
    unit = _SCALES[figure][2]
    return f"{value:.0f} {unit}" if figure in ("sugar", "water") else f"{value:.1f} {unit}"
