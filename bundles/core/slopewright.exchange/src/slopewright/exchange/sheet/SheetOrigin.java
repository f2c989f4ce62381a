package slopewright.exchange.sheet;

import java.util.ArrayList;
import java.util.List;

import slopewright.evaluation.ProjectEvaluation;
import slopewright.model.Project;
import slopewright.model.io.Program;
import slopewright.model.io.ProjectStamp;

/** Says in a table what it was made from: project and revision, project file, program, rule set with its edition. */
public final class SheetOrigin {

    private SheetOrigin() {
    }

    /**
     * Adds the origin to a table: in short for the head of its printed pages, at length among its notes.
     *
     * @param sheet      the table
     * @param evaluation what it was made from
     * @return the table with its origin
     */
    public static Sheet on(Sheet sheet, ProjectEvaluation evaluation) {
        Project project = evaluation.project();
        String name = said(project.getName(), "unnamed project");
        String revision = "revision " + said(project.getRevision(), "-") + ", " + said(project.getDate(), "no date");
        List<String> notes = new ArrayList<>(sheet.notes());
        notes.add("Project: " + name + ", " + revision + ".");
        notes.add("Project file, SHA-256: " + ProjectStamp.of(project).map(stamp -> stamp.sha256() + (stamp.isSaved() ? ""
                : ", not saved as it stands")).orElse("cannot be saved as it stands") + ".");
        notes.add("Program: " + Program.text() + ".");
        notes.add("Rule set: " + evaluation.rules().descriptor().title() + " (" + evaluation.rules().key() + ":"
                + evaluation.rules().edition() + ").");
        return new Sheet(sheet.title(), sheet.columns(), sheet.rows(), notes, name + ", " + revision);
    }

    private static String said(String text, String otherwise) {
        return text == null || text.isBlank() ? otherwise : text;
    }
}
