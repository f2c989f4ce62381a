package slopewright.ui.tests;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** What a killed program leaves, without a kill: a copy of the project and of the unsaved work beside it, which no program holds. */
final class Kills {

    private Kills() {
    }

    /** Copies a project and what lies beside it under its name into a new folder; returns the copy. */
    static Path asLeft(Path project, Path folder) throws IOException {
        Files.createDirectories(folder);
        String name = String.valueOf(project.getFileName());
        try (Stream<Path> files = Files.list(project.getParent())) {
            for (Path file : files.filter(beside -> String.valueOf(beside.getFileName()).contains(name)).toList()) {
                if (Files.isRegularFile(file)) {
                    Files.copy(file, folder.resolve(file.getFileName()));
                }
            }
        }
        return folder.resolve(name);
    }

    /** Returns where the first window keeps unsaved work. */
    static Path unsaved(Path project) {
        return project.resolveSibling("." + project.getFileName() + ".unsaved");
    }
}
