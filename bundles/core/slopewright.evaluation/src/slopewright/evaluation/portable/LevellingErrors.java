package slopewright.evaluation.portable;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

import slopewright.geometry.Angles;
import slopewright.model.ApproachAid;
import slopewright.model.LightColour;
import slopewright.model.Transition;
import slopewright.siting.Siting;
import slopewright.siting.UnitPlan;
import slopewright.standards.CitedValue;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;

/** Finds how well a unit is set, for the effect of its tilt, and whether it shows the sectors of its equipment. */
final class LevellingErrors {

    private static final double USUAL_EDGE_DEG = 8;
    private static final double SAME_MINUTES = 1;

    private LevellingErrors() {
    }

    static LevellingEffect levelling(ApproachAid aid, Siting siting, RuleSet rules, List<String> notes) {
        Optional<CitedValue> own = rules.find(siting.family() + ".setting-accuracy-min");
        CitedValue accuracy = own.orElseGet(() -> RuleSets.find("icao").orElseThrow().value("heliport-sector.setting-accuracy-min"));
        notes.add(String.format(Locale.ROOT, "The tilt of %.0f' is the accuracy of setting in %s%s.", accuracy.value(),
                accuracy.citation().text(), own.isPresent() ? "" : ", taken over because none is given for this family"));
        double left = aid.getBeamLeftLimitDeg() == null ? USUAL_EDGE_DEG : Math.abs(aid.getBeamLeftLimitDeg());
        double right = aid.getBeamRightLimitDeg() == null ? USUAL_EDGE_DEG : Math.abs(aid.getBeamRightLimitDeg());
        return LevellingEffect.of(siting.slopeDeg(), accuracy.value(), Math.max(left, right));
    }

    /** Returns whether a unit has an edge between two colours elsewhere than its equipment has. */
    static boolean sectorsDiffer(ApproachAid aid, Siting siting) {
        if (aid.getEquipment() == null) {
            return false;
        }
        for (Transition sector : aid.getEquipment().getSectors()) {
            if (sector.getOffsetDeg() == null || sector.getBelowColour() == LightColour.NONE) {
                continue;
            }
            for (UnitPlan unit : siting.units()) {
                boolean same = unit.edges().stream().anyMatch(edge -> edge.below().colour().name().equals(sector.getBelowColour().name())
                        && edge.above().colour().name().equals(sector.getAboveColour().name())
                        && Math.abs(edge.angleDeg() - unit.settingDeg() - sector.getOffsetDeg()) <= Angles.minutesToDeg(SAME_MINUTES));
                if (!same) {
                    return true;
                }
            }
        }
        return false;
    }
}
