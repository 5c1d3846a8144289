"""A client's whole journal as A4 pages to read or print, made with fpdf2.

The same journal makes the same file, byte for byte: its date is that of the last set. The letters are DejaVu
Sans, which comes with matplotlib; they are put into the file, and a sign that they lack is an empty box.
"""

import logging
from collections.abc import Iterable, Iterator, Mapping, Sequence
from datetime import UTC, datetime
from functools import cache
from itertools import groupby, zip_longest
from pathlib import Path

import matplotlib as mpl
from fpdf import FPDF
from fpdf.enums import XPos, YPos

from bot.wording import pages as words
from bot.wording.reader import NO_BREAK
from bot.wording.scripts import of_exercise
from bot.wording.scripts import printed as in_print
from domain.client.progress import Record, records_of
from domain.journal import WorkoutRecord
from domain.sets import TrainingSet
from domain.state import ClientState

_FONT = "dejavu"
_MARGIN = 18.0
"""Millimetres, as all lengths here; sizes of letters are in points."""
_BODY, _HEAD, _TITLE, _FOOT = 9.5, 11.0, 20.0, 8.0
_LINE = 4.8
_NAME_WIDTH, _MARK_WIDTH = 58.0, 24.0
_MOST_KEPT = 75.0
"""A workout that is no taller stands on one page."""
_INK, _QUIET = 30, 95
_PAGES = "{nb}"
_UNDATED = datetime(2000, 1, 1, tzinfo=UTC)

logging.getLogger("fontTools").setLevel(logging.ERROR)  # it tells each table that it puts into a file


Row = tuple[str, str, str]


class _Pages(FPDF):
    """A4 pages with the client's name and the page's number at the foot."""

    def __init__(self, name: str) -> None:
        super().__init__(format="A4")
        self.name = name
        self._widths: dict[tuple[str, str, float], float] = {}
        self.set_margin(_MARGIN)
        self.set_auto_page_break(auto=True, margin=_MARGIN + 2)
        for style, file in (("", "DejaVuSans.ttf"), ("B", "DejaVuSans-Bold.ttf")):
            self.add_font(_FONT, style, _fonts() / file)
        self.alias_nb_pages(_PAGES)

    def footer(self) -> None:
        """Write the foot of a page; called by fpdf2."""
        self.set_y(-_MARGIN + 4)
        self.letters(_FOOT, grey=_QUIET)
        self.cell(0, 5, words.foot_words(_shortened(self.name), self.page_no(), _PAGES), align="C")

    def letters(self, size: float, *, bold: bool = False, grey: int = _INK) -> None:
        """Write like this from here on."""
        self.set_font(_FONT, "B" if bold else "", size)
        self.set_text_color(grey)

    def text_lines(self, text: str, height: float = _LINE) -> None:
        """Write text from margin to margin, in as many lines as it needs."""
        for line in self.wrapped(text, self.epw):
            self.cell(0, height, line, new_x=XPos.LMARGIN, new_y=YPos.NEXT)

    def side_by_side(self, rows: Iterable[Row]) -> None:
        """Write three texts beside each other, each line of all at the same height; the last at the right."""
        for left, middle, right in rows:
            self.cell(_NAME_WIDTH, _LINE, left)
            self.cell(self.epw - _NAME_WIDTH - _MARK_WIDTH, _LINE, middle)
            self.set_text_color(_QUIET)
            self.cell(0, _LINE, right, align="R", new_x=XPos.LMARGIN, new_y=YPos.NEXT)
            self.set_text_color(_INK)

    def in_columns(self, left: str, middle: str, right: str) -> list[Row]:
        """Return the lines of two texts that are to stand side by side, and a few words beside the first."""
        names = self.wrapped(left, _NAME_WIDTH - 3)
        texts = self.wrapped(middle, self.epw - _NAME_WIDTH - _MARK_WIDTH)
        return [
            (name, text, "" if at else right)
            for at, (name, text) in enumerate(zip_longest(names, texts, fillvalue=""))
        ]

    def wrapped(self, text: str, width: float) -> list[str]:
        """Return text in lines of `width` in the letters set; a longer word is cut where the line ends.

        It stands in for fpdf2's own, which measures each sign of each line anew: ten times as slow.
        """
        room, blank = width - 2 * self.c_margin, self._width(" ")
        lines, line, used = [], "", 0.0
        for word in text.split(" "):
            rest, wide = word, self._width(word)
            if line and used + blank + wide > room:
                lines.append(line)
                line, used = "", 0.0
            while wide > room:
                fits = next(at for at in range(1, len(rest) + 1) if self._width(rest[: at + 1]) > room)
                lines.append(rest[:fits])
                rest = rest[fits:]
                wide = self._width(rest)
            line, used = (f"{line} {rest}", used + blank + wide) if line else (rest, wide)
        return [*lines, line]

    def _width(self, text: str) -> float:
        key = (text, self.font_style, self.font_size_pt)
        if key not in self._widths:
            self._widths[key] = self.get_string_width(text)
        return self._widths[key]


