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
import slopewright.drawing.section.SectionLive;
import slopewright.edit.EditException;
import slopewright.edit.RecordedEdit;
import slopewright.evaluation.AidLayouts;
import slopewright.evaluation.AidRequests;
import slopewright.model.ApproachAid;
import slopewright.model.LightUnit;
import slopewright.model.Project;
import slopewright.model.SlopewrightPackage;
import slopewright.model.util.Projects;
import slopewright.siting.Families;
import slopewright.siting.SitingException;
import slopewright.standards.RuleSet;
import slopewright.ui.MessageTexts;

/**
 * Tries an edit out on a copy of the aid and its surroundings, so that what is shown while something is dragged is what dropping it will
 * give. Obstacles are not copied; they were brought into the frame before.
 */
public final class SectionTrial {

    /** Rules about obstacles are answered by the section itself. */
    private static final String OBSTACLE_RULES = "OBS-";

    private final SectionSource source;
    private final ApproachAid copy;
    private final RuleSet rules;
    private final List<String> before;

    /**
     * What an edit would give.
     *
     * @param live    the section as it would be; empty where it can not be worked out
     * @param broken  what the rules that would not be met are called
     * @param before  what the rules are called that are not met now
     * @param problem why the section can not be worked out
     */
    public record Result(Optional<SectionLive> live, List<String> broken, List<String> before, Optional<String> problem) {

        /** Returns whether no rule is broken and no obstacle stands through the surface. */
        public boolean isGood() {
            return problem.isEmpty() && broken.isEmpty() && excessM().orElse(0) <= 0;
        }

        /** Returns how far the worst obstacle stands above the surface, metres. */
        public OptionalDouble excessM() {
            return live.map(one -> one.obstacles().worstExcessM()).orElse(OptionalDouble.empty());
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
        rules = source.rules();
        before = broken();
    }

    /** Returns the unit of the copy that stands for a unit. */
    LightUnit twin(LightUnit unit) {
        return copy.getUnits().get(source.aid().orElseThrow().getUnits().indexOf(unit));
    }

    /** Returns the distance that the rule set gives for the aid, metres, empty where it gives none. */
    public OptionalDouble solvedDistanceM() {
        try {
            return OptionalDouble.of(Families.site(String.valueOf(copy.getFamilyKey()), AidRequests.of(copy), rules).distanceM());
        } catch (SitingException e) {
            return OptionalDouble.empty();
        }
    }

    /** Tries an edit of the aid out. */
    public Result of(Function<ApproachAid, RecordedEdit> edit) {
        RecordedEdit trial;
        try {
            trial = edit.apply(copy);
            trial.execute();
        } catch (EditException e) {
            return new Result(Optional.empty(), List.of(), before, Optional.of(String.valueOf(e.getMessage())));
        }
        try {
            return new Result(Optional.of(source.of(AidLayouts.evaluate(copy, rules))), broken(), before, Optional.empty());
        } catch (SitingException | IllegalArgumentException e) {
            return new Result(Optional.empty(), List.of(), before, Optional.of(String.valueOf(e.getMessage())));
        } finally {
            trial.undo();
        }
    }

    private List<String> broken() {
        Project project = Projects.project(copy).orElseThrow();
        return Checks.run(project, Optional.empty(), rule -> !rule.id().startsWith(OBSTACLE_RULES)).outcomes().stream()
                .filter(outcome -> outcome.verdict() == Verdict.NOT_MET && isAbout(outcome)).map(Outcome::title).distinct()
                .map(MessageTexts::of).toList();
    }

    private boolean isAbout(Outcome outcome) {
        String id = outcome.elementId();
        return id.equals(copy.getId()) || copy.getUnits().stream().anyMatch(unit -> id.equals(unit.getId()));
    }
}
