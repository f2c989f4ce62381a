package slopewright.ui.tests;

import java.util.stream.Stream;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** Finds widgets. */
final class Widgets {

    private Widgets() {
    }

    /** Every control of a kind in a composite, at any depth. */
    static <T extends Control> Stream<T> all(Composite parent, Class<T> kind) {
        return Stream.of(parent.getChildren()).flatMap(child -> Stream.concat(
                kind.isInstance(child) ? Stream.of(kind.cast(child)) : Stream.empty(),
                child instanceof Composite composite ? all(composite, kind) : Stream.empty()));
    }
}
