package slopewright.headless.internal;

/** What the program calls itself in what it writes. */
final class Program {
    /** The version of the root pom, without what marks a build. */
    static final String VERSION = "0.1.0";

    private Program() {
    }

    /** Returns name and version. */
    static String text() {
        return "slopewright " + VERSION;
    }
}
