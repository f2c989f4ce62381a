package slopewright.bench.empty;

import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.application.WorkbenchAdvisor;

/** Opens an empty workbench window. */
public final class EmptyWorkbench implements IApplication {

    @Override
    public Object start(IApplicationContext context) {
        Display display = PlatformUI.createDisplay();
        try {
            PlatformUI.createAndRunWorkbench(display, new WorkbenchAdvisor() {

                @Override
                public String getInitialWindowPerspectiveId() {
                    return "slopewright.bench.empty.perspective";
                }
            });
        } finally {
            display.dispose();
        }
        return EXIT_OK;
    }

    @Override
    public void stop() {
        // the window is closed by whoever measures
    }
}
