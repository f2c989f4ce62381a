package slopewright.exchange.map;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.MessageRenderer;
import slopewright.messages.Words;
import slopewright.siting.SitingException;

/** What a map says in one language: the names of its features, and what a reader must know. */
final class MapWords {

    private final MessageRenderer renderer;
    private final List<Message> notes = new ArrayList<>();

    MapWords(MessageRenderer renderer) {
        this.renderer = renderer;
    }

    /** Notes what a reader must know. */
    void note(Message note) {
        notes.add(note);
    }

    /** Notes that something is not shown. */
    void notShown(String id, Argument reason) {
        note(Message.of("map.not-shown", Words.name(id), reason));
    }

    /** Notes that something is not shown because it could not be worked out. */
    void notShown(String id, RuntimeException reason) {
        notShown(id, reason(reason));
    }

    static Argument reason(RuntimeException reason) {
        return reason instanceof SitingException siting ? siting.reason() : Words.name(String.valueOf(reason.getMessage()));
    }

    /** Returns a sentence, word or name. */
    String say(Argument argument) {
        return renderer.write(argument);
    }

    /** Returns several in a row, with semicolons between them. */
    String row(List<Message> messages) {
        return messages.stream().map(this::say).collect(Collectors.joining("; "));
    }

    /** Returns what was noted, each once. */
    List<String> notes() {
        return notes.stream().map(this::say).distinct().toList();
    }
}
