package slopewright.ui.review;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;

import slopewright.checks.Cure;
import slopewright.checks.Outcome;
import slopewright.checks.Rule;
import slopewright.checks.RuleCatalogue;
import slopewright.checks.Verdict;
import slopewright.edit.Compound;
import slopewright.edit.EditException;
import slopewright.edit.RecordedEdit;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Message;
import slopewright.model.ApproachAid;
import slopewright.model.Project;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.standards.RemedyKind;
import slopewright.ui.MessageTexts;
import slopewright.ui.review.internal.LayoutFixes;
import slopewright.ui.review.internal.Messages;
import slopewright.ui.review.internal.ObstacleFixes;

/**
 * A remedy for a finding that can be worked out. It makes its edit for any copy of the project that was evaluated, under the rule set of
 * the aid, so that it can be tried out first.
 */
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

    private final String label;
    private final Reach reach;
    private final String note;
    private final Function<ProjectEvaluation, RecordedEdit> edit;

    private QuickFix(String key, Reach reach, ApproachAid aid, Function<AidEvaluation, RecordedEdit> edit) {
        this(Messages.get("fix." + key, MessageTexts.label(aid)), reach, reach == Reach.CURE ? "" : Messages.get("fix." + key + ".note"),
                evaluation -> edit.apply(aid(evaluation, aid.getId())));
    }

    private QuickFix(String label, Reach reach, String note, Function<ProjectEvaluation, RecordedEdit> edit) {
        this.label = label;
        this.reach = reach;
        this.note = note;
        this.edit = edit;
    }

    /**
     * Joins remedies that are carried out one after the other as one step.
     *
     * @param fixes    remedies that each cure a finding, in their order
     * @param findings how many findings they cure
     * @param evaluate evaluates a project as it stands between two of them
     */
    public static QuickFix several(List<QuickFix> fixes, int findings, Function<Project, ProjectEvaluation> evaluate) {
        String label = Messages.get("fix.several", findings, String.join(", ", fixes.stream().map(QuickFix::label).distinct().toList()));
        return new QuickFix(label, Reach.CURE, "", evaluation -> Compound.inTurn(Messages.get("edit.several"), fixes.stream()
                .map(fix -> (Supplier<RecordedEdit>) () -> fix.edit(evaluate.apply(evaluation.project()))).toList()));
    }

    /**
     * Returns the remedies that may cure a finding; whether one does is found out by trying it on a copy.
     *
     * @param outcome the finding
     * @param project the project
     * @return remedies, the gentlest first; empty where none can be worked out
     */
    public static List<QuickFix> of(Outcome outcome, Project project) {
        Optional<ApproachAid> aid = Ids.find(project, String.valueOf(outcome.elementId())).flatMap(Projects::aid);
        Cure cure = RuleCatalogue.find(outcome.rule()).map(Rule::cure).orElse(Cure.ENTRY);
        if (outcome.verdict() != Verdict.NOT_MET || aid.isEmpty()) {
            return List.of();
        }
        return switch (cure) {
            case OBSTACLE_SURFACE -> List.of(remedy("turnAxis", Reach.CURE, aid.get(), RemedyKind.TURN_AXIS),
                    remedy("raiseSlope", Reach.CURE, aid.get(), RemedyKind.RAISE_SLOPE),
                    remedy("moveUpwind", Reach.CURE, aid.get(), RemedyKind.MOVE_UPWIND_UNTIL_CLEAR),
                    remedy("narrowBeam", Reach.LESSEN, aid.get(), RemedyKind.NARROW_BEAM),
                    remedy("displaceThreshold", Reach.PROPOSE, aid.get(), RemedyKind.DISPLACE_THRESHOLD));
            case LAYOUT -> Stream.of(LayoutFixes.values()).map(fix -> new QuickFix(fix.key(), Reach.CURE, aid.get(), fix::edit)).toList();
            case ENTRY -> List.of();
        };
    }

    private static QuickFix remedy(String key, Reach reach, ApproachAid aid, RemedyKind kind) {
        return new QuickFix(key, reach, aid, now -> ObstacleFixes.edit(now, kind));
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
     * @param evaluation the project that is edited, evaluated as it stands
     * @throws RuntimeException where it cannot be worked out; the message says why
     */
    public RecordedEdit edit(ProjectEvaluation evaluation) {
        return edit.apply(evaluation);
    }

    private static AidEvaluation aid(ProjectEvaluation evaluation, String id) {
        return evaluation.aid(Ids.find(evaluation.project(), id).filter(ApproachAid.class::isInstance).map(ApproachAid.class::cast)
                .orElseThrow(() -> new EditException(Message.said("plain", Messages.get("fix.gone")))));
    }
}
