"""Painters for paper: what is printed, drawn on any paint device."""
