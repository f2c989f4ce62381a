package slopewright.drawing.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import slopewright.model.Aerodrome;
import slopewright.model.Project;

/**
 * What stands at the foot of a drawing that is handed over.
 *
 * @param entries names and contents, in the order of reading
 */
public record TitleBlock(List<Entry> entries) {

    /**
     * One box of the block.
     *
     * @param name    what it holds
     * @param content what it says
     */
    public record Entry(String name, String content) {

        /** Refuses missing parts. */
        public Entry {
            Objects.requireNonNull(name);
            Objects.requireNonNull(content);
        }
    }

    /** Copies the entries. */
    public TitleBlock {
        entries = List.copyOf(entries);
    }

    /** Returns a block without entries, which takes no room. */
    public static TitleBlock none() {
        return new TitleBlock(List.of());
    }

    /**
     * Makes the block of a project's drawing.
     *
     * @param project the project
     * @param title   what the drawing shows
     * @param ruleSet the rule set by its honest name
     * @param date    the date to print
     * @return the block
     */
    public static TitleBlock of(Project project, String title, String ruleSet, String date) {
        Aerodrome aerodrome = project.getAerodrome();
        List<Entry> entries = new ArrayList<>();
        entries.add(new Entry("Drawing", title));
        entries.add(new Entry("Project", text(project.getName())));
        entries.add(new Entry("Aerodrome", aerodrome == null ? "-" : text(aerodrome.getName()) + " " + text(aerodrome.getIdentifier())));
        entries.add(new Entry("Rule set", ruleSet));
        entries.add(new Entry("Drawn by", text(project.getAuthor())));
        entries.add(new Entry("Checked by", text(project.getCheckedBy())));
        entries.add(new Entry("Organisation", text(project.getOrganisation())));
        entries.add(new Entry("Client", text(project.getClient())));
        entries.add(new Entry("Document number", text(project.getDocumentNumber())));
        entries.add(new Entry("Revision", text(project.getRevision())));
        entries.add(new Entry("Approved by", text(project.getApprovedBy())));
        entries.add(new Entry("Date", date));
        return new TitleBlock(entries);
    }

    /**
     * Returns a block with another entry at its end.
     *
     * @param name    what it holds
     * @param content what it says
     * @return the block
     */
    public TitleBlock with(String name, String content) {
        List<Entry> more = new ArrayList<>(entries);
        more.add(new Entry(name, content));
        return new TitleBlock(more);
    }

    /** Returns what the entry of a name says; a dash where there is none. */
    String content(String name) {
        return entries.stream().filter(entry -> entry.name().equals(name)).map(Entry::content).findFirst().orElse("-");
    }

    /**
     * Returns in which coordinates and above which level a project is surveyed.
     *
     * @param project the project
     * @return reference and vertical datum
     */
    public static String datum(Project project) {
        Aerodrome aerodrome = project.getAerodrome();
        if (aerodrome == null) {
            return "-";
        }
        String reference = aerodrome.getCoordinateReference() == null ? "WGS84" : aerodrome.getCoordinateReference();
        return reference + "; heights: " + text(aerodrome.getVerticalDatum());
    }

    private static String text(String given) {
        return given == null || given.isBlank() ? "-" : given;
    }
}
