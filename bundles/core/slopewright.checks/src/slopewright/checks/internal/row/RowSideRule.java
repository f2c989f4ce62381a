package slopewright.checks.internal.row;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.messages.Argument;
import slopewright.messages.Words;
import slopewright.model.AidSide;
import slopewright.siting.Trait;
import slopewright.standards.CitedChoice;

/** A row stands on the left unless that is impracticable. A warning: on the right the signal is true; the text wants the reason. */
public final class RowSideRule extends AidRule {

    /** Made by the service loader. */
    public RowSideRule() {
        super("ROW-02", Severity.WARNING, Trait.ROW);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        facts.end();
        CitedChoice leftUnlessImpracticable = facts.choice("side");
        boolean left = facts.units().stream().anyMatch(unit -> unit.rightM() < 0);
        boolean right = facts.units().stream().anyMatch(unit -> unit.rightM() >= 0);
        AidSide stands = left && right ? AidSide.BOTH : left ? AidSide.LEFT : AidSide.RIGHT;
        OutcomeCollector.Entry entry = outcomes.about(facts.aid()).citing(leftUnlessImpracticable.citation());
        if (stands != facts.aid().getSide()) {
            entry.met(false).severity(Severity.FAIL).saying("not-as-named", side(stands), side(facts.aid().getSide()))
                    .advising("correct").add();
            return;
        }
        String reason = facts.aid().getRemarks();
        boolean explained = reason != null && !reason.isBlank();
        entry.met(left).severity(explained ? Severity.NOTE : severity())
                .saying(left ? "as-named" : explained ? "right-explained" : "right", side(stands))
                .advising(explained ? "accept" : "move").add();
    }

    private static Argument side(AidSide side) {
        return Words.term(switch (side) {
            case LEFT -> "side.left";
            case RIGHT -> "side.right";
            case BOTH -> "side.both";
        });
    }
}
