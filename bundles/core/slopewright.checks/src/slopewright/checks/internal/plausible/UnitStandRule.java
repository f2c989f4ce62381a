package slopewright.checks.internal.plausible;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.evaluation.SiteGround;
import slopewright.evaluation.UnitGround;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.EquipmentType;
import slopewright.model.LightUnit;
import slopewright.model.RunwayEnd;
import slopewright.siting.ElementNames;
import slopewright.siting.IndicatorFamily;

/**
 * A lens stands above the ground as high as its unit says, to a decimetre, which is two surveyed levels of five centimetres; and its unit
 * is as high as its type, to three decimetres, by which legs are cut (own band). None is higher than two metres, where the one text that
 * prints a height for every family has 1.2 m (Korea, Notice 2013-132). A panel has no lens and stands on posts. Severity fail:
 * one of the numbers is wrong, and the lens carries the eye height.
 */
public final class UnitStandRule extends AidRule {
    private static final double LEVELS_M = 2 * SiteGround.SURVEY_TOLERANCE_M;
    private static final double LEGS_M = 0.3;
    private static final double TALLEST_M = 2;

    /** Made by the service loader. */
    public UnitStandRule() {
        super("DATA-47", Severity.FAIL);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        EquipmentType type = facts.aid().getEquipment();
        UnitGround ground = UnitGround.of(facts.aid());
        boolean lit = facts.indicator().displayForm() == IndicatorFamily.DisplayForm.LIGHTS;
        boolean levelled = lit && facts.host() instanceof RunwayEnd end && end.getThresholdElevationM() != null;
        boolean any = false;
        for (LightUnit unit : facts.aid().getUnits()) {
            Double height = unit.getHeightAboveGroundM();
            if (height == null) {
                continue;
            }
            if (lit && height > TALLEST_M) {
                any = true;
                outcomes.about(unit).measured(Measure.atMost(height, TALLEST_M, "m"))
                        .saying("tall", ElementNames.of(unit), Words.m(height), Words.m(TALLEST_M)).advising("correct").add();
            }
            if (type != null && type.getHeightAboveGroundM() != null) {
                any = true;
                outcomes.about(unit).measured(Measure.within(height, type.getHeightAboveGroundM(), LEGS_M, "m"))
                        .saying("type", ElementNames.of(unit), Words.m(height), ElementNames.of(type),
                                Words.m(type.getHeightAboveGroundM()), Words.m(LEGS_M)).advising("correct").add();
            }
            Double lens = unit.getLensElevationM();
            Double along = unit.getAlongM();
            if (levelled && lens != null && along != null && ground.heightM(along).isPresent()) {
                any = true;
                double above = lens - facts.end().getThresholdElevationM() - ground.heightM(along).getAsDouble();
                outcomes.about(unit).measured(Measure.within(above, height, LEVELS_M, "m"))
                        .saying("ground", ElementNames.of(unit), Words.m(above), Words.m(height), Words.m(LEVELS_M))
                        .advising("correct").add();
            }
        }
        if (!any) {
            throw Stop.notApplicable(Message.of("data.nothing-to-compare"));
        }
    }
}
