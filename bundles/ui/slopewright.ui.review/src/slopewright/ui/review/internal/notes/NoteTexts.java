package slopewright.ui.review.internal.notes;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

import slopewright.checks.Outcome;
import slopewright.evaluation.Reviews;
import slopewright.model.Project;
import slopewright.model.ReviewNote;
import slopewright.model.util.Ids;
import slopewright.ui.MessageTexts;
import slopewright.ui.review.internal.Messages;

/** What is said of a review, in words. */
public final class NoteTexts {

    private NoteTexts() {
    }

    /** Returns what a comment is about: the element and the rule, or the whole project. */
    public static String about(Project project, ReviewNote note) {
        return about(project, Optional.ofNullable(note.getElementId()), Optional.ofNullable(note.getRuleId()));
    }

    /**
     * Returns what is commented.
     *
     * @param project the project
     * @param element id of the element, empty for the whole project
     * @param rule    id of the rule, empty for none
     */
    public static String about(Project project, Optional<String> element, Optional<String> rule) {
        String place = element.filter(id -> !id.equals(project.getId())).map(id -> Ids.find(project, id)
                .map(MessageTexts::path).orElse(id)).orElse(Messages.get("notes.project"));
        return rule.map(id -> place + ", " + id).orElse(place);
    }

    /** Returns how a comment stands, or what a reply is. */
    public static String word(Enum<?> value) {
        return Messages.get("notes.word." + value.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    /** Returns who said something, and when. */
    public static String who(ReviewNote note) {
        return Messages.get("notes.who", String.valueOf(note.getPerson()), String.valueOf(note.getDate()));
    }

    /** Returns how many comments are open, and who signed the project off. */
    public static String state(Project project) {
        List<Reviews.Thread> threads = Reviews.threads(project);
        long open = threads.stream().filter(Reviews.Thread::isOpen).count();
        String signed = Reviews.signedOff(project).map(note -> Messages.get(Reviews.isAsSigned(project, note) ? "notes.signed"
                : "notes.changed-since", who(note))).orElse(Messages.get("notes.unsigned"));
        return Messages.get("notes.state", open, threads.size(), signed);
    }

    /** Returns what was said of a finding, one note a line; empty where nothing was. */
    public static String said(Project project, Outcome outcome) {
        StringBuilder text = new StringBuilder();
        for (Reviews.Thread thread : Reviews.about(project, outcome.elementId(), outcome.rule())) {
            text.append(line(thread.comment(), word(thread.state())));
            thread.replies().forEach(reply -> text.append(line(reply, word(reply.getKind()))));
        }
        return text.toString();
    }

    private static String line(ReviewNote note, String word) {
        return "\n" + Messages.get("notes.line", word, note.getText() == null ? "" : note.getText(), who(note));
    }

    /** Returns what stands behind the name of a rule whose outcome was commented; empty where it was not. */
    public static String mark(Project project, Outcome outcome) {
        List<Reviews.Thread> threads = Reviews.about(project, outcome.elementId(), outcome.rule()).stream()
                .filter(thread -> thread.comment().getRuleId() != null).toList();
        return threads.stream().filter(Reviews.Thread::isOpen).findFirst().or(() -> threads.stream().findFirst())
                .map(thread -> "  " + Messages.get("notes.mark", word(thread.state()))).orElse("");
    }
}
