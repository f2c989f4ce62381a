package slopewright.headless.internal;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slopewright.checks.CheckResult;
import slopewright.checks.Checks;
import slopewright.checks.Rule;
import slopewright.checks.RuleCatalogue;
import slopewright.checks.Severity;
import slopewright.checks.Stages;
import slopewright.evaluation.Editions;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.model.Project;
import slopewright.model.Stage;
import slopewright.model.io.Program;
import slopewright.model.util.Projects;

/** Runs every rule on one or more projects. */
@CommandLine.Command(name = "check", sortOptions = false,
        description = "Run every rule. Exits 1 with findings at or above the threshold, 5 where nothing could be evaluated.")
final class CheckCommand extends Command {

    private static final Set<String> FLAGS = Set.of("--all", "--json", "--csv", "--junit");
    /** What the library takes for an option, or for a file of further words. */
    private static final String NO_FILE = "-@";

    @Parameters(arity = "1..*", paramLabel = "FILE", description = "project files")
    private List<Path> files;

    @Option(names = "--rule-set", paramLabel = "KEY", description = "rule set instead of the project's own")
    private String ruleSet;

    @Option(names = "--rules", split = ",", paramLabel = "ID", description = "only these rules, by id or by the beginning of it")
    private List<String> rules = List.of();

    @Option(names = "--stage", paramLabel = "STAGE", description = "stage instead of the project's own: design, set-up or operation")
    private String stage;

    @Option(names = "--fail-on", paramLabel = "SEVERITY",
            description = "note, warning (default) or fail: from which weight findings make the command exit 1. What is not met with "
                    + "severity fail always does; what is to clear up weighs as a warning")
    private String failOn = "warning";

    @Option(names = "--all", description = "in text, list what passed and what does not apply too")
    private boolean all;

    @Option(names = "--language", paramLabel = "LANGUAGE", converter = LanguageWord.class,
            description = "language of the sentences in text, CSV and JUnit: en (default) or de; JSON has keys and English beside them")
    private Locale language = Locale.ENGLISH;

    @Option(names = "--json", description = "print one JSON document, of one shape for one file and for many")
    private boolean json;

    @Option(names = "--csv", description = "print comma-separated values")
    private boolean csv;

    @Option(names = "--junit", description = "print a JUnit XML report")
    private boolean junit;

    /**
     * Returns the call that scripts make a thousand times, of files with no option but a few flags, without the library of words, which
     * would take a seventh of it; empty for every other call, and where the library has to say what is wrong.
     */
    static Optional<Command> plain(String[] words) {
        if (words.length < 2 || !"check".equals(words[0])) {
            return Optional.empty();
        }
        CheckCommand command = new CheckCommand();
        command.files = new ArrayList<>();
        Set<String> flags = new HashSet<>();
        for (int i = 1; i < words.length; i++) {
            if (FLAGS.contains(words[i])) {
                if (!flags.add(words[i])) {
                    return Optional.empty();
                }
            } else if (words[i].isEmpty() || NO_FILE.indexOf(words[i].charAt(0)) >= 0) {
                return Optional.empty();
            } else {
                try {
                    command.files.add(Path.of(words[i]));
                } catch (InvalidPathException e) {
                    return Optional.empty();
                }
            }
        }
        command.all = flags.contains("--all");
        command.json = flags.contains("--json");
        command.csv = flags.contains("--csv");
        command.junit = flags.contains("--junit");
        return command.files.isEmpty() ? Optional.empty() : Optional.of(command);
    }

    @Override
    public Integer call() {
        Severity threshold = threshold();
        if ((json ? 1 : 0) + (csv ? 1 : 0) + (junit ? 1 : 0) > 1) {
            throw new UsageException("--json, --csv and --junit exclude each other");
        }
        for (String name : rules) {
            if (RuleCatalogue.all().stream().noneMatch(rule -> rule.id().startsWith(name))) {
                throw new UsageException("there is no rule '" + name + "'; see 'slopewright rules'");
            }
        }
        if (ruleSet != null) {
            ProjectFiles.rules(Optional.of(ruleSet));
        }
        if (stage != null) {
            stage();
        }
        int code = ExitCodes.OK;
        List<CheckedFile> checked = new ArrayList<>();
        int done = 0;
        for (Path file : files) {
            try {
                CheckedFile result = check(file);
                checked.add(result);
                code = ExitCodes.worse(code, hasNothingToCheck(result) ? ExitCodes.NOTHING_EVALUATED : code(result.result(), threshold));
            } catch (InputException e) {
                streams().warn("slopewright check: " + e.getMessage());
                code = ExitCodes.worse(code, ExitCodes.INPUT);
            }
            done++;
            if (files.size() > 1) {
                streams().warn(String.format(Locale.ROOT, "%3d %% %s", 100 * done / files.size(), file));
            }
        }
        print(checked);
        return code;
    }

