"""One file a command: its words, and what is done before the host. Its part inside the host is in ``batch.inside``.

A new command has ``add_words(commands, shared)``, which sets ``command`` (its name) and ``carry_out`` (a function of
the options that returns the exit code), and is listed here. Standard library only.
"""

from __future__ import annotations

from workbench_pkg.batch.commands import (
    annotate,
    arrange,
    check,
    compare,
    demo,
    diagnose,
    hold,
    listing,
    measured,
    sheet,
    step,
    stock,
    template,
)

COMMANDS = (
    check,
    compare,
    annotate,
    arrange,
    hold,
    sheet,
    template,
    step,
    stock,
    measured,
    diagnose,
    demo,
    listing,
)
