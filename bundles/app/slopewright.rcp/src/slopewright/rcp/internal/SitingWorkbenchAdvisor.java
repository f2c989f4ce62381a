package slopewright.rcp.internal;

import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchAdvisor;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;

/** Names the first perspective and the look of each window. */
public final class SitingWorkbenchAdvisor extends WorkbenchAdvisor {

    @Override
    public String getInitialWindowPerspectiveId() {
        return "slopewright.rcp.perspective";
    }

    @Override
    public WorkbenchWindowAdvisor createWorkbenchWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
        configurer.setTitle("Slopewright");
        return new WorkbenchWindowAdvisor(configurer);
    }
}
