package slopewright.ui.profile.internal.section;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;

import slopewright.checks.Checks;
import slopewright.checks.Outcome;
import slopewright.checks.Verdict;
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
 * will give: the whole verdict about the aid, against everything that stands there in the document. Obstacles are not copied.
 */
public final class SectionTrial {

    private final SectionSource source;
    private final ApproachAid copy;
    private final ProjectEvaluation now;
    private final Findings before;

    /**
     * What the rules say about the aid and its units.
     *
     * @param notMet    what the rules are called that are not met
     * @param toClearUp how many outcomes are to be cleared up
     */
    public record Findings(List<String> notMet, int toClearUp) {

        /** Stands where nothing could be worked out. */
        static final Findings NONE = new Findings(List.of(), 0);
    }

    /**
     * What an edit would give.
     *
     * @param section   the section as it would be; empty where it cannot be worked out
     * @param obstacles everything that stands there against the obstacle surface, or why it cannot be compared
     * @param findings  what the rules would say
     * @param before    what they say now
     * @param problem   why the section cannot be worked out
     */
    public record Result(Optional<Section> section, Attempt<SurfaceComparison> obstacles, Findings findings, Findings before,
            Optional<String> problem) {

        /** Returns whether every rule is met and everything that stands there was compared and stays below the surface. */
        public boolean isGood() {
            return problem.isEmpty() && findings.notMet().isEmpty() && obstacles.value()
                    .map(found -> found.isComplete() && !found.isPenetrated()).orElse(true);
        }
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
        before = findings(evaluation());
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
            return failed(String.valueOf(e.getMessage()));
        }
        try {
            ProjectEvaluation proposed = evaluation();
            AidEvaluation proposal = proposed.aid(copy);
            Section section = source.of(proposal);
            return new Result(Optional.of(section), proposal.obstacles(), findings(proposed), before, Optional.empty());
        } catch (SitingException e) {
            return failed(MessageTexts.of(e.reason()));
        } catch (IllegalArgumentException e) {
            return failed(String.valueOf(e.getMessage()));
        } finally {
            trial.undo();
        }
    }

    private Result failed(String problem) {
        return new Result(Optional.empty(), evaluation().aid(copy).obstacles(), Findings.NONE, before, Optional.of(problem));
    }

    private Findings findings(ProjectEvaluation proposed) {
        List<Outcome> about = Checks.run(proposed, rule -> true).outcomes().stream().filter(this::isAbout).toList();
        return new Findings(about.stream().filter(outcome -> outcome.verdict() == Verdict.NOT_MET).map(Outcome::title).distinct()
                .map(MessageTexts::of).toList(), (int) about.stream().filter(outcome -> outcome.verdict() == Verdict.TO_CLEAR_UP).count());
    }

    private boolean isAbout(Outcome outcome) {
        String id = outcome.elementId();
        return id.equals(copy.getId()) || copy.getUnits().stream().anyMatch(unit -> id.equals(unit.getId()));
    }
}
