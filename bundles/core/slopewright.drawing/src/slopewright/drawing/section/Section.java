package slopewright.drawing.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import slopewright.drawing.internal.obstacles.DrawnObstacle;
import slopewright.drawing.internal.obstacles.DrawnObstacles;
import slopewright.drawing.internal.obstacles.ObstacleTexts;
import slopewright.drawing.internal.obstacles.OmittedObstacles;
import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.LegendEntry;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.scene.Style;
import slopewright.drawing.scene.TextMeasure;
import slopewright.evaluation.Attempt;
import slopewright.evaluation.obstacles.ObstacleComparison;
import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.geometry.ProtectionSurface;
import slopewright.messages.Words;
import slopewright.model.AeroplaneGroup;
import slopewright.model.GlidePathAid;
import slopewright.siting.GlidePathIntercept;
import slopewright.siting.Siting;
import slopewright.siting.SurfacePlan;
import slopewright.siting.UnitPlan;

/**
 * A vertical section along the approach, for screen and paper: distance from the threshold to the right in the landing direction, height
 * above the threshold upward, differences of elevations without curvature. It shows what every beam tells between its edges, the obstacle
 * surface with everything that was compared with it, the glide path, and the wheels of a group of aeroplanes. It draws the part that a
 * window
 * shows, with symbols and texts of the same size at every scale.
 */
public final class Section {

    /** Height of capitals, millimetres. */
    public static final double LETTERS_MM = 2;

    private static final double SMALL_MM = 2.05;
    private static final int MOST_TEXTS = 24;
    private static final double TICK_MM = 1.4;
    private static final double TICKS_EVERY_MM = 26;
    private static final double LEAST_REACH_M = 1200;
    private static final double MOST_REACH_M = 6000;
    private static final double LEAST_DIMENSION_MM = 6;
    private static final double EYE_MM = 0.6;

    private final DrawnAid drawn;
    private final Siting siting;
    private final DrawnObstacles obstacles;
    private final ObstacleTexts obstacleTexts;
    private final Optional<AeroplaneGroup> aeroplanes;
    private final TextMeasure measure;
    private final Optional<GlidePathIntercept> glidePath;
    private final SectionTerrain terrain;

    /**
     * Prepares a section.
     *
     * @param drawn      the aid
     * @param aeroplanes the group whose wheels are drawn; empty for none
     * @param measure    how wide texts are
     */
    public Section(DrawnAid drawn, Optional<AeroplaneGroup> aeroplanes, TextMeasure measure) {
        this.drawn = Objects.requireNonNull(drawn);
        this.siting = drawn.siting();
        this.obstacles = DrawnObstacles.of(drawn);
        this.obstacleTexts = new ObstacleTexts(drawn, obstacles);
        this.aeroplanes = aeroplanes.filter(group -> group.getEyeToWheelM() != null);
        this.measure = Objects.requireNonNull(measure);
        glidePath = intercept(drawn);
        terrain = new SectionTerrain(drawn);
    }

    /** Returns the aid that is drawn. */
    public DrawnAid drawn() {
        return drawn;
    }

    /** Returns the layout that is drawn. */
    public Siting siting() {
        return siting;
    }

    /** Returns height of the wheels of the chosen group over the threshold on the lowest on-slope signal, metres; empty for no group. */
    public Optional<Double> wheelHeightM() {
        return aeroplanes.map(group -> siting.mehtM() - group.getEyeToWheelM());
    }

