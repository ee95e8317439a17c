"""Lines of keys: hand-made traps and generated documents."""

import tomllib

import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.spec.positions import line_numbers, line_of

TRAPS = '''# first = "comment"
schema = 1

[job]  # table = 1
number = "a = b"
"quoted key" = 'x = [1'
text = """
  fake = 1
[fake]
"""   # comment with = and [x]
raw = \'\'\'
also = "fake"
\'\'\'
[ base . "odd.name" ]
hole_positions = [
  [1, 2],  # ]
  [
    "3 = mm",
    4,
  ],
]
after = true
dotted . inner = { a = 1, "b" = [1, 2] }
[[family]]
name = "one"
[[family]]
name = "two"
[family.sub]
x = 1
[[family.deep]]
y = 2
[[family.deep]]
y = 3
'''


@pytest.mark.parametrize(
    ("path", "line"),
    [
        (("schema",), 2),
        (("job",), 4),
        (("job", "number"), 5),
        (("job", "quoted key"), 6),
        (("job", "text"), 7),
        (("job", "raw"), 11),
        (("base", "odd.name"), 14),
        (("base", "odd.name", "hole_positions"), 15),
        (("base", "odd.name", "hole_positions", 0), 16),
        (("base", "odd.name", "hole_positions", 1), 17),
        (("base", "odd.name", "hole_positions", 1, 1), 19),
        (("base", "odd.name", "after"), 22),
        (("base", "odd.name", "dotted", "inner"), 23),
        (("base", "odd.name", "dotted", "inner", "b"), 23),
        (("family", 0), 24),
        (("family", 0, "name"), 25),
        (("family", 1, "name"), 27),
        (("family", 1, "sub", "x"), 29),
        (("family", 1, "deep", 0, "y"), 31),
        (("family", 1, "deep", 1, "y"), 33),
    ],
)
def test_keys_are_found_on_their_lines(path, line):
    assert line_numbers(TRAPS)[path] == line


def test_nothing_is_found_that_is_not_a_key():
    assert paths(tomllib.loads(TRAPS)) == set(line_numbers(TRAPS))


def paths(data, base=()):
    pairs = list(data.items() if isinstance(data, dict) else enumerate(data) if isinstance(data, list) else ())
    return {(*base, k) for k, _ in pairs} | {p for k, v in pairs for p in paths(v, (*base, k))}


def test_a_path_without_a_line_takes_the_line_around_it():
    lines = line_numbers("[job]\nnumber = 1\n")
    assert line_of(lines, ("job", "title")) == 1
    assert line_of(lines, ("motor", "name")) is None


def test_windows_line_ends_count_once():
    assert line_numbers("[job]\r\n\r\nnumber = 1\r\n")[("job", "number")] == 3


BARE = st.from_regex(r"[A-Za-z0-9_-]{1,6}", fullmatch=True)
TRICKY = st.text(alphabet="ab=[]{}#'\"\\,.\n \té", max_size=8)


def basic(text):
    escaped = text.replace("\\", "\\\\").replace('"', '\\"').replace("\n", "\\n").replace("\t", "\\t")
    return f'"{escaped}"'


def many(text):
    return '"""\n' + text.replace("\\", "\\\\").replace('"', '\\"') + '"""'


def literal(text):
    return "'" + text.replace("'", "").replace("\n", "") + "'"


SCALARS = st.one_of(
    st.integers(-9, 9).map(str),
    st.sampled_from(["true", "1.5", "1979-05-27", "07:32:00", "1979-05-27 07:32:00Z"]),
    TRICKY.map(basic),
    TRICKY.map(many),
    TRICKY.map(literal),
)
ARRAYS = st.lists(SCALARS, max_size=3).map(lambda v: "[ # [\n" + "".join(f"  {x}, # ]\n" for x in v) + "]")
TABLES = st.lists(SCALARS.filter(lambda s: "\n" not in s), max_size=3).map(
    lambda v: "{ " + ", ".join(f'"k{i}" = {x}' for i, x in enumerate(v)) + " }"
)
KEYS = st.one_of(BARE, TRICKY.map(basic))


@st.composite
def documents(draw):
    """A document and the lines of its keys, by construction."""
    text, lines = "", {}
    tables = draw(st.lists(KEYS, max_size=3, unique_by=name_of))
    for index, table in enumerate(["", *tables]):
        text += draw(st.sampled_from(["", "\n", "# x = [\n", " \t# '''\n"]))
        base = ()
        if table:
            double = draw(st.booleans())
            base = (f"{name_of(table)}", 0) if double else (name_of(table),)
            for length in range(1, len(base) + 1):
                lines[base[:length]] = text.count("\n") + 1
            text += (f"[[ {table} ]]" if double else f"[{table}]") + " # y = 1\n"
        for key in draw(st.lists(KEYS, max_size=3, unique_by=name_of)):
            if not index and name_of(key) in {name_of(t) for t in tables}:
                continue
            lines[(*base, name_of(key))] = text.count("\n") + 1
            text += f"  {key} = {draw(st.one_of(SCALARS, ARRAYS, TABLES))}" + draw(
                st.sampled_from(["\n", " # z = 1\n"])
            )
    return text, lines


def name_of(key):
    return next(iter(tomllib.loads(f"{key} = 1")))


@given(documents())
def test_generated_documents(document):
    text, expected = document
    data = tomllib.loads(text)
    found = line_numbers(text)
    assert {p: found.get(p) for p in expected} == expected
    assert set(found) == paths(data)
