package slopewright.ui.review.internal.versions;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.checks.Outcome;
import slopewright.checks.compare.ProjectDifference;
import slopewright.checks.compare.ProjectDifference.Change;
import slopewright.checks.compare.ProjectDifference.OutcomeChange;
import slopewright.checks.compare.ProjectDifference.ResultChange;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.model.Project;
import slopewright.ui.MessageTexts;
import slopewright.ui.properties.ChangeTexts;
import slopewright.ui.review.internal.Messages;
import slopewright.ui.review.internal.OutcomeColumn;
import slopewright.ui.units.Quantity;
import slopewright.ui.units.QuantityFormat;

/**
 * One thing that differs between two versions.
 *
 * @param element id of the element
 * @param path    the element for people
 * @param what    the attribute, the result or the rule
 * @param before  how it was
 * @param after   how it is
 * @param outcome what the rule says now, or said where it says nothing any more; empty where it is no outcome
 */
public record VersionRow(String element, String path, String what, String before, String after, Optional<Outcome> outcome) {

    /**
     * Compares two versions.
     *
     * @param older the older one, evaluated
     * @param newer the newer one, evaluated
     * @return what was changed, what that did to the results and to the outcomes, in this order
     */
    public static List<VersionRow> between(ProjectEvaluation older, ProjectEvaluation newer) {
        ProjectDifference difference = new ProjectDifference(older, newer);
        List<VersionRow> rows = new ArrayList<>();
        for (Change change : difference.changes()) {
            Project named = change.kind().equals("removed") ? older.project() : newer.project();
            boolean whole = change.attribute().isEmpty();
            String there = ChangeTexts.kind(change);
            rows.add(new VersionRow(change.element(), MessageTexts.of(change.path()), ChangeTexts.what(change, named),
                    whole ? "" : ChangeTexts.value(change, named, change.before()),
                    whole ? there : ChangeTexts.value(change, named, change.after()),
                    Optional.empty()));
        }
        for (ResultChange change : difference.resultChanges()) {
            rows.add(new VersionRow(change.aid(), MessageTexts.of(change.path()), Messages.get("versions.quantity." + change.quantity()),
                    number(change.before(), change.quantity()), number(change.after(), change.quantity()), Optional.empty()));
        }
        for (OutcomeChange change : difference.outcomeChanges()) {
            Optional<Outcome> shown = change.after().or(change::before);
            rows.add(new VersionRow(change.element(), MessageTexts.of(change.path()), shown.map(OutcomeColumn.RULE::text).orElse(""),
                    ChangeTexts.outcome(change.before()), ChangeTexts.outcome(change.after()), shown));
        }
        return rows;
    }

    private static String number(OptionalDouble value, String quantity) {
        if (value.isEmpty()) {
            return Messages.get("versions.nothing");
        }
        Quantity kind = Quantity.of(quantity);
        double rounded = kind == Quantity.LENGTH ? Math.round(value.getAsDouble() * 1000) / 1000.0 : value.getAsDouble();
        return QuantityFormat.preferred().showWithUnit(rounded, kind);
    }

    /** Returns whether it contains some words in small letters. */
    boolean contains(String words) {
        return String.join(" ", path, what, before, after).toLowerCase(Locale.ROOT).contains(words);
    }
}
