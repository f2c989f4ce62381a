package slopewright.checks.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.model.Identified;

/** Collects the names of missing inputs. */
public final class Missing {

    private final List<String> names = new ArrayList<>();

    /** Notes an input as missing unless it is there. */
    public void unless(boolean there, String name) {
        if (!there) {
            names.add(name);
        }
    }

    public List<String> names() {
        return List.copyOf(names);
    }

    /** Adds a pass where nothing is missing, else one outcome that names everything that is. */
    public static void report(OutcomeCollector findings, Identified element, List<String> missing, String complete) {
        if (missing.isEmpty()) {
            findings.decide(element, true, Optional.empty(), complete, Severity.WARNING);
        } else {
            findings.notEvaluated(element, missing, "Missing: " + Words.list(missing)
                    + ". Enter it; until then other rules can not be evaluated.");
        }
    }
}
