package slopewright.product;

import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Collections;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Opcodes;

/**
 * Copies a jar whose classes are written for so old a Java that a virtual machine keeps none of them in its archive, with the same code in
 * the form of Java 8: what changes is the version and the frames that the verifier of today reads. Run by the build of the
 * product, the words are the jar and its copy; the same jar gives the same bytes.
 */
public final class Renewed {

    private static final LocalDateTime DAY = LocalDateTime.of(2026, 1, 1, 12, 0);

    private Renewed() {
    }

    /**
     * Copies.
     *
     * @param words the jar, and the file of its copy
     * @throws IOException where one cannot be read or written
     */
    public static void main(String[] words) throws IOException {
        Path from = Path.of(words[0]);
        try (URLClassLoader classes = new URLClassLoader(new URL[] {from.toUri().toURL()}, ClassLoader.getPlatformClassLoader());
                ZipFile in = new ZipFile(from.toFile());
                ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(Path.of(words[1])))) {
            for (ZipEntry entry : Collections.list(in.entries())) {
                byte[] content = in.getInputStream(entry).readAllBytes();
                ZipEntry copy = new ZipEntry(entry.getName());
                copy.setTimeLocal(DAY);
                out.putNextEntry(copy);
                out.write(isClass(entry.getName()) ? renewed(content, classes) : content);
            }
        }
    }

    private static boolean isClass(String name) {
        return name.endsWith(".class") && !name.startsWith("META-INF/") && !"module-info.class".equals(name);
    }

    private static byte[] renewed(byte[] content, ClassLoader classes) {
        ClassReader reader = new ClassReader(content);
        if (reader.readUnsignedShort(6) >= Opcodes.V1_8) {
            return content;
        }
        ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_FRAMES) {
            @Override
            protected ClassLoader getClassLoader() {
                return classes;
            }
        };
        reader.accept(new ClassVisitor(Opcodes.ASM9, writer) {
            @Override
            public void visit(int version, int access, String name, String signature, String superName, String[] interfaces) {
                super.visit(Opcodes.V1_8, access, name, signature, superName, interfaces);
            }
        }, ClassReader.SKIP_FRAMES);
        return writer.toByteArray();
    }
}
