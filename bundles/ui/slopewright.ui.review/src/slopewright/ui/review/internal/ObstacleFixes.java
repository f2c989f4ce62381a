package slopewright.ui.review.internal;

import java.util.ArrayList;
import java.util.List;

import slopewright.checks.ProjectRules;
import slopewright.edit.Compound;
import slopewright.edit.EditException;
import slopewright.edit.MoveAid;
import slopewright.edit.RecordedEdit;
import slopewright.edit.ResolveAid;
import slopewright.edit.SetAttribute;
import slopewright.model.ApproachAid;
import slopewright.model.Obstacle;
import slopewright.model.Project;
import slopewright.model.SlopewrightPackage.Literals;
import slopewright.model.util.Projects;
import slopewright.siting.SitingException;
import slopewright.siting.aid.AidLayouts;
import slopewright.siting.aid.AidRequests;
import slopewright.siting.remedy.Remedies;
import slopewright.siting.remedy.Remedy;
import slopewright.siting.remedy.SurveyedShape;
import slopewright.siting.site.SiteFrame;
import slopewright.standards.RuleSet;

/** Edits that carry out the computed remedies against a penetrated obstacle surface. */
public final class ObstacleFixes {

    private static final double STEPS_PER_DEG = 100;

    private ObstacleFixes() {
    }

    /**
     * Makes the edit of one remedy.
     *
     * @param project the project
     * @param aid     its aid whose obstacle surface is penetrated
     * @param kind    the remedy
     * @throws EditException   where this remedy does not help or is none for an edit; the message says why
     * @throws SitingException where something is missing
     */
    public static RecordedEdit edit(Project project, ApproachAid aid, Remedy.Kind kind) {
        RuleSet rules = ProjectRules.of(project, java.util.Optional.empty());
        SiteFrame frame = SiteFrame.of(Projects.host(aid).orElseThrow(() -> new EditException("the aid belongs to no runway end")));
        List<SurveyedShape> shapes = new ArrayList<>();
        for (Obstacle obstacle : project.getAerodrome().getObstacles()) {
            addShape(shapes, obstacle, frame);
        }
        Remedy remedy = Remedies.of(AidLayouts.asLaid(aid, rules), AidRequests.of(aid), rules, shapes).stream()
                .filter(one -> one.kind() == kind).findFirst().orElseThrow(() -> new EditException("nothing penetrates"));
        double amount = remedy.amount().orElseThrow(() -> new EditException(remedy.text()));
        return switch (kind) {
            case RAISE_SLOPE -> Compound.of("Raise the slope", List.of(
                    SetAttribute.of(aid, Literals.APPROACH_AID__SLOPE_DEG, Math.ceil(amount * STEPS_PER_DEG) / STEPS_PER_DEG),
                    ResolveAid.of(aid, rules)));
            case TURN_AXIS -> SetAttribute.of(aid, Literals.APPROACH_AID__AXIS_TURN_DEG, axisTurnDeg(aid, amount));
            case MOVE_UPWIND_UNTIL_CLEAR, MOVE_UPWIND_BY_CROSSING_HEIGHT -> MoveAid.by(aid, Math.ceil(amount), 0);
            case NARROW_BEAM, DISPLACE_THRESHOLD -> throw new EditException(remedy.text());
        };
    }

    private static void addShape(List<SurveyedShape> shapes, Obstacle obstacle, SiteFrame frame) {
        if (Boolean.TRUE.equals(obstacle.getShielded())) {
            return;
        }
        try {
            shapes.add(SurveyedShape.of(obstacle, frame));
        } catch (SitingException e) {
            // an obstacle that lacks a number is a finding of its own
        }
    }

    private static double axisTurnDeg(ApproachAid aid, double byDeg) {
        double now = aid.getAxisTurnDeg() == null ? 0 : aid.getAxisTurnDeg();
        double turn = (now + byDeg) * STEPS_PER_DEG;
        return (byDeg > 0 ? Math.ceil(turn) : Math.floor(turn)) / STEPS_PER_DEG;
    }
}
