package slopewright.checks.internal.obstacle;

import java.util.Collections;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
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
 * that follows the signal strikes it. Where how the FATO lies is not known, what may stand in a corner of it is not evaluated; nor is what
 * is low beside one end of a runway and tall beside the other, where no profile of the centre line tells the ground between.
 */
public final class LandingAreaRule extends AidRule {
    private static final double MARKER_M = 0.25;

    /** Made by the service loader. */
    public LandingAreaRule() {
        super("OBS-10", Severity.FAIL);
    }

    /** Between what levels of the frame the ground lies under an obstacle, metres. */
    private record Ground(double lowestM, double highestM) {
    }

    /** An obstacle in the area with how far it rises above the ground there, metres, between the bounds that the ground is known in. */
    private record Standing(ObstacleComparison found, double aboveM, double atMostM) {

        static Standing of(AidFacts facts, ObstacleComparison found) {
            Obstacle obstacle = found.obstacle().orElseThrow();
            double top = topM(obstacle) - facts.frame().originElevationM();
            Ground ground = ground(facts, obstacle, found.worst().point());
            return new Standing(found, top - ground.highestM(), top - ground.lowestM());
        }
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        ProtectionSurface area = facts.atRunway() ? runway(facts, facts.end()) : pad(facts, facts.helipad());
        SurfaceComparison compared = facts.surroundings().compare(area);
        List<Standing> standing = compared.inside().stream().filter(found -> found.obstacle().isPresent())
                .map(found -> Standing.of(facts, found)).toList();
        Optional<Standing> highest = standing.stream()
                .max(Comparator.comparingDouble(Standing::aboveM).thenComparingDouble(Standing::atMostM));
        List<Message> open = compared.uncompared().stream().filter(left -> left.element() instanceof Obstacle).map(Uncompared::reason)
                .toList();
        if (highest.filter(one -> one.aboveM() > MARKER_M).isEmpty()) {
            if (!open.isEmpty()) {
                throw Stop.missing(Message.of("list", Words.list(open)), Message.of("OBS-10.incomplete"));
            }
            notInACorner(facts);
            notBesideItsGround(standing);
        }
        if (highest.isEmpty()) {
            throw Stop.notApplicable(Message.of(facts.atRunway() ? "OBS-10.clear-runway" : "OBS-10.clear-pad"));
        }
        double rise = highest.get().aboveM() > MARKER_M ? highest.get().aboveM() : highest.get().atMostM();
        outcomes.about(facts.aid()).measured(Measure.atMost(rise, MARKER_M, "m"))
                .saying(facts.atRunway() ? "on-runway" : "on-pad", Words.name(highest.get().found().label()),
                        Words.m(rise), Words.m(MARKER_M))
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

    /** Where nobody knows how the runway runs between its ends, what is low beside the higher one may be tall where it stands. */
    private static void notBesideItsGround(List<Standing> standing) {
        Optional<Standing> tall = standing.stream().filter(one -> one.atMostM() > MARKER_M).findFirst();
        if (tall.isPresent()) {
            throw Stop.missing(Message.of("missing.centre-line"), Message.of("OBS-10.ground", Words.name(tall.get().found().label())));
        }
    }

    /**
     * Returns the level of the ground under an obstacle: the lowest of the centre line as far as the obstacle reaches along it; where no
     * profile reaches so far, between the levels of the ends, and as low as can be where that of an end is not known.
     */
    private static Ground ground(AidFacts facts, Obstacle obstacle, FramePoint worst) {
        if (!facts.atRunway()) {
            return new Ground(0, 0);
        }
        Optional<Profile> profile = RunwayProfiles.centreLine(facts.end()).filter(found -> found.covers(worst.alongM()));
        if (profile.isPresent()) {
            double lowest = lowestM(profile.get(), facts, obstacle, worst.alongM());
            return new Ground(lowest, lowest);
        }
        double threshold = facts.end().getThresholdElevationM();
        List<Double> ends = facts.runway().orElseThrow().getEnds().stream().map(RunwayEnd::getThresholdElevationM)
                .filter(Objects::nonNull).map(elevation -> elevation - threshold).toList();
        return new Ground(ends.size() > 1 ? Collections.min(ends) : Double.NEGATIVE_INFINITY, Collections.max(ends));
    }

    private static double lowestM(Profile profile, AidFacts facts, Obstacle obstacle, double worstM) {
        DoubleSummaryStatistics reach = obstacle.getPlaces().stream()
                .mapToDouble(place -> facts.frame().toFrame(place, facts.frame().originElevationM()).alongM()).summaryStatistics();
        double from = Math.max(profile.firstM(), Math.min(worstM, reach.getMin()));
        double to = Math.min(profile.lastM(), Math.max(worstM, reach.getMax()));
        double between = IntStream.range(0, profile.size()).filter(i -> profile.alongM(i) > from && profile.alongM(i) < to)
                .mapToDouble(profile::heightM).min().orElse(Double.POSITIVE_INFINITY);
        return Math.min(between, Math.min(profile.heightAt(from), profile.heightAt(to)));
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
