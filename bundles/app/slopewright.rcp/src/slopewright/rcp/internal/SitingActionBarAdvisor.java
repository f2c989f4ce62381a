package slopewright.rcp.internal;

import java.util.List;
import org.eclipse.jface.action.GroupMarker;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.ICoolBarManager;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.IStatusLineManager;
import org.eclipse.jface.action.IToolBarManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.jface.action.ToolBarManager;
import org.eclipse.swt.SWT;
import org.eclipse.ui.IWorkbenchActionConstants;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.actions.ContributionItemFactory;
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;

/**
 * The menus, the tool bar and the status line of a window. Editors and views add theirs at the group
 * {@link IWorkbenchActionConstants#MB_ADDITIONS} of the bar and of each menu.
 */
public final class SitingActionBarAdvisor extends ActionBarAdvisor {

    private IWorkbenchWindow window;
    private IAction newProject;
    private IAction openProject;
    private IAction about;

    /**
     * Creates the advisor of one window.
     *
     * @param configurer where the bars are
     */
    public SitingActionBarAdvisor(IActionBarConfigurer configurer) {
        super(configurer);
    }

    @Override
    protected void makeActions(IWorkbenchWindow forWindow) {
        window = forWindow;
        newProject = new NewProjectAction(forWindow);
        openProject = new OpenProjectAction(forWindow);
        register(newProject);
        register(openProject);
        about = standard(ActionFactory.ABOUT);
    }

    @Override
    protected void fillMenuBar(IMenuManager menuBar) {
        menuBar.add(fileMenu());
        menuBar.add(editMenu());
        menuBar.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
        menuBar.add(windowMenu());
        MenuManager help = new MenuManager("&Help", IWorkbenchActionConstants.M_HELP);
        help.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
        help.add(about);
        menuBar.add(help);
    }

    @Override
    protected void fillCoolBar(ICoolBarManager coolBar) {
        IToolBarManager file = new ToolBarManager(SWT.FLAT);
        file.add(newProject);
        file.add(openProject);
        file.add(standard(ActionFactory.SAVE));
        file.add(new Separator());
        file.add(standard(ActionFactory.UNDO));
        file.add(standard(ActionFactory.REDO));
        coolBar.add(file);
        coolBar.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
    }

    @Override
    protected void fillStatusLine(IStatusLineManager statusLine) {
        statusLine.add(new CautionItem(about));
    }

    private IMenuManager fileMenu() {
        MenuManager menu = new MenuManager("&File", IWorkbenchActionConstants.M_FILE);
        menu.add(newProject);
        menu.add(openProject);
        menu.add(new Separator());
        add(menu, List.of(ActionFactory.CLOSE, ActionFactory.CLOSE_ALL));
        menu.add(new Separator());
        add(menu, List.of(ActionFactory.SAVE, ActionFactory.SAVE_AS, ActionFactory.SAVE_ALL));
        menu.add(new Separator(IWorkbenchActionConstants.MB_ADDITIONS));
        menu.add(new Separator());
        add(menu, List.of(ActionFactory.QUIT));
        return menu;
    }

    private IMenuManager editMenu() {
        MenuManager menu = new MenuManager("&Edit", IWorkbenchActionConstants.M_EDIT);
        add(menu, List.of(ActionFactory.UNDO, ActionFactory.REDO));
        menu.add(new Separator());
        add(menu, List.of(ActionFactory.DELETE, ActionFactory.SELECT_ALL));
        menu.add(new Separator(IWorkbenchActionConstants.MB_ADDITIONS));
        return menu;
    }

    private IMenuManager windowMenu() {
        MenuManager menu = new MenuManager("&Window", IWorkbenchActionConstants.M_WINDOW);
        MenuManager views = new MenuManager("Show &View");
        views.add(ContributionItemFactory.VIEWS_SHORTLIST.create(window));
        menu.add(views);
        add(menu, List.of(ActionFactory.RESET_PERSPECTIVE));
        menu.add(new Separator(IWorkbenchActionConstants.MB_ADDITIONS));
        add(menu, List.of(ActionFactory.PREFERENCES));
        return menu;
    }

    private void add(IMenuManager menu, List<ActionFactory> factories) {
        factories.forEach(factory -> menu.add(standard(factory)));
    }

    /** One action of the platform for this window, made at its first use and disposed with the window. */
    private IAction standard(ActionFactory factory) {
        IAction known = getAction(factory.getId());
        if (known != null) {
            return known;
        }
        IAction made = factory.create(window);
        register(made);
        return made;
    }
}
