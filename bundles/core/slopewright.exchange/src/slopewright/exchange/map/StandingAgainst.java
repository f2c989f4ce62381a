package slopewright.exchange.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.obstacles.ObstacleComparison;
import slopewright.evaluation.obstacles.SurfaceComparison;
import slopewright.evaluation.obstacles.Uncompared;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Identified;
import slopewright.siting.ElementNames;

/** How one thing stands against the surfaces of several aids: said of each, and the worst of them. */
final class StandingAgainst {

    private final List<Message> said = new ArrayList<>();
    private boolean complete = true;
    private double worstExcessM = Double.NaN;
    private String worstAid;

    /** Adds how an obstacle stands against the surface of an aid, as the aid's evaluation has it. */
    void add(AidEvaluation aid, Identified element) {
        Argument name = ElementNames.of(aid.aid());
        Optional<SurfaceComparison> compared = aid.obstacles().value();
        Optional<Message> reason = compared.isEmpty() ? aid.obstacles().reason() : compared.get().uncompared().stream()
                .filter(left -> left.element() == element).map(Uncompared::reason).findFirst();
        if (reason.isPresent()) {
            complete = false;
            said.add(Message.of("map.against.not-compared", name, reason.get()));
            return;
        }
        Optional<ObstacleComparison> found = compared.flatMap(surface -> surface.of(element));
        if (found.isEmpty()) {
            said.add(Message.of("map.against.outside", name));
        } else {
            add(aid, found.get().worst().excessM(), shielded(found.get()));
        }
    }

    /** Adds what is known to stand under or over the surface of an aid. */
    void add(AidEvaluation aid, double excessM, Optional<Message> remark) {
        Message against = Message.of(excessM > 0 ? "map.against.through" : "map.against.below", ElementNames.of(aid.aid()),
                Words.margin(Math.abs(excessM)));
        said.add(remark.map(more -> Message.of("map.against.remarked", against, more)).orElse(against));
        if (!(excessM <= worstExcessM)) {
            worstExcessM = excessM;
            worstAid = aid.aid().getId();
        }
    }

    private static Optional<Message> shielded(ObstacleComparison found) {
        return switch (found.shielding().kind()) {
            case NONE -> Optional.empty();
            case CLAIMED -> Optional.of(Message.of("map.against.shielding-claimed"));
            case BY_OBJECT, BY_STUDY -> Optional.of(Message.of("map.against.shielded", Words.name(found.shielding().by())));
        };
    }

    /** An excess above zero is a penetration; below zero it is the room that is left. What was not compared is not called clear. */
    void putInto(Map<String, Object> facts, MapWords words) {
        boolean penetrates = worstExcessM > 0;
        facts.put("penetrates", penetrates || complete && !said.isEmpty() ? penetrates : null);
        facts.put("excessM", Double.isNaN(worstExcessM) ? null : worstExcessM);
        facts.put("surfaceOf", worstAid);
        facts.put("comparison", words.row(said));
    }
}
