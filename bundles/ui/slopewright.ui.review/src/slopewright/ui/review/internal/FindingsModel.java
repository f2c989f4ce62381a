package slopewright.ui.review.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

import slopewright.checks.CheckResult;
import slopewright.checks.Outcome;
import slopewright.standards.RuleSet;
import slopewright.ui.properties.OutcomeTexts;

/** The outcomes in the order and the groups in which they are shown: filtered, sorted, under their element or their rule. */
final class FindingsModel {

    /** Under what the outcomes stand. */
    enum Grouping {
        /** Under their verdict: what is not met; what lacks an input, by the input; what rests on a value to confirm, by the value. */
        VERDICT,
        /** Under their element. */
        ELEMENT,
        /** Under their rule. */
        RULE,
        /** Under nothing. */
        NONE
    }

    /**
     * Outcomes under one heading.
     *
     * @param heading  the element or the rule; empty where they stand under nothing
     * @param outcomes at least one
     */
    record Group(String heading, List<Outcome> outcomes) {

        /** Returns the worst of its outcomes, for the image of the heading. */
        Outcome worst() {
            return outcomes.stream().min(OutcomeTexts.worstFirst()).orElseThrow();
        }
    }

    private List<Outcome> outcomes = List.of();
    private final Map<Outcome, String> names = new IdentityHashMap<>();
    private Grouping grouping = Grouping.VERDICT;
    private Optional<RuleSet> rules = Optional.empty();
    private OutcomeFilter filter = OutcomeFilter.FINDINGS;
    private String words = "";
    private OutcomeColumn sorted = OutcomeColumn.RULE;
    private boolean upward;
    private List<Group> groups = List.of();

    void show(Optional<CheckResult> result) {
        outcomes = result.map(CheckResult::outcomes).orElse(List.of());
        rules = result.map(CheckResult::rules);
        names.clear();
        Map<String, Integer> seen = new HashMap<>();
        for (Outcome outcome : outcomes) {
            String name = outcome.rule() + " " + outcome.elementId() + " " + outcome.elementPath();
            names.put(outcome, name + " " + seen.merge(name, 1, Integer::sum));
        }
        arrange();
    }

    /** Returns all outcomes, shown or not. */
    List<Outcome> all() {
        return outcomes;
    }

    /** Returns what an outcome is called from one check to the next: its rule, its element, and which one it is of several. */
    String name(Outcome outcome) {
        return names.getOrDefault(outcome, "");
    }

    void group(Grouping by) {
        grouping = by;
        arrange();
    }

    void filter(OutcomeFilter which) {
        filter = which;
        arrange();
    }

    void search(String text) {
        words = text.strip().toLowerCase(Locale.ROOT);
        arrange();
    }

    /** Sorts by a column; the same one again turns the order round. */
    void sort(OutcomeColumn column) {
        upward = column == sorted && !upward;
        sorted = column;
        arrange();
    }

    OutcomeColumn sorted() {
        return sorted;
    }

    boolean isUpward() {
        return upward;
    }

    Grouping grouping() {
        return grouping;
    }

    /** Returns the groups; one without a heading where nothing is grouped. */
    List<Group> groups() {
        return groups;
    }

    /** Returns what is shown, in the order of the groups. */
    List<Outcome> shown() {
        return groups.stream().flatMap(group -> group.outcomes().stream()).toList();
    }

    private void arrange() {
        Comparator<Outcome> order = upward ? sorted.order().reversed() : sorted.order();
        Predicate<Outcome> wanted = outcome -> filter.shows(outcome) && (words.isEmpty() || contains(outcome));
        List<Outcome> kept = outcomes.stream().filter(wanted).sorted(order.thenComparing(OutcomeColumn.ELEMENT::text)).toList();
        Optional<Function<Outcome, String>> heading = switch (grouping) {
            case VERDICT -> Optional.of(outcome -> Checklist.heading(outcome, rules));
            case ELEMENT -> Optional.of(OutcomeColumn.ELEMENT::text);
            case RULE -> Optional.of(OutcomeColumn.RULE::text);
            case NONE -> Optional.empty();
        };
        groups = heading.map(by -> grouped(kept, by)).orElseGet(() -> kept.isEmpty() ? List.of() : List.of(new Group("", kept)));
    }

    private List<Group> grouped(List<Outcome> kept, Function<Outcome, String> heading) {
        Map<String, List<Outcome>> byHeading = new LinkedHashMap<>();
        kept.forEach(outcome -> byHeading.computeIfAbsent(heading.apply(outcome), key -> new ArrayList<>()).add(outcome));
        Comparator<Group> order = grouping == Grouping.VERDICT
                ? Comparator.<Group>comparingInt(group -> Checklist.rank(group.outcomes().get(0)))
                        .thenComparing(group -> group.outcomes().size(), Comparator.reverseOrder())
                : Comparator.comparing(Group::worst, OutcomeTexts.worstFirst());
        return byHeading.entrySet().stream().map(entry -> new Group(entry.getKey(), List.copyOf(entry.getValue())))
                .sorted(order.thenComparing(Group::heading)).toList();
    }

    private boolean contains(Outcome outcome) {
        return FindingsText.line(outcome).toLowerCase(Locale.ROOT).contains(words);
    }
}
