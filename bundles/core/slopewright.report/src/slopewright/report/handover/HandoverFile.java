package slopewright.report.handover;

import java.util.Objects;
import java.util.Optional;

import slopewright.messages.Argument;
import slopewright.messages.Message;

/**
 * One file that can be handed over.
 *
 * @param key      names it among the others: its kind, and the id of the aid where it is about one
 * @param kind     what it is: {@code report}, {@code drawing-plan}, {@code schedule} ...
 * @param label    what it is for people
 * @param subject  where the aid stands; blank where it is about the whole project
 * @param fileName its usual name with its extension
 * @param usual    whether most people want it
 * @param writer   makes its bytes
 * @param picture  makes a picture of it, Portable Network Graphics; empty where there is none
 */
public record HandoverFile(String key, String kind, Message label, Argument subject, String fileName, boolean usual, FileWriter writer,
        Optional<FileWriter> picture) {

    /** Refuses missing parts. */
    public HandoverFile {
        Objects.requireNonNull(key);
        Objects.requireNonNull(kind);
        Objects.requireNonNull(label);
        Objects.requireNonNull(writer);
        Objects.requireNonNull(picture);
    }

    /** Returns the extension of its file, without the dot. */
    public String extension() {
        return fileName.substring(fileName.lastIndexOf('.') + 1);
    }
}
