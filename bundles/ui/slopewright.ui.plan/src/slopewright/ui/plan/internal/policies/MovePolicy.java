package slopewright.ui.plan.internal.policies;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.gef.EditPart;
import org.eclipse.gef.Request;
import org.eclipse.gef.RequestConstants;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.editpolicies.AbstractEditPolicy;

import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.util.Ids;
import slopewright.ui.diagram.commands.HistoryCommand;
import slopewright.ui.diagram.figures.ReadoutFigure.Line;
import slopewright.ui.diagram.policies.MoveRequest;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.Readings;
import slopewright.ui.plan.internal.figures.Marks;
import slopewright.ui.trial.TrialVerdict;

/**
 * Moves an element over the ground as its mover says. Where it would be, and what all rules say of the drop, follows the mouse.
 *
 * @param <T> the type of the element
 */
public final class MovePolicy<T extends Identified> extends AbstractEditPolicy {

    private final PlanContext context;
    private final T element;
    private final Mover<T> mover;
    private final MoveFeedback feedback;
    private final TrialVerdict verdict;
    private Optional<MoveRequest> shown = Optional.empty();

    /** Makes the policy of an element. */
    public MovePolicy(PlanContext context, T element, Mover<T> mover) {
        this.context = context;
        this.element = element;
        this.mover = mover;
        this.feedback = new MoveFeedback(context.diagram());
        this.verdict = new TrialVerdict(context.document(), () -> shown.ifPresent(this::showSourceFeedback));
    }

    @Override
    public boolean understandsRequest(Request request) {
        return RequestConstants.REQ_MOVE.equals(request.getType());
    }

    @Override
    public EditPart getTargetEditPart(Request request) {
        return understandsRequest(request) ? getHost() : null;
    }

    @Override
    public Command getCommand(Request request) {
        return drop(request).map(drop -> new HistoryCommand(drop.edit().apply(element))).orElse(null);
    }

    private Optional<Drop<T>> drop(Request request) {
        return request instanceof MoveRequest move && context.plane().isPresent() ? mover.drop(context, element, move) : Optional.empty();
    }

    @Override
    public void showSourceFeedback(Request request) {
        drop(request).ifPresent(drop -> {
            shown = Optional.of((MoveRequest) request);
            Marks marks = new Marks(element.getId());
            drop.ghost().accept(marks);
            verdict.ask(drop.place(), drop.by(), project -> drop.edit().apply(of(project)));
            List<Line> lines = new ArrayList<>(List.of(Line.of(drop.by())));
            lines.addAll(drop.lines());
            lines.addAll(Readings.of(verdict));
            feedback.show(marks.list(), lines, drop.at());
        });
    }

    @SuppressWarnings("unchecked")
    private T of(Project project) {
        return (T) Ids.find(project, element.getId()).orElseThrow();
    }

    @Override
    public void eraseSourceFeedback(Request request) {
        if (request instanceof MoveRequest) {
            end();
        }
    }

    @Override
    public void deactivate() {
        end();
        super.deactivate();
    }

    private void end() {
        feedback.erase();
        verdict.end();
        shown = Optional.empty();
    }
}
