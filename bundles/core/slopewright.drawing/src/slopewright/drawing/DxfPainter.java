package slopewright.drawing;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;

/**
 * Paints a scene as a drawing exchange file (the ASCII form of release 12, which every reader takes): one layer an ink, coordinates in
 * scene units, the vertical ones multiplied by the exaggeration.
 */
public final class DxfPainter {

    private final Scene scene;
    private final double unitsPerMm;
    private final GridPlacement placement;
    private final StringBuilder dxf = new StringBuilder();

    private DxfPainter(Scene scene, double unitsPerMm, GridPlacement placement) {
        this.scene = scene;
        this.unitsPerMm = unitsPerMm;
        this.placement = placement;
    }

    /**
     * Paints a scene.
     *
     * @param scene   the scene
     * @param widthMm width of the paper that text and discs are sized for
     * @return the file
     */
    public static String paint(Scene scene, double widthMm) {
        return paint(scene, widthMm, GridPlacement.none());
    }

    /**
     * Paints a plan on the grid of the aerodrome.
     *
     * @param scene     the scene
     * @param widthMm   width of the paper that text and discs are sized for
     * @param placement brings it onto the grid
     * @return the file
     */
    public static String paint(Scene scene, double widthMm, GridPlacement placement) {
        return new DxfPainter(scene, (scene.maxX() - scene.minX()) / widthMm, placement).paintAll();
    }

    private String paintAll() {
        pair(0, "SECTION").pair(2, "HEADER").pair(9, "$ACADVER").pair(1, "AC1009");
        extent();
        pair(0, "ENDSEC");
        layers();
        pair(0, "SECTION").pair(2, "ENTITIES");
        for (Mark mark : scene.marks()) {
            if (mark instanceof Mark.Path path) {
                path(path);
            } else if (mark instanceof Mark.Disc disc) {
                Ink ink = disc.style().fill() == Ink.NONE ? disc.style().line() : disc.style().fill();
                pair(0, "CIRCLE").pair(8, ink.layer()).point(10, disc.centre()).pair(40, disc.radiusMm() * unitsPerMm);
            } else if (mark instanceof Mark.Label label) {
                label(label);
            }
        }
        pair(0, "ENDSEC").pair(0, "EOF");
        return dxf.toString();
    }

    private void extent() {
        List<ScenePoint> corners = List.of(new ScenePoint(scene.minX(), scene.minY()), new ScenePoint(scene.maxX(), scene.minY()),
                new ScenePoint(scene.maxX(), scene.maxY()), new ScenePoint(scene.minX(), scene.maxY())).stream().map(this::placed).toList();
        pair(9, "$EXTMIN").pair(10, corners.stream().mapToDouble(ScenePoint::x).min().orElseThrow()).pair(20, corners.stream()
                .mapToDouble(ScenePoint::y).min().orElseThrow());
        pair(9, "$EXTMAX").pair(10, corners.stream().mapToDouble(ScenePoint::x).max().orElseThrow()).pair(20, corners.stream()
                .mapToDouble(ScenePoint::y).max().orElseThrow());
    }

    private ScenePoint placed(ScenePoint point) {
        return placement.place().apply(new ScenePoint(point.x(), point.y() * scene.exaggeration()));
    }

    private void layers() {
        Set<Ink> inks = new TreeSet<>(Set.of(Ink.TEXT));
        for (Mark mark : scene.marks()) {
            if (mark instanceof Mark.Path path) {
                inks.add(inkOf(path.style()));
            } else if (mark instanceof Mark.Disc disc) {
                inks.add(disc.style().fill() == Ink.NONE ? disc.style().line() : disc.style().fill());
            } else if (mark instanceof Mark.Label label) {
                inks.add(label.ink());
            }
        }
        pair(0, "SECTION").pair(2, "TABLES").pair(0, "TABLE").pair(2, "LTYPE").pair(70, "2");
        pair(0, "LTYPE").pair(2, "CONTINUOUS").pair(70, "0").pair(3, "Solid line").pair(72, "65").pair(73, "0").pair(40, 0);
        pair(0, "LTYPE").pair(2, "DASHED").pair(70, "0").pair(3, "Dashed").pair(72, "65").pair(73, "2").pair(40, 3.2 * unitsPerMm)
                .pair(49, 2 * unitsPerMm).pair(49, -1.2 * unitsPerMm);
        pair(0, "ENDTAB").pair(0, "TABLE").pair(2, "LAYER").pair(70, String.valueOf(inks.size()));
        for (Ink ink : inks) {
            pair(0, "LAYER").pair(2, ink.layer()).pair(70, "0").pair(62, String.valueOf(ink.index())).pair(6, "CONTINUOUS");
        }
        pair(0, "ENDTAB").pair(0, "ENDSEC");
    }

    private static Ink inkOf(Style style) {
        return style.line() == Ink.NONE ? style.fill() : style.line();
    }

    private void path(Mark.Path path) {
        String layer = inkOf(path.style()).layer();
        pair(0, "POLYLINE").pair(8, layer);
        if (path.style().dashed()) {
            pair(6, "DASHED");
        }
        pair(66, "1").pair(70, path.closed() ? "1" : "0").pair(10, 0).pair(20, 0).pair(30, 0);
        for (ScenePoint point : path.points()) {
            pair(0, "VERTEX").pair(8, layer).point(10, point);
        }
        pair(0, "SEQEND").pair(8, layer);
    }

    private void label(Mark.Label label) {
        String plain = label.text().replace("°", "%%d").replace('\u2032', '\'').replace('\u2033', '"').replace('\u00b7', '-')
                .replaceAll("[^\\x20-\\x7e]", "?");
        ScenePoint at = new ScenePoint(label.at().x(), label.at().y() + label.dyMm() * unitsPerMm / scene.exaggeration());
        pair(0, "TEXT").pair(8, label.ink().layer()).point(10, at).pair(40, label.sizeMm() * unitsPerMm).pair(1, plain);
        if (placement.turnDeg() != 0) {
            pair(50, placement.turnDeg());
        }
        pair(72, String.valueOf(label.anchor().ordinal())).point(11, at);
    }

    private DxfPainter point(int code, ScenePoint point) {
        ScenePoint placed = placed(point);
        return pair(code, placed.x()).pair(code + 10, placed.y()).pair(code + 20, 0);
    }

    private DxfPainter pair(int code, double value) {
        return pair(code, String.format(Locale.ROOT, "%.6f", value + 0.0));
    }

    private DxfPainter pair(int code, String value) {
        dxf.append(String.format(Locale.ROOT, "%3d", code)).append('\n').append(value).append('\n');
        return this;
    }
}
