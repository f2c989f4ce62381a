package slopewright.rcp.internal;

import java.io.IOException;
import java.io.InputStream;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.core.runtime.Platform;
import org.eclipse.core.runtime.URIUtil;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.osgi.service.datalocation.Location;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import slopewright.model.io.AtomicFile;
import slopewright.model.util.Projects;
import slopewright.rcp.internal.site.SiteWizard;
import slopewright.ui.MessageTexts;
import slopewright.ui.document.ActiveDocument;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.document.ProjectInput;

/** What the entries of the menus and the buttons of the welcome page do. */
public final class ShellCommands {

    private static final String DEMO = "harrow-vale";

    private ShellCommands() {
    }

    /** Asks for a site and opens it with an aid laid out. */
    public static void newSite(IWorkbenchWindow window) {
        SiteWizard.dialog(window, new SiteWizard(window)).open();
    }

    /** Keeps the project of the active editor as a template, under a name that the user types. */
    public static void saveAsTemplate(IWorkbenchWindow window) {
        IEditorPart editor = window.getActivePage().getActiveEditor();
        ProjectDocument document = editor == null ? null : Adapters.adapt(editor, ProjectDocument.class);
        if (document == null || Projects.hosts(document.project()).isEmpty()) {
            MessageDialog.openInformation(window.getShell(), Messages.get("template.title"), Messages.get("template.no-host"));
            return;
        }
        InputDialog dialog = new InputDialog(window.getShell(), Messages.get("template.title"), Messages.get("template.name"),
                String.valueOf(document.project().getName()), typed -> typed.isBlank() ? Messages.get("template.needs-name") : null);
        if (dialog.open() == Window.OK) {
            try {
                SiteWizard.keepAsTemplate(document.project(), dialog.getValue().strip());
            } catch (IOException e) {
                MessageDialog.openError(window.getShell(), Messages.get("template.title"), MessageTexts.reason(e));
            }
        }
    }

    /** Puts the views back where they were at first, after asking. */
    public static void resetLayout(IWorkbenchWindow window) {
        if (MessageDialog.openConfirm(window.getShell(), Messages.get("reset.title"), Messages.get("reset.question"))) {
            window.getActivePage().resetPerspective();
        }
    }

    /** Stops the check of the active project, where one is under way. */
    public static void stopCheck() {
        ActiveDocument.get().filter(ProjectDocument::isChecking).ifPresent(ProjectDocument::stopChecking);
    }

    /** Shows the welcome page. */
    public static void welcome(IWorkbenchWindow window) {
        try {
            window.getActivePage().openEditor(new WelcomeInput(), WelcomePage.ID);
        } catch (PartInitException e) {
            MessageDialog.openError(window.getShell(), Messages.get("open.failed"), MessageTexts.reason(e));
        }
    }

    /** Opens a copy of the demonstration project in the folder of the settings; a copy that was changed earlier is kept. */
    public static void openDemo(IWorkbenchWindow window) {
        try {
            ProjectOpener.open(window, demoCopy(folder("demo")));
        } catch (IOException e) {
            MessageDialog.openError(window.getShell(), Messages.get("open.failed"), Messages.get("demo.failed", MessageTexts.reason(e)));
        }
    }

    /**
     * Puts the demonstration project into a folder, where it is not there yet.
     *
     * @param folder the folder
     * @return the file
     * @throws IOException where the product does not hold it or it cannot be written
     */
    public static Path demoCopy(Path folder) throws IOException {
        Path file = folder.resolve(DEMO + ProjectInput.FILE_SUFFIX);
        if (!Files.exists(file)) {
            try (InputStream in = ShellCommands.class.getResourceAsStream("/demo/" + DEMO + "/" + DEMO + ProjectInput.FILE_SUFFIX)) {
                if (in == null) {
                    throw new IOException(Messages.get("demo.none"));
                }
                Files.createDirectories(folder);
                AtomicFile.replace(file, in.readAllBytes());
            }
        }
        return file;
    }

    /**
     * Returns a folder beside the settings of the window.
     *
     * @param name its name
     * @throws IOException where there are no settings
     */
    public static Path folder(String name) throws IOException {
        Location settings = Platform.getInstanceLocation();
        URL url = settings == null ? null : settings.getURL();
        try {
            if (url == null) {
                throw new IOException(Messages.get("settings.none"));
            }
            return Path.of(URIUtil.toURI(url)).resolve(name);
        } catch (URISyntaxException | InvalidPathException e) {
            throw new IOException(Messages.get("settings.none"), e);
        }
    }
}
