"""`python -m tests.corpus.measure`: how well messages are read, over our own corpus and what others wrote.

With `-v` each message that is not read exactly is shown.
"""

import sys
from collections.abc import Iterable

from tests.corpus.rows import FOLDER, MEASURED, Row, compared, difference, got, rows_in, rows_of, wrong_sets


def measured(name: str, rows: Iterable[Row], *, show: bool) -> str:
    """Return one line of figures for some rows; print those not read exactly where `show` says so."""
    count = exact = wrong = missed = false = signs_missed = signs_false = needless = 0
    for row in rows:
        reading = got(row)
        should, is_so = compared(row.gold), compared(reading)
        count += 1
        exact += should == is_so
        wrong += bool(wrong_sets(row, reading))
        missed += bool(should["pain"]) and should["pain"] != is_so["pain"]
        false += bool(is_so["pain"]) and not should["pain"]
        signs_missed += should["urgent"] and not is_so["urgent"]
        signs_false += is_so["urgent"] and not should["urgent"]
        needless += bool(is_so["asks"]) and not should["asks"]
        if show and (text := difference(row, reading)):
            print(text)
    if not count:
        return f"{name:20} no rows"
    return (
        f"{name:20} {count:5} messages  exact {exact / count:6.1%}  wrong record {wrong / count:5.2%}  "
        f"pain missed {missed} false {false}  warning sign missed {signs_missed} false {signs_false}  "
        f"needless question {needless / count:5.2%}"
    )


def heard(name: str, rows: Iterable[Row]) -> str:
    """Return one line of figures for rows that tell of nothing but pain and warning signs."""
    found = [(compared(row.gold), compared(got(row))) for row in rows]
    right = sum(all(should[what] == is_so[what] for what in ("pain", "urgent")) for should, is_so in found)
    missed = sum(should["urgent"] and not is_so["urgent"] for should, is_so in found)
    false = sum(is_so["urgent"] and not should["urgent"] for should, is_so in found)
    return (
        f"{name:20} {len(found):5} messages  pain and warning signs right {right / len(found):6.1%}  "
        f"warning sign missed {missed} false {false}"
    )


def main() -> None:
    """Print the figures by kind of message, then of what others wrote."""
    show = "-v" in sys.argv
    everything: list[Row] = []
    for path in sorted(FOLDER.glob("*.jsonl")):
        rows = rows_of(path)
        everything.extend(rows)
        print(measured(path.stem, rows, show=show))
    print(measured("all of our own", everything, show=False))
    for folder in MEASURED:
        print(measured(folder.replace("_", " "), rows_in(folder), show=show))
    print(heard("safety", rows_in("safety")))


if __name__ == "__main__":
    main()
