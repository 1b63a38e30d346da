import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
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
import org.objectweb.asm.commons.GeneratorAdapter;
import org.objectweb.asm.commons.Method;

/**
 * Writes a jar anew with a small class in place of each lambda expression and method reference. The virtual machine makes
 * such classes itself when it first meets the expression; in a short run, which meets hundreds of them once each, that is
 * a fifth of the time. Written out beforehand they lie in the archive of classes like any other.
 *
 * <p>Usage: PlainClasses FOLDER JAR... leaves each jar, so written, in the folder.
 */
final class PlainClasses {

    private static final Type OBJECT = Type.getType(Object.class);
    private static final Type CHARACTER = Type.getType(Character.class);
    private static final String FACTORY = "java/lang/invoke/LambdaMetafactory";

    /** Classes made, by name; and by the class whose nest they live in, since they call its private methods. */
    private final Map<String, byte[]> made = new LinkedHashMap<>();

    private final Map<String, List<String>> nests = new LinkedHashMap<>();

    public static void main(String[] args) throws IOException {
        for (String jar : List.of(args).subList(1, args.length)) {
            rewrite(Path.of(jar), Path.of(args[0]).resolve(Path.of(jar).getFileName()));
        }
    }

    private static void rewrite(Path from, Path to) throws IOException {
        Map<String, byte[]> files = read(from);
        PlainClasses plain = new PlainClasses();
        files.replaceAll((name, bytes) -> isClass(name) ? plain.withoutLambdas(bytes) : bytes);
        files.replaceAll((name, bytes) -> isClass(name) ? plain.withNest(bytes) : bytes);
        plain.made.forEach((name, bytes) -> files.put(name + ".class", bytes));
        write(files, to);
    }

    private static boolean isClass(String name) {
        return name.endsWith(".class");
    }

