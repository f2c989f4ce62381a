package slopewright.report.handover;

import java.util.Objects;
import java.util.Optional;

import slopewright.model.Project;
import slopewright.report.ReportException;

/**
 * One file that can be handed over.
 *
 * @param key      names it among the others: its kind, and the id of the aid where it is about one
 * @param kind     what it is: {@code report}, {@code drawing-plan}, {@code schedule} ...
 * @param label    what it is for people, in English
 * @param subject  the aid for people; empty where it is about the whole project
 * @param fileName its usual name with its extension
 * @param usual    whether most people want it
 * @param writer   makes its bytes
 * @param picture  makes a picture of it, Portable Network Graphics; empty where there is none
 */
public record Deliverable(String key, String kind, String label, String subject, String fileName, boolean usual, Writer writer,
        Optional<Writer> picture) {

    /** Makes the bytes of a file. */
    @FunctionalInterface
    public interface Writer {

        /**
         * Makes the bytes.
         *
         * @param project the project, not changed
         * @param options date and paper
         * @return the file; the same input gives the same bytes
         * @throws ReportException                         where it can not be laid out
         * @throws slopewright.siting.SitingException       where something is missing; the message says what
         * @throws IllegalArgumentException                where a rule set is unknown or there is nothing to show
         */
        byte[] write(Project project, HandoverOptions options) throws ReportException;
    }

    /** Refuses missing parts. */
    public Deliverable {
        Objects.requireNonNull(key);
        Objects.requireNonNull(kind);
        Objects.requireNonNull(writer);
        Objects.requireNonNull(picture);
    }

    /** Returns the extension of its file, without the dot. */
    public String extension() {
        return fileName.substring(fileName.lastIndexOf('.') + 1);
    }
}