    /**
     * Returns what has to be seen of the whole approach: as far out as what stands within the obstacle surface, at most 6 km, and as far as
     * the governing obstacle and everything through the surface, however far that is.
     */
    public SectionWindow whole(double widthMm, double heightMm) {
        double reach = LEAST_REACH_M;
        double top = 0;
        for (DrawnObstacle obstacle : obstacles.worstFirst()) {
            if (obstacle.isThrough() || obstacles.isGoverning(obstacle.compared())) {
                reach = Math.max(reach, -obstacle.extent().firstM() * 1.1);
                top = Math.max(top, obstacle.extent().topM() * 1.1);
            } else if (obstacle.isInside()) {
                reach = Math.max(reach, Math.min(MOST_REACH_M, -obstacle.extent().firstM() * 1.15));
            }
        }
        for (FramePoint point : obstacles.blocks().stream().flatMap(block -> block.above().stream()).toList()) {
            reach = Math.max(reach, -point.alongM() * 1.1);
            top = Math.max(top, point.heightM() * 1.1);
        }
        for (ObstacleComparison compared : obstacles.blocks().stream().flatMap(block -> block.compared().stream()).toList()) {
            double far = -compared.worst().point().alongM() * 1.1;
            reach = Math.max(reach, obstacles.isGoverning(Optional.of(compared)) ? far : Math.min(MOST_REACH_M, far));
        }
        for (DrawnObstacles.Topless topless : obstacles.topless()) {
            reach = Math.max(reach, Math.min(MOST_REACH_M, -topless.place().alongM() * 1.1));
        }
        double past = siting.units().stream().mapToDouble(unit -> unit.place().alongM()).max().orElse(siting.distanceM());
        top = Math.max(top, (reach + siting.distanceM()) * Angles.tanDeg(upperDeg() + 0.6));
        double low = Math.min(0, siting.units().stream().mapToDouble(unit -> unit.place().heightM()).min().orElse(0));
        return new SectionWindow(-reach, low - top * 0.12, Math.max(past, siting.distanceM()) + reach * 0.08, top, widthMm, heightMm);
    }

    /** Returns what has to be seen around the threshold or hover point. */
    public SectionWindow near(double widthMm, double heightMm) {
        double before = Math.min(260, Math.max(60, siting.distanceM() * 0.6));
        double past = siting.units().stream().mapToDouble(unit -> unit.place().alongM()).max().orElse(siting.distanceM());
        double top = Math.max(siting.mehtM() * 1.5, (before + siting.distanceM()) * Angles.tanDeg(siting.slopeDeg() + 0.3));
        double lowest = Math.min(0, siting.reference().heightM());
        return new SectionWindow(-before, lowest - top * 0.16, Math.max(past, siting.distanceM()) + Math.max(20, siting.distanceM() * 0.12),
                top, widthMm, heightMm);
    }

    /** Returns what is drawn in a window of a screen, the lowest first; notes stand in the drawing. */
    public List<Mark> marks(SectionWindow window) {
        Picture picture = draw(window);
        picture.notes().forEach(note -> picture.labels().note(note, SMALL_MM, Ink.DIMENSION));
        List<Mark> marks = new ArrayList<>(picture.lines().marks());
        marks.addAll(picture.labels().marks());
        return marks;
    }

    /**
     * Returns the point of a survey block that a window shows nearest to a place: of the outline of a block, of those through the surface,
     * or its governing one; empty where none is near.
     *
     * @param window  what is shown
     * @param alongM  the place along the approach, metres
     * @param heightM its height, metres
     * @param reachMm how far it may be drawn from the place, millimetres
     */
    public Optional<SurveyPointAt> surveyPoint(SectionWindow window, double alongM, double heightM, double reachMm) {
        return new SectionPoints(window, obstacles.comparison().map(found -> found.surface())).nearest(drawn, alongM, heightM, reachMm);
    }

    /**
     * Returns where a point of a survey block lies in the section; empty where the block is not among what stands around the aid.
     *
     * @param blockId id of the block
     * @param index   which of its points, from zero
     */
    public Optional<FramePoint> surveyPoint(String blockId, int index) {
        return drawn.surroundings().blocks().stream()
                .filter(block -> blockId.equals(block.block().getId()) && index < block.points().count())
                .findFirst().map(block -> block.points().point(index));
    }

    /**
     * What is drawn on paper: notes stand under it.
     *
     * @param marks  what is drawn, the lowest first
     * @param notes  what there is to say under it
     * @param legend the key to what is seen
     * @param stems  the obstacles of it
     */
    record OnPaper(List<Mark> marks, List<String> notes, List<LegendEntry> legend, SectionObstacles stems) {
    }

