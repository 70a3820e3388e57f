"""The kinds of things the maker can do. Each is one step of the undo history."""

from __future__ import annotations

from enum import Enum


class ActKind(Enum):
    """What an act did. The values are kept in the store, so they never change."""

    ADD_PLACE = "add_place"
    EDIT_PLACE = "edit_place"
    ADD_VESSEL = "add_vessel"
    EDIT_VESSEL = "edit_vessel"
    RETIRE_VESSEL = "retire_vessel"
    RESTORE_VESSEL = "restore_vessel"
    ADD_CULTURE = "add_culture"
    EDIT_CULTURE = "edit_culture"
    PLAN_BATCH = "plan_batch"
    EDIT_PLAN = "edit_plan"
    DROP_PLAN = "drop_plan"
    START_BREW = "start_brew"
    START_STEP = "start_step"
    PAUSE_STEP = "pause_step"
    RESUME_STEP = "resume_step"
    EXTEND_STEP = "extend_step"
    FINISH_STEP = "finish_step"
    START_SOURING = "start_souring"
    NOTE_ALREADY_IN = "note_already_in"
    ADD_READINGS = "add_readings"
    EDIT_READING = "edit_reading"
    REMOVE_READING = "remove_reading"
    DRAW_OFF = "draw_off"
    CLOSE_BATCH = "close_batch"
    DISCARD_BATCH = "discard_batch"
    ADD_REMINDER = "add_reminder"
    SNOOZE_REMINDER = "snooze_reminder"
    FINISH_REMINDER = "finish_reminder"
