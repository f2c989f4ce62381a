package slopewright.ui.properties;

import java.util.Locale;
import java.util.Optional;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EStructuralFeature;

import slopewright.model.util.ValueRange;
import slopewright.ui.Texts;
import slopewright.ui.units.Quantity;
import slopewright.ui.units.QuantityFormat;

/**
 * What a feature of the model is called in the window, and which values make sense.
 *
 * @param feature  the feature
 * @param label    its name without unit
 * @param quantity what its number is
 * @param group    the category in which it stands
 * @param help     one sentence; may be empty
 * @param range    the values that make sense, in the unit of the model
 */
public record AttributeInfo(EStructuralFeature feature, String label, Quantity quantity, String group, String help,
        Optional<ValueRange> range) {

    /**
     * Returns what is known of a feature of a class.
     *
     * @param type    the class of the element
     * @param feature one of its features
     */
    public static AttributeInfo of(EClass type, EStructuralFeature feature) {
        String label = text(type, feature, "").orElseGet(() -> words(stem(feature.getName())));
        String group = text(type, feature, ".group").orElseGet(() -> classLabel(type));
        return new AttributeInfo(feature, label, Quantity.of(feature.getName()), group, text(type, feature, ".help").orElse(""),
                ValueRange.of(type, feature));
    }

    /** Returns the name of a class of elements for people: {@code Light unit}. */
    public static String classLabel(EClass type) {
        return text("class." + type.getName()).orElseGet(() -> words(type.getName()));
    }

    /** Returns the name of a choice for people. */
    public static String choice(Enumerator literal) {
        String key = literal.getClass().getSimpleName() + "." + literal.getName();
        return text(key).orElseGet(() -> literal.getName().toLowerCase(Locale.ROOT).replace('_', ' '));
    }

    /** Returns the name with the unit that the user prefers: {@code Setting (°)}. */
    public String labelWithUnit(QuantityFormat format) {
        String unit = format.unit(quantity);
        return unit.isEmpty() ? label : label + " (" + unit + ")";
    }

    /**
     * Returns why a number does not make sense here.
     *
     * @param value  the number in the unit of the model
     * @param format how numbers are shown
     * @return the reason, empty where it does
     */
    public Optional<String> fault(double value, QuantityFormat format) {
        return range.filter(limits -> !limits.contains(value))
                .map(limits -> PropertyTexts.get("field.range", label, format.showWithUnit(value, quantity),
                        format.showWithUnit(limits.least(), quantity), format.showWithUnit(limits.most(), quantity)));
    }

    private static Optional<String> text(EClass type, EStructuralFeature feature, String part) {
        return text(type.getName() + "." + feature.getName() + part).or(() -> text(feature.getName() + part));
    }

    private static Optional<String> text(String key) {
        return Texts.beside(AttributeInfo.class, "attributes").find(key);
    }

    private static String stem(String name) {
        String suffix = Quantity.of(name).suffix();
        return name.substring(0, name.length() - suffix.length());
    }

    private static String words(String name) {
        String lower = name.replaceAll("(?<=[a-z0-9])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
        return lower.substring(0, 1).toUpperCase(Locale.ROOT) + lower.substring(1);
    }
}
