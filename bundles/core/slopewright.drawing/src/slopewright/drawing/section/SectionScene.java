package slopewright.drawing.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import slopewright.drawing.internal.layout.SceneBuilder;
import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Frame;
import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.LegendEntry;
import slopewright.drawing.scene.Mark.Anchor;
import slopewright.drawing.scene.PaperArea;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.scene.Style;
import slopewright.evaluation.obstacles.SurveyedShape;
import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.model.Obstacle;
import slopewright.model.RunwayEnd;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;

/**
 * Vertical sections along the approach: distance from the threshold to the right of the paper in the landing direction, height above
 * the threshold upward and exaggerated. Heights are differences of elevations, without curvature.
 */
public final class SectionScene {

    private static final double LEAST_REACH_M = 600;
    private static final double MOST_REACH_M = 6000;
    private static final double NEAR_REACH_M = 260;
    private static final double ASPECT = 2.1;

    private final DrawnAid drawn;
    private final Siting siting;
    private final SceneBuilder scene;

    private SectionScene(DrawnAid drawn, PaperArea room) {
        this.drawn = drawn;
        scene = new SceneBuilder(room);
        siting = drawn.siting();
    }

    /**
     * Draws the section as far out as the obstacles that count.
     *
     * @param drawn the aid
     * @return the scene
     */
    public static Scene of(DrawnAid drawn) {
        return of(drawn, PaperArea.usual());
    }

    /**
     * Draws the section for a room on paper, at least as far out as the obstacles that count.
     *
     * @param drawn the aid
     * @param room  the room
     * @return the scene
     * @throws IllegalArgumentException where the room has a scale at which it does not fit
     */
    public static Scene of(DrawnAid drawn, PaperArea room) {
        return new SectionScene(drawn, room).whole();
    }

    /**
     * Draws the section close to the threshold or hover point, with the heights over it.
     *
     * @param drawn the aid
     * @return the scene
     */
    public static Scene near(DrawnAid drawn) {
        return near(drawn, PaperArea.usual());
    }

    /**
     * Draws the section close to the threshold or hover point for a room on paper.
     *
     * @param drawn the aid
     * @param room  the room
     * @return the scene
     * @throws IllegalArgumentException where the room has a scale at which it does not fit
     */
    public static Scene near(DrawnAid drawn, PaperArea room) {
        return new SectionScene(drawn, room).close();
    }

    private PaperArea.Fit fit(Frame needed) {
        return scene.room().isFilled() ? scene.room().section(needed)
                : new PaperArea.Fit(needed, Math.max(1, Math.round(needed.width() / needed.height() / ASPECT)));
    }

    private double reachM() {
        double outermost = LEAST_REACH_M;
        for (Obstacle obstacle : drawn.obstacles()) {
            try {
                boolean counts = siting.surface().flatMap(plan -> SurveyedShape.of(obstacle, drawn.frame()).compare(plan.geometry()))
                        .isPresent();
                double far = SurveyedShape.of(obstacle, drawn.frame()).points().stream().mapToDouble(FramePoint::alongM).min().orElse(0);
                outermost = counts ? Math.max(outermost, -far * 1.15) : outermost;
            } catch (SitingException e) {
                // an obstacle without place or height is a finding of its own; it can not stretch the drawing
                continue;
            }
        }
        return Math.min(MOST_REACH_M, outermost);
    }

    private Scene whole() {
        double reach = reachM();
        double top = Math.max(25, (reach + siting.distanceM()) * Angles.tanDeg(siting.slopeDeg() + 0.8));
        PaperArea.Fit fit = fit(new Frame(-reach, -top * 0.1, siting.distanceM() + reach * 0.1, top));
        Frame frame = fit.frame();
        SectionMarks marks = new SectionMarks(drawn, scene, frame);
        marks.corridor();
        marks.ground();
        marks.beams(true);
        marks.surface();
        marks.glidePath();
        marks.obstacles();
        marks.wheels();
        marks.origin();
        marks.axes();
        return build("Section, ", fit);
    }

    private Scene close() {
        double before = Math.min(NEAR_REACH_M, Math.max(60, siting.distanceM() * 0.6));
        double past = Math.max(20, siting.distanceM() * 0.12);
        double top = Math.max(siting.mehtM() * 1.9, (before + siting.distanceM()) * Angles.tanDeg(siting.slopeDeg() + 0.4));
        double lowest = Math.min(0, siting.reference().heightM());
        PaperArea.Fit fit = fit(new Frame(-before, lowest - top * 0.14, siting.distanceM() + past, top));
        Frame frame = fit.frame();
        SectionMarks marks = new SectionMarks(drawn, scene, frame);
        marks.corridor();
        marks.ground();
        marks.beams(true);
        marks.surface();
        marks.glidePath();
        marks.wheels();
        double lean = frame.width() * 0.012;
        height(-lean, siting.mehtM(), drawn.host() instanceof RunwayEnd ? "MEHT" : "eye", Ink.TEXT);
        siting.wheelClearanceM().ifPresent(clearance -> height(lean, clearance, "wheels", Ink.WHEELS));
        scene.disc(0, siting.mehtM(), 0.5, Style.fill(Ink.TEXT), "");
        marks.origin();
        marks.axes();
        return build("Section at the " + drawn.originName() + ", ", fit);
    }

    private void height(double x, double heightM, String name, Ink ink) {
        Style line = Style.line(ink, 0.2);
        double arm = Math.abs(x) * 0.35;
        scene.path(line, "", x, 0, x, heightM).path(line, "", x - arm, 0, x + arm, 0).path(line, "", x - arm, heightM, x + arm, heightM);
        Anchor anchor = x < 0 ? Anchor.END : Anchor.START;
        scene.label(x + Math.signum(x) * arm, heightM * 0.55, String.format(Locale.ROOT, "%s %.2f m", name, heightM), anchor,
                SectionMarks.LABEL_MM, 0, ink, "");
    }

    private Scene build(String title, PaperArea.Fit fit) {
        List<String> captions = new ArrayList<>();
        captions.add(String.format(Locale.ROOT,
                "Heights %s times exaggerated, in metres above the %s, without curvature. Slope %s, lowest on-slope signal %s, "
                        + "eye height over the %s %.2f m%s.", PaperArea.number(fit.exaggeration()), drawn.originName(),
                Angles.format(siting.slopeDeg()), Angles.format(siting.lowestOnSlopeDeg()), drawn.originName(), siting.mehtM(),
                drawn.host() instanceof RunwayEnd ? " (MEHT)" : ""));
        return scene.build(title + drawn.name(), fit.frame(), fit.exaggeration(), captions, legend());
    }

    private List<LegendEntry> legend() {
        List<LegendEntry> legend = new ArrayList<>(List.of(LegendEntry.area("on-slope corridor", Style.fill(Ink.CORRIDOR)),
                LegendEntry.line("approach slope", Style.dashed(Ink.GREEN, 0.25)), LegendEntry.line("edge of a signal", Style.line(
                        Ink.UNIT, 0.15))));
        if (siting.surface().isPresent()) {
            legend.add(LegendEntry.line("obstacle surface", Style.line(Ink.SURFACE, 0.4)));
        }
        if (siting.wheelClearanceM().isPresent()) {
            legend.add(LegendEntry.line("wheels on the lowest on-slope signal", Style.dashed(Ink.WHEELS, 0.3)));
        }
        legend.add(LegendEntry.line("surveyed ground", Style.line(Ink.GROUND, 0.4)));
        legend.add(LegendEntry.line("level of the " + drawn.originName(), Style.dashed(Ink.GROUND, 0.2)));
        return legend;
    }
}
