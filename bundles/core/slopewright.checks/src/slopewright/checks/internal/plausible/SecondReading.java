package slopewright.checks.internal.plausible;

import java.util.List;
import java.util.Map;

import slopewright.checks.OutcomeCollector;
import slopewright.evaluation.ReadBacks;
import slopewright.messages.Message;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.ReadBack;
import slopewright.siting.ElementNames;

/**
 * Entries that can be true together and seldom are: nobody knows until a second person has held the element against the sheet that its
 * entries come from. The question is put once and answered once, for a read-back that still holds answers it.
 */
final class SecondReading {
    private final Map<String, ReadBack> known;
    private final OutcomeCollector outcomes;

    SecondReading(Project project, OutcomeCollector outcomes) {
        known = ReadBacks.byElement(project);
        this.outcomes = outcomes;
    }

    /** Returns whether the entries of an element were read back, and hold. */
    boolean isAnswered(Identified element) {
        return ReadBacks.state(known, element) == ReadBacks.State.SAME;
    }

    /** Adds that an element has unlikely entries: met where they were read back, else not evaluated. */
    void ask(Identified element, Message unlikely) {
        if (isAnswered(element)) {
            outcomes.about(element).met(true).saying(Message.of("plausible.read-back", unlikely)).add();
        } else {
            outcomes.notEvaluated(element, List.of(Message.of("missing.read-back-of", ElementNames.of(element))),
                    Message.of("plausible.unlikely", unlikely));
        }
    }
}
