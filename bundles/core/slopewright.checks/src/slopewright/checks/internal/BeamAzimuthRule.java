package slopewright.checks.internal;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import slopewright.checks.Findings.Measure;
import slopewright.checks.Findings;
import slopewright.checks.Severity;
import slopewright.checks.field.ObstacleField;
import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.geometry.ProtectionSurface;
import slopewright.model.EquipmentType;
import slopewright.model.Obstacle;
import slopewright.standards.CitedValue;

/** The beam reaches further to the side than the surface; what stands there must not endanger who follows it. */
public final class BeamAzimuthRule extends AidRule {

    private static final int MOST_NAMES = 6;

    /** Made by the service loader. */
    public BeamAzimuthRule() {
        super("OBS-03", "Obstacles beside the surface but in the beam",
                "No obstacle outside the obstacle surface but inside the beam rises above the plane of the surface.", Severity.WARNING,
                Stream.of(ROWS, T_FORMS, Set.of("heliport-sector")).flatMap(Set::stream).collect(Collectors.toUnmodifiableSet()));
    }

    @Override
    void check(AidFacts facts, Findings findings) {
        CitedValue narrowing = facts.common("obstacle.beam-narrowing");
        ProtectionSurface surface = Obstacles.surface(facts).geometry();
        double left = limitDeg(facts, facts.aid().getBeamLeftLimitDeg());
        double right = limitDeg(facts, facts.aid().getBeamRightLimitDeg());
        double bar = facts.laid().reference().alongM();
        double behind = bar - surface.startAlongM();
        ProtectionSurface beam = new ProtectionSurface(bar, surface.heightAtOutwardM(0) - behind * Angles.tanDeg(surface.slopeDeg()), 0,
                Angles.tanDeg(Math.max(left, right)), surface.lengthM() + Math.max(0, behind), surface.slopeDeg(), surface.axisTurnDeg());
        List<String> endangering = new ArrayList<>();
        double worst = 0;
        double narrowest = Double.POSITIVE_INFINITY;
        ObstacleField field = Obstacles.of(facts);
        Set<Obstacle> penetrating = Collections.newSetFromMap(new IdentityHashMap<>());
        field.compare(surface).stream().filter(found -> found.worst().excessM() > 0)
                .forEach(found -> penetrating.add(found.placed().obstacle()));
        for (ObstacleField.Compared found : field.compare(beam)) {
            ObstacleField.Placed one = found.placed();
            if (found.worst().excessM() > 0 && !penetrating.contains(one.obstacle()) && !one.isShielded()) {
                FramePoint point = found.worst().point();
                double azimuth = Math.toDegrees(Math.atan2(beam.offsetM(point.alongM(), point.rightM()),
                        beam.outwardM(point.alongM(), point.rightM())));
                if (azimuth < 0 ? -azimuth <= left : azimuth <= right) {
                    endangering.add(one.label());
                    worst = Math.max(worst, found.worst().excessM());
                    narrowest = Math.min(narrowest, Math.abs(azimuth));
                }
            }
        }
        String beamText = "The beam reaches " + Words.degrees(left) + " left and " + Words.degrees(right) + " right of the axis. ";
        compare(findings, facts.aid(), Measure.atMost(worst, 0, "m"), narrowing.citation(), beamText + (endangering.isEmpty()
                ? "Nothing outside the surface rises above its plane there."
                : some(endangering) + " outside the surface " + (endangering.size() == 1 ? "rises" : "rise") + " up to "
                + Words.m(worst)
                        + " above its plane."),
                "Let a study judge it; where it finds harm, narrow the beam to less than " + Words.degrees(narrowest) + " on that side.");
    }

    /** Names some of many. */
    private static String some(List<String> names) {
        return names.size() <= MOST_NAMES ? Words.list(names)
                : Words.list(Stream.concat(names.stream().limit(MOST_NAMES), Stream.of(names.size() - MOST_NAMES + " others")).toList());
    }

    private static double limitDeg(AidFacts facts, Double own) {
        if (own != null) {
            return Math.abs(own);
        }
        EquipmentType type = facts.aid().getEquipment();
        return AidFacts.need(type == null ? null : type.getBeamWidthDeg(),
                "beam limits of the aid, or beam width of the equipment type") / 2;
    }
}
