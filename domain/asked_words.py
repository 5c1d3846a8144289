"""Which plain questions about the client's own journal, settings and data a message asks, as a whole.

What needs a coach, and what is planned, is told apart by `domain.reading`; a question of these is none of it.
"""

from typing import Literal

from domain.expressions import Expression
from domain.joining_words import plainly

Asked = Literal[
    "seen",
    "stored",
    "equipment",
    "settings",
    "last workout",
    "best",
    "stronger",
    "stones",
    "dismiss",
    "hour",
    "coach",
    "lost",
    "which stop",
]
"""Who sees the data, what is stored, what there is to train with, the settings, the last workout, the best of
an exercise, whether strength has risen; a unit that loads do not come in; never mind;
another hour without saying which; how to reach the coach; not knowing what to do here; to
stop without saying what."""

_LEAD = (
    r"(?:(?:hi|hello|hey|ok|okay|so|and|sorry|please|but|well|by the way|btw)[,:. ]+)*"
    r"(?:(?:can|could|would|will) you (?:please )?(?:tell|show) me |(?:please )?(?:tell|show) me |remind me |"
    r"i(?:'d| would) like to (?:know|see) |do you know )?"
)
_TAIL = r"(?:[ ,]+(?:please|now|then|so far|at the moment|right now|anyway|actually|again|thanks))*"
_ALL = (
    r"(?:this|that|it|these|(?:all )?(?:my|the) \w+(?: \w+)?|"
    r"what i (?:write|type|send|say|tell you)(?: here)?|me)"
)

