package slopewright.evaluation.comparison;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.FamilyEquipment;
import slopewright.messages.Message;
import slopewright.messages.Notation;
import slopewright.messages.Words;
import slopewright.model.Project;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Siting;
import slopewright.siting.range.RangeConditions;
import slopewright.siting.range.RangeEstimate;
import slopewright.standards.CitedValue;
import slopewright.standards.RuleSet;

/**
 * How far a candidate is seen: what the rule set publishes, and an estimate where it says nothing.
 *
 * @param dayM   by day, metres; empty where it is neither published nor can be estimated
 * @param nightM at night, metres; empty likewise
 * @param notes  how they were had, and from how far its units are told apart
 */
public record VisibleRange(OptionalDouble dayM, OptionalDouble nightM, List<Message> notes) {

    /** Copies the list. */
    public VisibleRange {
        Objects.requireNonNull(dayM);
        Objects.requireNonNull(nightM);
        notes = List.copyOf(notes);
    }

    /** Returns what the rule set publishes for a family. */
    static VisibleRange published(IndicatorFamily family, RuleSet rules) {
        OptionalDouble day = value(rules, family.ruleKey() + ".range-day-m");
        OptionalDouble night = value(rules, family.ruleKey() + ".range-night-m");
        return new VisibleRange(day, night, day.isEmpty() && night.isEmpty() ? List.of() : List.of(Message.of("range.published")));
    }

    /** Returns how far an aid is seen as it is laid out. */
    public static VisibleRange of(AidEvaluation evaluation, Siting siting) {
        return evaluation.family().map(family -> of(evaluation.project(), family, siting, evaluation.rules()))
                .orElseGet(() -> new VisibleRange(OptionalDouble.empty(), OptionalDouble.empty(), List.of()));
    }

    private boolean isKnown() {
        return dayM.isPresent() || nightM.isPresent();
    }

    private static OptionalDouble value(RuleSet rules, String key) {
        return rules.find(key).map(CitedValue::value).map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    }

    /** Returns what the rule set publishes, or an estimate with the intensity of the project's equipment where it has some. */
    static VisibleRange of(Project project, IndicatorFamily family, Siting siting, RuleSet rules) {
        VisibleRange published = published(family, rules);
        RangeEstimate estimate = RangeEstimate.of(siting, rules, conditions(project, family));
        List<Message> notes = new ArrayList<>(published.notes());
        if (!published.isKnown() && !estimate.seen().isEmpty()) {
            notes.add(Message.of("range.estimated", Words.quantity(estimate.seen().get(0).intensityCd(), Notation.CANDELA),
                    Words.wholeM(estimate.visibilityM()), Words.term("provenance." + estimate.provenance().key())));
        } else if (!published.isKnown()) {
            notes.addAll(estimate.notes());
        }
        estimate.separation().ifPresent(apart -> notes.add(Message.of("range.apart", Words.wholeM(apart.clearRangeM()))));
        return published.isKnown() ? new VisibleRange(published.dayM(), published.nightM(), notes)
                : new VisibleRange(estimate.byDayM(), estimate.atNightM(), notes);
    }

    private static RangeConditions conditions(Project project, IndicatorFamily family) {
        return FamilyEquipment.in(project, family).filter(type -> type.getIntensityCd() != null && type.getIntensityCd() > 0).findFirst()
                .map(RangeConditions::of).orElseGet(RangeConditions::unknown);
    }
}
