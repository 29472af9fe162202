"""The movement sheet: one page data, drawn as HTML and as PDF."""
