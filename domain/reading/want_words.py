"""Words of what clients want done, as data: to hear no more, and to take back."""

import re

from domain.reading.question_words import said
from domain.reading.words import words_of

STOP = said(
    r"stop (?:messaging|texting|sending|writing|contacting|reminding|notifying|bothering|nagging"
    r"|pinging)(?: me)?(?: \w+)?(?: (?:messages?|texts?|reminders?|notifications?))?",
    r"stop (?:these|the|all|your|with)(?: \w+){0,2} (?:messages?|texts?|reminders?|notifications?|msgs"
    r"|pings|nagging|spam)",
    r"stop (?:messages?|reminders?|texts?|notifications?)",
    r"unsubscribe(?: me)?",
    r"(?:no more|dont want(?: any)?(?: more)?|do not want(?: any)?(?: more)?"
    r"|dont need(?: any)?(?: more)?) (?:of (?:these|your) )?(?:messages?|reminders?|texts?|notifications?"
    r"|msgs?|pings?)",
    r"leave me alone",
    r"(?:turn|switch|shut) (?:off |them off|the )?(?:the |these |your |my |all )?(?:reminders?|messages?"
    r"|notifications?|bot|texts?)(?: off)?",
    r"(?:dont|do not|please dont|never) (?:text|message|write|contact|remind|send)(?: to)? me(?: again"
    r"| any ?more| anymore| messages| reminders| things)?",
    r"(?:mute|silence)(?: me| this| the bot| the reminders| reminders)?",
    r"stop it with the (?:messages|reminders)",
    r"take me off (?:this|the|your) (?:list|bot)",
    r"opt out|cancel my (?:reminders|messages|subscription)|delete my (?:number|account|data)",
    r"remove me(?: from (?:this|the|your) \w+)?",
)

STOP_ALONE = re.compile(r"^(?:please )?stop(?: please| now| it)?(?: [!.])*$")

UNDO = said(
    r"(?:oops|whoops|sorry|please|pls) (?:delete|remove|scrap)(?= [.!]|$)",
    r"undo(?: (?:that|it|the last(?: one| set)?|last|please))?",
    r"(?:scrap|scratch|delete|remove|cancel|erase|forget|ignore|bin|discard|void|strike|disregard|drop"
    r"|clear|revert|retract|withdraw)(?: (?:about|out))? (?:that|it|this|the (?:last|latest"
    r"|previous)(?: (?:one|set|entry|message|record|thing|bit|report|number|log))?|my (?:last|previous"
    r"|latest)(?: (?:one|set|entry|message|text|record))?|last(?: (?:one|set|entry|message|record))?"
    r"|what i (?:just )?(?:said|sent|wrote|typed)|that (?:last )?(?:one|set|entry|message|record)"
    r"|the set i just (?:sent|logged)|the (?:\w+ )?(?:one|set) i just (?:sent|logged|put in))",
    r"take (?:that|it|this|the last(?: (?:one|set|entry))?|my last(?: (?:one|set))?|that (?:last )?(?:one"
    r"|set)) (?:back|off|out|away|down)",
    r"take (?:back|off|out) (?:that|it|the last(?: (?:one|set|entry))?|my last(?: (?:one|set))?)",
    r"(?:that|this|it|the last one|last one|last set|the last set|that set|that one|my last message"
    r"|last message) (?:was|is)(?: \w+)? (?:a mistake|an accident|by mistake|by accident"
    r"|sent by (?:mistake|accident)|meant for (?:someone|my|somebody|another)(?: \w+)*|not mine"
    r"|not meant for you|nonsense|an error|wrong person|the wrong chat|my (?:buddys|friends|wifes"
    r"|husbands|mates|sons))",
    r"wrong (?:chat|person|number|window|conversation)",
    r"(?:sent|pressed send|hit send|pressed enter)(?: that| it| this)? (?:by (?:mistake|accident)"
    r"|accidentally|in error)",
    r"(?:i )?(?:didnt|did not|havent|never) (?:actually |really |even )?(?:do|did|done|finish) (?:that|it"
    r"|the last(?: one| set)?|this one|that one|that set|this|it yet)",
    r"(?:that|it|the last one|last one|that set|the last set) (?:doesnt|didnt|shouldnt|does not) count",
    r"dont (?:count|log|record|save) (?:that|it|the last(?: one| set)?)",
    r"(?:never ?mind|forget) (?:that|the last|what i (?:said|sent|wrote))(?: (?:one|set))?",
)

STOP_TRIGGERS = words_of(
    """stop unsubscribe more want need alone turn switch shut dont do never mute silence take opt cancel
    delete remove"""
)

UNDO_TRIGGERS = words_of(
    """undo scrap scratch delete remove cancel erase forget ignore bin discard void strike disregard drop
    clear revert retract withdraw take mistake accident wrong sent pressed hit didnt did havent never
    doesnt shouldnt does dont nevermind mind not mine nonsense error meant"""
)
