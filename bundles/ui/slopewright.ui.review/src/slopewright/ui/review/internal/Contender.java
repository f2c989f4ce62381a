package slopewright.ui.review.internal;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.util.EcoreUtil;

import slopewright.checks.CheckResult;
import slopewright.checks.Checks;
import slopewright.checks.Outcome;
import slopewright.checks.Severity;
import slopewright.edit.AddAid;
import slopewright.edit.EditException;
import slopewright.evaluation.AidLayouts;
import slopewright.evaluation.ProjectRules;
import slopewright.evaluation.comparison.OperationalContext;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.siting.Families;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Side;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;
import slopewright.ui.MessageTexts;
import slopewright.ui.preferences.Preferences;

/**
 * One family, or one rule set for an aid, tried out at one runway end or helipad.
 *
 * @param name     what it is called in the comparison
 * @param family   the family
 * @param ruleSet  name of the rule set that judged it
 * @param siting   the layout, empty where there is none
 * @param margins  least margin of the rules of each kind, metres
 * @param failures how many rules it breaks
 * @param warnings how much there is to clear up
 * @param why      what it breaks, or why there is no layout
 * @param needs    how many units it comes in and what feeds them
 */
public record Contender(String name, IndicatorFamily family, String ruleSet, Optional<Siting> siting, Map<MarginKind, Double> margins,
        long failures, long warnings, String why, OperationalContext needs) {

    /** Copies the margins. */
    public Contender {
        margins = Map.copyOf(margins);
    }

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
            return of(family.name(), snapshot, family, edit.aid(), rules, Checks.run(copy, Optional.empty()));
        } catch (SitingException | EditException | IllegalArgumentException e) {
            return without(family.name(), snapshot, family, "", e.getMessage());
        }
    }

    /**
     * Judges an aid as it stands under another rule set.
     *
     * @param snapshot a copy of the project, not changed
     * @param aidId    id of the aid
     * @param rules    the rule set
     */
    public static Contender under(Project snapshot, String aidId, RuleSet rules) {
        String name = rules.descriptor().name() + " (" + rules.edition() + ")";
        String key = Preferences.nameOf(rules);
        ApproachAid aid = (ApproachAid) Ids.find(snapshot, aidId).orElseThrow(() -> new EditException("the aid is gone"));
        IndicatorFamily family = Families.get(String.valueOf(aid.getFamilyKey()));
        try {
            if (!rules.covers(family.key())) {
                return without(name, snapshot, family, key, Messages.get("comparison.uncovered", family.name()));
            }
            RuleSet own = ProjectRules.of(snapshot, Optional.of(key));
            return of(name, snapshot, family, aid, own, Checks.run(snapshot, Optional.of(key)));
        } catch (SitingException | IllegalArgumentException e) {
            return without(name, snapshot, family, key, e.getMessage());
        }
    }

    private static Contender without(String name, Project snapshot, IndicatorFamily family, String ruleSet, String why) {
        return new Contender(name, family, ruleSet, Optional.empty(), Map.of(), 0, 0, why,
                needs(snapshot, family, family.unitCounts().get(0)));
    }

    /** Returns the least margin of a kind, metres; empty where nothing was measured. */
    public OptionalDouble margin(MarginKind kind) {
        Double found = margins.get(kind);
        return found == null ? OptionalDouble.empty() : OptionalDouble.of(found);
    }

    /** The circuits of the copy feed nothing any more, so that the project itself is asked. */
    private static OperationalContext needs(Project snapshot, IndicatorFamily family, int units) {
        RuleSet rules = RuleSets.find(String.valueOf(snapshot.getRuleSetKey())).orElseGet(() -> RuleSets.all().get(0));
        return OperationalContext.of(snapshot, family, rules, units);
    }

    private static Contender of(String name, Project snapshot, IndicatorFamily family, ApproachAid aid, RuleSet rules, CheckResult result) {
        Set<String> own = Ids.elements(aid).stream().map(Identified::getId).collect(Collectors.toSet());
        List<Outcome> outcomes = result.outcomes().stream().filter(outcome -> own.contains(outcome.elementId())).toList();
        Map<MarginKind, Double> margins = new EnumMap<>(MarginKind.class);
        for (MarginKind kind : MarginKind.values()) {
            outcomes.stream().filter(one -> kind.isMeasuredBy(one) && one.margin().isPresent())
                    .mapToDouble(one -> one.margin().getAsDouble()).min().ifPresent(least -> margins.put(kind, least));
        }
        String why = outcomes.stream().filter(one -> one.weight().filter(Severity.FAIL::equals).isPresent()).map(Outcome::title).distinct()
                .map(MessageTexts::of).collect(Collectors.joining(", "));
        return new Contender(name, family, Preferences.nameOf(rules), Optional.of(AidLayouts.evaluate(aid, rules)), margins,
                count(outcomes, Severity.FAIL), count(outcomes, Severity.WARNING), why, needs(snapshot, family, aid.getUnits().size()));
    }

    private static long count(List<Outcome> outcomes, Severity severity) {
        return outcomes.stream().filter(one -> one.weight().filter(severity::equals).isPresent()).count();
    }
}
