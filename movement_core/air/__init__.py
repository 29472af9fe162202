"""The air of a place: what moisture content wood comes to in it, and how that goes through the year."""
