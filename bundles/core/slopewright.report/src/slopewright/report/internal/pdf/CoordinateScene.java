package slopewright.report.internal.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.Mark.Anchor;
import slopewright.drawing.scene.PaperArea;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.Style;
import slopewright.geometry.FramePoint;
import slopewright.messages.Words;
import slopewright.model.Place;
import slopewright.model.SlopewrightFactory;
import slopewright.report.internal.html.Coordinates;
import slopewright.report.internal.html.ReportWords;
import slopewright.siting.UnitPlan;
import slopewright.siting.site.SiteFrame;

/** The sheet to set out from: origin, reference and every unit of an aid with coordinates, level and setting, as the report has them. */
public final class CoordinateScene {

    private static final double LETTERS_MM = 2.5;
    private static final double LEAST_LETTERS_MM = 1.8;
    private static final double LINE_MM = 7;
    private static final double EDGE_MM = 6;
    private static final double HEAD_MM = 8;
    private static final int DECIMALS = 3;
    private static final double[] COLUMNS = {0, 0.14, 0.28, 0.43, 0.535, 0.65, 0.735, 0.81, 0.91};
    private static final List<String> HEADS = List.of("unit", "latitude", "longitude", "east-m", "north-m", "along-m", "right-m",
            "lens-elevation-m", "setting");

    private final DrawnAid drawn;
    private final ReportWords words;
    private final PaperArea area;
    private final List<Mark> marks = new ArrayList<>();
    private final double line;
    private double y;

    private CoordinateScene(DrawnAid drawn, PaperArea area) {
        this.drawn = drawn;
        this.area = area;
        words = new ReportWords(drawn.language());
        line = Math.min(LINE_MM, (area.heightMm() - HEAD_MM - EDGE_MM) / (drawn.siting().units().size() + 3));
        y = area.heightMm() - HEAD_MM;
    }

    /**
     * Makes the sheet of an aid.
     *
     * @param drawn the aid
     * @param area  the area on paper
     * @return the scene, its unit a millimetre of paper
     */
    public static Scene of(DrawnAid drawn, PaperArea area) {
        return new CoordinateScene(drawn, area).write();
    }

    private Scene write() {
        row(HEADS.stream().map(head -> words.say("head." + head)).toList());
        marks.add(new Mark.Path(List.of(new ScenePoint(EDGE_MM, y + line * 0.7), new ScenePoint(area.widthMm() - EDGE_MM, y + line * 0.7)),
                false, Style.line(Ink.DIMENSION, 0.25), ""));
        row(words.term(drawn.atRunway() ? "threshold" : "hover-point"), new FramePoint(0, 0, 0), "");
        row(words.term("reference"), drawn.siting().reference(), "");
        for (UnitPlan unit : drawn.siting().units()) {
            row(unit.id(), unit.place(), words.minutes(unit.settingDeg()));
        }
        List<String> captions = List.of(words.say(drawn.atRunway() ? "unit-places-runway" : "unit-places-helipad"));
        return new Scene(words.say("setting-out-of", Words.name(drawn.name())), 0, 0, area.widthMm(), area.heightMm(), 1, marks, captions,
                List.of(), Scene.Unit.NO_LENGTH);
    }

    private void row(String name, FramePoint point, String setting) {
        SiteFrame frame = drawn.frame();
        Optional<SiteFrame.LatLon> place = frame.latLon(point);
        Place grid = SlopewrightFactory.eINSTANCE.createPlace();
        frame.fromFrame(point, grid);
        row(List.of(name, place.map(found -> Coordinates.latitude(words, found.latitudeDeg())).orElse("-"), place.map(
                found -> Coordinates.longitude(words, found.longitudeDeg())).orElse("-"), metres(grid.getEastM()), metres(grid.getNorthM()),
                metres(point.alongM()), metres(point.rightM()), metres(frame.originElevationM() + point.heightM()), setting));
    }

    private String metres(Double value) {
        return value == null ? "-" : words.fixed(value, DECIMALS);
    }

    private void row(List<String> cells) {
        double letters = Math.max(LEAST_LETTERS_MM, Math.min(LETTERS_MM, line / 1.6));
        for (int i = 0; i < cells.size(); i++) {
            marks.add(new Mark.Label(new ScenePoint(EDGE_MM + COLUMNS[i] * (area.widthMm() - 2 * EDGE_MM), y), cells.get(i), Anchor.START,
                    letters, 0, Ink.TEXT, ""));
        }
        y -= line;
    }
}
