"""What touches what: contacts, gaps and overlaps of solids from their faces, and the joints they make."""
