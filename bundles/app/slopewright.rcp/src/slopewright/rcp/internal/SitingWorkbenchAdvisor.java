package slopewright.rcp.internal;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.application.IWorkbenchConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchAdvisor;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;

import slopewright.ui.AfterStart;
import slopewright.ui.preferences.Preferences;

/** Names the first perspective, keeps the layout between starts and opens the projects given at the start. */
public final class SitingWorkbenchAdvisor extends WorkbenchAdvisor {

    private final List<Path> projects;
    private List<Path> wanted = List.of();
    private ReadAhead ahead = ReadAhead.of(List.of());

    /**
     * Creates the advisor.
     *
     * @param projects the projects to open once the window is there
     */
    public SitingWorkbenchAdvisor(List<Path> projects) {
        this.projects = List.copyOf(projects);
    }

    @Override
    public void initialize(IWorkbenchConfigurer configurer) {
        super.initialize(configurer);
        configurer.setSaveAndRestore(true);
    }

    @Override
    public void preStartup() {
        AfterStart.begin(getWorkbenchConfigurer().getWorkbench().getDisplay());
        wanted = wanted();
        ahead = ReadAhead.of(wanted);
        LeftoverEditors.remove(getWorkbenchConfigurer().getWorkbench());
        TabNames.renew(getWorkbenchConfigurer().getWorkbench());
        Preferences.writeAtOnce();
        ThemeSwitch.follow(getWorkbenchConfigurer().getWorkbench());
    }

    private List<Path> wanted() {
        List<Path> all = new ArrayList<>(OpenProjects.ofLastTime());
        all.removeAll(projects);
        all.addAll(projects);
        return all;
    }

    @Override
    public String getInitialWindowPerspectiveId() {
        return SitingPerspective.ID;
    }

    @Override
    public WorkbenchWindowAdvisor createWorkbenchWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
        return new SitingWindowAdvisor(configurer);
    }

    @Override
    public void postStartup() {
        IWorkbenchWindow window = getWorkbenchConfigurer().getWorkbench().getActiveWorkbenchWindow();
        if (window != null) {
            Display display = window.getWorkbench().getDisplay();
            display.asyncExec(() -> AfterStart.end(display, window.getShell()));
            ahead.await();
            RecentProjects.follow(window.getActivePage());
            ProjectOpener.open(window, wanted, ahead::read);
            OpenProjects.follow(window.getActivePage());
            AutoSave.watch(window);
            if (window.getActivePage().getEditorReferences().length == 0) {
                ShellCommands.welcome(window);
            }
        }
    }
}
