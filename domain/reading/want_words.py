"""Turns of phrase to hear no more, and to take back the last record, as data."""

from domain.reading.patterns import Pattern
from domain.reading.words import PERSON_WORDS, words_of

STOP = Pattern(
    """
    {stop} {sending} me? ..1 [{messages}]
    (stop|quit|cease) to (send|write|text|message|remind|contact)
    enough (with|of) (the|your|these|all) ..1 {messages}|{messages} ....5 stop (them|it|that) !(at)
    {stop} (these|the|all|your|with) ..2 ({messages}|nagging|spam)
    <!({not_to}) (stop|cease|end|finish) [with] [all|the|these|your|those|daily]* {messages} !(from|
        of (my|work))
    stop it with the (messages|reminders)
    {stop} {flooding} [up]* [my (phone|inbox|evenings)|me|please|pls]* {ends}
    no more [of] [these|those|your|the|morning|evening|daily|any]* {messages}|no further {messages}
    no [more|further] {messages} [at all|please|pls]* {any_more}
    ^ [please|pls|sorry|hi|coach|,]* no {messages} [at all] [please|pls|thanks|thank you|thx] {ends}
    {messages} [,|please|pls]* no more {ends}
    not (send|write|text) [to] me [any] (more|further) {messages}
    (send|write|text|message|give) [to] (me|us) no [more|further] {messages}
    (send|write|text|message) [to] me no (more|longer|further) {ends}
    (send|write|text|message|give) me nothing [more|anymore|any more|further]* {ends}
    (want|wish|need|like) [to (get|receive|have|be sent)] no [more|further] [of [these|your]] {messages}
    dont (want|wish|need|like) [to|get|receive|have]* [any|more] [of] [these|your|the] {messages}
    dont (want|wish|like) to (be {reminded}|hear from (you|this)) !(of|that|when|at|on)
    dont (want|wanna|wish|like|need) [to]* [get|receive|have|see]* (these|this|those|
        any of these) {any_more}
    no longer (wish|want|like|need) [to] [get|receive|have|be {reminded}]* (these|them|this|those|your|any)
    (rather|prefer to|prefer) not [to] (get|receive|have|be sent) ..2 {messages}
    (stop|quit) (getting|receiving) [these|the|your|any|so many|all]* {messages}
    {messages} ....5 , [please|pls|just]* stop [it|please|pls|now]* {ends}
    (lose|forget|delete) my (number|contact)
    not (text|message|write|contact|remind|ping) [to] (me|us) {any_more}
    dont need any? more? [of (these|your)] {messages}
    (dont|never) (text|message|write|contact|remind|send) to? me
    (turn|switch|shut) [off|them off|the] [the|these|your|my|all] ({messages}|bot) off?
    (mute|silence) (me|yourself|it !(down)|[this|the|your|these|all|my]* (bot|chat|{messages}))
    ^ (mute|silence|unsubscribe) [please|pls|me|now]* {ends}
    leave me alone|opt out !(of (the _|squat~|bench~))|unsubscribe
    take me off (this|the|your) (list|bot)|take me off [this|here|please|pls]* {ends}|delete me [from]
    remove me [from (this|the|your) _]|(sign|take|count|opt) me (off|out) [of|from] (this|the|your) (bot|
        list|chat|{messages})
    cancel my (reminders|messages|subscription)|delete my (number|account|data)
    (quit it|stfu|shut up|knock it off|pack it in|give over|enough) with [all|the|these|your]* {messages}
    ^ stop (it|this|that) [please|now] $
    ^ [please|pls]* stop [please|pls|plz|now|it|this|all this|thanks|thank you|thx]* [!|.]* $
    """,
    stop="<!({not_to}) (stop|quit|cease)",
    not_to=words_of("wont cant couldnt doesnt didnt dont never not wouldnt didn isnt"),
    sending=words_of(
        "messaging texting sending writing contacting reminding notifying bothering nagging pinging"
    ),
    flooding=words_of(
        "blowing spamming flooding filling clogging bombarding pestering hassling harassing buzzing spam"
    ),
    reminded="(reminded|contacted|messaged|texted|pinged|notified|written to)",
    any_more="(anymore|any more|any longer|again|no more)",
    ends=">(.|!|,|$|-|'\n'|thanks|thank|thx|k|cheers|it|the|this|i|lol)",
    messages=words_of(
        """message messages text texts reminder reminders notification notifications msg msgs ping pings
        messeges mesages"""
    ),
)
STOP_TOLD = Pattern(
    """
    (told|telling|asked|asking|begged|tells|asks) !(you|u|ya|this|the bot) ..3 to (stop|quit|cease)
    (my|the) {person} ..2 to (stop|quit|cease)
    """,
    person=PERSON_WORDS | words_of("ex exes work office mates kids"),
)
"""Somebody else was told to stop."""

