"""The words that the rules of a sheet are made of, as pieces of regular expressions, and numbers as said.

Only words are here; what a phrase made of them means is said in `domain.sheet.clauses`.
"""

_WORDS: tuple[str, ...] = (
    *("zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"),
    *("eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen"),
    "twenty",
)
_NUMBERS = {word: value for value, word in enumerate(_WORDS)} | {"dozen": 12, "a dozen": 12, "thirty": 30}

NUMBER = rf"(?:\d{{1,6}}|{'|'.join(sorted(_NUMBERS, key=len, reverse=True))})"

AMOUNT = rf"(?:\d{{1,2}}:\d\d|(?<![\d.,]){NUMBER}(?![\d]|[.,]\d))"
REPS = (
    r"(?:(?:full|clean|good|strict|controlled|slow|hard|total|proper)\s+)*(?:reps?|repetitions?|times)\b|r\b"
)
SECONDS = r"seconds?\b|secs?\b|s\b|\"|''"
_MINUTES = r"minutes?\b|mins?\b"
UNIT = rf"(?:(?P<reps>{REPS})|(?P<seconds>{SECONDS})|(?P<minutes>{_MINUTES}))"
TO = r"(?:\s*-\s*|\s*(?:to|or|up\s+to|until)\s+)"
MASS = r"(?P<mass>\d{1,4}(?:[.,]\d{1,3})?)\s*(?P<unit>kgs?\b|kilos?\b|kilograms?\b|lbs?\b|pounds?\b|\#)?"
LOWERING = (
    r"(?:lowering(?:[-\s]only)?(?:\s+(?:phase|part))?|negatives?(?:[-\s]only)?|eccentrics?(?:[-\s]only)?)"
    r"(?:\s+(?:reps?|repetitions?|ones|version))?(?:\s+only)?"
)
ADD = (
    r"(?:add(?:ing)?|put\s+on|increase|raise|go\s+up(?:\s+in)?|move\s+up(?:\s+in)?|up|bump|\+)"
    r"(?:\s+(?:it|the|your))?(?:\s+(?:load|weight|resistance))?(?:\s+(?:by|up\s+by|up))?"
)
HOW_MUCH = (
    rf"(?:\s*\+?\s*(?:{MASS}|(?:more\s+|some\s+|a\s+little\s+|the\s+)?(?:load|weight|resistance|plates?)|"
    r"(?:the\s+|a\s+|one\s+)?(?:usual|smallest|small|next)\s+(?:step|jump|plate|increment)))?"
)
_WHO = r"(?:you|they|she|he|the\s+client)\s+"
_OVER = (
    r"(?:(?:once|if|when|whenever|after)\s+)?"
    rf"(?:{_WHO})?(?:(?:gets?|does|do|can\s+do|is|are|manages?)\s+)?"
)
ABOVE = rf"{_OVER}(?:over|above|past|beyond|more\s+than|exceeding|exceed)"
REACHED = (
    rf"(?:(?:once|if|when|whenever|after|upon|on|as\s+soon\s+as)\s+)?(?:{_WHO}|you've\s+)?"
    r"(?:(?:can\s+)?(?:hits?|gets?|got|reach(?:es)?|reached|reaching|hitting|do|does|done|makes?|manages?|gets?\s+to)\s+"
    r"(?:all\s+)?|at\s+|until\s+)"
)
TOP = (
    r"(?:(?:once|if|when|whenever|after|upon)\s+)?(?:you\s+)?(?:(?:can\s+)?(?:hit|get|reach|reached|reaching|hitting|"
    r"are\s+at|get\s+to)\s+|at\s+)(?:the\s+)?top(?:\s+end)?(?:\s+of\s+(?:the|your|its)\s+(?:rep\s+)?range)?"
)
COUNT_UNIT = r"(?:\s*(?:(?:full\s+)?reps?|repetitions|seconds?|secs?|s\b|times))?"
THEN = r"\s*[,:]?\s*(?:->|=>)?\s*(?:then\s+|you\s+|we\s+|please\s+)*"

LEAVE = (
    r"(?:(?:stop(?:ping)?|leav(?:e|ing)|keep(?:ing)?|finish(?:ing)?|end(?:ing)?|with|about|at\s+least)\s+)*"
)
SHORT_OF = (
    r"(?:short(?:\s+of\s+(?:failure|your\s+limit))?|in\s+reserve|in\s+the\s+tank|left(?:\s+in\s+the\s+tank)?|"
    r"(?:before|shy\s+of|away\s+from|from|off)\s+failure|shy)"
)
LOAD = r"(?:(?:load|weight)\s+)?"
BODY_WEIGHT = r"(?:body\s*-?\s*weight|bw)"


def number(text: str) -> int:
    """Return the number that digits, a word or a time of minutes and seconds ("1:30") stand for."""
    if ":" in text:
        minutes, seconds = text.split(":")
        return int(minutes) * 60 + int(seconds)
    return int(text) if text.isdigit() else _NUMBERS[text.casefold()]


def number_word(value: int) -> str:
    """Return a small number as a word, as it is written on a sheet."""
    return _WORDS[value] if value < len(_WORDS) else str(value)
