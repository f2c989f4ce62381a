package slopewright.checks.internal.plausible;

import java.util.ArrayList;
import java.util.List;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.evaluation.UnitGround;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.LightUnit;
import slopewright.model.RunwayEnd;
import slopewright.siting.ElementNames;
import slopewright.siting.IndicatorFamily;

/**
 * The ground under every lens beside a runway is known: the lens carries the eye height over the threshold and the wheel clearance metre
 * for metre, and an elevation that was taken from the threshold, or guessed, may lie under the ground or high above it. A site profile,
 * surveyed levels before and behind the unit, or the elevation that was measured of the lens as built tells. Severity fail: without any
 * of them nobody knows where the lens will be. Common practice: the rule sets correct for the level and do not print how it is got.
 */
public final class GroundUnderUnitsRule extends AidRule {

    /** Made by the service loader. */
    public GroundUnderUnitsRule() {
        super("DATA-69", Severity.FAIL);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        if (!(facts.host() instanceof RunwayEnd) || facts.indicator().displayForm() != IndicatorFamily.DisplayForm.LIGHTS) {
            throw Stop.notApplicable(Message.of("data.nothing-to-compare"));
        }
        UnitGround ground = UnitGround.of(facts.aid());
        List<Argument> unknown = new ArrayList<>();
        int known = 0;
        for (LightUnit unit : facts.aid().getUnits()) {
            if (unit.getLensElevationM() == null || unit.getAlongM() == null) {
                continue;
            }
            if (isMeasured(unit) || ground.heightM(unit.getAlongM()).isPresent()) {
                known++;
            } else {
                unknown.add(ElementNames.of(unit));
            }
        }
        if (!unknown.isEmpty()) {
            throw Stop.missing(Message.of("missing.ground-under-units", Words.list(unknown)));
        }
        if (known == 0) {
            throw Stop.notApplicable(Message.of("data.nothing-to-compare"));
        }
        outcomes.about(facts.aid()).met(true).saying("known").add();
    }

    private static boolean isMeasured(LightUnit unit) {
        return unit.getMeasured() != null && unit.getMeasured().getLensElevationM() != null;
    }
}
