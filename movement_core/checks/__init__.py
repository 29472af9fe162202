"""One file a check: each reads a solved piece and returns findings."""
