package slopewright.checks.internal.row;

import java.util.List;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.Stop;
import slopewright.siting.Siting;
import slopewright.siting.UnitPlan;
import slopewright.standards.Citation;

/**
 * The settings that a rule set gives a row.
 *
 * @param slopeDeg the slope
 * @param settings from the runway outward
 * @param citation the weakest source of the offsets from the slope
 */
record RowSettings(double slopeDeg, List<Double> settings, Citation citation) {

    static RowSettings of(AidFacts facts) {
        Siting wanted = facts.wantedHere();
        List<Double> settings = wanted.units().stream()
                .filter(unit -> unit.place().rightM() < 0 == wanted.units().get(0).place().rightM() < 0)
                .map(UnitPlan::settingDeg).toList();
        List<Citation> sources = wanted.citations().stream()
                .filter(use -> use.name().contains("offset") || use.name().contains("difference") || use.name().contains("helipad"))
                .map(Siting.CitedUse::citation).toList();
        return new RowSettings(wanted.slopeDeg(), settings, OutcomeCollector.weakest(sources));
    }

    /** Returns the setting of a unit, counted from the runway. */
    double deg(int index, int count) {
        if (count != settings.size()) {
            throw Stop.missing("right number of units on each side",
                    "Not evaluated: a side has " + count + " units where " + settings.size() + " are needed.");
        }
        return settings.get(index);
    }
}
