"""The words that much hangs on, which are put right where they are mistyped, and some that are no slips."""

from domain.reading.words import words_of

SAFETY_WORDS = words_of(
    """
    achilles ankle ankles blacked bladder breath breathe breathing breathless cannot chest collapsed
    dizziness dizzy elbow elbows faint fainted fainting forearm forearms groin hamstring hamstrings
    headache headaches heart hurt hurting hurts knee knees neck numb numbness pain painful pains
    palpitations passed pinches pinching popped pressure shoulder shoulders stabbing stomach
    strained swollen thigh thighs tightness tingling tingly tweaked unconscious urine wrist wrists"""
)
"""The words of the body and of danger: a slip must not hide what calls for help."""

KEY_WORDS = words_of(
    """
    abdomen about aches aching actually added after afternoon again always another anything april around
    assistance assisted august because before benched between bodyweight break brother cancel cancelled
    cancelling change changed colleague completed correct correction could couldnt covid curled daughter
    december delete didnt disregard doesnt double dozen dropped during earlier easier effort eight
    eighteen eighteens eighth eighties eighty eleven evening everyone everything exercise exercises
    failed failing failure february fever fewer fifteen fifteens fifth fifties fifty finished first
    forties forty fourteen fourteens fourth friday friend granddaughter grandson harder havent heavier
    heavy history holding holiday holidays hundred husband ignore injured injury instead january kilos
    later leave leaving lifted light lighter lower lowered lowering lowerings managed matched maybe
    meaning means meant messages messaging midnight minute minutes missed monday month months morning
    move moved moving muscle muscles negative negatives neighbor neighbors neighbour neighbours never
    night nineteen nineteens nineties ninety ninth normal nothing november nowhere october other others
    partner pause paused planned plate plates please point pounds pressed program programme progress
    pulled pushed question reached really record remind reminder reminders remove repetition repetitions
    reserve right roommate rowed same saturday schedule scrap scratch second seconds sending september
    series session sets seven seventeen seventeens seventh seventies seventy sharp shift shifted should
    shouldnt since single sister sixteen sixteens sixth sixties sixty skip skipped skipping someone
    something spotter sprained squatted stiff still stone straight sunday supposed target tenth texting
    third thirteen thirteens thirties thirty though three through thursday times today todays tomorrow
    tonight tonights train trained trainer training traveling travelling tried tuesday twelve twenties twenty
    twice until upper vacation warmed warming warmup warmups wasnt weather wednesday weekend weeks
    weight weights whats which without workout would wouldnt wrong yesterday"""
)
"""The words for days, numbers, loads, effort, people and what is to be done."""

NO_SLIPS = words_of(
    """
    collapser feinted feinting heartb paid parsed passe pin plain planked slip srs swollens urines
    weeing wees"""
)
"""Good words that are too rare for the list of common English."""
