package slopewright.headless.internal;

import java.util.List;

/** What a command says to the shell. */
final class ExitCodes {

    static final int OK = 0;
    static final int FINDINGS = 1;
    static final int USAGE = 2;
    static final int INPUT = 3;
    static final int INTERNAL = 4;
    static final int NOTHING_EVALUATED = 5;

    private static final List<Integer> WORST_FIRST = List.of(INTERNAL, INPUT, USAGE, NOTHING_EVALUATED, FINDINGS, OK);

    private ExitCodes() {
    }

    /** Returns the worse of two codes. */
    static int worse(int first, int second) {
        return WORST_FIRST.indexOf(first) <= WORST_FIRST.indexOf(second) ? first : second;
    }
}
