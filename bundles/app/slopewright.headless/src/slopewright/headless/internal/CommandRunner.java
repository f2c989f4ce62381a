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
        return List.of(new NewCommand(), new EnterCommand(), new CheckCommand(), new SiteCommand(), new SignalCommand(),
                new CompareCommand(), new CompareRuleSetsCommand(), new CompareVersionsCommand(), new SurfaceCommand(),
                new PortableCommand(), new DirectionsCommand(), new TakeCommand(), new SightCommand(), new ToleranceCommand(),
                new VariationCommand(), new ReportCommand(), new DrawCommand(), new ScheduleCommand(), new CardCommand(),
                new BriefingCommand(), new PocketCommand(), new CommissioningCommand(), new FamiliesCommand(), new RulesCommand(),
                new RuleSetsCommand(), new ExportCommand(), new ImportCommand(), new TextCommand(), new BookCommand(),
                new ReadBackCommand(), new HandoverCommand(), new HelpCommand(), new CompletionCommand(), new ManualCommand());
    }

    /** Runs the words of a command line and returns the exit code. */
    public int run(String[] args) {
        CommandLine line = build(args.length == 0 ? "" : args[0]);
        PrintWriter out = new PrintWriter(streams.out, false, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(streams.err, false, StandardCharsets.UTF_8);
        line.setOut(out);
        line.setErr(err);
        String name = line.getCommandSpec().qualifiedName() + (args.length == 0 ? "" : " " + oneLine(args[0]));
        int code;
        try {
            code = run(line, args, err);
            out.flush();
            if (streams.out.checkError()) {
                streams.warn(name + ": the output could not be written whole: the disk is full, or nothing reads it any more");
                code = ExitCodes.INTERNAL;
            }
        } catch (Throwable e) {
            code = broken(name, e);
        }
        err.flush();
        streams.err.flush();
        return code;
    }

    private int run(CommandLine line, String[] args, PrintWriter err) {
        if (args.length == 0) {
            return noCommand(line, err);
        }
        boolean unknown = !args[0].startsWith("-") && !line.getSubcommands().containsKey(args[0]);
        return unknown ? usage(line, "there is no command '" + args[0] + "'") : line.execute(args);
    }

    private static int noCommand(CommandLine line, PrintWriter err) {
        line.usage(err);
        return ExitCodes.USAGE;
    }

    /** Returns the words of all commands, as they are parsed. */
    CommandLine build() {
        return build("");
    }

    /** Returns the words of one command, for putting them together takes longer than many a command; of all where none has the name. */
    private CommandLine build(String name) {
        List<Command> all = commands();
        List<Command> named = all.stream().filter(command -> command.name().equals(name)).toList();
        CommandLine line = new CommandLine(new TopCommand());
        for (Command command : named.isEmpty() || named.get(0).describesOthers() ? all : named) {
            command.connect(streams);
            CommandSpec spec = CommandSpec.forAnnotatedObject(command);
            command.extend(spec);
            spec.usageMessage().footer("", Command.CAUTION);
            line.addSubcommand(spec.name(), new CommandLine(spec));
        }
        line.getCommandSpec().usageMessage().footer("", Command.CAUTION);
        line.setParameterExceptionHandler((e, words) -> usage(e.getCommandLine(), e.getMessage()));
        line.setExecutionExceptionHandler((e, command, parsed) -> failed(command, e));
        line.setUsageHelpWidth(110);
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.setAbbreviatedOptionsAllowed(false);
        return line;
    }

    private int usage(CommandLine line, String message) {
        String reason = oneLine(message.lines().findFirst().orElse(""));
        streams.warn(line.getCommandSpec().qualifiedName() + ": " + reason + ". Try '" + line.getCommandSpec().qualifiedName()
                + " --help'.");
        return ExitCodes.USAGE;
    }

    private int failed(CommandLine line, Exception e) {
        String name = line.getCommandSpec().qualifiedName();
        if (e instanceof UsageException || e instanceof SitingException) {
            streams.warn(name + ": " + oneLine(String.valueOf(e.getMessage())));
            return ExitCodes.USAGE;
        }
        if (e instanceof InputException input) {
            input.messages().forEach(message -> streams.warn(name + ": " + oneLine(message)));
            return ExitCodes.INPUT;
        }
        if (e instanceof OutputException) {
            streams.warn(name + ": " + oneLine(String.valueOf(e.getMessage())));
            return ExitCodes.INTERNAL;
        }
        return broken(name, e);
    }

    /** Whatever goes wrong ends in one sentence: an error of the machine too. */
    private int broken(String name, Throwable e) {
        String kind = "internal error: " + oneLine(e.toString());
        if (e instanceof OutOfMemoryError) {
            kind = "there is not enough memory for this";
        } else if (e instanceof StackOverflowError) {
            kind = "internal error: something in the input is nested too deeply";
        } else if (e instanceof StandardsException) {
            kind = "the data of a rule set is damaged: " + oneLine(String.valueOf(e.getMessage()));
        }
        streams.warn(name + ": " + kind + "; " + trace(e));
        return ExitCodes.INTERNAL;
    }

    private static String trace(Throwable e) {
        try {
            return ErrorLog.append(e);
        } catch (RuntimeException | Error worse) {
            return "no trace could be written";
        }
    }

    /** Takes what could end a line, or steer a terminal, out of a message: it may quote a hostile file. */
    private static String oneLine(String message) {
        return message.strip().replaceAll("[\\p{Cntrl}\\u2028\\u2029]+", " ");
    }
}
