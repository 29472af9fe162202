"""The comparisons as a report in Markdown and in HTML, and which comparisons a report lists."""

from __future__ import annotations

import html

import numpy as np

from tests.validation.record import IN_RANGE, OWN_ROOM

HEADING = "# How Heartside compares with the world"
INTRO = """Written by `python3 -m tests validation --report`; do not edit by hand.

Every published table, worked example and reference library that the validation tests compare us with. *Basis*
tells how the expected value came here: **read** at its source, **recalled** from memory, **common practice**
without a source, **derived** by a formula or a reference library in the same run, **own**: computed beforehand. Where
many values are compared, *expected* and *ours* are those of the worst one, and the root of the mean square (RMS) of all
differences stands beside it. Disagreements are kept and explained."""
COLUMNS = ("comparison", "source", "basis", "values", "expected", "ours", "difference", "RMS", "allowed")


def _number(value):
    return f"{value:.4g}" if np.isfinite(value) else str(value)


def cells(record):
    """The texts of one row, in the order of COLUMNS."""
    low, high, expected, ours = (
        np.array(v) for v in (record.low, record.high, record.expected, record.ours)
    )  # fmt: skip
    room = np.maximum((high - low) / 2, 1e-300)
    worst = int(np.argmax(np.abs(ours - expected) / room))
    is_range = record.allowed == IN_RANGE
    wanted = f"{_number(low[worst])} to {_number(high[worst])}" if is_range else _number(expected[worst])
    apart = ours - expected
    if is_range:  # how far outside the range: nothing
        apart = np.maximum(low - ours, 0) + np.minimum(high - ours, 0) * -1 * (ours > high)
    difference = apart[worst]
    percent = ""
    if not is_range and expected[worst] != 0 and abs(difference / expected[worst]) < 10:
        percent = f" ({100 * difference / expected[worst]:+.2g} %)"
    unit = f" {record.unit}" if record.unit else ""
    allowed = record.allowed
    if allowed == OWN_ROOM:
        allowed = f"{_number(low[worst])} to {_number(high[worst])}{unit} (own)"
    return (
        record.name, record.source, record.provenance, str(len(ours)), wanted + unit,
        _number(ours[worst]) + unit, f"{difference:+.2g}{percent}" if not is_range else "inside",
        f"{np.sqrt(np.mean(apart**2)):.2g}" if len(ours) > 1 and not is_range else "", allowed,
    )  # fmt: skip


def by_file(records):
    """(file, its records) in the order of the files' names."""
    names = sorted({record.file for record in records})
    return [(name, [record for record in records if record.file == name]) for name in names]


def counts(records):
    """How many comparisons and values there are, by basis."""
    words = dict.fromkeys(record.provenance for record in records)
    text = ", ".join(f"{sum(r.provenance == word for r in records)} {word}" for word in sorted(words))
    return f"{len(records)} comparisons of {sum(len(r.ours) for r in records)} values: {text}."


def markdown(records, titles):
    """The report; ``titles`` names each file's subject."""
    text = [HEADING, "", INTRO, "", counts(records)]
    for file, rows in by_file(records):
        text += ["", f"## {titles[file]}", "", f"`tests/validation/{file}.py`", ""]
        text += ["| " + " | ".join(COLUMNS) + " |", "|" + "---|" * len(COLUMNS)]
        text += ["| " + " | ".join(cell.replace("|", "\\|") for cell in cells(row)) + " |" for row in rows]
        notes = [(row.name, note) for row in rows for note in row.notes]
        text += [""] + [f"- *{name}*: {note}" for name, note in notes] if notes else []
    return "\n".join(text) + "\n"


def page(records, titles):
    """The same as a page of HTML that stands alone."""
    safe = html.escape
    body = [f"<h1>{safe(HEADING[2:])}</h1>", f"<p>{safe(counts(records))}</p>"]
    for file, rows in by_file(records):
        body.append(
            f"<h2>{safe(titles[file])}</h2><p><code>tests/validation/{file}.py</code></p><table><thead><tr>"
        )
        body += [f'<th scope="col">{name}</th>' for name in COLUMNS]
        body.append("</tr></thead><tbody>")
        body += ["<tr>" + "".join(f"<td>{safe(cell)}</td>" for cell in cells(row)) + "</tr>" for row in rows]
        body.append("</tbody></table>")
        notes = [f"<li><em>{safe(r.name)}</em>: {safe(n)}</li>" for r in rows for n in r.notes]
        body.append(f"<ul>{''.join(notes)}</ul>" if notes else "")
    style = (
        "body{font:15px/1.45 sans-serif;max-width:78rem;margin:2rem auto;padding:0 1rem;color:#222;background:#fff}"
        "table{border-collapse:collapse;width:100%}th,td{text-align:left;vertical-align:top;padding:.25rem .5rem;"
        "border-bottom:1px solid #ccc}td:nth-child(n+4):nth-child(-n+8){text-align:right}"
    )
    head = f'<meta charset="utf-8"><title>{safe(HEADING[2:])}</title><style>{style}</style>'
    return f'<!doctype html><html lang="en"><head>{head}</head><body>{"".join(body)}</body></html>\n'


def listed(text):
    """{(file, comparison, source, basis)} that a Markdown report lists."""
    found, file = set(), ""
    for line in text.splitlines():
        if line.startswith("`tests/validation/"):
            file = line.strip("`").rsplit("/", 1)[-1].removesuffix(".py")
        row = [cell.strip().replace("\\|", "|") for cell in line.replace("\\|", "\0").split("|")]
        row = [cell.replace("\0", "|") for cell in row]
        if len(row) == len(COLUMNS) + 2 and row[1] != COLUMNS[0] and not row[1].startswith("---"):
            found.add((file, *row[1:4]))
    return found
