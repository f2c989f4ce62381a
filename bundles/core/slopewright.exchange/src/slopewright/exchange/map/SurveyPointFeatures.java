package slopewright.exchange.map;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.obstacles.SurfaceComparison;
import slopewright.evaluation.obstacles.Surroundings;
import slopewright.evaluation.obstacles.SurveyField;
import slopewright.geometry.FramePoint;
import slopewright.model.SurveyBlock;
import slopewright.model.util.Projects;
import slopewright.siting.site.SiteFrame;

/** The points of survey blocks that govern a surface or stand through it, as features. The other points of a block are not written. */
final class SurveyPointFeatures {

    /** The most points of one block that are shown for standing through one surface; how many there are is said. */
    private static final int MOST = 1000;

    private final Map<String, Shown> shown = new LinkedHashMap<>();
    private final List<String> notes;

    private SurveyPointFeatures(List<String> notes) {
        this.notes = notes;
    }

    /** One point of a block, against the surfaces that it stands under or through. */
    private record Shown(SurveyBlock block, String name, MapPosition position, boolean[] governs, StandingAgainst standing) {

        MapFeature feature(String id) {
            Map<String, Object> facts = new LinkedHashMap<>();
            facts.put("block", block.getId());
            facts.put("blockName", Projects.label(block));
            facts.put("point", name);
            facts.put("topElevationM", position.elevationM());
            facts.put("horizontalAccuracyM", block.getHorizontalAccuracyM());
            facts.put("verticalAccuracyM", block.getVerticalAccuracyM());
            facts.put("source", block.getSource());
            facts.put("date", block.getDate());
            facts.put("governs", governs[0]);
            standing.putInto(facts);
            return new MapFeature(id, "survey-point", Projects.label(block) + ", point " + name, MapFeature.Shape.POINT, List.of(position),
                    facts);
        }
    }

    static void add(List<AidEvaluation> aids, List<MapFeature> features, List<String> notes) {
        SurveyPointFeatures maker = new SurveyPointFeatures(notes);
        for (AidEvaluation aid : aids) {
            aid.obstacles().value().ifPresent(compared -> maker.add(aid, compared));
        }
        maker.shown.forEach((id, point) -> features.add(point.feature(id)));
    }

    private void add(AidEvaluation aid, SurfaceComparison compared) {
        SiteFrame frame = aid.frame().value().orElseThrow();
        Surroundings around = aid.surroundings().value().orElseThrow();
        for (Surroundings.Block block : around.blocks()) {
            SurveyField points = block.points();
            SurveyField.Result result = points.compare(compared.surface());
            result.governing().ifPresent(worst -> show(aid, frame, block, result.worst(), worst.excessM(), true));
            for (SurveyField.Above above : points.above(compared.surface(), MOST)) {
                if (above.index() != result.worst()) {
                    show(aid, frame, block, above.index(), above.excessM(), false);
                }
            }
            if (result.above() > MOST) {
                notes.add(result.above() + " points of " + block.block().getId() + " stand through the surface of " + aid.aid().getId()
                        + "; the first " + MOST + " and the governing one are shown.");
            }
        }
        compared.uncompared().stream().filter(left -> left.element() instanceof SurveyBlock)
                .forEach(left -> notes.add(left.element().getId() + " is not compared: " + left.reason().english()));
    }

    private void show(AidEvaluation aid, SiteFrame frame, Surroundings.Block block, int index, double excessM, boolean governs) {
        FramePoint place = new FramePoint(block.points().places().alongM()[index], block.points().places().rightM()[index],
                block.points().places().heightM()[index]);
        Shown point = shown.computeIfAbsent(block.block().getId() + ".point-" + (index + 1), id -> new Shown(block.block(),
                block.points().id(index), MapFacts.position(frame, place), new boolean[1], new StandingAgainst()));
        point.governs[0] |= governs;
        point.standing.add(aid, excessM, governs ? ", the governing point of its block" : "");
    }
}
