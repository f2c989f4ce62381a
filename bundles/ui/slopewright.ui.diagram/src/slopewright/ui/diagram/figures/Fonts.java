package slopewright.ui.diagram.figures;

import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.jface.resource.ResourceManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.widgets.Control;

/** Fonts of a diagram, in the sizes of a drawing on paper; they live as long as its control. */
public final class Fonts {

    /** Pixels for a millimetre on paper: what is 25.4 mm on paper takes 90 pixels. */
    public static final double PX_PER_MM = 90 / 25.4;

    private static final double CAPITALS_SHARE = 0.73;
    private static final double POINTS_PER_INCH = 72;
    private static final int LEAST_POINTS = 6;

    private final Control control;
    private final ResourceManager resources;

    /** Makes the fonts of a control. */
    public Fonts(Control control) {
        this.control = control;
        this.resources = new LocalResourceManager(JFaceResources.getResources(), control);
    }

    /**
     * Returns the font whose capitals have a height.
     *
     * @param capitalsMm height of capitals on paper, millimetres
     */
    public Font of(double capitalsMm) {
        return of(capitalsMm, SWT.NORMAL);
    }

    /** Returns the bold font whose capitals have a height, millimetres. */
    public Font bold(double capitalsMm) {
        return of(capitalsMm, SWT.BOLD);
    }

    private Font of(double capitalsMm, int style) {
        double px = capitalsMm * PX_PER_MM / CAPITALS_SHARE;
        int points = (int) Math.max(LEAST_POINTS, Math.round(px * POINTS_PER_INCH / control.getDisplay().getDPI().y));
        return resources.create(FontDescriptor.createFrom(JFaceResources.getDialogFont()).setHeight(points).setStyle(style));
    }
}
