package slopewright.checks.internal.plausible;

import java.util.List;
import java.util.Optional;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.evaluation.WheelClearance;
import slopewright.geometry.Angles;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.ApproachAid;
import slopewright.model.ClearanceChoice;
import slopewright.model.Circuit;
import slopewright.model.SettingsForm;
import slopewright.siting.ElementNames;
import slopewright.siting.Siting;

/**
 * The slope that an aid names is the one that is wanted of the approach, and the one that its speed and its rate of descent make, to three
 * minutes of arc, to which slopes are set (own band). Settings beside a glide path have one to go by, a chosen wheel clearance is entered,
 * and a portable unit does not hang on a circuit without a battery. A
 * distance before a shift has its reason, is not the greater one, and gave the minimum wheel clearance: the obstacle surface moves by the
 * rest (Annex 14 Vol I, 9th ed., Table 5-3 note e and Fig 5-19 a to c). Severity fail: one of two entries is wrong, and the other decides.
 */
public final class ChosenSlopeRule extends AidRule {
    private static final double SAME_DEG = 0.05;
    private static final double FT_M = 0.3048;
    private static final double KT_M_PER_MIN = 1852.0 / 60;

    /** Made by the service loader. */
    public ChosenSlopeRule() {
        super("DATA-59", Severity.FAIL);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        ApproachAid aid = facts.aid();
        boolean any = false;
        Double slope = aid.getSlopeDeg();
        if (slope != null && facts.host().getDesiredSlopeDeg() != null) {
            any = true;
            double wanted = facts.host().getDesiredSlopeDeg();
            outcomes.about(aid).measured(Measure.within(slope, wanted, SAME_DEG, "deg"))
                    .saying("wanted", Words.deg(slope), Words.deg(wanted), Words.deg(SAME_DEG)).advising("correct").add();
        }
        if (slope != null && aid.getGroundSpeedKt() != null && aid.getDescentFtmin() != null && aid.getGroundSpeedKt() > 0) {
            any = true;
            double made = Math.toDegrees(Math.atan2(aid.getDescentFtmin() * FT_M, aid.getGroundSpeedKt() * KT_M_PER_MIN));
            outcomes.about(aid).measured(Measure.within(slope, made, SAME_DEG, "deg"))
                    .saying("descent", Words.deg(slope), Words.deg(made), Words.deg(SAME_DEG)).advising("correct").add();
        }
        if (aid.getSettings() == SettingsForm.GLIDE_PATH) {
            any = true;
            boolean there = facts.host().getGlidePath() != null;
            outcomes.about(aid).met(there).saying(there ? "settings" : "settings-without").advising("choose").add();
        }
        if (aid.getClearance() == ClearanceChoice.CHOSEN) {
            any = true;
            boolean there = aid.getChosenClearanceM() != null;
            outcomes.about(aid).met(there).saying(there ? "clearance" : "clearance-without").advising("choose").add();
        }
        any |= shift(facts, outcomes);
        List<Circuit> circuits = facts.evaluation().project().getAerodrome().getCircuits().stream()
                .filter(circuit -> circuit.getAids().contains(aid)).toList();
        if (Boolean.TRUE.equals(aid.getPortable()) && !circuits.isEmpty()) {
            any = true;
            boolean there = circuits.stream().anyMatch(circuit -> circuit.getCapacityAh() != null);
            outcomes.about(aid).met(there).saying(there ? "portable" : "portable-without").advising("choose").add();
        }
        if (!any) {
            throw Stop.notApplicable(Message.of("data.nothing-to-compare"));
        }
    }

    private static boolean shift(AidFacts facts, OutcomeCollector outcomes) {
        ApproachAid aid = facts.aid();
        if (aid.getUnshiftedDistanceM() == null) {
            return false;
        }
        double before = aid.getUnshiftedDistanceM();
        if (aid.getUnshiftedDistanceReason() == null || aid.getUnshiftedDistanceReason().isBlank()) {
            outcomes.about(aid).met(false).saying("shift-without", Words.m(before)).advising("choose").add();
            return true;
        }
        Optional<Siting> laid = facts.evaluation().siting().value();
        if (laid.isEmpty()) {
            return false;
        }
        double stands = laid.get().distanceM();
        outcomes.about(aid).measured(Measure.atMost(before, stands, "m")).saying("shift", Words.m(before), Words.m(stands))
                .advising("choose").add();
        double lower = (stands - before) * Angles.tanDeg(laid.get().lowestOnSlopeDeg());
        boolean light = facts.host().getRegularGroups().stream().allMatch(group -> Boolean.TRUE.equals(group.getLightNonTurbojet()));
        for (WheelClearance wheels : facts.evaluation().wheelClearances()) {
            wheels.band().ifPresent(band -> {
                double least = light ? band.lightAeroplaneM().orElse(band.minimumM()) : band.minimumM();
                outcomes.about(aid).measured(Measure.atLeast(wheels.clearanceM() - lower, least, "m"))
                        .saying("shift-wheels", Words.m(before), ElementNames.of(wheels.group()), Words.m(wheels.clearanceM() - lower),
                                Words.m(least)).advising("choose").add();
            });
        }
        return true;
    }
}
