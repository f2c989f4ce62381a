package slopewright.exchange.map;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.obstacles.SurfaceComparison;
import slopewright.evaluation.obstacles.Surroundings;
import slopewright.evaluation.obstacles.SurveyField;
import slopewright.geometry.FramePoint;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.SurveyBlock;
import slopewright.siting.ElementNames;
import slopewright.siting.site.SiteFrame;

/** The points of survey blocks that govern a surface or stand through it, as features. The other points of a block are not written. */
final class SurveyPointFeatures {

    /** The most points of one block that are shown for standing through one surface; how many there are is said. */
    private static final int MOST = 1000;

    private final Map<String, Shown> shown = new LinkedHashMap<>();
    private final MapWords words;

    private SurveyPointFeatures(MapWords words) {
        this.words = words;
    }

    /** One point of a block, against the surfaces that it stands under or through. */
    private record Shown(SurveyBlock block, String name, MapPosition position, boolean[] governs, StandingAgainst standing) {

        MapFeature feature(String id, MapWords words) {
            Map<String, Object> facts = new LinkedHashMap<>();
            facts.put("block", block.getId());
            facts.put("blockName", words.say(ElementNames.of(block)));
            facts.put("point", name);
            facts.put("topElevationM", position.elevationM());
            facts.put("horizontalAccuracyM", block.getHorizontalAccuracyM());
            facts.put("verticalAccuracyM", block.getVerticalAccuracyM());
            facts.put("source", block.getSource());
            facts.put("date", block.getDate());
            facts.put("governs", governs[0]);
            standing.putInto(facts, words);
            return new MapFeature(id, "survey-point", words.say(Message.of("map.point", ElementNames.of(block), Words.name(name))),
                    MapFeature.Shape.POINT, List.of(position), facts);
        }
    }

    static void add(List<AidEvaluation> aids, List<MapFeature> features, MapWords words) {
        SurveyPointFeatures maker = new SurveyPointFeatures(words);
        for (AidEvaluation aid : aids) {
            aid.obstacles().value().ifPresent(compared -> maker.add(aid, compared));
        }
        maker.shown.forEach((id, point) -> features.add(point.feature(id, words)));
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
                words.note(Message.of("map.points-through", Words.count(result.above()), Words.name(block.block().getId()),
                        Words.name(aid.aid().getId()), Words.count(MOST)));
            }
        }
        compared.uncompared().stream().filter(left -> left.element() instanceof SurveyBlock)
                .forEach(left -> words.note(Message.of("map.not-compared", Words.name(left.element().getId()),
                        left.reason())));
    }

    private void show(AidEvaluation aid, SiteFrame frame, Surroundings.Block block, int index, double excessM, boolean governs) {
        FramePoint place = new FramePoint(block.points().places().alongM()[index], block.points().places().rightM()[index],
                block.points().places().heightM()[index]);
        Shown point = shown.computeIfAbsent(block.block().getId() + ".point-" + (index + 1), id -> new Shown(block.block(),
                block.points().id(index), MapFacts.position(frame, place), new boolean[1], new StandingAgainst()));
        point.governs[0] |= governs;
        point.standing.add(aid, excessM, governs ? Optional.of(Message.of("map.against.governing-point")) : Optional.empty());
    }
}
