package slopewright.headless.internal;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletionException;

import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IHelpFactory;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import slopewright.messages.Printable;
import slopewright.model.io.ErrorLog;
import slopewright.siting.SitingException;
import slopewright.standards.StandardsException;

/** Finds the command, runs it and turns what goes wrong into one line and an exit code. */
public final class CommandRunner {

    private final Streams streams;

    /** Makes a runner for some streams. */
    public CommandRunner(PrintStream out, PrintStream err, InputStream in) {
        streams = new Streams(out, err, in);
    }

    /** Runs the words of a command line and returns the exit code. */
    public int run(String[] args) {
        int code;
        try {
            HeadStart headStart = HeadStart.begin(args);
            Optional<Command> plain = CheckCommand.plain(args);
            code = plain.isPresent() ? call(plain.get(), args, headStart) : parse(args, headStart);
            if (streams.out.checkError()) {
                streams.warn(name(args) + ": the output could not be written whole: the disk is full, or nothing reads it any more");
                code = ExitCodes.INTERNAL;
            }
        } catch (Throwable e) {
            code = broken(name(args), e);
        }
        streams.err.flush();
        return code;
    }

    private static String name(String[] args) {
        return TopCommand.NAME + (args.length == 0 ? "" : " " + oneLine(args[0]));
    }

    /** Calls a command whose words were read. */
    private int call(Command command, String[] args, HeadStart headStart) {
        command.connect(streams);
        headStart.help();
        try {
            return command.call();
        } catch (Exception e) {
            return failed(name(args), e);
        }
    }

    private int parse(String[] args, HeadStart headStart) {
        CommandLine line = build(args.length == 0 ? "" : args[0]);
        headStart.help();
        PrintWriter out = new PrintWriter(streams.out, false, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(streams.err, false, StandardCharsets.UTF_8);
        line.setOut(out);
        line.setErr(err);
        try {
            return run(line, args, err);
        } finally {
            out.flush();
            err.flush();
        }
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
        CommandLine line = new CommandLine(new TopCommand());
        List<Command> called = Commands.NAMES.contains(name) ? List.of(Commands.make(name)) : List.of();
        if (called.isEmpty() || called.get(0).describesOthers()) {
            called = Commands.NAMES.stream().map(Commands::make).toList();
        }
        for (Command command : called) {
            add(line, command);
        }
        Answers answers = new Answers();
        line.setParameterExceptionHandler(answers);
        line.setExecutionExceptionHandler(answers);
        line.setHelpFactory(answers);
        line.setUsageHelpWidth(110);
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.setAbbreviatedOptionsAllowed(false);
        return line;
    }

    private void add(CommandLine line, Command command) {
        command.connect(streams);
        CommandSpec spec = CommandSpec.forAnnotatedObject(command);
        command.extend(spec);
        line.addSubcommand(spec.name(), new CommandLine(spec));
    }

    /**
     * What follows where words are wrong, where a command fails and where help is asked for. One class and no lambdas, which the virtual
     * machine would write anew at every start, for it keeps no classes as old as those of the library.
     */
    private final class Answers implements IParameterExceptionHandler, IExecutionExceptionHandler, IHelpFactory {

        @Override
        public int handleParseException(ParameterException e, String[] words) {
            return usage(e.getCommandLine(), e.getMessage());
        }

        @Override
        public int handleExecutionException(Exception e, CommandLine command, ParseResult parsed) {
            return failed(command.getCommandSpec().qualifiedName(), e);
        }

        @Override
        public Help create(CommandSpec spec, Help.ColorScheme colours) {
            if (spec.parent() == null) {
                spec.usageMessage().footer("", Command.caution());
            }
            return new Help(spec, colours);
        }
    }

    private int usage(CommandLine line, String message) {
        String reason = oneLine(message.lines().findFirst().orElse(""));
        streams.warn(line.getCommandSpec().qualifiedName() + ": " + reason + ". Try '" + line.getCommandSpec().qualifiedName()
                + " --help'.");
        return ExitCodes.USAGE;
    }

    private int failed(String name, Exception e) {
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
    private int broken(String name, Throwable thrown) {
        // what went wrong beside the command comes wrapped
        Throwable e = thrown instanceof CompletionException && thrown.getCause() != null ? thrown.getCause() : thrown;
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
            ErrorLog.append("", Optional.of(e));
            return "the trace is in " + ErrorLog.file();
        } catch (IOException | RuntimeException | Error worse) {
            return "no trace could be written";
        }
    }

    /** Takes what could end a line, or steer a terminal, out of a message: it may quote a hostile file. */
    private static String oneLine(String message) {
        return Printable.of(message.strip());
    }
}
