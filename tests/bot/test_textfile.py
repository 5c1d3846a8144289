"""Files from outside: what they say, or what is wrong with them."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.textfile import LIMIT_BYTES, read_document, storable
from domain.incoming import Document


@pytest.mark.parametrize(
    ("content", "text"),
    [
        (b"Pull\r\n1. Row\r\n", "Pull\r\n1. Row\r\n"),
        (b"\xef\xbb\xbfPull", "Pull"),
        ("8–10 × 60".encode("utf-16-le"), None),
        ("8–10 × 60".encode("utf-16"), "8–10 × 60"),
        ("8–10 × 60".encode("cp1252"), "8–10 × 60"),
        ("присед 😀".encode(), "присед 😀"),
        (b"", ""),
        (b"\x89PNG\r\n\x1a\n\x00", None),
        (b"%PDF-1.7\n\x01\x02", None),
        (b"a\x00b", None),
    ],
)
def test_text_in_usual_encodings_is_read_and_the_rest_is_not_text(content: bytes, text: str | None) -> None:
    expected = Document(name="x", fault="not text") if text is None else Document(name="x", text=text)
    assert read_document("x", content) == expected


def test_a_file_beyond_the_limit_is_too_large() -> None:
    assert read_document("x", b"x" * LIMIT_BYTES).fault is None
    assert read_document("x", b"x" * (LIMIT_BYTES + 1)) == Document(name="x", fault="too large")


@given(st.text(st.characters(codec=None)))
def test_storable_text_can_be_kept_anywhere_and_keeps_its_length(text: str) -> None:
    kept = storable(text)
    assert len(kept) == len(text)
    assert "\0" not in kept
    assert kept.encode().decode() == kept
