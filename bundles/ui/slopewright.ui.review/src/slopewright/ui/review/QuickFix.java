package slopewright.ui.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import slopewright.checks.Outcome;
import slopewright.checks.Verdict;
import slopewright.edit.EditException;
import slopewright.edit.RecordedEdit;
import slopewright.edit.ResolveAid;
import slopewright.edit.SetRuleSettings;
import slopewright.evaluation.ProjectRules;
import slopewright.evaluation.remedy.Remedy;
import slopewright.model.ApproachAid;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.siting.Families;
import slopewright.standards.RuleSet;
import slopewright.ui.review.internal.Messages;
import slopewright.ui.review.internal.ObstacleFixes;

/** A remedy for a finding that can be worked out. It makes its edit for any copy of the project, so that it can be tried out first. */
public final class QuickFix {

    /** How far a remedy goes. */
    public enum Reach {
        /** The finding is gone afterwards; offered only where that is so. */
        CURE,
        /** Lessens what the finding is about; the finding stays until a study accepts it. */
        LESSEN,
        /** Shows what would follow; others decide it, so it is not carried out from here. */
        PROPOSE
    }

    private static final String SURFACE_RULE = "OBS-01";

    private final String label;
    private final Reach reach;
    private final String note;
    private final Function<Project, RecordedEdit> edit;

    private QuickFix(String key, Reach reach, Function<Project, RecordedEdit> edit, Object... values) {
        this.label = Messages.get("fix." + key, values);
        this.note = reach == Reach.CURE ? "" : Messages.get("fix." + key + ".note");
        this.reach = reach;
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
        boolean broken = outcome.verdict() == Verdict.NOT_MET;
        if (!broken || found.isEmpty() || Families.find(String.valueOf(found.get().getFamilyKey())).isEmpty()) {
            return List.of();
        }
        String aid = found.get().getId();
        if (outcome.rule().equals(SURFACE_RULE)) {
            return List.of(remedy("turnAxis", Reach.CURE, aid, Remedy.Kind.TURN_AXIS),
                    remedy("raiseSlope", Reach.CURE, aid, Remedy.Kind.RAISE_SLOPE),
                    remedy("moveUpwind", Reach.CURE, aid, Remedy.Kind.MOVE_UPWIND_UNTIL_CLEAR),
                    remedy("narrowBeam", Reach.LESSEN, aid, Remedy.Kind.NARROW_BEAM),
                    remedy("displaceThreshold", Reach.PROPOSE, aid, Remedy.Kind.DISPLACE_THRESHOLD));
        }
        List<QuickFix> fixes = new ArrayList<>();
        fixes.add(new QuickFix("settings", Reach.CURE, one -> SetRuleSettings.of(aid(one, aid), rules(one))));
        fixes.add(new QuickFix("layOut", Reach.CURE, one -> ResolveAid.of(aid(one, aid), rules(one)), Projects.label(found.get())));
        return fixes;
    }

    private static QuickFix remedy(String key, Reach reach, String aid, Remedy.Kind kind) {
        return new QuickFix(key, reach, one -> ObstacleFixes.edit(one, aid(one, aid), kind));
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

    /** Returns how far it goes. */
    public Reach reach() {
        return reach;
    }

    /** Returns what a reader must know beside the numbers; empty where nothing. */
    public String note() {
        return note;
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
