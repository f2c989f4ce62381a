package slopewright.headless;

import java.io.InputStream;
import java.io.PrintStream;

import slopewright.headless.internal.CommandRunner;

/** The command line, free of the platform that starts it. */
public final class Main {

    private Main() {
    }

    /**
     * Runs one command.
     *
     * @param args the words of the command line
     * @param out  where results go
     * @param err  where messages go
     * @param in   where a command reads what is not in a file
     * @return the exit code: 0 done and nothing failed, 1 findings at or above the threshold, 2 usage, 3 input that cannot be read,
     *         4 internal error, 5 nothing was evaluated
     */
    public static int run(String[] args, PrintStream out, PrintStream err, InputStream in) {
        return new CommandRunner(out, err, in).run(args);
    }
}
