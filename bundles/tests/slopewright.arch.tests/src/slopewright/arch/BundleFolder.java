package slopewright.arch;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.jar.Manifest;
import java.util.stream.Stream;
import org.eclipse.osgi.util.ManifestElement;
import org.osgi.framework.BundleException;

/**
 * A bundle or fragment of the tree.
 *
 * @param folder where it lives
 * @param manifest its manifest
 */
record BundleFolder(Path folder, Manifest manifest) {

    static BundleFolder read(Path folder) {
        try (InputStream in = Files.newInputStream(folder.resolve("META-INF/MANIFEST.MF"))) {
            return new BundleFolder(folder, new Manifest(in));
        } catch (IOException e) {
            throw new UncheckedIOException(folder.toString(), e);
        }
    }

    /** The name of the folder, by which the bundle is known. */
    String name() {
        return folder.getFileName().toString();
    }

    /** The name of the folder of folders: core, app, ui, tests or compat. */
    String group() {
        return folder.getParent().getFileName().toString();
    }

    Optional<String> header(String name) {
        return Optional.ofNullable(manifest.getMainAttributes().getValue(name));
    }

    List<ManifestElement> elements(String header) {
        Optional<String> value = header(header);
        if (value.isEmpty()) {
            return List.of();
        }
        try {
            return List.of(ManifestElement.parseHeader(header, value.get()));
        } catch (BundleException e) {
            throw new IllegalStateException(folder + ": " + header, e);
        }
    }

    /** The names in a header, without their attributes. */
    Set<String> names(String header) {
        Set<String> names = new TreeSet<>();
        elements(header).forEach(element -> names.addAll(List.of(element.getValueComponents())));
        return names;
    }

    Path sources() {
        return folder.resolve("src");
    }

    Path generatedSources() {
        return folder.resolve("src-gen");
    }

    /** Packages with at least one source file below a source folder. */
    Set<String> packages(Path sourceFolder) {
        Set<String> packages = new TreeSet<>();
        for (Path file : SourceTree.files(sourceFolder, ".java")) {
            packages.add(sourceFolder.relativize(file.getParent()).toString().replace('/', '.').replace('\\', '.'));
        }
        return packages;
    }

    /** The compiled classes; a bundle with sources but without compiled classes is a fault of the build. */
    List<ClassFile> classes() {
        List<Path> files = SourceTree.files(folder.resolve("target").resolve("classes"), ".class");
        boolean hasSources = Stream.of(sources(), generatedSources())
                .flatMap(source -> SourceTree.files(source, ".java").stream())
                .anyMatch(file -> !file.endsWith("package-info.java"));
        if (files.isEmpty() && hasSources) {
            throw new IllegalStateException(name() + " has sources but no compiled classes; build it first");
        }
        return files.stream().map(ClassFile::read).toList();
    }

    /** True where a class, or the class around it, was compiled from generated sources. */
    boolean isGenerated(ClassFile type) {
        String top = type.name().contains("$") ? type.name().substring(0, type.name().indexOf('$')) : type.name();
        return Files.exists(generatedSources().resolve(top + ".java"));
    }

    @Override
    public String toString() {
        return name();
    }
}
