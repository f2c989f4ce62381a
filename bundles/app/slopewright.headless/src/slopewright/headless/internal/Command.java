package slopewright.headless.internal;

import java.util.concurrent.Callable;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What every command shares: its words, its streams, its help. */
abstract class Command implements Callable<Integer> {

    static final String CAUTION = "A design aid: it does not replace the current edition of the standard, the authority's approval, "
            + "ground survey, "
            + "flight inspection, or a licensed engineer's judgement; local codes come first. Never set up or switch on an indicator at an "
            + "operational aerodrome without the operator's authorisation; lamp units are hot, bright and electrically powered.";

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

    /** Adds options that are not annotated. */
    void extend(CommandSpec target) {
        // most commands have annotated options only
    }
}
