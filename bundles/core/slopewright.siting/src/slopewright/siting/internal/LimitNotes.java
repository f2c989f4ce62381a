package slopewright.siting.internal;

import java.util.List;
import java.util.Optional;

import slopewright.geometry.Lengths;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.Input;
import slopewright.siting.SitingRequest;
import slopewright.siting.UnitPlan;
import slopewright.standards.CrossingHeightTable;
import slopewright.standards.RuleSet;

/**
 * Says where a layout that was solved lies outside what the rule set allows of it, so that nobody takes a figure for a layout that a check
 * would pass. The limits decide nothing in the layout and are no source of it.
 */
final class LimitNotes {
    private static final double STORED_DEG = 1e-6;
    private static final double STORED_M = 0.001;

    private final String familyKey;
    private final SitingRequest request;
    private final RuleReader reader;

    LimitNotes(String familyKey, SitingRequest request, RuleReader reader) {
        this.familyKey = familyKey;
        this.request = request;
        this.reader = reader;
    }

    void of(List<UnitPlan> units, double eyeHeightM) {
        settings(units);
        if (!request.atHelipad()) {
            code();
            group(eyeHeightM);
        }
    }

    private Optional<Double> value(String name) {
        RuleSet rules = reader.rules();
        return rules.find(familyKey + "." + name).map(found -> found.value());
    }

    private void settings(List<UnitPlan> units) {
        Optional<Double> from = value("setting-range-from-deg");
        Optional<Double> to = value("setting-range-to-deg");
        double least = units.stream().mapToDouble(UnitPlan::settingDeg).min().orElseThrow();
        double most = units.stream().mapToDouble(UnitPlan::settingDeg).max().orElseThrow();
        if (from.isPresent() && to.isPresent() && (least < from.get() - STORED_DEG || most > to.get() + STORED_DEG)) {
            reader.note(Message.of("siting.note.setting-range", Words.degrees(least), Words.degrees(most), Words.degrees(from.get()),
                    Words.degrees(to.get())));
        }
    }

    private void code() {
        Optional<Double> from = value("code-from");
        Optional<Double> to = value("code-to");
        request.number(Input.CODE).filter(code -> from.isPresent() && to.isPresent() && (code < from.get() || code > to.get()))
                .ifPresent(code -> reader.note(Message.of("siting.note.code", Words.count(Math.round(code)), Words.number(from.get()),
                        Words.number(to.get()))));
    }

    private void group(double eyeHeightM) {
        Optional<CrossingHeightTable.Group> group = request.number(Input.HEIGHT_GROUP).flatMap(number -> reader.rules().crossingHeight()
                .flatMap(table -> table.group((int) Math.round(number))));
        if (group.isPresent()) {
            double wanted = Lengths.feetToMetres(group.get().crossingHeightFt());
            double least = wanted - Lengths.feetToMetres(group.get().belowFt());
            double most = wanted + Lengths.feetToMetres(group.get().aboveFt());
            if (eyeHeightM < least - STORED_M || eyeHeightM > most + STORED_M) {
                reader.note(Message.of("siting.note.height-group", Words.mFt(eyeHeightM), Words.mFt(least), Words.mFt(most)));
            }
        }
    }
}
