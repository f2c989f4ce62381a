package slopewright.edit.internal;

import java.util.Collection;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.Set;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.Notifier;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.change.util.ChangeRecorder;

import slopewright.model.Identified;
import slopewright.model.util.Ids;

/** Records what happens to a few elements, never to what they contain, and collects what was touched. */
public final class ElementRecorder extends ChangeRecorder {

    private final Set<Object> wanted = Collections.newSetFromMap(new IdentityHashMap<>());
    private final Set<Identified> changed = new LinkedHashSet<>();
    private final Set<Identified> moved = new LinkedHashSet<>();

    /** Starts to record some elements. */
    public ElementRecorder(Collection<? extends EObject> elements) {
        wanted.addAll(elements);
        beginRecording(elements);
    }

    /** Returns the elements that were changed, added or removed, with all that the added and removed ones contain. */
    public Set<Identified> touched() {
        Set<Identified> touched = new LinkedHashSet<>(changed);
        moved.forEach(element -> touched.addAll(Ids.elements(element)));
        return touched;
    }

    @Override
    protected void addAdapter(Notifier notifier) {
        if (wanted.contains(notifier)) {
            super.addAdapter(notifier);
        }
    }

    @Override
    protected boolean isOrphan(EObject element) {
        return false;
    }

    @Override
    public void notifyChanged(Notification notification) {
        super.notifyChanged(notification);
        if (isRecording() && !notification.isTouch() && notification.getNotifier() instanceof Identified element) {
            changed.add(element);
            if (notification.getFeature() instanceof EReference reference && reference.isContainment()) {
                touchAll(notification.getOldValue());
                touchAll(notification.getNewValue());
            }
        }
    }

    private void touchAll(Object value) {
        if (value instanceof Collection<?> many) {
            many.forEach(this::touchAll);
        } else if (value instanceof Identified element) {
            moved.add(element);
        }
    }
}
