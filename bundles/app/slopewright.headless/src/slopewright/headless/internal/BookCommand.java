package slopewright.headless.internal;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slopewright.checks.BookKeeping;
import slopewright.checks.RestingValues;
import slopewright.evaluation.BookUse;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.model.Project;
import slopewright.standards.StandardsException;
import slopewright.standards.ValueBook;

/** Keeps an organisation's book of values: collects what verdicts rest on, lists what is open, takes signed entries into a project. */
@CommandLine.Command(name = "book", sortOptions = false, description = "Keep an organisation's book of values: --collect the values that"
        + " verdicts of projects rest on into it, list what is open, or take its signed entries --into a project.")
final class BookCommand extends Command {
    @Parameters(paramLabel = "BOOK", description = "the book, a CSV file")
    private Path book;

    @Option(names = "--collect", arity = "1..*", paramLabel = "FILE", description = "project files whose verdicts rest on values; what the"
            + " book has decided is kept")
    private List<Path> projects = List.of();

    @Option(names = "--into", paramLabel = "FILE", description = "project file that takes the signed entries; the changed one goes to -o")
    private Path into;

    @Mixin
    private OptionalOutput output;

    @Override
    public Integer call() {
        if (!projects.isEmpty() && into != null) {
            throw new UsageException("--collect and --into exclude each other");
        }
        if (!projects.isEmpty()) {
            return collect();
        }
        return into == null ? list() : take();
    }

    private static ValueBook read(Path file) {
        try {
            return ValueBook.read(file);
        } catch (StandardsException e) {
            throw new InputException(e.getMessage());
        }
    }

    private static List<BookKeeping.Row> rows(List<Project> loaded, Optional<ValueBook> known) {
        try {
            return BookKeeping.rows(RestingValues.of(loaded.stream().map(project -> ProjectEvaluation.of(project, Optional.empty()))
                    .toList()), known);
        } catch (IllegalArgumentException e) {
            throw new InputException(e.getMessage());
        }
    }

    private Integer collect() {
        Optional<ValueBook> known = Files.exists(book) ? Optional.of(read(book)) : Optional.empty();
        ValueBook collected = BookKeeping.book(rows(projects.stream().map(ProjectFiles::load).toList(), known));
        Path target = output.file().orElse(book);
        byte[] bytes = collected.text().getBytes(StandardCharsets.UTF_8);
        if (known.isPresent() && target.equals(book)) {
            FileOutput.renew(book, bytes, known.get().sha256());
        } else {
            output.write(target, bytes);
        }
        streams().sayf("%s: %d values, %d of them to confirm and not signed", target, collected.entries().size(),
                collected.entries().stream().filter(entry -> !entry.isSigned() && BookKeeping.isToConfirm(entry)).count());
        return ExitCodes.OK;
    }

    private Integer list() {
        for (ValueBook.Entry entry : read(book).entries()) {
            String state = entry.decision() == ValueBook.Decision.OPEN ? "open" : lacks(entry).orElse(entry.decision().key());
            streams().sayf("%-10s %4d  %-10s %-48s %s %s [%s] %s", state, entry.restsOnIt(), entry.ruleSet(), entry.key(),
                    Double.toString(entry.value()), entry.unit(), entry.provenance(), entry.source());
        }
        return ExitCodes.OK;
    }

    private Integer take() {
        Path target = output.file().orElseThrow(() -> new UsageException("--into needs -o, the file for the changed project"));
        Project project = ProjectFiles.load(into);
        Set<String> names = BookKeeping.resting(rows(List.of(project), Optional.empty()));
        ValueBook values = read(book);
        int taken = BookUse.take(project, values, BookUse.path(book, target.toAbsolutePath().normalize().getParent()), names);
        output.write(target, project);
        streams().sayf("%s: %d entries taken from %s", target, taken, book);
        values.entries().stream().filter(entry -> names.contains(entry.name()) && entry.decision() != ValueBook.Decision.OPEN)
                .forEach(entry -> lacks(entry).ifPresent(lacks -> streams().warn("not taken: " + entry.name() + " " + lacks)));
        return ExitCodes.OK;
    }

    /** Says what a decided entry lacks before it counts. */
    private static Optional<String> lacks(ValueBook.Entry entry) {
        return entry.lacks().stream().map(ValueBook.Lack::key).reduce((all, lack) -> all + ", " + lack).map(all -> "lacks " + all);
    }
}
