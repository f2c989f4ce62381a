package slopewright.ui.diagram.parts;

import java.util.List;
import java.util.Optional;

import org.eclipse.draw2d.IFigure;
import org.eclipse.emf.common.notify.Adapter;
import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.impl.AdapterImpl;
import org.eclipse.gef.AccessibleEditPart;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.GraphicalEditPart;
import org.eclipse.gef.Request;
import org.eclipse.gef.editparts.AbstractGraphicalEditPart;
import org.eclipse.gef.tools.SelectEditPartTracker;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;

import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.ScenePoint;
import slopewright.model.Identified;
import slopewright.ui.MessageTexts;
import slopewright.ui.diagram.Diagram;
import slopewright.ui.diagram.figures.MarkFigure;

/**
 * The part of one element of the model. It listens to that element alone, ignores touches and what comes while it is not active, and lays
 * its figure into a layer of the diagram. The raw types of the framework end here.
 *
 * @param <T> the type of the element
 */
@SuppressWarnings("unchecked")
public abstract class ElementPart<T extends Identified> extends AbstractGraphicalEditPart {

    /** How far from the anchor of an element signs about it stand, pixels. */
    protected static final double SIGN_PX = 20;

    private final T element;
    private final Diagram diagram;
    private final Adapter listener = new AdapterImpl() {

        @Override
        public void notifyChanged(Notification notification) {
            if (!notification.isTouch() && isActive()) {
                elementChanged(notification);
            }
        }
    };
    private AccessibleEditPart accessible;

    /**
     * Makes the part of an element.
     *
     * @param element the element
     * @param diagram the diagram
     */
    protected ElementPart(T element, Diagram diagram) {
        this.element = element;
        this.diagram = diagram;
        setModel(element);
    }

    /** Returns the element. */
    public final T element() {
        return element;
    }

    /** Returns the diagram. */
    protected final Diagram diagram() {
        return diagram;
    }

    /** Returns the key of the layer that the figure lies in. */
    protected abstract Object layer();

    /** Returns what is painted, the lowest first, in metres of the world. */
    protected abstract List<Mark> marks();

    /** Returns the elements that have parts below this one. */
    protected List<? extends Identified> childElements() {
        return List.of();
    }

    /** Returns where remarks about the element are pinned, empty where it is not shown. */
    public Optional<ScenePoint> anchor() {
        return Optional.empty();
    }

    /** Returns where a sign about the element is put, so that it does not cover it. */
    public Optional<ScenePoint> signPlace() {
        double up = SIGN_PX / diagram.view().scale();
        return anchor().map(place -> new ScenePoint(place.x(), place.y() + up));
    }

    /** Returns what the tooltip says. */
    public String description() {
        return MessageTexts.label(element);
    }

    /** Called when the element has changed; brings children and figure up to date. */
    protected void elementChanged(Notification notification) {
        refresh();
    }

    /** Brings the figure of this part and of all parts below it up to date. */
    public void refreshAll() {
        refresh();
        for (Object child : getChildren()) {
            ((ElementPart<?>) child).refreshAll();
        }
    }

    @Override
    protected final List<? extends Identified> getModelChildren() {
        return childElements();
    }

    @Override
    protected MarkFigure createFigure() {
        MarkFigure figure = new MarkFigure(diagram, this::marks);
        figure.setDescription(this::description);
        return figure;
    }

    /** Returns the figure. */
    public final MarkFigure markFigure() {
        return (MarkFigure) getFigure();
    }

    @Override
    protected void refreshVisuals() {
        markFigure().update();
    }

    @Override
    protected void addChildVisual(EditPart child, int index) {
        IFigure figure = ((GraphicalEditPart) child).getFigure();
        diagram.layer(((ElementPart<?>) child).layer()).add(figure);
    }

    @Override
    protected void removeChildVisual(EditPart child) {
        IFigure figure = ((GraphicalEditPart) child).getFigure();
        if (figure.getParent() != null) {
            figure.getParent().remove(figure);
        }
    }

    @Override
    protected void reorderChild(EditPart child, int index) {
        List<?> known = getChildren();
        if (known.indexOf(child) != index) {
            removeChildAt(child, index);
        }
    }

    private void removeChildAt(EditPart child, int index) {
        List<Object> known = getChildren();
        known.remove(child);
        known.add(Math.min(index, known.size()), child);
    }

    @Override
    public void removeNotify() {
        super.removeNotify();
        if (getFigure().getParent() != null) {
            getFigure().getParent().remove(getFigure());
        }
    }

    @Override
    public void activate() {
        if (!isActive()) {
            element.eAdapters().add(listener);
            super.activate();
        }
    }

    @Override
    public void deactivate() {
        if (isActive()) {
            element.eAdapters().remove(listener);
            super.deactivate();
        }
    }

    @Override
    protected void createEditPolicies() {
        // parts that can be edited install theirs
    }

    @Override
    public DragTracker getDragTracker(Request request) {
        return new SelectEditPartTracker(this);
    }

    @Override
    public EditPart getTargetEditPart(Request request) {
        EditPart target = super.getTargetEditPart(request);
        boolean creates = REQ_CREATE.equals(request.getType());
        return target == null && creates && getParent() != null ? getParent().getTargetEditPart(request) : target;
    }

    @Override
    protected AccessibleEditPart getAccessibleEditPart() {
        if (accessible == null) {
            accessible = new Accessible();
        }
        return accessible;
    }

    /** Says to a screen reader what the tooltip says. */
    private final class Accessible extends AccessibleGraphicalEditPart {

        @Override
        public void getName(AccessibleEvent event) {
            event.result = description();
        }

        @Override
        public void getValue(AccessibleControlEvent event) {
            event.result = description();
        }
    }

    @Override
    @SuppressWarnings("rawtypes")
    public Object getAdapter(Class key) {
        return key.isInstance(element) && Identified.class.isAssignableFrom(key) ? element : super.getAdapter(key);
    }
}
