package slopewright.checks.internal;

import java.util.List;
import java.util.Optional;

import slopewright.checks.AidSubject;
import slopewright.checks.CheckContext;
import slopewright.checks.Findings;
import slopewright.checks.Rule;
import slopewright.siting.Families;
import slopewright.siting.IndicatorFamily;

/** A family that nobody knows can not be checked. */
public final class KnownFamilyRule implements Rule {

    @Override
    public String id() {
        return "DATA-06";
    }

    @Override
    public String title() {
        return "Family is known";
    }

    @Override
    public String description() {
        return "The family of every approach aid is one of the known ones.";
    }

    @Override
    public void check(CheckContext context, Findings findings) {
        for (AidSubject subject : context.aids()) {
            String key = subject.aid().getFamilyKey();
            if (key == null) {
                findings.notEvaluated(subject.aid(), List.of("family"), "The aid names no family. Choose one.");
                continue;
            }
            boolean known = subject.family().isPresent();
            findings.decide(subject.aid(), known, Optional.empty(), known ? "The family " + key + " is known."
                    : "There is no family '" + key + "'. Choose one of "
                    + String.join(", ", Families.all().stream().map(IndicatorFamily::key).toList())
                            + ".", severity());
        }
    }
}
