package slopewright.drawing.equipment;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import slopewright.drawing.internal.layout.SceneBuilder;
import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Frame;
import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.LegendEntry;
import slopewright.drawing.scene.Mark.Anchor;
import slopewright.drawing.scene.PaperArea;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.scene.Style;
import slopewright.drawing.scene.TextWidth;
import slopewright.evaluation.equipment.UnitMounting;
import slopewright.messages.Argument;
import slopewright.messages.Words;
import slopewright.model.EquipmentType;
import slopewright.siting.ElementNames;

/**
 * How the units of an aid stand: a side view with the names of the levels, not to scale, and a table of every unit with its levels, mass
 * and mounting. What the project does not hold, the size of a foundation above all, is said not to be in it.
 */
public final class MountingScene {

    private static final double LETTERS_MM = 2.5;
    private static final double LEAST_LETTERS_MM = 1.8;
    private static final double EDGE = 5;
    private static final double LINE = 6.2;
    private static final double FIGURE_WIDTH = 62;
    private static final double LINE_PER_LETTER = 1.6;
    private static final int DECIMALS = 3;
    private static final PaperArea SHOWN = new PaperArea(267, 138, 1.22, 0);
    private static final List<String> HEADS = List.of("unit", "ground", "lens", "above", "stands", "setting", "turned", "mass", "mounting");
    private static final double[] COLUMNS = {0, 0.10, 0.21, 0.32, 0.44, 0.56, 0.67, 0.78, 0.87};

    private final DrawnAid drawn;
    private final List<UnitMounting> units;
    private final SceneBuilder scene;
    private final double width;
    private final double height;
    private final double scale;

    private MountingScene(DrawnAid drawn, PaperArea area) {
        this.drawn = drawn;
        units = UnitMounting.of(drawn.evaluation(), drawn.siting(), drawn.frame());
        PaperArea paper = area.isFilled() ? area : SHOWN;
        scale = Math.max(1, paper.lettering() / SHOWN.lettering());
        scene = new SceneBuilder(new PaperArea(paper.widthMm(), paper.heightMm(), 1, 0));
        width = paper.widthMm();
        height = paper.heightMm();
    }

    /**
     * Draws the sheet.
     *
     * @param drawn the aid
     * @param area  the area on paper
     * @return the scene, its unit a millimetre of paper
     */
    public static Scene of(DrawnAid drawn, PaperArea area) {
        return new MountingScene(drawn, area).build();
    }

    private Scene build() {
        figure();
        table();
        List<LegendEntry> legend = List.of(LegendEntry.line(drawn.say("drawing.mounting.ground"), Style.line(Ink.GROUND, 0.5)),
                LegendEntry.area(drawn.say("drawing.mounting.foundation"), Style.area(Ink.TEXT, Ink.PAVEMENT, 0.25)),
                LegendEntry.area(drawn.say("drawing.mounting.box"), Style.area(Ink.UNIT, Ink.PAPER, 0.35)));
        return scene.build(drawn.say("drawing.mounting.title", Words.name(drawn.name())), new Frame(0, 0, width, height), 1, captions(),
                legend, Scene.Unit.NO_LENGTH);
    }

    /** The side view of a unit, its beam to the left. */
    private void figure() {
        double middle = EDGE + FIGURE_WIDTH * scale * 0.5;
        double ground = height * 0.38;
        double unit = scale;
        Style block = Style.area(Ink.TEXT, Ink.PAVEMENT, 0.25);
        scene.box(block, "", middle - 12 * unit, ground - 14 * unit, middle + 12 * unit, ground + unit);
        scene.path(Style.line(Ink.GROUND, 0.5), "", EDGE, ground, middle - 12 * unit, ground);
        scene.path(Style.line(Ink.GROUND, 0.5), "", middle + 12 * unit, ground, EDGE + FIGURE_WIDTH * unit, ground);
        for (double leg : List.of(-7.0, 7.0)) {
            scene.path(Style.line(Ink.TEXT, 0.5), "", middle + leg * unit, ground + unit, middle + leg * unit, ground + 14 * unit);
            scene.disc(middle + leg * unit, ground + 4 * unit, 0.8 * unit, Style.area(Ink.TEXT, Ink.PAPER, 0.3), "");
        }
        double lens = ground + 19 * unit;
        scene.box(Style.area(Ink.UNIT, Ink.PAPER, 0.35), "", middle - 11 * unit, ground + 14 * unit, middle + 11 * unit,
                ground + 24 * unit);
        scene.disc(middle - 11 * unit, lens, 1.2 * unit, Style.area(Ink.UNIT, Ink.WHITE, 0.3), "");
        double end = middle - 27 * unit;
        scene.path(Style.dashed(Ink.AXIS, 0.2), "", middle - 11 * unit, lens, end, lens);
        scene.path(Style.line(Ink.UNIT, 0.3), "", middle - 11 * unit, lens, end, lens + 4 * unit);
        label(end, lens + 5.5 * unit, drawn.say("drawing.mounting.setting"), Anchor.START);
        double dimension = middle + 20 * unit;
        scene.path(Style.line(Ink.DIMENSION, 0.2), "", middle - 9 * unit, lens, dimension + 2 * unit, lens);
        scene.path(Style.line(Ink.DIMENSION, 0.2), "", dimension, ground, dimension, lens);
        label(dimension - 2 * unit, (lens + ground) / 2 - 4 * unit, "h", Anchor.END);
        label(middle, ground + 30 * unit, drawn.say("drawing.mounting.lens-level"), Anchor.MIDDLE);
        label(middle, ground - 19 * unit, drawn.say("drawing.mounting.by-design"), Anchor.MIDDLE);
        label(middle + 9 * unit, ground + 8 * unit, drawn.say("drawing.mounting.leg"), Anchor.START);
    }