DELETE = Pattern(
    "(remove|delete|erase|unlog|undo|scrap|scratch|cancel|take (away|out|off)) [the|my|that|last]*"
)
"""Words before the exercise whose record is to be taken back: "remove the rows"."""

UNDO = Pattern(
    """
    (oops|whoops|sorry|please|pls) (delete|remove|scrap) >(.|!|$)
    undo !(my {worn}|something|things|stuff|sets|a|an) [that|it|the last [one|set]|last|please]
    (please|kindly) [to|just|can you|could you]* {delete} [it|that|this|again]* {done_with} !(from (my|the|
        todays|this))
    (take|taking) (the|that|my) !({time}) ...4 (off|out) (again|please|>('?'|.|$))
    get rid of {the_last}|get rid [please|pls|of] >(.|!|$)
    {sent} [it|that|this|the last one] (twice|double|by accident|# times $)
    (logged|entered|recorded|posted) [the|my]* ..2 (twice|double|by accident)
    sent [it|that|this]* # [times] $
    (delete|remove|cancel) (one|the duplicate) [.|!] $
    duplicate , {delete}
    ^ [oops|sorry|whoops|,|ignore|a|thats a|that was a|that is a]* {duplicate} $
    ^ [please|pls|oops|sorry|,]* {on_its_own} [{on_its_own}|it|that|please|pls|thanks]* [.|!]* $
    ^ [oops|whoops|sorry|,|a|that was|was|just]* {slip} [sorry|lol|.|!|,|please|pls|that one|that|
        on the last one]* $
    (del|rm) [the|my|that]* last [one|set|entry] [please|pls]* $
    (make|take|throw|chuck|toss|sling) (out|away) {the_record}|(make|throw|chuck|toss|
        bin) {the_record} (away|out|off)
    {the_last_one} be (undone|deleted|removed|erased|taken (back|off|out))
    (,|.|-) (delete|remove|undo|erase|unsend|scrub it|scrub that) [it|that|again|please|pls|thanks]* [.|!]* $
    (ctrl|control|cmd|command|strg) [+|-] z !(#)
    (roll|rolling) back (that|it|this|the last|my last|one)|rollback (that|it|the last|my last)
    accidentally (sent|logged|posted|recorded) (that|it|this)
    didnt mean to (send|log|post|write|record|save) (that|it|this)
    (that|it|{the_last_one}) wasnt (me|mine)|(that set|that one|the last (one|set)) never happened
    {delete} [about|out|again|please|pls]* {the_last}
    {rub} ({the_last_one}|{the_record}|it >($|.|!|please|pls))
    {nuke} [out|off|away] {the_record} [out|off|away|again]*
    {told_to} {bin} {the_last_one} [out|off|away|again|please|pls|pal|thanks|lol|bro|coach|,|i|.|
        !]* {done_with}
    {the_record} [{you_can}]* (deleted|removed|{rub_or_delete}) [again|please|pls|thanks|,|.|!]* $
    (the|that|my) last (one|set) [{you_can}]* {rub_or_delete} [again|please|pls|thanks]* (>(,|.|!|-|')')|$)
    {the_last_one} (shouldnt be (there|here|in there|on there|in|recorded)|
        doesnt belong (there|here))
    take {the_last_set} (back|off|out|away|down) !(to|from|on)
    take (back|off|out|away) {the_last_set} !(of)
    {it} (was|is) [_] {mistake}
    wrong (chat|person|number|window|conversation)
    (sent|pressed send|hit send|pressed enter) [that|it|this] (by (mistake|accident)|accidentally|in error)
    (pocket|butt|bum) (sent|typed|texted|dialled|dialed|messaged|logged)
    my ..1 {small} (sent|typed|wrote|logged|posted|pressed|hit|tapped) (that|this|it !(#)|send|the (last|
        button))
    [i] (didnt|havent|never) [actually|really|even] (do|did|done|finish) {not_done}
    <!(one|ones|rep|reps|half|but|and) (that [one|set]|it) (doesnt|didnt|shouldnt) count !(as)
    ^ [sorry|oops|no|,]* [the] last (one|set) (doesnt|didnt|shouldnt) count !(as)
    <!(you|u|we|i|if|they|people) dont (count|log|record|save) (that|it|the last [one|set])
    (nevermind|never mind|nvm|forget) (that|that last|the last|what i (said|sent|wrote)) [one|set]
    """,
    time="""
        _ (week|weeks|day|days)|week|weeks|day|days|rest|month|morning|afternoon|evening|night|weekend|time
    """,
    delete=words_of(
        """scrap scratch delete remove cancel erase forget ignore bin discard void strike disregard drop clear
        revert retract withdraw reverse unsend unlog unrecord unpost rescind deleting removing erasing
        undoing cancelling scrubbing"""
    ),
    duplicate="(duplicate|dupe|double (entry|post)) [sorry|.|!|,|please|pls|message|entry]*",
    on_its_own=words_of("disregard revert rollback unsend unlog rescind delete erase undo"),
    slip="(misclick|misclicked|mis click|mis clicked|mistap|mistapped|mis tap|mis send|missend|missent)",
    rub="(rub|blot|cross|scrub|strike|scratch|wipe|blank|un) (out|off|away|log|send|record|post)",
    rub_or_delete="(rub out|cross out|strike out|delete|remove|erase|undo|cancel|scrap|forget|bin)",
    nuke=words_of(
        """nuke nix yeet zap kill lose trash chuck wipe dump toss axe sack ditch torch burn banish
        scrub purge chop obliterate bin"""
    ),
    told_to="^|<({opening})",
    opening=words_of(
        ", . ! please pls plz just can you u could would coach bro mate oops whoops no nah wait kindly now"
    )
    | {"\n"},
    bin=words_of("nuke nix yeet zap trash wipe axe chuck toss ditch dump purge"),
    done_with=">($|.|!|please|pls)",
    you_can="you|u|can|could|should|must|may|needs|has|have|to|be|please|pls|,|-|i|it|just|:|we",
    small=words_of(
        "cat dog kid toddler baby son daughter child kids pocket phone keyboard niece nephew puppy"
    ),
    worn=words_of("belt shoes laces straps wraps"),
    sent="[i|ive] (sent|logged|entered|posted|recorded|typed)",
    the_record="""
        (the|that|this|my|last) [last|latest|previous|whole]* (entry|entries|record|message|text|log|line|msg)
        that last (one|set) (i|that i|from me)
        (the|that|this) [last] (one|set) i [just] (sent|logged|put in|typed|entered)
    """,
    the_last_one="""
        [the|that|my|this] (last|latest|previous) [{record}]|that (one|set|{record})|that >($|.|!|please|pls)
    """,
    the_last="""
        that last? {record}|the set i just (sent|logged)|the ..1 (one|set) i just (sent|logged|put in)
        that|it|this|the (last|latest|previous) [{record}|thing|bit|report|number|log]
        my (last|previous|latest) [{record}]|last [{record}]|what i just? (said|sent|wrote|typed)
    """,
    record=words_of("one set entry message record text"),
    the_last_set="""
        that last? (one|set)|that|it|this|the last [one|set|entry]|my last [one|set]
    """,
    it="that|this|it|[the] last (one|set)|that (set|one)|[my] last message",
    mistake="""
        a mistake|an (accident|error)|[sent] by (mistake|accident)|nonsense
        (misclick|mistap|mis click|slip of the thumb)|for (the (other|wrong)|another) chat|for somebody else
        meant for (someone|my|somebody|another)|not (mine|meant for you)|wrong person|the wrong chat
        my (buddys|friends|wifes|husbands|mates|sons)
    """,
    not_done="that (one|set)|that|this one|this|it [yet]|the last [one|set]",
)
