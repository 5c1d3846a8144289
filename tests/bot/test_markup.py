"""Markup written and read: words from people come through unharmed."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.markup import Run, bold, escape, italic, plain, runs


@given(st.text())
def test_escaped_words_read_as_themselves(text: str) -> None:
    assert plain(escape(text)) == text
    assert runs(bold(text)) == ((Run(text, ("b",)),) if text else ())


@pytest.mark.parametrize(
    ("text_html", "expected"),
    [
        ("a <b>x &amp; <i>y</i></b> z", (Run("a "), Run("x & ", ("b",)), Run("y", ("b", "i")), Run(" z"))),
        ("<b>never closed", (Run("never closed", ("b",)),)),
        ("5 < 6 & 7 <3 </b>", (Run("5 < 6 & 7 <3 </b>"),)),
        ("<br/><script>x</script>", (Run("<br/><script>x</script>"),)),
        ("<a href='x'>q</a>", (Run("<a href='x'>q</a>"),)),
        (italic("<i>"), (Run("<i>", ("i",)),)),
        ("", ()),
    ],
)
def test_what_is_no_markup_of_ours_is_text(text_html: str, expected: tuple[Run, ...]) -> None:
    assert runs(text_html) == expected
