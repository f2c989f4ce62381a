package slopewright.edit;

import java.util.Collection;
import java.util.List;

import org.eclipse.emf.ecore.EObject;

import slopewright.evaluation.Proposals;
import slopewright.messages.Message;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.Project;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.siting.SitingException;
import slopewright.standards.RuleSet;

/**
 * Lays an aid out again from its runway end, aeroplanes and choices. A unit whose label the new layout has again keeps its id, its
 * height above ground and its frangibility; measured values go, because they belong to the old place.
 */
public final class ResolveAid extends RecordedEdit {

    private final ApproachAid aid;
    private final RuleSet rules;

    private ResolveAid(ApproachAid aid, RuleSet rules) {
        super("Lay out again");
        this.aid = aid;
        this.rules = rules;
    }

    /**
     * Lays an aid out again. The layout is solved when the edit is carried out.
     *
     * @param aid   an aid of a project
     * @param rules the rule set that lays it out
     * @return the edit; carrying it out throws a {@link SitingException} where no layout can be made, with the reason
     */
    public static ResolveAid of(ApproachAid aid, RuleSet rules) {
        return new ResolveAid(aid, rules);
    }

    @Override
    protected Collection<? extends EObject> scope() {
        return List.of(aid);
    }

    @Override
    protected void apply() {
        ApproachHost host = Projects.host(aid).orElseThrow(() -> new EditException(Message.of("edit.no-host")));
        Project project = Projects.project(host).orElseThrow(() -> new EditException(Message.said("edit.no-project",
                Projects.label(host))));
        Proposals.layOut(aid, rules);
        Ids.assign(aid, project);
    }
}
