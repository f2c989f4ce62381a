package slopewright.checks.internal.obstacle;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.checks.internal.inspection.Inspections;
import slopewright.evaluation.obstacles.ObstacleComparison;
import slopewright.evaluation.obstacles.SurfaceComparison;
import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.geometry.ProtectionSurface;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.EquipmentType;
import slopewright.model.Inspection;
import slopewright.standards.CitedChoice;

/**
 * The beam reaches further to the side than the surface; what stands there must not endanger who follows it. A warning: the text asks for
 * a study and for a narrower beam where that finds harm, not for the removal of what stands there.
 */
public final class BeamAzimuthRule extends AidRule {
    private static final int MOST_NAMES = 6;

    /** Made by the service loader. */
    public BeamAzimuthRule() {
        super("OBS-03", Severity.WARNING);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        CitedChoice narrowing = facts.rules().choice("obstacle.beam-narrowing").filter(CitedChoice::isYes)
                .orElseThrow(() -> facts.none("obstacle.beam-narrowing"));
        SurfaceComparison compared = Surfaces.compared(facts);
        ProtectionSurface surface = compared.surface();
        Optional<Inspection> flown = Inspections.last(facts.aid());
        double left = widestDeg(limitDeg(facts, facts.aid().getBeamLeftLimitDeg()), flown.map(Inspection::getAzimuthLeftDeg));
        double right = widestDeg(limitDeg(facts, facts.aid().getBeamRightLimitDeg()), flown.map(Inspection::getAzimuthRightDeg));
        Set<Object> known = Collections.newSetFromMap(new IdentityHashMap<>());
        compared.inside().stream().filter(ObstacleComparison::isPenetrating).forEach(found -> known.add(found.element()));
        List<SurfaceComparison> all = new ArrayList<>(List.of(compared));
        List<String> endangering = new ArrayList<>();
        List<ObstacleComparison> besideNarrower = new ArrayList<>();
        double worst = 0;
        double narrowest = Double.POSITIVE_INFINITY;
        for (double half : new double[] {Math.max(left, right), Math.min(left, right)}) {
            ProtectionSurface beam = beam(facts, surface, half);
            SurfaceComparison across = facts.surroundings().compare(beam);
            all.add(across);
            for (ObstacleComparison found : across.inside()) {
                FramePoint point = found.worst().point();
                double azimuth = Math.toDegrees(Math.atan2(beam.offsetM(point.alongM(), point.rightM()),
                        beam.outwardM(point.alongM(), point.rightM())));
                if (!found.isUnshieldedPenetration() || known.contains(found.element())) {
                    continue;
                }
                if (half > (azimuth < 0 ? left : right)) {
                    besideNarrower.add(found);
                } else if (known.add(found.element())) {
                    endangering.add(found.label());
                    worst = Math.max(worst, found.worst().excessM());
                    narrowest = Math.min(narrowest, Math.abs(azimuth));
                }
            }
        }
        Argument beamText = Message.of("OBS-03.beam", Words.degrees(left), Words.degrees(right));
        List<Message> open = new ArrayList<>(Surfaces.open(all));
        besideNarrower.stream().filter(found -> reachesOn(found) && !known.contains(found.element()))
                .forEach(found -> open.add(Message.of("OBS-03.rest", Words.name(found.label()))));
        if (endangering.isEmpty() && !open.isEmpty()) {
            throw Stop.missing(Message.of("list", Words.list(open)), Message.of("OBS-03.incomplete", beamText));
        }
        outcomes.about(facts.aid()).measured(Measure.atMost(worst, 0, "m").strict()).citing(narrowing.citation())
                .saying(endangering.isEmpty() ? "clear" : "endangering", beamText, some(endangering), Words.m(worst))
                .advising("narrow", Words.degrees(narrowest)).add();
    }

    /**
     * Returns the plane of the surface as wide as a beam. It is asked for the wider side and then for the narrower one, since an obstacle
     * may have its worst place beyond the narrower and another within it; which of them an inexact one reaches is the comparison's to say.
     */
    private static ProtectionSurface beam(AidFacts facts, ProtectionSurface surface, double halfDeg) {
        double bar = facts.laid().reference().alongM();
        double behind = bar - surface.startAlongM();
        return new ProtectionSurface(bar, surface.heightAtOutwardM(0) - behind * Angles.tanDeg(surface.slopeDeg()), 0,
                Angles.tanDeg(halfDeg), surface.lengthM() + Math.max(0, behind), surface.slopeDeg(), surface.axisTurnDeg());
    }

    /**
     * Returns whether something has more than one place: where the worst of them lies beyond the narrower side, another may stand within
     * the wider one, and was not compared.
     */
    private static boolean reachesOn(ObstacleComparison found) {
        return found.obstacle().map(obstacle -> obstacle.getPlaces().size() > 1).orElse(true);
    }

    /** Names some of many. */
    private static Argument some(List<String> names) {
        return Words.listed(names.stream().map(Words::name).toList(), MOST_NAMES);
    }

    /** A beam that was seen farther out than its limit reaches that far. */
    private static double widestDeg(double limitDeg, Optional<Double> flownDeg) {
        return Math.max(limitDeg, flownDeg.map(Math::abs).orElse(0.0));
    }

    private static double limitDeg(AidFacts facts, Double own) {
        if (own != null) {
            return Math.abs(own);
        }
        EquipmentType type = facts.aid().getEquipment();
        return AidFacts.need(type == null ? null : type.getBeamWidthDeg(), Message.of("missing.beam-width")) / 2;
    }
}
