package slopewright.testkit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import slopewright.model.ApproachAid;
import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
import slopewright.model.io.ProjectFileException;
import slopewright.model.util.Projects;

/** The demonstration projects of the source tree. */
public final class DemoProjects {
    /** An airfield with several indicators, laid out well. */
    public static final String GOOD = "harrow-vale";
    /** The same with planted faults. */
    public static final String FAULTS = "harrow-vale-faults";
    /** One indicator of every family. */
    public static final String EVERY_FAMILY = "every-family";

    private DemoProjects() {
    }

    /** Returns the source tree. */
    public static Path root() {
        return Path.of(System.getProperty("slopewright.root"));
    }

    /** Returns the folder of the demonstration data, or what lies in it. */
    public static Path data(String... names) {
        return Path.of(root().resolve("demo-data").toString(), names);
    }

    /** Returns the file of a demonstration project. */
    public static Path file(String name) {
        return data(name, name + ".slopewright");
    }

    /** Loads a demonstration project, a new one each time. */
    public static Project load(String name) {
        return load(file(name));
    }

    /** Loads a project. */
    public static Project load(Path file) {
        try {
            return ProjectFile.load(file);
        } catch (ProjectFileException e) {
            throw new AssertionError(e);
        }
    }

    /**
     * Returns the file of a project that stands under an edition that is no longer the usual one, sealed and confirmed for it: the sound
     * demonstration as it was before it moved from {@code icao:5th} to {@code icao:9th}.
     */
    public static Path olderEdition() {
        return root().resolve("bundles/tests/slopewright.testkit/sites/older-edition.slopewright");
    }

    /** Copies a demonstration project into a folder and returns the file there. */
    public static Path copy(String name, Path folder) {
        try {
            return Files.copy(file(name), folder.resolve(file(name).getFileName()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Returns the aid of a name. */
    public static ApproachAid aid(Project project, String name) {
        return Projects.aids(project).stream().filter(aid -> name.equals(aid.getName())).findFirst()
                .orElseThrow(() -> new AssertionError("no aid " + name + " among "
                        + Projects.aids(project).stream().map(ApproachAid::getName).toList()));
    }

    /** Returns every demonstration project. */
    public static List<String> names() {
        return List.of(GOOD, FAULTS, EVERY_FAMILY);
    }
}