    /** Returns what is drawn in a window on paper. */
    OnPaper onPaper(SectionWindow window) {
        Picture picture = draw(window);
        List<Mark> marks = new ArrayList<>(picture.lines().marks());
        marks.addAll(picture.labels().marks());
        List<String> notes = new ArrayList<>(obstacleTexts.captions());
        notes.addAll(terrain.notes());
        notes.addAll(picture.stems().notes(drawn));
        return new OnPaper(marks, notes, legend(picture.stems()), picture.stems());
    }

    /** Returns the section on paper with what it does not show of the obstacles said under it. */
    Scene told(Scene scene, OnPaper drawing) {
        return OmittedObstacles.told(scene, drawn, obstacles, drawing.stems().leaving());
    }

    /** What was drawn: lines and symbols, texts, obstacles. */
    private record Picture(SectionLines lines, SectionLabels labels, SectionObstacles stems, List<String> notes) {
    }

    private Picture draw(SectionWindow window) {
        SectionLabels labels = new SectionLabels(window, measure);
        SectionLines lines = new SectionLines(window, new ArrayList<>());
        SectionBeams beams = new SectionBeams(drawn, lines, labels);
        SectionObstacles stems = new SectionObstacles(obstacles, obstacleTexts, lines, labels);
        beams.corridor();
        stems.outlines();
        new SectionGround(drawn, lines).draw();
        terrain.draw(lines, labels, SMALL_MM);
        beams.edges();
        slope(lines);
        surface(lines);
        glidePath(lines);
        wheels(lines);
        eyeHeight(lines);
        stems.symbols();
        beams.units();
        labels.avoid(lines.marks());
        stems.pointTexts();
        stems.texts(DrawnObstacle::isThrough, MOST_TEXTS);
        axes(window, lines, labels);
        origin(window, lines, labels);
        heights(labels);
        stems.texts(obstacle -> obstacle.isInside() && !obstacle.isThrough(), MOST_TEXTS);
        beams.texts();
        names(window, labels);
        stems.texts(obstacle -> !obstacle.isInside(), MOST_TEXTS / 2);
        List<String> notes = new ArrayList<>(stems.simplified(drawn).stream().toList());
        obstacleTexts.uncompared().ifPresent(notes::add);
        return new Picture(lines, labels, stems, notes);
    }

    private double upperDeg() {
        return Math.max(siting.lowestOnSlopeDeg(), 2 * siting.slopeDeg() - siting.lowestOnSlopeDeg());
    }

    private void slope(SectionLines lines) {
        lines.ray(Style.dashed(Ink.GREEN, 0.25), "", siting.reference(), siting.slopeDeg());
    }

    private void surface(SectionLines lines) {
        if (siting.surface().isEmpty()) {
            return;
        }
        ProtectionSurface surface = siting.surface().get().geometry();
        FramePoint inner = surface.pointAt(0, 0);
        FramePoint outer = surface.pointAt(surface.lengthM(), 0);
        lines.line(Style.line(Ink.SURFACE, 0.45), "", inner.alongM(), inner.heightM(), outer.alongM(), outer.heightM());
        lines.upright(Style.line(Ink.SURFACE, 0.3), "", inner.alongM(), inner.heightM(), 1.6);
    }

    /** Where the glide path meets the runway, empty where there is none or nobody knows. */
    private static Optional<GlidePathIntercept> intercept(DrawnAid drawn) {
        GlidePathAid path = drawn.host().getGlidePath();
        return path == null || path.getPathAngleDeg() == null ? Optional.empty() : drawn.evaluation().request()
                .then(request -> Attempt.of(() -> GlidePathIntercept.of(request, path.getPathAngleDeg()))).value().flatMap(found -> found);
    }

    private static FramePoint origin(GlidePathIntercept path) {
        return new FramePoint(path.originM(), 0, path.groundM());
    }

    private void glidePath(SectionLines lines) {
        glidePath.ifPresent(path -> lines.ray(Style.dashed(Ink.GLIDE_PATH, 0.35), String.valueOf(drawn.host().getGlidePath().getId()),
                origin(path), path.angleDeg()));
    }

