package slopewright.product;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Handle;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/**
 * Links the lambdas and method references of jars while they are built: each becomes a class of the jar, which calls what it stands for.
 * A virtual machine makes such a class itself, and an archive of classes keeps it; but to find it again it asks its linker for each one at
 * every start, which takes a tenth of a check, where a class of the jar is there. Run by the build of the product; the word is the
 * path of the jars, which are written anew. The same jar gives the same bytes.
 */
public final class Linked {

    private static final LocalDateTime DAY = LocalDateTime.of(2026, 1, 1, 12, 0);
    private static final String CLASS = ".class";
    private static final String LINKER = "java/lang/invoke/LambdaMetafactory";
    private static final String PLAIN = "metafactory";

    /** The classes of a jar by their files, those made for lambdas last. */
    private final Map<String, byte[]> made = new LinkedHashMap<>();
    /** What was made for the classes of each outermost class, which share what is private. */
    private final Map<String, List<String>> nests = new LinkedHashMap<>();

    private Linked() {
    }

    /**
     * Links.
     *
     * @param words the jars, as a path
     * @throws IOException where one cannot be read or written
     */
    public static void main(String[] words) throws IOException {
        for (String jar : words[0].split(File.pathSeparator)) {
            new Linked().link(Path.of(jar));
        }
    }

    private void link(Path jar) throws IOException {
        Map<String, byte[]> entries = new LinkedHashMap<>();
        try (ZipInputStream in = new ZipInputStream(Files.newInputStream(jar))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                entries.put(entry.getName(), in.readAllBytes());
            }
        }
        entries.replaceAll((name, content) -> name.endsWith(CLASS) ? linked(content) : content);
        nests.forEach((host, members) -> entries.computeIfPresent(host + CLASS, (name, content) -> joined(content, members)));
        entries.putAll(made);
        try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(jar))) {
            for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
                ZipEntry copy = new ZipEntry(entry.getKey());
                copy.setTimeLocal(DAY);
                out.putNextEntry(copy);
                out.write(entry.getValue());
            }
        }
    }

    /** Returns a class that calls the classes made for its lambdas. */
    private byte[] linked(byte[] content) {
        ClassWriter writer = new ClassWriter(0);
        new ClassReader(content).accept(new ClassVisitor(Opcodes.ASM9, writer) {
            private String own;
            private String host;
            private int count;

            @Override
            public void visit(int version, int access, String name, String signature, String superName, String[] interfaces) {
                own = name;
                host = name;
                super.visit(version, access, name, signature, superName, interfaces);
            }

            @Override
            public void visitNestHost(String name) {
                host = name;
                super.visitNestHost(name);
            }

            @Override
            public MethodVisitor visitMethod(int access, String name, String descriptor, String signature, String[] exceptions) {
                return new MethodVisitor(Opcodes.ASM9, super.visitMethod(access, name, descriptor, signature, exceptions)) {
                    @Override
                    public void visitInvokeDynamicInsn(String method, String caught, Handle linker, Object... with) {
                        if (!LINKER.equals(linker.getOwner()) || !PLAIN.equals(linker.getName())) {
                            super.visitInvokeDynamicInsn(method, caught, linker, with);
                            return;
                        }
                        LambdaClass lambda = new LambdaClass(own + "$L" + count, method, caught, (Type) with[0], (Handle) with[1],
                                (Type) with[2]);
                        if (lambda.callsInherited(own)) {
                            super.visitInvokeDynamicInsn(method, caught, linker, with);
                            return;
                        }
                        count++;
                        made.put(lambda.name() + CLASS, lambda.content(host));
                        nests.computeIfAbsent(host, key -> new ArrayList<>()).add(lambda.name());
                        super.visitMethodInsn(Opcodes.INVOKESTATIC, lambda.name(), LambdaClass.MAKE, caught, false);
                    }
                };
            }
        }, 0);
        return writer.toByteArray();
    }

    /** Returns an outermost class that lets the classes made for lambdas see what is private in it. */
    private static byte[] joined(byte[] content, List<String> members) {
        ClassWriter writer = new ClassWriter(0);
        new ClassReader(content).accept(new ClassVisitor(Opcodes.ASM9, writer) {
            @Override
            public void visitEnd() {
                members.forEach(this::visitNestMember);
                super.visitEnd();
            }
        }, 0);
        return writer.toByteArray();
    }
}
