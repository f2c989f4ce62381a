package slopewright.edit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

import org.eclipse.emf.ecore.EObject;

import slopewright.evaluation.landing.TakenDirection;
import slopewright.model.ApproachAid;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.standards.RuleSet;

/** Takes a landing direction and a slope at a helipad: the approach is turned and the aid laid out anew, as it was tried. */
public final class TakeDirection extends RecordedEdit {
    private final ApproachAid aid;
    private final RuleSet rules;
    private final double trueDeg;
    private final double slopeDeg;

    private TakeDirection(ApproachAid aid, RuleSet rules, double trueDeg, double slopeDeg) {
        super("Take landing direction");
        this.aid = aid;
        this.rules = rules;
        this.trueDeg = trueDeg;
        this.slopeDeg = slopeDeg;
    }

    /**
     * Takes a direction.
     *
     * @param aid      an aid in an approach direction of a helipad
     * @param rules    its rule set
     * @param trueDeg  landing direction, decimal degrees from true north
     * @param slopeDeg slope, decimal degrees
     * @return the edit; carrying it out throws a {@link slopewright.siting.SitingException} where it cannot be, with the reason
     */
    public static TakeDirection of(ApproachAid aid, RuleSet rules, double trueDeg, double slopeDeg) {
        return new TakeDirection(aid, rules, trueDeg, slopeDeg);
    }

    @Override
    protected Collection<? extends EObject> scope() {
        List<EObject> scope = new ArrayList<>(List.of(aid));
        scope.addAll(aid.getUnits());
        Projects.host(aid).ifPresent(scope::add);
        return scope;
    }

    @Override
    protected void apply() {
        TakenDirection.take(aid, trueDeg, slopeDeg, rules);
        Ids.assign(aid, Projects.project(aid).orElseThrow());
    }
}
