package slopewright.rcp.internal;

import java.text.Collator;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.action.ContributionItem;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.views.IViewDescriptor;

/** The views of the product as entries of a menu, in the order of their names; those of the platform are no help here and not offered. */
final class ViewsMenu extends ContributionItem {

    private final IWorkbenchWindow window;

    ViewsMenu(IWorkbenchWindow window) {
        super("slopewright.rcp.views");
        this.window = window;
    }

    @Override
    public boolean isDynamic() {
        return true;
    }

    @Override
    public void fill(Menu menu, int index) {
        IWorkbenchPage page = window.getActivePage();
        int at = index < 0 ? menu.getItemCount() : index;
        List<IViewDescriptor> views = page == null ? List.of() : Stream.of(page.getShowViewShortcuts()).distinct()
                .map(window.getWorkbench().getViewRegistry()::find).filter(view -> view != null)
                .sorted(Comparator.comparing(IViewDescriptor::getLabel, Collator.getInstance())).toList();
        for (IViewDescriptor view : views) {
            add(menu, at++, page, view);
        }
    }

    private static void add(Menu menu, int at, IWorkbenchPage page, IViewDescriptor view) {
        MenuItem item = new MenuItem(menu, SWT.PUSH, at);
        item.setText(view.getLabel());
        if (view.getImageDescriptor() != null) {
            Image image = view.getImageDescriptor().createImage(menu.getDisplay());
            item.setImage(image);
            item.addListener(SWT.Dispose, event -> image.dispose());
        }
        item.addListener(SWT.Selection, event -> show(page, view.getId()));
    }

    private static void show(IWorkbenchPage page, String id) {
        try {
            page.showView(id);
        } catch (PartInitException e) {
            ILog.get().error("The view " + id + " cannot be shown", e);
        }
    }
}
