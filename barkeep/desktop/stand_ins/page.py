"""Stand-ins: what may be poured instead, how close it is, and what never may."""

from __future__ import annotations

from collections.abc import Hashable, Iterable, Mapping
from dataclasses import dataclass
from functools import partial

from PySide6.QtCore import QModelIndex, QPoint, Qt
from PySide6.QtGui import QKeySequence
from PySide6.QtWidgets import QCheckBox, QComboBox, QMenu, QWidget

from barkeep.application.owner_knowledge import Standing
from barkeep.desktop.ingredients.own_ingredient import OwnIngredientDialog
from barkeep.desktop.screens.row_table import Column
from barkeep.desktop.screens.screen import ScreenContext
from barkeep.desktop.screens.table_screen import TableScreen, sort_by
from barkeep.desktop.stand_ins.neighbourhood import NeighbourPicture, Neighbours
from barkeep.desktop.stand_ins.own_stand_in import OwnStandInDialog
from barkeep.desktop.widgets.buttons import offer, offer_choices, primary_button
from barkeep.desktop.widgets.delegates import SUBTITLE_ROLE
from barkeep.desktop.widgets.detail_bar import DetailActs
from barkeep.desktop.widgets.details import DetailRow, DetailSection
from barkeep.desktop.widgets.empty_state import EmptyState
from barkeep.domain.bar.changes import Changes
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.cautions.allergens import allergens_of
from barkeep.domain.ingredients.derivations import EXACT
from barkeep.domain.ingredients.own import figures_in_words
from barkeep.domain.ingredients.relations import StandIn
from barkeep.domain.phrases import as_sentence, capitalised, counted
from barkeep.domain.pouring.words import plain_amount
from barkeep.domain.specs.spec import Spec
from barkeep.domain.stand_ins.neighbourhood import Neighbourhood, neighbourhood
from barkeep.domain.stand_ins.offers import FalseFriend, Offer, StandIns, or_buy_in_words, stand_in
from barkeep.domain.stand_ins.words import closeness_in_words, own_for, scope_in_words
from barkeep.translation import tr, tr_noop

NOBODYS: Mapping[str, Standing] = {}
MARKS: dict[Standing, str] = {
    "known": "",
    "own": tr_noop("own"),
    "changed": tr_noop("changed by you"),
}
"""What marks an ingredient of the owner's beside its family, and finds it."""


@dataclass(frozen=True, slots=True)
class IngredientRow:
    """One ingredient with the words around it, and what the bar holds of it in its unit.

    `amount` is None for what is always there.
    """

    key: str
    name: str
    family: str
    search: str
    amount: float | None
    there: str
    standing: Standing = "known"


def ingredient_rows(
    snapshot: Snapshot, standings: Mapping[str, Standing] = NOBODYS
) -> tuple[IngredientRow, ...]:
    """Every ingredient a line can ask for, groupings left out."""
    tree = snapshot.knowledge.tree
    asked_for = (key for key in tree if not tree[key].family)
    return tuple(_row(key, snapshot, standings.get(key, "known")) for key in asked_for)


def ingredient_columns() -> tuple[Column[IngredientRow], ...]:
    """The name with its family, and what is there."""
    return (
        Column(
            tr("Ingredient"), lambda row: row.name, roles={SUBTITLE_ROLE: lambda row: row.family}
        ),
        Column(
            tr("In the bar"),
            lambda row: row.there,
            key=lambda row: float("inf") if row.amount is None else row.amount,
            right=True,
        ),
    )


def _row(key: str, snapshot: Snapshot, standing: Standing) -> IngredientRow:
    tree = snapshot.knowledge.tree
    ingredient = tree[key]
    family = ", ".join(tree.name(parent) for parent in ingredient.parents)
    above = " ".join(tree.name(each) for each in tree.ancestors(key))
    mark = tr(MARKS[standing]) if standing != "known" else ""
    search = " ".join((*ingredient.all_names, above, mark))
    amount: float | None = sum(each.level.amount for each in snapshot.usable.get(key, ()))
    there = plain_amount(amount or 0.0, ingredient.unit) if amount else "—"
    if key in snapshot.always_there:
        amount, there = None, tr("always there")
    return IngredientRow(
        key=key,
        name=tree.name(key),
        family=" · ".join(each for each in (family, mark) if each),
        search=search,
        amount=amount,
        there=there,
        standing=standing,
    )


