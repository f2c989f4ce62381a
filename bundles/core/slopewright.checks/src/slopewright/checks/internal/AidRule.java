package slopewright.checks.internal;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import slopewright.checks.AidSubject;
import slopewright.checks.CheckContext;
import slopewright.checks.Findings;
import slopewright.checks.Findings.Measure;
import slopewright.checks.Rule;
import slopewright.checks.Severity;
import slopewright.model.Identified;
import slopewright.standards.Citation;

/** A rule about approach aids: it goes through those that the rule set covers and whose family it knows. */
abstract class AidRule implements Rule {

    /** The rows of two and four units. */
    static final Set<String> ROWS = Set.of("four-unit-row", "two-unit-row");
    /** The bars one behind the other. */
    static final Set<String> BARS = Set.of("two-bar", "three-bar");
    /** The T forms. */
    static final Set<String> T_FORMS = Set.of("t-form", "t-form-abbreviated");
    /** The indicators of one or two units with sectors. */
    static final Set<String> BOXES = Set.of("tri-colour", "pulsating", "heliport-sector", "heliport-pair");
    /** Every family. */
    static final Set<String> ALL = Stream.of(ROWS, BARS, T_FORMS, BOXES, Set.of("alignment-panels")).flatMap(Set::stream)
            .collect(Collectors.toUnmodifiableSet());

    private final String id;
    private final String title;
    private final String description;
    private final Severity severity;
    private final Set<String> families;

    AidRule(String id, String title, String description, Severity severity, Set<String> families) {
        this.id = id;
        this.title = title;
        this.description = description;
        this.severity = severity;
        this.families = families;
    }

    @Override
    public final String id() {
        return id;
    }

    @Override
    public final String title() {
        return title;
    }

    @Override
    public final String description() {
        return description;
    }

    @Override
    public final Severity severity() {
        return severity;
    }

    @Override
    public final void check(CheckContext context, Findings findings) {
        for (AidSubject subject : context.aids()) {
            AidFacts facts = new AidFacts(subject);
            if (subject.isCovered() && families.contains(facts.family())) {
                guarded(subject.aid(), findings, () -> check(facts, findings));
            }
        }
    }

    /** Runs a part of the rule; what is missing there becomes an outcome of the element. */
    final void guarded(Identified element, Findings findings, Runnable part) {
        try {
            part.run();
        } catch (Stop stop) {
            if (stop.missing().isEmpty()) {
                findings.notApplicable(element, stop.getMessage());
            } else {
                findings.notEvaluated(element, stop.missing(), stop.getMessage());
            }
        }
    }

    /** Checks one aid. */
    abstract void check(AidFacts facts, Findings findings);

    /** Adds a comparison; what to do is said only where it failed. */
    final void compare(Findings findings, Identified element, Measure measure, Citation citation, String compared, String action) {
        compare(findings, element, measure, Optional.of(citation), compared, action, severity);
    }

    /** Adds a comparison with its own weight, and with a citation where the limit has one. */
    static void compare(Findings findings, Identified element, Measure measure, Optional<Citation> citation, String compared, String action,
            Severity severity) {
        findings.compare(element, measure, citation, measure.isMet() ? compared : compared + " " + action, severity);
    }

    /** Adds a verdict without a number; what to do is said only where it failed. */
    final void decide(Findings findings, Identified element, boolean met, Citation citation, String compared, String action) {
        findings.decide(element, met, citation, met ? compared : compared + " " + action);
    }
}
