package slopewright.arch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.Request;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.osgi.framework.Bundle;
import org.osgi.framework.FrameworkUtil;

/**
 * The diagram libraries are far older than the platform they run on. Each class, method and field they refer to must be
 * found by their own class loaders, wired as they are at run time, the compatibility fragments included.
 */
class GefLinkTest {

    private static final int LEAST_CLASSES = 150;
    private static final int LEAST_REFERENCES = 2000;

    static Stream<Bundle> libraries() {
        return Stream.of(FrameworkUtil.getBundle(Request.class), FrameworkUtil.getBundle(Point.class));
    }

    @ParameterizedTest
    @MethodSource("libraries")
    void everyReferenceResolves(Bundle library) throws IOException {
        LinkCheck check = new LinkCheck(library);
        List<ClassFile> classes = check.classes();
        assertTrue(classes.size() >= LEAST_CLASSES, "classes in " + library + ": " + classes.size());
        Set<ClassFile.Reference> references = classes.stream().flatMap(type -> type.references().stream()).collect(Collectors.toSet());
        assertTrue(references.size() >= LEAST_REFERENCES, "references in " + library + ": " + references.size());
        assertEquals(Set.of(), check.unresolved(classes));
    }

    @Test
    void whatIsMissingWouldBeFound() throws IOException {
        LinkCheck check = new LinkCheck(FrameworkUtil.getBundle(Request.class));
        String owner = "org/eclipse/draw2d/geometry/Point";
        assertTrue(check.resolves("org/eclipse/gef/Request", new ClassFile.Reference(owner, "translate", "(II)L" + owner + ";", false)));
        assertEquals(false, check.resolves("org/eclipse/gef/Request", new ClassFile.Reference(owner, "translate", "(J)V", false)));
        assertEquals(false, check.resolves("org/eclipse/gef/Request", new ClassFile.Reference(owner, "z", "I", true)));
        assertEquals(false, check.knows("org/eclipse/draw2d/geometry/NoSuchShape"));
    }

    @Test
    void theCompatibilityFragmentsAreNeeded() throws IOException {
        Set<String> used = new TreeSet<>();
        for (Bundle library : libraries().toList()) {
            new LinkCheck(library).classes().forEach(type -> type.references().forEach(reference -> used.add(reference.owner())));
        }
        List<String> supplied = SourceTree.bundles().stream()
                .filter(bundle -> bundle.group().equals("compat"))
                .flatMap(bundle -> SourceTree.files(bundle.sources(), ".java").stream().map(file -> bundle.sources().relativize(file)))
                .map(file -> file.toString().replaceFirst("\\.java$", ""))
                .toList();
        assertEquals(List.of(), supplied.stream().filter(name -> !used.contains(name)).toList());
        assertFalse(supplied.isEmpty(), "there are fragments with classes");
    }
}