def printed(state: ClientState) -> bytes:
    """Return the journal of `state`, loaded whole, as a PDF."""
    client = in_print(_plain(state.client.name), words.CLIENT)
    records = records_of(state)
    called = {
        each.exercise: in_print(_plain(each.exercise), of_exercise(at))
        for at, each in enumerate(records, start=1)
    }
    pages = _Pages(client)
    pages.set_title(f"{words.TITLE}: {client}")
    pages.set_creation_date(max((entry.at for entry in state.entries), default=_UNDATED))
    pages.add_page()
    _write_head(pages, state, called)
    sets: dict[int, list[TrainingSet]] = {each.number: [] for each in state.workouts}
    for entry in sorted(state.entries, key=lambda each: each.order):
        sets[entry.workout].append(entry.set)
    if not state.workouts:
        pages.letters(_BODY)
        pages.text_lines(words.NOTHING)
    _write_bests(pages, records, called)
    bests = {each.exercise: each.new_bests for each in records}
    for record in state.workouts:
        rows = [
            (
                called[exercise],
                _together(_plain(words.exercise_words(done, record.on))),
                words.NEW_BEST if record.on in bests[exercise] else "",
            )
            for exercise, done in _in_order(sets[record.number])
        ]
        _write_workout(pages, record, rows)
    return bytes(pages.output())


def _write_head(pages: _Pages, state: ClientState, called: Mapping[str, str]) -> None:
    pages.letters(_TITLE, bold=True)
    pages.text_lines(words.TITLE, 10)
    pages.letters(14, bold=True)
    pages.text_lines(pages.name, 7)
    pages.ln(1)
    pages.letters(_BODY)
    for line in words.head_lines(state):
        pages.text_lines(_plain(line))
    if state.holds:
        pages.text_lines(
            f"{words.ASIDE}: {'; '.join(_plain(words.hold_words(each)) for each in state.holds)}"
        )
    pages.ln(1)
    pages.letters(_FOOT, grey=_QUIET)
    pages.text_lines(words.UNITS, 4)
    if pages.name != _plain(state.client.name) or any(_plain(name) != each for name, each in called.items()):
        pages.text_lines(words.OTHER_SCRIPT, 4)
    pages.ln(3)


def _write_bests(pages: _Pages, records: Sequence[Record], called: Mapping[str, str]) -> None:
    """Write the best of each exercise, as many as there are, over as many pages as that takes."""
    if not records:
        return
    pages.letters(_HEAD, bold=True)
    pages.text_lines(words.BESTS, 6)
    pages.letters(_BODY)
    for each in records:
        times = words.times_words(each.times)
        pages.side_by_side(
            pages.in_columns(called[each.exercise], _together(_plain(words.best_words(each))), times)
        )
    pages.ln(3)


def _write_workout(pages: _Pages, record: WorkoutRecord, exercises: Iterable[Row]) -> None:
    pages.letters(_BODY)
    rows = [line for each in exercises for line in pages.in_columns(*each)]
    height = (len(rows) + bool(record.skipped)) * _LINE + 8
    if pages.y + (height if height < _MOST_KEPT else 30) > pages.page_break_trigger:
        pages.add_page()
    pages.set_draw_color(200)
    pages.line(_MARGIN, pages.y, pages.w - _MARGIN, pages.y)
    pages.ln(1.2)
    pages.letters(_HEAD, bold=True)
    pages.text_lines(_plain(words.workout_words(record)), 6)
    pages.letters(_BODY)
    pages.side_by_side(rows)
    if record.skipped:
        pages.letters(_BODY, grey=_QUIET)
        pages.text_lines(_plain(words.skipped_words(record)))
    pages.ln(2)


def _in_order(sets: list[TrainingSet]) -> Iterator[tuple[str, tuple[TrainingSet, ...]]]:
    """Give each exercise with its sets; one that is taken up again after another stands again."""
    for exercise, done in groupby(sets, key=lambda each: each.exercise):
        yield exercise, tuple(done)


def _together(text: str) -> str:
    """Return the words of sets such that no line ends within one: between a load and its reps."""
    for joined in (" × ", "body weight + ", " each"):
        text = text.replace(joined, joined.replace(" ", NO_BREAK))
    return text


def _plain(text: str) -> str:
    """Return text on one line, without what would stand for something else on a page."""
    return " ".join(text.replace(_PAGES, "{ nb}").split(" ")).replace("\n", " ").replace("\t", " ")


def _shortened(name: str) -> str:
    return name if len(name) <= 60 else f"{name[:59]}…"


@cache
def _fonts() -> Path:
    return Path(mpl.get_data_path()) / "fonts" / "ttf"
