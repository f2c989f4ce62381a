package slopewright.drawing.plan;

import java.util.List;
import java.util.Locale;

import slopewright.drawing.internal.layout.SceneBuilder;
import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Frame;
import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.LegendEntry;
import slopewright.drawing.scene.Mark.Anchor;
import slopewright.drawing.scene.Style;
import slopewright.geometry.FramePoint;
import slopewright.messages.Words;
import slopewright.model.EdgeKind;
import slopewright.model.Helipad;
import slopewright.model.Place;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.TaxiwayEdge;
import slopewright.model.util.Projects;
import slopewright.siting.SitingException;
import slopewright.siting.UnitPlan;

/** What lies on the ground of a plan: runway or helipad, markings, taxiways, light units, scale and north. */
final class PlanGround {

    /** With the enlargement of drawing paper 2.5 mm. */
    static final double LABEL_MM = 2.05;

    private static final double DEFAULT_WIDTH_M = 30;
    private static final double STRIPE_FROM_M = 6;
    private static final double STRIPE_M = 30;
    private static final double AIMING_M = 45;
    private static final double ARROW_EVERY_M = 60;
    /** As far out arrows are drawn; a threshold that is displaced farther was entered wrongly, and another finding says so. */
    private static final double FARTHEST_ARROW_M = 5000;
    /** More stripes are not told apart on a sheet, whatever width was entered. */
    private static final int MOST_STRIPES = 16;
    /** More units than these are named alone; their settings are in the schedule. */
    private static final int MOST_NAMED_WITH_SETTING = 8;

    private final DrawnAid drawn;
    private final SceneBuilder scene;

    PlanGround(DrawnAid drawn, SceneBuilder scene) {
        this.drawn = drawn;
        this.scene = scene;
    }

    /** Returns half the width of the runway; where it is not known, half of 30 m. */
    double halfWidthM() {
        return Projects.runway(drawn.host()).map(Runway::getWidthM).orElse(DEFAULT_WIDTH_M) / 2;
    }

    /** Draws the runway as far as the frame shows it, or the helipad. */
    void pavement(Frame frame, boolean markings) {
        if (!(drawn.host() instanceof RunwayEnd end)) {
            helipad();
            return;
        }
        double half = halfWidthM();
        double displaced = displacedM(end);
        double length = Projects.runway(end).map(Runway::getLengthM).orElse(frame.maxX() + 100 + displaced) - displaced;
        double left = Math.max(-displaced, frame.minX() - 1);
        double right = Math.min(length, frame.maxX() + 1);
        if (right <= left) {
            return;
        }
        scene.box(Style.area(Ink.DIMENSION, Ink.PAVEMENT, 0.2), end.getId(), left, -half, right, half);
        scene.path(Style.dashed(Ink.AXIS, 0.13), "", Math.min(left, frame.minX()), 0, right, 0);
        if (!markings) {
            return;
        }
        stripes(half);
        displacedArrows(displaced, half);
        scene.path(Style.line(Ink.TEXT, 0.35), "", 0, -half, 0, half);
        if (end.getDesignator() != null) {
            scene.label(STRIPE_FROM_M + STRIPE_M + 12, 0, end.getDesignator(), Anchor.START, 2.2, -1.1, Ink.TEXT, end.getId());
        }
        aimingPoint(end, half);
    }

    private static double displacedM(RunwayEnd end) {
        return end.getDisplacedThresholdM() == null ? 0 : end.getDisplacedThresholdM();
    }

    private void stripes(double half) {
        int count = (int) Math.min(MOST_STRIPES, Math.max(2, Math.round(half / 5.6) * 2));
        double step = (2 * half - 6) / count;
        for (int i = 0; i < count; i++) {
            double low = -half + 3 + i * step;
            scene.box(Style.fill(Ink.MARKING), "", STRIPE_FROM_M, low + step * 0.2, STRIPE_FROM_M + STRIPE_M, low + step * 0.8);
        }
    }

