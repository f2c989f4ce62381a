package slopewright.ui.profile.internal.pilot;

import java.util.function.Supplier;

import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.widgets.Control;

import slopewright.ui.AccessibleName;

/** Gives a control a name and a description that a screen reader speaks. */
final class Named extends AccessibleAdapter {

    private final String name;
    private final Supplier<String> description;

    private Named(String name, Supplier<String> description) {
        this.name = name;
        this.description = description;
    }

    static <T extends Control> T name(T control, String name) {
        AccessibleName.give(control, name);
        return control;
    }

    static <T extends Control> T describe(T control, String name, Supplier<String> description) {
        control.getAccessible().addAccessibleListener(new Named(name, description));
        return control;
    }

    @Override
    public void getName(AccessibleEvent event) {
        event.result = name;
    }

    @Override
    public void getDescription(AccessibleEvent event) {
        event.result = description.get();
    }
}
