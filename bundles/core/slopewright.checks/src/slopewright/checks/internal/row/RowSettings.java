package slopewright.checks.internal.row;

import java.util.List;

import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.Stop;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.Siting;
import slopewright.siting.UnitPlan;
import slopewright.standards.Citation;

/**
 * The settings that a rule set gives a row.
 *
 * @param slopeDeg  the slope
 * @param settings  from the runway outward
 * @param citations where the offsets from the slope come from
 */
record RowSettings(double slopeDeg, List<Double> settings, List<Citation> citations) {
    private static final String SECTOR_AT_HELIPADS = "helipad.on-slope-sector-min";
    private static final List<String> OFFSETS = List.of("outer-offset-min", "inner-offset-min", "glide-path-outer-offset-min",
            "glide-path-inner-offset-min", "steep-difference-min", "very-steep-difference-min", "helipad-outer-step-min");

    /** Returns the settings for the slope of the aid. */
    static RowSettings of(AidFacts facts) {
        Siting wanted = facts.wantedAtUnits();
        boolean left = wanted.units().get(0).place().rightM() < 0;
        List<Double> settings = wanted.units().stream().filter(unit -> unit.place().rightM() < 0 == left).map(UnitPlan::settingDeg)
                .toList();
        String family = facts.indicator().ruleKey() + ".";
        List<Citation> offsets = wanted.citations().stream()
                .filter(use -> use.name().equals(SECTOR_AT_HELIPADS) || OFFSETS.stream().map(family::concat).anyMatch(use.name()::equals))
                .map(Siting.CitedUse::citation).toList();
        return new RowSettings(wanted.slopeDeg(), settings,
                offsets.isEmpty() ? wanted.citations().stream().map(Siting.CitedUse::citation).toList() : offsets);
    }

    /** Returns the setting of a unit of a side, counted from the runway; ends the rule where the side has another number of units. */
    double deg(int index, int count) {
        if (count != settings.size()) {
            throw Stop.missing(Message.of("missing.units-each-side", Words.count(settings.size())),
                    Message.of("outcome.units-each-side", Words.count(count), Words.count(settings.size())));
        }
        return settings.get(index);
    }
}
