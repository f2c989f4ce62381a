package slopewright.rcp.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;

import slopewright.evaluation.EvaluationCache;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.model.Project;
import slopewright.model.SlopewrightPackage;
import slopewright.model.io.ProjectFile;
import slopewright.model.io.ProjectFileException;
import slopewright.model.util.Projects;

/**
 * Reads projects beside the thread of the user interface while the window is still being made. A copy of a small one is evaluated there
 * too, so that the rule sets and whatever else the first painting asks for are there when it does.
 */
public final class ReadAhead {

    /** Evaluating more than this takes longer than what it makes ready. */
    private static final int MOST_OBSTACLES = 1000;

    /** A project as it was read, and when its file was written last before that. */
    private record Ahead(Project project, FileTime written) {
    }

    private final Map<Path, CompletableFuture<Ahead>> reading = new HashMap<>();

    private ReadAhead() {
    }

    /**
     * Begins to read.
     *
     * @param projects the files, in the order in which they will be asked for
     * @return where they will be had
     */
    public static ReadAhead of(List<Path> projects) {
        ReadAhead ahead = new ReadAhead();
        if (!projects.isEmpty()) {
            // begun here, for the classes of the model wait for each other where two threads begin with different ones of them
            SlopewrightPackage.eINSTANCE.eClass();
            projects.forEach(project -> ahead.reading.put(project, new CompletableFuture<>()));
            Map<Path, CompletableFuture<Ahead>> wanted = Map.copyOf(ahead.reading);
            Thread thread = new Thread(() -> projects.forEach(project -> read(project, wanted.get(project))), "read ahead");
            thread.setDaemon(true);
            thread.start();
        }
        return ahead;
    }

    private static void read(Path file, CompletableFuture<Ahead> promised) {
        Optional<Project> ready = Optional.empty();
        try {
            FileTime written = Files.getLastModifiedTime(file);
            Project project = ProjectFile.load(file);
            boolean isSmall = project.getAerodrome() != null && project.getAerodrome().getObstacles().size() <= MOST_OBSTACLES;
            ready = isSmall ? Optional.of(ProjectFile.copy(project)) : Optional.empty();
            promised.complete(new Ahead(project, written));
        } catch (IOException | ProjectFileException | RuntimeException | LinkageError e) {
            promised.completeExceptionally(e);
        }
        ready.ifPresent(ReadAhead::evaluate);
    }

    private static void evaluate(Project copy) {
        try {
            ProjectEvaluation evaluation = ProjectEvaluation.of(copy, Optional.empty(), new EvaluationCache());
            Projects.aids(copy).forEach(evaluation::aid);
        } catch (RuntimeException | LinkageError e) {
            return; // the editor meets the same fault, and says so
        }
    }

    /**
     * Returns the project of a file: to the first who asks as it was read ahead, where that went well and nobody wrote it since, else as it
     * is now.
     *
     * @param file the file
     * @return its project
     * @throws ProjectFileException where it cannot be read
     */
    public Project read(Path file) throws ProjectFileException {
        CompletableFuture<Ahead> promised = reading.remove(file);
        if (promised != null) {
            try {
                Ahead ahead = promised.join();
                if (ahead.written().equals(Files.getLastModifiedTime(file))) {
                    return ahead.project();
                }
            } catch (CompletionException | IOException e) {
                return ProjectFile.load(file);
            }
        }
        return ProjectFile.load(file);
    }
}
