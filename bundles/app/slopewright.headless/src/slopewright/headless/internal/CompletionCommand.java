package slopewright.headless.internal;

import java.util.List;
import java.util.Optional;

import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Parameters;

/** Prints a script with which a shell completes commands and options. */
@CommandLine.Command(name = "completion", sortOptions = false,
        description = "Print a script with which a shell completes commands and options.")
final class CompletionCommand extends Command {

    /** The shells that are known. */
    enum Shell {
        BASH, ZSH, FISH
    }

    @Parameters(paramLabel = "SHELL", description = "bash, zsh or fish")
    private Shell shell;

    @Override
    boolean describesOthers() {
        return true;
    }

    @Override
    public Integer call() {
        CommandLine all = spec().parent().commandLine();
        String program = all.getCommandName();
        CompletionWords.give(all);
        streams().out.print(switch (shell) {
            case BASH -> AutoComplete.bash(program, all);
            case ZSH -> zsh(program, AutoComplete.bash(program, all));
            case FISH -> fish(program, all);
        });
        return ExitCodes.OK;
    }

    /** That of bash, which zsh reads; where it was loaded by the first word that asks for it, it answers that word too. */
    private static String zsh(String program, String bash) {
        return "#compdef " + program + "\nautoload -U +X bashcompinit && bashcompinit\nfunction compopt { :; }\n" + bash
                + "\nif [[ ${funcstack[1]} == _" + program + " ]]; then\n  _bash_complete -o default -F _complete_" + program + "\nfi\n";
    }

    private static String fish(String program, CommandLine all) {
        StringBuilder script = new StringBuilder("# completes " + program + " in fish\n");
        all.getSubcommands().forEach((name, command) -> {
            CommandSpec spec = command.getCommandSpec();
            script.append("complete -c ").append(program).append(" -n __fish_use_subcommand -f -a ").append(name).append(" -d ")
                    .append(quoted(spec.usageMessage().description()[0])).append('\n');
            spec.positionalParameters().stream().map(CompletionWords::entered).flatMap(Optional::stream).forEach(words -> script.append(
                    "complete -c ").append(program).append(" -n '__fish_seen_subcommand_from ").append(name).append("' -a ").append(quoted(
                            String.join(" ", words))).append('\n'));
            for (OptionSpec option : spec.options()) {
                script.append("complete -c ").append(program).append(" -n '__fish_seen_subcommand_from ").append(name).append('\'');
                for (String word : option.names()) {
                    script.append(word.startsWith("--") ? " -l " : " -s ").append(word.replaceFirst("^--?", ""));
                }
                Optional<List<String>> words = CompletionWords.entered(option);
                script.append(words.map(found -> " -x -a " + quoted(String.join(" ", found))).orElse(option.arity().max() > 0 ? " -r" : ""))
                        .append(" -d ")
                        .append(quoted(String.join(" ", List.of(option.description())))).append('\n');
            }
        });
        return script.toString();
    }

    private static String quoted(String text) {
        return "'" + text.replace("\\", "\\\\").replace("'", "\\'") + "'";
    }
}