ADD, REMOVE = tr_noop("Add a stand-in…"), tr_noop("Remove my stand-in")
REMOVE_ONE = tr_noop("Remove my stand-in…")
CHANGE, FORGET = tr_noop("Change ingredient…"), tr_noop("Remove ingredient")


FOR_ANY = tr_noop("For any drink")
BACK = tr_noop("&Back to the neighbour before\tBackspace")
LIST, DETAIL = 2, 3
"""How list and details share the width: the answer needs more room than the names."""
TO_BE_BOUGHT = tr_noop("Would stand in, once bought")
YOUR_OWN, BY_YOUR_OWN = tr_noop("your own"), tr_noop("by way of your own")


def _asked(snapshot: Snapshot, key: str, spec: Spec | None) -> tuple[StandIns, Neighbourhood]:
    return (
        stand_in(snapshot, key, spec),
        neighbourhood(snapshot.knowledge, snapshot.owned, key),
    )


class StandInsScreen(TableScreen[IngredientRow]):
    """Choose an ingredient, and the drink it is for; the details are the answer."""

    key = "stand-ins"
    title = tr_noop("Stand-ins")
    noun = tr_noop("ingredients")
    search_hint = tr_noop("Search ingredients and other names for them…")

    def __init__(self, context: ScreenContext, parent: QWidget | None = None) -> None:
        self._tree = context.bar.snapshot.knowledge.tree
        empty = EmptyState("picture-empty-shelf", tr("No ingredients"), tr("Nothing is known yet"))
        super().__init__(context, ingredient_columns(), empty, parent)
        self.missing_only = QCheckBox(tr("Only what is not in the bar"))
        self.missing_only.toggled.connect(lambda _on: self.filter_again())
        self.drinks = QComboBox()
        self.drinks.setAccessibleName(tr("For which drink"))
        self.drinks.setMinimumContentsLength(18)
        self.drinks.setSizeAdjustPolicy(
            QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
        )
        self.drinks.addItem(tr(FOR_ANY), None)
        self.drinks.currentIndexChanged.connect(lambda _index: self._ask())
        self.neighbours = Neighbours()
        picture: NeighbourPicture = self.neighbours.picture
        picture.walked.connect(self.walk_to)
        picture.back.connect(self.walk_back)
        self._trail: list[str] = []
        """Where one came from, the last place last."""
        self._walking_to = ""
        self.add_button = primary_button(ADD, self.add_stand_in, "add")
        self.add_header_button(self.add_button)
        keys = QKeySequence.StandardKey
        self.add_action = self.new_action(
            tr_noop("&Add a stand-in…"), self.add_stand_in, keys.New, picture="add"
        )
        self.remove_action = self.new_action(
            tr_noop("Remo&ve my stand-in"), self.remove_own, keys.Delete, picture="remove"
        )
        self.teach_action = self.new_action(
            tr_noop("&New ingredient…"), self.teach, "Ctrl+Shift+N", picture="add"
        )
        self.change_action = self.new_action(
            tr_noop("C&hange ingredient…"), self.change_ingredient, "F2"
        )
        self.forget_action = self.new_action(
            tr_noop("Re&move ingredient"),
            self.remove_ingredient,
            "Shift+Del",
            picture="remove",
        )
        self.back_action = self.new_action(BACK, self.walk_back)
        for action in (
            self.add_action,
            self.remove_action,
            self.teach_action,
            self.change_action,
            self.forget_action,
            self.back_action,
        ):
            self.add_bar_action(action)
        self.add_filter(self.missing_only)
        self.add_filter(self.drinks)
        self.splitter.setStretchFactor(0, LIST)
        self.splitter.setStretchFactor(1, DETAIL)
        self.splitter.setSizes([420, 560])
        self.waiting.dim(self.detail)  # what is worked on is one ingredient, not the list
        self.view.setColumnWidth(0, 220)
        sort_by(self.view, 0)

    def refresh(self, changes: Changes) -> None:
        snapshot = self.context.bar.snapshot
        self._tree = snapshot.knowledge.tree
        self.show_rows(ingredient_rows(snapshot, self.context.bar.knowledge.standings))
        there = sum(row.amount != 0.0 for row in self.table.rows)
        self.summary.setText(
            tr(
                "{there} of {all} known ingredients are in the bar",
                there=there,
                all=len(self.table.rows),
            )
        )

    def identity(self, row: IngredientRow) -> Hashable:
        return row.key

    def words(self, row: IngredientRow) -> str:
        return row.search

    def accepts(self, row: IngredientRow) -> bool:
        return not self.missing_only.isChecked() or row.amount == 0.0

    def clear_filters(self) -> None:
        self.missing_only.setChecked(False)
        super().clear_filters()

    def offer_actions(self) -> None:
        is_chosen = self.current is not None
        first = "" if is_chosen else tr("Choose an ingredient first")
        offer(self.add_action, first)
        offer(self.add_button, first)
        offer(
            self.remove_action, first or ("" if self._own else tr("No stand-in for it is your own"))
        )
        is_own = self.current is not None and self.current.standing != "known"
        offer(self.back_action, "" if self._trail else tr("Nobody has walked among neighbours yet"))
        for action in (self.change_action, self.forget_action):
            offer(action, first or ("" if is_own else tr("It is not an ingredient of your own")))

    def show_row(self, row: IngredientRow | None) -> None:
        if row is not None and row.key not in (self._walking_to, self._shown_around):
            self._trail.clear()
        if row is None:
            self.ask_no_more()
            self.detail.clear()
            return
        self._offer_drinks(row.key)
        self._ask()

    # What the user does

    def walk_to(self, key: str) -> None:
        """Go on to a neighbour; *back* leads here again."""
        here = self._shown_around
        self._walk(key)
        if here:
            self._trail.append(here)
        self.offer_actions()

    def walk_back(self) -> None:
        """Go where one came from."""
        if self._trail:
            self._walk(self._trail.pop())
            self.offer_actions()

    @property
    def _shown_around(self) -> str:
        """The key whose neighbours are shown."""
        around = self.neighbours.picture.around
        return "" if around is None else around.of

    def _walk(self, key: str) -> None:
        """Choose a kind in the list; a family, which no line asks for, is in none."""
        self._walking_to = key
        if self._tree[key].family:
            self._show_family(key)
        elif not self.choose(key):
            self.show_thing(key)
        self._walking_to = ""

    def _show_family(self, key: str) -> None:
        has_focus = self.neighbours.picture.hasFocus()
        self.view.setCurrentIndex(QModelIndex())
        snapshot = self.context.bar.snapshot
        around = neighbourhood(snapshot.knowledge, snapshot.owned, key)
        self.neighbours.picture.show_neighbourhood(around)
        self.detail.show_details(
            around.name, tr("A family, which no line asks for"), top=self.neighbours
        )
        if has_focus:
            self.neighbours.picture.setFocus(Qt.FocusReason.OtherFocusReason)

    def add_stand_in(self) -> None:
        """Ask what may be poured instead of the chosen ingredient."""
        row = self.current
        if row is None:
            return
        self.clear_refusal()
        dialog = OwnStandInDialog(self.context.bar, row.key, self)
        dialog.added.connect(self._on_added)
        self.open_dialog(dialog)

    def teach(self) -> None:
        """Ask for an ingredient of the owner's own, begun with what nothing was found by."""
        words = "" if self.shown.rowCount() else self.search.text.strip()
        self._open_form(
            OwnIngredientDialog(self.context.bar, words, parent=self),
            tr_noop("{name} is known now"),
        )

    def change_ingredient(self) -> None:
        """Change the chosen ingredient of the owner's own."""
        row = self.current
        if row is not None and row.standing != "known":
            dialog = OwnIngredientDialog(self.context.bar, changes=row.key, parent=self)
            self._open_form(dialog, tr_noop("{name} is changed"))

    def remove_ingredient(self) -> None:
        """Take the chosen ingredient of the owner's own back."""
        row = self.current
        if row is None or row.standing == "known":
            return
        self.clear_refusal()
        said = tr("Removed your ingredient {name}", name=row.name)
        if row.standing == "changed":
            said = tr("What barkeep itself knows of {name} counts again", name=row.name)
        remove = partial(self.context.bar.knowledge.remove_ingredient, row.key)
        self.do(remove, say=said)
        self.focus_list()

    def _open_form(self, dialog: OwnIngredientDialog, became: str) -> None:
        self.clear_refusal()
        dialog.taught.connect(partial(self._on_taught, became))
        self.open_dialog(dialog)

    def _on_taught(self, became: str, key: str) -> None:
        self.show_thing(key)
        self.say_done(tr(became, name=self._tree.name(key)))

    def remove_own(self) -> None:
        """Take the owner's stand-in back; of several, ask which."""
        own = self._own
        if len(own) == 1:
            self._remove(own[0])
        elif own:
            self._ask_which(own)

    def _ask_which(self, own: tuple[StandIn, ...]) -> None:
        self.dialog = menu = QMenu(self)
        menu.setAccessibleName(tr(REMOVE))
        menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        for entry in own:
            action = menu.addAction(self._tree.name(entry.offered).replace("&", "&&"))
            action.triggered.connect(partial(self._remove, entry))
        menu.setActiveAction(menu.actions()[0])
        menu.popup(self._below_button())

    def _below_button(self) -> QPoint:
        bar = self.detail.bar
        near = bar if bar.isVisible() else self.view
        corner = near.rect().bottomLeft() if near is bar else near.rect().center()
        return near.mapToGlobal(corner)

    def _remove(self, entry: StandIn, _checked: bool = False) -> None:
        remove = partial(self.context.bar.knowledge.remove_stand_in, entry.wanted, entry.offered)
        self.do(remove, say=tr("Removed your stand-in {name}", name=self._name(entry.offered)))
        # The details, and with them the button that was pressed, are built anew.
        self.focus_list()

    def _on_added(self, entry: StandIn) -> None:
        offered = self._tree.name(entry.offered)
        self.say_done(
            tr("{offered} stands in for {wanted}", offered=offered, wanted=self._name(entry.wanted))
        )

    def _name(self, key: str) -> str:
        return self._tree.in_sentence(key)

    # The rest

    @property
    def _own(self) -> tuple[StandIn, ...]:
        """The owner's stand-ins for the chosen ingredient."""
        row = self.current
        return () if row is None else own_for(self.context.bar.snapshot.knowledge, row.key)

    def _acts(self) -> DetailActs:
        """An own stand-in or ingredient is added, changed or taken back; the rest under More."""
        own, row = self._own, self.current
        often = [self.offered(self.add_action)]
        more = [self.offered(self.teach_action)]
        if own:
            words = REMOVE if len(own) == 1 else REMOVE_ONE
            often.append(self.offered(self.remove_action, words))
        if row is not None and row.standing != "known":
            often.append(self.offered(self.change_action, CHANGE))
            more.append(self.offered(self.forget_action, FORGET))
        return DetailActs(tuple(often), tuple(more))

    def _offer_drinks(self, key: str) -> None:
        """The drinks with a line that asks for it; the choice stays where it still stands."""
        using = [
            (tr("For {drink}", drink=spec.name), spec.name)
            for spec in self.context.bar.snapshot.all_specs
            if any(key == each.ingredient or key in each.alternatives for each in spec.lines)
        ]
        offer_choices(self.drinks, [(tr(FOR_ANY), None), *using])
        self.drinks.setEnabled(bool(using))
        self.drinks.setToolTip("" if using else tr("No spec has a line that asks for it"))

    def _chosen_spec(self) -> Spec | None:
        name = self.drinks.currentData()
        specs = self.context.bar.snapshot.all_specs
        return next((spec for spec in specs if spec.name == name), None)

    def _ask(self) -> None:
        row = self.current
        if row is None:
            return
        snapshot = self.context.bar.snapshot
        question = partial(_asked, snapshot, row.key, self._chosen_spec())
        self.ask(question, self._show_answer, tr("Working out what stands in…"))

    def _show_answer(self, answered: tuple[StandIns, Neighbourhood]) -> None:
        answer, around = answered
        row = self.current
        if row is None or row.key != answer.wanted:
            return
        there = row.there if row.amount != 0.0 else tr("not in the bar")
        about = f"{row.family} · {there}".strip(" ·")
        self.neighbours.picture.show_neighbourhood(around)
        sections = tuple(self._sections(answer))
        self.offer_actions()  # or what is offered would go by the row before
        self.detail.show_details(row.name, about, sections, top=self.neighbours, acts=self._acts())

    def _sections(self, answer: StandIns) -> Iterable[DetailSection]:
        row = self.current
        if row is not None and row.standing != "known":
            yield DetailSection(tr("Your own ingredient"), tuple(self._facts(row.key)))
        if answer.none_because:
            said = tr("Nothing stands in for it: {because}.", because=tr(answer.none_because))
            yield DetailSection(
                tr("Nothing stands in"), (DetailRow(said, picture="verdict-short", tone="short"),)
            )
        for heading, owned in ((tr("Pour instead, from the bar"), True), (tr(TO_BE_BOUGHT), False)):
            offers = [each for each in answer.stand_ins if each.owned == owned]
            if offers:
                rows = tuple(map(self._offer, offers))
                brief = ", ".join(self._tree.name(each.ingredient) for each in offers[:3])
                fold = "owned" if owned else "to-buy"
                opens = owned or not any(each.owned for each in answer.stand_ins)
                yield DetailSection(heading, rows, fold=fold, brief=brief, opens=opens)
        taken = {entry for offer in answer.stand_ins for entry in offer.derivation.stand_ins}
        own = own_for(self.context.bar.snapshot.knowledge, answer.wanted)
        left_out = [entry for entry in own if entry not in taken]
        if left_out:
            rows = tuple(map(self._left_out, left_out))
            yield DetailSection(tr("Your own, not offered here"), rows)
        if answer.confusables:
            rows = tuple(map(self._false_friend, answer.confusables))
            yield DetailSection(tr("Not the same, never pour it instead"), rows)

    def _facts(self, key: str) -> Iterable[DetailRow]:
        """What the owner says of an ingredient of their own."""
        of = self.context.bar.knowledge.as_said(key)
        kinds = ", ".join(map(self._tree.in_sentence, of.parents))
        carried = [tr(each.word) for each in allergens_of([key], self._tree)]
        figures = figures_in_words(of)
        as_kind = figures_in_words(self._tree[key], of)
        days = of.shelf_life_days
        for said, label in (
            (kinds, tr("A kind of")),
            (", ".join(of.aliases), tr("Other names")),
            (", ".join(figures), tr("Figures")),
            (", ".join(as_kind), tr("As its kind")),
            (
                "" if days is None else counted(days, "day"),
                tr("Keeps"),
            ),
            (", ".join(carried), tr("Allergens")),
        ):
            if said:
                yield DetailRow(said, label=label)

    def _offer(self, offer: Offer) -> DetailRow:
        name = self._tree.name(offer.ingredient)
        if offer.bottle is not None:
            name = f"{name}: {offer.bottle.product.title}"
        lacking = ", ".join(
            self._tree.name(key) for key in offer.missing if key != offer.ingredient
        )
        yours = [each for each in offer.derivation.stand_ins if each.own]
        notes = [offer.why, *filter(None, map(scope_in_words, yours))]
        if offer.corrections:
            changes = "; ".join(offer.corrections)
            notes.append(f"{capitalised(changes)}.")
        if lacking:
            notes.append(tr("To be bought: {lacking}.", lacking=lacking))
        if offer.or_buy:
            notes.append(tr("Or buy {names}.", names=or_buy_in_words(offer, self._tree)))
        exact = offer.closeness >= EXACT
        closeness = closeness_in_words(offer.closeness)
        if yours:
            itself = any(each.offered == offer.ingredient for each in yours)
            name = f"{name} · {tr(YOUR_OWN if itself else BY_YOUR_OWN)}"
        return DetailRow(
            name,
            label=closeness,
            note=f"{closeness}. {' '.join(notes)}",
            picture="verdict-ready" if exact else "verdict-stand-in",
            tone="ready" if exact else "stand_in",
        )

    def _left_out(self, entry: StandIn) -> DetailRow:
        """An own stand-in that is too far, or does not hold for the chosen drink."""
        closeness = closeness_in_words(entry.closeness)
        note = f"{closeness}. {as_sentence(tr(entry.why))} {scope_in_words(entry)}".rstrip()
        name = f"{self._tree.name(entry.offered)} · {tr(YOUR_OWN)}"
        return DetailRow(name, label=closeness, note=note, picture="info", tone="muted")

    def _false_friend(self, friend: FalseFriend) -> DetailRow:
        why = capitalised(tr(friend.why))
        return DetailRow(
            self._tree.name(friend.ingredient), note=why, picture="warning", tone="warning"
        )
