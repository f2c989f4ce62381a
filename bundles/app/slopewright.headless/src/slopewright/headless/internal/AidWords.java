package slopewright.headless.internal;

import java.nio.file.Path;
import java.util.Optional;

import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.EvaluationCache;
import slopewright.model.ApproachAid;
import slopewright.model.Project;
import slopewright.standards.RuleSet;

/** The words with which a command names an aid of a file and its rule set. */
final class AidWords {

    @Parameters(paramLabel = "FILE", description = "project file")
    private Path file;

    @Option(names = "--aid", required = true, paramLabel = "ID", description = "approach aid in the file, by id or name")
    private String aid;

    @Option(names = "--rule-set", paramLabel = "KEY", description = "rule set (default that of the aid, else of the project)")
    private String ruleSet;

    /** An aid with its project and rule set. */
    record Named(Project project, ApproachAid aid, RuleSet rules) {

        /** Evaluates it. */
        AidEvaluation evaluation() {
            return AidEvaluation.of(aid, rules, new EvaluationCache());
        }
    }

    Named load() {
        Project project = ProjectFiles.load(file);
        ApproachAid found = ProjectFiles.aid(project, aid);
        Optional<String> named = Optional.ofNullable(ruleSet).or(() -> Optional.ofNullable(found.getRuleSetKey()));
        return new Named(project, found, ProjectFiles.rules(project, named));
    }
}
