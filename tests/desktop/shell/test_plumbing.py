"""What runs beneath the pages: background answers, use cases, faults, memory, bar signals."""

from __future__ import annotations

import sys
import threading

import pytest
from PySide6.QtCore import QByteArray, QCoreApplication, QThread
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QWidget

from barkeep.desktop.screens.background import Background
from barkeep.desktop.screens.operations import run_operation
from barkeep.desktop.screens.window_state import WindowState
from barkeep.desktop.shell.faults import CrashDialog, Faults, details_of
from barkeep.desktop.shell.main_window import BarSignals
from barkeep.errors import NothingToUndo, UnknownName, UserError
from tests.desktop.audit import cut_off, focusable_without_name
from tests.desktop.patience import WAIT_S


@pytest.fixture
def background(qtbot):
    """A background that is done before the test is."""
    made = Background()
    yield made
    made.finish()


# Background


def test_a_question_runs_elsewhere_and_its_answer_comes_here(background, qtbot):
    threads: list[object] = []
    background.ask(
        "who", lambda: threading.get_ident(), lambda ident: threads.append((ident, here()))
    )
    qtbot.waitUntil(lambda: bool(threads))
    asked_on, answered_on = threads[0]
    assert asked_on != answered_on == here()


def here() -> int:
    return threading.get_ident()


def test_the_latest_question_of_a_kind_wins(background, qtbot):
    go = threading.Event()
    answers: list[str] = []
    background.ask("tonight", lambda: go.wait(WAIT_S) and "first", answers.append)
    for word in ("second", "third"):
        background.ask("tonight", lambda word=word: word, answers.append)
    background.ask("other", lambda: "beside", answers.append)
    go.set()
    qtbot.waitUntil(lambda: not background.is_busy)
    assert answers == ["third", "beside"]


def test_questions_of_other_kinds_are_all_answered(background, qtbot):
    answers: list[int] = []
    for number in range(5):
        background.ask(str(number), lambda number=number: number, answers.append)
    qtbot.waitUntil(lambda: len(answers) == 5)
    assert answers == list(range(5))


def test_a_forgotten_question_is_not_answered(background, qtbot):
    go = threading.Event()
    answers: list[object] = []
    background.ask("tonight", lambda: go.wait(WAIT_S), answers.append)
    background.forget("tonight")
    go.set()
    qtbot.waitUntil(lambda: not background.is_busy)
    assert answers == []


def test_busy_is_told_from_the_first_question_to_the_last_answer(background, qtbot):
    told: list[tuple[int, bool]] = []
    assert not background.is_busy
    for number in (1, 2):
        ask = lambda number=number: number  # noqa: E731
        background.ask(str(number), ask, lambda answer: told.append((answer, background.is_busy)))
    assert background.is_busy
    qtbot.waitUntil(lambda: len(told) == 2)
    assert told == [(1, True), (2, False)]


def test_what_is_done_soon_is_awaited_and_only_the_newest_of_its_key(background, qtbot):
    done: list[str] = []
    for key, word in (("a", "old"), ("a", "new"), ("b", "b"), ("c", "c")):
        background.soon(key, lambda word=word: done.append(word))
    assert background.is_busy and not done
    background.forget("b")
    for _ in range(2):
        background.at_once("c")
    assert done == ["c"]
    qtbot.waitUntil(lambda: not background.is_busy)
    assert done == ["c", "new"]
    background.soon("a", lambda: done.append("forgotten"))
    background.forget("a")
    with qtbot.waitSignal(background.idle):  # for whoever waits until nothing is to be done
        pass
    background.soon("a", lambda: done.append("late"))
    background.finish()
    background.soon("a", lambda: done.append("later"))
    assert not background.is_busy
    QCoreApplication.processEvents()
    assert done == ["c", "new"]


def refuse(error: Exception):
    """A question that cannot be answered."""

    def ask() -> None:
        raise error

    return ask


def test_a_refusal_goes_to_who_asked(background, qtbot):
    refused: list[UserError] = []
    error = UnknownName("ingredient", "gni")
    background.ask("stand-in", refuse(error), lambda _answer: None, refused.append)
    qtbot.waitUntil(lambda: bool(refused))
    assert refused == [error]


def test_a_fault_in_a_question_is_raised_here_and_the_next_is_answered(background, qtbot):
    answers: list[int] = []
    with qtbot.captureExceptions() as caught:
        background.ask("bad", refuse(ZeroDivisionError("kaboom")), lambda _answer: None)
        background.ask("good", lambda: 7, answers.append)
        qtbot.waitUntil(lambda: bool(answers))
    assert [str(each[1]) for each in caught] == ["kaboom"]


def test_finishing_waits_for_what_runs_and_answers_nothing(background, qtbot):
    ran: list[int] = []
    background.ask("tonight", lambda: ran.append(1), lambda _answer: pytest.fail("answered"))
    QCoreApplication.processEvents()  # a question begins once the window has nothing else to do
    background.finish()
    assert ran == [1]


# Use cases


