"""Ways to reach the maker outside the window. The due list stays the record."""
