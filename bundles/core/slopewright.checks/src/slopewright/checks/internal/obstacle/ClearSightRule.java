package slopewright.checks.internal.obstacle;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.evaluation.obstacles.ObstacleComparison;
import slopewright.evaluation.obstacles.SurfaceComparison;
import slopewright.geometry.Angles;
import slopewright.geometry.ProtectionSurface;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.EquipmentType;
import slopewright.siting.UnitPlan;

/**
 * Nothing stands between a unit and its sector: from each lens to where the obstacle surface begins nothing rises above a line as steep
 * as that surface, over the width of the beam. Farther out the surface itself guards the signal. Severity fail: a row of which a unit is
 * hidden shows the pattern of another slope.
 */
public final class ClearSightRule extends AidRule {
    /** Made by the service loader. */
    public ClearSightRule() {
        super("OBS-08", Severity.FAIL);
    }

    private record Seen(UnitPlan unit, ObstacleComparison obstacle) {
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        SurfaceComparison compared = facts.evaluation().obstacles().value()
                .orElseThrow(() -> Stop.notApplicable(Message.of("OBS-08.no-surface")));
        ProtectionSurface surface = compared.surface();
        double width = Math.max(limitDeg(facts, facts.aid().getBeamLeftLimitDeg()), limitDeg(facts, facts.aid().getBeamRightLimitDeg()));
        List<SurfaceComparison> all = new ArrayList<>();
        List<Seen> seenAll = new ArrayList<>();
        for (UnitPlan unit : facts.laid().units()) {
            sight(facts, unit, surface, width).ifPresent(sight -> {
                all.add(sight);
                sight.inside().forEach(found -> seenAll.add(new Seen(unit, found)));
            });
        }
        Optional<Seen> worst = seenAll.stream().min(Comparator.comparingDouble(seen -> seen.obstacle().marginM()));
        boolean hidden = worst.filter(seen -> seen.obstacle().marginM() < 0).isPresent();
        List<Message> open = Surfaces.open(all);
        if (!hidden && !open.isEmpty()) {
            throw Stop.missing(Message.of("list", Words.list(open)), Message.of("OBS-08.incomplete"));
        }
        if (worst.isEmpty()) {
            outcomes.about(facts.aid()).met(true).saying("clear", Words.degrees(width)).advising("remove").add();
            return;
        }
        Seen seen = worst.get();
        outcomes.about(facts.aid()).measured(Measure.atLeast(seen.obstacle().marginM(), 0, "m").strict())
                .saying(hidden ? "hidden" : "below", Words.name(seen.obstacle().label()), Words.margin(Math.abs(seen.obstacle().marginM())),
                        Words.name(seen.unit().id()))
                .advising("remove").add();
    }

    private static Optional<SurfaceComparison> sight(AidFacts facts, UnitPlan unit, ProtectionSurface surface, double widthDeg) {
        double length = unit.place().alongM() - surface.startAlongM();
        return length <= 0 ? Optional.empty() : Optional.of(facts.surroundings().compare(new ProtectionSurface(unit.place().alongM(),
                unit.place().rightM(), unit.place().heightM(), 0, Angles.tanDeg(widthDeg), length, surface.slopeDeg(),
                surface.axisTurnDeg())));
    }

    private static double limitDeg(AidFacts facts, Double own) {
        if (own != null) {
            return Math.abs(own);
        }
        EquipmentType type = facts.aid().getEquipment();
        return AidFacts.need(type == null ? null : type.getBeamWidthDeg(), Message.of("missing.beam-width")) / 2;
    }
}
