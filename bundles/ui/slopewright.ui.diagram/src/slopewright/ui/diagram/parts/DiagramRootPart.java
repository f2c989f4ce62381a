package slopewright.ui.diagram.parts;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.draw2d.FigureListener;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.ImageFigure;
import org.eclipse.draw2d.Layer;
import org.eclipse.draw2d.LayeredPane;
import org.eclipse.draw2d.StackLayout;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.editparts.LayerManager;
import org.eclipse.gef.editparts.SimpleRootEditPart;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Listener;

import slopewright.drawing.scene.Ink;
import slopewright.ui.diagram.Diagram;
import slopewright.ui.diagram.figures.FocusBorder;
import slopewright.ui.diagram.figures.Inks;
import slopewright.ui.diagram.figures.LabelRoom;
import slopewright.ui.diagram.figures.MarkFigure;
import slopewright.ui.diagram.figures.MarkPainter;
import slopewright.ui.theme.ScreenTheme;

/** The root of a diagram: a sheet of paper as large as the window, with layers one above the other, all in pixels of the window. */
@SuppressWarnings("unchecked")
public final class DiagramRootPart extends SimpleRootEditPart implements LayerManager {

    private final Diagram diagram;
    private final Map<Object, Layer> layers = new LinkedHashMap<>();
    private final Runnable viewListener = this::updateFigures;
    private final Runnable themeListener = this::recolour;
    private Runnable signs = () -> {
        // none
    };
    private final Listener focusListener = event -> getFigure().repaint();

    /**
     * Makes a root.
     *
     * @param diagram the diagram
     * @param keys    keys of the layers of its parts, the lowest first; the ground lies below them, handles and feedback above
     */
    public DiagramRootPart(Diagram diagram, List<?> keys) {
        this.diagram = diagram;
        Layer ground = new Layer();
        ground.setLayoutManager(new StackLayout());
        layers.put(LayerConstants.PRIMARY_LAYER, ground);
        keys.forEach(key -> layers.put(key, new Layer()));
        layers.put(LayerConstants.CONNECTION_LAYER, new Layer());
        layers.put(LayerConstants.HANDLE_LAYER, new Layer());
        layers.put(LayerConstants.FEEDBACK_LAYER, new Layer());
    }

    @Override
    protected IFigure createFigure() {
        LayeredPane pane = new LayeredPane();
        pane.setOpaque(true);
        pane.setBackgroundColor(Inks.colour(Ink.PAPER));
        pane.setBorder(new FocusBorder(() -> diagram.viewer().getControl()));
        layers.forEach((key, layer) -> pane.add(layer, key, pane.getChildren().size()));
        pane.addFigureListener(new FigureListener() {

            @Override
            public void figureMoved(IFigure source) {
                Rectangle bounds = source.getBounds();
                diagram.view().resize(bounds.width, bounds.height);
            }
        });
        return pane;
    }

    @Override
    public IFigure getContentPane() {
        return layers.get(LayerConstants.PRIMARY_LAYER);
    }

    @Override
    public IFigure getLayer(Object key) {
        return layers.get(key);
    }

    /** Returns the keys of its layers, the lowest first. */
    public List<Object> keys() {
        return List.copyOf(layers.keySet());
    }

    @Override
    protected void registerModel() {
        super.registerModel();
        registry().put(LayerManager.ID, this);
    }

    @Override
    protected void unregisterModel() {
        super.unregisterModel();
        registry().remove(LayerManager.ID);
    }

    private Map<Object, Object> registry() {
        return getViewer().getEditPartRegistry();
    }

    @Override
    public void activate() {
        super.activate();
        diagram.view().addListener(viewListener);
        ScreenTheme.addListener(themeListener);
        diagram.viewer().getControl().addListener(SWT.FocusIn, focusListener);
        diagram.viewer().getControl().addListener(SWT.FocusOut, focusListener);
    }

    @Override
    public void deactivate() {
        ScreenTheme.removeListener(themeListener);
        diagram.view().removeListener(viewListener);
        super.deactivate();
    }

    /** Sets what brings signs to their places; it is run before each time that labels are arranged around them. */
    public void placeSigns(Runnable place) {
        signs = place;
    }

    /** Arranges the labels of all figures anew, after elements have changed. */
    public void arrangeLabels() {
        signs.run();
        List<MarkFigure> figures = new ArrayList<>();
        List<Rectangle> over = new ArrayList<>();
        for (Layer layer : layers.values()) {
            for (Object child : layer.getChildren()) {
                if (child instanceof MarkFigure figure) {
                    figures.add(figure);
                } else if (child instanceof ImageFigure sign && sign.isVisible()) {
                    over.add(sign.getBounds());
                }
            }
        }
        Collections.reverse(figures);
        Rectangle window = new Rectangle(0, 0, (int) diagram.view().widthPx(), (int) diagram.view().heightPx());
        LabelRoom.arrange(figures, over, new MarkPainter(diagram.view(), diagram.fonts()), window);
    }

    private void recolour() {
        getFigure().setBackgroundColor(Inks.colour(Ink.PAPER));
        getFigure().repaint();
    }

    /** Brings the figures of one layer up to date. */
    public void update(Object layerKey) {
        for (Object child : layers.get(layerKey).getChildren().toArray()) {
            if (child instanceof MarkFigure figure) {
                figure.update();
            }
        }
    }

    /** Lets every figure take the place that it has in the view now. */
    private void updateFigures() {
        for (Layer layer : layers.values()) {
            for (Object child : layer.getChildren().toArray()) {
                if (child instanceof MarkFigure figure) {
                    figure.update();
                }
            }
        }
        arrangeLabels();
        getFigure().repaint();
    }
}
