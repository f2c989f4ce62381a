package slopewright.rcp.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.IWorkbenchPartReference;
import org.eclipse.ui.IWorkbenchWindow;

/** Goes round what is open in a window by the keys: the plan and the views in sight, in the order in which they are read. */
public final class PartRound {

    private PartRound() {
    }

    /** Gives the focus to the next part of a window, the one further right or below; after the last one to the first. */
    public static void next(IWorkbenchWindow window) {
        go(window, 1);
    }

    /** Gives the focus to the part before the one that has it. */
    public static void previous(IWorkbenchWindow window) {
        go(window, -1);
    }

    private static void go(IWorkbenchWindow window, int by) {
        IWorkbenchPage page = window.getActivePage();
        if (page == null) {
            return;
        }
        List<IWorkbenchPart> round = parts(page);
        if (!round.isEmpty()) {
            int now = round.indexOf(page.getActivePart());
            IWorkbenchPart next = round.get(now < 0 ? 0 : Math.floorMod(now + by, round.size()));
            page.activate(next);
            next.setFocus();
        }
    }

    /** Returns the parts in sight, from left to right and from top to bottom. */
    public static List<IWorkbenchPart> parts(IWorkbenchPage page) {
        record Placed(IWorkbenchPart part, Point at) {
        }
        List<Placed> placed = new ArrayList<>();
        Stream.<IWorkbenchPartReference>concat(Stream.of(page.getEditorReferences()), Stream.of(page.getViewReferences()))
                .map(reference -> reference.getPart(false)).filter(part -> part != null && page.isPartVisible(part))
                .forEach(part -> place(part).ifPresent(at -> placed.add(new Placed(part, at))));
        placed.sort(Comparator.<Placed>comparingInt(one -> one.at().y).thenComparingInt(one -> one.at().x));
        return placed.stream().map(Placed::part).toList();
    }

    private static Optional<Point> place(IWorkbenchPart part) {
        MPart model = part.getSite().getService(MPart.class);
        return model != null && model.getWidget() instanceof Control control && !control.isDisposed()
                ? Optional.of(control.toDisplay(0, 0)) : Optional.empty();
    }
}
