package slopewright.model.io;

/** What the program calls itself in what it writes. */
public final class Program {

    /** The version of the root pom, without what marks a build. */
    public static final String VERSION = "0.1.0";

    private Program() {
    }

    /** Returns name and version. */
    public static String text() {
        return "slopewright " + VERSION;
    }
}
