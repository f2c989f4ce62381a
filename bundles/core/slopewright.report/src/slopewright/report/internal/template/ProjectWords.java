package slopewright.report.internal.template;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

import slopewright.messages.Words;
import slopewright.model.Aerodrome;
import slopewright.model.Project;
import slopewright.model.io.Program;
import slopewright.model.io.ProjectStamp;
import slopewright.report.internal.html.ReportWords;

/** What the placeholders for text stand for. */
public final class ProjectWords {

    private ProjectWords() {
    }

    /** Returns the name of a project for people. */
    public static String name(Project project, ReportWords words) {
        return project.getName() == null ? words.say("unnamed-project") : project.getName();
    }

    /**
     * Returns the texts by name of their placeholder; what is not known is said to be so. Labels come from the catalogue.
     *
     * @param project the project
     * @param words   the words of the document
     * @param title   the title of the document
     * @param ruleSet the rule set by its honest name
     * @param date    the date to print
     * @return the texts
     */
    public static Map<String, String> of(Project project, ReportWords words, String title, String ruleSet, String date) {
        Map<String, String> texts = new LinkedHashMap<>();
        texts.put("project.name", name(project, words));
        texts.put("project.document-number", known(project.getDocumentNumber(), words.say("no-document-number")));
        texts.put("project.revision", known(project.getRevision(), "-"));
        texts.put("project.date", known(project.getDate(), words.say("no-date")));
        texts.put("project.client", known(project.getClient(), words.say("not-stated")));
        texts.put("project.organisation", known(project.getOrganisation(), ""));
        texts.put("project.prepared-by", known(project.getAuthor(), ""));
        texts.put("project.checked-by", known(project.getCheckedBy(), ""));
        texts.put("project.approved-by", known(project.getApprovedBy(), ""));
        texts.put("project.remarks", known(project.getRemarks(), ""));
        Optional<Aerodrome> aerodrome = Optional.ofNullable(project.getAerodrome());
        texts.put("aerodrome.name", known(aerodrome.map(Aerodrome::getName).orElse(null), words.term("not-known")));
        texts.put("aerodrome.identifier", known(aerodrome.map(Aerodrome::getIdentifier).orElse(null), words.say("no-identifier")));
        texts.put("report.title", title);
        texts.put("report.rule-set", ruleSet);
        texts.put("report.date", date);
        texts.put("report.program", Program.text());
        texts.put("report.project-file", ProjectStamp.of(project)
                .map(stamp -> words.say(stamp.isSaved() ? "stamp.saved" : "stamp.not-saved", Words.name(stamp.brief())))
                .orElseGet(() -> words.say("stamp.none")));
        texts.putAll(words.labels());
        return texts;
    }

    private static String known(String value, String otherwise) {
        return value == null || value.isBlank() ? otherwise : value;
    }
}
