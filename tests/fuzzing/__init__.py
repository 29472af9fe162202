"""Inputs made at random from the grammar of what we read, then spoilt: see ``tests.benchmarks.fuzz_inputs``."""
