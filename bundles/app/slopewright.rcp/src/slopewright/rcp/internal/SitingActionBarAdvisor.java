package slopewright.rcp.internal;

import java.util.List;
import java.util.Map;
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
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;
import slopewright.ui.theme.ScreenTheme;

/**
 * The menus, the tool bar and the status line of a window. Editors and views add theirs at the group
 * {@link IWorkbenchActionConstants#MB_ADDITIONS} of the bar and of each menu; in the menu of files each at a group of its own, since the
 * order of two at one group is that in which their bundles are read.
 */
public final class SitingActionBarAdvisor extends ActionBarAdvisor {
    private static final String HAND_OVER = "hand-over";

    /** What the entries of the platform are called here. */
    private static final Map<ActionFactory, String> NAMES = Map.ofEntries(Map.entry(ActionFactory.CLOSE, "menu.close"),
            Map.entry(ActionFactory.CLOSE_ALL, "menu.close-all"), Map.entry(ActionFactory.SAVE, "menu.save"),
            Map.entry(ActionFactory.SAVE_AS, "menu.save-as"), Map.entry(ActionFactory.SAVE_ALL, "menu.save-all"),
            Map.entry(ActionFactory.QUIT, "menu.quit"), Map.entry(ActionFactory.CUT, "menu.cut"),
            Map.entry(ActionFactory.COPY, "menu.copy"), Map.entry(ActionFactory.PASTE, "menu.paste"),
            Map.entry(ActionFactory.DELETE, "menu.delete"),
            Map.entry(ActionFactory.SELECT_ALL, "menu.select-all"), Map.entry(ActionFactory.NEXT, "menu.next-element"),
            Map.entry(ActionFactory.PREVIOUS, "menu.previous-element"),
            Map.entry(ActionFactory.PREFERENCES, "menu.preferences"), Map.entry(ActionFactory.ABOUT, "menu.about"));

