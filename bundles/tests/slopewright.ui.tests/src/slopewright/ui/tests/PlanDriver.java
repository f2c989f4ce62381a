package slopewright.ui.tests;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.ImageFigure;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.editparts.LayerManager;
import org.eclipse.gef.palette.PaletteContainer;
import org.eclipse.gef.palette.ToolEntry;
import org.eclipse.gef.ui.palette.PaletteViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;

import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.ScenePoint;
import slopewright.model.Identified;
import slopewright.model.util.Ids;
import slopewright.ui.diagram.figures.Fonts;
import slopewright.ui.diagram.figures.MarkFigure;
import slopewright.ui.diagram.figures.MarkPainter;
import slopewright.ui.diagram.figures.ReadoutFigure;
import slopewright.ui.diagram.parts.DiagramRootPart;
import slopewright.ui.diagram.parts.ElementPart;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.plan.PlanEditor;

/** Works a plan editor by the events that mouse and keyboard send to its control. */
final class PlanDriver extends MouseDriver {

    private final PlanEditor editor;
    private final ProjectDocument document;

    PlanDriver(PlanEditor editor) {
        this.editor = editor;
        this.document = Adapters.adapt(editor, ProjectDocument.class);
    }

    ProjectDocument document() {
        return document;
    }

    <T extends Identified> T element(String id, Class<T> type) {
        return type.cast(Ids.find(document.project(), id).orElseThrow());
    }

    /** The part of an element, empty where it has none. */
    Optional<ElementPart<?>> part(Identified element) {
        return Optional.ofNullable((ElementPart<?>) editor.viewer().getEditPartRegistry().get(element));
    }

    /** The texts that are shown beside an element. */
    List<String> labels(Identified element) {
        return part(element).orElseThrow().markFigure().marks().stream().filter(Mark.Label.class::isInstance)
                .map(mark -> ((Mark.Label) mark).text()).toList();
    }

    /** The element that is selected, empty where it is not just one. */
    Optional<Object> selected() {
        List<?> parts = editor.viewer().getSelectedEditParts();
        return parts.size() == 1 ? Optional.of(((EditPart) parts.get(0)).getModel()) : Optional.empty();
    }

    /** Where the middle of an element lies on the control, pixels. */
    Point at(Identified element) {
        return at(part(element).orElseThrow().anchor().orElseThrow());
    }

    Point at(ScenePoint place) {
        return new Point((int) Math.round(editor.view().toX(place.x())), (int) Math.round(editor.view().toY(place.y())));
    }

    /** Shows an element in the middle, a number of pixels for a metre. */
    void lookAt(Identified element, double pixelsPerMetre) {
        ScenePoint place = part(element).orElseThrow().anchor().orElseThrow();
        editor.view().centreOn(place.x(), place.y());
        editor.view().zoom(pixelsPerMetre / editor.view().scale());
        Patience.pause(50);
    }

    @Override
    Control control() {
        return editor.viewer().getControl();
    }

    void wheel(Point at, int count) {
        Event event = new Event();
        event.x = at.x;
        event.y = at.y;
        event.count = count;
        control().notifyListeners(SWT.MouseWheel, event);
    }

    void key(int keyCode, char character, int stateMask) {
        Event event = new Event();
        event.keyCode = keyCode;
        event.character = character;
        event.stateMask = stateMask;
        control().notifyListeners(SWT.KeyDown, event);
        control().notifyListeners(SWT.KeyUp, event);
        Patience.pause(20);
    }

    /** The tools that the palette offers, by name. */
    List<String> tools() {
        return entries(palette().getPaletteRoot()).stream().map(ToolEntry::getLabel).toList();
    }

    void chooseTool(String label) {
        List<ToolEntry> entries = entries(palette().getPaletteRoot());
        palette().setActiveTool(entries.stream().filter(entry -> entry.getLabel().equals(label)).findFirst().orElseThrow());
    }

    private PaletteViewer palette() {
        return editor.viewer().getEditDomain().getPaletteViewer();
    }

