package slopewright.edit;

import java.util.Collection;
import java.util.List;

import org.eclipse.emf.ecore.EObject;

import slopewright.messages.Message;
import slopewright.model.Aerodrome;
import slopewright.model.GroundLevel;
import slopewright.model.Identified;
import slopewright.model.Obstacle;
import slopewright.model.Project;
import slopewright.model.SurveyBlock;
import slopewright.model.util.Ids;

/** Adds everything that was taken of one survey file, in one step. */
public final class TakeSurvey extends RecordedEdit {

    private final Project project;
    private final List<Identified> elements;

    private TakeSurvey(String label, Project project, List<Identified> elements) {
        super(label);
        this.project = project;
        this.elements = elements;
    }

    /**
     * Adds what a survey file gave.
     *
     * @param label    what the user did
     * @param project  the project, with an aerodrome
     * @param elements obstacles, ground levels and survey blocks that are nowhere yet
     * @throws EditException where there is no aerodrome, or an element is none of these or is somewhere already
     */
    public static TakeSurvey of(String label, Project project, List<Identified> elements) {
        if (project.getAerodrome() == null) {
            throw new EditException(Message.of("edit.no-aerodrome"));
        }
        for (Identified element : elements) {
            boolean fits = element instanceof Obstacle || element instanceof GroundLevel || element instanceof SurveyBlock;
            if (!fits || element.eContainer() != null) {
                throw new EditException(Message.said("edit.no-survey", element.eClass().getName()));
            }
        }
        return new TakeSurvey(label, project, List.copyOf(elements));
    }

    @Override
    protected Collection<? extends EObject> scope() {
        return List.of(project, project.getAerodrome());
    }

    @Override
    protected void apply() {
        Aerodrome aerodrome = project.getAerodrome();
        aerodrome.getObstacles().addAll(of(Obstacle.class));
        aerodrome.getGroundLevels().addAll(of(GroundLevel.class));
        project.getSurveyBlocks().addAll(of(SurveyBlock.class));
        Ids.assign(project);
    }

    private <T> List<T> of(Class<T> type) {
        return elements.stream().filter(type::isInstance).map(type::cast).toList();
    }
}
