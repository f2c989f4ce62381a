package slopewright.arch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.jar.Attributes;
import java.util.jar.Manifest;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every manifest keeps to the table of layers, and the table to the tree. */
class LayersTest {

    private static final LayerTable TABLE = LayerTable.read();

    static Stream<BundleFolder> bundles() {
        return SourceTree.bundles().stream();
    }

    @Test
    void theTableListsEveryBundleOnce() {
        List<String> inTree = bundles().map(BundleFolder::name).sorted().toList();
        List<String> inTable = TABLE.rows().stream().map(LayerTable.Row::bundle).sorted().toList();
        assertEquals(inTree, inTable);
    }

    @Test
    void theTablePermitsOwnBundlesOfLowerLayersOnly() {
        List<String> wrong = TABLE.rows().stream()
                .flatMap(row -> row.own().stream()
                        .filter(own -> !own.equals("*"))
                        .filter(own -> TABLE.row(own).filter(row::permitsOwn).isEmpty())
                        .map(own -> row.bundle() + " lists " + own))
                .toList();
        assertEquals(List.of(), wrong);
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void aBundleRequiresWhatItsLayerPermits(BundleFolder bundle) {
        assertEquals(List.of(), TABLE.violations(bundle));
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void aBundleIsNamedLikeItsFolder(BundleFolder bundle) {
        assertEquals(Set.of(bundle.name()), bundle.names("Bundle-SymbolicName"));
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void aBundleHasNoActivator(BundleFolder bundle) {
        assertTrue(bundle.header("Bundle-Activator").isEmpty());
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void aTestBundleOfOneBundleIsItsFragment(BundleFolder bundle) {
        Set<String> host = bundle.names("Fragment-Host");
        if (bundle.group().equals("tests") && !host.isEmpty()) {
            assertEquals(Set.of(bundle.name().replaceFirst("\\.tests$", "")), host);
        }
    }

    @Test
    void theBuildHasEveryBundleAndFeature() {
        String pom = SourceTree.text(SourceTree.root().resolve("pom.xml"));
        Set<String> modules = pom.lines()
                .filter(line -> line.contains("<module>"))
                .map(line -> line.replaceAll(".*<module>|</module>.*", ""))
                .filter(module -> !module.startsWith("releng/") || module.startsWith("releng/compat/"))
                .collect(Collectors.toCollection(TreeSet::new));
        Set<String> folders = bundles().map(bundle -> SourceTree.relative(bundle.folder())).collect(Collectors.toCollection(TreeSet::new));
        SourceTree.files(SourceTree.root().resolve("features"), "feature.xml")
                .forEach(file -> folders.add(SourceTree.relative(file.getParent())));
        assertEquals(folders, modules);
    }

    @Test
    void theFeaturesHaveEveryBundleThatIsShipped() {
        String features = SourceTree.files(SourceTree.root().resolve("features"), "feature.xml").stream()
                .map(SourceTree::text)
                .collect(Collectors.joining());
        List<String> missing = bundles()
                .filter(bundle -> !bundle.group().equals("tests"))
                .map(BundleFolder::name)
                .filter(name -> !features.contains("<plugin id=\"" + name + "\""))
                .toList();
        assertEquals(List.of(), missing);
    }

    @Test
    void aBundleThatOversteppedWouldBeFound() {
        LayerTable table = LayerTable.parse("""
                0\tlow\tcore\t-\torg.permitted\t-
                1\tone\tcore\tlow\torg.permitted.*\t-
                1\ttwo\tcore\tlow\t-\t-
                """);
        Manifest manifest = new Manifest();
        manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
        manifest.getMainAttributes().putValue("Require-Bundle", "low;visibility:=reexport,two,org.permitted.part,org.forbidden");
        manifest.getMainAttributes().putValue("Import-Package", "javax.xml.parsers,org.other");
        BundleFolder one = new BundleFolder(SourceTree.root().resolve("bundles/core/one"), manifest);
        assertEquals(List.of("one must not require org.forbidden", "one must not require two", "one must not import org.other",
                "one must not re-export low"), table.violations(one));
    }
}
