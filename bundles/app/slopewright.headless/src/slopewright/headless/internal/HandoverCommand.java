package slopewright.headless.internal;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slopewright.messages.Message;
import slopewright.model.Project;
import slopewright.report.PaperSize;
import slopewright.report.ReportException;
import slopewright.report.ReportOptions;
import slopewright.report.handover.Deliverables;
import slopewright.report.handover.Handover;
import slopewright.report.handover.HandoverFile;
import slopewright.report.handover.HandoverOptions;

/** Writes everything that a project is handed over as into a folder: the same files as the window's. */
@CommandLine.Command(name = "handover", sortOptions = false,
        description = "Write report, drawings, schedules, maps and cards of a project into a folder. Exits 1 where a file could not be "
                + "made; the others are there.")
final class HandoverCommand extends Command {

    @Parameters(paramLabel = "FILE", description = "project file")
    private Path file;

    @Option(names = {"-o", "--output"}, paramLabel = "FOLDER", description = "the folder to write into; made where it is not there")
    private Path folder;

    @Option(names = "--all", description = "every file that there is, not only what most people want")
    private boolean everything;

    @Option(names = "--only", paramLabel = "KIND", split = ",", description = "only these kinds, parted by commas; see --list")
    private List<String> kinds = List.of();

    @Option(names = "--list", description = "list the files with their kinds and write nothing")
    private boolean list;

    @Option(names = "--force", description = "replace files that are there already")
    private boolean force;

    @Option(names = "--date", paramLabel = "DAY", converter = DateWord.class,
            description = "day to print, of the form 2026-01-31 (default today)")
    private LocalDate date;

    @Option(names = "--paper", defaultValue = "a4", paramLabel = "SIZE", description = "a4 (default) or letter")
    private PaperSize paper;

    @Mixin
    private LanguageOption language;

    @Mixin
    private UnitsOption units;

    @Option(names = "--weights", paramLabel = "WEIGHTS", description = "how much each criterion counts by which families are "
            + "compared, 0 to 5, such as rules=3,load=0; see compare")
    private String weights;

    @Override
    public Integer call() {
        Project project = ProjectFiles.load(file);
        List<HandoverFile> offered = Deliverables.of(project);
        Set<String> known = offered.stream().map(HandoverFile::kind).collect(Collectors.toCollection(TreeSet::new));
        kinds.stream().filter(kind -> !known.contains(kind)).findFirst().ifPresent(kind -> {
            throw new UsageException("--only: there is no kind '" + kind + "' here; known are " + String.join(", ", known));
        });
        List<HandoverFile> wanted = offered.stream()
                .filter(item -> kinds.isEmpty() ? everything || item.usual() : kinds.contains(item.kind())).toList();
        if (list) {
            wanted.forEach(item -> streams().say(String.format(Locale.ROOT, "%-24s %s", item.kind(), item.fileName())));
            return ExitCodes.OK;
        }
        if (folder == null) {
            throw new UsageException("-o FOLDER is needed to write into, or --list");
        }
        return write(project, wanted);
    }

    private int write(Project project, List<HandoverFile> wanted) {
        List<HandoverFile> there = wanted.stream().filter(item -> Files.exists(folder.resolve(item.fileName()))).toList();
        if (!there.isEmpty() && !force) {
            throw new UsageException(folder.resolve(there.get(0).fileName()) + " is there already; nothing was written. Use --force to "
                    + "replace what is there");
        }
        LocalDate day = date == null ? LocalDate.now() : date;
        Set<String> replaced = there.stream().map(HandoverFile::fileName).collect(Collectors.toSet());
        ReportOptions.Units inUnits = units.units();
        List<Handover.Entry> entries;
        try {
            entries = Handover.write(project, wanted, folder, new HandoverOptions(day, paper, language.language(), inUnits,
                    CompareCommand.weights(weights)), replaced,
                    next -> true);
        } catch (ReportException e) {
            throw new UsageException(e.getMessage());
        }
        Map<String, List<String>> missing = new LinkedHashMap<>();
        for (Handover.Entry entry : entries) {
            if (entry.state() == Handover.State.WRITTEN) {
                streams().say(entry.file().toString());
            } else {
                missing.computeIfAbsent(entry.state() == Handover.State.KEPT ? "there already"
                        : entry.reason().map(Message::english).orElse(""),
                        reason -> new ArrayList<>()).add(entry.deliverable().fileName());
            }
        }
        missing.forEach((reason, files) -> streams().warn("slopewright handover: not written: " + String.join(", ", files) + ": "
                + reason));
        return missing.isEmpty() ? ExitCodes.OK : ExitCodes.FINDINGS;
    }
}
