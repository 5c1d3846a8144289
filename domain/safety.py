"""Which exercises load a place that hurts.

The places are those that a client's message can name; the catalogue knows the joints that an exercise loads.
A place between two joints counts with both. Common practice, no source: it is the cautious choice.
"""

from domain.exercises import Joint, Region, describe

JOINTS_NEAR: dict[str, tuple[Joint, ...]] = {
    "neck": ("neck", "upper back"),
    "shoulder": ("shoulder",),
    "upper arm": ("shoulder", "elbow"),
    "elbow": ("elbow",),
    "forearm": ("elbow", "wrist"),
    "wrist": ("wrist",),
    "hand": ("wrist",),
    "upper back": ("upper back", "neck"),
    "lower back": ("lower back",),
    "back": ("upper back", "lower back"),
    "hip": ("hip",),
    "groin": ("hip",),
    "thigh": ("hip", "knee"),
    "knee": ("knee",),
    "calf": ("ankle", "knee"),
    "ankle": ("ankle",),
    "foot": ("ankle",),
}

REGIONS_NEAR: dict[str, tuple[Region, ...]] = {
    "chest": ("upper",),
    "abdomen": ("trunk", "lower"),
    "head": ("upper", "lower", "trunk"),
    "other": (),
}


def is_near(joint: str, where: str) -> bool:
    """Return whether `joint` counts with the place `where`."""
    return joint in JOINTS_NEAR.get(where, ())


def loads_place(exercise: str, where: str) -> bool:
    """Return whether `exercise` loads the place `where`; False for a place that is not known."""
    known = describe(exercise)
    near = JOINTS_NEAR.get(where, ())
    return any(joint in near for joint in known.joints) or known.region in REGIONS_NEAR.get(where, ())
