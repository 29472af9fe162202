"""The command line as a whole: understand what was typed, carry it out, and never show a traceback unasked.

What each command does stands in ``batch.commands``. Standard library only.
"""

from __future__ import annotations

import shlex
import signal
import sys
import threading

from workbench_pkg.batch.answering import INTERRUPTED, NOT_CHECKED
from workbench_pkg.batch.output import leave_stdout, prepare_streams, print_failure, wants_json
from workbench_pkg.batch.parsing import TypingError
from workbench_pkg.batch.shared_words import language_typed
from workbench_pkg.batch.words import help_text, parse
from workbench_pkg.setup import PlainError, ensure_host
from workbench_pkg.setup.speech import say, speak, word
from workbench_pkg.translations.files import catalogue


def run(arguments: list[str]) -> int:
    """Parse and carry out; returns the exit code. Never shows a traceback unless ``--debug`` asks for it."""
    prepare_streams()
    _stop_tidily()
    try:
        code = _run(arguments)
        sys.stdout.flush()
        return code
    except KeyboardInterrupt:
        print("heartside: " + say("stopped"), file=sys.stderr)
        return INTERRUPTED
    except BrokenPipeError:  # whoever reads us has seen enough
        leave_stdout()
        return NOT_CHECKED
    except OSError as error:
        if "--debug" in arguments:
            raise
        where = f"{error.filename}: " if isinstance(error.filename, str) else ""
        told = say("the answer cannot be written out ({reason})", reason=word(error.strerror or str(error)))
        print(f"heartside: {where}{told}", file=sys.stderr)
        leave_stdout()
        return NOT_CHECKED
    except Exception as error:  # a fault of ours
        if "--debug" in arguments:
            raise
        told = say(
            "a fault in Heartside itself ({kind}: {error}). "
            "To do: tell its makers what was typed and what --debug adds to it.",
            kind=type(error).__name__,
            error=error,
        )
        print(f"heartside: {told}", file=sys.stderr)
        return NOT_CHECKED


def _stop_tidily() -> None:
    """Let the system's wish that we end be heard like the user's: hosts are ended and half-made files cleared away."""

    def stop(*_: object) -> None:
        raise KeyboardInterrupt

    here = threading.current_thread() is threading.main_thread()
    if here and signal.getsignal(signal.SIGTERM) is signal.SIG_DFL:
        signal.signal(signal.SIGTERM, stop)


def _run(arguments: list[str]) -> int:
    language = language_typed(arguments)
    speak({} if language == "en" else catalogue(language))
    if not arguments:
        print(help_text(), end="")
        return NOT_CHECKED
    try:
        options = parse(arguments, language)
        if getattr(options, "needs_host", True):
            ensure_host(install=options.install, again=_again(arguments))
        return int(options.carry_out(options))
    except TypingError as error:
        more = "\n" + say("All options: heartside {command} --help", command=arguments[0])
        more = more if " COMMAND " not in error.usage else ""
        print(f"{error.usage}heartside: {error}{more}", file=sys.stderr)
        message = str(error)
    except PlainError as error:
        if options.debug:
            raise
        print(f"heartside: {error}", file=sys.stderr)
        message = str(error)
    if wants_json(arguments):
        print_failure(arguments, message)
    return NOT_CHECKED


def _again(arguments: list[str]) -> str:
    """The command as typed, with leave to install."""
    return shlex.join(["python3", "-m", "workbench_pkg", *arguments, "--install"])
