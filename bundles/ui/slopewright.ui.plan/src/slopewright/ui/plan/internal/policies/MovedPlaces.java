package slopewright.ui.plan.internal.policies;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.ecore.EAttribute;

import slopewright.edit.RecordedEdit;
import slopewright.edit.SetAttribute;
import slopewright.model.Place;
import slopewright.model.SlopewrightPackage.Literals;

/** What it takes to bring places of a project to where copies of them were moved. */
final class MovedPlaces {

    private static final List<EAttribute> COORDINATES = List.of(Literals.PLACE__LATITUDE_DEG, Literals.PLACE__LONGITUDE_DEG,
            Literals.PLACE__EAST_M, Literals.PLACE__NORTH_M);

    private MovedPlaces() {
    }

    /** Returns an edit for each coordinate that differs; none for those that the copies lack. */
    static List<RecordedEdit> edits(List<Place> from, List<Place> to) {
        List<RecordedEdit> edits = new ArrayList<>();
        for (int i = 0; i < to.size(); i++) {
            for (EAttribute coordinate : COORDINATES) {
                Object value = to.get(i).eGet(coordinate);
                if (value != null && !value.equals(from.get(i).eGet(coordinate))) {
                    edits.add(SetAttribute.of(from.get(i), coordinate, value));
                }
            }
        }
        return edits;
    }
}
