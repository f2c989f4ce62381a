package slopewright.ui.diagram;

import org.eclipse.draw2d.IFigure;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.gef.editparts.LayerManager;

import slopewright.ui.diagram.figures.Fonts;

/** What the parts of one diagram share: its viewer, what part of the world it shows, and its fonts. */
public final class Diagram {

    private final GraphicalViewer viewer;
    private final WorldView view = new WorldView();
    private final Fonts fonts;

    /**
     * Makes the diagram of a viewer.
     *
     * @param viewer a viewer whose control was created
     */
    public Diagram(GraphicalViewer viewer) {
        this.viewer = viewer;
        this.fonts = new Fonts(viewer.getControl());
    }

    /** Returns the viewer. */
    public GraphicalViewer viewer() {
        return viewer;
    }

    /** Returns what part of the world it shows. */
    public WorldView view() {
        return view;
    }

    /** Returns its fonts. */
    public Fonts fonts() {
        return fonts;
    }

    /** Returns a layer of the viewer's root. */
    public IFigure layer(Object key) {
        return ((LayerManager) viewer.getEditPartRegistry().get(LayerManager.ID)).getLayer(key);
    }
}