    /** Returns the point that the wheels aim at: as far below the lens as the eye is above the wheels. */
    private Optional<FramePoint> wheelsAim() {
        FramePoint lens = siting.reference();
        return aeroplanes.map(group -> lens.atHeight(lens.heightM() - group.getEyeToWheelM()));
    }

    private void wheels(SectionLines lines) {
        wheelsAim().ifPresent(aim -> {
            double height = SectionLines.heightM(aim, siting.lowestOnSlopeDeg(), 0);
            double from = lines.window().minAlongM();
            if (from < 0) {
                lines.line(Style.dashed(Ink.WHEELS, 0.35), "", from, SectionLines.heightM(aim, siting.lowestOnSlopeDeg(), from), 0, height);
            }
            lines.line(Style.line(Ink.WHEELS, 0.3), "", 0, 0, 0, height);
            lines.across(Style.line(Ink.WHEELS, 0.3), "", 0, height, 1.2);
            lines.disc(0, height, EYE_MM, Style.area(Ink.WHEELS, Ink.PAPER, 0.35), "");
        });
    }

    /** Draws the eye over the origin; where there is room as a dimension from its level. */
    private void eyeHeight(SectionLines lines) {
        SectionWindow window = lines.window();
        if (siting.mehtM() * window.mmUp() > LEAST_DIMENSION_MM) {
            double beside = -1.6 / window.mmAlong();
            Style style = Style.line(Ink.TEXT, 0.18);
            lines.line(style, "", beside, 0, beside, siting.mehtM());
            lines.across(style, "", beside, 0, 0.7);
            lines.line(style, "", beside - 0.7 / window.mmAlong(), siting.mehtM(), 0, siting.mehtM());
        }
        lines.disc(0, siting.mehtM(), EYE_MM, Style.fill(Ink.TEXT), "");
    }

    private void heights(SectionLabels labels) {
        labels.keep(0, siting.mehtM(), EYE_MM, EYE_MM, EYE_MM);
        wheelHeightM().ifPresent(height -> labels.keep(0, height, EYE_MM, EYE_MM, EYE_MM));
        labels.write(0, siting.mehtM(), drawn.say(drawn.atRunway() ? "drawing.meht" : "drawing.eye", Words.m(siting.mehtM())), SMALL_MM,
                SectionLabels.Side.ABOVE_RIGHT, Ink.TEXT, "");
        wheelHeightM().ifPresent(height -> labels.write(0, height, drawn.say("drawing.wheels", Words.name(wheelsName()), Words.m(height)),
                SMALL_MM, SectionLabels.Side.ABOVE_RIGHT, height > 0 ? Ink.WHEELS : Ink.PENETRATION, ""));
    }

    private String wheelsName() {
        return aeroplanes.map(group -> group.getName() == null ? "" : group.getName()).orElse("");
    }

    private void names(SectionWindow window, SectionLabels labels) {
        siting.surface().map(SurfacePlan::geometry).ifPresent(surface -> onLine(window, labels, surface.pointAt(0, 0),
                surface.slopeDeg(), 0.45, drawn.say("drawing.surface", Words.deg(surface.slopeDeg())), Ink.SURFACE,
                SectionLabels.Side.BELOW_LEFT));
        glidePath.ifPresent(path -> onLine(window, labels, origin(path), path.angleDeg(), 0.3,
                drawn.say("drawing.glide-path", Words.deg(path.angleDeg())), Ink.GLIDE_PATH, SectionLabels.Side.BELOW_LEFT));
        onLine(window, labels, siting.reference(), siting.slopeDeg(), 0.6, drawn.say("drawing.slope", Words.deg(siting.slopeDeg())),
                Ink.GREEN, SectionLabels.Side.ABOVE_RIGHT);
    }

    /** Writes a name on the part of a rising line that can be seen, a share of the way from its outer end. */
    private static void onLine(SectionWindow window, SectionLabels labels, FramePoint start, double angleDeg, double share, String text,
            Ink ink, SectionLabels.Side side) {
        double outer = SectionLines.seenFromM(window, start, angleDeg);
        double inner = Math.min(start.alongM(), window.maxAlongM());
        for (double part = share; part < 0.95; part += 0.1) {
            double at = outer + (inner - outer) * part;
            if (outer < inner && labels.write(at, SectionLines.heightM(start, angleDeg, at), text, SMALL_MM, side, ink, "")) {
                return;
            }
        }
    }

