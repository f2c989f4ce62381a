package slopewright.edit;

import java.util.Collection;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

import slopewright.model.Project;

/** Puts everything that another version of a project holds in the place of what it holds now. */
public final class ReplaceContent extends RecordedEdit {

    private final Project project;
    private final Project other;

    private ReplaceContent(String label, Project project, Project other) {
        super(label);
        this.project = project;
        this.other = other;
    }

    /**
     * Replaces the content of a project.
     *
     * @param label   what the user did
     * @param project the project; stays the same object
     * @param other   the other version, which is empty afterwards
     */
    public static ReplaceContent of(String label, Project project, Project other) {
        return new ReplaceContent(label, project, other);
    }

    @Override
    protected Collection<? extends EObject> scope() {
        return List.of(project);
    }

    @Override
    protected void apply() {
        for (EStructuralFeature feature : project.eClass().getEAllStructuralFeatures()) {
            if (feature.isChangeable() && !feature.isTransient()) {
                replace(feature);
            }
        }
    }

    private void replace(EStructuralFeature feature) {
        Object value = other.eGet(feature);
        if (feature.isMany()) {
            @SuppressWarnings("unchecked")
            List<EObject> present = (List<EObject>) project.eGet(feature);
            @SuppressWarnings("unchecked")
            List<EObject> fresh = List.copyOf((List<EObject>) value);
            present.clear();
            present.addAll(fresh);
        } else {
            project.eSet(feature, value);
        }
    }
}
