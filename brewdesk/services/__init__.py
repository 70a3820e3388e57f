"""What can be done in the pantry: use cases over the store. QtCore only."""
