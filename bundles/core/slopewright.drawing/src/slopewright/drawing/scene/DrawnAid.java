package slopewright.drawing.scene;

import java.util.List;
import java.util.Objects;

import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.LightUnit;
import slopewright.model.Obstacle;
import slopewright.model.Project;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;
import slopewright.siting.Siting;
import slopewright.siting.UnitPlan;
import slopewright.siting.site.SiteFrame;

/**
 * An approach aid with what is needed to draw it.
 *
 * @param project the project, for obstacles and taxiways
 * @param host    the runway end or approach direction
 * @param aid     the aid
 * @param siting  the layout to draw
 * @param frame   the frame on the ground
 */
public record DrawnAid(Project project, ApproachHost host, ApproachAid aid, Siting siting, SiteFrame frame) {

    /** Refuses missing parts. */
    public DrawnAid {
        Objects.requireNonNull(project);
        Objects.requireNonNull(siting);
        Objects.requireNonNull(frame);
    }

    /**
     * Makes one of an aid in a project.
     *
     * @param aid    the aid
     * @param siting its layout
     * @return what is needed to draw it
     * @throws slopewright.siting.SitingException where its place on the ground is not known
     */
    public static DrawnAid of(ApproachAid aid, Siting siting) {
        ApproachHost host = Projects.host(aid).orElseThrow();
        return new DrawnAid(Projects.project(aid).orElseThrow(), host, aid, siting, SiteFrame.of(host));
    }

    /** Returns what the origin of the frame is called. */
    public String originName() {
        return host instanceof RunwayEnd ? "threshold" : "hover point";
    }

    /** Returns the obstacles of the aerodrome. */
    public List<Obstacle> obstacles() {
        return project.getAerodrome() == null ? List.of() : project.getAerodrome().getObstacles();
    }

    /** Returns the id of the element that a unit was read from; empty where it is not in the model. */
    public String elementId(UnitPlan plan) {
        return aid.getUnits().stream().filter(unit -> plan.id().equals(unit.getLabel())).map(LightUnit::getId).findFirst().orElse("");
    }

    /** Returns what the drawings of the aid are called after. */
    public String name() {
        return Projects.label(host) + ", " + Projects.label(aid);
    }
}
