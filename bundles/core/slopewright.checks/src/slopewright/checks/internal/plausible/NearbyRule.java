package slopewright.checks.internal.plausible;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.ProjectRule;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;
import slopewright.model.GroundLevel;
import slopewright.model.Helipad;
import slopewright.model.Identified;
import slopewright.model.Place;
import slopewright.model.RunwayEnd;
import slopewright.model.TaxiwayEdge;
import slopewright.siting.ElementNames;
import slopewright.siting.site.AerodromePlaces;

/**
 * Ground levels and edges of taxiways lie on the aerodrome: within five kilometres of the nearest threshold or helipad, which is further
 * than any of the largest aerodromes reaches, and within ten metres of its level and three in a hundred of the distance (own bands).
 * Severity fail: the ground carries lenses and an edge keeps units away, so one that lies elsewhere is not there.
 */
public final class NearbyRule extends ProjectRule {
    private static final double NEAR_M = 5000;
    private static final double LEVEL_M = 10;
    private static final double RISE = 0.03;

    private record Landing(Place place, Double elevationM) {
    }

    /** Made by the service loader. */
    public NearbyRule() {
        super("DATA-58", Severity.FAIL);
    }

    @Override
    public void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        Aerodrome aerodrome = evaluation.project().getAerodrome();
        if (aerodrome == null) {
            return;
        }
        List<Landing> landings = Stream.concat(
                aerodrome.getRunways().stream().flatMap(runway -> runway.getEnds().stream()).map(NearbyRule::landing),
                aerodrome.getHelipads().stream().map(NearbyRule::landing)).filter(landing -> landing.place() != null).toList();
        if (landings.isEmpty()) {
            return;
        }
        for (GroundLevel level : aerodrome.getGroundLevels()) {
            if (level.getPlace() != null) {
                AidRule.guarded(level, outcomes, () -> check(aerodrome, level, level.getPlace(), landings, outcomes));
            }
        }
        for (TaxiwayEdge edge : aerodrome.getTaxiwayEdges()) {
            edge.getPoints().forEach(point -> AidRule.guarded(point, outcomes, () -> check(aerodrome, edge, point, landings, outcomes)));
        }
    }

    private static Landing landing(RunwayEnd end) {
        return new Landing(end.getThreshold(), end.getThresholdElevationM());
    }

    private static Landing landing(Helipad pad) {
        return new Landing(pad.getPlace(), pad.getElevationM());
    }

    private static void check(Aerodrome aerodrome, Identified element, Place place, List<Landing> landings, OutcomeCollector outcomes) {
        AerodromePlaces places = AerodromePlaces.of(aerodrome);
        Landing nearest = landings.stream().min(Comparator.comparingDouble(landing -> places.distanceM(landing.place(), place)))
                .orElseThrow();
        double distance = places.distanceM(nearest.place(), place);
        outcomes.about(place).measured(Measure.atMost(distance, NEAR_M, "m"))
                .saying("near", ElementNames.of(element), Words.m(distance), Words.m(NEAR_M)).advising("correct").add();
        Optional<Double> level = Optional.ofNullable(nearest.elevationM());
        if (level.isPresent() && place.getElevationM() != null) {
            double room = LEVEL_M + RISE * distance;
            outcomes.about(place).measured(Measure.within(place.getElevationM(), level.get(), room, "m"))
                    .saying("level", ElementNames.of(element), Words.m(place.getElevationM()), Words.m(level.get()), Words.m(room))
                    .advising("correct").add();
        }
    }
}
