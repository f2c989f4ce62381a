package slopewright.drawing.paint;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import slopewright.drawing.internal.layout.FrameCut;
import slopewright.drawing.plan.GridPlacement;
import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.Style;
import slopewright.drawing.sheet.Sheet;

/**
 * Paints a scene as a drawing exchange file of release 2007 in UTF-8: one layer an ink, coordinates in scene units, the vertical ones
 * multiplied by the exaggeration. A sheet becomes a layout of paper with a viewport; light units are blocks with attributes at their true
 * heights, distances real dimensions.
 */
public final class DxfPainter {

    private static final String SHEET_LAYER = "SHEET";
    private static final int WHITE_OR_BLACK = 7;
    private static final double BESIDE = 0.06;
    private static final double LEAST_M = 0.01;
    private static final double[] NO_PAPER_MM = {420, 297};

    private final Scene scene;
    private final double unitsPerMm;
    private final GridPlacement placement;
    private final List<DxfUnit> units;
    private final Optional<Sheet> sheet;
    private final DxfFile dxf;

    private DxfPainter(Scene scene, double unitsPerMm, GridPlacement placement, List<DxfUnit> units, Optional<Sheet> sheet) {
        this.scene = scene;
        this.unitsPerMm = unitsPerMm;
        this.placement = placement;
        this.units = units;
        this.sheet = sheet;
        dxf = new DxfFile(unitsPerMm);
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
        return new DxfPainter(scene, (scene.maxX() - scene.minX()) / widthMm, placement, List.of(), Optional.empty()).paintAll();
    }

    /**
     * Paints a sheet of drawing paper: the scene in model space on the grid of the aerodrome, border, key and title block in a layout of
     * paper, with a viewport that shows the scene at its scale.
     *
     * @param paper     the sheet
     * @param placement brings it onto the grid
     * @param units     the light units to insert; none for a section
     * @param levels    points at their true heights; none for a section
     * @return the file
     */
    public static String paint(Sheet paper, GridPlacement placement, List<DxfUnit> units, List<DxfLevel> levels) {
        Scene scene = paper.scene();
        double scale = (scene.maxX() - scene.minX()) / (paper.frame().get(1).x() - paper.frame().get(0).x());
        DxfPainter painter = new DxfPainter(scene, scale, placement, units, Optional.of(paper));
        levels.forEach(painter::level);
        return painter.paintAll();
    }

    private String paintAll() {
        inFrame().forEach(this::mark);
        for (DxfUnit unit : units) {
            ScenePoint at = placed(unit.place());
            dxf.unit(unit, at.x(), at.y(), placement.turnDeg(), unitsPerMm);
        }
        dimensions();
        dxf.onPaper();
        sheet.ifPresent(paper -> paper.below().forEach(mark -> onPaper(mark, paper.heightMm())));
        return dxf.text(extent(), window(), sheet.map(this::viewHeight).orElse(1.0));
    }

    /** The distances of the bars from the origin, and between neighbouring units of a bar, as dimensions that measure themselves. */
    private void dimensions() {
        if (units.isEmpty()) {
            return;
        }
        double low = scene.minY() + BESIDE * (scene.maxY() - scene.minY());
        double out = BESIDE * (scene.maxX() - scene.minX());
        double before = 0;
        for (double along : units.stream().map(unit -> unit.place().x()).distinct().sorted().toList()) {
            if (Math.abs(along - before) > LEAST_M) {
                dimension(new ScenePoint(before, 0), new ScenePoint(along, 0), new ScenePoint(before, low));
                before = along;
            }
            List<DxfUnit> bar = units.stream().filter(unit -> unit.place().x() == along)
                    .sorted(Comparator.comparingDouble(unit -> unit.place().y())).toList();
            for (int i = 1; i < bar.size(); i++) {
                ScenePoint first = bar.get(i - 1).place();
                dimension(first, bar.get(i).place(), new ScenePoint(along + out, first.y()));
            }
        }
    }

    private void level(DxfLevel level) {
        ScenePoint at = placed(level.place());
        dxf.entity("POINT", level.layer().layer(), level.layer().index(), -1).pair(100, "AcDbPoint").point(10, at.x(), at.y(),
                level.elevationM());
    }

    private void dimension(ScenePoint from, ScenePoint to, ScenePoint line) {
        dxf.dimension(pair(placed(from)), pair(placed(to)), pair(placed(line)), String.format(Locale.ROOT, "%.2f", Math.hypot(to.x()
                - from.x(), to.y() - from.y())));
    }

    private static double[] pair(ScenePoint point) {
        return new double[] {point.x(), point.y()};
    }

    private double viewHeight(Sheet paper) {
        return (paper.frame().get(1).y() - paper.frame().get(0).y()) * unitsPerMm;
    }

