package slopewright.headless;

import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

import slopewright.headless.internal.HeadStart;

/** Starts the command line from a class path and ends the virtual machine with its exit code. */
public final class Start {

    private static final int BUFFER_BYTES = 1 << 16;

    private Start() {
    }

    /** Runs the command of some words, see {@link Main#run}. */
    public static void main(String[] words) {
        int code;
        HeadStart.begin(words);
        try (PrintStream out = stream(FileDescriptor.out, false); PrintStream err = stream(FileDescriptor.err, true)) {
            code = Main.run(words, out, err, System.in);
        }
        System.exit(code);
    }

    private static PrintStream stream(FileDescriptor descriptor, boolean flushLines) {
        OutputStream buffered = new BufferedOutputStream(new FileOutputStream(descriptor), BUFFER_BYTES);
        return new PrintStream(buffered, flushLines, StandardCharsets.UTF_8);
    }
}