    private IWorkbenchWindow window;
    private IAction newProject;
    private IAction newSite;
    private IAction saveAsTemplate;
    private IAction openProject;
    private IAction welcome;
    private IAction resetLayout;
    private IAction dark;
    private List<IAction> layouts = List.of();
    private IAction nextView;
    private IAction previousView;
    private IAction stopCheck;
    private IAction undo;
    private IAction redo;
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
        newSite = ShellAction.of("slopewright.rcp.newSite", Messages.get("menu.new-site"), () -> ShellCommands.newSite(forWindow));
        saveAsTemplate = ShellAction.of("slopewright.rcp.saveAsTemplate", Messages.get("menu.save-as-template"),
                () -> ShellCommands.saveAsTemplate(forWindow));
        openProject = new OpenProjectAction(forWindow);
        welcome = ShellAction.of("slopewright.rcp.welcome", Messages.get("menu.welcome"), () -> ShellCommands.welcome(forWindow));
        resetLayout = ShellAction.of("slopewright.rcp.resetLayout", Messages.get("menu.reset"), () -> ShellCommands.resetLayout(forWindow));
        dark = ShellAction.tick("slopewright.rcp.dark", Messages.get("menu.dark"), ThemeSwitch::toggle);
        dark.setChecked(ScreenTheme.isDark());
        ScreenTheme.addListener(() -> dark.setChecked(ScreenTheme.isDark()));
        layouts = List.of(new LayoutAction(forWindow, "drafting", SitingPerspective.ID),
                new LayoutAction(forWindow, "checking", CheckingPerspective.ID), new LayoutAction(forWindow, "pilot", PilotPerspective.ID));
        nextView = ShellAction.of("slopewright.rcp.nextView", Messages.get("menu.next-view"), () -> PartRound.next(forWindow));
        previousView = ShellAction.of("slopewright.rcp.previousView", Messages.get("menu.previous-view"),
                () -> PartRound.previous(forWindow));
        stopCheck = ShellAction.of("slopewright.rcp.stopCheck", Messages.get("menu.stop-check"), ShellCommands::stopCheck);
        List.of(newProject, newSite, saveAsTemplate, openProject, welcome, resetLayout, dark, nextView, previousView, stopCheck)
                .forEach(this::register);
        layouts.forEach(this::register);
        undo = new HistoryAction(forWindow, true);
        redo = new HistoryAction(forWindow, false);
        register(undo);
        register(redo);
        about = standard(ActionFactory.ABOUT);
    }

    @Override
    protected void fillMenuBar(IMenuManager menuBar) {
        menuBar.add(fileMenu());
        menuBar.add(editMenu());
        menuBar.add(viewMenu());
        menuBar.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
        menuBar.add(windowMenu());
        MenuManager help = new MenuManager(Messages.get("menu.help"), IWorkbenchActionConstants.M_HELP);
        help.add(welcome);
        help.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
        help.add(new Separator());
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
        file.add(undo);
        file.add(redo);
        coolBar.add(file);
        coolBar.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
    }

    @Override
    protected void fillStatusLine(IStatusLineManager statusLine) {
        statusLine.add(new CheckItem(window));
        statusLine.add(new CautionItem(about));
    }

    private IMenuManager fileMenu() {
        MenuManager menu = new MenuManager(Messages.get("menu.file"), IWorkbenchActionConstants.M_FILE);
        menu.add(newSite);
        menu.add(newProject);
        menu.add(openProject);
        MenuManager recent = new MenuManager(Messages.get("menu.recent"), "slopewright.rcp.recentMenu");
        recent.add(new RecentMenu(window));
        menu.add(recent);
        menu.add(new Separator());
        add(menu, List.of(ActionFactory.CLOSE, ActionFactory.CLOSE_ALL));
        menu.add(new Separator());
        add(menu, List.of(ActionFactory.SAVE, ActionFactory.SAVE_AS, ActionFactory.SAVE_ALL));
        menu.add(saveAsTemplate);
        menu.add(new Separator(IWorkbenchActionConstants.MB_ADDITIONS));
        menu.add(new GroupMarker(IWorkbenchActionConstants.IMPORT_EXT));
        menu.add(new GroupMarker(HAND_OVER));
        menu.add(new Separator());
        add(menu, List.of(ActionFactory.QUIT));
        return menu;
    }

    private IMenuManager editMenu() {
        MenuManager menu = new MenuManager(Messages.get("menu.edit"), IWorkbenchActionConstants.M_EDIT);
        menu.add(undo);
        menu.add(redo);
        menu.add(new Separator());
        add(menu, List.of(ActionFactory.CUT, ActionFactory.COPY, ActionFactory.PASTE));
        menu.add(new Separator());
        add(menu, List.of(ActionFactory.DELETE, ActionFactory.SELECT_ALL));
        menu.add(new Separator());
        menu.add(stopCheck);
        menu.add(new Separator(IWorkbenchActionConstants.MB_ADDITIONS));
        return menu;
    }

    private IMenuManager viewMenu() {
        MenuManager menu = new MenuManager(Messages.get("menu.view"), "slopewright.view");
        MenuManager views = new MenuManager(Messages.get("menu.show-view"));
        views.add(new ViewsMenu(window));
        menu.add(views);
        layouts.forEach(menu::add);
        menu.add(new Separator(IWorkbenchActionConstants.MB_ADDITIONS));
        add(menu, List.of(ActionFactory.NEXT, ActionFactory.PREVIOUS));
        menu.add(new Separator());
        menu.add(dark);
        return menu;
    }

    private IMenuManager windowMenu() {
        MenuManager menu = new MenuManager(Messages.get("menu.window"), IWorkbenchActionConstants.M_WINDOW);
        menu.add(nextView);
        menu.add(previousView);
        menu.add(new Separator());
        menu.add(resetLayout);
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
        if (NAMES.containsKey(factory)) {
            made.setText(Messages.get(NAMES.get(factory)));
        }
        register(made);
        return made;
    }
}
