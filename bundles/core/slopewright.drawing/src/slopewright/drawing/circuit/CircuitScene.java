package slopewright.drawing.circuit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import slopewright.drawing.internal.layout.SceneBuilder;
import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Frame;
import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.Mark.Anchor;
import slopewright.drawing.scene.PaperArea;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.Style;
import slopewright.evaluation.circuit.AidLoad;
import slopewright.evaluation.circuit.CircuitLoad;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Notation;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;
import slopewright.model.ApproachAid;
import slopewright.model.Circuit;
import slopewright.model.LightUnit;
import slopewright.model.Project;
import slopewright.model.util.Projects;
import slopewright.siting.ElementNames;

/**
 * The single-line diagram of the circuit that feeds an aid: supply, cable, every indicator on it with its units, their lamps and loads, and
 * what they come to. Numbers are those of {@link CircuitLoad}; what is not entered is said not to be known.
 */
public final class CircuitScene {

    /** The diagram is laid out in a frame of this size, not to scale. */
    private static final double WIDTH = 200;
    private static final double HEIGHT = 100;
    private static final double BUS_Y = 62;
    private static final double SUPPLY_W = 34;
    private static final double SUPPLY_H = 16;
    private static final double FIRST_X = 56;
    private static final double LAST_X = 194;
    private static final double TAP = 8;
    private static final double LETTERS_MM = 2.05;
    private static final double LINE = 5.2;
    /** With more units on a circuit than that, an indicator has one symbol for all of its units. */
    private static final int MOST_UNITS = 24;
    private static final Style WIRE = Style.line(Ink.TEXT, 0.35);

    private final DrawnAid drawn;
    private final CircuitLoad load;
    private final SceneBuilder scene;
    private final boolean transformers;

    private CircuitScene(DrawnAid drawn, Circuit circuit, PaperArea area) {
        this.drawn = drawn;
        load = CircuitLoad.of(circuit);
        scene = new SceneBuilder(area);
        transformers = circuit.getRegulatorRatingKva() != null && !load.hasBattery();
    }

    /** Returns the circuit that feeds an aid, empty where none is entered. */
    public static Optional<Circuit> feeding(ApproachAid aid) {
        return Projects.project(aid).map(Project::getAerodrome).map(Aerodrome::getCircuits).stream().flatMap(List::stream)
                .filter(circuit -> circuit.getAids().contains(aid)).findFirst();
    }

    /**
     * Draws the diagram.
     *
     * @param drawn the aid
     * @param area  the area on paper
     * @return the scene
     * @throws IllegalArgumentException where no circuit feeds the aid; the message says so
     */
    public static Scene of(DrawnAid drawn, PaperArea area) {
        Circuit circuit = feeding(drawn.aid()).orElseThrow(() -> new IllegalArgumentException(drawn.say("drawing.circuit.none")));
        return new CircuitScene(drawn, circuit, area).build();
    }

    private Scene build() {
        supply();
        List<AidLoad> aids = load.aids();
        int units = aids.stream().mapToInt(AidLoad::units).sum();
        boolean single = units <= MOST_UNITS;
        int taps = single ? Math.max(units, aids.size()) : aids.size();
        double step = (LAST_X - FIRST_X) / Math.max(1, taps + aids.size() - 1);
        double x = FIRST_X;
        double last = FIRST_X;
        for (int i = 0; i < aids.size(); i++) {
            List<String> names = single ? names(aids.get(i)) : List.of(count(aids.get(i)));
            double first = x;
            for (String name : names) {
                tap(x, name, aids.get(i).aid().getId());
                last = x;
                x += step;
            }
            aid(aids.get(i), first, last, i % 2 == 1);
            x += step;
        }
        scene.path(WIRE, "", SUPPLY_W, BUS_Y, last, BUS_Y);
        scene.label((SUPPLY_W + FIRST_X) / 2 - 2, BUS_Y, cable(), Anchor.MIDDLE, LETTERS_MM, -3.4, Ink.TEXT, "");
        totals();
        Frame frame = scene.paper().shaped(new Frame(0, 0, WIDTH, HEIGHT));
        return scene.build(drawn.say("drawing.circuit.title", name(load.circuit())), frame, 1, captions(), List.of(), Scene.Unit.NO_LENGTH);
    }

    private Argument name(Circuit circuit) {
        return ElementNames.of(circuit);
    }

    private void supply() {
        Circuit circuit = load.circuit();
        scene.box(Style.area(Ink.TEXT, Ink.PAPER, 0.4), String.valueOf(circuit.getId()), 2, BUS_Y - SUPPLY_H / 2, SUPPLY_W,
                BUS_Y + SUPPLY_H / 2);
        List<String> lines = new ArrayList<>(List.of(drawn.language().write(name(circuit)), circuit.getSupply() == null
                ? drawn.say("drawing.circuit.supply-unknown") : circuit.getSupply()));
        lines.add(load.hasBattery() ? drawn.say("drawing.circuit.battery", known(circuit.getCapacityAh(), Notation.NUMBER))
                : drawn.say("drawing.circuit.rating", known(circuit.getRegulatorRatingKva(), Notation.NUMBER)));
        lines.add(drawn.say("drawing.circuit.current", known(circuit.getCurrentA(), Notation.NUMBER)));
        for (int i = 0; i < lines.size(); i++) {
            scene.label(2, BUS_Y + SUPPLY_H / 2 + 2 + (lines.size() - 1 - i) * LINE, lines.get(i), Anchor.START, LETTERS_MM, 0,
                    Ink.TEXT, "");
        }
        scene.label((2 + SUPPLY_W) / 2, BUS_Y, load.hasBattery() ? "+  -" : "~", Anchor.MIDDLE, LETTERS_MM * 1.6, -1.2, Ink.TEXT, "");
    }

