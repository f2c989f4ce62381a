package slopewright.edit;

import slopewright.evaluation.Editions;
import slopewright.model.Project;

/**
 * Moves a project and those of its aids that name an older edition of a rule set to the newer one. What was confirmed for the older one
 * stays as it is, and counts no more: the check lists it as to clear up.
 */
public final class MoveToEdition {

    private MoveToEdition() {
    }

    /**
     * Moves a project.
     *
     * @param project the project
     * @return the edit, one for the user; it changes nothing where nothing names an older edition
     */
    public static RecordedEdit of(Project project) {
        return Compound.of("Move to the newer edition", Editions.moves(project).stream()
                .map(move -> SetAttribute.of(move.holder(), move.attribute(), move.to())).toList());
    }
}
