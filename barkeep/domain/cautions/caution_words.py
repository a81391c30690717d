"""Cautions as they are read, each with the source behind it, and as data."""

from __future__ import annotations

from collections.abc import Iterable

from barkeep.domain.cautions.cautions import IN_GENERAL, Caution
from barkeep.translation import tr


def cautions_json(cautions: Iterable[Caution]) -> list[dict[str, str]]:
    """Each caution with its tier: *now*, *allergen* or *general*."""
    return [
        {"key": each.key, "tier": each.tier, "text": each.text, "source": each.source}
        for each in cautions
    ]


def cautions_in_brief(cautions: Iterable[Caution]) -> tuple[str, ...]:
    """Those of a drink itself with their source, then all the general ones in one sentence."""
    cautions = tuple(cautions)
    own = (caution_in_words(each) for each in cautions if each.tier != "general")
    return (*own, *([tr(IN_GENERAL)] if any(each.general for each in cautions) else []))


def caution_in_words(caution: Caution) -> str:
    """A caution with the source behind it, where there is one."""
    return f"{caution.text} {caution.source}".rstrip()
