package slopewright.checks.internal.plausible;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.stream.Stream;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Rule;
import slopewright.checks.Severity;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;
import slopewright.model.Helipad;
import slopewright.model.Obstacle;
import slopewright.model.Place;
import slopewright.model.RunwayEnd;
import slopewright.siting.ElementNames;

/**
 * An obstacle does not end below where aeroplanes land: one that is more than fifteen metres below every threshold and helipad stands in no
 * obstacle surface, and who enters it has entered its height above the ground, feet, or another sign (own band: what lies in a valley is
 * no obstacle to an approach). Nor does it end more than six kilometres above, higher than any mountain beside an aerodrome. A shielded
 * obstacle says by what. Severity fail: an obstacle that is entered too low is not there for any surface.
 */
public final class ObstacleLevelRule implements Rule {
    private static final double BELOW_M = 15;
    private static final double ABOVE_M = 6000;

    @Override
    public String id() {
        return "DATA-51";
    }

    @Override
    public Severity severity() {
        return Severity.FAIL;
    }

    @Override
    public void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        Aerodrome aerodrome = evaluation.project().getAerodrome();
        if (aerodrome == null) {
            return;
        }
        OptionalDouble lowest = Stream.concat(aerodrome.getRunways().stream().flatMap(runway -> runway.getEnds().stream())
                .map(RunwayEnd::getThresholdElevationM), aerodrome.getHelipads().stream().map(Helipad::getElevationM))
                .filter(Objects::nonNull).mapToDouble(Double::doubleValue).min();
        if (lowest.isEmpty()) {
            return;
        }
        for (Obstacle obstacle : aerodrome.getObstacles()) {
            List<Double> elevations = Stream.concat(Stream.of(obstacle).map(Obstacle::getTopElevationM),
                    obstacle.getPlaces().stream().map(Place::getElevationM)).filter(Objects::nonNull).toList();
            if (!elevations.isEmpty()) {
                double low = elevations.stream().mapToDouble(Double::doubleValue).min().getAsDouble();
                double high = elevations.stream().mapToDouble(Double::doubleValue).max().getAsDouble();
                Measure measure = Measure.worse(Measure.atLeast(low, lowest.getAsDouble() - BELOW_M, "m"),
                        Measure.atMost(high, lowest.getAsDouble() + ABOVE_M, "m"));
                outcomes.about(obstacle).measured(measure).saying("level", ElementNames.of(obstacle), Words.m(low), Words.m(high),
                        Words.m(lowest.getAsDouble()),
                        Words.m(elevations.stream().mapToDouble(Double::doubleValue).average().getAsDouble())).advising("correct").add();
            }
            if (Boolean.TRUE.equals(obstacle.getShielded())) {
                boolean named = obstacle.getShieldedBy() != null || obstacle.getShieldingStudy() != null
                        && !obstacle.getShieldingStudy().isBlank();
                outcomes.about(obstacle).met(named).saying(named ? "shielded" : "shielded-by-nothing", ElementNames.of(obstacle))
                        .advising("name").add();
            }
        }
    }
}
