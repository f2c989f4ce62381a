package slopewright.evaluation.asbuilt;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.Attempt;
import slopewright.evaluation.WheelClearance;
import slopewright.evaluation.obstacles.SurfaceComparison;
import slopewright.evaluation.obstacles.Uncompared;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.AeroplaneGroup;
import slopewright.model.Inspection;
import slopewright.model.RunwayEnd;
import slopewright.siting.ElementNames;
import slopewright.standards.CitedValue;

/** Finds what stands against accepting an indicator as it was built. What nobody knows stands against it too. */
final class AcceptanceFindings {
    private final AidEvaluation measured;
    private final List<Message> found = new ArrayList<>();

    private AcceptanceFindings(AidEvaluation measured) {
        this.measured = measured;
    }

    static List<Message> of(AidEvaluation measured, List<AsBuilt.Unit> units, List<AsBuilt.Flight> flights, SettingTolerance tolerance) {
        AcceptanceFindings findings = new AcceptanceFindings(measured);
        findings.angles(units);
        findings.obstacles();
        findings.wheels();
        if (flights.isEmpty()) {
            findings.say(Message.of("asbuilt.no-flight"));
        }
        flights.forEach(flight -> findings.flight(flight, tolerance));
        return findings.found;
    }

    private void say(Message finding) {
        found.add(finding);
    }

    private void angles(List<AsBuilt.Unit> units) {
        List<String> open = units.stream().filter(unit -> unit.offMin().isEmpty()).map(AsBuilt.Unit::id).toList();
        if (!open.isEmpty()) {
            say(Message.of("asbuilt.not-measured", Words.names(open)));
        }
        units.stream().filter(unit -> unit.offMin().isPresent() && !unit.verdict().isAccepted())
                .forEach(unit -> say(Message.of("asbuilt.unit", Words.name(unit.id()), unit.advice().orElseThrow())));
    }

    private void obstacles() {
        Attempt<SurfaceComparison> obstacles = measured.obstacles();
        if (obstacles.value().isEmpty()) {
            say(Message.of("asbuilt.no-comparison", obstacles.reason().orElseThrow()));
            return;
        }
        SurfaceComparison compared = obstacles.value().get();
        compared.governingUnshielded().filter(worst -> worst.isPenetrating()).ifPresent(worst -> say(Message.of("asbuilt.through",
                Words.name(worst.label()), Words.margin(-worst.marginM()))));
        if (!compared.uncompared().isEmpty()) {
            say(Message.of("asbuilt.uncompared", Words.list(compared.uncompared().stream().map(Uncompared::reason).toList())));
        } else if (compared.isUnsurveyed()) {
            say(Message.of("asbuilt.no-survey"));
        }
    }

    private void wheels() {
        if (measured.rules().wheelClearance().isEmpty() || !(measured.host() instanceof RunwayEnd)) {
            return;
        }
        for (AeroplaneGroup group : measured.host().getRegularGroups()) {
            Optional<WheelClearance> clearance = measured.wheelClearances().stream().filter(each -> each.group() == group).findFirst();
            if (clearance.isEmpty() || clearance.get().band().isEmpty()) {
                say(Message.of("asbuilt.wheels-unknown", ElementNames.of(group)));
            } else if (clearance.get().clearanceM() < clearance.get().band().get().minimumM()) {
                say(Message.of("asbuilt.wheels", ElementNames.of(group), Words.m(clearance.get().clearanceM()),
                        Words.m(clearance.get().band().get().minimumM())));
            }
        }
    }

    private void flight(AsBuilt.Flight flight, SettingTolerance tolerance) {
        Inspection inspection = flight.inspection();
        if (inspection.getObstacleClear() == null || inspection.getOnSlopeAngleDeg() == null) {
            say(Message.of("asbuilt.flight-silent"));
        }
        if (Boolean.FALSE.equals(inspection.getObstacleClear())) {
            say(Message.of("asbuilt.flight-obstacle"));
        }
        Optional<CitedValue> most = tolerance.resetBeyond().or(tolerance::accuracy);
        if (tolerance.verdict(flight.offMin()) == SettingTolerance.Verdict.SET_AGAIN) {
            say(Message.of("asbuilt.flight-off", Words.min(flight.offMin().getAsDouble()), Words.min(most.orElseThrow().value())));
        }
        if (flight.reachesRange().filter(reached -> !reached).isPresent()) {
            say(Message.of("asbuilt.flight-range", Words.wholeM(inspection.getUsableRangeM()),
                    Words.wholeM(flight.publishedRange().orElseThrow().value())));
        }
    }
}
