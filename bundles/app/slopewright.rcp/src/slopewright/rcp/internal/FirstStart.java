package slopewright.rcp.internal;

import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;

/** Ends at once: the platform has then found out what the bundles hold, and has kept it for every later start. */
public final class FirstStart implements IApplication {

    @Override
    public Object start(IApplicationContext context) {
        return EXIT_OK;
    }

    @Override
    public void stop() {
        // nothing runs
    }
}
