package slopewright.headless.internal;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slopewright.evaluation.Confirmations;
import slopewright.evaluation.ReadBacks;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.ReadBack;
import slopewright.model.ValueConfirmation;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.standards.SignedNames;

/** Lists the entries of elements to read them aloud, and keeps that a second person read them back. */
@CommandLine.Command(name = "read-back", sortOptions = false, description = {"Print the entries of elements, to hold them against the "
        + "sheets that they come from; with --by, --date and -o keep that a second person did so.",
        "An entry that is changed later is then to clear up until it was read back again."})
final class ReadBackCommand extends Command {
    @Parameters(index = "0", paramLabel = "FILE", description = "project file")
    private Path file;

    @Parameters(index = "1..*", paramLabel = "ID", description = "elements; what is part of one is read back with it. None: every element "
            + "that is not as it was read back")
    private List<String> names = List.of();

    @Option(names = "--by", paramLabel = "NAME", description = "who held the entries against their source, not the author of the project")
    private String person;

    @Option(names = "--date", paramLabel = "DATE", converter = DateWord.class, description = "when, year, month and day")
    private LocalDate date;

    @Mixin
    private OptionalOutput output;

    @Override
    public Integer call() {
        boolean keeps = person != null || date != null || output.file().isPresent();
        if (keeps && (!SignedNames.isName(person) || date == null || output.file().isEmpty())) {
            throw new UsageException("to keep a read-back, name who read it with --by, when with --date, and the file for the changed "
                    + "project with -o");
        }
        Project project = ProjectFiles.load(file);
        List<Identified> elements = elements(project);
        if (!keeps) {
            print(project, elements);
            return ExitCodes.OK;
        }
        if (ReadBacks.isAuthor(project, person)) {
            throw new UsageException(person + " is the author of the project; a second person reads back");
        }
        ReadBacks.tidy(project);
        ReadBacks.keep(project, elements, person.strip(), date.toString());
        List<ValueConfirmation> confirmations = confirmations(project);
        for (ValueConfirmation confirmation : confirmations) {
            try {
                Confirmations.signOff(project, confirmation, person.strip(), date.toString());
            } catch (IllegalArgumentException e) {
                throw new UsageException(e.getMessage());
            }
        }
        Path target = output.file().orElseThrow();
        output.write(target, project);
        streams().sayf("%s: %d elements read back by %s", target, elements.size(), person.strip());
        if (!confirmations.isEmpty()) {
            streams().sayf("%s: %d confirmations signed off by %s", target, confirmations.size(), person.strip());
        }
        return ExitCodes.OK;
    }

    private List<Identified> elements(Project project) {
        if (names.isEmpty()) {
            return ReadBacks.elements(project).stream()
                    .filter(element -> ReadBacks.state(project, element) != ReadBacks.State.SAME).toList();
        }
        List<Identified> found = new ArrayList<>();
        for (String name : names) {
            Optional<Identified> named = Ids.find(project, name);
            if (named.filter(ValueConfirmation.class::isInstance).isPresent()) {
                continue;
            }
            Optional<Identified> element = named.flatMap(ReadBacks::holder);
            found.add(element.orElseThrow(() -> new UsageException("there is no element '" + name + "' that can be read back")));
        }
        return found.stream().distinct().toList();
    }

    /** What is said of values: what was named, or all that is not as it was sealed. */
    private List<ValueConfirmation> confirmations(Project project) {
        return names.isEmpty() ? Confirmations.unsealed(project) : project.getConfirmations().stream()
                .filter(confirmation -> names.contains(confirmation.getId())).toList();
    }

    private void print(Project project, List<Identified> elements) {
        Map<String, ReadBack> known = ReadBacks.byElement(project);
        for (Identified element : elements) {
            ReadBacks.State state = ReadBacks.state(project, element);
            ReadBack readBack = known.get(element.getId());
            streams().say(Projects.path(element) + " [" + element.getId() + "]: " + (state == ReadBacks.State.ABSENT ? "not read back"
                    : (state == ReadBacks.State.SAME ? "as read back" : "changed since it was read back") + " by " + readBack.getPerson()
                    + " on " + readBack.getDate()));
            ReadBacks.entries(element).forEach(line -> streams().say("  " + line));
        }
        for (ValueConfirmation confirmation : confirmations(project)) {
            streams().say(confirmation.getValueKey() + " [" + confirmation.getId() + "]: " + (Confirmations.isSealed(confirmation)
                    ? "as it was confirmed" : "not sealed, or changed since it was"));
            Confirmations.entries(confirmation).forEach(line -> streams().say("  " + line));
        }
        int all = ReadBacks.elements(project).size();
        long open = ReadBacks.elements(project).stream()
                .filter(element -> ReadBacks.state(project, element) != ReadBacks.State.SAME).count();
        streams().say(String.format(Locale.ROOT, "%d of %d elements are not as they were read back", open, all));
    }
}
