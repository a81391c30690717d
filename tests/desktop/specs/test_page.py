"""The Specs page over the sample bar: finding, reading, writing, riffing, removing, undo."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QMessageBox, QPushButton, QWidget

from barkeep.application.bar import Bar
from barkeep.desktop.look.metrics import UNIT
from barkeep.desktop.screens.row_table import RowTable
from barkeep.desktop.specs.one_spec import line_parts
from barkeep.desktop.specs.page import SpecsScreen
from barkeep.desktop.specs.rows import spec_columns, spec_rows
from barkeep.desktop.widgets.labels import Link, LinkLabel
from barkeep.desktop.widgets.verdict_badge import verdict_width
from barkeep.domain.pouring.evening import evening_of
from barkeep.domain.pouring.memory import Memory
from barkeep.domain.pouring.verdict import VERDICTS
from barkeep.domain.pouring.verdicts import tonight
from barkeep.domain.specs.shown_lines import shown_lines
from barkeep.domain.specs.spec import Line
from tests.desktop.pages import shown_page
from tests.walked import walked

pytestmark = pytest.mark.qt_log_ignore("^This plugin does not support", extend=True)


FOG_LAMP = """Fog Lamp at the Far End of the Longest Platform on the Whole Branch Line
60 ml London dry gin
20 ml lemon juice
2 dashes orange bitters
Garnish: lemon peel
Glass: coupe

