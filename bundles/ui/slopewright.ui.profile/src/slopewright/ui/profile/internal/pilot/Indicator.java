package slopewright.ui.profile.internal.pilot;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.drawing.pilot.FlownApproach;
import slopewright.drawing.pilot.PilotGround;
import slopewright.drawing.pilot.PilotPicture;
import slopewright.geometry.FramePoint;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.terrain.TerrainField;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.RunwayEnd;
import slopewright.siting.Families;
import slopewright.siting.Siting;
import slopewright.siting.UnitPlan;
import slopewright.siting.range.LightOutput;
import slopewright.siting.range.RangeConditions;
import slopewright.siting.range.RangeEstimate;
import slopewright.standards.RuleSet;

/**
 * An indicator that is looked at, with its units as they stand.
 *
 * @param aid    the aid
 * @param host   its runway end or approach direction
 * @param rules  the rule set that it is laid out under
 * @param siting its layout
 * @param ground what lies around it
 * @param terrain models of the terrain around it
 * @param range  how far it is seen; empty where the rule set has no values for that
 */
public record Indicator(ApproachAid aid, ApproachHost host, RuleSet rules, Siting siting, PilotGround ground,
        List<TerrainField> terrain, Optional<RangeEstimate> range) {

    private static final double RUNWAY_VIEW_M = 3000;
    private static final double HELIPAD_VIEW_M = 600;
    private static final double RUNWAY_START_M = 6000;
    private static final double HELIPAD_START_M = 1500;
    private static final double RUNWAY_SPEED_KT = 120;
    private static final double HELIPAD_SPEED_KT = 60;
    private static final double WEAVE_DEG = 0.4;
    private static final double WEAVE_S = 40;

    /**
     * Reads what an aid gives as it stands.
     *
     * @param evaluation what it gives
     * @return the indicator
     * @throws slopewright.siting.SitingException where its units do not give a layout; the message says why
     */
    static Indicator of(AidEvaluation evaluation) {
        Siting siting = evaluation.siting().orThrow();
        return new Indicator(evaluation.aid(), evaluation.host(), evaluation.rules(), siting, PilotGround.of(evaluation.host()),
                evaluation.surroundings().value().map(TerrainField::of).orElse(List.of()),
                range(evaluation.aid(), siting, evaluation.rules()));
    }

    private static Optional<RangeEstimate> range(ApproachAid aid, Siting siting, RuleSet rules) {
        try {
            return Optional.of(RangeEstimate.of(siting, rules, RangeConditions.of(aid)));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** Returns how strong its units shine in a direction. */
    LightOutput output() {
        return LightOutput.of(Families.get(siting.family()), rules, RangeConditions.of(aid));
    }

    /** Tells whether it stands at a runway rather than a helipad. */
    boolean atRunway() {
        return host instanceof RunwayEnd;
    }

    /** Returns the eye on the slope at a distance that is usual for the indicator. */
    FramePoint usualEye() {
        return onSlope(atRunway() ? RUNWAY_VIEW_M : HELIPAD_VIEW_M);
    }

    /** Returns the eye on the slope over the centre line at a distance before the threshold or hover point, metres. */
    FramePoint onSlope(double beforeM) {
        return PilotPicture.eyeAt(siting, beforeM, siting.slopeDeg());
    }

    /** Returns an approach that is usual for the indicator, with a slow weave that shows the signals above and below the slope. */
    FlownApproach usualApproach() {
        return new FlownApproach(atRunway() ? RUNWAY_START_M : HELIPAD_START_M, atRunway() ? RUNWAY_SPEED_KT : HELIPAD_SPEED_KT,
                siting.slopeDeg(), 0, WEAVE_DEG, WEAVE_S, 0);
    }

    /**
     * Tells whether an eye is to the side of the beam of a unit.
     *
     * @param unit the unit
     * @param eye  the eye
     * @return whether it is; false where the limits of the beam are not known
     */
    boolean isBeside(UnitPlan unit, FramePoint eye) {
        double azimuth = unit.offAxisDeg(eye);
        OptionalDouble limit = limitDeg(azimuth < 0 ? aid.getBeamLeftLimitDeg() : aid.getBeamRightLimitDeg());
        return limit.isPresent() && Math.abs(azimuth) > limit.getAsDouble();
    }

    private OptionalDouble limitDeg(Double entered) {
        if (entered != null) {
            return OptionalDouble.of(Math.abs(entered));
        }
        Double width = aid.getEquipment() == null ? null : aid.getEquipment().getBeamWidthDeg();
        return width == null ? OptionalDouble.empty() : OptionalDouble.of(width / 2);
    }
}
