package slopewright.ui.diagram;

import org.eclipse.gef.EditDomain;
import org.eclipse.gef.ui.parts.DomainEventDispatcher;
import org.eclipse.gef.ui.parts.GraphicalViewerImpl;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.MouseEvent;

/** A viewer whose tooltips give way as soon as a mouse button is pressed, so that they never cover what is dragged. */
public final class DiagramViewer extends GraphicalViewerImpl {

    private DomainEventDispatcher dispatcher;

    private final class Dispatcher extends DomainEventDispatcher {

        Dispatcher(EditDomain domain) {
            super(domain, DiagramViewer.this);
        }

        @Override
        public void dispatchMousePressed(MouseEvent event) {
            getToolTipHelper().updateToolTip(null, null, event.x, event.y);
            super.dispatchMousePressed(event);
        }

        @Override
        public void dispatchMouseHover(MouseEvent event) {
            if ((event.stateMask & SWT.BUTTON_MASK) == 0) {
                super.dispatchMouseHover(event);
            }
        }
    }

    @Override
    public void setEditDomain(EditDomain domain) {
        super.setEditDomain(domain);
        dispatcher = new Dispatcher(domain);
        getLightweightSystem().setEventDispatcher(dispatcher);
    }

    @Override
    protected DomainEventDispatcher getEventDispatcher() {
        return dispatcher;
    }
}
