package slopewright.arch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The compiled classes of what runs without a display neither know of one nor keep state between calls. */
class CoreClassesTest {

    private static final List<String> WINDOW_PACKAGES = List.of("org/eclipse/swt/", "org/eclipse/jface/", "org/eclipse/ui/",
            "org/eclipse/e4/ui/", "org/eclipse/gef/", "org/eclipse/draw2d/");

    static Stream<BundleFolder> bundles() {
        return SourceTree.bundlesWithoutDisplay().stream();
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void noClassRefersToTheWindow(BundleFolder bundle) {
        assertEquals(List.of(), bundle.classes().stream().flatMap(type -> windowTypes(type).stream()).toList());
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void noHandWrittenClassHasAStaticFieldThatChanges(BundleFolder bundle) {
        List<String> fields = bundle.classes().stream()
                .filter(type -> !bundle.isGenerated(type))
                .flatMap(type -> changingStatics(type).stream())
                .toList();
        assertEquals(List.of(), fields);
    }

    @Test
    void aWindowClassWouldBeFound() throws Exception {
        ClassFile window = classFile(org.eclipse.draw2d.Label.class);
        assertFalse(windowTypes(window).isEmpty());
    }

    @Test
    void aChangingStaticFieldWouldBeFound() throws Exception {
        Changing.count++;
        assertEquals(List.of("slopewright/arch/CoreClassesTest$Changing.count", "slopewright/arch/CoreClassesTest$Changing.SHARED"),
                changingStatics(classFile(Changing.class)));
    }

    private static ClassFile classFile(Class<?> type) throws java.io.IOException {
        try (var in = type.getResourceAsStream("/" + type.getName().replace('.', '/') + ".class")) {
            return ClassFile.read(in);
        }
    }

    private static List<String> windowTypes(ClassFile type) {
        return type.types().stream()
                .filter(used -> WINDOW_PACKAGES.stream().anyMatch(used::startsWith))
                .map(used -> type.name() + " refers to " + used)
                .toList();
    }

    /** Static fields that are not final, and arrays that others can reach and so change. */
    private static List<String> changingStatics(ClassFile type) {
        List<String> found = new ArrayList<>();
        for (ClassFile.Member field : type.fields()) {
            boolean changes = !field.isFinal() || field.isArray() && !field.isPrivate();
            if (field.isStatic() && !field.isSynthetic() && changes) {
                found.add(type.name() + "." + field.name());
            }
        }
        return found;
    }

    /** What the test above must find. */
    static final class Changing {
        static int count;
        static final int[] SHARED = {1};
        static final int KEPT = 1;
        private static final int[] OWN = {KEPT};

        int first() {
            return OWN[0];
        }
    }
}
