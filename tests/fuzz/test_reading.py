"""A short run of the messages at random; the long one is `python -m tests.fuzz.reading`."""

from tests.fuzz.reading import run


def test_messages_at_random_are_read_without_an_exception_or_an_invented_number() -> None:
    assert run(3_000, seed=20260325) == 0
