package slopewright.rcp.internal;

import org.eclipse.swt.graphics.Point;
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;

/** The look of each window: size, bars and title. */
public final class SitingWindowAdvisor extends WorkbenchWindowAdvisor {

    private static final Point FIRST_SIZE = new Point(1400, 900);

    /**
     * Creates the advisor of one window.
     *
     * @param configurer what the window lets itself be configured by
     */
    public SitingWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
        super(configurer);
    }

    @Override
    public ActionBarAdvisor createActionBarAdvisor(IActionBarConfigurer configurer) {
        return new SitingActionBarAdvisor(configurer);
    }

    @Override
    public void preWindowOpen() {
        IWorkbenchWindowConfigurer configurer = getWindowConfigurer();
        configurer.setInitialSize(FIRST_SIZE);
        configurer.setShowCoolBar(true);
        configurer.setShowStatusLine(true);
        configurer.setShowPerspectiveBar(false);
        configurer.setTitle(WindowTitle.PRODUCT);
    }

    @Override
    public void postWindowOpen() {
        WindowTitle.follow(getWindowConfigurer());
    }
}
