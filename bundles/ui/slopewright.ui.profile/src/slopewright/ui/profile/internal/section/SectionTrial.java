package slopewright.ui.profile.internal.section;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;

import slopewright.drawing.section.Section;
import slopewright.edit.EditException;
import slopewright.edit.RecordedEdit;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.Attempt;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.obstacles.SurfaceComparison;
import slopewright.model.ApproachAid;
import slopewright.model.LightUnit;
import slopewright.model.Project;
import slopewright.model.SlopewrightPackage;
import slopewright.model.util.Projects;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.ui.MessageTexts;

/**
 * Tries an edit out on a copy of the aid and its runway or helipad, so that what is shown while something is dragged is what dropping it
 * will give, against everything that stands there in the document. Obstacles are not copied. What all rules say of it is worked out in the
 * background ({@link slopewright.ui.trial.TrialVerdict}).
 */
public final class SectionTrial {

    private final SectionSource source;
    private final ApproachAid copy;
    private final ProjectEvaluation now;

    /**
     * What an edit would give.
     *
     * @param section   the section as it would be; empty where it cannot be worked out
     * @param obstacles everything that stands there against the obstacle surface, or why it cannot be compared
     * @param surveyed  whether a survey says that nothing else stands there
     * @param problem   why the section cannot be worked out
     */
    public record Result(Optional<Section> section, Attempt<SurfaceComparison> obstacles, boolean surveyed, Optional<String> problem) {
    }

    /** Copies a project without what is many and of no importance here. */
    private static final class Lean extends EcoreUtil.Copier {

        private static final long serialVersionUID = 1L;

        private final transient ApproachAid wanted;

        Lean(ApproachAid wanted) {
            super(true, false);
            this.wanted = wanted;
        }

        @Override
        protected void copyContainment(EReference reference, EObject from, EObject to) {
            boolean many = reference == SlopewrightPackage.Literals.AERODROME__OBSTACLES
                    || reference == SlopewrightPackage.Literals.PROJECT__SURVEY_BLOCKS
                    || reference == SlopewrightPackage.Literals.AERODROME__BACKGROUND_IMAGES;
            boolean others = reference == SlopewrightPackage.Literals.APPROACH_HOST__AIDS && from != wanted.eContainer();
            if (!many && !others) {
                super.copyContainment(reference, from, to);
            }
        }
    }

    /**
     * Prepares trials.
     *
     * @param source a source that shows a section
     */
    public SectionTrial(SectionSource source) {
        this.source = source;
        ApproachAid aid = source.aid().orElseThrow();
        Lean copier = new Lean(aid);
        copier.copy(source.document().orElseThrow().project());
        copier.copyReferences();
        copy = (ApproachAid) copier.get(aid);
        now = source.document().orElseThrow().evaluation();
    }

    /** Returns what the copy gives as it is at the moment. */
    private ProjectEvaluation evaluation() {
        Project project = Projects.project(copy).orElseThrow();
        return now.trial(project, Optional.empty());
    }

    /** Returns the unit of the copy that stands for a unit. */
    LightUnit twin(LightUnit unit) {
        return copy.getUnits().get(source.aid().orElseThrow().getUnits().indexOf(unit));
    }

    /** Returns the distance that the rule set gives for the aid, metres, empty where it gives none. */
    public OptionalDouble solvedDistanceM() {
        return evaluation().aid(copy).solved().value().map(Siting::distanceM).map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    }

    /** Tries an edit of the aid out. */
    public Result of(Function<ApproachAid, RecordedEdit> edit) {
        RecordedEdit trial;
        try {
            trial = edit.apply(copy);
            trial.execute();
        } catch (EditException e) {
            return failed(MessageTexts.reason(e));
        }
        try {
            AidEvaluation proposal = evaluation().aid(copy);
            Section section = source.of(proposal);
            return new Result(Optional.of(section), proposal.obstacles(), proposal.isSurveyed(), Optional.empty());
        } catch (SitingException e) {
            return failed(MessageTexts.of(e.reason()));
        } catch (IllegalArgumentException e) {
            return failed(MessageTexts.reason(e));
        } finally {
            trial.undo();
        }
    }

    private Result failed(String problem) {
        return new Result(Optional.empty(), evaluation().aid(copy).obstacles(), false, Optional.of(problem));
    }
}
