package slopewright.headless.internal;

import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The word in front of every command. */
@CommandLine.Command(name = "slopewright", description = "Sites and checks visual approach slope indicators.",
        synopsisSubcommandLabel = "COMMAND")
final class TopCommand implements Runnable {

    @Spec
    private CommandSpec spec;

    @Option(names = {"-h", "--help"}, usageHelp = true, description = "Show this help and end.")
    private boolean help;

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "a command is missing");
    }
}
