package slopewright.edit;

import java.util.Collection;
import java.util.List;
import java.util.Objects;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;

import slopewright.messages.Message;

/** Gives one attribute of one element another value. */
public final class SetAttribute extends RecordedEdit {

    private final EObject element;
    private final EAttribute attribute;
    private final Object value;

    private SetAttribute(String label, EObject element, EAttribute attribute, Object value) {
        super(label);
        this.element = element;
        this.attribute = attribute;
        this.value = value;
    }

    /**
     * Sets an attribute.
     *
     * @param element   the element
     * @param attribute one of its attributes, not its id
     * @param value     a value of the attribute's type, numbers finite; null takes the value away
     * @throws EditException where the element has no such attribute or the value is none for it; the message says so
     */
    public static SetAttribute of(EObject element, EAttribute attribute, Object value) {
        return named("Change " + words(attribute.getName()), element, attribute, value);
    }

    static SetAttribute named(String label, EObject element, EAttribute attribute, Object value) {
        if (!element.eClass().getEAllAttributes().contains(attribute) || attribute.isID() || !attribute.isChangeable()) {
            throw new EditException(Message.said("edit.no-attribute", element.eClass().getName(), attribute.getName()));
        }
        boolean finite = !(value instanceof Double number) || Double.isFinite(number);
        if (value != null && !(attribute.getEAttributeType().isInstance(value) && finite)) {
            throw new EditException(Message.said("edit.no-value", value, words(attribute.getName())));
        }
        return new SetAttribute(label, element, attribute, value);
    }

    private static String words(String name) {
        return name.replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(java.util.Locale.ROOT);
    }

    @Override
    protected Collection<? extends EObject> scope() {
        return List.of(element);
    }

    @Override
    protected void apply() {
        if (value == null) {
            element.eUnset(attribute);
        } else if (!Objects.equals(element.eGet(attribute), value)) {
            element.eSet(attribute, value);
        }
    }
}
