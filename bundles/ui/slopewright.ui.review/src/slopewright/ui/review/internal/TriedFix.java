package slopewright.ui.review.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import slopewright.checks.Verdict;
import slopewright.ui.properties.ChangeTexts;
import slopewright.ui.properties.OutcomeTexts;
import slopewright.ui.review.QuickFix;

/**
 * A remedy that was tried out.
 *
 * @param fix      the remedy
 * @param counts   how many outcomes of each verdict there would be
 * @param changes  what it would change, a line each
 * @param outcomes which outcomes would differ, a line each
 */
public record TriedFix(QuickFix fix, Map<Verdict, Integer> counts, List<String> changes, List<String> outcomes) {

    private static final int MOST_LINES = 12;

    /** Returns the remedy with what it would lead to. */
    public String text() {
        return Messages.get("fix.text", fix.label(), OutcomeTexts.open(counts));
    }

    /** Returns what it would change and lead to, a line each. */
    public String preview() {
        List<String> lines = new ArrayList<>();
        if (!fix.note().isEmpty()) {
            lines.add(fix.note());
        }
        lines.add(Messages.get("fix.changes"));
        ChangeTexts.firstOf(changes, MOST_LINES).forEach(line -> lines.add("  " + line));
        lines.add(Messages.get(outcomes.isEmpty() ? "fix.noOutcomes" : "fix.outcomes"));
        ChangeTexts.firstOf(outcomes, MOST_LINES).forEach(line -> lines.add("  " + line));
        lines.add(Messages.get("fix.afterwards", OutcomeTexts.counts(counts)));
        return String.join("\n", lines);
    }
}
