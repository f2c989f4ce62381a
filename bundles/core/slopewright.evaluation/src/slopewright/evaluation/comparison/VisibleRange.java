package slopewright.evaluation.comparison;

import java.util.Locale;
import java.util.OptionalDouble;

import slopewright.model.Project;
import slopewright.siting.Siting;
import slopewright.siting.range.RangeConditions;
import slopewright.siting.range.RangeEstimate;
import slopewright.siting.range.Separation;
import slopewright.standards.CitedValue;
import slopewright.standards.RuleSet;

/**
 * How far a candidate is seen: what the rule set publishes, and an estimate where it says nothing.
 *
 * @param dayM   by day, metres
 * @param nightM at night, metres
 * @param note   how they were had
 */
record VisibleRange(OptionalDouble dayM, OptionalDouble nightM, String note) {

    static VisibleRange none() {
        return new VisibleRange(OptionalDouble.empty(), OptionalDouble.empty(), "");
    }

    /** Returns what the rule set publishes for a family. */
    static VisibleRange published(String family, RuleSet rules) {
        OptionalDouble day = value(rules, family + ".range-day-m");
        OptionalDouble night = value(rules, family + ".range-night-m");
        return day.isEmpty() && night.isEmpty() ? none() : new VisibleRange(day, night, "ranges as published");
    }

    private static OptionalDouble value(RuleSet rules, String key) {
        return rules.find(key).map(CitedValue::value).map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    }

    /** Returns what the rule set publishes, or an estimate with the intensity of the project's equipment where it has some. */
    static VisibleRange of(Project project, Siting siting, RuleSet rules) {
        VisibleRange published = published(siting.family(), rules);
        RangeEstimate estimate = RangeEstimate.of(siting, rules, conditions(project, siting.family()));
        String apart = estimate.separation().map(VisibleRange::apart).orElse("");
        if (published.dayM().isPresent() || published.nightM().isPresent()) {
            return new VisibleRange(published.dayM(), published.nightM(), published.note() + apart);
        }
        if (estimate.intensityCd().isEmpty()) {
            return new VisibleRange(OptionalDouble.empty(), OptionalDouble.empty(), String.join(" ", estimate.notes()) + apart);
        }
        String how = String.format(Locale.ROOT, "ranges estimated with %.0f cd and a visibility of %.0f m (%s)",
                estimate.intensityCd().getAsDouble(), estimate.visibilityM(), estimate.provenance().key());
        return new VisibleRange(estimate.byDayM(), estimate.atNightM(), how + apart);
    }

    private static String apart(Separation separation) {
        return String.format(Locale.ROOT, "; units clearly apart to %.0f m", separation.clearRangeM());
    }

    private static RangeConditions conditions(Project project, String family) {
        if (project.getAerodrome() == null) {
            return RangeConditions.unknown();
        }
        return project.getAerodrome().getEquipmentTypes().stream()
                .filter(type -> family.equals(type.getFamilyKey()) && type.getIntensityCd() != null
                        && type.getIntensityCd() > 0).findFirst()
                .map(RangeConditions::of).orElseGet(RangeConditions::unknown);
    }
}
