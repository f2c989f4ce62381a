package slopewright.headless.internal;

import java.io.InputStream;
import java.io.PrintStream;
import java.util.Locale;

import slopewright.exchange.sheet.Sheet;
import slopewright.exchange.sheet.SheetFile;
import slopewright.messages.Printable;

/** Where a command writes and reads; whoever started it closes them. */
final class Streams {

    /** Results as documents: JSON, tables, JUnit reports. */
    final PrintStream out;

    /** Messages and progress. */
    final PrintStream err;

    /** What is not in a file. */
    final InputStream in;

    /** Where lines for people go. */
    private PrintStream lines;

    Streams(PrintStream out, PrintStream err, InputStream in) {
        this.out = out;
        lines = out;
        this.err = err;
        this.in = in;
    }

    /** Says that the results are the bytes of a file; lines for people go to the messages from now on. */
    void keepOutForBytes() {
        lines = err;
    }

    /** Prints one line of a result for people. What a name or value of a file holds neither ends it nor steers the terminal. */
    void say(String line) {
        lines.println(clean(line));
    }

    /** Prints one line of a result for people, put together as {@link String#format} does, with a decimal point. */
    void sayf(String format, Object... arguments) {
        say(String.format(Locale.ROOT, format, arguments));
    }

    /** Prints a table as comma-separated values. */
    void print(Sheet table) {
        byte[] bytes = SheetFile.csv(table);
        out.write(bytes, 0, bytes.length);
    }

    /** Prints one message. */
    void warn(String line) {
        err.println(clean(line));
    }

    /** Takes what could end a line, or steer or turn round a terminal, out of a text: it may quote a hostile file. */
    static String clean(String text) {
        return Printable.of(text).stripTrailing();
    }
}
