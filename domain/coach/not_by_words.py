"""What her words do not change for a coach: what is the client's own to say, and what stands in the sheet.

The language is that of `phrases.py`.
"""

from domain.coach_requests import Kind

OF_THE_CLIENT: tuple[tuple[Kind, str], ...] = (
    (
        "days",
        """
        (pause|freeze|suspend|unpause) who:{who} [training|workouts|plan]
        (pause|freeze|suspend) who:{who} [training|workouts|plan] (for|until|till|from|this|next) ....6
        (move|shift|postpone|push|delay|reschedule|bring) who:{who} [next] (workout|training|session|
        + workouts) ....6
        (skip|cancel|drop|leave out) who:{who} [next|whole] (workout|training|session|workouts) ....4
        (let|have|give) who:{who} [have|take] ({day}) off
        (let|have) who:{who} (rest|skip|train) (today|tonight|tomorrow|on ..2|this ..2|next ..2|monday|
        + tuesday|wednesday|thursday|friday|saturday|sunday|instead ....3)
        who:{who} (is|will be|goes|is going|has gone|went) [off] (on|away|ill|sick|travelling|traveling|
        + abroad|unwell|injured) [holiday|vacation|a trip|leave|a break] [until|till|for|from|this|next|all|
        + on] ....6
        who:{who} (cant|cannot|wont|is not going to|will not) (train|make it|come|be there|work out) ....6
        who:{who} has [got] [a|the] (flu|cold|fever|covid|day off work) ....4
        (stop|no more|no) (reminding|reminders for|reminders to|reminder for) who:{who}
        who:{who} (reminder|reminders) (off|gone|away|should stop)
        (turn|switch|take) off who:{who} (reminder|reminders)
        (turn|switch|take) who:{who} (reminder|reminders) off
        """,
    ),
    (
        "of erasing",
        """
        (erase|delete|remove|kick [out]|expel|forget|drop|get rid of|throw [out]|fire|dismiss|end with|
        + unenrol|unenroll) who:{who} [data|everything|account|messages] [from [the|my|our] (list|roster|
        + clients|bot|group|app)]
        (erase|delete|remove|forget) (everything|all|all data|all the data|the data|the account) (about|of|on|
        + from) who:{who}
        who:{who} (has quit|quit|quits|stopped coming|has left|left|is leaving|leaves|wants out|is out|
        + wants to (quit|leave|stop))
        """,
    ),
)
"""The days on which a client trains, and whether everything about one is erased."""

OF_THE_SHEET: tuple[tuple[Kind, str], ...] = (
    (
        "of the sheet",
        """
        (lower|raise|increase|reduce|decrease|drop|bump|up|start|begin|set|cut|make|put|change|add) [the]
        + who:{who} ....5 (#|percent|heavier|lighter|easier|harder|sets|reps|load|loads|weight|weights|target|
        + aim) ....6
        who:{who} (should|is to|has to|needs to|must|can|may) [now] (aim|go|do|use|lift|try|start|begin|
        + take) ....4 (#|percent|heavier|lighter|sets|reps|sets of|reps of) ....6
        who:{who} ....4 [:|,|-] # [-|to|'/'] [#] (sets|set|reps|rep|rounds|percent) ....8
        # [-|to|'/'] [#] (sets|set|reps|rep|rounds|kg|lb|kilos|pounds) (for|on|with|of) ....4 who:{who} ....4
        (give|let|have|make) who:{who} [do] (#|more|fewer|less|another|an extra) [more|extra|fewer|less]
        + (sets|set|reps|rep) ....6
        who:{who} (trains|should train|is to train|will train|needs to train|can train) ....6 (#|once|twice|
        + every|times|days|day) ....6
        (have|let|make) who:{who} train ....4 (#|once|twice|every|times|days) ....6
        who:{who} ....8 between [the|her|his|their] (workouts|workout|sessions|trainings|training days)
        """,
    ),
)
"""Sets, reps, loads and days between workouts."""
