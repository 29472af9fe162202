"""Every command typed wrongly in every way we can think of: one answer each, never a traceback. No host is needed."""

from __future__ import annotations

import argparse
import json

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from movement_core.errors import FileError, HeartsideError, InputError
from workbench_pkg.batch import cli, words
from workbench_pkg.setup import PlainError, SetupError, UseError

JUNK = (
    "",
    " ",
    "nan",
    "-1",
    "1e999",
    "ä\x00",
    "x" * 5000,
    "0x10",
    "١٢",
    "=1+1",
    "--",
    "/no/such/place",
    "{}",
    "%s%n",
)
COMMANDS = words._parsers()[1]


@pytest.fixture(autouse=True)
def no_host(monkeypatch, tmp_path_factory):
    """What could be understood ends where the host is looked for."""
    monkeypatch.setenv("FREECADCMD", "/no/such/host")
    monkeypatch.chdir(tmp_path_factory.mktemp("here"))


def typed(capsys, arguments):
    try:
        code = cli.run(arguments)
    except SystemExit as stop:  # --help and --version
        assert stop.code == 0
        code = 0
    told = capsys.readouterr()
    assert "Traceback" not in told.out + told.err
    assert code in (0, 1, 2) and (code != 2 or told.err or told.out)
    return code, told


def options():
    for name, parser in COMMANDS.items():
        for action in parser._actions:
            if action.option_strings and action.nargs != 0:
                yield name, action


def positionals(parser):
    """Something for each word that a command cannot do without."""
    needed = []
    for action in parser._actions:
        if not action.option_strings and action.nargs != "*":
            needed.append("x.FCStd")
        elif action.required:
            needed += [action.option_strings[0], "9"]
    return needed


@pytest.mark.parametrize(("name", "action"), [pytest.param(n, a, id=f"{n} {a.dest}") for n, a in options()])
def test_an_option_without_and_with_a_senseless_value(capsys, name, action):
    option = action.option_strings[0]
    code, told = typed(capsys, [name, *positionals(COMMANDS[name]), option])
    assert code == 2 and option in told.err
    for junk in JUNK:
        code, told = typed(capsys, [name, *positionals(COMMANDS[name]), f"{option}={junk}"])
        refuses = action.choices is not None or action.type not in (None, str)
        if refuses and getattr(action.type, "__name__", "") != "Path":
            assert code == 2 and "heartside: " in told.err
        if action.choices is not None:
            assert f"argument {option}" in told.err, junk


@pytest.mark.parametrize("name", list(COMMANDS))
def test_help_reads_well(capsys, name):
    code, told = typed(capsys, [name, "--help"])
    assert code == 0 and told.out.startswith(f"usage: heartside {name}")
    for action in COMMANDS[name]._actions:
        assert action.help is not argparse.SUPPRESS
        if action.option_strings and action.dest not in ("help",):
            assert action.help or action.choices or action.dest == "output", (
                f"{name} {action.dest} says nothing"
            )


def test_an_unknown_command_or_option_is_named(capsys):
    for arguments, said in (
        (["chek", "a"], "chek"),
        (["check", "a", "--jbos", "2"], "--jbos"),
        (["check", "--cache", "a", "--no-cache", "b"], "not allowed with"),
        (["compare", "a"], "NEW"),
        (["hold"], "FILE"),
    ):
        code, told = typed(capsys, arguments)
        assert code == 2 and said in told.err


@settings(max_examples=300, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(
    st.lists(
        st.one_of(
            st.sampled_from(
                [*COMMANDS, *(a.option_strings[0] for _, a in options()), *JUNK, "--format=json", "1", "-h"]
            ),
            st.text(max_size=6),
        ),
        max_size=7,
    )
)
def test_anything_at_all(capsys, arguments):
    if "--debug" not in arguments and "--install" not in arguments:
        typed(capsys, arguments)


def test_json_is_answered_with_json(capsys):
    for name in ("check", "hold", "arrange", "compare", "stock"):
        code, told = typed(capsys, [name, *positionals(COMMANDS[name]), "--format", "json", "--nonsense"])
        assert code == 2 and "--nonsense" in json.loads(told.out)["errors"][0]["message"]


# ---- the family ---------------------------------------------------------------------------------------------


def test_errors_before_set_up_are_the_same_family():
    facts = ("what is wrong", "what is wrong!", "")
    for what in facts:
        for more in (
            {}, {"where": "a.csv, line 3"}, {"allowed": "1 to 3"}, {"todo": "do this"},
            {"where": "x", "allowed": "1 to 3", "todo": "do this."}, {"todo": "will you?"},
        ):  # fmt: skip
            core, plain = HeartsideError(what, **more), PlainError(what, **more)
            assert str(core) == str(plain) and vars(core) == vars(plain)
    assert issubclass(SetupError, OSError) and issubclass(FileError, OSError)
    assert issubclass(UseError, ValueError) and issubclass(InputError, ValueError)
    assert str(SetupError("type:\n  apt-get install x")).endswith("install x"), "a command is to be copied"


def test_a_fault_of_our_own_is_one_line_and_debug_shows_it(capsys, monkeypatch):
    def broken(options):
        raise ZeroDivisionError("by design")

    monkeypatch.setattr(
        cli, "parse", lambda *_: argparse.Namespace(carry_out=broken, needs_host=False, debug=False)
    )
    assert cli.run(["check"]) == 2
    told = capsys.readouterr()
    assert told.err.count("\n") == 1 and "by design" in told.err and "--debug" in told.err
    with pytest.raises(ZeroDivisionError):
        cli.run(["check", "--debug"])
