package slopewright.ui.elements;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

import slopewright.model.SlopewrightPackage.Literals;
import slopewright.ui.properties.AttributeInfo;
import slopewright.ui.units.QuantityFormat;

/** Which columns the table of a kind has. */
final class ElementColumns {

    private ElementColumns() {
    }

    /** Returns the columns of a kind: where it stands, its name, its place, its values, its remarks. */
    static List<ElementColumn> of(ElementKind kind, QuantityFormat format) {
        List<ElementColumn> columns = new ArrayList<>();
        if (kind.isSpread()) {
            columns.add(new ElementColumn.Holder());
        }
        List<EStructuralFeature> features = kind.type().getEAllStructuralFeatures().stream().filter(ElementColumns::isShown).toList();
        features.stream().filter(ElementColumns::isNaming).map(feature -> own(kind, feature, format)).forEach(columns::add);
        if (kind.type() == Literals.PLACE) {
            places(Optional.empty(), format, columns);
        } else {
            placeOf(kind.type()).ifPresent(holder -> places(Optional.of(holder), format, columns));
            features.stream().filter(feature -> !isNaming(feature) && !isRemark(feature)).map(feature -> own(kind, feature, format))
                    .forEach(columns::add);
        }
        features.stream().filter(ElementColumns::isRemark).map(feature -> own(kind, feature, format)).forEach(columns::add);
        return columns;
    }

    private static ElementColumn own(ElementKind kind, EStructuralFeature feature, QuantityFormat format) {
        return new ElementColumn.Own(AttributeInfo.of(kind.type(), feature), format);
    }

    private static void places(Optional<EReference> holder, QuantityFormat format, List<ElementColumn> columns) {
        columns.add(new PlaceColumn(holder, Optional.empty(), format));
        PlaceColumn.COORDINATES.forEach(attribute -> columns.add(new PlaceColumn(holder, Optional.of(attribute), format)));
    }

    private static Optional<EReference> placeOf(EClass type) {
        return type.getEAllContainments().stream().filter(holder -> holder.getEReferenceType() == Literals.PLACE
                && holder != Literals.TAXIWAY_EDGE__POINTS).findFirst();
    }

    private static boolean isShown(EStructuralFeature feature) {
        return feature.isChangeable() && (feature instanceof EAttribute attribute && !attribute.isID() && !attribute.isMany()
                || feature instanceof EReference reference && !reference.isContainment() && !reference.isContainer());
    }

    private static boolean isNaming(EStructuralFeature feature) {
        return List.of("name", "designator", "label").contains(feature.getName());
    }

    private static boolean isRemark(EStructuralFeature feature) {
        return feature.getName().equals("remarks");
    }
}