class Place(QWidget):
    """A widget with a place for refusals."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.said: list[str] = []

    def show_refusal(self, error: UserError) -> None:
        self.said.append(str(error))

    def clear_refusal(self) -> None:
        self.said.append("")


@pytest.fixture
def place(qtbot):
    made = Place()
    qtbot.addWidget(made)
    return made


def test_what_is_done_is_handed_on(place):
    done: list[int] = []
    assert run_operation(place, lambda: 5, done.append)
    assert done == [5]


def test_a_refusal_is_shown_at_the_nearest_place_and_taken_away_again(place):
    inside = QWidget(QWidget(place))
    assert not run_operation(inside, refuse(NothingToUndo("undo")))
    assert place.said == ["There is nothing to undo."]
    assert run_operation(inside, lambda: None)
    assert place.said[-1] == ""


def test_a_refusal_may_be_taken_by_who_called(place):
    refused: list[UserError] = []
    assert not run_operation(place, refuse(NothingToUndo("redo")), None, refused.append)
    assert (len(refused), place.said) == (1, [])


def test_a_fault_is_reported_and_the_program_goes_on(place, monkeypatch):
    met: list[BaseException] = []
    monkeypatch.setattr(sys, "excepthook", lambda _kind, error, _trace: met.append(error))
    assert not run_operation(place, refuse(ZeroDivisionError("kaboom")))
    assert [str(each) for each in met] == ["kaboom"]
    assert place.said == []


# Faults


@pytest.fixture
def faults(tmp_path, qapp, monkeypatch):
    """Faults caught for one test."""
    monkeypatch.setattr(sys, "excepthook", sys.excepthook)
    monkeypatch.setattr(threading, "excepthook", threading.excepthook)
    made = Faults(tmp_path / "barkeep.log")
    made.catch()
    yield made
    made.stop()


def boom() -> None:
    raise ZeroDivisionError("kaboom")


def test_an_uncaught_error_is_written_down_and_told(faults, qtbot):
    with qtbot.waitSignal(faults.met) as told:
        try:
            boom()
        except ZeroDivisionError as error:
            sys.excepthook(type(error), error, error.__traceback__)
    assert "ZeroDivisionError: kaboom" in told.args[0]
    assert "in boom" in told.args[0]
    assert "ZeroDivisionError: kaboom" in faults.log.read_text(encoding="utf-8")


def test_an_error_of_another_thread_is_told_here(faults, qtbot):
    heard: list[QThread] = []
    faults.met.connect(lambda _details: heard.append(QThread.currentThread()))
    with qtbot.waitSignal(faults.met):
        thread = threading.Thread(target=boom)
        thread.start()
        thread.join()
    assert heard == [QThread.currentThread()]


def test_after_stopping_everything_is_as_it_was(tmp_path, qapp, monkeypatch):
    before = sys.excepthook
    faults = Faults(tmp_path / "barkeep.log")
    faults.catch()
    assert sys.excepthook is not before
    faults.stop()
    assert sys.excepthook is before


def test_the_crash_dialog_copies_its_details_and_takes_more(qtbot, tmp_path):
    dialog = CrashDialog("first fault", tmp_path / "barkeep.log")
    qtbot.addWidget(dialog)
    dialog.show()
    dialog.add("second fault")
    dialog.copy()
    copied = QGuiApplication.clipboard().text()
    assert "first fault" in copied
    assert "second fault" in copied
    assert cut_off(dialog) == []
    assert focusable_without_name(dialog) == []


def test_details_name_the_versions_and_the_place():
    try:
        boom()
    except ZeroDivisionError as error:
        details = details_of(error)
    for word in ("barkeep ", "Python 3.", "Qt 6.", "in boom", "kaboom"):
        assert word in details


# Memory


def test_every_kind_of_value_comes_back_as_it_was(tmp_path):
    first = WindowState(tmp_path / "window.ini")
    first.keep_text("a/text", "größe, “quoted”; = [x]")
    first.keep_data("a/data", QByteArray(bytes(range(256))))
    first.write()
    second = WindowState(tmp_path / "window.ini")
    assert second.text("a/text") == "größe, “quoted”; = [x]"
    assert bytes(second.data("a/data").data()) == bytes(range(256))


def test_what_was_never_kept_is_the_default(tmp_path):
    state = WindowState(tmp_path / "window.ini")
    assert state.text("x", "d") == "d"
    assert state.data("x").isEmpty()


def test_a_file_with_nonsense_gives_defaults(tmp_path):
    path = tmp_path / "window.ini"
    path.write_text("[a]\nwords={\nflag=maybe\ntext=one, two\n", encoding="utf-8")
    state = WindowState(path)
    assert state.text("a/text", "d") == "d"


def test_forgetting_takes_everything_below_as_well(tmp_path):
    state = WindowState(tmp_path / "window.ini")
    state.keep_text("page/columns", "x")
    state.forget("page")
    assert state.text("page/columns") == ""


# Signals of a bar


def test_a_bars_changes_become_a_signal_until_stopped(bar, qtbot):
    signals = BarSignals(bar)
    told: list[frozenset[str]] = []
    signals.changed.connect(told.append)
    bottle = next(each for each in bar.snapshot.bottles if each.level.state == "open")
    bar.inventory.empty(bottle.id)
    assert told == [frozenset({"bottles"})]
    signals.stop()
    bar.undo()
    assert len(told) == 1
