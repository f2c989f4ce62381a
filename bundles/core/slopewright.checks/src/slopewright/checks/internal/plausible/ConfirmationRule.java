package slopewright.checks.internal.plausible;

import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.ProjectRule;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.Confirmations;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.ProjectRules;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.ApproachAid;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.ValueConfirmation;
import slopewright.model.ValueOverride;
import slopewright.model.util.Projects;
import slopewright.standards.CitedValue;
import slopewright.standards.RuleSet;

/**
 * A confirmation names a value of a rule set with its very number and unit, once, with source, person and date, and is as it was sealed
 * ({@link Confirmations}); another confirms nothing, and its author believes that it does. An override that changes a value more than
 * threefold, or its sign, has a wrong unit or digit (own band: a length in feet is 3.3 times that in metres); one in another unit than that
 * of the value, or the second of one value, is not what its author believes. Either is to clear up where it is for a rule set under which
 * nothing of the project stands, as all are when a project moves to another edition: it says and changes nothing, and a number of the
 * organisation would fall away without a word. A warning: what rests on the value says so itself.
 */
public final class ConfirmationRule extends ProjectRule {
    private static final double MOST_CHANGE = 3;

    /** Made by the service loader. */
    public ConfirmationRule() {
        super("DATA-40", Severity.WARNING);
    }

    @Override
    public void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        Set<String> standing = standing(evaluation);
        Set<String> seen = new HashSet<>();
        for (ValueConfirmation confirmation : evaluation.project().getConfirmations()) {
            String fault = fault(evaluation.project(), confirmation, seen);
            Optional<String> lapsed = fault.isEmpty() ? lapsed(evaluation, confirmation.getRuleSetKey(), standing) : Optional.empty();
            if (lapsed.isPresent()) {
                lapse("lapsed", evaluation, confirmation, confirmation.getValueKey(), lapsed.get(), outcomes);
                continue;
            }
            String fits = Boolean.TRUE.equals(confirmation.getRejected()) ? "rejected" : "fits";
            outcomes.about(confirmation).met(fault.isEmpty()).saying(fault.isEmpty() ? fits : fault,
                    Words.name(confirmation.getValueKey()), Words.name(confirmation.getRuleSetKey()),
                    Words.name(String.valueOf(confirmation.getValue())), Words.name(confirmation.getUnit())).advising("compare").add();
        }
        Set<String> changed = new HashSet<>();
        for (ValueOverride override : evaluation.project().getOverrides()) {
            Optional<String> lapsed = lapsed(evaluation, override.getRuleSetKey(), standing);
            if (lapsed.isPresent()) {
                lapse("override-lapsed", evaluation, override, override.getValueKey(), lapsed.get(), outcomes);
            }
            compare(evaluation, override, changed, outcomes);
        }
    }

    private static void lapse(String how, ProjectEvaluation evaluation, Identified entry, String key, String was,
            OutcomeCollector outcomes) {
        Argument value = Words.name(String.valueOf(key));
        Argument now = Words.name(nameOf(evaluation.rules()));
        outcomes.notEvaluated(entry, List.of(Message.of("missing.entry-for-edition", value, now)), Message.of("DATA-40." + how, value,
                Words.name(was), now));
    }

    /** Returns the rule set of an entry where nothing of the project stands under it. */
    private static Optional<String> lapsed(ProjectEvaluation evaluation, String set, Set<String> standing) {
        return set == null || set.isBlank() ? Optional.empty() : ProjectRules.find(evaluation.project(), ProjectRules.stored(set))
                .map(ConfirmationRule::nameOf).filter(name -> !standing.contains(name));
    }

    /** Returns the rule sets of the project and of its aids, as they are named there and as they are asked for. */
    private static Set<String> standing(ProjectEvaluation evaluation) {
        Project project = evaluation.project();
        Stream<String> named = Stream.concat(Stream.ofNullable(project.getRuleSetKey()), Projects.aids(project).stream()
                .map(ApproachAid::getRuleSetKey).filter(Objects::nonNull)).map(ProjectRules::stored);
        Stream<RuleSet> asked = Stream.concat(Stream.of(evaluation.rules()), evaluation.aids().stream().map(AidEvaluation::rules));
        return Stream.concat(named.flatMap(name -> ProjectRules.find(project, name).stream()), asked).map(ConfirmationRule::nameOf)
                .collect(Collectors.toSet());
    }

    private static String nameOf(RuleSet rules) {
        return rules.key() + ":" + rules.edition();
    }

    private static String fault(Project project, ValueConfirmation confirmation, Set<String> seen) {
        String key = String.valueOf(confirmation.getValueKey());
        String set = confirmation.getRuleSetKey();
        Optional<RuleSet> rules = set == null || set.isBlank() ? Optional.empty() : ProjectRules.find(project, ProjectRules.stored(set));
        if (rules.isEmpty()) {
            return "no-rule-set";
        }
        OptionalDouble number = rules.get().confirmable(key);
        if (number.isEmpty()) {
            return "no-value";
        }
        String unit = rules.get().unit(key).orElse(null);
        if (unit != null && !unit.equals(confirmation.getUnit())) {
            return "unit";
        }
        if (!ProjectRules.fits(rules.get(), confirmation)) {
            return "number";
        }
        if (!Confirmations.isWhole(confirmation) || Boolean.TRUE.equals(confirmation.getRejected()) && isBlank(confirmation.getReason())) {
            return "lacking";
        }
        if (!Confirmations.isSealed(confirmation)) {
            return "seal";
        }
        return seen.add(nameOf(rules.get()) + " " + key) ? "" : "twice";
    }

    private static boolean isBlank(String text) {
        return text == null || text.isBlank();
    }

    private static void compare(ProjectEvaluation evaluation, ValueOverride override, Set<String> changed, OutcomeCollector outcomes) {
        String set = override.getRuleSetKey();
        Optional<RuleSet> rules = (set == null || set.isBlank() ? Optional.of(evaluation.rules())
                : ProjectRules.find(evaluation.project(), ProjectRules.stored(set)))
                .flatMap(found -> ProjectRules.find(evaluation.project(), nameOf(found)));
        String key = String.valueOf(override.getValueKey());
        Optional<CitedValue> printed = rules.flatMap(found -> found.find(key));
        if (printed.isEmpty()) {
            return;
        }
        boolean again = !changed.add(nameOf(rules.get()) + " " + key);
        boolean otherUnit = !isBlank(override.getUnit()) && rules.get().unit(key).filter(unit -> !unit.equals(override.getUnit()))
                .isPresent();
        if (again || otherUnit) {
            outcomes.about(override).met(false).saying(again ? "override-twice" : "override-unit", Words.name(key),
                    Words.name(override.getUnit()), Words.name(rules.get().unit(key).orElse(""))).advising("compare").add();
        }
        if (printed.get().printed() == 0 || override.getValue() == null) {
            return;
        }
        double change = override.getValue() / printed.get().printed();
        outcomes.about(override).measured(Measure.between(change, 1 / MOST_CHANGE, MOST_CHANGE, ""))
                .saying("override", Words.name(override.getValueKey()), Words.number(override.getValue()),
                        Words.number(printed.get().printed()), Words.number(MOST_CHANGE)).advising("compare").add();
    }
}
