package slopewright.headless.internal;

import java.io.InputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;

import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import slopewright.siting.SitingException;
import slopewright.standards.StandardsException;

/** Finds the command, runs it and turns what goes wrong into one line and an exit code. */
public final class CommandRunner {

    private final Streams streams;

    /** Makes a runner for some streams. */
    public CommandRunner(PrintStream out, PrintStream err, InputStream in) {
        streams = new Streams(out, err, in);
    }

    private static List<Command> commands() {
        return List.of(new CheckCommand(), new SiteCommand(), new SignalCommand(), new CompareCommand(), new CompareRuleSetsCommand(),
                new CompareVersionsCommand(), new SurfaceCommand(), new PortableCommand(), new ToleranceCommand(), new VariationCommand(),
                new ReportCommand(), new DrawCommand(), new ScheduleCommand(), new CardCommand(), new CommissioningCommand(),
                new FamiliesCommand(), new RulesCommand(), new RuleSetsCommand(), new ExportCommand(), new ImportCommand(),
                new TextCommand());
    }

    /** Runs the words of a command line and returns the exit code. */
    public int run(String[] args) {
        CommandLine line = build();
        PrintWriter out = new PrintWriter(streams.out, false, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(streams.err, false, StandardCharsets.UTF_8);
        line.setOut(out);
        line.setErr(err);
        boolean unknown = args.length > 0 && !args[0].startsWith("-") && !line.getSubcommands().containsKey(args[0]);
        int code;
        if (args.length == 0) {
            code = noCommand(line, err);
        } else {
            code = unknown ? usage(line, "there is no command '" + args[0] + "'") : line.execute(args);
        }
        out.flush();
        err.flush();
        streams.out.flush();
        streams.err.flush();
        return code;
    }

    private static int noCommand(CommandLine line, PrintWriter err) {
        line.usage(err);
        return ExitCodes.USAGE;
    }

    private CommandLine build() {
        CommandLine line = new CommandLine(new TopCommand());
        for (Command command : commands()) {
            command.connect(streams);
            CommandSpec spec = CommandSpec.forAnnotatedObject(command);
            command.extend(spec);
            spec.usageMessage().footer("", Command.CAUTION);
            line.addSubcommand(spec.name(), new CommandLine(spec));
        }
        line.getCommandSpec().usageMessage().footer("", Command.CAUTION);
        line.setParameterExceptionHandler((e, words) -> usage(e.getCommandLine(), e.getMessage()));
        line.setExecutionExceptionHandler((e, one, parsed) -> failed(one, e));
        line.setUsageHelpWidth(110);
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.setAbbreviatedOptionsAllowed(false);
        return line;
    }

    private int usage(CommandLine line, String message) {
        String reason = oneLine(message.lines().findFirst().orElse(""));
        streams.err.println(line.getCommandSpec().qualifiedName() + ": " + reason + ". Try '" + line.getCommandSpec().qualifiedName()
                + " --help'.");
        return ExitCodes.USAGE;
    }

    private int failed(CommandLine line, Exception e) {
        String name = line.getCommandSpec().qualifiedName();
        if (e instanceof UsageException || e instanceof SitingException) {
            streams.err.println(name + ": " + oneLine(String.valueOf(e.getMessage())));
            return ExitCodes.USAGE;
        }
        if (e instanceof InputException) {
            streams.err.println(name + ": " + oneLine(String.valueOf(e.getMessage())));
            return ExitCodes.INPUT;
        }
        String kind = e instanceof StandardsException ? "the data of a rule set is damaged" : "internal error";
        streams.err.println(name + ": " + kind + ": " + e + "; " + ErrorLog.append(e));
        return ExitCodes.INTERNAL;
    }

    /** Takes what could end a line, or steer a terminal, out of a message: it may quote a hostile file. */
    private static String oneLine(String message) {
        return message.strip().replaceAll("[\\p{Cntrl}\\u2028\\u2029]+", " ");
    }
}
