package slopewright.headless.internal;

import java.nio.file.Path;
import java.util.Optional;

import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
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

    /** An aid of a project with what it gives. */
    record Named(Project project, AidEvaluation evaluation) {

        ApproachAid aid() {
            return evaluation.aid();
        }

        RuleSet rules() {
            return evaluation.rules();
        }
    }

    /** Evaluates the project of a named aid under the rule set that was named, else under those that it and its aids name. */
    ProjectEvaluation projectEvaluation(Named named) {
        return ProjectFiles.evaluation(named.project(), Optional.ofNullable(ruleSet));
    }

    Named load() {
        Project project = ProjectFiles.load(file);
        ApproachAid found = ProjectFiles.aid(project, aid);
        return new Named(project, ProjectFiles.evaluation(project, found, Optional.ofNullable(ruleSet)));
    }
}
