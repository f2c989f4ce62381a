package slopewright.model.io;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.HashMap;
import java.util.Map;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.common.util.WrappedException;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.xmi.ClassNotFoundException;
import org.eclipse.emf.ecore.xmi.FeatureNotFoundException;
import org.eclipse.emf.ecore.xmi.IllegalValueException;
import org.eclipse.emf.ecore.xmi.PackageNotFoundException;
import org.eclipse.emf.ecore.xmi.UnresolvedReferenceException;
import org.eclipse.emf.ecore.xmi.XMIException;
import org.xml.sax.SAXParseException;

import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.SlopewrightPackage;
import slopewright.model.internal.ProjectResource;
import slopewright.model.util.Ids;

/** Loads and saves project files: one project a file, XMI, UTF-8, the same bytes for the same project. */
public final class ProjectFile {

    /** Extension of project files, without the dot. */
    public static final String EXTENSION = "slopewright";

    /** Suffix of the file that holds what a save replaced. */
    public static final String PREVIOUS_SUFFIX = ".previous";

    private static final int MOST_BYTES = 256 << 20;

    private ProjectFile() {
    }

    /**
     * Loads a project.
     *
     * @param file the file
     * @return the project
     * @throws ProjectFileException where it can not be read; the message names file, line and reason
     */
    public static Project load(Path file) throws ProjectFileException {
        String name = file.toString();
        try (InputStream in = Files.newInputStream(file)) {
            return load(in, name);
        } catch (NoSuchFileException e) {
            throw new ProjectFileException(name, 0, "there is no such file", e);
        } catch (IOException e) {
            throw new ProjectFileException(name, 0, "can not be read: " + e.getMessage(), e);
        }
    }

    /**
     * Loads a project.
     *
     * @param in   the bytes; not closed
     * @param name name of the file, for messages
     * @return the project
     * @throws ProjectFileException where it can not be read; the message names file, line and reason
     */
    public static Project load(InputStream in, String name) throws ProjectFileException {
        byte[] bytes;
        try {
            bytes = in.readNBytes(MOST_BYTES + 1);
        } catch (IOException e) {
            throw new ProjectFileException(name, 0, "can not be read: " + e.getMessage(), e);
        }
        if (bytes.length > MOST_BYTES) {
            throw new ProjectFileException(name, 0, "is larger than " + (MOST_BYTES >> 20) + " MB; keep bulk survey data in a block beside it", null);
        }
        if (bytes.length == 0) {
            throw new ProjectFileException(name, 0, "is empty", null);
        }
        SlopewrightPackage.eINSTANCE.eClass();
        ProjectResource resource = new ProjectResource(URI.createURI("project"));
        try {
            resource.load(new ByteArrayInputStream(bytes), Map.of());
        } catch (IOException | WrappedException e) {
            throw fault(name, e);
        }
        if (!resource.getErrors().isEmpty()) {
            Resource.Diagnostic first = resource.getErrors().get(0);
            throw first instanceof Exception e ? fault(name, e) : new ProjectFileException(name, first.getLine(), first.getMessage(), null);
        }
        if (resource.getContents().size() != 1 || !(resource.getContents().get(0) instanceof Project project)) {
            throw new ProjectFileException(name, 0, "does not hold exactly one project", null);
        }
        checkIds(project, name, bytes);
        return project;
    }

    private static void checkIds(Project project, String name, byte[] bytes) throws ProjectFileException {
        Map<String, Identified> seen = new HashMap<>();
        for (Identified element : Ids.elements(project)) {
            if (element.getId() != null && seen.put(element.getId(), element) != null) {
                throw new ProjectFileException(name, lineOf(bytes, "xmi:id=\"" + element.getId() + "\"", 2),
                        "the id " + element.getId() + " is there twice", null);
            }
        }
        Map<EObject, ?> dangling = EcoreUtil.UnresolvedProxyCrossReferencer.find(project);
        if (!dangling.isEmpty()) {
            String fragment = EcoreUtil.getURI(dangling.keySet().iterator().next()).fragment();
            throw new ProjectFileException(name, lineOf(bytes, fragment, 1), "refers to an element " + fragment + " that is not there", null);
        }
        Ids.assign(project);
    }

