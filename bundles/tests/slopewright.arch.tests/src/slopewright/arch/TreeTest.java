package slopewright.arch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the sources of the whole tree must not hold, and what files name each other by text must be there. */
class TreeTest {

    private static final int LONGEST_FILE_LINES = 450;
    private static final Pattern BINARY =
            Pattern.compile(".*\\.(png|jpe?g|bmp|tiff?|pdf|xlsx|jar|class|zip|gif|ico|ttf|sqlite|shp|dbf|kmz|gz)");
    private static final Pattern CLASS_ATTRIBUTE = Pattern.compile("class=\"(slopewright\\.[\\w.$]+)");

    /** Words that mark unfinished work; put together here, so that this file does not hold them. */
    private static final List<String> UNFINISHED = List.of("TO" + "DO", "FIX" + "ME", "@Dis" + "abled", "not imple" + "mented");

    /** Hosts of package registries and the like; the build must run against whichever one its user has set up. */
    private static final List<String> HOSTS = List.of("repo." + "maven", "repo1." + "maven", "central." + "sonatype",
            "oss." + "sonatype", "download." + "eclipse.org", "repo." + "eclipse.org", "registry." + "npmjs", "files." + "pythonhosted",
            "pypi" + ".org", "deb." + "debian.org", "plugins." + "gradle.org", "crates" + ".io", "jit" + "pack.io");

    private static final List<String> MACHINE = List.of("/work" + "/", "/tmp" + "/sw", "../sha" + "red/", "/root" + "/.m2");

    static Stream<BundleFolder> bundles() {
        return SourceTree.bundles().stream();
    }

    @Test
    void nothingIsLeftUnfinished() {
        assertEquals(List.of(), occurrences(UNFINISHED));
    }

    @Test
    void oneVersionIsSaidEverywhere() {
        Matcher pom = Pattern.compile("<version>([0-9.]+)-SNAPSHOT</version>")
                .matcher(SourceTree.text(SourceTree.root().resolve("pom.xml")));
        assertTrue(pom.find());
        Map<String, String> said = Map.of(
                "bundles/core/slopewright.model/src/slopewright/model/io/Program.java", "VERSION = \"" + pom.group(1) + "\"",
                "bundles/app/slopewright.rcp/plugin.properties", "aboutText=Slopewright " + pom.group(1) + "\\n",
                "bundles/app/slopewright.rcp/plugin_de.properties", "aboutText=Slopewright " + pom.group(1) + "\\n",
                "releng/product/slopewright.product", "version=\"" + pom.group(1) + ".qualifier\"",
                "CHANGELOG.md", "## " + pom.group(1));
        said.forEach((file, text) -> assertTrue(SourceTree.text(SourceTree.root().resolve(file)).contains(text), file));
    }

    @Test
    void noRegistryIsNamed() {
        assertEquals(List.of(), occurrences(HOSTS));
    }

    @Test
    void noPlaceOnOneMachineIsNamed() {
        assertEquals(List.of(), occurrences(MACHINE));
    }

    @Test
    void generatedCodeIsNotEditedByHand() {
        String mark = "@generated" + " NOT";
        List<String> edited = bundles()
                .flatMap(bundle -> SourceTree.files(bundle.generatedSources(), ".java").stream())
                .filter(file -> SourceTree.text(file).contains(mark))
                .map(SourceTree::relative)
                .toList();
        assertEquals(List.of(), edited);
    }

    @Test
    void handWrittenFilesStayShort() {
        List<String> tooLong = SourceTree.files().stream()
                .filter(file -> file.toString().endsWith(".java") && !SourceTree.relative(file).contains("/src-gen/"))
                .filter(file -> SourceTree.text(file).lines().count() > LONGEST_FILE_LINES)
                .map(SourceTree::relative)
                .toList();
        assertEquals(List.of(), tooLong);
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void classesNamedInPluginFilesAreThere(BundleFolder bundle) {
        for (Path file : List.of(bundle.folder().resolve("plugin.xml"), bundle.folder().resolve("fragment.xml"))) {
            if (file.toFile().isFile()) {
                Matcher named = CLASS_ATTRIBUTE.matcher(SourceTree.text(file));
                while (named.find()) {
                    assertTrue(hasSource(bundle, named.group(1)), SourceTree.relative(file) + " names " + named.group(1));
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void servicesNamedInBundlesAreThere(BundleFolder bundle) {
        for (Path file : SourceTree.files(bundle.folder(), "")) {
            if (!file.getParent().endsWith("META-INF/services")) {
                continue;
            }
            List<String> services = SourceTree.text(file).lines().filter(line -> !line.isBlank() && !line.startsWith("#")).toList();
            assertFalse(services.isEmpty(), SourceTree.relative(file) + " names no service");
            assertEquals(services.size(), Set.copyOf(services).size(), SourceTree.relative(file) + " names a service twice");
            services.forEach(service -> assertTrue(hasSource(bundle, service), SourceTree.relative(file) + " names " + service));
        }
    }

    private static boolean hasSource(BundleFolder bundle, String className) {
        String file = className.replaceFirst("\\$.*", "").replace('.', '/') + ".java";
        return bundle.sources().resolve(file).toFile().isFile() || bundle.generatedSources().resolve(file).toFile().isFile();
    }

    private static List<String> occurrences(List<String> words) {
        return SourceTree.files().stream()
                .filter(file -> !BINARY.matcher(file.getFileName().toString()).matches())
                .flatMap(file -> occurrences(file, words))
                .toList();
    }

    private static Stream<String> occurrences(Path file, List<String> words) {
        String text = SourceTree.text(file);
        return words.stream().filter(text::contains).map(word -> SourceTree.relative(file) + " holds " + word);
    }
}
