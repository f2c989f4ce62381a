package slopewright.ui.diagram.figures;

import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.jface.resource.ResourceManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.widgets.Control;

import slopewright.ui.theme.TypeScale;

/**
 * Fonts of a diagram, in the sizes of a drawing on paper; they live as long as its control. Where the desktop's letters are larger than
 * usual, the paper is larger too: letters, symbols and the distances between them grow alike.
 */
public final class Fonts {

    /** Where letters have their usual size, what is 25.4 mm on paper takes 90 pixels. */
    private static final double USUAL_PX_PER_MM = 90 / 25.4;
    private static final double CAPITALS_SHARE = 0.73;
    private static final double POINTS_PER_INCH = 72;
    private static final int LEAST_POINTS = 6;

    private final Control control;
    private final ResourceManager resources;
    private final double pxPerMm;

    /** Makes the fonts of a control. */
    public Fonts(Control control) {
        this.control = control;
        this.resources = new LocalResourceManager(JFaceResources.getResources(), control);
        this.pxPerMm = USUAL_PX_PER_MM * TypeScale.factor();
    }

    /** Returns how many pixels a millimetre on paper takes. */
    public double pxPerMm() {
        return pxPerMm;
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
        double px = capitalsMm * pxPerMm / CAPITALS_SHARE;
        int points = (int) Math.max(LEAST_POINTS, Math.round(px * POINTS_PER_INCH / control.getDisplay().getDPI().y));
        return resources.create(FontDescriptor.createFrom(JFaceResources.getDialogFont()).setHeight(points).setStyle(style));
    }
}
