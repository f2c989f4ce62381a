package slopewright.ui.review.internal.handover;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Supplier;

import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
import slopewright.report.PaperSize;
import slopewright.report.ReportOptions;
import slopewright.report.handover.Deliverables;
import slopewright.report.handover.Handover;
import slopewright.report.handover.HandoverFile;
import slopewright.report.handover.HandoverOptions;
import slopewright.ui.MessageTexts;
import slopewright.ui.preferences.Preferences;
import slopewright.ui.review.internal.ComparisonWeights;
import slopewright.ui.review.internal.Messages;

/** What is to be handed over, as the pages of the wizard put it together. Used on the user interface thread. */
public final class HandoverPlan {

    private final Supplier<Project> project;
    private final List<HandoverFile> offered;
    private final Set<String> replaced = new HashSet<>();
    private List<HandoverFile> wanted;
    private String folder;
    private String date = LocalDate.now().toString();
    private PaperSize paper = PaperSize.A4;
    private Locale language = MessageTexts.renderer().language();
    private List<Handover.Entry> entries = List.of();

    /**
     * Begins with what most people want.
     *
     * @param project the project, copied when it is needed
     * @param folder  where the files go at first
     */
    public HandoverPlan(Project project, Path folder) {
        this.project = () -> ProjectFile.copy(project);
        this.offered = Deliverables.of(project);
        this.wanted = offered.stream().filter(HandoverFile::usual).toList();
        this.folder = folder.toString();
    }

    /** Returns a copy of the project as it is now. */
    public Project snapshot() {
        return project.get();
    }

    List<HandoverFile> offered() {
        return offered;
    }

    /** Returns what is to be written. */
    public List<HandoverFile> wanted() {
        return wanted;
    }

    /** Takes what is ticked, in the order of the offer. */
    void want(Set<HandoverFile> ticked) {
        wanted = offered.stream().filter(ticked::contains).toList();
    }

    /** Returns where. */
    public String folder() {
        return folder;
    }

    void folder(String text) {
        folder = text.strip();
    }

    String date() {
        return date;
    }

    void date(String text) {
        date = text.strip();
    }

    PaperSize paper() {
        return paper;
    }

    void paper(PaperSize size) {
        paper = size;
    }

    Locale language() {
        return language;
    }

    void language(Locale wanted) {
        language = wanted;
    }

    /** Returns why nothing can be written yet; empty where it can. */
    String problem() {
        if (wanted.isEmpty()) {
            return Messages.get("handover.nothing");
        }
        String wrong = wrongFolder();
        if (!wrong.isEmpty()) {
            return wrong;
        }
        try {
            LocalDate.parse(date);
            return "";
        } catch (DateTimeParseException e) {
            return Messages.get("handover.noDate", date);
        }
    }

    /** A folder that is not there yet is made, in what is there of its path. */
    private String wrongFolder() {
        Path there;
        try {
            there = Path.of(folder);
        } catch (InvalidPathException e) {
            return Messages.get("handover.noFolder");
        }
        if (!there.isAbsolute()) {
            return Messages.get("handover.noFolder");
        }
        while (!Files.exists(there) && there.getParent() != null) {
            there = there.getParent();
        }
        return !Files.isDirectory(there) ? Messages.get("handover.noDirectory", there)
                : !Files.isWritable(there) ? Messages.get("handover.notWritable", there) : "";
    }

    /** Returns date, paper and language, in the units of the window and by its weights of the comparison; the date must be one. */
    public HandoverOptions options() {
        return new HandoverOptions(LocalDate.parse(date), paper, language, new ReportOptions.Units(Preferences.isFeet(),
                !Preferences.isMinutes()), ComparisonWeights.kept());
    }

    Path file(HandoverFile produced) {
        return Path.of(folder).resolve(produced.fileName());
    }

    boolean isThere(HandoverFile produced) {
        return Files.exists(file(produced));
    }

    boolean isReplaced(HandoverFile produced) {
        return replaced.contains(produced.fileName());
    }

    void replace(HandoverFile produced, boolean may) {
        if (may) {
            replaced.add(produced.fileName());
        } else {
            replaced.remove(produced.fileName());
        }
    }

    /** Returns the names of the files that may be replaced. */
    public Set<String> replaced() {
        return Set.copyOf(replaced);
    }

    /** Says what became of the files. */
    public void wrote(List<Handover.Entry> what) {
        entries = new ArrayList<>(what);
    }

    List<Handover.Entry> entries() {
        return entries;
    }

    /** Returns the name of a file for people. */
    static String label(HandoverFile produced) {
        String key = "handover.kind." + produced.kind();
        return Messages.has(key) ? Messages.get(key) : MessageTexts.renderer().render(produced.label());
    }
}
