"""The test command: sets up what the suites need, runs them, adds up. Standard library only."""
