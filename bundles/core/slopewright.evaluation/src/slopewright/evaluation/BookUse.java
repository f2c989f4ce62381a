package slopewright.evaluation;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.model.ValueConfirmation;
import slopewright.model.ValueOverride;
import slopewright.model.io.ProjectFile;
import slopewright.model.util.Ids;
import slopewright.standards.StandardsException;
import slopewright.standards.ValueBook;

/**
 * The book of values that a project names. The project keeps the entries that it rests on and the hash of the book, so that a project
 * that was handed over says the same without the book, and a book that was changed since is noticed.
 */
public final class BookUse {
    /** How the book stands to what the project keeps of it. */
    public enum State {
        /** The project names no book. */
        NONE,
        /** The book is the one from which the entries were taken. */
        SAME,
        /** The book has changed since. */
        CHANGED,
        /** The book is not there; the entries that the project keeps count. */
        ABSENT
    }

    private BookUse() {
    }

    /** Returns how the book of a project stands to what the project keeps of it. */
    public static State state(Project project) {
        if (project.getBookPath() == null || project.getBookPath().isBlank()) {
            return State.NONE;
        }
        Optional<Path> file = file(project);
        if (file.filter(Files::exists).isEmpty()) {
            return State.ABSENT;
        }
        try {
            return ValueBook.read(file.get()).sha256().equals(project.getBookSha256()) ? State.SAME : State.CHANGED;
        } catch (StandardsException e) {
            return State.CHANGED;
        }
    }

    /** Returns the file of the book that a project names, empty where it names none that could be one. */
    public static Optional<Path> file(Project project) {
        if (project.getBookPath() == null || project.getBookPath().isBlank()) {
            return Optional.empty();
        }
        try {
            return Optional.of(ProjectFile.folder(project).orElse(Path.of("")).resolve(project.getBookPath()).normalize());
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    /**
     * Returns how a project in a folder names a book: by the way from the folder, with slashes; by the whole path where there is none.
     *
     * @param book   the file of the book
     * @param folder the folder of the project file
     */
    public static String path(Path book, Path folder) {
        Path whole = book.toAbsolutePath().normalize();
        try {
            return folder.toAbsolutePath().normalize().relativize(whole).toString().replace('\\', '/');
        } catch (IllegalArgumentException e) {
            return whole.toString();
        }
    }

    /**
     * Takes the signed entries of a book into a project, instead of those that it took before.
     *
     * @param project the project, changed
     * @param book    the book
     * @param path    path of the book, from the folder of the project
     * @param resting the values that results of the project rest on, each as rule set and key joined by a blank
     * @return how many entries were taken
     */
    public static int take(Project project, ValueBook book, String path, Set<String> resting) {
        project.getConfirmations().removeIf(confirmation -> Boolean.TRUE.equals(confirmation.getFromBook()));
        project.getOverrides().removeIf(override -> override.getReason() != null && override.getReason().startsWith(MARK));
        List<ValueBook.Entry> entries = book.entries().stream().filter(ValueBook.Entry::isSigned)
                .filter(entry -> resting.contains(entry.name())).toList();
        for (ValueBook.Entry entry : entries) {
            if (entry.decision() == ValueBook.Decision.CORRECTED) {
                project.getOverrides().add(override(entry));
            } else {
                ValueConfirmation taken = confirmation(entry);
                taken.setFromBook(true);
                Confirmations.keep(project, taken);
            }
        }
        project.setBookPath(path);
        project.setBookSha256(book.sha256());
        Ids.assign(project);
        return entries.size();
    }

    private static final String MARK = "book of values: ";

    /** Returns what an entry of a book says of a value, as a project keeps it: unsealed and part of nothing yet. */
    public static ValueConfirmation confirmation(ValueBook.Entry entry) {
        ValueConfirmation made = SlopewrightFactory.eINSTANCE.createValueConfirmation();
        made.setRuleSetKey(entry.ruleSet());
        made.setValueKey(entry.key());
        made.setValue(entry.value());
        made.setUnit(entry.unit().isEmpty() ? null : entry.unit());
        made.setSource(entry.document());
        made.setEdition(entry.edition());
        made.setClause(entry.clause());
        made.setPerson(entry.person());
        made.setDate(entry.date());
        if (!entry.secondPerson().isBlank()) {
            made.setSecondPerson(entry.secondPerson());
            made.setSecondDate(entry.secondDate());
        }
        if (entry.decision() == ValueBook.Decision.REJECTED) {
            made.setRejected(true);
            made.setReason(entry.reason());
        }
        return made;
    }

    private static ValueOverride override(ValueBook.Entry entry) {
        ValueOverride made = SlopewrightFactory.eINSTANCE.createValueOverride();
        made.setRuleSetKey(entry.ruleSet());
        made.setValueKey(entry.key());
        made.setValue(Optional.of(entry).flatMap(ValueBook.Entry::ownValue).orElseThrow());
        made.setUnit(entry.unit());
        made.setReason(MARK + entry.reason() + " (" + entry.document() + ", " + entry.edition() + ", " + entry.clause() + ")");
        made.setPerson(entry.person());
        made.setDate(entry.date());
        return made;
    }
}
