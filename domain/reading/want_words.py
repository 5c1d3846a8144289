"""Turns of phrase to hear no more, and to take back the last record, as data."""

from domain.reading.patterns import Pattern
from domain.reading.words import words_of

STOP = Pattern(
    """
    (stop|quit|cease) {sending} me? ..1 [{messages}]
    (stop|quit|cease) to (send|write|text|message|remind|contact)
    enough (with|of) (the|your|these|all) ..1 {messages}|{messages} ....5 stop (them|it|that) !(at)
    stop (these|the|all|your|with) ..2 ({messages}|nagging|spam)
    stop {messages}
    stop it with the (messages|reminders)
    no more [of (these|your)] {messages}
    (dont|do not) (want|wish|need|like) [to|get|receive|have]* [any|more] [of] [these|your|the] {messages}
    dont need any? more? [of (these|your)] {messages}
    (dont|do not|never) (text|message|write|contact|remind|send) to? me
    (turn|switch|shut) [off|them off|the] [the|these|your|my|all] ({messages}|bot) off?
    (mute|silence) [me|this|the bot|the reminders|reminders]
    leave me alone|opt out|unsubscribe
    take me off (this|the|your) (list|bot)|take me off this >(.|!|$)|delete me [from]
    remove me [from (this|the|your) _]
    cancel my (reminders|messages|subscription)|delete my (number|account|data)
    quit it with (the|these) {messages}|^ stop it [please|now] $
    ^ please? stop [please|now|it] [!|.]* $
    """,
    sending=words_of(
        "messaging texting sending writing contacting reminding notifying bothering nagging pinging"
    ),
    messages=words_of(
        """message messages text texts reminder reminders notification notifications msg msgs ping pings"""
    ),
)

UNDO = Pattern(
    """
    (oops|whoops|sorry|please|pls) (delete|remove|scrap) >(.|!|$)
    undo !(my {worn}) [that|it|the last [one|set]|last|please]
    get rid of {the_last}
    {sent} [it|that|this|the last one] (twice|double|by accident)
    sent [it|that|this]* # [times] $
    (delete|remove|cancel) (one|the duplicate) [.|!] $
    duplicate , {delete}|^ disregard [please|pls] [.|!] $
    accidentally (sent|logged|posted|recorded) (that|it|this)
    (didnt|did not) mean to (send|log|post|write|record|save) (that|it|this)
    (that|it) wasnt me|(that set|that one|the last (one|set)) never happened
    {delete} [about|out|again] {the_last}
    take {the_last_set} (back|off|out|away|down) !(to|from|on)
    take (back|off|out) {the_last_set}
    {it} (was|is) [_] {mistake}
    wrong (chat|person|number|window|conversation)
    (sent|pressed send|hit send|pressed enter) [that|it|this] (by (mistake|accident)|accidentally|in error)
    [i] (didnt|did not|havent|never) [actually|really|even] (do|did|done|finish) {not_done}
    (that [one|set]|it|last one|the last (one|set)) (doesnt|didnt|shouldnt|does not) count !(as)
    dont (count|log|record|save) (that|it|the last [one|set])
    (nevermind|never mind|nvm|forget) (that|that last|the last|what i (said|sent|wrote)) [one|set]
    """,
    delete=words_of(
        """scrap scratch delete remove cancel erase forget ignore bin discard void strike disregard drop clear
        revert retract withdraw reverse"""
    ),
    worn=words_of("belt shoes laces straps wraps"),
    sent="[i|ive] (sent|logged|entered|posted|recorded|typed)",
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
        meant for (someone|my|somebody|another)|not (mine|meant for you)|wrong person|the wrong chat
        my (buddys|friends|wifes|husbands|mates|sons)
    """,
    not_done="that (one|set)|that|this one|this|it [yet]|the last [one|set]",
)
