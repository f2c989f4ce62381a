package slopewright.drawing.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.LegendEntry;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.Style;
import slopewright.evaluation.terrain.TerrainField;
import slopewright.messages.Argument;
import slopewright.messages.Words;
import slopewright.model.SurveyBlock;

/** The terrain under the extended centre line, as models of it have it: no survey, and marked as what it is; where none lies, none. */
final class SectionTerrain {

    private static final double STEP_MM = 0.5;
    private static final double ROOM_MM = 12;
    private static final Style LINE = Style.dashed(Ink.GROUND, 0.35);

    private final DrawnAid drawn;
    private final List<TerrainField> models;

    SectionTerrain(DrawnAid drawn) {
        this.drawn = drawn;
        models = TerrainField.of(drawn.surroundings());
    }

    void draw(SectionLines lines, SectionLabels labels, double lettersMm) {
        for (TerrainField model : models) {
            List<List<ScenePoint>> pieces = pieces(model, lines.window());
            String id = String.valueOf(model.block().getId());
            pieces.forEach(piece -> lines.path(LINE, id, piece));
            pieces.stream().filter(piece -> piece.size() * STEP_MM > ROOM_MM).findFirst().map(piece -> piece.get(piece.size() / 2))
                    .ifPresent(at -> labels.write(at.x(), at.y(), drawn.say("drawing.terrain", accuracy(model)), lettersMm,
                            SectionLabels.Side.BELOW_LEFT, Ink.GROUND, id));
        }
    }

    /** The line as far as it is known and lies in the window, a piece for each stretch without a gap. */
    private static List<List<ScenePoint>> pieces(TerrainField model, SectionWindow window) {
        List<List<ScenePoint>> pieces = new ArrayList<>();
        List<ScenePoint> open = new ArrayList<>();
        double step = STEP_MM / window.mmAlong();
        for (double along = window.minAlongM(); along <= window.maxAlongM(); along += step) {
            double at = along;
            Optional<Double> height = model.at(at, 0).map(TerrainField.Ground::heightM).filter(found -> window.holds(at, found));
            if (height.isPresent()) {
                open.add(new ScenePoint(at, height.get()));
            } else {
                keep(open, pieces);
                open = new ArrayList<>();
            }
        }
        keep(open, pieces);
        return pieces;
    }

    private static void keep(List<ScenePoint> piece, List<List<ScenePoint>> pieces) {
        if (piece.size() > 1) {
            pieces.add(piece);
        }
    }

    private static Argument accuracy(TerrainField model) {
        return Words.m(model.verticalAccuracyM());
    }

    /** Returns the line of the key, none where there is no terrain. */
    List<LegendEntry> legend() {
        return models.isEmpty() ? List.of() : List.of(LegendEntry.line(drawn.say("drawing.legend.terrain"), LINE));
    }

    /** Returns where each model comes from, of which day it is and how accurate. */
    List<String> notes() {
        return models.stream().map(model -> {
            SurveyBlock block = model.block();
            return drawn.say("drawing.terrain.note", Words.name(said(block.getSource(), block.getName())),
                    Words.name(said(block.getDate(), "-")), accuracy(model));
        }).toList();
    }

    private static String said(String text, String otherwise) {
        return text == null || text.isBlank() ? String.valueOf(otherwise) : text;
    }
}
