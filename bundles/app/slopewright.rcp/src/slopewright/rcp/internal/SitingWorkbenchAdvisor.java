package slopewright.rcp.internal;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.application.IWorkbenchConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchAdvisor;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;

import slopewright.ui.preferences.Preferences;

/** Names the first perspective, keeps the layout between starts and opens the projects given at the start. */
public final class SitingWorkbenchAdvisor extends WorkbenchAdvisor {

    private final List<Path> projects;

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
        LeftoverEditors.remove(getWorkbenchConfigurer().getWorkbench());
        Preferences.writeAtOnce();
        ThemeSwitch.follow(getWorkbenchConfigurer().getWorkbench());
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
            RecentProjects.follow(window.getActivePage());
            List<Path> wanted = new ArrayList<>(OpenProjects.ofLastTime());
            wanted.removeAll(projects);
            wanted.addAll(projects);
            ProjectOpener.open(window, wanted);
            OpenProjects.follow(window.getActivePage());
            AutoSave.watch(window);
            if (window.getActivePage().getEditorReferences().length == 0) {
                ShellCommands.welcome(window);
            }
        }
    }
}
