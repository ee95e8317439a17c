"""The served page: the report as it stands, and above it what the watch has to say; the file itself stays unaltered."""

from __future__ import annotations

import re
from collections.abc import Iterator
from contextlib import suppress
from html import escape
from importlib.resources import files
from urllib.parse import quote

from blockgen.outputs import key_sizes, show
from blockgen.outputs.escape import one_line
from blockgen.outputs.names import MANIFEST
from blockgen.pipeline import BuildResult
from blockgen.watching.board import Shown

_BODY = re.compile(r"<body\b[^>]*>", re.IGNORECASE)
_VERDICTS = {"fail": "FAIL", "warn": "WARN", "not_assessed": "not assessed", "pass": "pass"}
_SEEN = 2
_EMPTY = """<!DOCTYPE html>
<html lang="en"><head><meta charset="utf-8"><title>blockgen watch</title>
<link rel="icon" href="data:,">
<style>:root { color-scheme: light dark; } body { font: 1rem system-ui, sans-serif; }</style>
</head><body><main><p>No set has been built yet.</p></main></body></html>
"""


def script() -> str:
    """Return the script that waits for news; it is served beside the page and stands in no file of the set."""
    return (files("blockgen.watching") / "live.js").read_text(encoding="utf-8")


def page_key(shown: Shown, run: str) -> str:
    """Return what tells one page from another: a browser that shows another one loads the page again."""
    return f"{run}-{shown.page}"


def page(shown: Shown, run: str) -> str:
    """Return the page with the words of the watch above it.

    Args:
        shown: What is shown.
        run: What tells this server from others.
    """
    html = shown.html or _EMPTY
    found = _BODY.search(html)
    place = found.end() if found else 0
    return html[:place] + _above(shown, run) + html[place:]


def _above(shown: Shown, run: str) -> str:
    """Return what stands above the page: the first lines, which are always seen, and the others to unfold."""
    lines = shown.words.split("\n")
    head, others = "\n".join(lines[:_SEEN]), "\n".join(lines[_SEEN:])
    marks = f' data-page="{page_key(shown, run)}"' + ' data-wrong="yes"' * shown.wrong + " hidden" * (not head)
    unfold = " open" * shown.wrong + " hidden" * (not others)
    return (
        f'<aside id="watch-words" aria-label="Watch"{marks}>{_STYLE}<p role="status">{escape(head)}</p>'
        f"<details{unfold}><summary>Details</summary><pre>{escape(others)}</pre></details></aside>"
        '<script src="/watch/live.js" defer></script>'
    )


_STYLE = """<style>
#watch-words { all: initial; display: block; padding: .5rem 1rem; font: 1rem/1.4 system-ui, sans-serif; color: #1b1f23;
  background: #e9eef2; border-bottom: 2px solid #45606f; position: sticky; top: 0; z-index: 1000; }
#watch-words[hidden] { display: none; }
#watch-words[data-wrong] { background: #fbe9e4; border-color: #9d2f12; }
#watch-words p { margin: 0; font-weight: 600; overflow-wrap: anywhere; white-space: pre-line; }
#watch-words summary { cursor: pointer; font-size: .875rem; }
#watch-words pre { margin: .5rem 0 0; padding: 0; background: none; color: inherit; max-height: 40vh;
  overflow: auto; white-space: pre-wrap; font: .875rem/1.4 ui-monospace, monospace; }
@media (prefers-color-scheme: dark) {
  #watch-words { color: #eceff1; background: #26323a; border-color: #8fa9b8; }
  #watch-words[data-wrong] { background: #47201a; border-color: #f0967d; }
}
@media print { #watch-words { display: none; } }
</style>"""


def html_of(made: BuildResult) -> str:
    """Return the page of a set: its report, or a plain page of its facts where the set has none."""
    for name, role in made.files.items():
        if role == "report":
            with suppress(OSError):  # another build may have taken it away by now
                return (made.folder / name).read_text(encoding="utf-8")
    return plain_page(made)


def plain_page(made: BuildResult) -> str:
    """Return a plain page of a set: status, key sizes, checks, files."""
    from blockgen.mechanics.volume import reference_volume

    title = escape(one_line(f"{made.plan.text('job.number')} {made.plan.text('job.title')}".strip()))
    return "\n".join(
        (
            f'<!DOCTYPE html>\n<html lang="en"><head><meta charset="utf-8"><title>{title}</title>',
            '<meta name="viewport" content="width=device-width"><link rel="icon" href="data:,">',
            f"<style>{_PLAIN_STYLE}</style></head><body><main><h1>{title}</h1>",
            f"<p><strong>Status: {escape(one_line(made.status))}</strong></p>",
            *_table("Key sizes", ("Size", "Value"), key_sizes.key_sizes(made.plan, reference_volume(made.plan))),
            *_table("Checks", ("Verdict", "Check", "Value", "Limit", "Margin"), _checks(made)),
            "<h2>Files</h2><ul>",
            *(
                f'<li><a href="{escape(quote(name))}">{escape(name)}</a></li>'
                for name in sorted([*made.files, MANIFEST])
            ),
            "</ul></main></body></html>\n",
        )
    )


_PLAIN_STYLE = """
:root { color-scheme: light dark; }
body { margin: 0; font: 1rem/1.45 system-ui, sans-serif; }
main { max-width: 60rem; margin: 0 auto; padding: 1rem; overflow-wrap: anywhere; }
div { overflow-x: auto; }
table { border-collapse: collapse; width: 100%; }
th, td { text-align: left; vertical-align: top; padding: .25rem .75rem .25rem 0; border-bottom: 1px solid #8888; }
"""


def _checks(made: BuildResult) -> Iterator[tuple[str, ...]]:
    for found in key_sizes.worst_first(made.findings):
        value, limit = show.quantity(found.value, found.unit), show.quantity(found.limit, found.unit)
        yield _VERDICTS[found.verdict], found.title, value, limit, show.margin(found.margin)


def _table(
    title: str, columns: tuple[str, ...], rows: Iterator[tuple[str, ...]] | tuple[tuple[str, ...], ...]
) -> Iterator[str]:
    yield f"<h2>{title}</h2><div><table><thead><tr>"
    yield "".join(f'<th scope="col">{column}</th>' for column in columns) + "</tr></thead><tbody>"
    for cells in rows:
        yield "<tr>" + "".join(f"<td>{escape(one_line(cell))}</td>" for cell in cells) + "</tr>"
    yield "</tbody></table></div>"
