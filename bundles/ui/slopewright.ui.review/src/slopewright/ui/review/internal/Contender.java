package slopewright.ui.review.internal;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.util.EcoreUtil;

import slopewright.checks.CheckResult;
import slopewright.checks.Checks;
import slopewright.checks.Outcome;
import slopewright.checks.ProjectRules;
import slopewright.checks.Severity;
import slopewright.edit.AddAid;
import slopewright.edit.EditException;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Side;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.aid.AidLayouts;
import slopewright.siting.compare.OperationalContext;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;

/**
 * One family tried out at one runway end or helipad.
 *
 * @param family     the family
 * @param siting     the layout, empty where there is none
 * @param margin     least margin to the obstacle surface, metres
 * @param failures   how many rules it breaks
 * @param warnings   how much there is to clear up
 * @param why        what it breaks, or why there is no layout
 * @param needs      how many units it comes in and what feeds them
 */
public record Contender(IndicatorFamily family, Optional<Siting> siting, OptionalDouble margin, long failures, long warnings, String why,
        OperationalContext needs) {

    private static final String SURFACE_RULE = "OBS-01";

    /**
     * Tries a family out.
     *
     * @param snapshot a copy of the project; copied again, not changed
     * @param hostId   id of the runway end or approach direction
     * @param family   the family
     * @param side     the side
     */
    public static Contender of(Project snapshot, String hostId, IndicatorFamily family, Side side) {
        Project copy = EcoreUtil.copy(snapshot);
        try {
            ApproachHost host = (ApproachHost) Ids.find(copy, hostId).orElseThrow(() -> new EditException("the runway end is gone"));
            List.copyOf(Projects.aids(copy)).forEach(EcoreUtil::delete);
            RuleSet rules = ProjectRules.of(copy, Optional.empty());
            AddAid edit = AddAid.solve(host, family.key(), rules, side);
            edit.execute();
            return of(snapshot, family, edit.aid(), rules, Checks.run(copy, Optional.empty()));
        } catch (SitingException | EditException | IllegalArgumentException e) {
            return new Contender(family, Optional.empty(), OptionalDouble.empty(), 0, 0, e.getMessage(),
                    needs(snapshot, family, family.unitCounts().get(0)));
        }
    }

    /** The circuits of the copy feed nothing any more, so that the project itself is asked. */
    private static OperationalContext needs(Project snapshot, IndicatorFamily family, int units) {
        RuleSet rules = RuleSets.find(String.valueOf(snapshot.getRuleSetKey())).orElseGet(() -> RuleSets.all().get(0));
        return OperationalContext.of(snapshot, family, rules, units);
    }

    private static Contender of(Project snapshot, IndicatorFamily family, ApproachAid aid, RuleSet rules, CheckResult result) {
        Set<String> own = Ids.elements(aid).stream().map(Identified::getId).collect(Collectors.toSet());
        List<Outcome> outcomes = result.outcomes().stream().filter(outcome -> own.contains(outcome.elementId())).toList();
        OptionalDouble margin = outcomes.stream().filter(one -> one.rule().equals(SURFACE_RULE) && one.margin().isPresent())
                .mapToDouble(one -> one.margin().getAsDouble()).min();
        String why = outcomes.stream().filter(one -> one.weight().filter(Severity.FAIL::equals).isPresent()).map(Outcome::title).distinct()
                .collect(Collectors.joining(", "));
        return new Contender(family, Optional.of(AidLayouts.asLaid(aid, rules)), margin, count(outcomes, Severity.FAIL),
                count(outcomes, Severity.WARNING), why, needs(snapshot, family, aid.getUnits().size()));
    }

    private static long count(List<Outcome> outcomes, Severity severity) {
        return outcomes.stream().filter(one -> one.weight().filter(severity::equals).isPresent()).count();
    }
}
