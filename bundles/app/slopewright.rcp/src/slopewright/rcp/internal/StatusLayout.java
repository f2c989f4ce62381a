package slopewright.rcp.internal;

import java.util.List;
import java.util.stream.Stream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Layout;

/**
 * Lays out the status line: what the product keeps there stands whole at the right, the last of it before all others, and messages have the
 * room that is left. The platform's own layout keeps a third of the line for messages, and shortens the caution where letters are large.
 */
final class StatusLayout extends Layout {
    private static final int GAP = 3;

    /** Marks a label that is kept in the line. It becomes no narrower, lest its neighbours jump with each new text. */
    private static final class Kept {
        private int widestPx;
    }

    /**
     * Makes a label that stays in the line.
     *
     * @param line the status line, which is laid out by this class from then on
     */
    static CLabel label(Composite line) {
        CLabel label = new CLabel(line, SWT.NONE);
        label.setLayoutData(new Kept());
        if (!(line.getLayout() instanceof StatusLayout)) {
            line.setLayout(new StatusLayout());
        }
        return label;
    }

    /** Writes a text into a label of the line. */
    static void say(CLabel label, String text) {
        label.setText(text);
        label.setToolTipText(text);
        label.getParent().layout();
    }

    private static List<Control> kept(Composite line) {
        return Stream.of(line.getChildren()).filter(child -> child.getLayoutData() instanceof Kept).toList();
    }

    private static int width(Control label) {
        Kept kept = (Kept) label.getLayoutData();
        kept.widestPx = Math.max(kept.widestPx, label.computeSize(SWT.DEFAULT, SWT.DEFAULT).x);
        return kept.widestPx;
    }

    @Override
    protected Point computeSize(Composite line, int wHint, int hHint, boolean flushCache) {
        int wide = kept(line).stream().mapToInt(label -> width(label) + GAP).sum();
        int high = Stream.of(line.getChildren()).mapToInt(child -> child.computeSize(SWT.DEFAULT, SWT.DEFAULT).y).max().orElse(0);
        return new Point(wHint == SWT.DEFAULT ? wide : wHint, hHint == SWT.DEFAULT ? high : hHint);
    }

    @Override
    protected void layout(Composite line, boolean flushCache) {
        Rectangle room = line.getClientArea();
        int right = room.x + room.width - GAP;
        List<Control> kept = kept(line);
        for (int i = kept.size() - 1; i >= 0; i--) {
            int width = Math.min(width(kept.get(i)), Math.max(0, right - room.x));
            right -= width;
            kept.get(i).setBounds(right, room.y, width, room.height);
            right -= GAP;
        }
        // messages come first; the platform's bar of progress and its button are not used
        boolean isMessage = true;
        for (Control child : line.getChildren()) {
            if (!kept.contains(child)) {
                child.setBounds(room.x, room.y, isMessage ? Math.max(0, right - room.x) : 0, room.height);
                isMessage = false;
            }
        }
    }
}
