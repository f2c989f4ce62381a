package slopewright.report.internal;

import java.util.LinkedHashMap;
import java.util.Map;

import slopewright.model.Aerodrome;
import slopewright.model.Project;

/** What the placeholders for text stand for. */
final class ProjectWords {

    private ProjectWords() {
    }

    /** Returns the texts by name of their placeholder; what is not known is said to be so. */
    static Map<String, String> of(Project project, String title, String ruleSet, String date) {
        Map<String, String> words = new LinkedHashMap<>();
        words.put("project.name", Shell.name(project));
        words.put("project.document-number", known(project.getDocumentNumber(), "no document number"));
        words.put("project.revision", known(project.getRevision(), "-"));
        words.put("project.date", known(project.getDate(), "no date"));
        words.put("project.client", known(project.getClient(), "not stated"));
        words.put("project.organisation", known(project.getOrganisation(), ""));
        words.put("project.prepared-by", known(project.getAuthor(), ""));
        words.put("project.checked-by", known(project.getCheckedBy(), ""));
        words.put("project.approved-by", known(project.getApprovedBy(), ""));
        words.put("project.remarks", known(project.getRemarks(), ""));
        Aerodrome aerodrome = project.getAerodrome();
        words.put("aerodrome.name", known(aerodrome == null ? null : aerodrome.getName(), "not known"));
        words.put("aerodrome.identifier", known(aerodrome == null ? null : aerodrome.getIdentifier(), "no identifier"));
        words.put("report.title", title);
        words.put("report.rule-set", ruleSet);
        words.put("report.date", date);
        return words;
    }

    private static String known(String value, String other) {
        return value == null || value.isBlank() ? other : value;
    }
}
