package slopewright.witness;

import java.util.List;

/** Reproduces the worked examples and printed figures of the rule texts. */
public final class SelfCheck {
    private SelfCheck() {
    }

    /**
     * What the checks gave.
     *
     * @param total number of figures that were compared
     * @param wrong a line for each that does not come out as printed
     */
    public record Outcome(int total, List<String> wrong) {

        /** Copies the lines. */
        public Outcome {
            wrong = List.copyOf(wrong);
        }
    }

    /** Runs all checks. */
    public static Outcome run() {
        Ledger ledger = new Ledger();
        CheckIcao.run(ledger);
        CheckNinth.run(ledger);
        CheckAmerican.run(ledger);
        CheckAmericanTables.run(ledger);
        return new Outcome(ledger.total(), ledger.wrong());
    }
}
