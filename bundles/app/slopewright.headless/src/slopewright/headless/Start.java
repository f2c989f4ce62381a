package slopewright.headless;

import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** Starts the command line from a class path and ends the virtual machine with its exit code. */
public final class Start {

    private static final int BUFFER_BYTES = 1 << 16;
    /** No command is written in Groovy, and the library would look for it in every jar. */
    private static final String NO_GROOVY = "picocli.disable.closures";

    private Start() {
    }

    /**
     * Runs the command of some words, see {@link Main#run}.
     *
     * @throws IOException where a stream cannot be closed
     */
    public static void main(String[] words) throws IOException {
        int code;
        System.setProperty(NO_GROOVY, "true");
        try (OutputStream out = new FileOutputStream(FileDescriptor.out); OutputStream err = new FileOutputStream(FileDescriptor.err)) {
            code = run(words, out, err);
        }
        System.exit(code);
    }

    /**
     * Runs the command of some words into streams, which are closed after it. What the platform itself says, as of a file that is not well
     * formed, is English in every locale, as all is that the command line says to whoever calls it: the same words give the same bytes.
     */
    static int run(String[] words, OutputStream results, OutputStream messages) {
        Locale.setDefault(Locale.ENGLISH);
        try (PrintStream out = stream(results, false); PrintStream err = stream(messages, true)) {
            return Main.run(words, out, err, System.in);
        }
    }

    private static PrintStream stream(OutputStream stream, boolean flushLines) {
        return new PrintStream(new BufferedOutputStream(stream, BUFFER_BYTES), flushLines, StandardCharsets.UTF_8);
    }
}
