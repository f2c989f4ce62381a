package slopewright.codegen;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.emf.codegen.ecore.generator.Generator;
import org.eclipse.emf.codegen.ecore.generator.GeneratorAdapterFactory;
import org.eclipse.emf.codegen.ecore.genmodel.GenModel;
import org.eclipse.emf.codegen.ecore.genmodel.GenModelPackage;
import org.eclipse.emf.codegen.ecore.genmodel.generator.GenBaseGeneratorAdapter;
import org.eclipse.emf.codegen.ecore.genmodel.generator.GenModelGeneratorAdapterFactory;
import org.eclipse.emf.common.util.BasicMonitor;
import org.eclipse.emf.common.util.Diagnostic;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.plugin.EcorePlugin;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.emf.ecore.resource.impl.ResourceSetImpl;
import org.eclipse.emf.ecore.xmi.impl.EcoreResourceFactoryImpl;

/**
 * Generates the code of the model: {@code GenerateModel BUNDLE OUTPUT}. Reads the bundle's {@code model} folder and replaces what is
 * in the output folder. Trailing blanks are taken off, so that the result can be compared byte by byte.
 */
public final class GenerateModel {

    private GenerateModel() {
    }

    /** Runs the generation. */
    public static void main(String[] args) throws IOException {
        if (args.length != 2) {
            throw new IllegalArgumentException("expected the folder of the model bundle and the output folder");
        }
        Path bundle = Path.of(args[0]).toAbsolutePath();
        Path output = Path.of(args[1]).toAbsolutePath();
        Path project = Files.createTempDirectory("slopewright-codegen");
        try {
            generate(bundle.resolve("model"), project);
            tidy(project.resolve("src-gen"));
            delete(output);
            copy(project.resolve("src-gen"), output);
        } finally {
            delete(project);
        }
    }

    private static void generate(Path model, Path project) throws IOException {
        copy(model, project.resolve("model"));
        EcorePlugin.getPlatformResourceMap().put("slopewright.model", URI.createFileURI(project + "/"));
        ResourceSet resources = new ResourceSetImpl();
        resources.getResourceFactoryRegistry().getExtensionToFactoryMap().put("ecore", new EcoreResourceFactoryImpl());
        resources.getResourceFactoryRegistry().getExtensionToFactoryMap().put("genmodel", new EcoreResourceFactoryImpl());
        GenModelPackage.eINSTANCE.eClass();
        GenModel genModel = (GenModel) resources
                .getResource(URI.createPlatformResourceURI("slopewright.model/model/slopewright.genmodel", true), true).getContents()
                        .get(0);
        genModel.reconcile();
        genModel.setCanGenerate(true);
        Diagnostic problems = genModel.diagnose();
        if (problems.getSeverity() >= Diagnostic.ERROR) {
            throw new IllegalStateException(problems.toString());
        }
        GeneratorAdapterFactory.Descriptor.Registry.INSTANCE.addDescriptor(GenModelPackage.eNS_URI,
                GenModelGeneratorAdapterFactory.DESCRIPTOR);
        Generator generator = new Generator();
        generator.setInput(genModel);
        Diagnostic done = generator.generate(genModel, GenBaseGeneratorAdapter.MODEL_PROJECT_TYPE, new BasicMonitor());
        if (done.getSeverity() != Diagnostic.OK) {
            throw new IllegalStateException(done.toString() + done.getChildren());
        }
    }

    private static void tidy(Path folder) throws IOException {
        for (Path file : list(folder)) {
            if (file.toString().endsWith(".java")) {
                List<String> lines = Files.readAllLines(file).stream().map(String::stripTrailing).toList();
                Files.writeString(file, String.join("\n", lines) + "\n");
            }
        }
    }

    private static List<Path> list(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile).sorted().toList();
        }
    }

    private static void copy(Path from, Path to) throws IOException {
        for (Path file : list(from)) {
            Path target = to.resolve(from.relativize(file).toString());
            Files.createDirectories(target.getParent());
            Files.copy(file, target);
        }
    }

    private static void delete(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (Stream<Path> files = Files.walk(folder)) {
                for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(file);
                }
            }
        }
    }
}
