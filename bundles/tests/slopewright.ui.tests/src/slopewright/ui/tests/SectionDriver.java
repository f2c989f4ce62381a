package slopewright.ui.tests;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;

import slopewright.drawing.scene.Mark;
import slopewright.drawing.section.BeamEdge;
import slopewright.siting.Siting;
import slopewright.ui.diagram.WorldView;
import slopewright.ui.profile.SectionView;

/** Works a section by the events that mouse and keyboard send to its controls. */
final class SectionDriver extends MouseDriver {

    private final SectionView view;

    SectionDriver(SectionView view) {
        this.view = view;
    }

    WorldView world() {
        return view.canvas().view();
    }

    Siting siting() {
        return view.canvas().section().orElseThrow().siting();
    }

    /** The edge that a unit shows. */
    BeamEdge edge(String unit) {
        return view.canvas().section().orElseThrow().edges().stream().filter(edge -> edge.unit().id().equals(unit)).findFirst()
                .orElseThrow();
    }

    /** The texts that are drawn. */
    List<String> texts() {
        return view.canvas().marks().stream().filter(Mark.Label.class::isInstance).map(mark -> ((Mark.Label) mark).text()).toList();
    }

    @Override
    Control control() {
        return view.canvas().control();
    }

    Point at(double alongM, double heightM) {
        return new Point((int) Math.round(world().toX(alongM)), (int) Math.round(world().toY(heightM)));
    }

    void wheel(Point at, int count) {
        Event event = new Event();
        event.x = at.x;
        event.y = at.y;
        event.count = count;
        view.canvas().control().notifyListeners(SWT.MouseWheel, event);
    }

    void key(int keyCode, char character, int stateMask) {
        Event event = new Event();
        event.keyCode = keyCode;
        event.character = character;
        event.stateMask = stateMask;
        view.canvas().control().notifyListeners(SWT.KeyDown, event);
        view.canvas().control().notifyListeners(SWT.KeyUp, event);
        Patience.pause(20);
    }

    void key(int keyCode) {
        key(keyCode, '\0', 0);
    }

    /** Chooses the item of a combo that begins with a text, as a click on it does. */
    void choose(Combo combo, String text) {
        int index = List.of(combo.getItems()).indexOf(List.of(combo.getItems()).stream().filter(item -> item.startsWith(text)).findFirst()
                .orElseThrow());
        combo.select(index);
        combo.notifyListeners(SWT.Selection, new Event());
        Patience.pause(20);
    }

    /** The value of a line of the readout. */
    String value(String name) {
        return view.readout().rows().stream().filter(row -> row.name().equals(name)).findFirst().orElseThrow(() -> new AssertionError(
                view.readout().text())).value();
    }
}
