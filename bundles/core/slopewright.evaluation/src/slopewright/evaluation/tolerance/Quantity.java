package slopewright.evaluation.tolerance;

import java.util.Locale;

import slopewright.messages.Message;

/** What is watched while units are set a little wrong. All in metres. */
public enum Quantity {

    /** Eye height over the threshold (MEHT), or at the hover, on the lowest on-slope signal. */
    EYE_HEIGHT("eyeHeightM"),
    /** Wheel height over the threshold of the most demanding aeroplane on that signal. */
    WHEEL_CLEARANCE("wheelClearanceM"),
    /** Height of the obstacle surface above the governing obstacle, as {@link slopewright.evaluation.AidEvaluation#marginM()} has it. */
    SURFACE_MARGIN("surfaceMarginM");

    private final String key;

    Quantity(String key) {
        this.key = key;
    }

    /** Returns its name in output. */
    public String key() {
        return key;
    }

    /** Returns what it is, for people. */
    public Message message() {
        return Message.of("tolerance.quantity." + name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }
}
