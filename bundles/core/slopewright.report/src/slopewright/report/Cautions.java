package slopewright.report;

import java.util.List;

/** The cautions that every document carries. */
public final class Cautions {

    /** The cautions, one paragraph each. */
    public static final List<String> TEXT = List.of(
            "A design aid: it does not replace the current edition of the standard, the authority's approval, ground survey, flight "
                    + "inspection, or a "
                    + "licensed engineer's judgement; local codes come first.",
            "Never set up or switch on an indicator at an operational aerodrome without the operator's authorisation; lamp units are "
                    + "hot, bright and "
                    + "electrically powered.");

    private Cautions() {
    }
}
