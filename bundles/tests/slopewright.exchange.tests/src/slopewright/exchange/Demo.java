package slopewright.exchange;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.MessageRenderer;
import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
import slopewright.model.io.ProjectFileException;

/** The demo project and what its aids give, each under its own rule set. */
public final class Demo {

    /** English, in metres. */
    public static final MessageRenderer ENGLISH = MessageRenderer.of(Locale.ENGLISH);

    private Demo() {
    }

    /** Returns where the demo project lies. */
    public static Path file() {
        return Path.of(System.getProperty("slopewright.root"), "demo-data", "harrow-vale", "harrow-vale.slopewright");
    }

    /** Loads a fresh copy. */
    public static Project project() {
        try {
            return ProjectFile.load(file());
        } catch (ProjectFileException e) {
            throw new AssertionError(e);
        }
    }

    /** Returns what the aids of a project give. */
    public static ProjectEvaluation evaluate(Project project) {
        return ProjectEvaluation.of(project, Optional.empty());
    }
}
