package slopewright.drawing.signal;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

import slopewright.drawing.internal.layout.SceneBuilder;
import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Frame;
import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.LegendEntry;
import slopewright.drawing.scene.Mark.Anchor;
import slopewright.drawing.scene.PaperArea;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.scene.Style;
import slopewright.messages.Words;
import slopewright.siting.Colour;
import slopewright.siting.Light;
import slopewright.siting.LightForm;
import slopewright.siting.SectorEdge;
import slopewright.siting.Siting;
import slopewright.siting.UnitPlan;

/**
 * What every light unit shows into which vertical angle: a column a unit from left to right as the pilot
 * sees them, angle upward. Scene units are degrees upward and columns to
 * the right; the aspect makes a readable chart, the angles are to scale.
 */
public final class SignalScene {

    private static final double LABEL_MM = 1.7;
    private static final double LEAST_ROOM_DEG = 0.35;
    private static final double LARGEST_ABOVE_DEG = 3;
    private static final double CHART_ASPECT = 2.4;
    private static final double LINE_SHARE = 0.055;
    private static final int MOST_NAMED_COLUMNS = 8;
    private static final int MOST_NAMES_IN_A_LINE = 12;

    private final DrawnAid drawn;
    private final Siting siting;
    private final List<UnitPlan> units;
    private final SceneBuilder scene;

    private SignalScene(DrawnAid drawn, PaperArea area) {
        scene = new SceneBuilder(area);
        this.drawn = drawn;
        siting = drawn.siting();
        units = siting.units().stream().filter(unit -> !unit.edges().isEmpty())
                .sorted(Comparator.comparingInt(UnitPlan::bar).thenComparingDouble(unit -> unit.place().rightM())).toList();
    }

    /**
     * Tells whether there is anything to draw.
     *
     * @param siting a layout
     * @return whether any unit has sectors; panels have none
     */
    public static boolean fits(Siting siting) {
        return siting.units().stream().anyMatch(unit -> !unit.edges().isEmpty());
    }

    /**
     * Draws the chart.
     *
     * @param drawn an aid with lights
     * @return the scene
     * @throws IllegalArgumentException where no unit has sectors
     */
    public static Scene of(DrawnAid drawn) {
        return of(drawn, PaperArea.usual());
    }

    /**
     * Draws the chart for an area on paper.
     *
     * @param drawn an aid with lights
     * @param area  the area
     * @return the scene
     * @throws IllegalArgumentException where no unit has sectors
     */
    public static Scene of(DrawnAid drawn, PaperArea area) {
        if (!fits(drawn.siting())) {
            throw new IllegalArgumentException(drawn.say("drawing.no-sectors"));
        }
        return new SignalScene(drawn, area).build();
    }

    private Scene build() {
        TreeSet<Double> angles = new TreeSet<>();
        units.forEach(unit -> unit.edges().forEach(edge -> angles.add(Math.round(edge.angleDeg() * 1e6) / 1e6)));
        double lowest = Math.max(0, Math.min(angles.first(), siting.slopeDeg()));
        double highest = Math.min(angles.last(), siting.slopeDeg() + LARGEST_ABOVE_DEG);
        double margin = Math.max(LEAST_ROOM_DEG, (highest - lowest) * 0.25);
        double low = lowest - margin;
        double high = Math.max(highest, siting.slopeDeg()) + margin;
        double names = (high - low) * (units.size() > MOST_NAMES_IN_A_LINE ? 0.17 : 0.1);
        double left = -units.size() * 0.22 - 0.3;
        Frame frame = new Frame(left, low - names, units.size() + 0.3 + units.size() * 0.2, high + names * 0.3);
        double free = Double.NEGATIVE_INFINITY;
        for (double angle : angles.headSet(high)) {
            double level = Math.max(angle, free);
            free = level + (high - low) * LINE_SHARE;
            scene.path(Style.line(Ink.DIMENSION, 0.12), "", left * 0.3, level, -0.02, angle, units.size(), angle);
            scene.label(left * 0.32, level, drawn.language().write(Words.deg(angle)), Anchor.END, LABEL_MM, -0.8, Ink.TEXT, "");
        }
        for (int i = 0; i < units.size(); i++) {
            column(units.get(i), i, low, high);
        }
        scene.path(Style.dashed(Ink.TEXT, 0.3), "", units.size(), siting.slopeDeg(), units.size() + 0.12, siting.slopeDeg());
        scene.callout(units.size() + 0.12, siting.slopeDeg(), drawn.say("drawing.slope", Words.deg(siting.slopeDeg())), LABEL_MM, Ink.TEXT,
                "");
        PaperArea paper = scene.paper();
        double aspect = paper.isFilled() ? paper.widthMm() / paper.heightMm() : CHART_ASPECT;
        double exaggeration = frame.width() / frame.height() / aspect;
        List<String> captions = List.of(drawn.say("drawing.signals.caption", Words.deg(siting.lowestOnSlopeDeg())));
        return scene.build(drawn.say("drawing.signals.title", Words.name(drawn.name())), frame, exaggeration, captions, legend(),
                Scene.Unit.NO_LENGTH);
    }

    /** Returns the key to the lights that occur, in the order of their colours. */
    private List<LegendEntry> legend() {
        Map<String, LegendEntry> entries = new TreeMap<>();
        for (UnitPlan unit : units) {
            unit.edges().forEach(edge -> enter(entries, edge.below()));
            enter(entries, unit.lightAt(unit.edges().get(unit.edges().size() - 1).angleDeg() + 1));
        }
        return List.copyOf(entries.values());
    }

    private void enter(Map<String, LegendEntry> entries, Light light) {
        boolean dark = light.form() == LightForm.OFF;
        entries.putIfAbsent(word(light), LegendEntry.area(word(light), Style.area(Ink.DIMENSION, dark ? Ink.PAPER
                : Lights.ink(light.colour()), 0.15)));
    }

    private String word(Light light) {
        return drawn.language().write(Lights.word(light));
    }

    private void column(UnitPlan unit, int index, double low, double high) {
        double from = low;
        for (SectorEdge edge : unit.edges()) {
            if (edge.angleDeg() >= high) {
                break;
            }
            sector(unit, index, from, Math.max(low, edge.angleDeg()), edge.below());
            from = Math.max(low, edge.angleDeg());
        }
        sector(unit, index, from, high, unit.lightAt((from + high) / 2));
        boolean lower = units.size() > MOST_NAMES_IN_A_LINE && index % 2 == 1;
        scene.label(index + 0.5, low, unit.id(), Anchor.MIDDLE, LABEL_MM, lower ? -5.6 : -3, Ink.TEXT, drawn.elementId(unit));
    }

    private void sector(UnitPlan unit, int index, double from, double to, Light light) {
        if (to <= from) {
            return;
        }
        boolean dark = light.form() == LightForm.OFF;
        boolean pale = dark || light.colour() == Colour.WHITE || light.colour() == Colour.AMBER;
        scene.box(Style.area(Ink.DIMENSION, dark ? Ink.PAPER : Lights.ink(light.colour()), 0.15), drawn.elementId(unit), index + 0.12,
                from, index + 0.88,
                to);
        if (units.size() <= MOST_NAMED_COLUMNS) {
            scene.label(index + 0.5, (from + to) / 2, word(light), Anchor.MIDDLE, 1.5, -0.75, pale ? Ink.TEXT : Ink.PAPER,
                    "");
        }
    }

}
