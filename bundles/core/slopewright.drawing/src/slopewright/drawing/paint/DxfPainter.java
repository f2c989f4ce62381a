package slopewright.drawing.paint;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

import slopewright.drawing.internal.layout.FrameCut;
import slopewright.drawing.plan.GridPlacement;
import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.Style;
import slopewright.drawing.sheet.Sheet;

/**
 * Paints a scene as a drawing exchange file (the ASCII form of release 12, which every reader takes): one layer an ink, coordinates in
 * scene units, the vertical ones multiplied by the exaggeration.
 */
public final class DxfPainter {

    private static final String SHEET_LAYER = "SHEET";
    private static final String WHITE_OR_BLACK = "7";

    private final Scene scene;
    private final double unitsPerMm;
    private final GridPlacement placement;
    private final List<Mark> sheet = new ArrayList<>();
    private final StringBuilder dxf = new StringBuilder();
    private boolean onSheet;

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

    /**
     * Paints a sheet of drawing paper on the grid of the aerodrome: the scene in metres, and border, key and title block around it on a
     * layer of their own.
     *
     * @param paper     the sheet
     * @param placement brings it onto the grid
     * @return the file
     */
    public static String paint(Sheet paper, GridPlacement placement) {
        Scene scene = paper.scene();
        ScenePoint from = paper.frame().get(0);
        double units = (scene.maxX() - scene.minX()) / (paper.frame().get(1).x() - from.x());
        DxfPainter painter = new DxfPainter(scene, units, placement);
        paper.below().forEach(mark -> painter.sheet.add(painter.inScene(mark, from)));
        return painter.paintAll();
    }

    /** Brings a mark from paper into the scene. */
    private Mark inScene(Mark mark, ScenePoint from) {
        if (mark instanceof Mark.Path path) {
            return new Mark.Path(path.points().stream().map(point -> inScene(point, from)).toList(), path.closed(), path.style(), "");
        } else if (mark instanceof Mark.Disc disc) {
            return new Mark.Disc(inScene(disc.centre(), from), disc.radiusMm(), disc.style(), "");
        }
        Mark.Label label = (Mark.Label) mark;
        return new Mark.Label(inScene(label.at(), from), label.text(), label.anchor(), label.sizeMm(), 0, label.ink(), "");
    }

    private ScenePoint inScene(ScenePoint point, ScenePoint from) {
        return new ScenePoint(scene.minX() + (point.x() - from.x()) * unitsPerMm,
                scene.maxY() - (point.y() - from.y()) * unitsPerMm / scene.exaggeration());
    }

    private String paintAll() {
        pair(0, "SECTION").pair(2, "HEADER").pair(9, "$ACADVER").pair(1, "AC1009");
        extent();
        pair(0, "ENDSEC");
        layers();
        pair(0, "SECTION").pair(2, "ENTITIES");
        inFrame().forEach(this::mark);
        onSheet = true;
        sheet.forEach(this::mark);
        pair(0, "ENDSEC").pair(0, "EOF");
        return dxf.toString();
    }

    /** Returns the marks of the scene; on drawing paper they end at the frame. */
    private List<Mark> inFrame() {
        if (sheet.isEmpty()) {
            return scene.marks();
        }
        FrameCut frame = new FrameCut(scene);
        List<Mark> inside = new ArrayList<>();
        for (Mark mark : scene.marks()) {
            if (mark instanceof Mark.Path path) {
                inside.addAll(frame.cut(path));
            } else if (frame.holds(mark instanceof Mark.Disc disc ? disc.centre() : ((Mark.Label) mark).at())) {
                inside.add(mark);
            }
        }
        return inside;
    }

    private void mark(Mark mark) {
        if (mark instanceof Mark.Path path) {
            path(path);
        } else if (mark instanceof Mark.Disc disc) {
            pair(0, "CIRCLE").layer(inkOf(disc.style())).point(10, disc.centre()).pair(40, disc.radiusMm() * unitsPerMm);
        } else if (mark instanceof Mark.Label label) {
            label(label);
        }
    }

    /** Writes the layer of an ink; on the sheet all inks share one and keep their colours. */
    private DxfPainter layer(Ink ink) {
        return onSheet ? pair(8, SHEET_LAYER).pair(62, String.valueOf(ink.index())) : pair(8, ink.layer());
    }

