package slopewright.rcp.internal;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import slopewright.ui.document.ProjectInput;

/** The project files among the words that the platform left over for the application. */
public final class CommandLineProjects {

    private CommandLineProjects() {
    }

    /**
     * Picks the project files.
     *
     * @param words the words of the command line
     * @return every word that ends like a project file, or else a single word that is no option; absolute, in the given order
     */
    public static List<Path> among(String[] words) {
        boolean single = words.length == 1 && !words[0].startsWith("-");
        return Stream.of(words)
                .filter(word -> single || !word.startsWith("-") && word.endsWith(ProjectInput.FILE_SUFFIX))
                .map(CommandLineProjects::path)
                .flatMap(Optional::stream)
                .toList();
    }

    private static Optional<Path> path(String word) {
        try {
            return Optional.of(Path.of(word).toAbsolutePath().normalize());
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }
}
