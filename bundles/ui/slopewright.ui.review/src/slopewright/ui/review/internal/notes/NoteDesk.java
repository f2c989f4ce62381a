package slopewright.ui.review.internal.notes;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

import org.eclipse.swt.widgets.Shell;

import slopewright.checks.CheckResult;
import slopewright.edit.EditException;
import slopewright.edit.KeepReviewNote;
import slopewright.evaluation.ReadBacks;
import slopewright.evaluation.Reviews;
import slopewright.model.Project;
import slopewright.model.ReviewKind;
import slopewright.model.ReviewNote;
import slopewright.siting.SitingException;
import slopewright.ui.MessageTexts;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.review.internal.FieldFault;
import slopewright.ui.review.internal.Messages;

/** Asks for notes of the review of a project and keeps each as one step of undo, as the command line keeps them. */
public final class NoteDesk {
    private final ProjectDocument document;

    /** Makes the desk of a document. */
    public NoteDesk(ProjectDocument document) {
        this.document = document;
    }

    private Project project() {
        return document.project();
    }

    /**
     * Keeps a comment.
     *
     * @return why it cannot be kept; empty where it was
     */
    public Optional<String> comment(Optional<String> element, Optional<String> rule, Reviews.Said said) {
        return keep(KeepReviewNote.comment(project(), element.filter(id -> !id.equals(project().getId())), rule, said));
    }

    /**
     * Keeps what is said to a comment.
     *
     * @return why it cannot be kept; empty where it was
     */
    public Optional<String> reply(String comment, ReviewKind kind, Reviews.Said said) {
        return keep(KeepReviewNote.reply(project(), comment, kind, said));
    }

    /**
     * Signs the project off, with what the check of it as it stands said.
     *
     * @return why it cannot be; empty where it was
     */
    public Optional<String> signOff(Reviews.Said said) {
        Optional<CheckResult> result = document.currentResult();
        if (result.isEmpty()) {
            return Optional.of(Messages.get("notes.unchecked"));
        }
        String words = (said.text().strip() + " " + MessageTexts.of(result.get().signedCounts())).strip();
        return keep(KeepReviewNote.signOff(project(), new Reviews.Said(words, said.person(), said.date())));
    }

    private Optional<String> keep(KeepReviewNote edit) {
        try {
            document.history().perform(edit);
            return Optional.empty();
        } catch (SitingException | EditException e) {
            return Optional.of(MessageTexts.reason(e));
        }
    }

    /** Asks for a comment. */
    public void askComment(Shell shell, Optional<String> element, Optional<String> rule) {
        ask(shell, "comment", NoteTexts.about(project(), element, rule), ReviewKind.COMMENT, said -> comment(element, rule, said));
    }

    /** Asks what is said to a comment. */
    public void askReply(Shell shell, Reviews.Thread thread, ReviewKind kind) {
        ReviewNote note = thread.comment();
        ask(shell, kind.name().toLowerCase(Locale.ROOT), NoteTexts.about(project(), note) + ": " + FieldFault.quoted(note.getText()), kind,
                said -> reply(note.getId(), kind, said));
    }

    /** Asks who signs off. */
    public void askSignature(Shell shell) {
        ask(shell, "sign", Messages.get("notes.sign.hint"), ReviewKind.SIGNED_OFF, this::signOff);
    }

    private void ask(Shell shell, String key, String about, ReviewKind kind, Function<Reviews.Said, Optional<String>> keep) {
        String last = project().getReviewNotes().isEmpty() ? "" : String.valueOf(project().getReviewNotes()
                .get(project().getReviewNotes().size() - 1).getPerson());
        new NoteDialog(shell, key, about, last, new NoteDialog.Keeping() {
            @Override
            public boolean needsWords() {
                return kind != ReviewKind.ACCEPTED && kind != ReviewKind.SIGNED_OFF;
            }

            @Override
            public Optional<NoteDialog.Refused> keep(Reviews.Said said) {
                return keep.apply(said).map(why -> new NoteDialog.Refused(why, part(kind, said)));
            }
        }).open();
    }

    /** What a refused note was refused for: its author, its day, or how the review stands. */
    private NoteDialog.Part part(ReviewKind kind, Reviews.Said said) {
        boolean needsOther = kind != ReviewKind.COMMENT && kind != ReviewKind.ANSWER;
        if (needsOther && ReadBacks.isAuthor(project(), said.person())) {
            return NoteDialog.Part.PERSON;
        }
        boolean isLate = project().getReviewNotes().stream().map(ReviewNote::getDate).filter(Objects::nonNull)
                .anyMatch(day -> day.compareTo(said.date().toString()) > 0);
        return isLate ? NoteDialog.Part.DATE : NoteDialog.Part.NONE;
    }
}