    private static List<ToolEntry> entries(PaletteContainer container) {
        List<ToolEntry> entries = new ArrayList<>();
        for (Object child : container.getChildren()) {
            if (child instanceof ToolEntry entry) {
                entries.add(entry);
            } else if (child instanceof PaletteContainer inner) {
                entries.addAll(entries(inner));
            }
        }
        return entries;
    }

    /** What is said beside the pointer, empty where nothing is. */
    List<ReadoutFigure.Line> readout() {
        return layer(LayerConstants.FEEDBACK_LAYER).getChildren().stream().filter(ReadoutFigure.class::isInstance)
                .flatMap(figure -> ((ReadoutFigure) figure).lines().stream()).map(ReadoutFigure.Line.class::cast).toList();
    }

    String readoutText() {
        return String.join("\n", readout().stream().map(ReadoutFigure.Line::text).toList());
    }

    /** Whether a layer of the plan, by its name in the program, has a figure that shows. */
    boolean isShown(String layer) {
        return planLayer(layer).getChildren().stream().anyMatch(IFigure::isVisible);
    }

    /** The figures of a layer of the plan, by its name in the program. */
    List<IFigure> figures(String layer) {
        return List.copyOf(planLayer(layer).getChildren());
    }

    /** The texts that are drawn in a layer of the plan, by its name in the program. */
    List<String> texts(String layer) {
        return planLayer(layer).getChildren().stream().filter(MarkFigure.class::isInstance)
                .flatMap(child -> ((MarkFigure) child).marks().stream()).filter(Mark.Label.class::isInstance)
                .map(mark -> ((Mark.Label) mark).text()).toList();
    }

    /** Every label that is painted in the plan, with its place. */
    Map<Mark.Label, Rectangle> labels() {
        MarkPainter painter = new MarkPainter(editor.view(), new Fonts(control()));
        Map<Mark.Label, Rectangle> found = new LinkedHashMap<>();
        DiagramRootPart root = (DiagramRootPart) editor.viewer().getRootEditPart();
        root.keys().stream().map(root::getLayer).filter(IFigure::isVisible).flatMap(layer -> new Layer(layer).getChildren().stream())
                .filter(MarkFigure.class::isInstance).filter(IFigure::isShowing).flatMap(figure -> ((MarkFigure) figure).marks().stream())
                .filter(Mark.Label.class::isInstance).map(Mark.Label.class::cast).forEach(label -> {
                    org.eclipse.draw2d.geometry.Rectangle box = painter.box(label);
                    found.put(label, new Rectangle(box.x, box.y, box.width, box.height));
                });
        return found;
    }

    /** What can be seen of the plan, pixels. */
    Rectangle window() {
        return new Rectangle(0, 0, (int) editor.view().widthPx(), (int) editor.view().heightPx());
    }

    /** The places of the signs that findings set in the plan. */
    List<Rectangle> signs() {
        return planLayer("REMARKS").getChildren().stream().filter(ImageFigure.class::isInstance).filter(IFigure::isVisible)
                .map(IFigure::getBounds).map(box -> new Rectangle(box.x, box.y, box.width, box.height)).toList();
    }

    private Layer planLayer(String name) {
        DiagramRootPart root = (DiagramRootPart) editor.viewer().getRootEditPart();
        return new Layer(root.keys().stream().filter(key -> key.toString().equals(name)).map(root::getLayer).findFirst().orElseThrow());
    }

    /** How many figures there are in all layers. */
    int figures() {
        return count(layer(LayerConstants.FEEDBACK_LAYER).getParent());
    }

    private static int count(IFigure figure) {
        int sum = 1;
        for (Object child : figure.getChildren()) {
            sum += count((IFigure) child);
        }
        return sum;
    }

    private Layer layer(Object key) {
        return new Layer(((LayerManager) editor.viewer().getEditPartRegistry().get(LayerManager.ID)).getLayer(key));
    }

    /** Gives the raw lists of a figure a type. */
    private record Layer(IFigure figure) {

        List<IFigure> getChildren() {
            List<IFigure> children = new ArrayList<>();
            for (Object child : figure.getChildren()) {
                children.add((IFigure) child);
            }
            return children;
        }

        IFigure getParent() {
            return figure.getParent();
        }
    }
}
