package slopewright.ui.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import slopewright.checks.Outcome;
import slopewright.checks.ProjectRules;
import slopewright.checks.Verdict;
import slopewright.edit.EditException;
import slopewright.edit.RecordedEdit;
import slopewright.edit.ResolveAid;
import slopewright.edit.SetRuleSettings;
import slopewright.model.ApproachAid;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.siting.Families;
import slopewright.siting.remedy.Remedy;
import slopewright.standards.RuleSet;
import slopewright.ui.review.internal.ObstacleFixes;

/** A remedy for a finding that can be worked out. It makes its edit for any copy of the project, so that it can be tried out first. */
public final class QuickFix {

    private static final String SURFACE_RULE = "OBS-01";

    private final String label;
    private final Function<Project, RecordedEdit> edit;

    private QuickFix(String label, Function<Project, RecordedEdit> edit) {
        this.label = label;
        this.edit = edit;
    }

    /**
     * Returns the remedies that may cure a finding; whether one does is found out by trying it on a copy.
     *
     * @param outcome the finding
     * @param project the project
     * @return remedies, the gentlest first; empty where none can be worked out
     */
    public static List<QuickFix> of(Outcome outcome, Project project) {
        Optional<ApproachAid> found = Ids.find(project, String.valueOf(outcome.elementId())).flatMap(Projects::aid);
        boolean broken = outcome.verdict() == Verdict.FAIL;
        if (!broken || found.isEmpty() || Families.find(String.valueOf(found.get().getFamilyKey())).isEmpty()) {
            return List.of();
        }
        String aid = found.get().getId();
        List<QuickFix> fixes = new ArrayList<>();
        if (outcome.rule().equals(SURFACE_RULE)) {
            fixes.add(remedy("Turn the axis until nothing penetrates", aid, Remedy.Kind.TURN_AXIS));
            fixes.add(remedy("Raise the slope until nothing penetrates", aid, Remedy.Kind.RAISE_SLOPE));
            fixes.add(remedy("Move the aid upwind until nothing penetrates", aid, Remedy.Kind.MOVE_UPWIND_UNTIL_CLEAR));
            return fixes;
        }
        fixes.add(new QuickFix("Set the units to the rule's angles", one -> SetRuleSettings.of(aid(one, aid), rules(one))));
        fixes.add(new QuickFix("Lay " + Projects.label(found.get()) + " out again", one -> ResolveAid.of(aid(one, aid), rules(one))));
        return fixes;
    }

    private static QuickFix remedy(String label, String aid, Remedy.Kind kind) {
        return new QuickFix(label, one -> ObstacleFixes.edit(one, aid(one, aid), kind));
    }

    private static RuleSet rules(Project project) {
        return ProjectRules.of(project, Optional.empty());
    }

    private static ApproachAid aid(Project project, String id) {
        Identified element = Ids.find(project, id).orElseThrow(() -> new EditException("the aid " + id + " is gone"));
        return (ApproachAid) element;
    }

    /** Returns what the remedy does. */
    public String label() {
        return label;
    }

    /**
     * Makes the edit for a project or a copy of it.
     *
     * @throws RuntimeException where it can not be worked out; the message says why
     */
    public RecordedEdit edit(Project project) {
        return edit.apply(project);
    }
}
