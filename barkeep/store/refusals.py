"""What the store cannot do, said to the user."""

from __future__ import annotations

from collections.abc import Sequence

from barkeep.domain.phrases import capitalised
from barkeep.errors import UnreadableFile, UserError, spoken_list, way_in_words
from barkeep.store.faults import Fault
from barkeep.translation import tr, tr_noop


class BarIsBusy(UserError):
    """Another program holds the file locked."""

    file: str
    says = (
        "{file} is in use by another program just now, and nothing was changed. "
        "Try again in a moment."
    )


class BarMoved(UserError):
    """A write to a bar whose file has been deleted, moved or replaced beneath it."""

    file: str
    says = (
        "{file} was deleted, moved or replaced while it was open here, and nothing was changed. "
        "What is shown was read before that."
    )


class WrittenNotRead(UserError):
    """A change that is written, after which the bar could not be read; `why` as part of that."""

    file: str
    why: str = tr_noop("is in use by another program")
    in_words = ("why",)
    says = (
        "What you did is written, but {file} {why} just now, so it does "
        "not show yet. Read it again in a moment."
    )


class OutOfReach(UserError):
    """A bar on a server that cannot be reached just now; what is shown was read before."""

    file: str
    short = tr_noop("cannot be reached")
    says = "{file} cannot be reached just now, and nothing was changed."


class NoServer(OutOfReach):
    """A server to which there is no connection; `reason` says why."""

    reason: str
    in_words = ("reason",)
    says = "{file} cannot be used just now: {reason}. Nothing was changed."


class ConnectionLost(OutOfReach):
    """A connection that broke while something was asked or written, all of which was taken back."""

    says = (
        "The connection to {file} was lost, and nothing was changed. Try again in a moment; "
        "barkeep connects again by itself."
    )


class WrittenOrNot(OutOfReach):
    """A connection that broke just as a change was to be kept: nobody has said whether it was."""

    says = (
        "The connection to {file} was lost just as the change was being written, so it may be "
        "written or not. Look whether it is there before you do it again."
    )


class NotInAFile(UserError):
    """What can only be done with the file of a bar, asked of one on a server."""

    file: str
    says = (
        "{file} is on a server and in no file: what that needs is done there, by pg_dump and "
        "pg_restore. “Export everything” and a backup are files that barkeep takes back."
    )


class BarIsHeld(BarIsBusy):
    """Another program kept the file locked for all of `waited_s` seconds while a bar was opened."""

    waited_s: float
    says = (
        "{file} could not be opened: it is in use by another program, which has not "
        "finished within {waited_s:g} s. Nothing of it was lost; open it again when "
        "the other program has finished or is closed."
    )


NO_FILE, EMPTY = tr_noop("there is no such file"), tr_noop("it is empty (0 bytes)")
"""Why there is no bar in a file."""


class NoBarThere(UserError):
    """A file that should hold a bar and holds none, so that nothing was begun in its place.

    `likely` are bars that may have been meant, `advice` how a new one is begun, as a sentence.
    """

    file: str
    reason: str
    likely: tuple[str, ...] = ()
    advice: str = ""

    def __str__(self) -> str:
        told = [tr("There is no bar in {file}: {reason}.", file=self.file, reason=tr(self.reason))]
        if self.likely:
            told.append(tr("Did you mean {likely}?", likely=spoken_list(self.likely)))
        return " ".join((*told, tr(self.advice))).strip()


class DamagedBar(UnreadableFile):
    """A bar in which something stands that barkeep cannot have written; where, as far as known."""

    faults: tuple[Fault, ...] = ()


class ChangedBar(DamagedBar):
    """A bar in which rows can be as they are, but barkeep did not write them so."""


def damaged_bar(file: str, faults: Sequence[Fault]) -> DamagedBar:
    """The refusal of a bar with these faults, of which there is at least one."""
    others = len(faults) - 1
    more = tr("; 1 more fault") if others == 1 else ""
    if others > 1:
        more = tr("; {others} more faults", others=others)
    if all(each.foreign for each in faults):
        reason = tr(
            "damage or another program changed it ({fault}{more})", fault=faults[0], more=more
        )
        return ChangedBar(file, reason, faults=tuple(faults))
    return DamagedBar(
        file, tr("it is damaged ({fault}{more})", fault=faults[0], more=more), faults=tuple(faults)
    )


class CannotUndo(UserError):
    """An undo or redo (`what`) that no longer fits what is in the bar."""

    what: str
    label: str
    reason: str

    def __str__(self) -> str:
        return tr(
            "Cannot {what} “{label}”: {reason}. Nothing was changed.",
            what=way_in_words(self.what),
            label=self.label,
            reason=tr(self.reason),
        )


class AnotherStep(UserError):
    """A step to undo or redo (`what`) that is no longer the next one: `gone` says why.

    `next_one` is the step that is next by now, empty for none.
    """

    what: str
    label: str
    gone: str
    next_one: str

    def __str__(self) -> str:
        what = way_in_words(self.what)
        left = tr("There is nothing else to {what}", what=what)
        if self.next_one:
            left = tr("{way} now means “{next_one}”", way=capitalised(what), next_one=self.next_one)
        return tr(
            "“{label}” {gone}, here, in another window or by a command, so nothing was changed. "
            "{left}.",
            label=self.label,
            gone=self.gone,
            left=left,
        )


class CannotWrite(UserError):
    """A file that cannot be written; `reason` says why."""

    file: str
    reason: str
    in_words = ("reason",)
    says = "{file} cannot be written: {reason}. Nothing was changed."


class ReadOnlyBar(CannotWrite):
    """A bar that may only be looked at."""

    reason: str = tr_noop("the file or its folder is read-only")
    says = "{file} is read-only: it can be looked at, and nothing in it can be changed."
