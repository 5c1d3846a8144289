"""How a coach speaks of notes on a client, of invitations, and of handing a client over.

The language is that of `phrases.py`, which takes these turns first.
"""

from domain.coach_requests import PeopleKind

PLACES = {"first": 1, "second": 2, "third": 3, "fourth": 4, "fifth": 5}
"""Which note is meant by its place in words."""

PEOPLE_TURNS: tuple[tuple[PeopleKind, str], ...] = (
    (
        "forget that note",
        """
        ({forget}|undo) (that|this|the last|my last|the) [last] note
        ({forget}) what i [just] noted
        """,
    ),
    (
        "forget note",
        """
        ({forget}) [that|this|the|my] [last|latest|which:(first|second|third|fourth|fifth)] note [number|
        + no] [n:#] (on|about|for|of|from) who:{who}
        ({forget}) who:{who} [last|latest] note [number|no] [n:#]
        ({forget}) every:(notes|all notes|all [of] (the|my) notes|
        + (the|my) notes|every note) (on|about|for|of) who:{who}
        ({forget}) [all|all of] who:{who} every:notes
        ({forget}) every:(everything|all) [that] i [have] noted (on|
        + about) who:{who}
        """,
    ),
    (
        "notes",
        """
        [show|show me|give me|read|read me|see|list|open] [my|the|all|all my|all the|any] (notes|note) (on|
        + about|for|of) who:{all}
        [show|show me|give me|read|read me|see|list|open] [all] who:{who} (notes|note)
        [my] notes who:{who}
        [show|show me|give me|read|read me|see|list|open] [my|the|all|all my|all the] notes
        what (did i note|have i noted|i noted|i have noted|did i write down|have i written down|notes have i|
        + notes do i have|did i jot down|is noted|do i have noted) [down] (on|about|for|of) who:{all}
        [is|was] (anything|something) noted (on|about|for) who:{who}
        (any|are there any|do i have|do i have any|have i any) (notes|note) (on|about|for|of) who:{who}
        """,
    ),
    (
        "hand over",
        """
        (hand|give|pass|transfer|refer|turn|sign|make) [over] who:{who} [on|over|across] (to|over to|on to|
        + onto) [coach|the coach] coach:(_ ...3)
        (move|switch|change|send|assign|bring) who:{who} [over] to [the] coach coach:(_ ...3)
        (move|switch|send|change) who:{who} over to coach:(_ ...3)
        [coach] coach:(_ ..2) to (take|have|take over|take on) who:{who} [on|over]
        [let|have] [coach] coach:(_ ..2) (takes|take|is taking|will be taking|will take|should take|
        + is to take|can take|can have|may have|takes on|takes over|take over|will take over|is taking over|
        + should take over|is to take over) who:{who} [on|over|from me]
        make coach:(_ ..2) who:{who} [new] coach
        who:{who} (should go|goes|is to go|is going|moves|should move|can go|
        + has to go) [over] to [coach] coach:(_ ...3)
        who:{who} new coach (is|will be|is to be) coach:(_ ...3)
        who:{who} (gets|is to get|will have) coach:(_ ..2) as [a|the] [new] coach
        coach:(_ ..2) (is|becomes|will be|should be|is to be) who:{who} [new] coach [from (now on|today|now)]
        (offer|pass on) who:{who} to [coach] coach:(_ ...3)
        """,
    ),
    (
        "keep",
        """
        (keep|i keep|ill keep|i will keep|i want to keep|im keeping|
        + i am keeping) who:{who} [with me|myself|after all|then|for myself]
        (withdraw|take back|cancel|revoke|stop) [the|my|that] (offer|handover|hand over|handing over|transfer)
        + (of|for|with) who:{who} [to ..3]
        (withdraw|take back|cancel|revoke|stop) [the|my|that] who:{who} (offer|handover|transfer)
        [i|we] (do not|dont) [want to] (hand|give|pass|transfer|offer) [over] who:{who} (over|on|away|up|
        + to ..3) [to ..3] [after all]
        [i|we] (do not|dont) [want to] (give up|give away|hand over|lose) who:{who}
        who:{who} (stays|staying|is staying|is to stay|should stay|can stay) [with me|mine|here] [after all]
        """,
    ),
    (
        "invitations",
        """
        [show|show me|list] [my|the|all|all my|all the|which|what|any|are there any] (open|pending|unused|
        + outstanding) (invitations|invites|invitation|codes) [are [still] (open|left|there|pending)]
        [show|show me|list] [my|the|all|all my|all the] (invitations|invites)
        (which|what) (invitations|invites|codes) are [still] (open|left|there|pending|out|unused)
        (who|whos|who is|who have i) [is|have i] (invited|been invited)
        who (has not|hasnt) (joined|come|accepted) [in|yet|my invitation]
        who [still] (has to|needs to|must|has yet to) (accept|take up|use|come in|join) [my|the|
        + their] [invitation|invite|code]
        """,
    ),
)

FORGET = "forget|delete|remove|erase|drop|scratch|scrap|cancel|bin|wipe|clear|get rid of|throw away"

NOTING = """
(note|notes|a note|make a note|take a note|write a note|write down|jot down|add a note|keep a note|
+ leave a note|put a note|new note|private note|note down|note to self|note to myself|
+ reminder to self|add to my notes) (on|about|for|of|concerning) who:{who} [that] [:|,|-|;]
note who:{who} (:|,|-)
(add|make|new|write|put) [a|new] note [to|for|on] who:{who} (:|,|-)
private note [on|for|about] who:{who} [:|,|-]
for my notes (on|about) who:{who} [that] [:|,|-]
who:{who} note (:|-)
(remember|keep in mind|bear in mind|dont forget|do not forget) (about|of|for|on) who:{who} [that] [:|,|-]
"""
"""How a note begins; what follows is its text."""

NOTING_OF = """
(note|note down|make a note|take a note|remember|keep in mind|bear in mind|dont forget|do not forget|
+ write down|jot down) [that] [for me] [that] [:] who:{who}
"""
"""How a note begins whose text has the name in it."""

TAKING = """
(take|accept|have|welcome|yes to|ok to|yes i take|yes take|i take|ill take|i will take|i accept|i would take|
+ id take|(happy|glad|pleased) to (take|have)|i can take|we take)
+ [on|over] @client [on|over] [as name:(_ ...3)]
send @client [over] [to me|along]
@client (is welcome|can come|may come) [to me]
"""
DECLINING = """
(decline|refuse|reject|turn down|no to|not|i decline|i refuse|pass on|no room for) [on|over] @client
(i|we) (cant|can not|cannot|do not|dont|wont|will not|wouldnt) [want to] (take|accept|have) [on|over] @client
+ [on|over]
(do not|dont) (take|accept) [on|over] @client [on|over]
sorry [,] no [,] [not] @client
"""
