"""Sentences for people: found in the code, kept in Qt Linguist's files, checked."""
