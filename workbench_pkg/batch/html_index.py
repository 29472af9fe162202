"""The check of many models as one page: what to look at first, below it what was found in each.

Standard library only. The page holds all it needs: no script, nothing fetched, and every word of a model escaped.
"""

from __future__ import annotations

import html
import tempfile
from typing import IO, Any

from workbench_pkg.setup.speech import phrase, say, word

SEVERITIES = ("breaks", "jams", "seen", "unknown")
MEANING = {
    "breaks": phrase("something splits, is crushed or comes loose"),
    "jams": phrase("something no longer does its work in some season"),
    "seen": phrase("a gap, step or cup that shows"),
    "unknown": phrase("cannot be judged until something is said"),
}
NOT_CHECKED, KNOWN = phrase("not checked"), phrase("known")
STYLE = """
:root { color-scheme: light dark; --line: #8886; --soft: #8882; }
body { font: 15px/1.45 system-ui, sans-serif; max-width: 72rem; margin: 2rem auto; padding: 0 1rem; }
h1 { font-size: 1.5rem; margin-bottom: .2rem; }
h2 { font-size: 1.1rem; overflow-wrap: anywhere; margin: 2.2rem 0 .3rem; }
table { border-collapse: collapse; width: 100%; }
th, td { text-align: left; padding: .25rem .6rem; vertical-align: top; }
thead th { border-bottom: 2px solid var(--line); } tbody tr { border-bottom: 1px solid var(--line); }
td.n, th.n { text-align: right; font-variant-numeric: tabular-nums; } td { overflow-wrap: anywhere; }
li { margin: .5rem 0; } .legend li { margin: .2rem 0; list-style: none; }
.remedy { display: block; padding-left: 1.2rem; } .note { opacity: .75; }
.tag { display: inline-block; min-width: 4.6em; padding: 0 .4em; border: 1px solid var(--line); border-radius: .3em;
 text-align: center; font-size: .85em; }
.breaks { background: #c0392b; color: #fff; } .jams { background: #b9770e; color: #fff; }
.seen { background: #2471a3; color: #fff; } .unknown { background: var(--soft); }
.error { background: #6c3483; color: #fff; }
.known { opacity: .55; }
@media print { body { max-width: none; margin: 0; } h2 { break-after: avoid; } li { break-inside: avoid; } }
"""


class HtmlForm:
    """Rows are kept as they come and put in the order of their gravity; what was found waits in a file."""

    name, needs = "html", ()
    whole = True

    def __init__(self, out: IO[str]) -> None:
        self.out = out
        self.rows: list[tuple[tuple[int, ...], str]] = []
        self.details: IO[str] = tempfile.TemporaryFile("w+", encoding="utf-8")  # noqa: SIM115  (till the end)

    def add(self, entry: dict[str, Any], answer: dict[str, Any]) -> None:
        number = len(self.rows) + 1
        new = [finding for finding in entry["findings"] if not finding.get("known")]
        counts = [sum(finding["severity"] == severity for finding in new) for severity in SEVERITIES]
        known = len(entry["findings"]) - len(new)
        gravity = tuple(-count for count in (len(entry["errors"]), *counts))
        cells = "".join(
            f'<td class="n">{count or ""}</td>' for count in (len(entry["errors"]), *counts, known)
        )
        link = f'<a href="#m{number}">{_text(entry["path"])}</a>'
        self.rows.append(
            (gravity, f'<tr><td>{link}</td><td class="n">{len(entry["parts"])}</td>{cells}</tr>\n')
        )
        self.details.write(_section(number, entry))

    def end(self, summary: str) -> None:
        head = "".join(
            f'<th scope="col" class="n">{word(name)}</th>' for name in (NOT_CHECKED, *SEVERITIES, KNOWN)
        )
        legend = "".join(
            f'<li><span class="tag {name}">{word(name)}</span> {word(meaning)}</li>\n'
            for name, meaning in MEANING.items()
        )
        count = len(self.rows)
        title = say("Heartside: check of {count} models", count=count)
        heading = say("What the seasons do to {count} models", count=count)
        if count == 1:
            title, heading = say("Heartside: check of 1 model"), say("What the seasons do to 1 model")
        self.out.write(
            f'<!DOCTYPE html>\n<html lang="{say("en")}">\n<head>\n<meta charset="utf-8">\n'
            '<meta name="viewport" content="width=device-width, initial-scale=1">\n'
            f"<title>{_text(title)}</title>\n<style>{STYLE}</style>\n</head>\n"
            f"<body>\n<h1>{_text(heading)}</h1>\n<p>{_text(summary)}</p>\n"
            f'<table>\n<thead><tr><th scope="col">{say("model")}</th><th scope="col" class="n">{say("parts")}</th>'
            f"{head}</tr></thead>\n<tbody>\n"
        )
        self.out.writelines(row for _, row in sorted(self.rows, key=lambda row: row[0]))
        self.out.write(f'</tbody>\n</table>\n<ul class="legend">\n{legend}</ul>\n')
        self.details.seek(0)
        for chunk in iter(lambda: self.details.read(1 << 16), ""):
            self.out.write(chunk)
        self.details.close()
        note = say(
            "Estimates from averages, for movement only: a board differs from its species by some 15 %. Loads, "
            "overhead, children, stairs and wall fixings belong to local codes and licensed practice."
        )
        self.out.write(f'<p class="note">{_text(note)}</p>\n</body>\n</html>\n')


def _section(number: int, entry: dict[str, Any]) -> str:
    lines = [f'<h2 id="m{number}">{_text(entry["path"])}</h2>\n']
    if entry.get("year"):
        year, today = entry["year"], entry["today"]
        told = say("Year: {year}. Today: {date}.", year=word(year["name"]), date=today["date"])
        lines.append(f'<p class="note">{_text(told)}</p>\n')
    items = [
        f'<li><span class="tag error">{word(NOT_CHECKED)}</span> {_text(error["message"])}</li>\n'
        for error in entry["errors"]
    ]
    items += [_item(finding) for finding in entry["findings"]]
    lines.append(f"<ul>\n{''.join(items)}</ul>\n" if items else f"<p>{say('No findings.')}</p>\n")
    return "".join(lines)


def _item(finding: dict[str, Any]) -> str:
    when = _text(say(" (worst in {month})", month=word(finding["month"]))) if finding["month"] else ""
    known = finding.get("known")
    severity = finding["severity"] if finding["severity"] in SEVERITIES else "unknown"
    return (
        f"<li{' class=' + chr(34) + 'known' + chr(34) if known else ''}>"
        f'<span class="tag {severity}">{word(KNOWN if known else severity)}</span> '
        f"<b>{_text(' + '.join(finding['parts']))}</b>: {_text(finding['message'])}{when}"
        f'<span class="remedy">→ {_text(finding["remedy"])}</span></li>\n'
    )


def _text(text: Any) -> str:
    """Escaped, and what is no letter of any text shown as a code."""
    shown = "".join(c if c.isprintable() or c in "\n " else f"\\x{ord(c):02x}" for c in str(text))
    return html.escape(shown, quote=True)