    private static Map<String, byte[]> read(Path jar) throws IOException {
        Map<String, byte[]> files = new LinkedHashMap<>();
        try (InputStream in = Files.newInputStream(jar);
                ZipInputStream zip = new ZipInputStream(in)) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                files.put(entry.getName(), zip.readAllBytes());
            }
        }
        return files;
    }

    private static void write(Map<String, byte[]> files, Path jar) throws IOException {
        try (OutputStream out = Files.newOutputStream(jar);
                ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                zip.putNextEntry(new ZipEntry(file.getKey()));
                zip.write(file.getValue());
            }
        }
    }

    private byte[] withoutLambdas(byte[] bytes) {
        ClassReader reader = new ClassReader(bytes);
        ClassWriter writer = new ClassWriter(reader, 0);
        reader.accept(new LambdaReplacer(writer), 0);
        return writer.toByteArray();
    }

    /** The same class, owning up to the classes that were made to live in its nest. */
    private byte[] withNest(byte[] bytes) {
        ClassReader reader = new ClassReader(bytes);
        List<String> members = nests.get(reader.getClassName());
        if (members == null) {
            return bytes;
        }
        ClassWriter writer = new ClassWriter(reader, 0);
        reader.accept(
                new ClassVisitor(Opcodes.ASM9, writer) {
                    @Override
                    public void visitEnd() {
                        members.forEach(this::visitNestMember);
                        super.visitEnd();
                    }
                },
                0);
        return writer.toByteArray();
    }

    private final class LambdaReplacer extends ClassVisitor {

        private String host = "";
        private String nest = "";
        private int version;
        private int count;

        LambdaReplacer(ClassVisitor next) {
            super(Opcodes.ASM9, next);
        }

        @Override
        public void visit(int version, int access, String name, String sign, String above, String[] faces) {
            this.version = version;
            this.host = name;
            this.nest = name;
            super.visit(version, access, name, sign, above, faces);
        }

        @Override
        public void visitNestHost(String host) {
            this.nest = host;
            super.visitNestHost(host);
        }

        @Override
        public MethodVisitor visitMethod(int access, String name, String desc, String sign, String[] thrown) {
            return new MethodVisitor(Opcodes.ASM9, super.visitMethod(access, name, desc, sign, thrown)) {
                @Override
                public void visitInvokeDynamicInsn(String name, String desc, Handle maker, Object... args) {
                    if (maker.getOwner().equals(FACTORY) && maker.getName().equals("metafactory")) {
                        visitMethodInsn(Opcodes.INVOKESTATIC, make(name, desc, args), "of", desc, false);
                    } else {
                        super.visitInvokeDynamicInsn(name, desc, maker, args);
                    }
                }
            };
        }

        private String make(String name, String desc, Object... args) {
            String own = host + "$$" + count++;
            Lambda lambda = new Lambda(
                    own, new Method(name, ((Type) args[0]).getDescriptor()), desc, (Handle) args[1], (Type) args[2]);
            made.put(own, lambda.write(version, nest));
            nests.computeIfAbsent(nest, k -> new ArrayList<>()).add(own);
            return own;
        }
    }

    /**
     * One lambda expression.
     *
     * @param own the name of its class
     * @param method of the interface, its types erased
     * @param desc what it captures, and the interface
     * @param body the method that does the work
     * @param real the types of the interface's method here
     */
    private record Lambda(String own, Method method, String desc, Handle body, Type real) {

        byte[] write(int version, String nest) {
            ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_MAXS);
            String face = Type.getReturnType(desc).getInternalName();
            int access = Opcodes.ACC_FINAL | Opcodes.ACC_SUPER | Opcodes.ACC_SYNTHETIC;
            writer.visit(version, access, own, null, OBJECT.getInternalName(), new String[] {face});
            writer.visitNestHost(nest);
            for (int i = 0; i < captured().length; i++) {
                writer.visitField(Opcodes.ACC_PRIVATE, "c" + i, captured()[i].getDescriptor(), null, null);
            }
            constructor(writer);
            maker(writer);
            work(writer);
            writer.visitEnd();
            return writer.toByteArray();
        }

        private Type type() {
            return Type.getObjectType(own);
        }

        private Type[] captured() {
            return Type.getArgumentTypes(desc);
        }

        private Method init() {
            return new Method("<init>", Type.VOID_TYPE, captured());
        }

        private void constructor(ClassWriter writer) {
            GeneratorAdapter code = new GeneratorAdapter(Opcodes.ACC_PRIVATE, init(), null, null, writer);
            code.loadThis();
            code.invokeConstructor(OBJECT, new Method("<init>", "()V"));
            for (int i = 0; i < captured().length; i++) {
                code.loadThis();
                code.loadArg(i);
                code.putField(type(), "c" + i, captured()[i]);
            }
            code.returnValue();
            code.endMethod();
        }

        /** Takes from the stack what the expression captures, as the instruction did that it stands for. */
        private void maker(ClassWriter writer) {
            GeneratorAdapter code =
                    new GeneratorAdapter(Opcodes.ACC_STATIC, new Method("of", desc), null, null, writer);
            code.newInstance(type());
            code.dup();
            code.loadArgs();
            code.invokeConstructor(type(), init());
            code.returnValue();
            code.endMethod();
        }

        private void work(ClassWriter writer) {
            GeneratorAdapter code = new GeneratorAdapter(Opcodes.ACC_PUBLIC, method, null, null, writer);
            Type owner = Type.getObjectType(body.getOwner());
            boolean makes = body.getTag() == Opcodes.H_NEWINVOKESPECIAL;
            if (makes) {
                code.newInstance(owner);
                code.dup();
            }
            arguments(code, makes || body.getTag() == Opcodes.H_INVOKESTATIC ? Stream.empty() : Stream.of(owner));
            code.visitMethodInsn(call(), body.getOwner(), body.getName(), body.getDesc(), body.isInterface());
            result(code, makes ? owner : Type.getReturnType(body.getDesc()));
            code.returnValue();
            code.endMethod();
        }

        private void arguments(GeneratorAdapter code, Stream<Type> receiver) {
            Type[] wanted = Stream.concat(receiver, Stream.of(Type.getArgumentTypes(body.getDesc())))
                    .toArray(Type[]::new);
            int n = captured().length;
            for (int i = 0; i < n; i++) {
                code.loadThis();
                code.getField(type(), "c" + i, captured()[i]);
            }
            for (int i = n; i < wanted.length; i++) {
                code.loadArg(i - n);
                Type given = real.getArgumentTypes()[i - n];
                turn(code, method.getArgumentTypes()[i - n], given);
                turn(code, given, wanted[i]);
            }
        }

        /** A private method of one's own nest is called like any other. */
        private int call() {
            return switch (body.getTag()) {
                case Opcodes.H_INVOKESTATIC -> Opcodes.INVOKESTATIC;
                case Opcodes.H_NEWINVOKESPECIAL -> Opcodes.INVOKESPECIAL;
                default -> body.isInterface() ? Opcodes.INVOKEINTERFACE : Opcodes.INVOKEVIRTUAL;
            };
        }

        private void result(GeneratorAdapter code, Type got) {
            Type wanted = method.getReturnType();
            if (wanted != Type.VOID_TYPE) {
                turn(code, got, isPrimitive(wanted) ? wanted : real.getReturnType());
            } else if (got.getSize() == 2) {
                code.pop2();
            } else if (got != Type.VOID_TYPE) {
                code.pop();
            }
        }

        private static boolean isPrimitive(Type type) {
            return type.getSort() < Type.ARRAY;
        }

        /** Boxes, unboxes, widens or casts what lies on the stack. */
        private static void turn(GeneratorAdapter code, Type from, Type to) {
            if (from.equals(to)) {
                return;
            }
            if (isPrimitive(from) && isPrimitive(to)) {
                code.cast(from, to);
            } else if (isPrimitive(from)) {
                code.valueOf(from);
            } else if (isPrimitive(to)) {
                Type boxed = from.equals(CHARACTER) ? Type.CHAR_TYPE : to;
                code.unbox(boxed);
                code.cast(boxed, to);
            } else {
                code.checkCast(to);
            }
        }
    }
}
