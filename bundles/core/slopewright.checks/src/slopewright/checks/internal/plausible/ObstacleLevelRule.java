package slopewright.checks.internal.plausible;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.stream.Stream;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.SiteRule;
import slopewright.evaluation.ReadBacks;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;
import slopewright.model.Helipad;
import slopewright.model.Obstacle;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.ReadBack;
import slopewright.model.RunwayEnd;
import slopewright.siting.ElementNames;

/**
 * An obstacle that ends more than fifteen metres below every threshold and helipad stands in no obstacle surface. It may stand in a valley,
 * or its height above the ground, or feet, were entered for its elevation: it is not evaluated until a second person has held its entries
 * against the survey. No obstacle ends more than six kilometres above, higher than any mountain beside an aerodrome (own bands). Every
 * place of an obstacle counts, beside the top of the whole, for each of them is one of a top. A shielded obstacle says by what. Severity
 * fail: an obstacle that is entered too low is not there for any surface.
 */
public final class ObstacleLevelRule extends SiteRule {
    private static final double BELOW_M = 15;
    private static final double ABOVE_M = 6000;

    /** Made by the service loader. */
    public ObstacleLevelRule() {
        super("DATA-51", Severity.FAIL);
    }

    @Override
    protected void check(Project project, OutcomeCollector outcomes) {
        Aerodrome aerodrome = project.getAerodrome();
        OptionalDouble lowest = Stream.concat(aerodrome.getRunways().stream().flatMap(runway -> runway.getEnds().stream())
                .map(RunwayEnd::getThresholdElevationM), aerodrome.getHelipads().stream().map(Helipad::getElevationM))
                .filter(Objects::nonNull).mapToDouble(Double::doubleValue).min();
        if (lowest.isEmpty()) {
            return;
        }
        Map<String, ReadBack> known = ReadBacks.byElement(project);
        for (Obstacle obstacle : aerodrome.getObstacles()) {
            List<Double> tops = tops(obstacle);
            if (!tops.isEmpty()) {
                boolean read = ReadBacks.state(known, obstacle) == ReadBacks.State.SAME;
                level(obstacle, tops, lowest.getAsDouble(), read, outcomes);
            }
            if (Boolean.TRUE.equals(obstacle.getShielded())) {
                boolean named = obstacle.getShieldedBy() != null || obstacle.getShieldingStudy() != null
                        && !obstacle.getShieldingStudy().isBlank();
                outcomes.about(obstacle).met(named).saying(named ? "shielded" : "shielded-by-nothing", ElementNames.of(obstacle))
                        .advising("name").add();
            }
        }
    }

    private static List<Double> tops(Obstacle obstacle) {
        return Stream.concat(Stream.of(obstacle).map(Obstacle::getTopElevationM), obstacle.getPlaces().stream().map(Place::getElevationM))
                .filter(Objects::nonNull).toList();
    }

    private static void level(Obstacle obstacle, List<Double> tops, double lowestM, boolean isReadBack, OutcomeCollector outcomes) {
        double low = tops.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
        double high = tops.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
        Message text = Message.of("DATA-51.level", ElementNames.of(obstacle), Words.m(low), Words.m(high), Words.m(lowestM));
        if (low < lowestM - BELOW_M && !isReadBack) {
            outcomes.notEvaluated(obstacle, List.of(Message.of("missing.read-back-of", ElementNames.of(obstacle))),
                    Message.of("DATA-51.low", text));
            return;
        }
        outcomes.about(obstacle).measured(Measure.atMost(high, lowestM + ABOVE_M, "m")).saying(text).advising("correct").add();
    }
}
