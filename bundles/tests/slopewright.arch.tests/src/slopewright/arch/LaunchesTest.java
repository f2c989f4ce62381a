package slopewright.arch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import javax.xml.parsers.DocumentBuilderFactory;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** The run configurations of the development environment name what is in the tree and in the target. */
class LaunchesTest {

    private static final String JAVA = "org.eclipse.jdt.launching.localJavaApplication";
    private static final String WINDOW = "org.eclipse.pde.ui.RuntimeWorkbench";
    private static final String TESTS = "org.eclipse.jdt.junit.launchconfig";
    private static final String WINDOW_TESTS = "org.eclipse.pde.ui.JunitLaunchConfig";
    private static final String PROJECT = "org.eclipse.jdt.launching.PROJECT_ATTR";
    private static final String VARIABLE = "${project_loc:";

    static Stream<Path> launches() {
        return SourceTree.files(SourceTree.root().resolve("releng/launch"), ".launch").stream();
    }

    private static Element xml(Path file) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            Document document = factory.newDocumentBuilder().parse(file.toFile());
            return document.getDocumentElement();
        } catch (Exception e) {
            throw new AssertionError(file.toString(), e);
        }
    }

    private static List<Element> elements(Element parent, String name) {
        NodeList nodes = parent.getElementsByTagName(name);
        List<Element> found = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            found.add((Element) nodes.item(i));
        }
        return found;
    }

    private static Optional<String> value(Element launch, String key) {
        return elements(launch, "stringAttribute").stream().filter(entry -> entry.getAttribute("key").equals(key))
                .map(entry -> entry.getAttribute("value")).findFirst();
    }

    /** The bundles of a list, without their start levels. */
    private static Set<String> bundles(Element launch, String key) {
        return elements(launch, "setAttribute").stream().filter(set -> set.getAttribute("key").equals(key))
                .flatMap(set -> elements(set, "setEntry").stream()).map(entry -> entry.getAttribute("value").replaceFirst("@.*", ""))
                .collect(Collectors.toSet());
    }

    private static Path bundle(String name) {
        return SourceTree.bundles().stream().filter(bundle -> bundle.name().equals(name)).map(BundleFolder::folder).findFirst()
                .orElseThrow(() -> new AssertionError("there is no bundle " + name));
    }

    @Test
    void thereIsOneOfEachKind() {
        assertEquals(Set.of(JAVA, WINDOW, TESTS, WINDOW_TESTS), launches().map(file -> xml(file).getAttribute("type"))
                .collect(Collectors.toSet()));
    }

    @ParameterizedTest
    @MethodSource("launches")
    void everyProjectAndClassThatIsNamedIsThere(Path file) {
        Element launch = xml(file);
        value(launch, PROJECT).ifPresent(project -> {
            Path folder = bundle(project);
            String type = value(launch, "org.eclipse.jdt.launching.MAIN_TYPE").orElse("");
            assertTrue(type.isEmpty() || Files.isRegularFile(folder.resolve("src/" + type.replace('.', '/') + ".java")), type);
            value(launch, "org.eclipse.jdt.junit.CONTAINER").ifPresent(container -> assertEquals("=" + project, container));
        });
        assertEquals(launch.getAttribute("type").equals(WINDOW), value(launch, PROJECT).isEmpty());
        String text = SourceTree.text(file);
        for (int at = text.indexOf(VARIABLE); at >= 0; at = text.indexOf(VARIABLE, at + 1)) {
            String project = text.substring(at + VARIABLE.length(), text.indexOf('}', at));
            assertTrue(SourceTree.text(SourceTree.root().resolve("pom.xml")).contains("<artifactId>" + project + "</artifactId>"), project);
            String behind = text.substring(text.indexOf('}', at) + 1).replaceFirst("(?s)[\" ].*", "");
            assertTrue(Files.exists(SourceTree.root().resolve(behind.replaceFirst("^/", ""))), behind);
        }
    }

    @ParameterizedTest
    @MethodSource("launches")
    void testsAreRunAsTheBuildRunsThem(Path file) {
        Element launch = xml(file);
        if (Set.of(TESTS, WINDOW_TESTS).contains(launch.getAttribute("type"))) {
            assertEquals(Optional.of("org.eclipse.jdt.junit.loader.junit5"), value(launch, "org.eclipse.jdt.junit.TEST_KIND"));
            String options = value(launch, "org.eclipse.jdt.launching.VM_ARGUMENTS").orElse("");
            assertTrue(options.contains("-Dslopewright.root="), options);
        }
    }

    @ParameterizedTest
    @MethodSource("launches")
    void theWindowHasTheBundlesOfTheProduct(Path file) {
        Element launch = xml(file);
        Set<String> own = bundles(launch, "selected_workspace_bundles");
        Set<String> others = bundles(launch, "selected_target_bundles");
        if (!Set.of(WINDOW, WINDOW_TESTS).contains(launch.getAttribute("type"))) {
            assertTrue(own.isEmpty() && others.isEmpty());
            return;
        }
        Element product = xml(SourceTree.root().resolve("releng/product/slopewright.product"));
        Set<String> shipped = elements((Element) product.getElementsByTagName("plugins").item(0), "plugin").stream()
                .map(plugin -> plugin.getAttribute("id")).collect(Collectors.toSet());
        Set<String> listed = new HashSet<>(own);
        listed.addAll(others);
        value(launch, PROJECT).ifPresent(listed::remove);
        assertEquals(shipped, listed);
        own.forEach(LaunchesTest::bundle);
        String target = SourceTree.text(SourceTree.root().resolve("releng/slopewright.target"));
        others.forEach(bundle -> assertTrue(target.contains(">" + bundle + "<") || target.contains("Bundle-SymbolicName: " + bundle),
                bundle));
        assertFalse(others.isEmpty());
        assertEquals(Optional.of(product.getAttribute("id")), value(launch, "product"));
    }
}
