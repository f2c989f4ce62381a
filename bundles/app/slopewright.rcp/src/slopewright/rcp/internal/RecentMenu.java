package slopewright.rcp.internal;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.eclipse.jface.action.ContributionItem;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.ui.IWorkbenchWindow;

/** The projects that were open last, as entries of a menu, filled anew each time it opens; a missing file is marked and can't be chosen. */
public final class RecentMenu extends ContributionItem {

    private static final int MOST_NUMBERED = 9;

    private final IWorkbenchWindow window;

    /**
     * Creates the entries for one window.
     *
     * @param window the window to open projects in
     */
    public RecentMenu(IWorkbenchWindow window) {
        super("slopewright.rcp.recent");
        this.window = window;
    }

    @Override
    public boolean isDynamic() {
        return true;
    }

    @Override
    public void fill(Menu menu, int index) {
        List<Path> files = RecentProjects.all();
        int at = index < 0 ? menu.getItemCount() : index;
        if (files.isEmpty()) {
            MenuItem none = new MenuItem(menu, SWT.PUSH, at);
            none.setText(Messages.get("recent.none"));
            none.setEnabled(false);
        }
        for (int i = 0; i < files.size(); i++) {
            add(menu, at + i, i + 1, files.get(i));
        }
    }

    private void add(Menu menu, int at, int number, Path file) {
        boolean there = Files.isRegularFile(file);
        String name = number <= MOST_NUMBERED ? "&" + number + "  " + escaped(file) : escaped(file);
        MenuItem item = new MenuItem(menu, SWT.PUSH, at);
        item.setText(there ? name : Messages.get("recent.missing", name));
        item.setToolTipText(file.toString());
        item.setEnabled(there);
        item.addListener(SWT.Selection, event -> ProjectOpener.open(window, file));
    }

    private static String escaped(Path file) {
        return String.valueOf(file.getFileName()).replace("&", "&&");
    }
}
