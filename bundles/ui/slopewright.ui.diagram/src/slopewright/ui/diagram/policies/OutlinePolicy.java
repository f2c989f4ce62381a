package slopewright.ui.diagram.policies;

import java.util.List;
import java.util.function.Supplier;

import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.editpolicies.SelectionEditPolicy;

import slopewright.drawing.scene.Mark;
import slopewright.ui.diagram.Diagram;
import slopewright.ui.diagram.figures.MarkFigure;

/** Shows that an element is selected by marks laid over the diagram, which follow the view. */
public final class OutlinePolicy extends SelectionEditPolicy {

    private final Diagram diagram;
    private final Supplier<List<Mark>> marks;
    private MarkFigure shown;

    /**
     * Makes the policy.
     *
     * @param diagram the diagram
     * @param marks   what is shown while the element is selected
     */
    public OutlinePolicy(Diagram diagram, Supplier<List<Mark>> marks) {
        this.diagram = diagram;
        this.marks = marks;
    }

    @Override
    protected void showSelection() {
        hideSelection();
        shown = MarkFigure.passive(diagram, marks);
        diagram.layer(LayerConstants.FEEDBACK_LAYER).add(shown);
        shown.update();
    }

    @Override
    protected void hideSelection() {
        if (shown != null) {
            diagram.layer(LayerConstants.FEEDBACK_LAYER).remove(shown);
            shown = null;
        }
    }

    /** Brings what is shown up to date after the element has changed. */
    public void update() {
        if (shown != null) {
            shown.update();
        }
    }
}
