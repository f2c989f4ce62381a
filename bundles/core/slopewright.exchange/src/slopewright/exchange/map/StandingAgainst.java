package slopewright.exchange.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.obstacles.ObstacleComparison;
import slopewright.evaluation.obstacles.SurfaceComparison;
import slopewright.evaluation.obstacles.Uncompared;
import slopewright.messages.Message;
import slopewright.model.Identified;
import slopewright.model.util.Projects;

/** How one thing stands against the surfaces of several aids: said of each, and the worst of them. */
final class StandingAgainst {

    private final List<String> words = new ArrayList<>();
    private boolean complete = true;
    private double worstExcessM = Double.NaN;
    private String worstAid;

    /** Adds how an obstacle stands against the surface of an aid, as the aid's evaluation has it. */
    void add(AidEvaluation aid, Identified element) {
        String name = Projects.label(aid.aid()) + ": ";
        Optional<SurfaceComparison> compared = aid.obstacles().value();
        Optional<Message> reason = compared.isEmpty() ? aid.obstacles().reason() : compared.get().uncompared().stream()
                .filter(left -> left.element() == element).map(Uncompared::reason).findFirst();
        if (reason.isPresent()) {
            complete = false;
            words.add(name + "not compared, " + reason.get().english());
            return;
        }
        Optional<ObstacleComparison> found = compared.flatMap(surface -> surface.of(element));
        if (found.isEmpty()) {
            words.add(name + "outside");
        } else {
            add(aid, found.get().worst().excessM(), shielded(found.get()));
        }
    }

    /** Adds what is known to stand under or over the surface of an aid. */
    void add(AidEvaluation aid, double excessM, String remark) {
        words.add(Projects.label(aid.aid()) + ": " + String.format(Locale.ROOT, excessM > 0 ? "%.2f m through the surface"
                : "%.2f m below the surface", Math.abs(excessM)) + remark);
        if (!(excessM <= worstExcessM)) {
            worstExcessM = excessM;
            worstAid = aid.aid().getId();
        }
    }

    private static String shielded(ObstacleComparison found) {
        return switch (found.shielding().kind()) {
            case NONE -> "";
            case CLAIMED -> ", said to be shielded, by nothing that is named";
            case BY_OBJECT, BY_STUDY -> ", shielded: " + found.shielding().by();
        };
    }

    /** An excess above zero is a penetration; below zero it is the room that is left. What was not compared is not called clear. */
    void putInto(Map<String, Object> facts) {
        boolean penetrates = worstExcessM > 0;
        facts.put("penetrates", penetrates || complete && !words.isEmpty() ? penetrates : null);
        facts.put("excessM", Double.isNaN(worstExcessM) ? null : worstExcessM);
        facts.put("surfaceOf", worstAid);
        facts.put("comparison", String.join("; ", words));
    }
}
