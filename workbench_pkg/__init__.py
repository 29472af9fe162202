"""The FreeCAD extension of Heartside: reads a document into a piece, writes the answer back. No physics here."""
