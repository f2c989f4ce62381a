package slopewright.evaluation;

import java.util.Optional;

import slopewright.model.ApproachAid;
import slopewright.model.Project;
import slopewright.model.ValueConfirmation;
import slopewright.model.ValueOverride;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;

/** The rule set of a project: the one it names, with its overrides and confirmations. */
public final class ProjectRules {

    /** The rule set of a project that names none. */
    public static final String DEFAULT = "icao";

    private ProjectRules() {
    }

    /**
     * Returns a rule set with the overrides and confirmations of a project.
     *
     * @param project the project
     * @param name    name of the rule set; empty for the one that the project names
     * @return the rule set
     * @throws IllegalArgumentException where there is none of that name, or an override names an unknown value; the message says which
     */
    public static RuleSet of(Project project, Optional<String> name) {
        String key = name.orElseGet(() -> project.getRuleSetKey() == null ? DEFAULT : project.getRuleSetKey());
        RuleSet rules = RuleSets.find(key).orElseThrow(() -> new IllegalArgumentException("there is no rule set '" + key + "'; known are "
                + String.join(", ", RuleSets.all().stream().map(one -> one.key() + ":" + one.edition()).toList())));
        for (ValueOverride override : project.getOverrides()) {
            if (isFor(rules, override.getRuleSetKey())) {
                if (override.getValue() == null || override.getValueKey() == null) {
                    throw new IllegalArgumentException("the override " + override.getId() + " has no value or names none");
                }
                rules = rules.withOverride(override.getValueKey(), override.getValue(), text(override.getReason(), override.getPerson(),
                        override.getDate()));
            }
        }
        for (ValueConfirmation confirmation : project.getConfirmations()) {
            if (isFor(rules, confirmation.getRuleSetKey()) && confirmation.getValueKey() != null) {
                rules = rules.withConfirmation(confirmation.getValueKey(), text(confirmation.getSource(), confirmation.getPerson(),
                        confirmation.getDate()));
            }
        }
        return rules;
    }

    /**
     * Returns the rule set of one aid: the one that was named, else its own where there is one of that name, else that of the project.
     * A name that is not known is a finding of its own, not a reason to check nothing.
     *
     * @param project the project
     * @param aid     an aid in it
     * @param name    name of the rule set; empty for the aid's own
     * @return the rule set
     * @throws IllegalArgumentException as for a project
     */
    public static RuleSet of(Project project, ApproachAid aid, Optional<String> name) {
        return of(project, name.or(() -> Optional.ofNullable(aid.getRuleSetKey()).filter(key -> RuleSets.find(key).isPresent())));
    }

    private static boolean isFor(RuleSet rules, String key) {
        return key == null || key.equals(rules.key()) || key.equals(rules.key() + ":" + rules.edition());
    }

    private static String text(String what, String person, String date) {
        StringBuilder text = new StringBuilder(what == null ? "no reason given" : what);
        if (person != null) {
            text.append(", ").append(person);
        }
        return date == null ? text.toString() : text.append(", ").append(date).toString();
    }
}
