"""How a coach asks who needs her, who trains, and whom one matter concerns: over all clients.

The language is that of `phrases.py`, which takes these turns after those of `people_phrases.py`.
"""

from domain.coach_requests import WhoKind

ANYONE = """
who|whos|who else|who (of|among) (them|my clients|my people)|anyone|anybody|is anyone|is anybody|has anyone
has anybody|did anyone|did anybody|does anyone|does anybody|which clients|which (of|ones of) (my clients|them)
which of my (people|lot|ones)|are any of my clients|any of my clients
"""
"""Whom is asked about, where it can be any client."""

WHO_TURNS: tuple[tuple[WhoKind, str], ...] = (
    (
        "who needs me",
        """
        (who|what|whos|which clients) [is] (needs|need|needing) [my] (me|help|attention|us)
        (who|whos) [is] (waiting|next|first) [on|for] [me]
        {anyone} (needs|need|wants|want) [my] (me|help|attention|something from me|a word)
        (what|whats) [is] on (my plate|my list|the list|my desk|todays list)
        (who|whom) do i owe [an answer|a reply|an answer to|something]
        (who|whom|what) (do|should|must) i [have to|need to] (get back to|answer|reply to|write to|look at|
        + see to|see|call|talk to|deal with|do) [first]
        who
        (what|whats) [is] (open|waiting|new|on|left|to do|urgent|outstanding|pending) [for|with] [me]
        [is there] anything [open|urgent|new|waiting|to do|i should know|i need to know] [for me]
        any (alerts|matters|news|trouble|problems|issues)
        [is there] (anything|something) (i should|i need to|i have to|i must|i can|for me to|to) (do|know|see|
        + look at|settle|deal with|decide|answer)
        (what|whats) (is|s) (up|new|cooking|happening|going on|the news|the latest)
        (whats|what) (up|new|happening|going on|next)
        (list|show|show me|see|name|give me|read me) [all] [of] [my|the|our] [own] clients
        how many clients (do i have|have i|have i got|are there|are mine)
        who are [all] my clients
        who all (needs|need|wants) [my] (me|help)
        (overview|summary|status|alerts|briefing|recap|clients|my clients|list clients|roster)
        [what did] i miss [anything]
        what did i miss
        how (is|are) (everyone|everybody|they|we|things|my clients|all of them|the clients|all) [doing|
        + going|getting on]
        hows (everyone|everybody|it) [doing|going]
        """,
    ),
    (
        "who trains",
        """
        (who|whos|who is|who will|who has) (train|trains|training|on|up|due|in|lifting|work out|
        + working out|a workout|workouts) [day:({day})]
        (today|todays|tomorrow|tomorrows) [clients|workouts|training|workout]
        (day:({day}))
        """,
    ),
    (
        "who stalled",
        """
        {anyone} [is|are|has|have] [been] (stalled|stalling|stuck|plateaued|plateauing|
        + flat) [on|with|in] [..3]
        {anyone} [is|has|are] (not|isnt|hasnt|arent) (progressing|improving|moving|gaining|
        + improved|progressed|getting stronger|getting anywhere)
        (any|the|all|show|show me|list) [the] (stalls|plateaus|stall)
        stalls
        """,
    ),
    (
        "who hurts",
        """
        {anyone} [is|has|are|in] (hurt|hurts|hurting|
        + injured|sore|pain|in pain|a pain|an injury|aching|injuries|aches)
        any (pain|pains|injuries|injury|aches)
        (pain|injuries)
        """,
    ),
    (
        "who missed",
        """
        {anyone} [has|is|have] (missed|miss|misses|
        + skipped|skip|behind|late|missing|overdue) [it|a workout|workouts|training|their workout|
        + theirs|out] [yesterday]
        {anyone} (hasnt|has not|havent|didnt|did not) [been] (train|trained|training|written|wrote|been) (for|
        + in|since|this|last|the) ....4
        {anyone} (didnt|did not|hasnt|has not|havent) (train|trained|do|done|show|shown|turn|
        + turned) [up|theirs|it] [yesterday]
        [any] missed [workouts]
        """,
    ),
    (
        "who asked",
        """
        {anyone} [has|have|is] (asked|asking|ask|
        + a question|questions|written|wrote|waiting for an answer) [me|something|anything|a question]
        [any|the|open|are there any] (question|questions) [waiting|open|left|to answer|unanswered] [for me]
        """,
    ),
    (
        "who is due a review",
        """
        {anyone} [is|has] [due] [for] (a review|review|reviews|reviewed)
        [any|the] reviews [due]
        """,
    ),
    (
        "who is new",
        """
        {anyone} [is] (new|joining|starting|joined|waiting to (start|begin)|to be released|
        + to release)
        [any|the] new [clients|ones|people]
        """,
    ),
    (
        "who is away",
        """
        {anyone} [is|are|has] (away|paused|ill|sick|off sick|off ill|unwell|not well|on holiday|
        + on vacation|out|off)
        """,
    ),
)
