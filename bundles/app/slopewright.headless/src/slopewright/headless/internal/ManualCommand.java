package slopewright.headless.internal;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import slopewright.model.io.Program;

/** Prints the page of the manual about the program or one of its commands, for {@code man}. */
@CommandLine.Command(name = "manual", sortOptions = false,
        description = "Print the page of the manual about the program or a command, in the form that man reads.")
final class ManualCommand extends CommandAboutOthers {

    @Override
    void say(CommandLine asked, String title) {
        streams().out.print(page(asked, title));
    }

    private static String page(CommandLine command, String title) {
        CommandSpec spec = command.getCommandSpec();
        String[] description = spec.usageMessage().description();
        StringBuilder page = new StringBuilder(".TH ");
        page.append(plain(title.toUpperCase(Locale.ROOT))).append(" 1 \"\" \"").append(Program.text()).append("\"\n");
        page.append(".SH NAME\n").append(plain(title)).append(" \\- ").append(plain(firstSentence(description))).append('\n');
        page.append(".SH SYNOPSIS\n.B ").append(plain(command.getHelp().synopsis(0).strip().replaceAll("\\s+", " "))).append('\n');
        page.append(".SH DESCRIPTION\n").append(plain(String.join(" ", description))).append('\n');
        if (!command.getSubcommands().isEmpty()) {
            page.append(".SH COMMANDS\n");
            command.getSubcommands().forEach((word, sub) -> item(page, word, sub.getCommandSpec().usageMessage().description()));
        }
        page.append(".SH OPTIONS\n");
        spec.positionalParameters().forEach(parameter -> item(page, parameter.paramLabel(), parameter.description()));
        spec.options().forEach(option -> item(page, words(option), option.description()));
        page.append(".SH CAUTION\n").append(plain(caution())).append('\n');
        return page.toString();
    }

    private static String firstSentence(String[] description) {
        return String.join(" ", description).split("(?<=\\.)\\s", 2)[0].replaceAll("\\.$", "");
    }

    private static String words(OptionSpec option) {
        String label = takesValue(option) ? "=" + option.paramLabel() : "";
        return Arrays.stream(option.names()).sorted().collect(Collectors.joining(", ")) + label;
    }

    private static boolean takesValue(ArgSpec option) {
        return option.arity().max() > 0;
    }

    private static void item(StringBuilder page, String word, String[] description) {
        page.append(".TP\n.B ").append(plain(word)).append('\n').append(plain(String.join(" ", description))).append('\n');
    }

    /** Takes away what the form gives a meaning of its own. */
    private static String plain(String text) {
        return text.replace("\\", "\\e").replace("-", "\\-").replaceAll("(?m)^([.'])", "\\\\&$1");
    }
}