Shake with ice and strain.
"""
NAME = FOG_LAMP.splitlines()[0]


@pytest.fixture
def page(bar, qtbot, tmp_path):
    with shown_page(SpecsScreen, bar, qtbot, tmp_path) as shown:
        yield shown


@pytest.fixture
def screen(page):
    return page.screen


def shown(screen) -> list[str]:
    return [row.spec.name for row in screen.shown.shown_rows()]


def own_spec(bar):
    return bar.snapshot.specs[0]


def written(screen, text: str):
    """The editor with this text in it, read."""
    editor = screen.editor
    editor.text.setPlainText(text)
    editor.read()
    return editor


def links(screen) -> list[LinkLabel]:
    return [each for each in screen.detail.findChildren(LinkLabel) if each.links]


class TestModel:
    def test_it_keeps_to_the_rules_of_models(self, bar, qtmodeltester):
        model = RowTable(spec_columns())
        model.show_rows(spec_rows(bar.snapshot, Memory()))
        qtmodeltester.check(model, force_py=True)
        model.show_rows(spec_rows(bar.snapshot, Memory(), evening_of(bar.snapshot)))
        model.show_rows(())

    def test_every_spec_has_a_row(self, bar):
        rows = spec_rows(bar.snapshot, Memory())
        assert [row.spec for row in rows] == list(bar.snapshot.all_specs)

    def test_a_verdict_of_a_spec_as_it_was_before_is_not_shown(self, bar):
        evening = evening_of(bar.snapshot)
        before = own_spec(bar)
        bar.specs.replace(replace(before, notes="Changed since."))
        rows = {row.spec.id: row for row in spec_rows(bar.snapshot, Memory(), evening)}
        assert rows[before.id].placed is None and rows[before.id].drink() is None
        others = [row for key, row in rows.items() if key not in (before.id, None)]
        assert others and all(row.placed and row.drink() for row in others)


class TestFinding:
    def test_all_specs_are_there_with_their_verdicts(self, bar, screen):
        assert len(shown(screen)) == len(bar.snapshot.all_specs)
        verdicts = {drink.spec.name: drink.verdict for drink in tonight(bar.snapshot)}
        assert {row.spec.name: row.placed.verdict for row in screen.table.rows} == verdicts

    def test_a_family_finds_the_drinks_below_it(self, bar, screen):
        tree = bar.snapshot.knowledge.tree
        screen.search.set_text("whisky")
        wanted = [
            spec.name
            for spec in bar.snapshot.specs
            if any(tree.is_a(line.ingredient, "bourbon") for line in spec.lines)
        ]
        assert wanted
        assert set(wanted) <= set(shown(screen))
        assert len(shown(screen)) < len(screen.table.rows)

    def test_words_of_a_name_find_it_whatever_their_case(self, bar, screen):
        name = own_spec(bar).name
        screen.search.set_text(name.upper())
        assert name in shown(screen)

    def test_nothing_found_says_so_and_clearing_shows_all(self, screen):
        screen.search.set_text("zzyzx")
        screen.origins.choose("own")
        assert screen.list_stack.currentWidget() is screen.list_stack.no_match
        screen.list_stack.no_match.acted.emit()
        assert len(shown(screen)) == len(screen.table.rows)
        assert screen.list_stack.currentWidget() is screen.view

    def test_own_and_classics_part_the_book(self, bar, screen):
        screen.origins.choose("own")
        own = shown(screen)
        screen.origins.choose("classics")
        classics = shown(screen)
        assert set(own) == {spec.name for spec in bar.snapshot.specs}
        assert classics
        assert sorted(own + classics) == sorted(spec.name for spec in bar.snapshot.all_specs)

    def test_every_base_offered_leaves_something_and_only_that(self, bar, screen):
        tree = bar.snapshot.knowledge.tree
        assert screen.bases.count() > 3
        for number in range(1, screen.bases.count()):
            screen.bases.setCurrentIndex(number)
            kind = screen.bases.currentData()
            rows = screen.shown.shown_rows()
            assert rows
            assert all(
                any(tree.is_a(line.ingredient, kind) for line in row.spec.lines) for row in rows
            )

    def test_gin_is_one_base_whatever_the_gin(self, screen):
        offered = [screen.bases.itemText(number) for number in range(screen.bases.count())]
        assert "Gin" in offered
        assert "London dry gin" not in offered

    def test_sorting_by_tonight_puts_ready_drinks_first(self, screen):
        screen.view.sortByColumn(1, Qt.SortOrder.AscendingOrder)
        ranks = [VERDICTS.index(row.placed.verdict) for row in screen.shown.shown_rows()]
        assert ranks == sorted(ranks)

    def test_every_verdict_is_read_in_full_in_a_small_window(self, screen):
        room = screen.view.columnWidth(1) - 2 * UNIT
        font = screen.view.font()
        assert all(verdict_width(verdict, font) <= room for verdict in VERDICTS)

    @walked("column", range(6))
    def test_every_column_sorts_both_ways(self, screen, column):
        columns = screen.table.columns
        for order in (Qt.SortOrder.AscendingOrder, Qt.SortOrder.DescendingOrder):
            screen.view.sortByColumn(column, order)
            keys = [columns[column].sort_key(row) for row in screen.shown.shown_rows()]
            assert keys == sorted(keys, reverse=order == Qt.SortOrder.DescendingOrder)

    def test_a_thing_asked_for_is_chosen_though_a_filter_hid_it(self, bar, screen):
        name = own_spec(bar).name
        screen.origins.choose("classics")
        screen.show_thing(name)
        assert screen.current.spec.name == name


class TestDetails:
    def test_every_line_is_there_as_it_is_written(self, bar, screen):
        spec = own_spec(bar)
        screen.show_thing(spec.name)
        said = [label.plain_text for label in links(screen)]
        shown = shown_lines(spec, bar.snapshot.knowledge.tree, "as_written")
        assert [line.text for line in shown] == said[: len(spec.lines)]

    def test_an_ingredient_leads_to_its_stand_ins(self, bar, page):
        spec = own_spec(bar)
        page.screen.show_thing(spec.name)
        label = links(page.screen)[0]
        label.linkActivated.emit(label.links[0].target)
        assert page.went == [("stand-ins", spec.lines[0].ingredient)]

    def test_an_ingredient_can_be_followed_by_key(self, bar, page, qtbot):
        spec = own_spec(bar)
        page.screen.show_thing(spec.name)
        with qtbot.waitActive(page.screen.window()):
            page.screen.window().activateWindow()
        label = links(page.screen)[0]
        label.setFocus(Qt.FocusReason.TabFocusReason)
        qtbot.keyClick(label, Qt.Key.Key_Return)
        assert page.went == [("stand-ins", spec.lines[0].ingredient)]

    def test_tonight_is_asked_for_the_chosen_spec(self, bar, page):
        page.screen.show_thing(own_spec(bar).name)
        page.screen.show_tonight()
        assert page.went == [("tonight", own_spec(bar).name)]

    def test_a_riff_leads_to_what_it_riffs_on_and_back(self, bar, screen):
        original = own_spec(bar)
        screen.show_thing(original.name)
        screen.riff_current()
        screen.editor.save()
        riff = next(spec for spec in bar.snapshot.specs if spec.riff_of == original.name)
        assert screen.current.spec.name == riff.name
        back = next(each for each in links(screen) if each.plain_text.startswith("Riff of"))
        back.linkActivated.emit(back.links[0].target)
        assert screen.current.spec.name == original.name
        assert any(riff.name in each.plain_text for each in links(screen))

    def test_only_the_ingredient_of_a_line_is_linked(self, tree):
        gin = tree["london-dry-gin"]
        line = Line("60 ml LONDON DRY GIN, chilled", gin.key)
        assert line_parts(line, gin) == (
            "60 ml ",
            Link("LONDON DRY GIN", gin.key),
            ", chilled",
        )

    def test_a_line_that_does_not_name_its_ingredient_is_linked_whole(self, tree):
        gin = tree["london-dry-gin"]
        line = Line("as much as you like", gin.key, optional=True)
        assert line_parts(line, gin) == (Link(line.text, gin.key), " (optional)")

    def test_angle_brackets_in_a_spec_are_words(self, qtbot):
        label = LinkLabel(["<b>&", Link("<i>", "key")])
        qtbot.addWidget(label)
        assert label.plain_text == "<b>&<i>"
        assert "&lt;b&gt;&amp;" in label.text()


class TestWriting:
    def test_a_spec_that_is_typed_is_in_the_file(self, page, screen, qtbot, sample_bar, clock):
        screen.write_new()
        qtbot.keyClicks(screen.editor.text, NAME)
        for line in FOG_LAMP.splitlines()[1:]:
            qtbot.keyClick(screen.editor.text, Qt.Key.Key_Return)
            qtbot.keyClicks(screen.editor.text, line)
        assert screen.editor.text.toPlainText() == FOG_LAMP.rstrip("\n")
        qtbot.mouseClick(screen.editor.save_button, Qt.MouseButton.LeftButton)
        assert screen.current.spec.name == NAME
        assert page.toast.text == f"Added {NAME}"
        with Bar.open(sample_bar, clock=clock) as fresh:
            spec = fresh.specs.get(NAME)
        assert [line.ingredient for line in spec.lines] == [
            "london-dry-gin",
            "lemon-juice",
            "orange-bitters",
            "lemon-peel",
        ]
        assert (spec.lines[0].quantity, spec.glass) == (60.0, "coupe")
        assert spec.technique == "shaken"

    def test_undo_says_its_name_and_takes_the_spec_back(self, bar, page, screen, qtbot):
        screen.write_new()
        written(screen, FOG_LAMP).save()
        assert bar.undo_label == f"Add spec {NAME}"
        page.toast._on_act()
        assert NAME not in shown(screen)

    def test_a_problem_is_underlined_and_a_suggestion_mends_it(self, bar, screen):
        screen.write_new()
        editor = written(screen, FOG_LAMP.replace("lemon juice", "lemn juce"))
        (mark,) = editor.text.extraSelections()
        assert mark.cursor.selectedText() == "lemn juce"
        assert mark.cursor.blockNumber() == 2
        editor.save()
        assert "Line 3" in editor.banner.text
        assert "lemn juce" in editor.banner.text
        assert NAME not in {spec.name for spec in bar.snapshot.specs}
        assert len(editor.panel.fix_buttons) == 2
        editor.panel.fix_buttons[0].click()
        assert editor.text.toPlainText() == FOG_LAMP
        assert editor.seen.faults == ()
        assert editor.text.extraSelections() == []
        editor.save()
        assert NAME in {spec.name for spec in bar.snapshot.specs}

    def test_the_panel_follows_the_text_as_it_is_typed(self, screen, qtbot):
        screen.write_new()
        screen.editor.text.setPlainText(FOG_LAMP)
        qtbot.waitUntil(lambda: len(screen.editor.seen.specs) == 1)

    def test_a_name_that_is_taken_is_refused_in_place(self, bar, screen):
        before = bar.snapshot.specs
        screen.write_new()
        editor = written(screen, FOG_LAMP.replace(NAME, own_spec(bar).name.upper()))
        editor.save()
        assert "already" in editor.banner.text
        assert editor.isVisible()
        assert bar.snapshot.specs == before

    def test_a_name_taken_behind_the_editors_back_is_refused_too(self, bar, screen):
        screen.write_new()
        editor = written(screen, FOG_LAMP)
        bar.specs.add(editor.seen.usable)
        editor.save()
        assert "already" in editor.banner.text
        assert editor.isVisible()

    def test_nothing_written_says_what_to_write(self, screen):
        screen.write_new()
        screen.editor.save()
        assert "name" in screen.editor.banner.text
        assert screen.editor.save_button.isEnabled()

    def test_several_at_once_are_all_saved_as_one_step(self, bar, page, screen):
        screen.write_new()
        editor = written(screen, f"{FOG_LAMP}---\nSecond\n45 ml bourbon\n---\nThird\n45 ml bourbon")
        assert editor.save_button.text() == "Save 3 specs"
        editor.save()
        assert page.toast.text == "Added 3 specs"
        assert {NAME, "Second", "Third"} <= set(shown(screen))
        bar.undo()
        assert not {NAME, "Second", "Third"} & set(shown(screen))

    def test_of_several_with_one_problem_none_is_saved(self, bar, screen):
        before = bar.snapshot.specs
        screen.write_new()
        editor = written(screen, f"{FOG_LAMP}---\nSecond\n45 ml zzyzx")
        editor.save()
        assert bar.snapshot.specs == before
        assert editor.text.line == 11


class TestClosing:
    def test_nothing_new_closes_at_once(self, bar, screen):
        screen.show_thing(own_spec(bar).name)
        screen.edit_current()
        screen.editor.reject()
        assert screen.editor.question is None
        assert not screen.editor.isVisible()

    @pytest.mark.parametrize(("verb", "stays"), [("Keep writing", True), ("Discard", False)])
    def test_unsaved_words_are_asked_about(self, bar, screen, qtbot, verb, stays):
        screen.write_new()
        editor = written(screen, FOG_LAMP)
        editor.close()
        question = editor.question
        assert isinstance(question, QMessageBox)
        press(question, verb)
        assert editor.isVisible() == stays
        assert NAME not in {spec.name for spec in bar.snapshot.specs}
        if stays:
            assert editor.text.toPlainText() == FOG_LAMP

    def test_escape_keeps_writing(self, screen, qtbot):
        screen.write_new()
        editor = written(screen, FOG_LAMP)
        editor.reject()
        qtbot.keyClick(editor.question, Qt.Key.Key_Escape)
        assert editor.isVisible()


class TestCompletion:
    def typed(self, screen, qtbot, words: str):
        screen.write_new()
        editor = screen.editor
        qtbot.waitExposed(editor)
        editor.text.setPlainText("Fog Lamp\n60 ml ")
        editor.text.moveCursor(editor.text.textCursor().MoveOperation.End)
        qtbot.keyClicks(editor.text, words)
        return editor.text

    def test_tab_takes_the_first_name(self, screen, qtbot):
        text = self.typed(screen, qtbot, "creme de cass")
        assert text.offers[0] == "crème de cassis"
        qtbot.keyClick(text, Qt.Key.Key_Tab)
        assert text.toPlainText() == "Fog Lamp\n60 ml crème de cassis"
        assert text.offers == ()

    def test_enter_goes_on_below_where_no_name_is_chosen(self, screen, qtbot):
        text = self.typed(screen, qtbot, "gin")
        assert text.offers
        qtbot.keyClick(text, Qt.Key.Key_Return)
        assert text.toPlainText() == "Fog Lamp\n60 ml gin\n"

    def test_enter_takes_the_name_that_is_chosen(self, screen, qtbot):
        text = self.typed(screen, qtbot, "gin")
        second = text.offers[1]
        text.offer_list.setCurrentIndex(text.offer_list.model().index(1, 0))
        qtbot.keyClick(text, Qt.Key.Key_Return)
        assert text.toPlainText() == f"Fog Lamp\n60 ml {second}"

    def test_the_down_key_chooses_the_first_name(self, screen, qtbot):
        text = self.typed(screen, qtbot, "creme de cass")
        qtbot.keyClick(text.offer_list, Qt.Key.Key_Down)
        qtbot.keyClick(text.offer_list, Qt.Key.Key_Return)
        assert text.toPlainText() == "Fog Lamp\n60 ml crème de cassis"

    def test_a_click_takes_a_name(self, screen, qtbot):
        text = self.typed(screen, qtbot, "creme de cass")
        place = text.offer_list.visualRect(text.offer_list.model().index(0, 0)).center()
        qtbot.mouseClick(text.offer_list.viewport(), Qt.MouseButton.LeftButton, pos=QPoint(place))
        assert text.toPlainText() == "Fog Lamp\n60 ml crème de cassis"

    def test_escape_sends_the_names_away_and_keeps_the_editor(self, screen, qtbot):
        text = self.typed(screen, qtbot, "gin")
        qtbot.keyClick(text, Qt.Key.Key_Escape)
        assert text.offers == ()
        assert screen.editor.isVisible()
        assert screen.editor.question is None

    def test_names_are_not_offered_for_the_name_of_the_drink(self, screen, qtbot):
        screen.write_new()
        qtbot.keyClicks(screen.editor.text, "Gin")
        assert screen.editor.text.offers == ()


class TestChanging:
    def test_an_edit_changes_the_spec_and_keeps_its_identity(self, bar, page, screen):
        before = own_spec(bar)
        screen.show_thing(before.name)
        screen.edit_current()
        text = screen.editor.text.toPlainText()
        written(screen, text.replace(before.name, NAME, 1)).save()
        after = next(spec for spec in bar.snapshot.specs if spec.id == before.id)
        assert (after.name, after.added, after.lines) == (NAME, before.added, before.lines)
        assert page.toast.text == f"Changed {NAME}"
        assert screen.current.spec.id == before.id
        bar.undo()
        assert before in bar.snapshot.specs

    def test_an_edit_may_not_become_two_specs(self, bar, screen):
        before = bar.snapshot.specs
        screen.show_thing(before[0].name)
        screen.edit_current()
        text = screen.editor.text.toPlainText()
        editor = written(screen, f"{text}\n---\nSecond\n45 ml bourbon")
        editor.save()
        assert "one spec" in editor.banner.text
        assert bar.snapshot.specs == before

    def test_a_classic_cannot_be_edited_or_removed_and_says_so(self, bar, screen):
        classic = bar.snapshot.knowledge.classics[0]
        screen.show_thing(classic.name)
        screen.edit_current()
        assert screen.editor is None
        assert classic.name in screen.banner.text
        screen.remove_current()
        assert "removed" in screen.banner.text
        screen.banner._on_act()
        assert screen.editor.text.toPlainText().splitlines()[1] == f"Riff of: {classic.name}"

    def test_a_riff_starts_with_its_name_selected(self, bar, screen):
        screen.show_thing(own_spec(bar).name)
        screen.riff_current()
        assert screen.editor.text.textCursor().selectedText() == f"{own_spec(bar).name} riff"

    def test_remove_and_undo_by_name(self, bar, page, screen):
        spec = own_spec(bar)
        screen.show_thing(spec.name)
        screen.remove_current()
        assert spec.name not in shown(screen)
        assert page.toast.text == f"Removed {spec.name}"
        assert bar.undo_label == f"Remove spec {spec.name}"
        page.toast._on_act()
        assert spec in bar.snapshot.specs
        assert spec.name in shown(screen)


class TestKeys:
    def test_every_action_has_a_shortcut_of_its_own(self, screen):
        keys = [action.shortcut().toString() for action in screen.bar_actions]
        assert all(keys)
        assert len(keys) == len(set(keys)) == 8

    def test_ctrl_n_writes_and_delete_removes(self, bar, screen, qtbot):
        with qtbot.waitActive(screen.window()):
            screen.window().activateWindow()
        spec = own_spec(bar)
        screen.show_thing(spec.name)
        screen.focus_list()
        qtbot.keyClick(screen.view, Qt.Key.Key_Delete)
        assert spec.name not in shown(screen)
        qtbot.keyClick(screen.view, Qt.Key.Key_N, Qt.KeyboardModifier.ControlModifier)
        assert screen.editor is not None
        assert screen.editor.isVisible()

    def test_everything_that_takes_the_focus_has_a_name(self, screen):
        screen.write_new()
        written(screen, FOG_LAMP.replace("gin", "gni"))
        for root in (screen, screen.editor):
            for widget in root.findChildren(QWidget):
                own = type(widget).__module__.startswith("barkeep")
                spare = isinstance(widget, QPushButton) and not widget.text()
                if spare and not widget.isVisibleTo(root):
                    continue  # kept for what is offered later; it is given its name as it is shown
                if own and widget.focusPolicy() & Qt.FocusPolicy.TabFocus:
                    assert widget.accessibleName(), widget


class TestEmptyBook:
    def test_a_book_without_specs_offers_to_write_one(self, bar, qtbot, tmp_path, monkeypatch):
        known = replace(bar.snapshot.knowledge, classics=())
        bare = replace(bar.snapshot, specs=(), knowledge=known)
        monkeypatch.setattr(Bar, "snapshot", property(lambda _bar: bare))
        with shown_page(SpecsScreen, bar, qtbot, tmp_path) as made:
            stack = made.screen.list_stack
            assert stack.currentWidget() is stack.empty
            stack.empty.buttons[0].click()
            assert made.screen.editor.isVisible()


def press(question: QMessageBox, verb: str) -> None:
    """Press the button that says this."""
    next(each for each in question.buttons() if verb in each.text().replace("&", "")).click()
