package slopewright.drawing.equipment;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;

import slopewright.drawing.internal.layout.SceneBuilder;
import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Frame;
import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.LegendEntry;
import slopewright.drawing.scene.Mark.Anchor;
import slopewright.drawing.scene.PaperArea;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.scene.Style;
import slopewright.evaluation.equipment.LightDistribution;
import slopewright.evaluation.equipment.LightDistribution.Contour;
import slopewright.evaluation.equipment.LightDistribution.Direction;
import slopewright.evaluation.equipment.LightDistribution.Measured;
import slopewright.messages.Argument;
import slopewright.messages.Notation;
import slopewright.messages.Words;
import slopewright.model.EquipmentType;
import slopewright.siting.ElementNames;

/**
 * The distribution of light of the equipment against what the rule set asks for: a chart a colour, degrees to each side and upward from the
 * axis of the beam. Where nothing was measured the chart says that it was not evaluated. Whether it is met the check says, not the drawing.
 */
public final class LightScene {

    private static final double LETTERS_MM = 2.05;
    private static final double ROOM = 1.15;
    private static final double LEAST_DEG = 2;
    private static final double GAP = 0.3;
    private static final double EDGE = 0.22;
    private static final double USUAL_ASPECT = 2.1;
    private static final Style REQUIRED = Style.line(Ink.TEXT, 0.3);
    private static final Style REACHED = Style.dashed(Ink.UNIT, 0.3);
    private static final Style FOUND = Style.area(Ink.UNIT, Ink.UNIT, 0.2);
    private static final Style WEAKER = Style.area(Ink.PENETRATION, Ink.PAPER, 0.5);

    private final DrawnAid drawn;
    private final List<LightDistribution> charts;
    private final SceneBuilder scene;
    private final double halfAzimuth;
    private final double halfElevation;

    private LightScene(DrawnAid drawn, List<LightDistribution> charts, PaperArea area) {
        this.drawn = drawn;
        this.charts = charts;
        scene = new SceneBuilder(area);
        halfAzimuth = ROOM * Math.max(LEAST_DEG, charts.stream().flatMapToDouble(chart -> DoubleStream.concat(chart.required().stream()
                .mapToDouble(Contour::azimuthDeg), chart.measured().stream().mapToDouble(point -> Math.abs(point.at().azimuthDeg()))))
                .max().orElse(0));
        halfElevation = ROOM * Math.max(LEAST_DEG, charts.stream().flatMapToDouble(chart -> DoubleStream.concat(chart.required().stream()
                .mapToDouble(contour -> contour.elevationDeg().orElse(0)), chart.measured().stream()
                        .mapToDouble(point -> Math.abs(point.at().elevationDeg())))).max().orElse(0));
    }

    /** Tells whether there is anything to draw: contours that the rule set prints, or measurements. */
    public static boolean fits(DrawnAid drawn) {
        return !LightDistribution.of(drawn.evaluation()).isEmpty();
    }

    /**
     * Draws the charts.
     *
     * @param drawn the aid
     * @param area  the area on paper
     * @return the scene; where the rule set prints no contours and nothing was measured it says so
     */
    public static Scene of(DrawnAid drawn, PaperArea area) {
        return new LightScene(drawn, LightDistribution.of(drawn.evaluation()), area).build();
    }

    private Scene build() {
        for (int i = 0; i < charts.size(); i++) {
            chart(charts.get(i), i * (2 + GAP) * halfAzimuth);
        }
        double low = -halfElevation * 1.22;
        double right = ((Math.max(1, charts.size()) - 1) * (2 + GAP) + 1 + EDGE / 2) * halfAzimuth;
        Frame frame = new Frame(-(1 + EDGE) * halfAzimuth, low, right, halfElevation * 1.18);
        if (charts.isEmpty()) {
            scene.label((frame.minX() + frame.maxX()) / 2, 0, drawn.say("drawing.light.nothing"), Anchor.MIDDLE, LETTERS_MM * 1.4, 0,
                    Ink.TEXT, "");
        }
        PaperArea paper = scene.paper();
        double aspect = paper.isFilled() ? paper.widthMm() / paper.heightMm() : USUAL_ASPECT;
        return scene.build(drawn.say("drawing.light.title", Words.name(drawn.name())), frame, frame.width() / frame.height() / aspect,
                captions(), legend(), Scene.Unit.NO_LENGTH);
    }

