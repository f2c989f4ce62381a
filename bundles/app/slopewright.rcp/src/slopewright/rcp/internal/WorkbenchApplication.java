package slopewright.rcp.internal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.eclipse.core.runtime.Platform;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.service.datalocation.Location;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;

/**
 * Opens the workbench, with the projects named on the command line, and runs it until its last window closes. One
 * folder of settings serves one running workbench: a second start with the same folder says so and ends.
 */
public final class WorkbenchApplication implements IApplication {

    @Override
    public Object start(IApplicationContext context) {
        List<Path> projects = CommandLineProjects.among((String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS));
        ErrorsToSend.keep();
        Display display = PlatformUI.createDisplay();
        try {
            Location settings = Platform.getInstanceLocation();
            if (settings != null && settings.isSet() && !lock(settings)) {
                MessageDialog.openError(null, Messages.get("locked.title"),
                        Messages.get("locked.text", settings.getURL().getPath()));
                return IApplication.EXIT_OK;
            }
            int code = run(display, projects, settings);
            return code == PlatformUI.RETURN_RESTART ? FreshStart.begin() : IApplication.EXIT_OK;
        } finally {
            display.dispose();
        }
    }

    @Override
    public void stop() {
        if (PlatformUI.isWorkbenchRunning()) {
            Display display = PlatformUI.getWorkbench().getDisplay();
            display.syncExec(() -> PlatformUI.getWorkbench().close());
        }
    }

    private static int run(Display display, List<Path> projects, Location settings) {
        try {
            return PlatformUI.createAndRunWorkbench(display, new SitingWorkbenchAdvisor(projects));
        } finally {
            if (settings != null) {
                settings.release();
            }
        }
    }

    /** False where another workbench holds the folder, or it can't be written. */
    private static boolean lock(Location settings) {
        try {
            return settings.lock();
        } catch (IOException e) {
            return false;
        }
    }
}