_QUESTIONS: dict[Asked, str] = {
    "seen": rf"who(?: else)? (?:all )?(?:can |will |may |could )?(?:sees?|reads?|knows?|looks? at|gets?)"
    rf"(?: about)? {_ALL}(?: here)?|"
    rf"who(?: else)? (?:has|have|got|'s got) access(?: to {_ALL})?|"
    r"is (?:this|it|my data|that|everything|what i write)(?: here)? (?:private|secret|confidential|safe|"
    r"secure)|"
    rf"(?:can|does|will) (?:anyone|anybody|other people|others|other clients|the others|my coach|the coach|"
    rf"everyone)"
    rf"(?: else)? (?:see|read) {_ALL}|"
    r"do you (?:share|sell|pass on|give away) (?:my |the )?(?:data|it|information|anything)(?: .{1,30})?|"
    r"where does (?:my data|it|this) go",
    "stored": r"what (?:happens|do you do|is done|will happen|becomes) (?:to|with|of) (?:all )?(?:my|the) "
    r"(?:data|messages|information|answers|journal)|"
    r"what(?:'?s| is| do| does| all| data| information| else| exactly| kind of data)*"
    r"(?: (?:you|this|it|the bot|kilopost|is|gets?|do|does))* (?:store|save|keep|know|collect|record|have|"
    r"stored|saved|"
    r"kept|collected)s?(?: (?:about|on|of|from) (?:me|us))?|what (?:data|information) (?:do you have|is "
    r"there)"
    r"(?: (?:about|on|of) me)?|(?:where|how long)(?: is| are| do you)? (?:my data|it|my messages)? ?"
    r"(?:stored|kept|keep it|keep my data|saved)",
    "equipment": r"(?:what|which)(?: kind of)? (?:equipment|kit|gear|plates|dumbbells|weights|bands|bar)"
    r"(?: and \w+)? (?:do i have|have i(?: got)?|do you (?:think i have|have(?: for me)?|know of|assume)|"
    r"am i (?:using|down for))(?: here)?|what(?:'?s| is| are)? (?:my )?(?:equipment|kit|gear)|"
    r"what do (?:i|you think i) have to train with|(?:my |the )?equipment|(?:show )?my (?:equipment|plates|"
    r"gear|kit)",
    "settings": r"(?:what(?:'?s| is| are)? )?(?:my |the )?settings|/settings|"
    r"(?:when|what time|at what time|at what hour)(?: do| will| are)? (?:you (?:remind|message|write to|"
    r"text) me|"
    r"(?:my |the )?reminders?(?: come| set)?|i get (?:my |the )?reminders?)|"
    r"(?:what|which) (?:unit|units)(?: do i (?:use|have)| am i (?:in|using)| are (?:set|we using))?|"
    r"what(?:'?s| is) my (?:unit|time ?zone|reminder(?: time| hour)?|hour|coach(?:'s name)?|programme|"
    r"program)|"
    r"(?:what|which) (?:time ?zone|zone)(?: am i in| do i have| are you using)?|"
    r"(?:what time|when|at what (?:time|hour)) is (?:my |the )(?:next )?reminder|"
    r"where (?:am i|do you think i am|do you think i live)|who(?:'s| is) my coach|"
    r"(?:what|which) (?:programme|program)(?: am i on| do i (?:do|follow|have))?|what time is it(?: here| "
    r"for me)?",
    "last workout": r"(?:what (?:did i do|was|were|were my (?:sets|numbers)|did we do) )?"
    r"(?:(?:my |the )?last (?:time|workout|session|training)|last time)(?: i (?:trained|did))?|"
    r"(?:when|what) (?:was|did) (?:my last (?:workout|session|training)|i (?:last )?train(?: last)?)|"
    r"when did i (?:last )?train(?: last)?|what did i do (?:last|the last) (?:time|workout|session)",
    "best": r"(?:what(?:'?s| is| are| was)? |show )?(?:my |the )?(?:all[- ]time |personal )?"
    r"(?:bests?|records?|pbs?|prs?)(?: (?:ever|lifts?|sets?|so far))?"
    r"(?: (?:on|at|in|of|for|with) (?:the |my )?(?P<of>.{1,40}?)| (?P<named>(?!on |at |in |of |for |with "
    r").{1,40}?))?"
    r"(?: ever| so far| of all time)?|"
    r"(?:what|how much|how many)(?: is| was)? the (?:most|heaviest|best)(?: i(?:'ve| have)?(?: ever)? "
    r"(?:lifted|done|did|managed))(?: (?:on|at|in|of|for|with) (?:the |my )?(?P<most>.{1,40}?))?",
    "stronger": r"(?:am i|have i|did i|will i|do you think i(?:'m| am|'ve| have))(?: really| actually| even)?"
    r"(?: been)?(?: get(?:ting)?| "
    r"got(?:ten)?| become|"
    r" becoming| grow(?:ing|n)?)*(?: any| much| a bit)? ?(?:stronger|strong)(?: yet| at all| over all| "
    r"overall)*|"
    r"(?:am i|have i)(?: really| been)? (?:making (?:any )?progress|progressing|improving|made (?:any "
    r")?progress|improved)"
    r"(?: at all| yet)?|is (?:this|it|the (?:programme|program|training))(?: really| actually)? working|"
    r"does (?:this|it|the training) work|is my strength (?:rising|going up|increasing|improving)|how "
    r"strong am i|how am i (?:doing|getting on|coming along|progressing)|"
    r"how(?:'s it| is it| am i|'m i)(?: going| doing| getting on| coming along| progressing)+"
    r"(?:,? (?:so far|overall|over all|these days|in general|since (?:the (?:start|beginning)|i (?:started|"
    r"began))|compared (?:to|with) (?:the (?:start|beginning)|before|last month)))+",
    "stones": r"(?:i use|use|i train in|my unit is|switch to|in) (?:stones?|st|ounces?|oz|grams?|tons?|"
    r"newtons?)",
    "hour": r"(?:can|could|would) you (?:please )?(?:remind|message|write to) me (?:an? (?:hour|bit|"
    r"little) |much )?"
    r"(?:earlier|later|sooner|at another (?:time|hour))(?: in the (?:day|morning|evening))?|"
    r"(?:remind|message) me (?:an? (?:hour|bit|little) |much )?(?:earlier|later|sooner)|"
    r"(?:change|move) (?:my |the )?(?:reminders?|reminder (?:time|hour))|"
    r"(?:the |my )?reminders? (?:come|comes|is|are) too (?:early|late)",
    "coach": r"(?:(?:i want|i need|i'd like|can i|could i|may i|let me|how (?:do|can) i)(?: to)? )?"
    r"(?:speak|talk|write|get through)(?: to| with)+ (?:my |the |a )?(?:coach|trainer|human|person|real "
    r"person|"
    r"somebody|someone)(?: myself| directly)?|(?:reach|contact|call|message|text) (?:my |the )(?:coach|"
    r"trainer)|"
    r"how (?:do|can) i (?:reach|contact|ask|message) (?:my |the )?(?:coach|trainer)",
    "lost": r"what|huh|eh|pardon|i (?:don't|do not|dont) (?:understand|get it|get this|know what to (?:do|"
    r"say|type))|"
    r"i(?:'m| am) (?:lost|confused)",
    "which stop": r"(?:(?:i(?:'d| would) like to|i(?: just)? want(?:ed)? to|i wanna|"
    r"(?:can|could|may|how (?:do|can)) i|i(?:'m| am) going to|"
    r"i(?:'ll| will| must| have to| need to| think i'll| think i will)) "
    r"(?:stop|finish|end)(?: up)?|"
    r"(?:i(?:'m| am) )?stopping|"
    r"(?:i(?:'m| am) )?not (?:gonna|going to) (?:carry on|continue|go on|keep (?:this|it) up)|i give up|"
    r"(?:i(?:'m| am) )?giving up)"
    r"(?: (?:with|training|it|the bot|this|that|everything|here|now|for (?:now|today)|today|sorry))*",
    "dismiss": r"(?:(?:no|nah|hmm+),? )*(?:leave it(?: then)?|"
    r"forget (?:it|about it)|"
    r"never ?mind|nvm|don't bother|doesn't matter|don't "
    r"worry(?: about it)?|"
    r"ignore (?:that|it|me)|no matter)",
}
_COMPILED = {asked: Expression(rf"{_LEAD}(?:{words}){_TAIL}") for asked, words in _QUESTIONS.items()}

LONGEST = 100
"""No question of these is longer. The house's own choice."""


def asked_in(text: str) -> tuple[Asked, str] | None:
    """Return what is asked, and the words for the exercise it is of, empty for none; None of all else."""
    said = plainly(text).rstrip("?! .")
    if len(said) > LONGEST:
        return None
    for asked, words in _COMPILED.items():
        if found := words.fullmatch(said):
            return asked, next((of for of in found.groupdict().values() if of), "")
    return None
