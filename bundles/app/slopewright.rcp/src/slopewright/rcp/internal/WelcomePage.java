package slopewright.rcp.internal;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.preference.IPreferenceStore;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.util.IPropertyChangeListener;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.part.EditorPart;
import slopewright.ui.preferences.Preferences;

/** The first page: what the product does, its caution, ways to begin, and the projects that were open last. */
public final class WelcomePage extends EditorPart {

    /** The id under which the page is registered. */
    public static final String ID = "slopewright.rcp.welcome";

    private static final int TEXT_WIDTH = 640;
    private static final int MARGIN = 32;

    private final IPropertyChangeListener listener = event -> {
        if (RecentProjects.KEY.equals(event.getProperty())) {
            showRecent();
        }
    };
    private final IPreferenceStore preferences = Preferences.store();
    private ScrolledComposite scroll;
    private Composite page;
    private Composite recent;
    private Button first;

    @Override
    public void init(IEditorSite site, IEditorInput input) {
        setSite(site);
        setInput(input);
        setPartName(input.getName());
    }

    @Override
    public void createPartControl(Composite parent) {
        scroll = new ScrolledComposite(parent, SWT.V_SCROLL | SWT.H_SCROLL);
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        page = new Composite(scroll, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(MARGIN, MARGIN).spacing(8, 10).applyTo(page);
        Label title = text(Messages.get("welcome.title"));
        title.setFont(JFaceResources.getHeaderFont());
        text(Messages.get("welcome.sentence"));
        first = button("welcome.site", () -> ShellCommands.newSite(getSite().getWorkbenchWindow()));
        button("welcome.demo", () -> ShellCommands.openDemo(getSite().getWorkbenchWindow()));
        button("welcome.open", () -> new OpenProjectAction(getSite().getWorkbenchWindow()).run());
        button("welcome.empty", () -> new NewProjectAction(getSite().getWorkbenchWindow()).run());
        Label heading = text(Messages.get("welcome.recent"));
        heading.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
        recent = new Composite(page, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(16, 4).applyTo(recent);
        Label cautionHeading = text(Messages.get("welcome.caution"));
        cautionHeading.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
        text(Messages.get("caution.full"));
        scroll.setContent(page);
        showRecent();
        preferences.addPropertyChangeListener(listener);
    }

    private Label text(String words) {
        Label label = new Label(page, SWT.WRAP);
        label.setText(words);
        GridDataFactory.swtDefaults().hint(TEXT_WIDTH, SWT.DEFAULT).applyTo(label);
        return label;
    }

    private Button button(String key, Runnable work) {
        Button button = new Button(page, SWT.PUSH);
        button.setText(Messages.get(key));
        button.addListener(SWT.Selection, event -> work.run());
        GridDataFactory.swtDefaults().hint(TEXT_WIDTH / 2, SWT.DEFAULT).applyTo(button);
        return button;
    }

    private void showRecent() {
        if (page.isDisposed()) {
            return;
        }
        for (var child : recent.getChildren()) {
            child.dispose();
        }
        List<Path> files = RecentProjects.all();
        if (files.isEmpty()) {
            new Label(recent, SWT.NONE).setText(Messages.get("recent.none"));
        }
        files.forEach(this::showRecent);
        page.layout(true, true);
        scroll.setMinSize(page.computeSize(SWT.DEFAULT, SWT.DEFAULT));
    }

    private void showRecent(Path file) {
        Link open = new Link(recent, SWT.NONE);
        String name = String.valueOf(file.getFileName());
        boolean there = Files.isRegularFile(file);
        open.setText(there ? "<a>" + name + "</a>  " + file.getParent() : Messages.get("recent.missing", name) + "  " + file.getParent());
        open.addListener(SWT.Selection, event -> ProjectOpener.open(getSite().getWorkbenchWindow(), file));
        Link remove = new Link(recent, SWT.NONE);
        remove.setText("<a>" + Messages.get("welcome.remove") + "</a>");
        remove.setToolTipText(Messages.get("welcome.remove-tip", name));
        remove.addListener(SWT.Selection, event -> RecentProjects.remove(file));
    }

    @Override
    public void setFocus() {
        first.setFocus();
    }

    @Override
    public void doSave(IProgressMonitor monitor) {
        // nothing on the page can be changed
    }

    @Override
    public void doSaveAs() {
        // nothing on the page can be changed
    }

    @Override
    public boolean isDirty() {
        return false;
    }

    @Override
    public boolean isSaveAsAllowed() {
        return false;
    }

    @Override
    public void dispose() {
        preferences.removePropertyChangeListener(listener);
        super.dispose();
    }
}
