package slopewright.report;

import java.util.List;
import java.util.Objects;

import slopewright.messages.Message;

/**
 * A set-up card as it was written.
 *
 * @param bytes   the document; the same input gives the same bytes
 * @param reasons what stands against its use, as the card says first; empty where it may be used
 */
public record SetUpCard(byte[] bytes, List<Message> reasons) {

    /** Copies the list. */
    public SetUpCard {
        Objects.requireNonNull(bytes);
        reasons = List.copyOf(reasons);
    }

    /** Returns whether nothing stands against its use. */
    public boolean isReady() {
        return reasons.isEmpty();
    }
}
