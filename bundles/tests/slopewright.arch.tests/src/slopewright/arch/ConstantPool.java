package slopewright.arch;

import java.io.DataInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** The constants of a class file (Java Virtual Machine Specification, section 4.4). */
final class ConstantPool {

    private static final int UTF8 = 1;
    private static final int INTEGER = 3;
    private static final int FLOAT = 4;
    private static final int LONG = 5;
    private static final int DOUBLE = 6;
    private static final int CLASS = 7;
    private static final int STRING = 8;
    private static final int FIELD = 9;
    private static final int METHOD = 10;
    private static final int INTERFACE_METHOD = 11;
    private static final int NAME_AND_TYPE = 12;
    private static final int METHOD_HANDLE = 15;
    private static final int METHOD_TYPE = 16;
    private static final int DYNAMIC = 17;
    private static final int INVOKE_DYNAMIC = 18;
    private static final int MODULE = 19;
    private static final int PACKAGE = 20;

    private final int[] tags;
    private final int[] first;
    private final int[] second;
    private final String[] texts;

    private ConstantPool(int size) {
        tags = new int[size];
        first = new int[size];
        second = new int[size];
        texts = new String[size];
    }

    static ConstantPool read(DataInputStream in) throws IOException {
        ConstantPool pool = new ConstantPool(in.readUnsignedShort());
        int index = 1;
        while (index < pool.tags.length) {
            index += pool.readEntry(index, in);
        }
        return pool;
    }

    private int readEntry(int index, DataInputStream in) throws IOException {
        int tag = in.readUnsignedByte();
        tags[index] = tag;
        switch (tag) {
            case UTF8 -> texts[index] = in.readUTF();
            case INTEGER, FLOAT -> in.readInt();
            case LONG, DOUBLE -> in.readLong();
            case CLASS, STRING, METHOD_TYPE, MODULE, PACKAGE -> first[index] = in.readUnsignedShort();
            case FIELD, METHOD, INTERFACE_METHOD, NAME_AND_TYPE, DYNAMIC, INVOKE_DYNAMIC -> {
                first[index] = in.readUnsignedShort();
                second[index] = in.readUnsignedShort();
            }
            case METHOD_HANDLE -> {
                first[index] = in.readUnsignedByte();
                second[index] = in.readUnsignedShort();
            }
            default -> throw new IOException("unknown constant " + tag);
        }
        return tag == LONG || tag == DOUBLE ? 2 : 1;
    }

    String text(int index) {
        return texts[index];
    }

    String className(int index) {
        return texts[first[index]];
    }

    /** The classes named by constants; of an array its elements. */
    Set<String> classes() {
        Set<String> classes = new TreeSet<>();
        for (int index : indexes(CLASS)) {
            String name = className(index);
            if (name.startsWith("[")) {
                classes.addAll(typesOf(name));
            } else {
                classes.add(name);
            }
        }
        return classes;
    }

    /** The descriptors of used members and of method types. */
    Set<String> descriptors() {
        Set<String> descriptors = new TreeSet<>();
        indexes(NAME_AND_TYPE).forEach(index -> descriptors.add(texts[second[index]]));
        indexes(METHOD_TYPE).forEach(index -> descriptors.add(texts[first[index]]));
        return descriptors;
    }

    Set<ClassFile.Reference> references() {
        Set<ClassFile.Reference> references = new HashSet<>();
        for (int tag : List.of(FIELD, METHOD, INTERFACE_METHOD)) {
            for (int index : indexes(tag)) {
                int member = second[index];
                references.add(new ClassFile.Reference(className(first[index]), texts[first[member]], texts[second[member]], tag == FIELD));
            }
        }
        return references;
    }

    Set<String> texts() {
        Set<String> result = new TreeSet<>();
        indexes(STRING).forEach(index -> result.add(texts[first[index]]));
        return result;
    }

    private List<Integer> indexes(int tag) {
        List<Integer> indexes = new ArrayList<>();
        for (int index = 1; index < tags.length; index++) {
            if (tags[index] == tag) {
                indexes.add(index);
            }
        }
        return indexes;
    }

    /** The classes in a field or method descriptor. */
    static Set<String> typesOf(String descriptor) {
        Set<String> types = new TreeSet<>();
        int start = descriptor.indexOf('L');
        while (start >= 0) {
            int end = descriptor.indexOf(';', start);
            types.add(descriptor.substring(start + 1, end));
            start = descriptor.indexOf('L', end);
        }
        return types;
    }
}
