package slopewright.headless.internal;

import java.io.InputStream;
import java.io.PrintStream;

/**
 * Where a command writes and reads.
 *
 * @param out results
 * @param err messages and progress
 * @param in  what is not in a file
 */
record Streams(PrintStream out, PrintStream err, InputStream in) {
}
