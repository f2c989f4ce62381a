package slopewright.headless.internal;

import java.nio.file.Path;

import slopewright.checks.CheckResult;
import slopewright.evaluation.MadeFrom;
import slopewright.model.Project;

/**
 * One project with what the rules say about it.
 *
 * @param file    its file
 * @param project the project
 * @param result  what the rules say
 */
record CheckedFile(Path file, Project project, CheckResult result) {

    /** Returns what the verdicts were made from. */
    MadeFrom madeFrom() {
        return MadeFrom.of(project, result.rules());
    }

    /** Returns what the project is called: its name, else that of its file. */
    String name() {
        return project.getName() == null ? file.getFileName().toString() : project.getName();
    }
}
