"""Prints what a screen reader is told of the running window: role, name, value or text, states. With the name of a program as its word.

Each widget that takes the focus and is in sight must have a name or, where it is only read, a text; those without are printed as FAILED.
"""
import sys

import pyatspi

TAKES_FOCUS = {
    'push button', 'toggle button', 'check box', 'radio button', 'combo box', 'text', 'entry', 'spin button', 'slider', 'table', 'tree table',
    'tree', 'list', 'drawing area', 'canvas', 'password text', 'page tab', 'link',
}
# A button with a picture alone is told by its tip.
TOLD_BY_TIP = {'push button', 'toggle button', 'check box'}
MOST_ROWS = 6


def value(accessible):
    try:
        return str(accessible.queryValue().currentValue)
    except NotImplementedError:
        pass
    try:
        text = accessible.queryText()
        return text.getText(0, min(80, text.characterCount))
    except NotImplementedError:
        return ''


def words(accessible):
    """The name of a label; the toolkit's own hold their words one frame further in."""
    if accessible.name or accessible.getRoleName() not in ('panel', 'filler'):
        return accessible.name
    return next((found for found in (words(accessible.getChildAtIndex(index)) for index in range(accessible.childCount)) if found), '')


def label(accessible):
    for relation in accessible.getRelationSet():
        if int(relation.getRelationType()) == int(pyatspi.RELATION_LABELLED_BY):
            for index in range(relation.getNTargets()):
                found = words(relation.getTarget(index))
                if found:
                    return found
    return ''


def walk(accessible, depth, failures):
    try:
        states = accessible.getState()
        role = accessible.getRoleName()
        name = accessible.name or label(accessible) or (accessible.description if role in TOLD_BY_TIP else '')
        text = value(accessible)
        marks = ''.join(mark for state, mark in ((pyatspi.STATE_FOCUSABLE, 'f'), (pyatspi.STATE_FOCUSED, 'F'),
                                                 (pyatspi.STATE_SELECTED, 's'), (pyatspi.STATE_CHECKED, 'x')) if states.contains(state))
        print('%s%s  "%s"%s%s%s' % ('  ' * depth, role, name, '  = ' + repr(text) if text and text != name else '',
                                    '  (' + accessible.description + ')' if accessible.description else '',
                                    '  [' + marks + ']' if marks else ''))
        seen = states.contains(pyatspi.STATE_SHOWING) and states.contains(pyatspi.STATE_FOCUSABLE)
        if seen and role in TAKES_FOCUS and not name.strip():
            failures.append('%s at depth %d%s' % (role, depth, ', says ' + repr(text) if text else ''))
        rows = role in ('table', 'tree table', 'list', 'menu')
        for index in range(min(accessible.childCount, MOST_ROWS * 8) if rows else accessible.childCount):
            child = accessible.getChildAtIndex(index)
            if child is not None:
                walk(child, depth + 1, failures)
    except (LookupError, RuntimeError) as problem:
        print('%sgone: %s' % ('  ' * depth, problem))


def main():
    failures = []
    found = 0
    for application in pyatspi.Registry.getDesktop(0):
        if application is not None and sys.argv[1].lower() in (application.name or '').lower():
            found += 1
            walk(application, 0, failures)
    for failure in failures:
        print('FAILED no name: ' + failure)
    print('%d applications, %d without a name' % (found, len(failures)))
    return 0 if found and not failures else 1


sys.exit(main())
