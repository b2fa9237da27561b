"""Checks a record and words a verdict in Python, from the JSON files of the package alone.

    python3 words.py PACKAGE LANGUAGE RECORD VERDICT

PACKAGE is the folder of the installed package, LANGUAGE a language such as en. The record is checked against the
schema of records, and the verdict, as JSON of `assessInstallationResult`, is printed in that language. Needs
jsonschema 4 or later (Debian: python3-jsonschema).
"""

import json
import re
import sys
from pathlib import Path

from jsonschema import Draft202012Validator

PLACE = re.compile(r"\{(\w+)(:or)?\}")
SECTIONS = ("reasons", "actions", "cautions", "assumptions")


def problems(schema, record):
    """What is wrong with a record, each with its path."""
    found = Draft202012Validator(schema).iter_errors(record)
    return [f"{one.json_path}: {one.message}" for one in found]


def shown(value, language):
    """One value of a sentence: a quantity, a number, the code of a word, or a text that stays as it is."""
    if isinstance(value, dict):
        if "verbatim" in value:
            return value["verbatim"]
        return f"{value['value']:.4g} {value['unit']}"
    if isinstance(value, str):
        word = language["messages"][value]
        return word if isinstance(word, str) else word["other"]
    return f"{value:.4g}"


def listed(values, conjunction):
    """A list as English writes it; another language takes its own conjunction."""
    if len(values) < 3:
        return f" {conjunction} ".join(values)
    return f"{', '.join(values[:-1])}, {conjunction} {values[-1]}"


def variant(message, values):
    """The variant of a sentence: by a plural category (English: one is singular) or by the last part of a word."""
    if isinstance(message, str):
        return message
    chosen = values.get(message["by"])
    if isinstance(chosen, (int, float)):
        return message.get("one" if chosen == 1 else "other", message["other"])
    key = chosen.rsplit(".", 1)[-1] if isinstance(chosen, str) else "other"
    return message.get(key, message["other"])


def sentence(statement, language):
    """A statement as a sentence."""
    values = statement["values"]

    def put(place):
        value = values[place[1]]
        if isinstance(value, list):
            return listed([shown(one, language) for one in value], "or" if place[2] else "and")
        return shown(value, language)

    return PLACE.sub(put, variant(language["messages"][statement["code"]], values))


def lines(verdict, language):
    """The verdict: its outcome, then what it says, section by section."""
    yield language["messages"][f"assessment.outcome.{verdict['outcome']}"]
    for section in SECTIONS:
        for statement in verdict[section]:
            yield f"{section}: {sentence(statement, language)}"


def main(package, tongue, record, verdict):
    """Prints the problems of the record, or the verdict."""
    dist = Path(package) / "dist"
    read = lambda path: json.loads(Path(path).read_text(encoding="utf-8"))
    found = problems(read(dist / "schemas/record.json"), read(record))
    if found:
        sys.exit("\n".join(found))
    print("\n".join(lines(read(verdict), read(dist / f"language/{tongue}.json"))))


if __name__ == "__main__":
    main(*sys.argv[1:5])
