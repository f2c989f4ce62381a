package slopewright.model.io;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.common.util.WrappedException;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.xmi.ClassNotFoundException;
import org.eclipse.emf.ecore.xmi.FeatureNotFoundException;
import org.eclipse.emf.ecore.xmi.IllegalValueException;
import org.eclipse.emf.ecore.xmi.PackageNotFoundException;
import org.eclipse.emf.ecore.xmi.UnresolvedReferenceException;
import org.eclipse.emf.ecore.xmi.XMIException;
import org.xml.sax.SAXParseException;

import slopewright.messages.Message;
import slopewright.messages.Reasoned;
import slopewright.model.Project;
import slopewright.model.SlopewrightPackage;
import slopewright.model.internal.FileDigest;
import slopewright.model.internal.ProjectResource;
import slopewright.model.internal.SeenFile;
import slopewright.model.internal.UnwritableException;
import slopewright.model.internal.Writability;
import slopewright.model.util.Ids;

/**
 * Loads and saves project files: one project a file, XMI, UTF-8, the same bytes for the same project. Reading is strict: what is not
 * understood is a fault that names its line, never passed over. A family key that no family has is plain text here, and loads.
 */
public final class ProjectFile {

    /** Extension of project files, without the dot. */
    public static final String EXTENSION = "slopewright";

    /** Suffix of the file that holds what a save replaced. */
    public static final String PREVIOUS_SUFFIX = ".previous";

    /** What the reader of XML says, in any language, of a file that holds something else before the first element. */
    private static final Pattern BEFORE_THE_ROOT = Pattern.compile("(?i)\\bprolog");
    private static final int MOST_BYTES = 64 << 20;

    private ProjectFile() {
    }