    private void origin(SectionWindow window, SectionLines lines, SectionLabels labels) {
        lines.line(Style.line(Ink.TEXT, 0.25), "", 0, window.minHeightM(), 0, Math.min(window.maxHeightM(), 2 / window.mmUp()));
        labels.write(0, window.at(0, 3).y(), drawn.language().write(drawn.originName()), SMALL_MM, SectionLabels.Side.RIGHT, Ink.TEXT, "");
    }

    private void axes(SectionWindow window, SectionLines lines, SectionLabels labels) {
        Style tick = Style.line(Ink.DIMENSION, 0.12);
        double unit = drawn.unitM();
        double step = step(TICKS_EVERY_MM / window.mmAlong() / unit) * unit;
        for (double along = Math.ceil(window.minAlongM() / step) * step; along <= window.maxAlongM(); along += step) {
            lines.upright(tick, "", along, window.minHeightM(), TICK_MM);
            if (Math.abs(along) > step / 2) {
                labels.write(along, window.minHeightM(), axisText(along / unit), SMALL_MM, SectionLabels.Side.ABOVE, Ink.DIMENSION, "");
            }
        }
        double rise = step(TICKS_EVERY_MM / 2.6 / window.mmUp() / unit) * unit;
        double right = window.maxAlongM();
        for (double height = Math.ceil(window.minHeightM() / rise) * rise; height <= window.maxHeightM(); height += rise) {
            lines.line(tick, "", right - TICK_MM / window.mmAlong(), height, right, height);
            labels.beforeEdge(height, axisText(height / unit), SMALL_MM, TICK_MM + 0.6, Ink.DIMENSION);
        }
    }

    private String axisText(double value) {
        return drawn.language().fixed(value, Math.abs(value - Math.rint(value)) < 1e-6 ? 0 : 1) + " " + drawn.unitName();
    }

    private static double step(double wanted) {
        double power = Math.pow(10, Math.floor(Math.log10(wanted)));
        double lead = wanted / power;
        return power * (lead > 5 ? 10 : lead > 2 ? 5 : lead > 1 ? 2 : 1);
    }

    /** Returns the units that a ray of a beam belongs to: those whose lens lies there and that have an edge at the angle. */
    public List<UnitPlan> unitsOf(BeamEdge edge) {
        return siting.units().stream().filter(edge::belongsTo).toList();
    }

    /** Returns the edges of all beams, each once. */
    public List<BeamEdge> edges() {
        return BeamEdge.of(siting);
    }

    /** Returns the key to what is drawn. */
    private List<LegendEntry> legend(SectionObstacles stems) {
        List<LegendEntry> legend = new ArrayList<>(List.of(
                LegendEntry.area(drawn.say("drawing.legend.corridor"), Style.fill(Ink.CORRIDOR)),
                LegendEntry.line(drawn.say("drawing.legend.slope"), Style.dashed(Ink.GREEN, 0.25)),
                LegendEntry.line(drawn.say("drawing.legend.edge"), Style.line(Ink.UNIT, 0.2))));
        if (siting.surface().isPresent()) {
            legend.add(LegendEntry.line(drawn.say("drawing.legend.surface"), Style.line(Ink.SURFACE, 0.45)));
        }
        if (aeroplanes.isPresent()) {
            legend.add(LegendEntry.line(drawn.say("drawing.legend.wheels"), Style.dashed(Ink.WHEELS, 0.35)));
        }
        legend.addAll(stems.legend(drawn));
        legend.add(LegendEntry.line(drawn.say("drawing.legend.ground"), Style.line(Ink.GROUND, 0.5)));
        legend.addAll(terrain.legend());
        legend.add(LegendEntry.line(drawn.say("drawing.legend.level", drawn.origin()), Style.dashed(Ink.GROUND, 0.2)));
        return legend;
    }
}