    private void displacedArrows(double displacedM, double half) {
        double farthest = Math.max(-displacedM, -FARTHEST_ARROW_M);
        for (double tip = -8; tip - 24 > farthest; tip -= ARROW_EVERY_M) {
            scene.path(Style.line(Ink.MARKING, 0.3), "", tip - 24, 0, tip, 0);
            scene.area(Style.fill(Ink.MARKING), "", tip, 0, tip - 9, half * 0.12, tip - 9, -half * 0.12);
        }
    }

    private void aimingPoint(RunwayEnd end, double half) {
        if (end.getAimingPointDistanceM() != null) {
            double aim = end.getAimingPointDistanceM();
            for (int sign : new int[] {-1, 1}) {
                scene.box(Style.fill(Ink.MARKING), end.getId(), aim, sign * half * 0.3, aim + AIMING_M, sign * half * 0.7);
            }
        }
    }

    private void helipad() {
        Projects.helipad(drawn.host()).ifPresent(pad -> {
            square(pad.getSafetyAreaWidthM(), pad.getSafetyAreaWidthM(), Style.dashed(Ink.DIMENSION, 0.2), pad.getId());
            square(pad.getFatoLengthM(), pad.getFatoWidthM(), Style.area(Ink.DIMENSION, Ink.PAVEMENT, 0.2), pad.getId());
            square(pad.getTlofLengthM(), pad.getTlofWidthM(), Style.area(Ink.DIMENSION, Ink.MARKING, 0.3), pad.getId());
            scene.label(0, 0, "H", Anchor.MIDDLE, 2.6, -1.3, Ink.TEXT, pad.getId());
        });
    }

    private void square(Double length, Double width, Style style, String id) {
        if (length != null && width != null) {
            double turn = Projects.helipad(drawn.host()).map(Helipad::getFatoBearingDeg)
                    .map(lies -> Math.toRadians(drawn.frame().bearingDeg() - lies)).orElse(0.0);
            if (turn == 0) {
                scene.box(style, id, -length / 2, -width / 2, length / 2, width / 2);
                return;
            }
            double[] corners = new double[8];
            for (int i = 0; i < 4; i++) {
                double along = length / 2 * (i < 2 ? -1 : 1);
                double left = width / 2 * (i == 1 || i == 2 ? 1 : -1);
                corners[2 * i] = along * Math.cos(turn) - left * Math.sin(turn);
                corners[2 * i + 1] = along * Math.sin(turn) + left * Math.cos(turn);
            }
            scene.area(style, id, corners);
        }
    }

    /** Draws edges of taxiways, aprons and other runways. */
    void edges() {
        if (drawn.project().getAerodrome() == null) {
            return;
        }
        for (TaxiwayEdge edge : drawn.project().getAerodrome().getTaxiwayEdges()) {
            double[] xy = new double[edge.getPoints().size() * 2];
            int at = 0;
            try {
                for (Place place : edge.getPoints()) {
                    FramePoint point = drawn.frame().toFrame(place, drawn.frame().originElevationM());
                    xy[at++] = point.alongM();
                    xy[at++] = -point.rightM();
                }
            } catch (SitingException e) {
                // an edge without coordinates has no place in a drawing; the finding of its own says so
                continue;
            }
            if (at >= 4) {
                scene.path(Style.line(Ink.TAXIWAY, 0.5), edge.getId(), xy);
                scene.callout((xy[0] + xy[2]) / 2, (xy[1] + xy[3]) / 2, edge.getName() == null ? word(edge.getKind()) : edge.getName(),
                        LABEL_MM, Ink.TAXIWAY, edge.getId());
            }
        }
    }

    private String word(EdgeKind kind) {
        return drawn.language().write(Words.term("drawing.edge." + kind.getName().toLowerCase(Locale.ROOT).replace('_', '-')));
    }

