package slopewright.report.internal.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import slopewright.drawing.paint.SvgPainter;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.sheet.Sheet;
import slopewright.report.internal.html.Html;

/** The drawings of a document: vector graphics inside it, or places that are painted when it is laid out. */
public final class Pictures {

    /** Width of a drawing in a document. */
    public static final double WIDTH_MM = 178;

    /** Greatest height of a drawing in a document. */
    public static final double HEIGHT_MM = 92;

    private final boolean inline;
    private final Fonts fonts = new Fonts();
    private final List<ScenePainter> painters = new ArrayList<>();
    private int count;

    /** Starts a collection; inline puts vector graphics into the document. */
    public Pictures(boolean inline) {
        this.inline = inline;
    }

    /** Adds a scene and returns its markup. */
    public String add(Scene scene) {
        return add(scene, WIDTH_MM, HEIGHT_MM);
    }

    /** Adds a scene of a size and returns its markup. */
    public String add(Scene scene, double widthMm, double heightMm) {
        Sheet sheet = Sheet.of(scene, widthMm, heightMm);
        count++;
        if (inline) {
            return SvgPainter.paint(sheet, "frame" + count);
        }
        ScenePainter painter = new ScenePainter(sheet, fonts);
        painters.add(painter);
        return String.format(Locale.ROOT, "<object type=\"drawing/scene\" data=\"%d\" title=\"%s\" alt=\"%s\" "
                + "style=\"width:%.1fmm;height:%.1fmm\"></object>", painters.size() - 1, Html.escaped(scene.title()), Html.escaped(scene
                .title() + ". " + String.join(" ", scene.captions())), widthMm, painter.heightMm());
    }

    /** Returns the painter of a scene by its number. */
    ScenePainter painter(int index) {
        return painters.get(index);
    }
}
