"""Cutting and laying out, judged by the test server's own reading of markup.

Limits: 4096 characters of a text, 1024 of a caption, 64 bytes of button data, lengths in UTF-16 code units:
https://core.telegram.org/bots/api (sendMessage, sendPhoto, InlineKeyboardButton, MessageEntity).
"""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.markup import bold, escape, italic, plain
from bot.telegram.pieces import length, pieces, rows, units
from tests.botapi import markup as server

SCRAPS = st.sampled_from(
    [
        "row ",
        "\n",
        "\n\n",
        "  ",
        "😀",
        "👩\u200d🦰",
        "e\u0301",
        "🇳🇴",
        "<",
        "&",
        "&amp;",
        "</b>",
        "60 kg × 8",
        "x" * 9,
    ]
)


@pytest.mark.parametrize(
    ("text_html", "limit", "expected"),
    [
        ("", 10, ()),
        (" \n<b> </b>\n", 10, ()),
        ("short", 10, ("short",)),
        ("0123456789", 10, ("0123456789",)),
        ("one two three", 10, ("one two", "three")),
        ("one two\nthree", 10, ("one two", "three")),
        ("one two 3\nfour", 10, ("one two 3", "four")),
        ("aaaaaaa\n\nbb cc\ndd", 14, ("aaaaaaa", "bb cc\ndd")),
        ("a\n\nbbbb cc\ndd", 10, ("a\n\nbbbb cc", "dd")),
        ("<b>one two three</b>", 10, ("<b>one two</b>", "<b>three</b>")),
        ("<b>one <i>two three</i></b>", 10, ("<b>one </b><b><i>two</i></b>", "<b><i>three</i></b>")),
        ("12345 &amp; &lt;&gt; 1", 7, ("12345 &amp;", "&lt;&gt; 1")),
        ("x" * 25, 10, ("x" * 10, "x" * 10, "x" * 5)),
        ("😀" * 7, 5, ("😀" * 2, "😀" * 2, "😀" * 2, "😀")),
        ("aaae\u0301", 4, ("aaa", "e\u0301")),
        ("aa👩\u200d🦰", 6, ("aa", "👩\u200d🦰")),
    ],
)
def test_a_text_is_cut_at_the_best_place_within_the_limit(
    text_html: str, limit: int, expected: tuple[str, ...]
) -> None:
    assert pieces(text_html, limit) == expected


@given(st.lists(st.tuples(st.sampled_from([escape, bold, italic]), SCRAPS)), st.integers(4, 60))
def test_every_piece_is_within_the_limit_and_nothing_but_white_space_is_lost(
    parts: list[tuple[object, str]], limit: int
) -> None:
    text_html = "".join(style(scrap) for style, scrap in parts if callable(style))
    cut = pieces(text_html, limit)
    read = [server.parse(piece)[0] for piece in cut]
    assert all(1 <= server.units(text) <= limit for text in read)
    assert all(text == text.strip() for text in read)
    assert "".join("".join(read).split()) == "".join(plain(text_html).split())


@given(st.text())
def test_lengths_are_counted_in_utf16_code_units(text: str) -> None:
    assert units(text) == len(text.encode("utf-16-le", "surrogatepass")) // 2


def test_markup_and_outer_white_space_do_not_count() -> None:
    assert length(" <b>5 &lt; 6</b>\n") == 5


@pytest.mark.parametrize(
    ("labels", "expected"),
    [
        ([], []),
        (["Yes", "No"], [["Yes", "No"]]),
        (["1", "2", "3", "4"], [["1", "2", "3"], ["4"]]),
        (
            ["Load down, build back", "Use the alternative"],
            [["Load down, build back"], ["Use the alternative"]],
        ),
    ],
)
def test_short_labels_share_a_row(labels: list[str], expected: list[list[str]]) -> None:
    laid = rows([(label, "7:0") for label in labels])
    assert [[label for label, _ in row] for row in laid] == expected
