package slopewright.rcp.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;

import slopewright.model.Project;
import slopewright.model.SlopewrightPackage;
import slopewright.model.io.ProjectFile;
import slopewright.model.io.ProjectFileException;

/** Reads projects beside the thread of the user interface, while the window is still being made. */
public final class ReadAhead {

    /** A project as it was read, and when its file was written last before that. */
    private record Ahead(Project project, FileTime written) {
    }

    private final Map<Path, CompletableFuture<Ahead>> reading = new HashMap<>();
    private CompletableFuture<Void> model = CompletableFuture.completedFuture(null);

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
            projects.forEach(project -> ahead.reading.put(project, new CompletableFuture<>()));
            Map<Path, CompletableFuture<Ahead>> wanted = Map.copyOf(ahead.reading);
            CompletableFuture<Void> begun = new CompletableFuture<>();
            ahead.model = begun;
            Thread thread = new Thread(() -> {
                begin(begun);
                projects.forEach(project -> read(project, wanted.get(project)));
            }, "read ahead");
            thread.setDaemon(true);
            thread.start();
        }
        return ahead;
    }

    private static void begin(CompletableFuture<Void> begun) {
        try {
            SlopewrightPackage.eINSTANCE.eClass();
        } finally {
            begun.complete(null); // whoever needs the model meets the same fault
        }
    }

    private static void read(Path file, CompletableFuture<Ahead> promised) {
        try {
            FileTime written = Files.getLastModifiedTime(file);
            promised.complete(new Ahead(ProjectFile.load(file), written));
        } catch (IOException | ProjectFileException | RuntimeException | LinkageError e) {
            promised.completeExceptionally(e);
        }
    }

    /**
     * Waits until the classes of the model are there: two threads that begin with different ones of them wait for each other. To be called
     * before anything else of the model is touched.
     */
    public void await() {
        model.join();
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
