package slopewright.headless.internal;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;


import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slopewright.checks.CheckResult;
import slopewright.checks.Checks;
import slopewright.checks.Rule;
import slopewright.checks.RuleCatalogue;
import slopewright.checks.Severity;
import slopewright.model.Project;
import slopewright.model.util.Projects;

/** Runs every rule on one or more projects. */
@CommandLine.Command(name = "check", sortOptions = false,
        description = "Run every rule. Exits 1 with findings at or above the threshold, 5 where nothing could be evaluated.")
final class CheckCommand extends Command {

    @Parameters(arity = "1..*", paramLabel = "FILE", description = "project files")
    private List<Path> files;

    @Option(names = "--rule-set", paramLabel = "KEY", description = "rule set instead of the project's own")
    private String ruleSet;

    @Option(names = "--rules", split = ",", paramLabel = "ID", description = "only these rules, by id or by the beginning of it")
    private List<String> rules = List.of();

    @Option(names = "--fail-on", defaultValue = "warning", paramLabel = "SEVERITY", description = "note, warning (default) or fail")
    private String failOn;

    @Option(names = "--all", description = "in text, list what passed and what does not apply too")
    private boolean all;

    @Option(names = "--json", description = "print one JSON document, of one shape for one file and for many")
    private boolean json;

    @Option(names = "--csv", description = "print comma-separated values")
    private boolean csv;

    @Option(names = "--junit", description = "print a JUnit XML report")
    private boolean junit;

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
        int code = ExitCodes.OK;
        List<CheckedFile> checked = new ArrayList<>();
        int done = 0;
        for (Path file : files) {
            try {
                CheckedFile one = check(file);
                checked.add(one);
                code = ExitCodes.worse(code, hasNothingToCheck(one) ? ExitCodes.NOTHING_EVALUATED : code(one.result(), threshold));
            } catch (InputException e) {
                streams().err.println("slopewright check: " + e.getMessage());
                code = ExitCodes.worse(code, ExitCodes.INPUT);
            }
            done++;
            if (files.size() > 1) {
                streams().err.printf(Locale.ROOT, "%3d %% %s%n", 100 * done / files.size(), file);
            }
        }
        print(checked, threshold);
        return code;
    }

    /** One project with what the rules say about it. */
    record CheckedFile(Path file, Project project, CheckResult result) {
    }

    private Severity threshold() {
        for (Severity severity : Severity.values()) {
            if (severity.key().equals(failOn.toLowerCase(Locale.ROOT))) {
                return severity;
            }
        }
        throw new UsageException("--fail-on takes note, warning or fail, not '" + failOn + "'");
    }

    private CheckedFile check(Path file) {
        Project project = ProjectFiles.load(file);
        try {
            return new CheckedFile(file, project, Checks.run(project, Optional.ofNullable(ruleSet), this::isWanted));
        } catch (IllegalArgumentException e) {
            throw new InputException(file + ": " + e.getMessage());
        }
    }

    private boolean isWanted(Rule rule) {
        return rules.isEmpty() || rules.stream().anyMatch(name -> rule.id().startsWith(name));
    }

    /** A project without an approach aid passes no check of a layout, whatever its papers say. */
    private boolean hasNothingToCheck(CheckedFile one) {
        boolean nothing = rules.isEmpty() && Projects.aids(one.project()).isEmpty();
        if (nothing) {
            streams().err.println("slopewright check: " + one.file() + ": holds no approach aid, so no layout was checked");
        }
        return nothing;
    }

    private static int code(CheckResult result, Severity threshold) {
        if (!result.anythingEvaluated()) {
            return ExitCodes.NOTHING_EVALUATED;
        }
        boolean found = result.isBroken() || result.worst().filter(worst -> worst.compareTo(threshold) >= 0).isPresent();
        return found ? ExitCodes.FINDINGS : ExitCodes.OK;
    }

    private void print(List<CheckedFile> checked, Severity threshold) {
        if (json) {
            Json.print(CheckOutput.json(checked, Program.text()), streams().out);
        } else if (csv) {
            CheckOutput.csv(checked, streams().out);
        } else if (junit) {
            CheckOutput.junit(checked, threshold, streams().out);
        } else {
            checked.forEach(one -> CheckOutput.text(one, all, streams().out));
        }
    }
}
