package slopewright.model.io;

/** What the program calls itself in what it writes. */
public final class Program {

    /** The version of the root pom, without what marks a build. */
    public static final String VERSION = "0.1.0";

    /** Name and version. */
    public static final String TEXT = "slopewright " + VERSION;

    private Program() {
    }

    /** Returns name and version. */
    public static String text() {
        return TEXT;
    }
}
