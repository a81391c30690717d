"""`barkeep desktop-entry`: put there, shown and taken away; and what a double click starts."""

from __future__ import annotations

from barkeep.desktop_file import as_written


def test_put_there_and_taken_away(barkeep, tmp_path):
    put = barkeep("desktop-entry", "install", "--json").answer
    assert put["folder"] == str(tmp_path / "data")
    assert len(put["written"]) == 10 and put["there"] == put["written"]
    assert "All of it is in" in barkeep("desktop-entry", "install").out
    shown = barkeep("desktop-entry", "show").out
    assert "there      " in shown and "MimeType=application/x-barkeep;" in shown
    gone = barkeep("desktop-entry", "remove", "--json").answer
    assert gone["removed"] == put["written"] == gone["missing"]
    assert "There is nothing of it" in barkeep("desktop-entry", "remove").out


def test_what_is_double_clicked_is_the_bar_whatever_it_is_called():
    assert as_written(["/bars/tonight"]) == ["--bar", "/bars/tonight"]
    assert as_written(["tonight"]) == ["--bar", "tonight"]
    assert as_written(["--sample"]) == ["--sample"]
    assert as_written(["--bar", "x", "--new"]) == ["--bar", "x", "--new"]
    assert as_written([]) == []