    private Severity threshold() {
        for (Severity severity : Severity.values()) {
            if (severity.key().equals(failOn.toLowerCase(Locale.ROOT))) {
                return severity;
            }
        }
        throw new UsageException("--fail-on takes note, warning or fail, not '" + failOn + "'");
    }

    private Stage stage() {
        return Stages.find(stage).orElseThrow(() -> new UsageException("--stage takes design, set-up or operation, not '" + stage + "'"));
    }

    /** Checks a file as it was read, for its stage is read back too; what is printed names the stage that was asked for. */
    private CheckedFile check(Path file) {
        Project project = ProjectFiles.load(file);
        if (ruleSet == null) {
            sayWhatBareNamesMean(file, project);
        }
        Stage asked = stage == null ? project.getStage() : stage();
        try {
            CheckResult result = Checks.run(ProjectEvaluation.of(project, Optional.ofNullable(ruleSet)), asked, this::isWanted);
            project.setStage(asked);
            return new CheckedFile(file, project, result);
        } catch (IllegalArgumentException e) {
            throw new InputException(file + ": " + e.getMessage());
        }
    }

    /** A file of before there were editions names none; what it means then is said, and how it moves. */
    private void sayWhatBareNamesMean(Path file, Project project) {
        List<Editions.Move> bare = Editions.moves(project).stream().filter(Editions.Move::isBare).toList();
        if (!bare.isEmpty()) {
            Editions.Move first = bare.get(0);
            String entries = bare.stream().map(move -> move.holder().getId() + "." + move.attribute().getName() + "=" + move.to())
                    .collect(Collectors.joining(" "));
            streams().warn(String.format(Locale.ROOT, "slopewright check: %s: '%s' names no edition and is read as %s; 'slopewright enter "
                    + "%s %s -o FILE' moves it to %s, where %d confirmations, rejections and own values of %s lapse; 'slopewright "
                    + "compare-rule-sets %s --rule-sets %s,%s' says beforehand what differs", file, first.named(), first.from(), file,
                    entries, first.to(), Editions.lapsing(project, bare), first.from(), file, first.from(), first.to()));
        }
    }

    private boolean isWanted(Rule rule) {
        return rules.isEmpty() || rules.stream().anyMatch(name -> rule.id().startsWith(name));
    }

    /** A project without an approach aid passes no check of a layout, whatever its papers say. */
    private boolean hasNothingToCheck(CheckedFile checked) {
        boolean nothing = rules.isEmpty() && Projects.aids(checked.project()).isEmpty();
        if (nothing) {
            streams().warn("slopewright check: " + checked.file() + ": holds no approach aid, so no layout was checked");
        }
        return nothing;
    }

    /** What is broken makes the command fail whatever weight was asked for; the weight decides about the rest. */
    private static int code(CheckResult result, Severity threshold) {
        if (!result.anythingEvaluated()) {
            return ExitCodes.NOTHING_EVALUATED;
        }
        boolean found = result.isBroken() || result.worst().filter(worst -> worst.compareTo(threshold) >= 0).isPresent();
        return found ? ExitCodes.FINDINGS : ExitCodes.OK;
    }

    private void print(List<CheckedFile> checked) {
        CheckText text = new CheckText(language, streams());
        if (json) {
            Json.print(CheckJson.of(checked, Program.text()), streams().out);
        } else if (csv) {
            text.csv(checked);
        } else if (junit) {
            CheckJunit.print(checked, language, streams().out);
        } else {
            checked.forEach(file -> text.print(file, all));
        }
    }
}
