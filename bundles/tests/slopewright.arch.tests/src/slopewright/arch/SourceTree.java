package slopewright.arch;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** The tree that is built, found by the system property {@code slopewright.root}. */
final class SourceTree {

    private static final List<String> GROUPS = List.of("bundles/core", "bundles/app", "bundles/ui", "bundles/tests", "releng/compat");
    private static final Set<String> OUTSIDE_THE_CORE = Set.of("slopewright.edit", "slopewright.headless");
    private static final Set<String> DERIVED = Set.of("target", "bin", ".git", ".cache", ".tools", ".m2", ".metadata");

    private SourceTree() {
    }

    static Path root() {
        String root = System.getProperty("slopewright.root");
        if (root == null || !Files.isRegularFile(Path.of(root, "pom.xml"))) {
            throw new IllegalStateException("the system property slopewright.root names no source tree: " + root);
        }
        return Path.of(root);
    }

    /** Every bundle and fragment, in the order of the folders. */
    static List<BundleFolder> bundles() {
        return GROUPS.stream().flatMap(group -> folders(root().resolve(group)).stream()).map(BundleFolder::read).toList();
    }

    /** Bundles whose code must run without a display: the core, the edits and the command line. */
    static List<BundleFolder> bundlesWithoutDisplay() {
        return bundles().stream()
                .filter(bundle -> bundle.group().equals("core") || OUTSIDE_THE_CORE.contains(bundle.name()))
                .toList();
    }

    /** Every file that belongs to the sources; what builds and tools leave behind is passed over. */
    static List<Path> files() {
        return files(root());
    }

    /** Files below a folder whose names end as given; none where the folder is missing. */
    static List<Path> files(Path folder, String suffix) {
        return Files.isDirectory(folder) ? files(folder).stream().filter(file -> file.toString().endsWith(suffix)).toList() : List.of();
    }

    static String relative(Path file) {
        return root().relativize(file).toString();
    }

    static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(file.toString(), e);
        }
    }

    private static List<Path> files(Path folder) {
        try (Stream<Path> children = Files.list(folder)) {
            return children.sorted().flatMap(SourceTree::expand).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(folder.toString(), e);
        }
    }

    private static Stream<Path> expand(Path child) {
        if (DERIVED.contains(child.getFileName().toString()) || Files.isSymbolicLink(child)) {
            return Stream.empty();
        }
        return Files.isDirectory(child) ? files(child).stream() : Stream.of(child);
    }

    private static List<Path> folders(Path group) {
        try (Stream<Path> children = Files.list(group)) {
            return children.filter(child -> Files.isRegularFile(child.resolve("META-INF/MANIFEST.MF"))).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(group.toString(), e);
        }
    }
}
