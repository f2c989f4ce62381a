package slopewright.checks.internal;

import java.util.ArrayList;
import java.util.List;

import slopewright.checks.OutcomeCollector;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Identified;

/** Collects the names of missing inputs. */
public final class Missing {
    private final List<Message> names = new ArrayList<>();

    /** Notes an input as missing unless it is there: a name of the catalogue. */
    public void unless(boolean there, String key, Argument... arguments) {
        if (!there) {
            names.add(Message.of(key, arguments));
        }
    }

    /** Notes an input as missing. */
    public void add(Message name) {
        names.add(name);
    }

    /** Returns what is missing. */
    public List<Message> names() {
        return List.copyOf(names);
    }

    /** Adds a pass where nothing is missing, else one outcome that names everything that is. */
    public void report(Identified element, OutcomeCollector outcomes, Message complete) {
        if (names.isEmpty()) {
            outcomes.about(element).met(true).saying(complete).add();
        } else {
            outcomes.notEvaluated(element, names, Message.of("outcome.missing-inputs", Words.list(names)));
        }
    }
}
