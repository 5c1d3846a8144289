"""What a set of some reps says about the most that could be lifted once (1RM), and the other way round.

Seven published equations, each with its inverse. None is exact: in tests of trained people the total error
is 10 to 14% of the mean (Hutchins & Gearhart 2010), most equations underestimate, and the differences
between exercises are large (Richens & Cleather 2014). That is why estimates only decide between sets of
different loads, only within the tested reps, and never by less than one rep is worth.

w is the load, r the reps done to failure:

    epley     w (1 + r / 30)                       Epley 1985, Poundage Chart
    brzycki   36 w / (37 - r)                      Brzycki 1993, JOPERD 64(1):88-90
    lander    100 w / (101.3 - 2.67123 r)          Lander 1985, NSCA Journal 6(6):60-61
    lombardi  w r^0.10                             Lombardi 1989, Beginning Weight Training
    mayhew    100 w / (52.2 + 41.9 e^(-0.055 r))   Mayhew et al. 1992, J Appl Sport Sci Res 6:200-206
    oconner   w (1 + 0.025 r)                      O'Conner, Simmons & O'Shea 1989, Weight Training Today
    wathan    100 w / (48.8 + 53.8 e^(-0.075 r))   Wathan 1994, in Baechle (ed.), Essentials
"""

import math
from decimal import Decimal
from typing import Literal, assert_never, get_args

Equation = Literal["epley", "brzycki", "lander", "lombardi", "mayhew", "oconner", "wathan"]
EQUATIONS: tuple[Equation, ...] = get_args(Equation)

_MOST_TESTED_REPS = 10
"""Reynolds, Gordon & Robergs 2006 (JSCR 20:584-592, 1, 5, 10 and 20RM of 70 people): no more than 10 reps in
linear equations; Mayhew et al. 1995 likewise found the equations best at 10 reps and fewer."""


class OutOfReach(ValueError):
    """No estimate can be made from these numbers: below one rep, no load, or beyond an equation's pole."""

    def __init__(self, equation: Equation, **numbers: float) -> None:
        """Keep the equation and the numbers that it could not take."""
        self.equation = equation
        self.numbers = numbers
        super().__init__(f"{equation} has no answer for {numbers}")


def one_rep_max(load: float | Decimal, reps: float, equation: Equation = "epley") -> float:
    """Return the estimated 1RM, in the unit of `load`, of a set of `reps` to failure.

    The equation is taken as published: at one rep only Brzycki and Lombardi return the load itself.
    Raises `OutOfReach` for a load of 0 or less, fewer than 1 rep, or reps at or beyond the equation's pole
    (37 for Brzycki, 37.9 for Lander).
    """
    mass = float(load)
    if not (0 < mass < math.inf and 1 <= reps < math.inf):
        raise OutOfReach(equation, load=mass, reps=reps)
    share = _share_of_maximum(reps, equation)
    if share <= 0:
        raise OutOfReach(equation, load=mass, reps=reps)
    return mass / share


def repetitions_at(
    load: float | Decimal, one_rep_max: float | Decimal, equation: Equation = "epley"
) -> float:
    """Return the reps, not whole, to be expected at `load` by someone of that 1RM, both in one unit.

    It is the inverse of `one_rep_max`. A result under 1 means that not one full
    rep is to be expected; it is never below 0.
    Raises `OutOfReach` for a load or a maximum of 0 or less, and for a load so light that the equation never
    comes down to it (half of the maximum for Mayhew and Wathan).
    """
    mass, maximum = float(load), float(one_rep_max)
    if not (0 < mass < math.inf and 0 < maximum < math.inf):
        raise OutOfReach(equation, load=mass, one_rep_max=maximum)
    share = mass / maximum
    match equation:
        case "epley":
            reps = 30 * (1 / share - 1)
        case "brzycki":
            reps = 37 - 36 * share
        case "lander":
            reps = (101.3 - 100 * share) / 2.67123
        case "lombardi":
            reps = share**-10
        case "mayhew":
            reps = _decay_reps(100 * share, 52.2, 41.9, 0.055)
        case "oconner":
            reps = (1 / share - 1) / 0.025
        case "wathan":
            reps = _decay_reps(100 * share, 48.8, 53.8, 0.075)
        case _:
            assert_never(equation)
    if math.isinf(reps):
        raise OutOfReach(equation, load=mass, one_rep_max=maximum)
    return max(0.0, reps)


def tested_reps(equation: Equation) -> range:  # noqa: ARG001 - all share one range until studies tell them apart
    """Return the reps for which the equation has been tested against real maxima: 1 to 10."""
    return range(1, _MOST_TESTED_REPS + 1)


def percent_table(equation: Equation, reps: range = range(1, 13)) -> dict[int, float]:
    """Return, by reps, the percent of 1RM that an equation puts there: the usual handbook table."""
    return {each: 100 / one_rep_max(1, each, equation) for each in reps}


def _share_of_maximum(reps: float, equation: Equation) -> float:
    """Return load / 1RM; 0 or less at and beyond a pole."""
    match equation:
        case "epley":
            return 1 / (1 + reps / 30)
        case "brzycki":
            return (37 - reps) / 36
        case "lander":
            return (101.3 - 2.67123 * reps) / 100
        case "lombardi":
            return float(reps**-0.10)
        case "mayhew":
            return (52.2 + 41.9 * math.exp(-0.055 * reps)) / 100
        case "oconner":
            return 1 / (1 + 0.025 * reps)
        case "wathan":
            return (48.8 + 53.8 * math.exp(-0.075 * reps)) / 100
        case _:
            assert_never(equation)


def _decay_reps(percent: float, floor: float, height: float, rate: float) -> float:
    """Solve floor + height e^(-rate r) = percent for r; infinite where percent is not above the floor."""
    return -math.log((percent - floor) / height) / rate if percent > floor else math.inf
