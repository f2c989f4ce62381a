"""Prints the lines that releng/outside counts."""

import sys

_failed = []


def check(good, text):
    print(("ok " if good else "FAILED ") + " ".join(text.split()))
    if not good:
        _failed.append(text)
    return good


def finish():
    sys.exit(1 if _failed else 0)
