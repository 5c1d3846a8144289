"""Whether words are of another language than English, which is all that can be read here so far."""

import re

from domain.reading.english import is_english
from domain.reading.words import words_of

_SMALL = words_of(
    """
    ich der die das und nicht ist mein heute morgen danke hallo bitte guten mit kein keine wie wann warum
    la los las que hoy hola gracias por como cuando donde esta estoy tengo manana buenos buenas
    je le les des est oui bonjour merci avec pour quoi quand aujourd hui demain suis mon une
    il lo che oggi ciao grazie come quando sono domani per buongiorno non
    eu voce hoje ola obrigado obrigada amanha nao bom dia quero
    ik het een niet vandaag dank jij wat hoe wanneer goedemorgen
    jag idag tack hej inte och vad jeg takk ikke dag hva
    dzien dobry dziekuje jestem bugun merhaba tesekkurler
    """
)
"""Small and common words of languages written in Latin letters."""
_ALSO_ENGLISH = frozenset(
    {"die", "come", "non", "per", "los", "het", "dag", "bom", "dia", "wat", "mit", "la"}
)
"""Those by which alone no message is judged."""
_SHORTEST = 4
"""How many letters the words of the English list have at least."""
_WORDS = re.compile(r"[^\W\d_]+")


def is_other_language(text: str) -> bool:
    """Return whether words are of another language: some word or sign shows it, and none is English."""
    words = [word.casefold() for word in _WORDS.findall(text.replace("’", "'"))]
    long = [word for word in words if len(word) >= _SHORTEST and word not in _SMALL]
    if any(is_english(word) for word in long):
        return False
    if any(word in _SMALL - _ALSO_ENGLISH for word in words) or any(sign in "¿¡" for sign in text):
        return bool(words)
    return len(long) > 1 and any(not word.isascii() for word in words)
