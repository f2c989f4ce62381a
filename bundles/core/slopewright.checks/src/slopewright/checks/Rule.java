package slopewright.checks;

import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Message;
import slopewright.model.Stage;

/**
 * One rule. Implementations are found as services, hold no state, and are named by an id that is never used again for another rule. What
 * it is called and what it compares with what stand in the catalogues of messages under its id.
 */
public interface Rule {

    /** Returns the id: the prefix of its group and a number, such as {@code ROW-03}. */
    String id();

    /** Returns what it is called, a few words. */
    default Message title() {
        return title(id());
    }

    /** Returns what the rule of an id is called. */
    static Message title(String id) {
        return Message.of(id + ".title");
    }

    /** Returns what it compares with what, one sentence for the catalogue. */
    default Message description() {
        return Message.of(id() + ".description");
    }

    /** Returns how grave it is where it is not met. */
    default Severity severity() {
        return Severity.FAIL;
    }

    /**
     * Returns whether it asks for entries and records alone, the groups {@code DATA} and {@code REC}, and not for a property of the design.
     * What is met of it says that the data are sound, and nothing about the indicator.
     */
    default boolean isAboutData() {
        return id().startsWith("DATA-") || id().startsWith("REC-");
    }

    /**
     * Returns the stage from which on the rule asks: a rule of design asks always, one of operation asks only where the indicator is in
     * use. At an earlier stage it says nothing but what is not met by what was entered.
     */
    default Stage stage() {
        return Stage.DESIGN;
    }

    /** Returns what kind of change may cure a finding of it. */
    default Cure cure() {
        return Cure.ENTRY;
    }

    /**
     * Checks a project.
     *
     * @param evaluation the project with what was worked out from it, once for all rules
     * @param outcomes   receives the outcomes; a rule that applies to nothing adds none
     */
    void check(ProjectEvaluation evaluation, OutcomeCollector outcomes);
}
