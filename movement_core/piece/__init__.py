"""The parts of a piece of furniture: what each is made of, how it lies, and what it does through the year."""