    private static List<String> names(AidLoad aid) {
        return aid.aid().getUnits().isEmpty() ? List.of("-") : aid.aid().getUnits().stream().map(LightUnit::getLabel)
                .map(label -> label == null ? "-" : label).toList();
    }

    private String count(AidLoad aid) {
        return drawn.say("drawing.circuit.units", Words.count(aid.units()));
    }

    /** A unit on the line: its transformer as two circles, where a regulator feeds it, then its lamps. */
    private void tap(double x, String name, String id) {
        double y = BUS_Y - TAP;
        scene.path(WIRE, id, x, BUS_Y, x, y);
        if (transformers) {
            scene.disc(x, y - 1.4, 1.5, Style.area(Ink.TEXT, Ink.NONE, 0.3), id);
            scene.disc(x, y - 3.6, 1.5, Style.area(Ink.TEXT, Ink.NONE, 0.3), id);
            y -= 5;
        }
        scene.path(WIRE, id, x, y, x, y - 3);
        scene.disc(x, y - 4.6, 1.7, Style.area(Ink.UNIT, Ink.PAPER, 0.35), id);
        cross(new ScenePoint(x, y - 4.6), id);
        scene.label(x, y - 11, name, Anchor.MIDDLE, LETTERS_MM, 0, Ink.TEXT, id);
    }

    private void cross(ScenePoint at, String id) {
        double arm = 1.1;
        scene.path(Style.line(Ink.UNIT, 0.25), id, at.x() - arm, at.y() - arm, at.x() + arm, at.y() + arm);
        scene.path(Style.line(Ink.UNIT, 0.25), id, at.x() - arm, at.y() + arm, at.x() + arm, at.y() - arm);
    }

    /** Names an indicator over its units; neighbours on different levels, so that long names keep apart. */
    private void aid(AidLoad aid, double first, double last, boolean raised) {
        double y = BUS_Y + 6 + (raised ? 3 * LINE : 0);
        boolean own = aid.aid() == drawn.aid();
        Style brace = Style.line(own ? Ink.UNIT : Ink.DIMENSION, own ? 0.5 : 0.2);
        scene.path(brace, aid.aid().getId(), first - 1.5, BUS_Y + 2, first - 1.5, y - 1, last + 1.5, y - 1, last + 1.5, BUS_Y + 2);
        scene.label((first + last) / 2, y + LINE, drawn.language().write(ElementNames.of(aid.aid())), Anchor.MIDDLE, LETTERS_MM, 0,
                own ? Ink.UNIT : Ink.TEXT, aid.aid().getId());
        scene.label((first + last) / 2, y, drawn.say("drawing.circuit.lamps", Words.count(aid.units()), known(aid.lampsPerUnit() == null
                ? null : Double.valueOf(aid.lampsPerUnit()), Notation.COUNT), known(aid.lampPowerW(), Notation.NUMBER),
                known(aid.powerW(), Notation.NUMBER)), Anchor.MIDDLE, LETTERS_MM, 0, Ink.TEXT, aid.aid().getId());
    }

    private String cable() {
        return load.circuit().getCableLengthM() == null ? drawn.say("drawing.circuit.cable-unknown")
                : drawn.say("drawing.circuit.cable", Words.wholeM(load.circuit().getCableLengthM()));
    }

    private void totals() {
        List<String> lines = new ArrayList<>(List.of(drawn.say("drawing.circuit.total-lamps", known(load.powerW(), Notation.NUMBER))));
        if (load.hasBattery()) {
            lines.add(drawn.say("drawing.circuit.total-hours", known(load.batteryHours(), Notation.NUMBER)));
        } else {
            lines.add(drawn.say("drawing.circuit.total-cable", known(load.circuit().getCableResistanceOhmPerKm(), Notation.NUMBER),
                    known(load.cableW(), Notation.NUMBER)));
            lines.add(drawn.say("drawing.circuit.total-all", known(load.totalVa(), Notation.NUMBER), known(load.ratingPercent(),
                    Notation.NUMBER)));
        }
        for (int i = 0; i < lines.size(); i++) {
            scene.label(2, 20 - i * LINE, lines.get(i), Anchor.START, LETTERS_MM, 0, Ink.TEXT, "");
        }
    }

    private static Argument known(Double value, Notation notation) {
        return value == null ? Message.of("drawing.circuit.not-known") : Words.quantity(value, notation);
    }

    private List<String> captions() {
        List<String> captions = new ArrayList<>(List.of(drawn.say("drawing.circuit.caption")));
        if (transformers) {
            captions.add(drawn.say("drawing.circuit.transformers"));
        }
        return captions;
    }
}
