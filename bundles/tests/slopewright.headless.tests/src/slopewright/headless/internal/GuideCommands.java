package slopewright.headless.internal;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

import picocli.CommandLine;

/** All commands of the program, for the guide. */
public final class GuideCommands {

    private GuideCommands() {
    }

    /** Returns the program with its commands. */
    public static CommandLine all() {
        PrintStream nowhere = new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8);
        return new CommandRunner(nowhere, nowhere, new ByteArrayInputStream(new byte[0])).build();
    }
}
