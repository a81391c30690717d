"""Where pages and texts go: a printer, a PDF, another file, the clipboard."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from pathlib import Path

from PySide6.QtGui import QGuiApplication
from PySide6.QtPrintSupport import QPrintDialog, QPrinter
from PySide6.QtWidgets import QDialog, QFileDialog, QWidget

from barkeep.application.publishing import TextForm
from barkeep.desktop.printing.pages import PagePainter, PdfFile, PrintedPage, page_layout
from barkeep.documents.printed.paper import Size
from barkeep.errors import UserError
from barkeep.translation import tr, tr_noop

PDF = tr_noop("PDF (*.pdf)")


class NotPrinted(UserError):
    """A printer that takes nothing."""

    says = "The printer takes nothing. Is it switched on, and is its queue open?"


def ask_for_printer(parent: QWidget, sheet: Size, title: str) -> QPrinter | None:
    """The printer to print on, None where the user thinks better of it."""
    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    printer.setPageLayout(page_layout(sheet))
    printer.setDocName(title)
    dialog = QPrintDialog(printer, parent)
    dialog.setWindowTitle(tr("Print {title}", title=title))
    return printer if dialog.exec() == QDialog.DialogCode.Accepted else None


def ask_for_file(parent: QWidget, title: str, name: str, filters: str) -> tuple[str, str]:
    """The file to write and the filter that was chosen; an empty name for none."""
    return QFileDialog.getSaveFileName(parent, title, name, filters)


def printing(pages: Sequence[PrintedPage], printer: QPrinter, sheet: Size) -> Iterator[int]:
    """Print page by page; each step is how many are done. Raises `NotPrinted`."""
    painter = PagePainter(printer, sheet)
    try:
        for number, page in enumerate(pages, 1):
            painter.add(page)
            yield number
    except OSError:
        raise NotPrinted() from None
    finally:
        painter.finish()


def writing_pdf(
    pages: Sequence[PrintedPage], sheet: Size, title: str, write: Callable[[bytes], object]
) -> Iterator[int]:
    """Draw a PDF page by page; `write` is given all of it at the end."""
    pdf = PdfFile(sheet, title)
    for number, page in enumerate(pages, 1):
        pdf.add(page)
        yield number
    write(pdf.finished())


def filters_of(forms: Sequence[TextForm]) -> str:
    """The forms as a file dialog lists them."""
    return ";;".join(f"{tr(form.title)} (*{form.suffix})" for form in forms)


def form_of(name: str, chosen: str, forms: Sequence[TextForm]) -> TextForm:
    """The form meant by the filter that was chosen, unless the name says another."""
    suffix = Path(name).suffix.casefold()
    by_filter = next((form for form in forms if chosen.startswith(f"{tr(form.title)} (")), forms[0])
    if suffix in ("", by_filter.suffix):
        return by_filter
    return next((form for form in forms if form.suffix == suffix), by_filter)


def with_suffix(name: str, suffix: str) -> Path:
    """The file's name, with the suffix where it has none."""
    path = Path(name)
    return path if path.suffix else path.with_name(path.name + suffix)


def copy(text: str) -> None:
    """Put a text on the clipboard."""
    QGuiApplication.clipboard().setText(text)


Refuse = Callable[[UserError], object]


def guarded(steps: Iterator[int], refuse: Refuse) -> Iterator[int]:
    """Steps that end at a refusal, which goes where it can be read."""
    try:
        yield from steps
    except UserError as error:
        refuse(error)
