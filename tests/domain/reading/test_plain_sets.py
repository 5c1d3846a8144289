"""The short way to read plain sets gives what weighing them gives."""

from unittest.mock import patch

from hypothesis import given
from hypothesis import strategies as st

from domain.reading import fold
from tests.domain.reading.build import PLAN, reading

NAMES = st.sampled_from([planned.name for planned in PLAN])
LOADS = st.sampled_from(["80", "15", "20", "7.5", "100", "12", "80 kg", "22.5 kg", "30s", "60 lb", "20 each"])
TIES = st.sampled_from([" x ", "x", " for ", ": ", " ", ", ", "/"])
REPS = st.lists(st.integers(3, 30).map(str), min_size=1, max_size=4)
BETWEEN = st.sampled_from([", ", "/", " and "])
ENDS = st.sampled_from(["", " reps", " seconds", ", last one to failure"])


@given(NAMES, st.one_of(st.just(""), LOADS), TIES, REPS, BETWEEN, ENDS)
def test_a_list_is_read_the_same_by_the_short_way_and_by_weighing(
    name: str, load: str, tie: str, reps: list[str], between: str, end: str
) -> None:
    text = f"{name} {load}{tie}{between.join(reps)}{end}"
    short = reading(text)
    with patch.object(fold, "plain_sets", return_value=None):
        weighed = reading(text)
    assert short == weighed
