"""How many sets a number can be of."""

MOST_SETS = 12
FEW_SETS = 6
"""As many sets of one exercise are usual; a number before "x" that is no more can be one of sets."""
