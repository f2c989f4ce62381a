package slopewright.checks.internal;

import slopewright.checks.Rule;
import slopewright.checks.Severity;

/** What rules share: an id, and how grave it is where one is not met. */
public abstract class ProjectRule implements Rule {
    private final String id;
    private final Severity severity;

    /** Makes a rule with its id and how grave it is where it is not met. */
    protected ProjectRule(String id, Severity severity) {
        this.id = id;
        this.severity = severity;
    }

    @Override
    public final String id() {
        return id;
    }

    @Override
    public final Severity severity() {
        return severity;
    }
}
