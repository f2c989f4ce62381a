package slopewright.ui.review.internal.book;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import slopewright.checks.BookKeeping;
import slopewright.checks.Outcome;
import slopewright.checks.RestingValues;
import slopewright.evaluation.BookUse;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.model.Project;
import slopewright.model.io.AtomicFile;
import slopewright.standards.StandardsException;
import slopewright.standards.ValueBook;
import slopewright.ui.MessageTexts;
import slopewright.ui.review.internal.Messages;

/** The book that lies beside a project: what its file says, with the values that the project rests on, and what is written into it. */
public final class BookDesk {
    private final Project project;
    private final List<BookKeeping.Row> rows;
    private final Optional<Path> file;
    private final Optional<ValueBook> book;
    private final Optional<String> problem;

    private BookDesk(Project project, List<RestingValues.Resting> values, Optional<Path> file) {
        this.project = project;
        this.file = file;
        Optional<ValueBook> read = Optional.empty();
        Optional<String> fault = Optional.empty();
        if (file.filter(Files::exists).isPresent()) {
            try {
                read = Optional.of(ValueBook.read(file.get()));
            } catch (StandardsException e) {
                fault = Optional.of(MessageTexts.reason(e));
            }
        }
        book = read;
        problem = fault;
        rows = BookKeeping.rows(values, book);
    }

    /**
     * Lays a book beside a project.
     *
     * @param evaluation the project
     * @param outcomes   its outcomes
     * @param chosen     the file of the book; empty for the one that the project names
     */
    public static BookDesk of(ProjectEvaluation evaluation, List<Outcome> outcomes, Optional<Path> chosen) {
        Project project = evaluation.project();
        return new BookDesk(project, RestingValues.of(evaluation, outcomes), chosen.or(() -> BookUse.file(project)));
    }

    /** Returns the values with what the book says of each. */
    public List<BookKeeping.Row> rows() {
        return rows;
    }

    /** Returns the file of the book, empty where there is none yet. */
    public Optional<Path> file() {
        return file;
    }

    /** Returns the book as it stands in its file, empty where there is none that can be read. */
    public Optional<ValueBook> book() {
        return book;
    }

    /** Returns the values on which results rest, as {@link BookUse#take} wants them. */
    public Set<String> resting() {
        return BookKeeping.resting(rows);
    }

    /** Returns which book lies here, how much of it is open, and how it stands to what the project keeps of it. */
    public String state() {
        if (file.isEmpty()) {
            return Messages.get("book.none");
        }
        if (problem.isPresent()) {
            return problem.get();
        }
        long open = rows.stream().map(BookKeeping.Row::entry).filter(entry -> BookKeeping.isToConfirm(entry) && !entry.isSigned()).count();
        boolean named = BookUse.file(project).filter(own -> own.toAbsolutePath().equals(file.get().toAbsolutePath().normalize()))
                .isPresent();
        String use = named ? BookUse.state(project).name() : "NONE";
        return Messages.get("book.state", file.get().getFileName(), rows.size(), open, Messages.get("book.use." + use));
    }

    /**
     * Begins a book.
     *
     * @param fresh a file that is not there yet
     * @return what went wrong, empty where nothing did
     */
    public Optional<String> begin(Path fresh) {
        try {
            AtomicFile.create(fresh, bytes(BookKeeping.book(rows)));
            return Optional.empty();
        } catch (IOException e) {
            return Optional.of(Messages.get("book.unwritten", fresh, MessageTexts.reason(e)));
        }
    }

    /**
     * Writes entries into the book, with those of the project that it has not yet.
     *
     * @param changed entries as somebody decided or signed them
     * @return what went wrong, empty where nothing did
     */
    public Optional<String> write(List<ValueBook.Entry> changed) {
        if (file.isEmpty() || book.isEmpty()) {
            return Optional.of(state());
        }
        try {
            if (!ValueBook.read(file.get()).sha256().equals(book.get().sha256())) {
                return Optional.of(Messages.get("book.meanwhile", file.get().getFileName()));
            }
            Map<String, ValueBook.Entry> entries = new LinkedHashMap<>();
            book.get().entries().forEach(entry -> entries.put(entry.name(), entry));
            rows.stream().filter(row -> !row.isInBook()).forEach(row -> entries.put(row.entry().name(), row.entry()));
            changed.forEach(entry -> entries.put(entry.name(), entry));
            AtomicFile.replace(file.get(), bytes(ValueBook.of(List.copyOf(entries.values()))));
            return Optional.empty();
        } catch (IOException e) {
            return Optional.of(Messages.get("book.unwritten", file.get(), MessageTexts.reason(e)));
        } catch (StandardsException e) {
            return Optional.of(MessageTexts.reason(e));
        }
    }

    private static byte[] bytes(ValueBook book) {
        return book.text().getBytes(StandardCharsets.UTF_8);
    }
}
