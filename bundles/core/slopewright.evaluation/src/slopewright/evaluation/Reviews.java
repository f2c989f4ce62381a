package slopewright.evaluation;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.ReviewKind;
import slopewright.model.ReviewNote;
import slopewright.model.SlopewrightFactory;
import slopewright.model.io.ProjectFile;
import slopewright.model.util.Ids;
import slopewright.siting.SitingException;
import slopewright.siting.site.SurveyPoints;
import slopewright.standards.SignedNames;

/**
 * The review of a project: a checker comments an element or what a rule says of it, the drafter answers, the checker accepts or returns,
 * and signs off at the end. No note changes a verdict. What was signed off holds the hash of the project as it stood, without its notes and
 * with its own rule set, so that a later change shows.
 */
public final class Reviews {

    /** How a comment stands. */
    public enum State {
        /** Nobody answered. */
        OPEN,
        /** It was answered, and nobody accepted that yet. */
        ANSWERED,
        /** What was answered was not accepted. */
        RETURNED,
        /** It is settled. */
        ACCEPTED
    }

    /**
     * A comment with what was said to it.
     *
     * @param comment the comment
     * @param replies answers, acceptances and returns, in the order in which they were written
     * @param state   how it stands by the last of them
     */
    public record Thread(ReviewNote comment, List<ReviewNote> replies, State state) {

        /** Returns whether somebody still has something to do. */
        public boolean isOpen() {
            return state != State.ACCEPTED;
        }
    }

    /**
     * What somebody says.
     *
     * @param text   the words; may be empty where a comment is accepted or the project signed off
     * @param person who
     * @param date   when
     */
    public record Said(String text, String person, LocalDate date) {
    }

    private Reviews() {
    }

    /** Returns the comments of a project in their order, each with what was said to it. */
    public static List<Thread> threads(Project project) {
        List<Thread> threads = new ArrayList<>();
        for (ReviewNote note : project.getReviewNotes()) {
            if (note.getKind() == ReviewKind.COMMENT) {
                List<ReviewNote> replies = project.getReviewNotes().stream().filter(reply -> reply.getKind() != ReviewKind.COMMENT
                        && reply.getKind() != ReviewKind.SIGNED_OFF && note.getId() != null && note.getId().equals(reply.getNoteId()))
                        .toList();
                threads.add(new Thread(note, replies, state(note, replies)));
            }
        }
        return List.copyOf(threads);
    }

    private static State state(ReviewNote comment, List<ReviewNote> replies) {
        if (replies.isEmpty()) {
            return Boolean.TRUE.equals(comment.getResolved()) ? State.ACCEPTED : State.OPEN;
        }
        return switch (replies.get(replies.size() - 1).getKind()) {
            case ACCEPTED -> State.ACCEPTED;
            case RETURNED -> State.RETURNED;
            default -> State.ANSWERED;
        };
    }

    /**
     * Returns the comments on what a rule says of an element, in their order.
     *
     * @param project the project
     * @param element id of the element; what is said of a whole project stands at the project itself
     * @param rule    id of the rule
     * @return the comments that name both, and those on the whole element
     */
    public static List<Thread> about(Project project, String element, String rule) {
        return threads(project).stream().filter(thread -> {
            ReviewNote comment = thread.comment();
            String id = comment.getElementId() == null ? project.getId() : comment.getElementId();
            return Objects.equals(id, element) && (comment.getRuleId() == null ? comment.getElementId() != null
                    : comment.getRuleId().equals(rule));
        }).toList();
    }

    /** Returns the last note that signs the project off, empty where nobody did. */
    public static Optional<ReviewNote> signedOff(Project project) {
        return project.getReviewNotes().stream().filter(note -> note.getKind() == ReviewKind.SIGNED_OFF)
                .reduce((earlier, later) -> Comparator.comparing((ReviewNote note) -> String.valueOf(note.getDate()))
                        .compare(earlier, later) > 0 ? earlier : later);
    }

    /** Returns whether a project is, its notes apart, what a note signed off. */
    public static boolean isAsSigned(Project project, ReviewNote signature) {
        return signature.getSha256() != null && signature.getSha256().equals(seal(project));
    }

    /** Returns the hash of a project without the notes of its review, with what lies in the folder of its own rule set. */
    public static String seal(Project project) {
        Project copy = ProjectFile.copy(project);
        copy.getReviewNotes().clear();
        String seal = SurveyPoints.sha256(ProjectFile.bytes(copy));
        return ProjectRules.ownFolder(project).map(folder -> SurveyPoints.sha256((seal + rules(folder)).getBytes(StandardCharsets.UTF_8)))
                .orElse(seal);
    }

