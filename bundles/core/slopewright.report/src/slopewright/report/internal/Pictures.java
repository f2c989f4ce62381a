package slopewright.report.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import slopewright.drawing.Scene;
import slopewright.drawing.SvgPainter;

/** The drawings of a document: vector graphics inside it, or places that are painted when it is laid out. */
public final class Pictures {

    /** Width of a drawing in a document. */
    public static final double WIDTH_MM = 178;

    /** Greatest height of a drawing in a document. */
    public static final double HEIGHT_MM = 105;

    private final boolean inline;
    private final List<Scene> scenes = new ArrayList<>();

    /** Starts a collection; inline puts vector graphics into the document. */
    public Pictures(boolean inline) {
        this.inline = inline;
    }

    /** Adds a scene and returns its markup. */
    String add(Scene scene) {
        scenes.add(scene);
        if (inline) {
            return SvgPainter.paint(scene, WIDTH_MM, HEIGHT_MM).replace("id=\"frame\"", "id=\"frame" + scenes.size() + "\"")
                    .replace("url(#frame)",
                    "url(#frame" + scenes.size() + ")");
        }
        double height = new ScenePainter(scene, WIDTH_MM, HEIGHT_MM).heightMm();
        return String.format(Locale.ROOT, "<object type=\"drawing/scene\" data=\"%d\" style=\"width:%.1fmm;height:%.1fmm\"></object>",
                scenes.size() - 1,
                WIDTH_MM, height);
    }

    /** Returns a scene by its number. */
    Scene scene(int index) {
        return scenes.get(index);
    }
}
