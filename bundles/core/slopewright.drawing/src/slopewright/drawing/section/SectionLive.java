package slopewright.drawing.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.scene.Style;
import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.geometry.ProtectionSurface;
import slopewright.model.AeroplaneGroup;
import slopewright.model.GlidePathAid;
import slopewright.model.RunwayEnd;
import slopewright.siting.Siting;
import slopewright.siting.SurfacePlan;
import slopewright.siting.UnitPlan;

/**
 * A vertical section along the approach for a window that is moved and zoomed: the same things as {@link SectionScene}, with every
 * obstacle near the approach and its offset, what is seen between the edges of the beams, and the wheels of a chosen aeroplane group.
 * It draws the part that a window shows, with symbols and texts of the same size at every scale.
 */
public final class SectionLive {

    /** Height of capitals, millimetres. */
    public static final double LETTERS_MM = 2;

    private static final double SMALL_MM = 2.05;
    private static final int MOST_TEXTS = 12;
    private static final double TICK_MM = 1.4;
    private static final double TICKS_EVERY_MM = 26;

    private final DrawnAid drawn;
    private final Siting siting;
    private final SectionObstacles obstacles;
    private final Optional<AeroplaneGroup> aeroplanes;
    private final SectionWords words;

    /**
     * Prepares a section.
     *
     * @param drawn      the aid
     * @param obstacles  the obstacles in its frame, compared with its surface
     * @param aeroplanes the group whose wheels are drawn; empty for none
     * @param words      how things are named
     */
    public SectionLive(DrawnAid drawn, SectionObstacles obstacles, Optional<AeroplaneGroup> aeroplanes, SectionWords words) {
        this.drawn = Objects.requireNonNull(drawn);
        this.siting = drawn.siting();
        this.obstacles = Objects.requireNonNull(obstacles);
        this.aeroplanes = aeroplanes.filter(group -> group.getEyeToWheelM() != null);
        this.words = Objects.requireNonNull(words);
    }

    /** Returns the aid that is drawn. */
    public DrawnAid drawn() {
        return drawn;
    }

    /** Returns the layout that is drawn. */
    public Siting siting() {
        return siting;
    }

    /** Returns the obstacles, compared with the surface that is drawn. */
    public SectionObstacles obstacles() {
        return obstacles;
    }

    /** Returns height of the wheels of the chosen group over the threshold on the lowest on-slope signal, metres; empty for no group. */
    public Optional<Double> wheelHeightM() {
        return aeroplanes.map(group -> siting.mehtM() - group.getEyeToWheelM());
    }

