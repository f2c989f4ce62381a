package slopewright.evaluation.remedy;

import slopewright.evaluation.AidLayouts;
import slopewright.evaluation.Proposals;
import slopewright.evaluation.UnitGround;
import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.messages.Message;
import slopewright.model.ApproachAid;
import slopewright.model.GlidePathAid;
import slopewright.model.LightUnit;
import slopewright.model.ProfilePoint;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;
import slopewright.siting.ElementNames;
import slopewright.siting.SitingException;
import slopewright.siting.site.SiteFrame;
import slopewright.standards.RuleSet;

/** Carries remedies out on a model: the one place, for trials and for edits. */
public final class RemedyChange {

    private RemedyChange() {
    }

    /**
     * Carries a remedy out.
     *
     * @param remedy a remedy that helps
     * @param aid    the aid, in a runway end or approach direction; it and its place are changed
     * @param rules  its rule set
     * @throws SitingException where it cannot be carried out; the message says why
     */
    public static void carryOut(Remedy remedy, ApproachAid aid, RuleSet rules) {
        double step = remedy.step().orElseThrow(() -> new SitingException(remedy.message()));
        switch (remedy.kind()) {
            case RAISE_SLOPE -> Proposals.layOutForSlope(aid, step, rules);
            case NARROW_BEAM -> {
                if (remedy.onLeft()) {
                    aid.setBeamLeftLimitDeg(-step);
                } else {
                    aid.setBeamRightLimitDeg(step);
                }
            }
            case TURN_AXIS -> turnAxis(aid, step);
            case DISPLACE_THRESHOLD -> displace(aid, step);
            case MOVE_UPWIND_BY_CROSSING_HEIGHT -> move(aid, step);
            case MOVE_UPWIND_UNTIL_CLEAR -> moveWithSurface(aid, step, AidLayouts.evaluate(aid, rules).distanceM());
            default -> throw new IllegalStateException(remedy.kind().name());
        }
    }

    static void turnAxis(ApproachAid aid, double byDeg) {
        aid.setAxisTurnDeg(Math.round(((aid.getAxisTurnDeg() == null ? 0 : aid.getAxisTurnDeg()) + byDeg) * 1e6) / 1e6);
    }

    static void move(ApproachAid aid, double byM) {
        UnitGround ground = UnitGround.of(aid);
        for (LightUnit unit : aid.getUnits()) {
            if (unit.getAlongM() != null) {
                ground.setAlong(unit, unit.getAlongM() + byM);
            }
        }
    }

    /** Moves the units, and keeps with a reason at which distance they stood: the obstacle surface moves with them. */
    static void moveWithSurface(ApproachAid aid, double byM, double stoodM) {
        if (aid.getUnshiftedDistanceM() == null || aid.getUnshiftedDistanceReason() == null
                || aid.getUnshiftedDistanceReason().isBlank()) {
            aid.setUnshiftedDistanceM(UnitGround.rounded(stoodM));
            aid.setUnshiftedDistanceReason(Message.of("remedy.moved-reason").english());
        }
        move(aid, byM);
    }

    /**
     * Displaces the threshold in the landing direction to the level of the ground there. Every indicator of the end moves with it and keeps
     * its height above the ground; what is measured from the threshold and stays where it is gets new numbers.
     */
    static void displace(ApproachAid aid, double byM) {
        if (!(Projects.host(aid).orElse(null) instanceof RunwayEnd end)) {
            throw new SitingException(Message.of("remedy.no-threshold"));
        }
        double datum = AidLayouts.datumM(end).orElseThrow(() -> new SitingException(Message.of("evaluation.no-elevation",
                ElementNames.of(end))));
        SiteFrame frame = SiteFrame.of(end);
        double rise = UnitGround.of(aid).riseM(0, byM);
        for (ApproachAid each : end.getAids()) {
            UnitGround ground = UnitGround.of(each);
            for (LightUnit unit : each.getUnits()) {
                if (unit.getLensElevationM() != null && unit.getAlongM() != null) {
                    unit.setLensElevationM(UnitGround.rounded(unit.getLensElevationM() + (ground.isKnown()
                            ? ground.riseM(unit.getAlongM(), unit.getAlongM() + byM) : rise)));
                }
            }
        }
        frame.fromFrame(new FramePoint(byM, 0, rise), end.getThreshold());
        end.setThresholdElevationM(UnitGround.rounded(datum + rise));
        end.setDisplacedThresholdM((end.getDisplacedThresholdM() == null ? 0 : end.getDisplacedThresholdM()) + byM);
        if (end.getLandingDistanceM() != null) {
            end.setLandingDistanceM(end.getLandingDistanceM() - byM);
        }
        for (ProfilePoint point : end.getSiteProfile()) {
            point.setChainageM(point.getChainageM() == null ? null : point.getChainageM() - byM);
        }
        if (end.getGlidePath() != null) {
            keepGlidePath(end.getGlidePath(), byM, rise);
        }
    }

    private static void keepGlidePath(GlidePathAid path, double byM, double riseM) {
        path.setOriginAlongM(path.getOriginAlongM() == null ? null : path.getOriginAlongM() - byM);
        path.setAntennaAlongM(path.getAntennaAlongM() == null ? null : path.getAntennaAlongM() - byM);
        if (path.getReferenceDatumHeightM() != null && path.getPathAngleDeg() != null) {
            path.setReferenceDatumHeightM(UnitGround.rounded(path.getReferenceDatumHeightM() - byM * Angles.tanDeg(path.getPathAngleDeg())
                    - riseM));
        }
    }
}
