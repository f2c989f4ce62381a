package slopewright.headless.internal;

import picocli.CommandLine;
import picocli.CommandLine.Parameters;

/** Prints the help of a command. */
@CommandLine.Command(name = "help", sortOptions = false, description = "Show what a command takes, or which commands there are.")
final class HelpCommand extends Command {

    @Parameters(arity = "0..1", paramLabel = "COMMAND", description = "a command")
    private String name;

    @Override
    boolean describesOthers() {
        return true;
    }

    @Override
    public Integer call() {
        CommandLine all = spec().parent().commandLine();
        CommandLine asked = name == null ? all : all.getSubcommands().get(name);
        if (asked == null) {
            throw new UsageException("there is no command '" + name + "'");
        }
        asked.usage(streams().out);
        return ExitCodes.OK;
    }
}