    /**
     * Loads a project.
     *
     * @param file the file
     * @return the project
     * @throws ProjectFileException where it cannot be read; the message names file, line and reason
     */
    public static Project load(Path file) throws ProjectFileException {
        String name = file.toString();
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = bytes(in, Files.size(file));
            SeenFile seen = SeenFile.holding(bytes);
            Project project = load(bytes, name);
            settle(project, file);
            resource(project).ifPresent(resource -> resource.see(Optional.of(seen)));
            return project;
        } catch (IOException e) {
            throw unreadable(name, e);
        }
    }

    /** Reads all bytes of a file, one more than a project may have at most; into one array where it has as many as it says. */
    private static byte[] bytes(InputStream in, long expected) throws IOException {
        byte[] bytes = new byte[(int) Math.min(expected, MOST_BYTES + 1)];
        int read = in.readNBytes(bytes, 0, bytes.length);
        byte[] further = in.readNBytes(MOST_BYTES + 1 - read);
        if (read == bytes.length && further.length == 0) {
            return bytes;
        }
        byte[] all = Arrays.copyOf(bytes, read + further.length);
        System.arraycopy(further, 0, all, read, further.length);
        return all;
    }

    private static Optional<ProjectResource> resource(Project project) {
        return Optional.ofNullable(project.eResource()).filter(ProjectResource.class::isInstance).map(ProjectResource.class::cast);
    }

    /**
     * Loads a project. Elements without an id get one.
     *
     * @param in   the bytes, 64 MB at most; not closed
     * @param name name of the file, for messages
     * @return the project
     * @throws ProjectFileException where it cannot be read; the message names file, line and reason
     */
    public static Project load(InputStream in, String name) throws ProjectFileException {
        try {
            return load(in.readNBytes(MOST_BYTES + 1), name);
        } catch (IOException e) {
            throw unreadable(name, e);
        }
    }

    private static Project load(byte[] bytes, String name) throws ProjectFileException {
        if (bytes.length > MOST_BYTES) {
            throw whole(name, Message.said("project-file.large", MOST_BYTES >> 20), null);
        }
        if (bytes.length == 0) {
            throw whole(name, Message.of("project-file.empty"), null);
        }
        SlopewrightPackage.eINSTANCE.eClass();
        ProjectResource resource = new ProjectResource(URI.createURI("project"));
        try {
            resource.load(new ByteArrayInputStream(bytes), Map.of());
        } catch (IndexOutOfBoundsException e) {
            throw new ProjectFileException(name, 1, 0, Message.of("project-file.no-encoding"), e);
        } catch (IOException | RuntimeException e) {
            throw fault(name, e);
        }
        if (!resource.getErrors().isEmpty()) {
            Resource.Diagnostic first = resource.getErrors().get(0);
            throw first instanceof Exception e ? fault(name, e)
                    : new ProjectFileException(name, first.getLine(), first.getColumn(), Message.said("plain", first.getMessage()), null);
        }
        if (resource.getContents().size() != 1 || !(resource.getContents().get(0) instanceof Project project)) {
            throw whole(name, Message.of("project-file.not-one"), null);
        }
        if (resource.isIdMissing()) {
            Ids.assign(project);
        }
        return project;
    }

    /** Says that a project belongs to a file; what lies beside that file belongs to it too. */
    public static void settle(Project project, Path file) {
        URI uri = uri(file);
        if (project.eResource() == null) {
            new ProjectResource(uri).getContents().add(project);
        }
        if (!uri.equals(project.eResource().getURI())) {
            resource(project).ifPresent(resource -> resource.see(Optional.empty()));
        }
        project.eResource().setURI(uri);
    }

    /** Returns the SHA-256 of the file of a project when it was loaded or saved last, empty where it was not. */
    public static Optional<String> seen(Project project) {
        return held(project).map(SeenFile::sha256);
    }

    /**
     * Returns the SHA-256 of what a file holds now.
     *
     * @param file a file
     * @return 64 hexadecimal digits; empty where it cannot be read, or is too large for a project
     */
    public static Optional<String> hash(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(MOST_BYTES + 1);
            return bytes.length > MOST_BYTES ? Optional.empty() : Optional.of(FileDigest.sha256(bytes));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    private static Optional<SeenFile> held(Project project) {
        return resource(project).flatMap(ProjectResource::seen);
    }

    /**
     * Says that a project goes on from what another version of its file holds.
     *
     * @param project the project
     * @param version that version, as it was loaded
     */
    public static void goOnFrom(Project project, Project version) {
        resource(project).ifPresent(resource -> resource.see(held(version)));
    }

    private static URI uri(Path file) {
        return URI.createFileURI(file.toAbsolutePath().normalize().toString());
    }

    /** Returns the folder in which the project was loaded or saved last, empty where it has no file yet. */
    public static Optional<Path> folder(Project project) {
        return Optional.ofNullable(project.eResource()).map(Resource::getURI).filter(URI::isFile)
                .map(uri -> Path.of(uri.toFileString()).getParent());
    }

    /** Returns a copy of a project that belongs to the same folder; a change of one leaves the other as it is. */
    public static Project copy(Project project) {
        Project copy = EcoreUtil.copy(project);
        if (project.eResource() != null) {
            ProjectResource beside = new ProjectResource(project.eResource().getURI());
            resource(project).ifPresent(resource -> beside.see(resource.seen()));
            beside.getContents().add(copy);
        }
        return copy;
    }

    private static ProjectFileException whole(String name, Message fault, Throwable cause) {
        return new ProjectFileException(name, 0, 0, fault, cause);
    }

    private static ProjectFileException unreadable(String name, IOException e) {
        return whole(name, Message.said("project-file.unreadable", e), e);
    }

    private static ProjectFileException fault(String name, Throwable thrown) {
        Throwable cause = thrown;
        while ((cause instanceof Resource.IOWrappedException || cause instanceof WrappedException) && cause.getCause() != null) {
            cause = cause.getCause();
        }
        if (cause instanceof SAXParseException e) {
            Message reason = e.getMessage().contains("DOCTYPE") ? Message.of("project-file.document-type")
                    : BEFORE_THE_ROOT.matcher(e.getMessage()).find() ? Message.of("project-file.no-project")
                    : Message.said("project-file.no-xml", firstLine(e.getMessage()));
            return new ProjectFileException(name, e.getLineNumber(), e.getColumnNumber(), reason, cause);
        }
        if (cause instanceof XMIException e) {
            return new ProjectFileException(name, e.getLine(), e.getColumn(), reason(e), cause);
        }
        return whole(name, Message.said("project-file.unreadable", firstLine(String.valueOf(cause.getMessage()))), cause);
    }

    private static Message reason(XMIException e) {
        if (e instanceof FeatureNotFoundException feature) {
            return Message.said("project-file.unknown", feature.getName());
        }
        if (e instanceof ClassNotFoundException type) {
            return Message.said("project-file.unknown-type", type.getName());
        }
        if (e instanceof PackageNotFoundException other) {
            return other.uri() == null || other.uri().isEmpty() ? Message.said("project-file.no-format", SlopewrightPackage.eNS_URI)
                    : Message.said("project-file.other-format", other.uri(), SlopewrightPackage.eNS_URI);
        }
        if (e instanceof IllegalValueException value) {
            return illegal(value);
        }
        if (e instanceof UnresolvedReferenceException reference) {
            return Message.said("project-file.lost", reference.getReference());
        }
        return e instanceof Reasoned reasoned ? reasoned.reason() : Message.said("plain", firstLine(e.getMessage()));
    }

    private static Message illegal(IllegalValueException e) {
        String feature = e.getFeature() == null ? "?" : e.getFeature().getName();
        return e.getValue() instanceof EObject element ? Message.said("project-file.no-element-for", element.eClass().getName(), feature)
                : Message.said("project-file.no-value-for", e.getValue(), feature);
    }

    private static String firstLine(String text) {
        return text.lines().findFirst().orElse("");
    }

    /**
     * Returns the bytes of a project as a file holds them. Elements without an id get one, and so does an element whose id another
     * one before it has.
     *
     * @param project the project
     * @return UTF-8
     * @throws IllegalStateException where no file can hold it: a number that is none, a character XML does not know, a reference to an
     *                               element outside; the message names the element
     */
    public static byte[] bytes(Project project) {
        Ids.assign(project);
        Optional<Message> obstacle = Writability.obstacle(project);
        if (obstacle.isPresent()) {
            throw new UnwritableException(obstacle.get());
        }
        Resource resource = project.eResource();
        if (!(resource instanceof ProjectResource)) {
            resource = new ProjectResource(URI.createURI("project"));
            resource.getContents().add(project);
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            resource.save(out, Map.of());
        } catch (IOException e) {
            throw new IllegalStateException(e.getMessage(), e);
        }
        return out.toByteArray();
    }

    /**
     * Returns the bytes of a project as a file holds them, read again for proof: what is read is the same project.
     *
     * @param project the project
     * @param name    name of the file, for messages
     * @return UTF-8
     * @throws ProjectFileException where no file can hold it; the message says why
     */
    public static byte[] provenBytes(Project project, String name) throws ProjectFileException {
        byte[] bytes;
        Project again;
        try {
            bytes = bytes(project);
            again = load(bytes, name);
        } catch (IllegalStateException e) {
            throw whole(name, Message.said("project-file.unwritable", e), e);
        } catch (ProjectFileException e) {
            throw whole(name, Message.said("project-file.not-read-again", e.fault()), e);
        }
        if (!EcoreUtil.equals(project, again)) {
            throw whole(name, Message.of("project-file.another-project"), null);
        }
        return bytes;
    }

    /**
     * Saves a project. The new content is read again for proof, written beside the file and then put in its place in one step; what
     * was there is kept under the name of the file with {@value #PREVIOUS_SUFFIX}.
     *
     * @param project the project
     * @param file    the file; where it exists it must be a project that can be read, and where the project was loaded from it, the same
     *                one as then
     * @throws ProjectFileException where it cannot be written; then the file is what it was. Its cause is a {@link FileChangedException}
     *                              where another program changed the file meanwhile
     */
    public static void save(Project project, Path file) throws ProjectFileException {
        Optional<String> seen = resource(project).filter(resource -> uri(file).equals(resource.getURI())).flatMap(ProjectResource::seen)
                .map(SeenFile::sha256);
        save(project, file, AtomicFile.Terms.keeping(PREVIOUS_SUFFIX).whileStill(seen));
    }

    /**
     * Saves a project as {@link #save} does, though another program may have changed the file meanwhile: what that one wrote is what is
     * kept.
     *
     * @param project the project
     * @param file    the file; where it exists it must be a project that can be read
     * @throws ProjectFileException where it cannot be written; then the file is what it was
     */
    public static void saveOver(Project project, Path file) throws ProjectFileException {
        save(project, file, AtomicFile.Terms.keeping(PREVIOUS_SUFFIX));
    }

    /**
     * Saves a project into a file that is not there yet.
     *
     * @param project the project
     * @param file    the file
     * @throws ProjectFileException where it cannot be written; its cause is a {@link java.nio.file.FileAlreadyExistsException} where
     *                              the file is there, which is what it was
     */
    public static void create(Project project, Path file) throws ProjectFileException {
        byte[] bytes = provenBytes(project, file.toString());
        write(project, file, bytes, () -> AtomicFile.create(file, bytes));
    }

    private static void save(Project project, Path file, AtomicFile.Terms terms) throws ProjectFileException {
        if (Files.exists(file)) {
            try {
                load(file);
            } catch (ProjectFileException e) {
                throw whole(file.toString(), Message.said("project-file.taken", e.fault()), e);
            }
        }
        byte[] bytes = provenBytes(project, file.toString());
        write(project, file, bytes, () -> AtomicFile.replace(file, bytes, terms));
    }

    /** Writes a file. */
    private interface Writing {

        void run() throws IOException;
    }

    private static void write(Project project, Path file, byte[] bytes, Writing writing) throws ProjectFileException {
        try {
            writing.run();
        } catch (IOException e) {
            throw whole(file.toString(), Message.said("project-file.unwritable", e), e);
        }
        settle(project, file);
        resource(project).ifPresent(resource -> resource.see(Optional.of(SeenFile.holding(bytes))));
    }
}
