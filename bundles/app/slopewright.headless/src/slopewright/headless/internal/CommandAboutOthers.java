package slopewright.headless.internal;

import picocli.CommandLine;
import picocli.CommandLine.Parameters;

/** A command that says something of a command that is named, or of all. */
abstract class CommandAboutOthers extends Command {

    @Parameters(arity = "0..1", paramLabel = "COMMAND", description = "a command")
    private String name;

    @Override
    final boolean describesOthers() {
        return true;
    }

    @Override
    public final Integer call() {
        CommandLine all = spec().parent().commandLine();
        CommandLine asked = name == null ? all : all.getSubcommands().get(name);
        if (asked == null) {
            throw new UsageException("there is no command '" + name + "'");
        }
        say(asked, all.getCommandName() + (name == null ? "" : "-" + name));
        return ExitCodes.OK;
    }

    /** Says it of a command, or of the program, with its title. */
    abstract void say(CommandLine asked, String title);
}