    private static int lineOf(byte[] bytes, String text, int occurrence) {
        String all = new String(bytes, StandardCharsets.UTF_8);
        int at = -1;
        for (int i = 0; i < occurrence; i++) {
            at = all.indexOf(text, at + 1);
            if (at < 0) {
                return 0;
            }
        }
        return 1 + (int) all.substring(0, at).chars().filter(c -> c == '\n').count();
    }

    private static ProjectFileException fault(String name, Throwable thrown) {
        Throwable cause = thrown;
        while ((cause instanceof Resource.IOWrappedException || cause instanceof WrappedException) && cause.getCause() != null) {
            cause = cause.getCause();
        }
        if (cause instanceof SAXParseException e) {
            String reason = e.getMessage().contains("DOCTYPE") ? "holds a document type declaration, which is not allowed" : "is no well-formed XML: "
                    + firstLine(e.getMessage());
            return new ProjectFileException(name, e.getLineNumber(), reason, cause);
        }
        if (cause instanceof XMIException e) {
            return new ProjectFileException(name, e.getLine(), reason(e), cause);
        }
        return new ProjectFileException(name, 0, firstLine(String.valueOf(cause.getMessage())), cause);
    }

    private static String reason(XMIException e) {
        if (e instanceof FeatureNotFoundException feature) {
            return "'" + feature.getName() + "' is not known here";
        }
        if (e instanceof ClassNotFoundException type) {
            return "an element of type '" + type.getName() + "' is not known";
        }
        if (e instanceof PackageNotFoundException other) {
            return "is of the format '" + other.uri() + "'; this version reads " + SlopewrightPackage.eNS_URI;
        }
        if (e instanceof IllegalValueException value) {
            EStructuralFeature feature = value.getFeature();
            return "'" + value.getValue() + "' is no value for " + (feature == null ? "this" : feature.getName());
        }
        if (e instanceof UnresolvedReferenceException reference) {
            return "refers to an element " + reference.getReference() + " that is not there";
        }
        return firstLine(e.getMessage());
    }

    private static String firstLine(String text) {
        return text.lines().findFirst().orElse("");
    }

    /**
     * Returns the bytes of a project as a file holds them. Elements without an id get one.
     *
     * @param project the project
     * @return UTF-8
     */
    public static byte[] bytes(Project project) {
        Ids.assign(project);
        Resource resource = project.eResource();
        if (!(resource instanceof ProjectResource)) {
            resource = new ProjectResource(URI.createURI("project"));
            resource.getContents().add(project);
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            resource.save(out, Map.of());
        } catch (IOException e) {
            throw new IllegalStateException("the project can not be written: " + e.getMessage(), e);
        }
        return out.toByteArray();
    }

    /**
     * Saves a project. The new content is written beside the file and then put in its place in one step; what was there is kept under
     * the name of the file with {@value #PREVIOUS_SUFFIX}.
     *
     * @param project the project
     * @param file    the file; where it exists it must be a project that can be read
     * @throws ProjectFileException where it can not be written; then nothing has changed
     */
    public static void save(Project project, Path file) throws ProjectFileException {
        Path target = file.toAbsolutePath();
        String name = file.toString();
        if (Files.exists(target)) {
            try {
                load(target);
            } catch (ProjectFileException e) {
                throw new ProjectFileException(name, 0, "is there already and is no project that can be read (" + e.reason()
                        + "); it was left as it is. Save under another name", e);
            }
        }
        byte[] bytes = bytes(project);
        Path fresh = target.resolveSibling("." + target.getFileName() + ".new");
        Path kept = target.resolveSibling("." + target.getFileName() + ".kept");
        try {
            write(fresh, bytes);
            if (Files.exists(target)) {
                Files.copy(target, kept, StandardCopyOption.REPLACE_EXISTING);
                Files.move(kept, target.resolveSibling(target.getFileName() + PREVIOUS_SUFFIX), StandardCopyOption.ATOMIC_MOVE);
            }
            Files.move(fresh, target, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            throw new ProjectFileException(name, 0, "can not be written: " + e.getMessage(), e);
        } finally {
            remove(fresh);
            remove(kept);
        }
    }

    private static void write(Path file, byte[] bytes) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING,
                StandardOpenOption.WRITE)) {
            ByteBuffer buffer = ByteBuffer.wrap(bytes);
            while (buffer.hasRemaining()) {
                channel.write(buffer);
            }
            channel.force(true);
        }
    }

    private static void remove(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            file.toFile().deleteOnExit();
        }
    }
}
