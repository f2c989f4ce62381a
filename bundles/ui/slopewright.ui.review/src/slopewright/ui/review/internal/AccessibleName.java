package slopewright.ui.review.internal;

import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;

/** Gives a control a name that a screen reader speaks. */
public final class AccessibleName extends AccessibleAdapter {

    private final String name;

    private AccessibleName(String name) {
        this.name = name;
    }

    public static AccessibleName of(String name) {
        return new AccessibleName(name);
    }

    @Override
    public void getName(AccessibleEvent event) {
        event.result = name;
    }
}
