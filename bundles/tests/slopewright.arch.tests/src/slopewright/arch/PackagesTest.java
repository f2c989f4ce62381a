package slopewright.arch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.eclipse.osgi.util.ManifestElement;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Exported packages are the API; everything else is internal. */
class PackagesTest {

    static Stream<BundleFolder> shipped() {
        return SourceTree.bundles().stream().filter(bundle -> Set.of("core", "app", "ui").contains(bundle.group()));
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void exactlyThePackagesOutsideInternalOnesAreExported(BundleFolder bundle) {
        Set<String> hidden = new TreeSet<>();
        Set<String> open = new TreeSet<>();
        for (ManifestElement element : bundle.elements("Export-Package")) {
            boolean internal = "true".equals(element.getDirective("x-internal")) || element.getDirective("x-friends") != null;
            (internal ? hidden : open).addAll(List.of(element.getValueComponents()));
        }
        Set<String> expected = new TreeSet<>(bundle.packages(bundle.sources()));
        expected.addAll(bundle.packages(bundle.generatedSources()));
        Set<String> handWritten = bundle.packages(bundle.sources());
        expected.removeIf(name -> isInternal(name) || hidden.contains(name) && !handWritten.contains(name));
        assertEquals(expected, open);
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void aPackageBearsTheNameOfItsBundle(BundleFolder bundle) {
        Set<String> packages = new TreeSet<>(bundle.packages(bundle.sources()));
        packages.addAll(bundle.packages(bundle.generatedSources()));
        packages.removeIf(name -> name.equals(bundle.name()) || name.startsWith(bundle.name() + "."));
        assertEquals(Set.of(), packages);
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void aPackageSaysInOneSentenceWhatItHolds(BundleFolder bundle) {
        List<String> silent = bundle.packages(bundle.sources()).stream()
                .filter(name -> !speaks(bundle, name))
                .toList();
        assertEquals(List.of(), silent);
    }

    private static boolean speaks(BundleFolder bundle, String packageName) {
        return SourceTree.files(bundle.sources().resolve(packageName.replace('.', '/')), "package-info.java").stream()
                .map(SourceTree::text)
                .anyMatch(text -> text.contains("package " + packageName + ";") && text.strip().startsWith("/**"));
    }

    private static boolean isInternal(String name) {
        return name.endsWith(".internal") || name.contains(".internal.");
    }
}
