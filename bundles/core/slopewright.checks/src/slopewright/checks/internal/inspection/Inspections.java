package slopewright.checks.internal.inspection;

import java.util.Comparator;
import java.util.Optional;

import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.Stop;
import slopewright.messages.Message;
import slopewright.model.ApproachAid;
import slopewright.model.Inspection;

/** What the rules about inspections share: the last one decides. */
public final class Inspections {
    private Inspections() {
    }

    /** Returns the last inspection by its date, the last of the list where dates are even or missing. */
    public static Optional<Inspection> last(ApproachAid aid) {
        return aid.getInspections().stream().reduce((earlier, later) -> Comparator.comparing(Inspections::date).compare(earlier, later) > 0
                ? earlier : later);
    }

    private static String date(Inspection inspection) {
        return inspection.getDate() == null ? "" : inspection.getDate();
    }

    /** Returns the last inspection; ends a rule where there is none, which another rule says. */
    static Inspection needed(AidFacts facts) {
        return last(facts.aid()).orElseThrow(() -> Stop.notApplicable(Message.of("inspection.none")));
    }
}
