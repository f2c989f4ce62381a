package slopewright.evaluation;

import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;

import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.Helipad;
import slopewright.model.Project;
import slopewright.model.SlopewrightPackage.Literals;
import slopewright.model.util.Projects;

/**
 * Copies of a project on which something is tried out. What stands around, pictures and review notes stay with the original, so that a
 * copy costs little however many obstacles there are.
 */
public final class TrialCopies {
    private static final Set<EReference> LEFT_OUT = Set.of(Literals.AERODROME__OBSTACLES, Literals.AERODROME__BACKGROUND_IMAGES,
            Literals.PROJECT__SURVEY_BLOCKS, Literals.PROJECT__REVIEW_NOTES);

    private TrialCopies() {
    }

    private static final class Copier extends EcoreUtil.Copier {
        private static final long serialVersionUID = 1L;

        @Override
        protected void copyContainment(EReference reference, EObject from, EObject to) {
            if (!LEFT_OUT.contains(reference)) {
                super.copyContainment(reference, from, to);
            }
        }
    }

    /** Returns the copy of an aid in a copy of its project. */
    public static ApproachAid of(ApproachAid aid) {
        return copied(aid);
    }

    /** Returns the copy of a runway end or approach direction in a copy of its project. */
    public static ApproachHost of(ApproachHost host) {
        return copied(host);
    }

    /** Returns the copy of a helipad in a copy of its project. */
    public static Helipad of(Helipad helipad) {
        return copied(helipad);
    }

    @SuppressWarnings("unchecked")
    private static <T extends EObject> T copied(T element) {
        Project project = Projects.project(element).orElseThrow();
        Copier copier = new Copier();
        copier.copy(project);
        copier.copyReferences();
        return (T) copier.get(element);
    }
}
