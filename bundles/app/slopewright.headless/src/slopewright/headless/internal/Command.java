package slopewright.headless.internal;

import java.util.Locale;
import java.util.concurrent.Callable;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

import slopewright.report.Cautions;

/** What every command shares: its words, its streams, its help. */
abstract class Command implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Option(names = {"-h", "--help"}, usageHelp = true, description = "Show this help and end.")
    private boolean help;

    private Streams streams;

    void connect(Streams given) {
        streams = given;
    }

    Streams streams() {
        return streams;
    }

    CommandSpec spec() {
        return spec;
    }

    /** Returns the cautions that help ends with. */
    static String caution() {
        return String.join(" ", Cautions.in(Locale.ENGLISH));
    }

    /** Returns whether it needs to know all the other commands. */
    boolean describesOthers() {
        return false;
    }

    /** Adds options that are not annotated. */
    void extend(CommandSpec target) {
        // most commands have annotated options only
    }
}
