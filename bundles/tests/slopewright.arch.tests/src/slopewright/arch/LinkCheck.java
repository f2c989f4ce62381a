package slopewright.arch;

import java.io.IOException;
import java.io.InputStream;
import java.lang.reflect.Modifier;
import java.net.URL;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.osgi.framework.Bundle;

/** Looks up what the classes of one bundle refer to, as its class loader would (Java Virtual Machine Specification, section 5.4.3). */
final class LinkCheck {

    private final Bundle bundle;
    private final Map<String, Optional<Class<?>>> types = new HashMap<>();
    private final Map<Class<?>, ClassFile> classFiles = new HashMap<>();

    LinkCheck(Bundle bundle) {
        this.bundle = bundle;
    }

    /** All classes of the bundle. */
    List<ClassFile> classes() throws IOException {
        List<ClassFile> classes = new ArrayList<>();
        for (URL url : Collections.list(bundle.findEntries("/", "*.class", true))) {
            try (InputStream in = url.openStream()) {
                classes.add(ClassFile.read(in));
            }
        }
        return classes;
    }

    /** The classes and members that are not to be found, each with the class that refers to it. */
    Set<String> unresolved(List<ClassFile> classes) throws IOException {
        Set<String> missing = new TreeSet<>();
        for (ClassFile type : classes) {
            for (String used : type.types()) {
                if (!knows(used)) {
                    missing.add(type.name() + " refers to " + used);
                }
            }
            for (ClassFile.Reference reference : type.references()) {
                if (!reference.owner().startsWith("[") && !resolves(type.name(), reference)) {
                    missing.add(type.name() + " refers to " + reference);
                }
            }
        }
        return missing;
    }

    boolean knows(String name) {
        return type(name).isPresent();
    }

    /** True where a class may link to a member: it is there, and open to that class. */
    boolean resolves(String from, ClassFile.Reference reference) throws IOException {
        Optional<Class<?>> owner = type(reference.owner());
        return owner.isPresent() && isFound(from, reference, owner.get());
    }

    private boolean isFound(String from, ClassFile.Reference reference, Class<?> type) throws IOException {
        ClassFile file = classFile(type);
        for (ClassFile.Member member : reference.field() ? file.fields() : file.methods()) {
            if (member.name().equals(reference.name()) && member.descriptor().equals(reference.descriptor())) {
                return isOpen(from, file.name(), member);
            }
        }
        for (Class<?> above : type.getInterfaces()) {
            if (isFound(from, reference, above)) {
                return true;
            }
        }
        // methods of all objects may be called on an interface
        Class<?> above = type.isInterface() && !reference.field() ? Object.class : type.getSuperclass();
        return above != null && isFound(from, reference, above);
    }

    private static boolean isOpen(String from, String owner, ClassFile.Member member) {
        int flags = member.flags();
        if (Modifier.isPublic(flags) || Modifier.isProtected(flags)) {
            return true;
        }
        return Modifier.isPrivate(flags) ? from.equals(owner) : packageOf(from).equals(packageOf(owner));
    }

    private static String packageOf(String name) {
        return name.substring(0, name.lastIndexOf('/') + 1);
    }

    private Optional<Class<?>> type(String name) {
        return types.computeIfAbsent(name, this::load);
    }

    private Optional<Class<?>> load(String name) {
        try {
            return Optional.of(bundle.loadClass(name.replace('/', '.')));
        } catch (ClassNotFoundException | LinkageError e) {
            return Optional.empty();
        }
    }

    private ClassFile classFile(Class<?> type) throws IOException {
        ClassFile known = classFiles.get(type);
        if (known == null) {
            String simpleName = type.getName().substring(type.getName().lastIndexOf('.') + 1);
            try (InputStream in = type.getResourceAsStream(simpleName + ".class")) {
                known = ClassFile.read(in);
            }
            classFiles.put(type, known);
        }
        return known;
    }
}