    /** Returns what has to be seen of the whole approach: as far out as the obstacles that count, at least 600 m. */
    public SectionWindow whole(double widthMm, double heightMm) {
        double reach = obstacles.worstFirst().stream().filter(SectionObstacle::isInside).mapToDouble(one -> -one.firstM() * 1.15).max()
                .orElse(0);
        reach = Math.max(1200, Math.min(6000, reach));
        double past = siting.units().stream().mapToDouble(unit -> unit.place().alongM()).max().orElse(siting.distanceM());
        double top = (reach + siting.distanceM()) * Angles.tanDeg(upperDeg() + 0.6);
        return new SectionWindow(-reach, -top * 0.12, Math.max(past, siting.distanceM()) + reach * 0.08, top, widthMm, heightMm);
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

    /** Returns what is drawn in a window, the lowest first. */
    public List<Mark> marks(SectionWindow window) {
        List<Mark> marks = new ArrayList<>();
        LiveLabels labels = new LiveLabels(window, words);
        LiveLines lines = new LiveLines(window, marks);
        LiveBeams beams = new LiveBeams(drawn, lines, labels, words);
        LiveObstacles stems = new LiveObstacles(obstacles, lines, labels, words);
        beams.corridor();
        stems.simplified();
        new LiveGround(drawn, lines).draw();
        beams.edges();
        slope(lines);
        surface(lines);
        glidePath(lines);
        wheels(lines);
        stems.symbols();
        beams.units();
        stems.texts(SectionObstacle::isThrough, MOST_TEXTS);
        axes(window, lines, labels);
        origin(window, lines, labels);
        eyeHeight(lines, labels);
        stems.texts(one -> one.isInside() && !one.isThrough(), MOST_TEXTS);
        beams.texts();
        names(window, labels);
        stems.texts(one -> !one.isInside(), MOST_TEXTS / 2);
        stems.count();
        marks.addAll(labels.marks());
        return marks;
    }

    /** Returns what is drawn in a window as a scene for the other painters. */
    public Scene scene(SectionWindow window) {
        return new Scene(drawn.name(), window.minAlongM(), window.minHeightM(), window.maxAlongM(), window.maxHeightM(),
                window.exaggeration(), marks(window), List.of());
    }

    private double upperDeg() {
        return Math.max(siting.lowestOnSlopeDeg(), 2 * siting.slopeDeg() - siting.lowestOnSlopeDeg());
    }

    private void slope(LiveLines lines) {
        lines.ray(Style.dashed(Ink.GREEN, 0.25), "", siting.reference(), siting.slopeDeg());
    }

    private void surface(LiveLines lines) {
        if (siting.surface().isEmpty()) {
            return;
        }
        ProtectionSurface surface = siting.surface().get().geometry();
        FramePoint inner = surface.pointAt(0, 0);
        FramePoint outer = surface.pointAt(surface.lengthM(), 0);
        lines.line(Style.line(Ink.SURFACE, 0.45), "", inner.alongM(), inner.heightM(), outer.alongM(), outer.heightM());
        lines.upright(Style.line(Ink.SURFACE, 0.3), "", inner.alongM(), inner.heightM(), 1.6);
    }

    private record GlidePath(String id, double originM, double angleDeg) {

        FramePoint origin() {
            return new FramePoint(originM, 0, 0);
        }
    }

    private Optional<GlidePath> glidePath() {
        GlidePathAid path = drawn.host().getGlidePath();
        if (path == null || path.getPathAngleDeg() == null) {
            return Optional.empty();
        }
        Double height = path.getReferenceDatumHeightM();
        Double origin = path.getOriginAlongM() != null || height == null ? path.getOriginAlongM()
                : Double.valueOf(height * Angles.cotDeg(path.getPathAngleDeg()));
        return Optional.ofNullable(origin).map(at -> new GlidePath(String.valueOf(path.getId()), at, path.getPathAngleDeg()));
    }

    private void glidePath(LiveLines lines) {
        glidePath().ifPresent(path -> lines.ray(Style.dashed(Ink.GLIDE_PATH, 0.35), path.id(), path.origin(), path.angleDeg()));
    }

    /** Returns the point that the wheels aim at: as far below the lens as the eye is above the wheels. */
    private Optional<FramePoint> wheelsAim() {
        FramePoint lens = siting.reference();
        return aeroplanes.map(group -> lens.atHeight(lens.heightM() - group.getEyeToWheelM()));
    }

    private void wheels(LiveLines lines) {
        wheelsAim().ifPresent(aim -> {
            double height = LiveLines.heightM(aim, siting.lowestOnSlopeDeg(), 0);
            double from = lines.window().minAlongM();
            if (from < 0) {
                lines.line(Style.dashed(Ink.WHEELS, 0.35), "", from, LiveLines.heightM(aim, siting.lowestOnSlopeDeg(), from), 0, height);
            }
            lines.line(Style.line(Ink.WHEELS, 0.3), "", 0, 0, 0, height);
            lines.across(Style.line(Ink.WHEELS, 0.3), "", 0, height, 1.2);
            lines.disc(0, height, 0.6, Style.area(Ink.WHEELS, Ink.PAPER, 0.35), "");
        });
    }

    private void eyeHeight(LiveLines lines, LiveLabels labels) {
        lines.disc(0, siting.mehtM(), 0.6, Style.fill(Ink.TEXT), "");
        labels.write(0, siting.mehtM(), words.say(SectionWords.Word.EYE_HEIGHT, words.length(siting.mehtM())), SMALL_MM,
                LiveLabels.Side.ABOVE_RIGHT, Ink.TEXT, "");
        wheelHeightM().ifPresent(height -> labels.write(0, height, words.say(SectionWords.Word.WHEELS, wheelsName(), words.length(height)),
                SMALL_MM, LiveLabels.Side.ABOVE_RIGHT, height > 0 ? Ink.WHEELS : Ink.PENETRATION, ""));
    }

    private String wheelsName() {
        return aeroplanes.map(group -> group.getName() == null ? "" : group.getName()).orElse("");
    }

    private void names(SectionWindow window, LiveLabels labels) {
        siting.surface().map(SurfacePlan::geometry).ifPresent(surface -> onLine(window, labels, surface.pointAt(0, 0),
                surface.slopeDeg(), 0.45, words.say(SectionWords.Word.SURFACE, words.angle(surface.slopeDeg())), Ink.SURFACE,
                LiveLabels.Side.BELOW_LEFT));
        glidePath().ifPresent(path -> onLine(window, labels, path.origin(), path.angleDeg(), 0.3,
                words.say(SectionWords.Word.GLIDE_PATH, words.angle(path.angleDeg())), Ink.GLIDE_PATH, LiveLabels.Side.BELOW_LEFT));
        onLine(window, labels, siting.reference(), siting.slopeDeg(), 0.6,
                words.say(SectionWords.Word.SLOPE, words.angle(siting.slopeDeg())), Ink.GREEN, LiveLabels.Side.ABOVE_RIGHT);
    }

    /** Writes a name on the part of a rising line that can be seen, a share of the way from its outer end. */
    private static void onLine(SectionWindow window, LiveLabels labels, FramePoint start, double angleDeg, double share, String text,
            Ink ink, LiveLabels.Side side) {
        double outer = LiveLines.seenFromM(window, start, angleDeg);
        double inner = Math.min(start.alongM(), window.maxAlongM());
        for (double part = share; part < 0.95; part += 0.1) {
            double at = outer + (inner - outer) * part;
            if (outer < inner && labels.write(at, LiveLines.heightM(start, angleDeg, at), text, SMALL_MM, side, ink, "")) {
                return;
            }
        }
    }

    private void origin(SectionWindow window, LiveLines lines, LiveLabels labels) {
        lines.line(Style.line(Ink.TEXT, 0.25), "", 0, window.minHeightM(), 0, Math.min(window.maxHeightM(), 2 / window.mmUp()));
        labels.write(0, window.at(0, 3).y(), words.say(drawn.host() instanceof RunwayEnd ? SectionWords.Word.THRESHOLD
                : SectionWords.Word.HOVER_POINT), SMALL_MM, LiveLabels.Side.RIGHT, Ink.TEXT, "");
    }

    private void axes(SectionWindow window, LiveLines lines, LiveLabels labels) {
        Style tick = Style.line(Ink.DIMENSION, 0.12);
        double unit = words.axisUnitM();
        double step = step(TICKS_EVERY_MM / window.mmAlong() / unit) * unit;
        for (double along = Math.ceil(window.minAlongM() / step) * step; along <= window.maxAlongM(); along += step) {
            lines.upright(tick, "", along, window.minHeightM(), TICK_MM);
            if (Math.abs(along) > step / 2) {
                labels.write(along, window.minHeightM(), Math.round(along / unit) + " " + words.axisUnit(), SMALL_MM, LiveLabels.Side.ABOVE,
                        Ink.DIMENSION, "");
            }
        }
        double rise = step(TICKS_EVERY_MM / 2.6 / window.mmUp() / unit) * unit;
        double right = window.maxAlongM();
        for (double height = Math.ceil(window.minHeightM() / rise) * rise; height <= window.maxHeightM(); height += rise) {
            lines.line(tick, "", right - TICK_MM / window.mmAlong(), height, right, height);
            labels.beforeEdge(height, number(height / unit) + " " + words.axisUnit(), SMALL_MM, TICK_MM + 0.6, Ink.DIMENSION);
        }
    }

    private static String number(double value) {
        boolean whole = Math.abs(value - Math.rint(value)) < 1e-6;
        return whole ? String.valueOf(Math.round(value)) : String.valueOf(Math.round(value * 10) / 10.0);
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
}
