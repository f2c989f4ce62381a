package slopewright.ui.plan.internal.policies;

import java.util.List;
import java.util.function.Supplier;

import org.eclipse.draw2d.IFigure;
import org.eclipse.gef.LayerConstants;

import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.ScenePoint;
import slopewright.ui.diagram.Diagram;
import slopewright.ui.diagram.figures.MarkFigure;
import slopewright.ui.diagram.figures.ReadoutFigure;

/** What is shown while something is placed or moved: marks where it would stand, and lines of text beside them. */
public final class MoveFeedback {

    private final Diagram diagram;
    private MarkFigure ghost;
    private ReadoutFigure readout;
    private List<Mark> marks = List.of();

    /** Makes the feedback of a diagram; nothing is shown yet. */
    public MoveFeedback(Diagram diagram) {
        this.diagram = diagram;
    }

    /**
     * Shows feedback, instead of what was shown before.
     *
     * @param newMarks asked for when they are painted
     * @param lines    what is said
     * @param at       beside which place, in the scene
     */
    public void show(List<Mark> newMarks, List<ReadoutFigure.Line> lines, ScenePoint at) {
        marks = newMarks;
        if (ghost == null) {
            Supplier<List<Mark>> source = () -> marks;
            ghost = MarkFigure.passive(diagram, source);
            readout = new ReadoutFigure(diagram);
            layer().add(ghost);
            layer().add(readout);
        }
        ghost.update();
        readout.show(lines, diagram.view().toX(at.x()), diagram.view().toY(at.y()));
    }

    /** Returns what is said, nothing while nothing is shown. */
    public List<ReadoutFigure.Line> lines() {
        return readout == null ? List.of() : readout.lines();
    }

    /** Removes what is shown. */
    public void erase() {
        if (ghost != null) {
            layer().remove(ghost);
            layer().remove(readout);
            ghost = null;
            readout = null;
        }
    }

    private IFigure layer() {
        return diagram.layer(LayerConstants.FEEDBACK_LAYER);
    }
}
