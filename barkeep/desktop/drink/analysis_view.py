"""An analysis as the analysis panel shows it: words, and shares of a scale for its picture."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.cautions.allergens import brought_in_sentence
from barkeep.domain.cautions.cautions import IN_GENERAL, Caution, Level, of_tier
from barkeep.domain.drink.analysis import Analysis, analyse
from barkeep.domain.drink.balance import Quality
from barkeep.domain.drink.picture import DrinkPicture, picture_of
from barkeep.domain.drink.words import (
    LABEL_FIRST,
    Fact,
    about_ranges,
    facts,
    in_brief,
    measured,
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

if TYPE_CHECKING:
    from barkeep.domain.spec_text.text import ReadSpec  # reading is loaded by who reads

UNREAD = "Lines that cannot be read yet are not counted."
_SCALES: Mapping[Quality, tuple[str, float, str]] = {
    "strength": ("Strength", 45.0, "% vol"),
    "sugar": ("Sugar", 150.0, "g/l"),
    "acid": ("Acid", 15.0, "g/l"),
}
"""What each bar is called, where its scale ends, and its unit."""


_LEVELS: Mapping[Level, str] = {"danger": "Danger", "care": "Caution", "note": "Note"}


@dataclass(frozen=True, slots=True)
class BalanceBar:
    """One quality on a scale from 0 to 1; `usual` is the family's range on it.

    A `mark` above 1 lies beyond the scale. `range_words` name the usual range,
    `place_words` say where in it the drink lies; both are empty without one.
    `was` is where the drink stood before it was changed, and `was_value` says so.
    """

    label: str
    value: str
    mark: float
    sigma: float
    usual: tuple[float, float] | None = None
    range_words: str = ""
    place_words: str = ""
    was: float | None = None
    was_value: str = ""

    @property
    def in_words(self) -> str:
        """All that the bar shows."""
        before = f"as written {self.was_value}" if self.was_value else ""
        said = (f"{self.label} {self.value}", before, self.place_words, self.range_words)
        return ", ".join(each for each in said if each)


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
        return IN_GENERAL if self.general else ""


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
        rows.append(CautionRow(tags, LABEL_FIRST, "warning", "Allergens"))
    if minded.brought_in:
        rows.append(CautionRow(brought_in_sentence(minded.brought_in), "", "warning", "Allergens"))
    rows += [CautionRow(each, "", "warning", "Caution") for each in notices]
    return tuple(rows)


def every_caution(
    minded: Minded, general: Iterable[Caution]
) -> tuple[tuple[str, tuple[CautionRow, ...]], ...]:
    """Headings with their cautions: of this drink, and of every drink with alcohol."""
    carried = [CautionRow(each, "", "warning", "Allergens") for each in allergens_in_words(minded)]
    own = (*map(_caution_row, minded.all_cautions), *carried)
    parts = (("With this drink", own), ("Before anyone drinks", tuple(map(_caution_row, general))))
    return tuple((heading, rows) for heading, rows in parts if rows)


def _caution_row(caution: Caution) -> CautionRow:
    tone = "danger" if caution.level == "danger" else "warning"
    return CautionRow(caution.text, caution.source, tone, _LEVELS[caution.level])


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
    return replace(view, uncertain=(UNREAD, *view.uncertain))


def _bars(analysis: Analysis) -> Iterator[BalanceBar]:
    sigma = analysis.sigma
    doubts: Mapping[Quality, float] = {
        "strength": sigma.abv_percent,
        "sugar": sigma.sugar_g_per_l,
        "acid": sigma.acid_g_per_l,
    }
    for quality, value in measured(analysis):
        label, end, unit = _SCALES[quality]
        shown = f"{value:.0f} {unit}" if quality == "sugar" else f"{value:.1f} {unit}"
        bar = BalanceBar(label, shown, value / end, doubts[quality] / end)
        if analysis.style is None:
            yield bar
            continue
        usual = analysis.style.range_of(quality)
        yield replace(
            bar,
            usual=(usual.low / end, usual.high / end),
            range_words=f"usual {usual.low:g} to {usual.high:g}",
            place_words=place_word(quality, usual.place_of(value)),
        )
