package slopewright.edit;

import java.util.Collection;
import java.util.List;
import java.util.stream.IntStream;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;

import slopewright.messages.Message;
import slopewright.model.Place;
import slopewright.model.SlopewrightPackage.Literals;

/** Brings places to where copies of them were moved; what else a place holds stays. */
public final class MovePlaces extends RecordedEdit {

    private static final List<EAttribute> COORDINATES = List.of(Literals.PLACE__LATITUDE_DEG, Literals.PLACE__LONGITUDE_DEG,
            Literals.PLACE__EAST_M, Literals.PLACE__NORTH_M);

    private final List<Place> places;
    private final List<Place> to;

    private MovePlaces(String label, List<Place> places, List<Place> to) {
        super(label);
        this.places = List.copyOf(places);
        this.to = List.copyOf(to);
    }

    /**
     * Moves places.
     *
     * @param label  what the user did
     * @param places the places
     * @param to     where each of them goes, in the same order; coordinates that are missing there stay
     */
    public static MovePlaces of(String label, List<Place> places, List<Place> to) {
        if (places.size() != to.size()) {
            throw new EditException(Message.said("edit.places", places.size(), to.size()));
        }
        return new MovePlaces(label, places, to);
    }

    @Override
    protected Collection<? extends EObject> scope() {
        return places;
    }

    @Override
    protected void apply() {
        IntStream.range(0, places.size()).forEach(i -> take(places.get(i), to.get(i)));
    }

    /** Gives a place the coordinates that another one has. */
    static void take(Place place, Place to) {
        for (EAttribute coordinate : COORDINATES) {
            if (to.eIsSet(coordinate) && !to.eGet(coordinate).equals(place.eGet(coordinate))) {
                place.eSet(coordinate, to.eGet(coordinate));
            }
        }
    }
}
