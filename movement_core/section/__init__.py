"""The ring field of a board, and the free shape that boards and panels take as they dry or swell."""
