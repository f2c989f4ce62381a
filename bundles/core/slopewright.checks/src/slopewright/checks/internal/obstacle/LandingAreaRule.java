package slopewright.checks.internal.obstacle;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.evaluation.PadArea;
import slopewright.evaluation.RunwayProfiles;
import slopewright.evaluation.obstacles.ObstacleComparison;
import slopewright.evaluation.obstacles.SurfaceComparison;
import slopewright.evaluation.obstacles.Uncompared;
import slopewright.geometry.FramePoint;
import slopewright.geometry.Profile;
import slopewright.geometry.ProtectionSurface;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Helipad;
import slopewright.model.Obstacle;
import slopewright.model.Place;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;

/**
 * No obstacle that was entered stands where the aircraft lands: on the runway behind the threshold, whatever of it is declared for
 * landing, on the FATO or in the safety area around it. What rises no more than a quarter of a metre above the ground there may be a light
 * or a marker (own band). The obstacle surface begins before all this, and a slope that leads there is none. Severity fail: an aircraft
 * that follows the signal strikes it. Where how the FATO lies is not known, what may stand in a corner of it is not evaluated.
 */
public final class LandingAreaRule extends AidRule {
    private static final double MARKER_M = 0.25;

    /** Made by the service loader. */
    public LandingAreaRule() {
        super("OBS-10", Severity.FAIL);
    }

    /** An obstacle in the area with how far it rises above the ground there, metres. */
    private record Standing(ObstacleComparison found, double aboveM) {
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        ProtectionSurface area = facts.atRunway() ? runway(facts, facts.end()) : pad(facts, facts.helipad());
        double origin = facts.frame().originElevationM();
        SurfaceComparison compared = facts.surroundings().compare(area);
        Optional<Standing> highest = compared.inside().stream().filter(found -> found.obstacle().isPresent())
                .map(found -> new Standing(found, topM(found.obstacle().orElseThrow()) - origin - groundM(facts, found.worst().point())))
                .max(Comparator.comparingDouble(Standing::aboveM));
        List<Message> open = compared.uncompared().stream().filter(left -> left.element() instanceof Obstacle).map(Uncompared::reason)
                .toList();
        if (!open.isEmpty() && highest.filter(standing -> standing.aboveM() > MARKER_M).isEmpty()) {
            throw Stop.missing(Message.of("list", Words.list(open)), Message.of("OBS-10.incomplete"));
        }
        if (highest.filter(standing -> standing.aboveM() > MARKER_M).isEmpty()) {
            notInACorner(facts);
        }
        if (highest.isEmpty()) {
            throw Stop.notApplicable(Message.of(facts.atRunway() ? "OBS-10.clear-runway" : "OBS-10.clear-pad"));
        }
        outcomes.about(facts.aid()).measured(Measure.atMost(highest.get().aboveM(), MARKER_M, "m"))
                .saying(facts.atRunway() ? "on-runway" : "on-pad", Words.name(highest.get().found().label()),
                        Words.m(highest.get().aboveM()), Words.m(MARKER_M))
                .advising("remove").add();
    }

    /** Where how the FATO lies is not known, its corners may reach anywhere around it: what stands there may be in the safety area. */
    private static void notInACorner(AidFacts facts) {
        if (facts.atRunway() || facts.helipad().getFatoBearingDeg() != null) {
            return;
        }
        double reach = PadArea.of(facts.helipad()).orElseThrow().reachM();
        double origin = facts.frame().originElevationM();
        Optional<ObstacleComparison> near = facts.surroundings().compare(new ProtectionSurface(reach, 0, 2 * reach, 0, 2 * reach, 0, 0))
                .inside().stream().filter(found -> found.obstacle().filter(obstacle -> topM(obstacle) - origin > MARKER_M).isPresent())
                .findFirst();
        if (near.isPresent()) {
            throw Stop.missing(Message.of("missing.fato-bearing"), Message.of("OBS-10.corner", Words.name(near.get().label())));
        }
    }

    /** Returns the level of the ground in the frame: that of the centre line, or of the higher end where no profile reaches so far. */
    private static double groundM(AidFacts facts, FramePoint point) {
        if (!facts.atRunway()) {
            return 0;
        }
        Optional<Profile> profile = RunwayProfiles.centreLine(facts.end()).filter(found -> found.covers(point.alongM()));
        return profile.map(found -> found.heightAt(point.alongM())).orElseGet(() -> facts.runway().orElseThrow().getEnds().stream()
                .map(RunwayEnd::getThresholdElevationM).filter(Objects::nonNull)
                .mapToDouble(elevation -> elevation - facts.end().getThresholdElevationM()).max().orElseThrow());
    }

    private static ProtectionSurface runway(AidFacts facts, RunwayEnd end) {
        AidFacts.need(end.getThresholdElevationM(), Message.of("missing.threshold-elevation"));
        double displaced = end.getDisplacedThresholdM() == null ? 0 : end.getDisplacedThresholdM();
        Optional<Double> behind = Stream.of(Optional.ofNullable(end.getLandingDistanceM()),
                facts.runway().map(Runway::getLengthM).map(whole -> whole - displaced)).flatMap(Optional::stream).max(Double::compare);
        double length = AidFacts.need(behind.orElse(null), Message.of("missing.landing-distance"));
        return new ProtectionSurface(length, 0, 2 * facts.halfWidthM(), 0, length, 0, 0);
    }

    private static ProtectionSurface pad(AidFacts facts, Helipad pad) {
        AidFacts.need(pad.getFatoLengthM(), Message.of("missing.fato-length"));
        AidFacts.need(pad.getFatoWidthM(), Message.of("missing.fato-width"));
        AidFacts.need(pad.getSafetyAreaWidthM(), Message.of("missing.safety-area-width"));
        PadArea area = PadArea.of(pad).orElseThrow();
        double turn = area.bearingDeg().isPresent() ? area.bearingDeg().getAsDouble() - facts.frame().bearingDeg() : 0;
        double half = area.lengthM() / 2 + area.aroundM();
        return new ProtectionSurface(half * Math.cos(Math.toRadians(turn)), half * Math.sin(Math.toRadians(turn)), 0,
                area.widthM() + 2 * area.aroundM(), 0, 2 * half, 0, turn);
    }

    private static double topM(Obstacle obstacle) {
        return Stream.concat(Stream.of(obstacle).map(Obstacle::getTopElevationM), obstacle.getPlaces().stream().map(Place::getElevationM))
                .filter(Objects::nonNull).mapToDouble(Double::doubleValue).max().orElse(Double.NEGATIVE_INFINITY);
    }
}
