package slopewright.drawing;

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
        entries.add(new Entry("Prepared by", text(project.getAuthor())));
        entries.add(new Entry("Organisation", text(project.getOrganisation())));
        entries.add(new Entry("Revision", text(project.getRevision())));
        entries.add(new Entry("Date", date));
        return new TitleBlock(entries);
    }

    private static String text(String given) {
        return given == null ? "-" : given;
    }
}
