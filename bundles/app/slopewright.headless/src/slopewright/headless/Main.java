package slopewright.headless;

import java.io.InputStream;
import java.io.PrintStream;

/** The command line, free of the platform that starts it. */
public final class Main {

    private static final int EXIT_OK = 0;
    private static final int EXIT_USAGE = 2;

    private Main() {
    }

    /**
     * Runs one command.
     *
     * @param args the words of the command line
     * @param out where results go
     * @param err where messages go
     * @param in where a command reads what is not in a file
     * @return the exit code
     */
    public static int run(String[] args, PrintStream out, PrintStream err, InputStream in) {
        if (args.length > 0 && ("--help".equals(args[0]) || "-h".equals(args[0]))) {
            out.println("Usage: slopewright COMMAND ...");
            return EXIT_OK;
        }
        err.println("Usage: slopewright COMMAND ...");
        return EXIT_USAGE;
    }
}
