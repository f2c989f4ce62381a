package slopewright.product;

import java.util.ArrayList;
import java.util.List;

import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.commons.GeneratorAdapter;
import org.objectweb.asm.commons.Method;

/**
 * The class that stands for a lambda or a method reference: it keeps what the lambda caught, and its one method calls what was meant.
 *
 * @param name    its name
 * @param method  name of the method
 * @param caught  descriptor that takes what is caught and returns the interface
 * @param erased  descriptor of the method as the interface declares it
 * @param called  what is called
 * @param precise descriptor of the method with the types of this use
 */
record LambdaClass(String name, String method, String caught, Type erased, Handle called, Type precise) {

    /** The static method that makes one, or returns the only one where nothing is caught. */
    static final String MAKE = "make";
    private static final String ONLY = "ONLY";
    private static final String CONSTRUCTOR = "<init>";
    private static final Method NOTHING = new Method(CONSTRUCTOR, "()V");

    /** Returns the class, which sees what is private in the classes of a host. */
    byte[] content(String host) {
        ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_MAXS);
        writer.visit(Opcodes.V17, Opcodes.ACC_FINAL | Opcodes.ACC_SYNTHETIC | Opcodes.ACC_SUPER, name, null, "java/lang/Object",
                new String[] {Type.getReturnType(caught).getInternalName()});
        writer.visitNestHost(host);
        Type[] kept = Type.getArgumentTypes(caught);
        Method constructor = new Method(CONSTRUCTOR, Type.VOID_TYPE, kept);
        construct(writer, constructor, kept);
        make(writer, constructor, kept);
        call(writer, kept);
        writer.visitEnd();
        return writer.toByteArray();
    }

    /**
     * Returns whether a method is called that a class may have from another package above it, which only its own code can reach: such a
     * method reference stays as it is.
     *
     * @param own the class that holds the method reference
     */
    boolean callsInherited(String own) {
        if (called.getOwner().equals(own)) {
            return false;
        }
        List<Type> taken = new ArrayList<>(List.of(Type.getArgumentTypes(caught)));
        taken.addAll(List.of(precise.getArgumentTypes()));
        return called.getTag() == Opcodes.H_INVOKESPECIAL || !taken.isEmpty() && taken.get(0).getInternalName().equals(own);
    }

    private Type self() {
        return Type.getObjectType(name);
    }

    private static String field(int place) {
        return "caught" + place;
    }

    private void construct(ClassWriter writer, Method constructor, Type[] kept) {
        GeneratorAdapter code = new GeneratorAdapter(Opcodes.ACC_PRIVATE, constructor, null, null, writer);
        code.loadThis();
        code.invokeConstructor(Type.getType(Object.class), NOTHING);
        for (int i = 0; i < kept.length; i++) {
            writer.visitField(Opcodes.ACC_PRIVATE | Opcodes.ACC_FINAL, field(i), kept[i].getDescriptor(), null, null);
            code.loadThis();
            code.loadArg(i);
            code.putField(self(), field(i), kept[i]);
        }
        end(code);
    }

    private void make(ClassWriter writer, Method constructor, Type[] kept) {
        GeneratorAdapter code = new GeneratorAdapter(Opcodes.ACC_STATIC, new Method(MAKE, caught), null, null, writer);
        if (kept.length == 0) {
            writer.visitField(Opcodes.ACC_PRIVATE | Opcodes.ACC_STATIC | Opcodes.ACC_FINAL, ONLY, self().getDescriptor(), null, null);
            GeneratorAdapter begin = new GeneratorAdapter(Opcodes.ACC_STATIC, new Method("<clinit>", "()V"), null, null, writer);
            begin.newInstance(self());
            begin.dup();
            begin.invokeConstructor(self(), constructor);
            begin.putStatic(self(), ONLY, self());
            end(begin);
            code.getStatic(self(), ONLY, self());
        } else {
            code.newInstance(self());
            code.dup();
            code.loadArgs();
            code.invokeConstructor(self(), constructor);
        }
        end(code);
    }

    private void call(ClassWriter writer, Type[] kept) {
        GeneratorAdapter code = new GeneratorAdapter(Opcodes.ACC_PUBLIC, new Method(method, erased.getDescriptor()), null, null, writer);
        Type owner = Type.getObjectType(called.getOwner());
        boolean isNew = called.getTag() == Opcodes.H_NEWINVOKESPECIAL;
        List<Type> wanted = new ArrayList<>(List.of(Type.getArgumentTypes(called.getDesc())));
        if (isNew) {
            code.newInstance(owner);
            code.dup();
        } else if (called.getTag() != Opcodes.H_INVOKESTATIC) {
            wanted.add(0, owner);
        }
        for (int i = 0; i < kept.length; i++) {
            code.loadThis();
            code.getField(self(), field(i), kept[i]);
            convert(code, kept[i], kept[i], wanted.get(i));
        }
        Type[] given = erased.getArgumentTypes();
        for (int i = 0; i < given.length; i++) {
            code.loadArg(i);
            convert(code, given[i], precise.getArgumentTypes()[i], wanted.get(kept.length + i));
        }
        code.visitMethodInsn(instruction(), called.getOwner(), called.getName(), called.getDesc(), called.isInterface());
        answer(code, isNew ? owner : Type.getReturnType(called.getDesc()));
        end(code);
    }

    /** What is private is called as everything else: the classes of a nest may. */
    private int instruction() {
        return switch (called.getTag()) {
            case Opcodes.H_INVOKESTATIC -> Opcodes.INVOKESTATIC;
            case Opcodes.H_NEWINVOKESPECIAL -> Opcodes.INVOKESPECIAL;
            default -> called.isInterface() ? Opcodes.INVOKEINTERFACE : Opcodes.INVOKEVIRTUAL;
        };
    }

    private void answer(GeneratorAdapter code, Type got) {
        Type wanted = erased.getReturnType();
        if (wanted.getSort() != Type.VOID) {
            convert(code, got, got, isPrimitive(wanted) ? wanted : precise.getReturnType());
        } else if (got.getSize() == 2) {
            code.pop2();
        } else if (got.getSize() == 1) {
            code.pop();
        }
    }

    /** Makes of a value what is wanted, as the language does where it calls: boxed, unboxed, widened, cast. */
    private static void convert(GeneratorAdapter code, Type given, Type known, Type wanted) {
        if (isPrimitive(given)) {
            if (isPrimitive(wanted)) {
                code.cast(given, wanted);
            } else {
                code.valueOf(given);
            }
        } else if (isPrimitive(wanted)) {
            Type from = isPrimitive(known) ? known : unboxed(known, wanted);
            code.unbox(from);
            code.cast(from, wanted);
        } else if (!wanted.equals(given)) {
            code.checkCast(wanted);
        }
    }

    private static boolean isPrimitive(Type type) {
        return type.getSort() <= Type.DOUBLE;
    }

    /** Returns what is in a box, what is wanted where the type of the box does not say. */
    private static Type unboxed(Type box, Type wanted) {
        return switch (box.getClassName()) {
            case "java.lang.Boolean" -> Type.BOOLEAN_TYPE;
            case "java.lang.Character" -> Type.CHAR_TYPE;
            case "java.lang.Byte" -> Type.BYTE_TYPE;
            case "java.lang.Short" -> Type.SHORT_TYPE;
            case "java.lang.Integer" -> Type.INT_TYPE;
            case "java.lang.Long" -> Type.LONG_TYPE;
            case "java.lang.Float" -> Type.FLOAT_TYPE;
            case "java.lang.Double" -> Type.DOUBLE_TYPE;
            default -> wanted;
        };
    }

    private static void end(GeneratorAdapter code) {
        code.returnValue();
        code.endMethod();
    }
}
