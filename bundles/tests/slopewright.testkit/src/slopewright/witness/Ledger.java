package slopewright.witness;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Holds computed against printed values and keeps those that disagree. */
final class Ledger {
    private final List<String> wrong = new ArrayList<>();
    private String heading = "";
    private int total;

    /** A heading, for the lines that follow. */
    void heading(String text) {
        heading = text;
    }

    /** A number against the printed one within a tolerance. */
    void number(String what, double computed, double printed, double tolerance) {
        boolean good = Math.abs(computed - printed) <= tolerance + 1e-12;
        note(good, String.format(Locale.ROOT, "%s: computed %.5f, printed %.4f within %.4f", what, computed, printed, tolerance));
    }

    /** A word against the printed one. */
    void word(String what, Object computed, Object printed) {
        note(String.valueOf(computed).equals(String.valueOf(printed)), what + ": computed " + computed + ", printed " + printed);
    }

    /** A condition that has to hold. */
    void holds(String what, boolean condition) {
        note(condition, what);
    }

    /** A printed figure that the geometry does not give, with the reason; wrong where it does come out after all. */
    void explained(String what, double computed, double printed, String reason) {
        note(Math.abs(computed - printed) > 0.5, what + " comes out as printed, against what was said of it: " + reason);
    }

    List<String> wrong() {
        return wrong;
    }

    int total() {
        return total;
    }

    private void note(boolean good, String text) {
        total++;
        if (!good) {
            wrong.add(heading + ": " + text);
        }
    }
}
