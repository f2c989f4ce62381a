package slopewright.bench;

/** The start of a bare machine. */
public final class Nothing {

    private Nothing() {
    }

    /** Does nothing. */
    public static void main(String[] args) {
        System.out.print("");
    }
}
