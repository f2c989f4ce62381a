package slopewright.report.handover;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import slopewright.messages.Message;
import slopewright.model.ApproachAid;
import slopewright.model.Project;

/**
 * A kind of file that can be handed over. Implementations are found as services and hold no state: a further kind is one class, its line
 * among the services, and its name in the catalogues under {@code deliverable.}.
 */
public interface Deliverable {

    /**
     * One file that a kind offers.
     *
     * @param kind      what it is, as programs name it: {@code report}, {@code drawing-plan}
     * @param label     what it is for people
     * @param stem      how its file name ends before the extension, or the whole of it for a file about the whole project
     * @param extension the extension of its file, without the dot
     * @param usual     whether most people want it
     * @param writer    makes its bytes
     * @param picture   makes a picture of it, Portable Network Graphics; empty where there is none
     */
    record Offer(String kind, Message label, String stem, String extension, boolean usual, FileWriter writer,
            Optional<FileWriter> picture) {

        /** Refuses missing parts. */
        public Offer {
            Objects.requireNonNull(kind);
            Objects.requireNonNull(label);
            Objects.requireNonNull(stem);
            Objects.requireNonNull(extension);
            Objects.requireNonNull(writer);
            Objects.requireNonNull(picture);
        }

        /** Makes one without a picture, whose file is called as its kind. */
        public Offer(String kind, String extension, boolean usual, FileWriter writer) {
            this(kind, Message.of("deliverable." + kind), kind, extension, usual, writer, Optional.empty());
        }
    }

    /** Returns its place among the others, the least first. */
    int order();

    /** Returns what it offers about the whole project. */
    default List<Offer> about(Project project) {
        return List.of();
    }

    /** Returns what it offers about one aid. */
    default List<Offer> about(ApproachAid aid) {
        return List.of();
    }
}
