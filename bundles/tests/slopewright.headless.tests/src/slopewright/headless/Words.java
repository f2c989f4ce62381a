package slopewright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;

/** Runs a command line and keeps what it said. */
final class Words {

    private final int code;
    private final String out;
    private final String err;

    private Words(int code, String out, String err) {
        this.code = code;
        this.out = out;
        this.err = err;
    }

    static Words run(String... words) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = Main.run(words, new PrintStream(out, true, StandardCharsets.UTF_8), new PrintStream(err, true, StandardCharsets.UTF_8),
                new ByteArrayInputStream(new byte[0]));
        return new Words(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    /** Splits a line at blanks and runs it. */
    static Words line(String line) {
        return run(line.strip().split("\\s+"));
    }

    static Path demo(String path) {
        return Path.of(System.getProperty("slopewright.root"), "demo-data").resolve(path);
    }

    int code() {
        return code;
    }

    String out() {
        return out;
    }

    String err() {
        return err;
    }

    /** Returns the project of a check of one file. */
    JsonNode project() {
        assertEquals(1, json().get("projects").size());
        return json().get("projects").get(0);
    }

    JsonNode json() {
        try {
            return new ObjectMapper().readTree(out);
        } catch (JsonProcessingException e) {
            throw new AssertionError(out + err, e);
        }
    }
}
