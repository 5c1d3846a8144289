"""The columns of a journal's table, in the order in which they are written.

The first seven are those that any journal has (`assess` reads them); the others make it whole.
"""

COLUMNS = ("client", "date", "exercise", "load", "unit", "reps", "seconds")
NEEDED = COLUMNS[:3]
MORE_COLUMNS = (
    "load_kind",
    "lowering_only",
    "to_failure",
    "in_reserve",
    "workout",
    "round",
    "recorded_at",
    "workout_date",
)
"""How the load is counted (total, each, added, assist, body); whether the reps were lowered only (yes or
empty); whether it went to failure (yes, no or empty); how many reps were left in reserve; of which workout,
and in which round of the rotation, it was; when it was recorded, in UTC; the day of the workout, which is
another than the set's where the rest of it was done later."""
