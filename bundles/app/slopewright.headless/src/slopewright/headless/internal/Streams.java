package slopewright.headless.internal;

import java.io.InputStream;
import java.io.PrintStream;

/** Where a command writes and reads; whoever started it closes them. */
final class Streams {

    /** Results. */
    final PrintStream out;

    /** Messages and progress. */
    final PrintStream err;

    /** What is not in a file. */
    final InputStream in;

    Streams(PrintStream out, PrintStream err, InputStream in) {
        this.out = out;
        this.err = err;
        this.in = in;
    }
}
