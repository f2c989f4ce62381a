package slopewright.ui.elements;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;

import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.SlopewrightPackage.Literals;
import slopewright.model.util.Ids;

/**
 * A kind of element: all that stand in one place of the model, such as the ends of all runways.
 *
 * @param reference where they stand in what holds them; empty for the project itself
 */
public record ElementKind(Optional<EReference> reference) {

    private static final List<EReference> PLACES = List.of(Literals.PROJECT__AERODROME, Literals.AERODROME__MAGNETIC_VARIATION,
            Literals.AERODROME__RUNWAYS, Literals.RUNWAY__CENTRE_LINE, Literals.RUNWAY__ENDS, Literals.RUNWAY_END__SITE_PROFILE,
            Literals.APPROACH_HOST__GLIDE_PATH, Literals.AERODROME__HELIPADS, Literals.HELIPAD__DIRECTIONS,
            Literals.AERODROME__AEROPLANE_GROUPS, Literals.AERODROME__OBSTACLES, Literals.OBSTACLE__PLACES,
            Literals.AERODROME__OBSTACLE_SURVEYS, Literals.AERODROME__GROUND_LEVELS, Literals.AERODROME__TAXIWAY_EDGES,
            Literals.TAXIWAY_EDGE__POINTS, Literals.AERODROME__EQUIPMENT_TYPES, Literals.EQUIPMENT_TYPE__SECTORS,
            Literals.EQUIPMENT_TYPE__INTENSITIES, Literals.EQUIPMENT_TYPE__PRINTED_DESCENTS, Literals.EQUIPMENT_TYPE__BRIGHTNESS_LEVELS,
            Literals.APPROACH_HOST__AIDS, Literals.APPROACH_AID__UNITS, Literals.APPROACH_AID__INSPECTIONS, Literals.AERODROME__CIRCUITS,
            Literals.PROJECT__OVERRIDES, Literals.PROJECT__REVIEW_NOTES);

    /** Returns every kind, in the order in which a site is built. */
    public static List<ElementKind> all() {
        return Stream.concat(Stream.of(new ElementKind(Optional.empty())),
                PLACES.stream().map(place -> new ElementKind(Optional.of(place)))).toList();
    }

    /** Returns its name for people. */
    public String label() {
        return Messages.get("kind." + reference.map(place -> place.getEContainingClass().getName() + "." + place.getName())
                .orElse("Project"));
    }

    /** Returns the class of its elements. */
    public EClass type() {
        return reference.map(EReference::getEReferenceType).orElse(Literals.PROJECT);
    }

    /** Returns its elements in document order. */
    public List<Identified> elements(Project project) {
        return reference.isEmpty() ? List.of(project)
                : Ids.elements(project).stream().filter(element -> element.eContainmentFeature() == reference.get()).toList();
    }

    /** Returns what can hold one more element of the kind. */
    public List<Identified> owners(Project project) {
        return reference.isEmpty() ? List.of() : Ids.elements(project).stream().filter(this::isOwner)
                .filter(owner -> reference.get().isMany() || owner.eGet(reference.get()) == null).toList();
    }

    private boolean isOwner(Identified element) {
        return reference.filter(place -> place.getEContainingClass().isInstance(element)).isPresent();
    }

    /** Returns whether more than one element can hold some of the kind, so that each row says where it stands. */
    public boolean isSpread() {
        return reference.filter(place -> place.getEContainingClass() != Literals.PROJECT
                && place.getEContainingClass() != Literals.AERODROME).isPresent();
    }

    /** Returns whether elements of the kind are made and removed; the project itself and its aerodrome are not. */
    public boolean isListed() {
        return reference.filter(place -> place != Literals.PROJECT__AERODROME).isPresent();
    }

    /** Makes an element that is nowhere yet. */
    public Identified create() {
        return (Identified) EcoreUtil.create(type());
    }
}
