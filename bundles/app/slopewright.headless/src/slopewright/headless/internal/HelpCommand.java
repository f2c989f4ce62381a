package slopewright.headless.internal;

import picocli.CommandLine;

/** Prints the help of a command. */
@CommandLine.Command(name = "help", sortOptions = false, description = "Show what a command takes, or which commands there are.")
final class HelpCommand extends CommandAboutOthers {

    @Override
    void say(CommandLine asked, String title) {
        asked.usage(streams().out);
    }
}
