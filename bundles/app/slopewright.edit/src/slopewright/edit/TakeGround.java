package slopewright.edit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

import org.eclipse.emf.ecore.EObject;

import slopewright.evaluation.terrain.TakenGround;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;

/**
 * Takes the ground of models of the terrain as the site profile of a runway end, marked with its models, their day and how well they know
 * it. What was entered there before goes.
 */
public final class TakeGround extends RecordedEdit {
    private final RunwayEnd end;
    private final TakenGround ground;

    private TakeGround(RunwayEnd end, TakenGround ground) {
        super("Take ground from terrain");
        this.end = end;
        this.ground = ground;
    }

    /**
     * Takes ground.
     *
     * @param end    a runway end of a project
     * @param ground the ground, read for an aid at it
     */
    public static TakeGround of(RunwayEnd end, TakenGround ground) {
        return new TakeGround(end, ground);
    }

    @Override
    protected Collection<? extends EObject> scope() {
        List<EObject> scope = new ArrayList<>(end.getSiteProfile());
        scope.add(end);
        return scope;
    }

    @Override
    protected void apply() {
        ground.into(end);
        Ids.assign(end, Projects.project(end).orElseThrow());
    }
}
