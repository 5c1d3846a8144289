"""Whether a message speaks of the client's own illness, which no reading tells."""

import pytest

from domain.reading import speaks_of_illness


@pytest.mark.parametrize(
    "text",
    [
        "got the flu",
        "can't train, I'm ill",
        "feeling sick, moving today to Thursday",
        "Tested positive for covid, off for a week",
        "in bed with a fever",
        "doctor says no training until the 14th",
        "my kids had a stomach bug and now I have it too",
    ],
)
def test_the_client_is_ill(text: str) -> None:
    assert speaks_of_illness(text)


@pytest.mark.parametrize(
    "text",
    [
        "",
        "away till the 14th",
        "my wife has the flu",
        "the flu is gone",
        "that set was sick",
        "I'll do it later",
        "can't today, too much work",
        "80 x 8",
    ],
)
def test_the_client_is_not_ill(text: str) -> None:
    assert not speaks_of_illness(text)
