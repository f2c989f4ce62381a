package slopewright.rcp.internal.site;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.core.runtime.ILog;

import slopewright.evaluation.site.SiteTemplate;
import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
import slopewright.model.io.ProjectFileException;
import slopewright.rcp.internal.ShellCommands;
import slopewright.ui.MessageTexts;
import slopewright.ui.document.ProjectInput;

/** The projects that a new site may start from: those of the product and those in the user's folder of templates. */
public final class Templates {

    /**
     * One template.
     *
     * @param label what people read
     * @param file  the file of the user's own one; empty for one of the product
     * @param own   the one of the product; empty for the user's own one
     */
    public record Template(String label, Optional<Path> file, Optional<SiteTemplate> own) {

        /**
         * Reads the template.
         *
         * @return a project of its own
         * @throws IOException where it cannot be read; the message says why
         */
        public Project load() throws IOException {
            try {
                return own.isPresent() ? own.get().project() : ProjectFile.load(file.orElseThrow());
            } catch (ProjectFileException e) {
                throw new IOException(MessageTexts.reason(e), e);
            }
        }
    }

    private Templates() {
    }

    /** Returns all templates, those of the product first. */
    public static List<Template> all() {
        List<Template> found = new ArrayList<>();
        for (SiteTemplate own : SiteTemplate.values()) {
            found.add(new Template(MessageTexts.of(own.message()), Optional.empty(), Optional.of(own)));
        }
        try {
            found.addAll(in(folder()));
        } catch (IOException e) {
            ILog.get().warn("The folder of templates cannot be read", e);
        }
        return found;
    }

    /** Returns the user's folder of templates; it need not exist. */
    public static Path folder() throws IOException {
        return ShellCommands.folder("templates");
    }

    private static List<Template> in(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(ProjectInput.FILE_SUFFIX)).sorted()
                    .map(file -> new Template(stem(file), Optional.of(file), Optional.empty())).toList();
        }
    }

    private static String stem(Path file) {
        String name = String.valueOf(file.getFileName());
        return name.substring(0, name.length() - ProjectInput.FILE_SUFFIX.length());
    }
}
