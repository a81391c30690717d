"""What a spec is used for beyond its page: a batch, and the sheet on camera."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtWidgets import QWidget

from barkeep.desktop.camera_sheet import CameraSheet
from barkeep.desktop.dialogs.batch import BatchDialog
from barkeep.desktop.screens.context import ScreenContext
from barkeep.documents.camera import CameraDrink
from barkeep.domain.specs import Spec


def open_batch(context: ScreenContext, spec: Spec, parent: QWidget) -> BatchDialog:
    """Show a spec made many."""
    dialog = BatchDialog(context, spec, parent)
    dialog.open()
    return dialog


def open_on_camera(drinks: Sequence[CameraDrink], parent: QWidget) -> CameraSheet:
    """Show the sheet on the whole screen."""
    sheet = CameraSheet(drinks, parent)
    sheet.showFullScreen()
    return sheet
