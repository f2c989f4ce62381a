package slopewright.headless.internal;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slopewright.checks.RestingValues;
import slopewright.evaluation.BookUse;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
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

    private static List<RestingValues.Resting> resting(List<Project> loaded) {
        try {
            return RestingValues.of(loaded.stream().map(project -> ProjectEvaluation.of(project, Optional.empty())).toList());
        } catch (IllegalArgumentException e) {
            throw new InputException(e.getMessage());
        }
    }

    private Integer collect() {
        Map<String, ValueBook.Entry> known = new LinkedHashMap<>();
        if (Files.exists(book)) {
            read(book).entries().forEach(entry -> known.put(entry.ruleSet() + " " + entry.key(), entry));
        }
        List<ValueBook.Entry> entries = new ArrayList<>();
        Set<String> listed = new HashSet<>();
        for (RestingValues.Resting value : resting(projects.stream().map(ProjectFiles::load).toList())) {
            String ruleSet = value.rules().key() + ":" + value.rules().edition();
            if (value.citation().provenance().needsConfirmation() || known.containsKey(ruleSet + " " + value.key())) {
                listed.add(ruleSet + " " + value.key());
                entries.add(merged(Optional.ofNullable(known.get(ruleSet + " " + value.key())), ValueBook.Entry.open(ruleSet, value.key(),
                        value.value(), value.unit(), value.citation().provenance().key(), value.restsOnIt())));
            }
        }
        known.forEach((name, entry) -> {
            if (!listed.contains(name)) {
                entries.add(entry);
            }
        });
        Path target = output.file().orElse(book);
        output.write(target, new ValueBook(entries, "").text().getBytes(StandardCharsets.UTF_8), target.equals(book));
        streams().sayf("%s: %d values, %d of them not decided", target, entries.size(),
                entries.stream().filter(entry -> !entry.isSigned()).count());
        return ExitCodes.OK;
    }

    /** What was decided stays as long as the number is the same; the weight is that of now. */
    private static ValueBook.Entry merged(Optional<ValueBook.Entry> old, ValueBook.Entry fresh) {
        return old.filter(entry -> entry.value() == fresh.value() && entry.unit().equals(fresh.unit()))
                .map(entry -> new ValueBook.Entry(fresh.ruleSet(), fresh.key(), fresh.value(), fresh.unit(), fresh.provenance(),
                        fresh.restsOnIt(), entry.decision(), entry.ownValue(), entry.reason(), entry.document(), entry.edition(),
                        entry.clause(), entry.person(), entry.date(), entry.secondPerson(), entry.secondDate()))
                .orElse(fresh);
    }

    private Integer list() {
        for (ValueBook.Entry entry : read(book).entries()) {
            streams().sayf("%-10s %4d  %-10s %-48s %s %s [%s]", entry.isSigned() ? entry.decision().key() : "not signed",
                    entry.restsOnIt(), entry.ruleSet(), entry.key(), Double.toString(entry.value()), entry.unit(), entry.provenance());
        }
        return ExitCodes.OK;
    }

    private Integer take() {
        Path target = output.file().orElseThrow(() -> new UsageException("--into needs -o, the file for the changed project"));
        Project project = ProjectFiles.load(into);
        Set<String> names = resting(List.of(project)).stream().map(value -> value.rules().key() + ":" + value.rules().edition() + " "
                + value.key()).collect(Collectors.toSet());
        Path folder = target.toAbsolutePath().normalize().getParent();
        String path = folder.relativize(book.toAbsolutePath().normalize()).toString().replace('\\', '/');
        int taken = BookUse.take(project, read(book), path, names);
        output.write(target, ProjectFile.bytes(project), false);
        streams().sayf("%s: %d entries taken from %s", target, taken, book);
        return ExitCodes.OK;
    }
}
