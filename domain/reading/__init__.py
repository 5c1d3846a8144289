"""Reading clients' messages: free text in, what it means out. Pure; nothing here records or replies."""

from domain.reading.answering import answer, days_in_doubt, days_meant, days_to_come, is_lone_number
from domain.reading.away import speaks_of_illness
from domain.reading.days_asked import days_asked
from domain.reading.everything import whole_workout_told
from domain.reading.of_late import denies_trouble, speaks_of_late
from domain.reading.picture_words import shows, wants_picture, without_picture
from domain.reading.request import Heard, OpenSet, Pain, Place, Planned, Reading, Request, Side, Slot, Want
from domain.reading.understand import read
from domain.reading.why import WhyAsked, exercises_asked_of, exercises_named, why_asked

__all__ = [
    "Heard",
    "OpenSet",
    "Pain",
    "Place",
    "Planned",
    "Reading",
    "Request",
    "Side",
    "Slot",
    "Want",
    "WhyAsked",
    "answer",
    "days_asked",
    "days_in_doubt",
    "days_meant",
    "days_to_come",
    "denies_trouble",
    "exercises_asked_of",
    "exercises_named",
    "is_lone_number",
    "read",
    "shows",
    "speaks_of_illness",
    "speaks_of_late",
    "wants_picture",
    "whole_workout_told",
    "why_asked",
    "without_picture",
]
