package slopewright.ui.plan.internal.palette;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

import org.eclipse.gef.DefaultEditDomain;
import org.eclipse.gef.dnd.TemplateTransferDragSourceListener;
import org.eclipse.gef.palette.PaletteContainer;
import org.eclipse.gef.palette.PaletteEntry;
import org.eclipse.gef.ui.palette.PaletteViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Sash;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;

import slopewright.ui.AccessibleName;
import slopewright.ui.plan.internal.Messages;

/** The palette at the left of the plan, under a heading with a button that folds it away; the edge between the two can be dragged. */
public final class PaletteColumn {

    private static final String CLOSES = "\u25c2";
    private static final String OPENS = "\u25b8";
    private static final int COLUMNS = 3;
    private static final int LEAST_PX = 60;
    private static final int CHARACTERS = 22;
    private static final int MOST_CHARACTERS = 32;
    /** Sign, edges and bar beside a name. */
    private static final int BESIDE_NAME_PX = 48;
    private static final int EDGE_PX = 4;

    private final Composite area;
    private final Composite column;
    private final ToolItem fold;
    private final Label heading;
    private final Sash edge;
    private Control entries;
    private PaletteEntry root;

    /**
     * Makes the column; the plan is made in {@link #area()} afterwards.
     *
     * @param parent where both stand
     */
    public PaletteColumn(Composite parent) {
        area = new Composite(parent, SWT.NONE);
        area.setLayout(tight(COLUMNS));
        column = new Composite(area, SWT.NONE);
        column.setLayout(tight(2));
        column.setLayoutData(new GridData(SWT.FILL, SWT.FILL, false, true));
        heading = new Label(column, SWT.NONE);
        heading.setText(Messages.get("palette.title"));
        GridData place = new GridData(SWT.FILL, SWT.CENTER, true, false);
        place.horizontalIndent = EDGE_PX;
        heading.setLayoutData(place);
        ToolBar bar = new ToolBar(column, SWT.FLAT);
        fold = new ToolItem(bar, SWT.PUSH);
        fold.addListener(SWT.Selection, event -> show(!isOpen()));
        edge = new Sash(area, SWT.VERTICAL);
        GridData narrow = new GridData(SWT.FILL, SWT.FILL, false, true);
        narrow.widthHint = EDGE_PX;
        edge.setLayoutData(narrow);
        edge.addListener(SWT.Selection, event -> widen(event.x));
    }

    private static GridLayout tight(int columns) {
        GridLayout layout = new GridLayout(columns, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        layout.horizontalSpacing = 0;
        layout.verticalSpacing = 0;
        return layout;
    }

    /** Returns where the plan is to be made. */
    public Composite area() {
        return area;
    }

    /**
     * Fills the column.
     *
     * @param domain says what is offered and which tool is chosen
     * @param plan   takes the focus when a tool was chosen
     */
    public void fill(DefaultEditDomain domain, Supplier<Control> plan) {
        PaletteViewer viewer = new ThemedPalette(column);
        domain.setPaletteViewer(viewer);
        viewer.addDragSourceListener(new TemplateTransferDragSourceListener(viewer));
        PaletteFocus.install(viewer, plan);
        entries = viewer.getControl();
        root = viewer.getPaletteRoot();
        entries.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true, 2, 1));
        AccessibleName.give(entries, Messages.get("palette.title"));
        AccessibleName.give(fold.getParent(), Messages.get("palette.fold"));
        show(true);
    }

    /** Returns whether the palette is open. */
    public boolean isOpen() {
        return entries.getVisible();
    }

    /** Opens the palette, or folds it away but for the button that opens it again. */
    public void show(boolean open) {
        for (Control part : new Control[] {entries, heading}) {
            part.setVisible(open);
            ((GridData) part.getLayoutData()).exclude = !open;
        }
        fold.setText(open ? CLOSES : OPENS);
        fold.setToolTipText(Messages.get(open ? "palette.fold" : "palette.unfold"));
        edge.setEnabled(open);
        ((GridData) column.getLayoutData()).widthHint = open ? preferred() : SWT.DEFAULT;
        area.layout(true, true);
    }

    /** Room for the longest name, within reason: in some languages a helipad is a long word. */
    private int preferred() {
        GC gc = new GC(entries);
        double letter = gc.getFontMetrics().getAverageCharacterWidth();
        int longest = names(root).stream().mapToInt(name -> gc.textExtent(name).x).max().orElse(0) + BESIDE_NAME_PX;
        gc.dispose();
        return (int) Math.min(Math.max(longest, letter * CHARACTERS), letter * MOST_CHARACTERS);
    }

    private static List<String> names(PaletteEntry entry) {
        List<String> names = new ArrayList<>();
        Optional.ofNullable(entry.getLabel()).ifPresent(names::add);
        if (entry instanceof PaletteContainer container) {
            for (Object child : container.getChildren()) {
                names.addAll(names((PaletteEntry) child));
            }
        }
        return names;
    }

    private void widen(int px) {
        ((GridData) column.getLayoutData()).widthHint = Math.max(LEAST_PX, Math.min(px, area.getClientArea().width / 2));
        area.layout(true, true);
    }
}
