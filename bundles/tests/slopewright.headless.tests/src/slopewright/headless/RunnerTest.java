package slopewright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Supplier;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever goes wrong with a command ends in one sentence and an exit code that is not 0. */
@SuppressWarnings("resource") // streams in memory, of which some fail on purpose where they are flushed
class RunnerTest {

    private static final String DEMO = Words.demo("harrow-vale/harrow-vale.slopewright").toString();

    @TempDir
    private Path folder;

    @BeforeEach
    void keepTheTraceApart() {
        System.setProperty("slopewright.log", folder.resolve("error.log").toString());
    }

    @AfterEach
    void forgetTheTrace() {
        System.clearProperty("slopewright.log");
    }

    /** Takes so many bytes, as a disk that is nearly full or a pipe that nobody reads any more does, and then does as told. */
    private static final class Failing extends OutputStream {
        private final Supplier<Error> error;
        private int left;

        Failing(int bytes, Supplier<Error> error) {
            left = bytes;
            this.error = error;
        }

        @Override
        public void write(int b) throws IOException {
            if (left-- <= 0) {
                if (error != null) {
                    throw error.get();
                }
                throw new IOException("No space left on device");
            }
        }
    }

    private record Ended(int code, String err) {
    }

    private static Ended run(OutputStream out, String... words) {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = Main.run(words, new PrintStream(out, false, StandardCharsets.UTF_8), new PrintStream(err, true, StandardCharsets.UTF_8),
                new ByteArrayInputStream(new byte[0]));
        return new Ended(code, err.toString(StandardCharsets.UTF_8));
    }

    @ParameterizedTest
    @ValueSource(strings = {"check DEMO --fail-on fail", "check DEMO --json --fail-on fail",
        "check DEMO --csv --fail-on fail", "check DEMO --junit --fail-on fail", "compare DEMO --end 09",
        "families", "rules --json", "rule-sets", "text DEMO", "--help", "check --help"})
    void whatCannotBePrintedWholeIsNoSuccess(String line) {
        String[] words = line.replace("DEMO", DEMO).split(" ");
        assertEquals(0, run(OutputStream.nullOutputStream(), words).code(), "it is a success where the disk has room");
        Ended ended = run(new Failing(100, null), words);
        assertEquals(4, ended.code(), ended.err());
        assertTrue(ended.err().contains("could not be written whole"), ended.err());
        assertEquals(1, ended.err().lines().count(), ended.err());
    }

    @Test
    void errorsOfTheMachineEndInOneSentence() throws IOException {
        Ended memory = run(new Failing(10, () -> new OutOfMemoryError("Java heap space")), "check", DEMO);
        assertEquals(4, memory.code());
        assertTrue(memory.err().contains("not enough memory"), memory.err());
        assertEquals(1, memory.err().lines().count(), memory.err());
        Ended depth = run(new Failing(10, StackOverflowError::new), "check", DEMO);
        assertEquals(4, depth.code());
        assertTrue(depth.err().contains("nested too deeply"), depth.err());
        assertTrue(Files.readString(folder.resolve("error.log")).contains("StackOverflowError"), "the trace is kept");
    }

    @Test
    void aTraceThatCannotBeWrittenIsSaid() {
        System.setProperty("slopewright.log", folder + "/no\0name");
        Ended ended = run(new Failing(10, StackOverflowError::new), "check", DEMO);
        assertEquals(4, ended.code());
        assertTrue(ended.err().contains("no trace could be written"));
    }

    /** A log can be sent to somebody else: it says which file, and not where it lies on the user's machine. */
    @Test
    void aTraceNamesNoFolders() throws IOException {
        String said = "/home/mary/secret client/Fields/site.slopewright: odd, C:\\Users\\mary\\b.csv, '/home/mary/c.csv', "
                + "/home/mary/O'Brien's client/a:b/d.csv: no, " + System.getProperty("user.home") + ": full";
        run(new Failing(10, () -> new InternalError(said)), "check", DEMO);
        String log = Files.readString(folder.resolve("error.log"));
        assertTrue(log.contains(".../site.slopewright: odd, .../b.csv, '.../c.csv', .../d.csv: no, /~: full"), log);
        assertTrue(log.contains("at slopewright.headless"), log);
        assertFalse(log.contains("mary") || log.contains("Brien") || log.contains("client"), log);
    }

    @Test
    void aLogThatHasBecomeLongBeginsAnew() throws IOException {
        Path log = Files.write(folder.resolve("error.log"), new byte[(1 << 20) + 1]);
        run(new Failing(10, StackOverflowError::new), "check", DEMO);
        assertTrue(Files.size(log) < 1 << 20, "its size is " + Files.size(log));
        assertTrue(Files.readString(log).contains("StackOverflowError"));
    }
}