    private DxfFile.Window window() {
        if (sheet.isEmpty()) {
            return new DxfFile.Window(0, 0, 0, 0, 0, 0, 0, NO_PAPER_MM);
        }
        Sheet paper = sheet.get();
        ScenePoint from = paper.frame().get(0);
        ScenePoint to = paper.frame().get(1);
        ScenePoint middle = placement.place().apply(new ScenePoint((scene.minX() + scene.maxX()) / 2, scene.maxY() * scene.exaggeration()
                - viewHeight(paper) / 2));
        double turn = Math.toRadians(placement.turnDeg());
        return new DxfFile.Window((from.x() + to.x()) / 2, paper.heightMm() - (from.y() + to.y()) / 2, to.x() - from.x(), to.y()
                - from.y(), middle.x() * Math.cos(turn) + middle.y() * Math.sin(turn), middle.y() * Math.cos(turn) - middle.x() * Math.sin(
                        turn), -placement.turnDeg(), new double[] {paper.widthMm(), paper.heightMm()});
    }

    /** Writes a mark of border, key or title block in millimetres from the lower left corner of the paper. */
    private void onPaper(Mark mark, double heightMm) {
        if (mark instanceof Mark.Path path) {
            dxf.entity("LWPOLYLINE", SHEET_LAYER, WHITE_OR_BLACK, inkOf(path.style()).index()).pair(100, "AcDbPolyline")
                    .pair(90, String.valueOf(path.points().size())).pair(70, path.closed() ? "1" : "0");
            path.points().forEach(point -> dxf.pair(10, point.x()).pair(20, heightMm - point.y()));
        } else if (mark instanceof Mark.Disc disc) {
            dxf.entity("CIRCLE", SHEET_LAYER, WHITE_OR_BLACK, inkOf(disc.style()).index()).pair(100, "AcDbCircle")
                    .point(10, disc.centre().x(), heightMm - disc.centre().y(), 0).pair(40, disc.radiusMm());
        } else if (mark instanceof Mark.Label label) {
            text(label, SHEET_LAYER, label.ink().index(), new ScenePoint(label.at().x(), heightMm - label.at().y()), label.sizeMm(), 0);
        }
    }

    private void text(Mark.Label label, String layer, int own, ScenePoint at, double letters, double turnDeg) {
        dxf.entity("TEXT", layer, label.ink().index(), own).pair(100, "AcDbText").point(10, at.x(), at.y(), 0).pair(40, letters)
                .pair(1, DxfFile.plain(label.text()));
        if (turnDeg != 0) {
            dxf.pair(50, turnDeg);
        }
        dxf.pair(7, DxfFile.STYLE).pair(72, String.valueOf(label.anchor().ordinal())).point(11, at.x(), at.y(), 0).pair(100, "AcDbText");
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
            if (inkOf(path.style()) != Ink.PAPER) {
                path(path);
            }
        } else if (mark instanceof Mark.Disc disc) {
            Ink ink = inkOf(disc.style());
            ScenePoint at = placed(disc.centre());
            dxf.entity("CIRCLE", ink.layer(), ink.index(), -1).pair(100, "AcDbCircle").point(10, at.x(), at.y(), 0)
                    .pair(40, disc.radiusMm() * unitsPerMm);
        } else if (mark instanceof Mark.Label label) {
            text(label, label.ink().layer(), -1, placed(new ScenePoint(label.at().x(), label.at().y() + label.dyMm() * unitsPerMm
                    / scene.exaggeration())), label.sizeMm() * unitsPerMm, placement.turnDeg());
        }
    }

    /** What only hides lines under a text has no place among lines that are measured. */
    private void path(Mark.Path path) {
        Ink ink = inkOf(path.style());
        dxf.entity("LWPOLYLINE", ink.layer(), ink.index(), -1);
        if (path.style().dashed()) {
            dxf.pair(6, "DASHED");
        }
        dxf.pair(100, "AcDbPolyline").pair(90, String.valueOf(path.points().size())).pair(70, path.closed() ? "1" : "0");
        path.points().stream().map(this::placed).forEach(point -> dxf.pair(10, point.x()).pair(20, point.y()));
    }

    private double[] extent() {
        List<ScenePoint> corners = new ArrayList<>(List.of(new ScenePoint(scene.minX(), scene.minY()),
                new ScenePoint(scene.maxX(), scene.minY()), new ScenePoint(scene.maxX(), scene.maxY()), new ScenePoint(scene.minX(), scene
                        .maxY())));
        corners.replaceAll(this::placed);
        return new double[] {corners.stream().mapToDouble(ScenePoint::x).min().orElseThrow(), corners.stream().mapToDouble(ScenePoint::y)
                .min().orElseThrow(), corners.stream().mapToDouble(ScenePoint::x).max().orElseThrow(), corners.stream().mapToDouble(
                        ScenePoint::y).max().orElseThrow()};
    }

    private ScenePoint placed(ScenePoint point) {
        return placement.place().apply(new ScenePoint(point.x(), point.y() * scene.exaggeration()));
    }

    /** Returns the ink whose layer a mark belongs to: that of its outline, or of what a thin outline of no meaning encloses. */
    private static Ink inkOf(Style style) {
        boolean enclosed = style.line() == Ink.DIMENSION && style.fill() != Ink.NONE && style.fill() != Ink.PAPER;
        return style.line() == Ink.NONE || enclosed ? style.fill() : style.line();
    }
}
