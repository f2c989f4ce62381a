package slopewright.siting.witness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;

/** Collects where the two implementations differ, and counts what was held against each other. */
final class Differences {

    private static final int SHOWN = 12;

    private final List<String> found = new ArrayList<>();
    private int compared;
    private int refused;
    private int excepted;

    /** Holds two numbers against each other; two that are none are the same. */
    void number(String what, double witness, double product, double tolerance) {
        compared++;
        if (!(Math.abs(witness - product) <= tolerance) && !(Double.isNaN(witness) && Double.isNaN(product))) {
            add(what + ": witness " + witness + ", product " + product);
        }
    }

    /** Holds two words against each other. */
    void word(String what, Object witness, Object product) {
        compared++;
        if (!String.valueOf(witness).equals(String.valueOf(product))) {
            add(what + ": witness " + witness + ", product " + product);
        }
    }

    void refuse() {
        refused++;
    }

    void except() {
        excepted++;
    }

    private void add(String text) {
        if (found.size() < SHOWN) {
            found.add(text);
        }
    }

    /** Fails where anything differs, where too little was compared, or too much was refused or excepted. */
    void verify(int least) {
        String counts = compared + " compared, " + refused + " refused, " + excepted + " excepted";
        assertEquals(List.of(), found, counts);
        assertTrue(compared >= least && refused * 5 <= least && excepted * 20 <= compared, counts);
    }
}