    private void extent() {
        List<ScenePoint> corners = new ArrayList<>(List.of(new ScenePoint(scene.minX(), scene.minY()),
                new ScenePoint(scene.maxX(), scene.minY()), new ScenePoint(scene.maxX(), scene.maxY()), new ScenePoint(scene.minX(), scene
                        .maxY())));
        sheet.stream().filter(Mark.Path.class::isInstance).forEach(mark -> corners.addAll(((Mark.Path) mark).points()));
        corners.replaceAll(this::placed);
        pair(9, "$EXTMIN").pair(10, corners.stream().mapToDouble(ScenePoint::x).min().orElseThrow()).pair(20, corners.stream()
                .mapToDouble(ScenePoint::y).min().orElseThrow());
        pair(9, "$EXTMAX").pair(10, corners.stream().mapToDouble(ScenePoint::x).max().orElseThrow()).pair(20, corners.stream()
                .mapToDouble(ScenePoint::y).max().orElseThrow());
    }

    private ScenePoint placed(ScenePoint point) {
        return placement.place().apply(new ScenePoint(point.x(), point.y() * scene.exaggeration()));
    }

    private void layers() {
        Map<String, String> inks = new TreeMap<>(Map.of(Ink.TEXT.layer(), String.valueOf(Ink.TEXT.index())));
        if (!sheet.isEmpty()) {
            inks.put(SHEET_LAYER, WHITE_OR_BLACK);
        }
        for (Mark mark : scene.marks()) {
            if (mark instanceof Mark.Path path) {
                take(inks, inkOf(path.style()));
            } else if (mark instanceof Mark.Disc disc) {
                take(inks, inkOf(disc.style()));
            } else if (mark instanceof Mark.Label label) {
                take(inks, label.ink());
            }
        }
        pair(0, "SECTION").pair(2, "TABLES").pair(0, "TABLE").pair(2, "LTYPE").pair(70, "2");
        pair(0, "LTYPE").pair(2, "CONTINUOUS").pair(70, "0").pair(3, "Solid line").pair(72, "65").pair(73, "0").pair(40, 0);
        pair(0, "LTYPE").pair(2, "DASHED").pair(70, "0").pair(3, "Dashed").pair(72, "65").pair(73, "2").pair(40, 3.2 * unitsPerMm)
                .pair(49, 2 * unitsPerMm).pair(49, -1.2 * unitsPerMm);
        pair(0, "ENDTAB").pair(0, "TABLE").pair(2, "LAYER").pair(70, String.valueOf(inks.size()));
        inks.forEach((layer, colour) -> pair(0, "LAYER").pair(2, layer).pair(70, "0").pair(62, colour).pair(6, "CONTINUOUS"));
        pair(0, "ENDTAB").pair(0, "ENDSEC");
    }

    private static void take(Map<String, String> layers, Ink ink) {
        layers.put(ink.layer(), String.valueOf(ink.index()));
    }

    /** Returns the ink whose layer a mark belongs to: that of its outline, or of what a thin outline of no meaning encloses. */
    private static Ink inkOf(Style style) {
        boolean enclosed = style.line() == Ink.DIMENSION && style.fill() != Ink.NONE && style.fill() != Ink.PAPER;
        return style.line() == Ink.NONE || enclosed ? style.fill() : style.line();
    }

    private void path(Mark.Path path) {
        Ink ink = inkOf(path.style());
        pair(0, "POLYLINE").layer(ink);
        if (path.style().dashed()) {
            pair(6, "DASHED");
        }
        pair(66, "1").pair(70, path.closed() ? "1" : "0").pair(10, 0).pair(20, 0).pair(30, 0);
        for (ScenePoint point : path.points()) {
            pair(0, "VERTEX").layer(ink).point(10, point);
        }
        pair(0, "SEQEND").layer(ink);
    }

    private void label(Mark.Label label) {
        String plain = plain(label.text());
        ScenePoint at = new ScenePoint(label.at().x(), label.at().y() + label.dyMm() * unitsPerMm / scene.exaggeration());
        pair(0, "TEXT").layer(label.ink()).point(10, at).pair(40, label.sizeMm() * unitsPerMm).pair(1, plain);
        if (placement.turnDeg() != 0) {
            pair(50, placement.turnDeg());
        }
        pair(72, String.valueOf(label.anchor().ordinal())).point(11, at);
    }

    /** Writes a text in the characters that every reader of the release has: letters of other alphabets as they are spelt without them. */
    private static String plain(String text) {
        String spelt = text.replace("ä", "ae").replace("ö", "oe").replace("ü", "ue").replace("Ä", "Ae").replace("Ö", "Oe")
                .replace("Ü", "Ue").replace("ß", "ss").replace("°", "%%d").replace('\u2032', '\'').replace('\u2033', '"')
                .replace('\u00b7', '-').replace('\u2212', '-');
        return Normalizer.normalize(spelt, Normalizer.Form.NFD).replaceAll("\\p{M}+", "").replaceAll("[^\\x20-\\x7e]", "?");
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