    /** Returns the name and the hash of each file of a folder; what cannot be read is what nobody signed. */
    private static String rules(Path folder) {
        StringBuilder found = new StringBuilder();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
                found.append('\n').append(file.getFileName()).append(' ').append(SurveyPoints.sha256(Files.readAllBytes(file)));
            }
        } catch (IOException e) {
            return "\nnot read";
        }
        return found.toString();
    }

    /**
     * Adds a comment.
     *
     * @param project the project, changed
     * @param element id of the element that it is about, empty for the whole project
     * @param rule    id of the rule whose outcome it is about; empty for none
     * @param said    the words, who and when
     * @return the note
     * @throws SitingException where there is no such element, or words, name or day are missing; the message says which
     */
    public static ReviewNote comment(Project project, Optional<String> element, Optional<String> rule, Said said) {
        element.ifPresent(id -> Ids.find(project, id).orElseThrow(() -> refused("no-element", id)));
        ReviewNote note = note(project, ReviewKind.COMMENT, said, true);
        note.setElementId(element.orElse(null));
        note.setRuleId(rule.orElse(null));
        return keep(project, note);
    }

    /**
     * Replies to a comment.
     *
     * @param project the project, changed
     * @param comment id of the comment
     * @param kind    an answer, an acceptance or a return; the author of the project only answers
     * @param said    the words, needed but for an acceptance, who and when
     * @return the note
     * @throws SitingException where there is no such comment, it has been accepted, or something is missing
     */
    public static ReviewNote reply(Project project, String comment, ReviewKind kind, Said said) {
        Thread thread = threads(project).stream().filter(each -> comment.equals(each.comment().getId())).findFirst()
                .orElseThrow(() -> refused("no-comment", comment));
        if (!thread.isOpen()) {
            throw refused("accepted", comment);
        }
        if (kind != ReviewKind.ANSWER) {
            refuseAuthor(project, said.person());
        }
        ReviewNote note = note(project, kind, said, kind != ReviewKind.ACCEPTED);
        note.setNoteId(comment);
        if (kind == ReviewKind.ACCEPTED) {
            thread.comment().setResolved(true);
        }
        return keep(project, note);
    }

    /**
     * Signs a project off as it stands.
     *
     * @param project the project, changed
     * @param said    what is said with it, may be empty; who, not its author, and when
     * @return the note
     * @throws SitingException where a comment is still open, or the name or day is missing; the message names the comments
     */
    public static ReviewNote signOff(Project project, Said said) {
        List<String> open = threads(project).stream().filter(Thread::isOpen).map(thread -> thread.comment().getId()).toList();
        if (!open.isEmpty()) {
            throw refused("open", String.join(", ", open));
        }
        refuseAuthor(project, said.person());
        ReviewNote note = note(project, ReviewKind.SIGNED_OFF, said, false);
        Ids.assign(project);
        note.setSha256(seal(project));
        return keep(project, note);
    }

    private static void refuseAuthor(Project project, String person) {
        if (ReadBacks.isAuthor(project, person)) {
            throw refused("author", person);
        }
    }

    private static ReviewNote note(Project project, ReviewKind kind, Said said, boolean needsText) {
        if (needsText && said.text().isBlank()) {
            throw refused("no-words");
        }
        if (!SignedNames.isName(said.person())) {
            throw refused("no-name");
        }
        for (ReviewNote earlier : project.getReviewNotes()) {
            if (earlier.getDate() != null && earlier.getDate().compareTo(said.date().toString()) > 0) {
                throw refused("later", earlier.getId(), earlier.getDate(), said.date().toString());
            }
        }
        ReviewNote note = SlopewrightFactory.eINSTANCE.createReviewNote();
        note.setKind(kind);
        note.setText(said.text().isBlank() ? null : said.text().strip());
        note.setPerson(said.person().strip());
        note.setDate(said.date().toString());
        return note;
    }

    private static SitingException refused(String why, String... names) {
        return new SitingException(Message.of("review.refused." + why, Stream.of(names).map(Words::name).toArray(Argument[]::new)));
    }

    private static ReviewNote keep(Project project, ReviewNote note) {
        project.getReviewNotes().add(note);
        Ids.assign(project);
        return note;
    }

    /** Returns the element that a note is about, empty where it is about the whole project or the element is gone. */
    public static Optional<Identified> element(Project project, ReviewNote note) {
        return note.getElementId() == null ? Optional.empty() : Ids.find(project, note.getElementId());
    }
}
