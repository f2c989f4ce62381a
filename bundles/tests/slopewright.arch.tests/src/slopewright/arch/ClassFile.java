package slopewright.arch;

import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * What a compiled class says of itself and of others, as far as the rules of this project need it.
 *
 * @param name the class, parts of the name separated by slashes
 * @param fields its own fields
 * @param methods its own methods and constructors
 * @param types the classes it refers to, in its code and in the signatures of its members
 * @param references the members it uses
 * @param texts the texts among its constants
 */
record ClassFile(String name, List<Member> fields, List<Member> methods, Set<String> types, Set<Reference> references,
        Set<String> texts) {

    private static final int MAGIC = 0xCAFEBABE;
    private static final int PRIVATE = 0x0002;
    private static final int STATIC = 0x0008;
    private static final int FINAL = 0x0010;
    private static final int SYNTHETIC = 0x1000;

    /**
     * A field or method that a class declares.
     *
     * @param flags the access flags of the class file format
     * @param name the simple name
     * @param descriptor its types, in the form of the class file format
     */
    record Member(int flags, String name, String descriptor) {

        boolean isPrivate() {
            return (flags & PRIVATE) != 0;
        }

        boolean isStatic() {
            return (flags & STATIC) != 0;
        }

        boolean isFinal() {
            return (flags & FINAL) != 0;
        }

        boolean isSynthetic() {
            return (flags & SYNTHETIC) != 0;
        }

        boolean isArray() {
            return descriptor.startsWith("[");
        }
    }

    /**
     * A field or method that a class uses.
     *
     * @param owner the class it is looked for in, parts of the name separated by slashes
     * @param name the simple name
     * @param descriptor its types, in the form of the class file format
     * @param field true for a field, false for a method or constructor
     */
    record Reference(String owner, String name, String descriptor, boolean field) {

        @Override
        public String toString() {
            return owner + "." + name + (field ? ": " : "") + descriptor;
        }
    }

    static ClassFile read(Path file) {
        try {
            return parse(Files.readAllBytes(file));
        } catch (IOException e) {
            throw new UncheckedIOException(file.toString(), e);
        }
    }

    static ClassFile read(InputStream in) throws IOException {
        return parse(in.readAllBytes());
    }

    static ClassFile parse(byte[] bytes) throws IOException {
        try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes))) {
            if (in.readInt() != MAGIC) {
                throw new IOException("no class file");
            }
            in.readInt();
            ConstantPool pool = ConstantPool.read(in);
            in.readUnsignedShort();
            String name = pool.className(in.readUnsignedShort());
            in.readUnsignedShort();
            in.skipBytes(2 * in.readUnsignedShort());
            List<Member> fields = members(in, pool);
            List<Member> methods = members(in, pool);
            Set<String> types = new TreeSet<>(pool.classes());
            pool.descriptors().forEach(descriptor -> types.addAll(ConstantPool.typesOf(descriptor)));
            fields.forEach(member -> types.addAll(ConstantPool.typesOf(member.descriptor())));
            methods.forEach(member -> types.addAll(ConstantPool.typesOf(member.descriptor())));
            return new ClassFile(name, fields, methods, types, pool.references(), pool.texts());
        }
    }

    private static List<Member> members(DataInputStream in, ConstantPool pool) throws IOException {
        List<Member> members = new ArrayList<>();
        int count = in.readUnsignedShort();
        for (int i = 0; i < count; i++) {
            members.add(new Member(in.readUnsignedShort(), pool.text(in.readUnsignedShort()), pool.text(in.readUnsignedShort())));
            int attributes = in.readUnsignedShort();
            for (int j = 0; j < attributes; j++) {
                in.readUnsignedShort();
                in.skipNBytes(Integer.toUnsignedLong(in.readInt()));
            }
        }
        return List.copyOf(members);
    }
}
