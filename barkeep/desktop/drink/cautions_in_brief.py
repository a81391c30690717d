"""What is to be minded of a drink as one line of tags, which opens to all that is said of it."""

from __future__ import annotations

from collections.abc import Sequence

from barkeep.desktop.drink.analysis_view import CautionRow, before_you_pour
from barkeep.desktop.widgets.details import DetailRow, DetailSection
from barkeep.domain.phrases import capitalised, counted
from barkeep.domain.pouring.minded import Minded
from barkeep.translation import tr, tr_noop

BEFORE_YOU_POUR = tr_noop("Before you pour")


def minded_section(minded: Minded, notices: Sequence[str] = ()) -> tuple[DetailSection, ...]:
    """The part of a drink's details, closed at first; none where nothing is to be minded.

    Its tags say what can hurt, then what an allergic guest must know, and how many bottles have
    something to be known of them: these are seen whether it is open or not.
    """
    rows = before_you_pour(minded, notices)
    if not rows:
        return ()
    told = counted(len(notices), "note on the bottles", "notes on the bottles") if notices else ""
    brought = tr("may carry more") if minded.brought_in else ""
    tags = " · ".join(filter(None, (minded.in_brief.removeprefix("! "), brought, told)))
    section = DetailSection(
        tr(BEFORE_YOU_POUR),
        tuple(map(_row, rows)),
        fold="cautions",
        brief=capitalised(tags),
        tone="danger" if any(each.tone == "danger" for each in rows) else "warning",
    )
    return (section,)


def _row(row: CautionRow) -> DetailRow:
    return DetailRow(row.text, label=row.meaning, note=row.source, picture="warning", tone=row.tone)
