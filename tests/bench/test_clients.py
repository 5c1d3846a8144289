"""Whole clients in short, with seeds that the engine was not made with."""

from domain.together import NEEDED
from tests.bench.clients import watched
from tests.bench.lifters import Truth

TRUTH = Truth(0.02, 0.03)
CLIENTS = 8


def test_the_tired_are_found_for_one_matter_and_who_gains_on_is_not() -> None:
    """The limits leave room for so few clients."""
    tired = [watched(TRUTH, "tired", 4, f"short {each}") for each in range(CLIENTS)]
    steady = [watched(TRUTH, "steady", 4, f"short {each}") for each in range(CLIENTS)]
    delays = sorted(each.first_of_several(NEEDED) - each.ends for each in tired)
    false = sum(each.first_of_several(NEEDED) < len(each.looks) for each in steady)
    print(f"\nseveral after {delays} exposures; falsely {false} of {CLIENTS}")
    assert delays[CLIENTS // 2] <= 8
    assert false <= 2