    private void label(double x, double y, String text, Anchor anchor) {
        scene.label(x, y, text, anchor, LEAST_LETTERS_MM * scale, 0, Ink.TEXT, "");
    }

    private void table() {
        double left = EDGE * 2 + FIGURE_WIDTH * scale;
        double line = Math.min(LINE * scale, (height - 4 * EDGE) / (units.size() + 2));
        double letters = Math.max(LEAST_LETTERS_MM, Math.min(LETTERS_MM * scale, line / LINE_PER_LETTER));
        double y = height - 2 * EDGE;
        for (int i = 0; i < HEADS.size(); i++) {
            List<String> words = TextWidth.wrap(drawn.say("drawing.mounting.head." + HEADS.get(i)), LEAST_LETTERS_MM * scale, (width - left
                    - EDGE) * 0.095);
            for (int row = 0; row < words.size(); row++) {
                scene.label(x(left, i), y - row * 2.6 * scale, words.get(row), Anchor.START, LEAST_LETTERS_MM * scale, 0, Ink.TEXT, "");
            }
        }
        y -= 6.2 * scale;
        scene.path(Style.line(Ink.DIMENSION, 0.25), "", left, y, width - EDGE, y);
        for (UnitMounting unit : units) {
            y -= line;
            List<String> cells = cells(unit);
            for (int i = 0; i < cells.size(); i++) {
                scene.label(x(left, i), y, cells.get(i), Anchor.START, letters, 0, Ink.TEXT, drawn.elementId(unit.plan()));
            }
        }
    }

    private double x(double left, int column) {
        return left + COLUMNS[column] * (width - EDGE - left);
    }

    private List<String> cells(UnitMounting unit) {
        return List.of(unit.plan().id(), metres(unit.groundM()), metres(OptionalDouble.of(unit.lensM())), metres(unit.lensAboveGroundM()),
                metres(unit.standsM()), drawn.language().write(Words.deg(unit.plan().settingDeg())), unit.turnedDeg().isPresent()
                        ? drawn.language().write(Words.deg(unit.turnedDeg().getAsDouble())) : "-", unit.massKg().isPresent()
                                ? drawn.language().fixed(unit.massKg().getAsDouble(), 1) : "-", drawn.language().write(unit.frangible()
                                        .<Argument>map(yes -> Words.term(yes ? "drawing.mounting.frangible" : "drawing.mounting.rigid"))
                                        .orElse(Words.term("drawing.not-entered"))));
    }

    private String metres(OptionalDouble value) {
        return value.isPresent() ? drawn.language().fixed(value.getAsDouble() / drawn.unitM(), DECIMALS) : "-";
    }

    private List<String> captions() {
        EquipmentType type = drawn.aid().getEquipment();
        List<String> captions = new ArrayList<>(List.of(drawn.say("drawing.mounting.caption", Words.name(drawn.unitName()))));
        captions.add(type == null ? drawn.say("drawing.mounting.no-type") : drawn.say("drawing.mounting.equipment", ElementNames.of(type),
                type.getDataSource() == null ? Words.term("drawing.not-entered") : Words.name(type.getDataSource())));
        captions.add(drawn.say("drawing.mounting.foundation-by"));
        return captions;
    }
}
