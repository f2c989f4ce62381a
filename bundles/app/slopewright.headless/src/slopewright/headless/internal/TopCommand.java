package slopewright.headless.internal;

import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import slopewright.model.io.Program;

/** The word in front of every command. */
@CommandLine.Command(name = TopCommand.NAME, description = "Sites and checks visual approach slope indicators.",
        synopsisSubcommandLabel = "COMMAND", version = Program.TEXT)
final class TopCommand implements Runnable {

    static final String NAME = "slopewright";

    @Spec
    private CommandSpec spec;

    @Option(names = {"-h", "--help"}, usageHelp = true, description = "Show this help and end.")
    private boolean help;

    @Option(names = {"-V", "--version"}, versionHelp = true, description = "Show the version and end.")
    private boolean version;

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "a command is missing");
    }
}