    private void chart(LightDistribution light, double x) {
        Style axis = Style.line(Ink.DIMENSION, 0.12);
        scene.box(axis, "", x - halfAzimuth, -halfElevation, x + halfAzimuth, halfElevation);
        scene.path(axis, "", x - halfAzimuth, 0, x + halfAzimuth, 0);
        scene.path(axis, "", x, -halfElevation, x, halfElevation);
        int step = step(halfAzimuth);
        int last = (int) halfAzimuth / step * step;
        for (int deg = -last; deg <= last; deg += step) {
            scene.path(axis, "", x + deg, -halfElevation, x + deg, -halfElevation * 1.02);
            scene.label(x + deg, -halfElevation * 1.02, drawn.language().fixed(deg, 0) + "\u00b0", Anchor.MIDDLE, LETTERS_MM, -3, Ink.TEXT,
                    "");
        }
        step = step(halfElevation);
        last = (int) halfElevation / step * step;
        for (int deg = -last; deg <= last; deg += step) {
            scene.path(axis, "", x - halfAzimuth * 1.01, deg, x - halfAzimuth, deg);
            scene.label(x - halfAzimuth * 1.02, deg, drawn.language().fixed(deg, 0) + "\u00b0", Anchor.END, LETTERS_MM, -0.8, Ink.TEXT, "");
        }
        scene.label(x, halfElevation * 1.06, drawn.say(light.measured().isEmpty() ? "drawing.light.not-evaluated"
                : light.required().isEmpty() ? "drawing.light.nothing-asked" : "drawing.light.chart",
                Words.term("colour." + light.colour().key())), Anchor.MIDDLE, LETTERS_MM * 1.2, 0, Ink.TEXT, "");
        List<Contour> required = light.required();
        for (int i = 0; i < required.size(); i++) {
            Contour contour = required.get(i);
            closed(REQUIRED, contour.outline(halfElevation), x);
            List<Direction> reached = light.reached(contour.intensityCd());
            if (reached.size() > 2) {
                closed(REACHED, reached, x);
            }
            double beside = Math.PI * (0.30 + 0.40 * (i + 0.5) / required.size());
            Direction at = contour.at(contour.elevationDeg().isPresent() ? beside : 0.04 * (i + 1), halfElevation);
            scene.callout(x + at.azimuthDeg(), at.elevationDeg(), candela(contour.intensityCd()), LETTERS_MM, Math.toDegrees(beside),
                    Ink.TEXT, "");
        }
        light.measured().forEach(point -> point(point, x));
    }

    private static int step(double halfDeg) {
        return halfDeg > 10 ? 5 : halfDeg > 5 ? 2 : 1;
    }

    private void closed(Style style, List<Direction> outline, double x) {
        double[] xy = new double[(outline.size() + 1) * 2];
        for (int i = 0; i <= outline.size(); i++) {
            xy[2 * i] = x + outline.get(i % outline.size()).azimuthDeg();
            xy[2 * i + 1] = outline.get(i % outline.size()).elevationDeg();
        }
        scene.path(style, "", xy);
    }

    private void point(Measured point, double x) {
        double px = x + point.at().azimuthDeg();
        double py = point.at().elevationDeg();
        String text = point.isWeaker() ? drawn.language().fixed(point.intensityCd(), 0) + " < " + candela(point.leastCd().getAsDouble())
                : drawn.language().fixed(point.intensityCd(), 0);
        scene.disc(px, py, point.isWeaker() ? 1.1 : 0.7, point.isWeaker() ? WEAKER : FOUND, "");
        Ink ink = point.isWeaker() ? Ink.PENETRATION : Ink.UNIT;
        scene.callout(px, py, text, LETTERS_MM, point.at().elevationDeg() < 0 ? -30 : 30, ink, "");
    }

    private String candela(double value) {
        return drawn.language().write(Words.quantity(value, Notation.CANDELA));
    }

    private List<LegendEntry> legend() {
        List<LegendEntry> legend = new ArrayList<>();
        if (charts.stream().anyMatch(chart -> !chart.required().isEmpty())) {
            legend.add(LegendEntry.line(drawn.say("drawing.light.required"), REQUIRED));
        }
        if (charts.stream().anyMatch(chart -> !chart.measured().isEmpty())) {
            legend.add(LegendEntry.line(drawn.say("drawing.light.reached"), REACHED));
            legend.add(LegendEntry.disc(drawn.say("drawing.light.measured"), FOUND));
        }
        if (charts.stream().flatMap(chart -> chart.measured().stream()).anyMatch(Measured::isWeaker)) {
            legend.add(LegendEntry.disc(drawn.say("drawing.light.weaker"), WEAKER));
        }
        return legend;
    }

    private List<String> captions() {
        List<String> captions = new ArrayList<>();
        Set<Argument> sources = charts.stream().flatMap(chart -> chart.source().stream())
                .collect(Collectors.toCollection(LinkedHashSet::new));
        captions.add(drawn.say("drawing.light.caption"));
        sources.forEach(source -> captions.add(drawn.say("drawing.light.source", source)));
        EquipmentType type = drawn.aid().getEquipment();
        if (type == null || type.getIntensities().isEmpty()) {
            captions.add(type == null ? drawn.say("drawing.light.no-type") : drawn.say("drawing.light.none-measured", ElementNames.of(
                    type)));
            return captions;
        }
        Argument given = type.getDataSource() == null ? Words.term("drawing.not-entered") : Words.name(type.getDataSource());
        captions.add(drawn.say("drawing.light.equipment", ElementNames.of(type), given));
        return captions;
    }
}
