package slopewright.checks.internal.circuit;

import java.util.List;

import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.Stop;
import slopewright.messages.Message;
import slopewright.model.Circuit;
import slopewright.siting.ElementNames;
import slopewright.siting.Trait;

/** What the rules about circuits share. */
final class Circuits {
    private Circuits() {
    }

    /** Returns the circuits that name an aid; ends the rule where it needs none, or none was entered. */
    static List<Circuit> of(AidFacts facts) {
        if (facts.indicator().has(Trait.PANELS)) {
            throw Stop.notApplicable(Message.of("circuit.unlit"));
        }
        List<Circuit> circuits = facts.evaluation().project().getAerodrome().getCircuits().stream()
                .filter(circuit -> circuit.getAids().contains(facts.aid())).toList();
        if (circuits.isEmpty()) {
            throw Stop.missing(Message.of("missing.circuit-of", ElementNames.of(facts.aid())));
        }
        return circuits;
    }
}