    /** Draws the units as boxes of a size in metres; zero draws discs of a size on paper. */
    void units(double boxM, boolean labelled) {
        for (UnitPlan unit : drawn.siting().units()) {
            double x = unit.place().alongM();
            double y = -unit.place().rightM();
            String id = drawn.elementId(unit);
            if (boxM > 0) {
                scene.box(Style.area(Ink.UNIT, Ink.PAPER, 0.3), id, x - boxM * 0.7, y - boxM * 0.45, x + boxM * 0.7, y + boxM * 0.45);
                scene.path(Style.line(Ink.RED, 0.5), id, x - boxM * 0.7, y - boxM * 0.45, x - boxM * 0.7, y + boxM * 0.45);
            } else {
                scene.disc(x, y, 0.6, Style.area(Ink.UNIT, Ink.RED, 0.2), id);
            }
            if (labelled) {
                boolean few = drawn.siting().units().size() <= MOST_NAMED_WITH_SETTING;
                scene.callout(x, y, few ? unit.id() + "  " + drawn.language().write(Words.deg(unit.settingDeg())) : unit.id(), LABEL_MM,
                        Ink.TEXT, id);
            }
        }
    }

    /** Draws a bar of a round length in the lower left corner. */
    void scaleBar(Frame frame) {
        double most = frame.width() / 5 / drawn.unitM();
        double number = Math.pow(10, Math.floor(Math.log10(most)));
        number *= most / number >= 5 ? 5 : most / number >= 2 ? 2 : 1;
        double length = number * drawn.unitM();
        double x = frame.minX() + frame.width() * 0.02;
        double y = frame.minY() + frame.width() * 0.016;
        double thick = frame.width() * 0.005;
        scene.box(Style.area(Ink.TEXT, Ink.TEXT, 0.15), "", x, y, x + length / 2, y + thick);
        scene.box(Style.area(Ink.TEXT, Ink.PAPER, 0.15), "", x + length / 2, y, x + length, y + thick);
        scene.label(x + length + frame.width() * 0.006, y, drawn.language().fixed(number, 0) + " " + drawn.unitName(), Anchor.START,
                LABEL_MM, 0, Ink.TEXT, "");
    }

    /** Draws true north: the landing direction lies to the right, so north is turned by the bearing. */
    void north(Frame frame) {
        north(frame, Math.toRadians(drawn.frame().bearingDeg()));
    }

    /** Draws true north at an angle from the right, radians, counter-clockwise. */
    void north(Frame frame, double angle) {
        double reach = frame.width() * 0.022;
        double x = frame.maxX() - frame.width() * 0.04;
        double y = frame.maxY() - frame.width() * 0.04;
        double dx = Math.cos(angle) * reach;
        double dy = Math.sin(angle) * reach;
        scene.path(Style.line(Ink.TEXT, 0.3), "", x - dx, y - dy, x + dx, y + dy);
        scene.area(Style.fill(Ink.TEXT), "", x + dx, y + dy, x + dx * 0.3 - dy * 0.35, y + dy * 0.3 + dx * 0.35, x + dx * 0.3 + dy * 0.35,
                y + dy * 0.3 - dx * 0.35);
        scene.label(x + dx * 1.45, y + dy * 1.45, "N", Anchor.MIDDLE, 2, -1, Ink.TEXT, "");
    }

    /** Returns the key to what this class draws in a plan of a layout. */
    List<LegendEntry> legend() {
        return List.of(LegendEntry.area(drawn.say("drawing.legend.unit"), Style.area(Ink.UNIT, Ink.PAPER, 0.3)),
                LegendEntry.area(drawn.say(drawn.atRunway() ? "drawing.legend.runway" : "drawing.legend.fato"),
                        Style.area(Ink.DIMENSION, Ink.PAVEMENT, 0.2)),
                LegendEntry.line(drawn.say("drawing.legend.pavement-edge"), Style.line(Ink.TAXIWAY, 0.5)));
    }
}
