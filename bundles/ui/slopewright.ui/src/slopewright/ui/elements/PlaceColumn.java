package slopewright.ui.elements;

import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EReference;

import slopewright.edit.AddChild;
import slopewright.edit.Compound;
import slopewright.edit.RecordedEdit;
import slopewright.edit.SetAttribute;
import slopewright.evaluation.site.PlaceException;
import slopewright.evaluation.site.TypedPlace;
import slopewright.model.Identified;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.model.SlopewrightPackage.Literals;
import slopewright.model.util.Projects;
import slopewright.ui.MessageTexts;
import slopewright.ui.properties.AttributeInfo;
import slopewright.ui.properties.Field;
import slopewright.ui.units.QuantityFormat;

/** A coordinate of the place of a row, or the place as a whole in any form in which it can be typed. */
final class PlaceColumn extends ElementColumn {

    /** The coordinates of a place, in the order in which they stand. */
    static final List<EAttribute> COORDINATES = List.of(Literals.PLACE__LATITUDE_DEG, Literals.PLACE__LONGITUDE_DEG,
            Literals.PLACE__EAST_M, Literals.PLACE__NORTH_M, Literals.PLACE__ELEVATION_M);

    private final Optional<EReference> holder;
    private final Optional<EAttribute> coordinate;
    private final QuantityFormat format;

    /**
     * Makes a column.
     *
     * @param holder     where the row holds its place; empty where the row is the place
     * @param coordinate one of the {@link #COORDINATES}; empty for the place as a whole
     * @param format     how numbers are shown and read
     */
    PlaceColumn(Optional<EReference> holder, Optional<EAttribute> coordinate, QuantityFormat format) {
        this.holder = holder;
        this.coordinate = coordinate;
        this.format = format;
    }

    private Optional<AttributeInfo> info() {
        return coordinate.map(attribute -> AttributeInfo.of(Literals.PLACE, attribute));
    }

    @Override
    String name() {
        String own = info().map(AttributeInfo::label).orElse(Messages.get("column.position"));
        boolean named = coordinate.filter(Literals.PLACE__ELEVATION_M::equals).isPresent() && holder.isPresent();
        return named ? Messages.get("column.of-place", own) : own;
    }

    @Override
    String unit() {
        return info().map(known -> format.unit(known.quantity())).orElse("");
    }

    private Optional<Place> place(Identified row) {
        if (holder.isEmpty()) {
            return Optional.of((Place) row);
        }
        Object held = row.eGet(holder.get());
        return held instanceof List<?> places ? places.stream().findFirst().map(Place.class::cast) : Optional.ofNullable((Place) held);
    }

    private int count(Identified row) {
        return holder.isPresent() && row.eGet(holder.get()) instanceof List<?> places ? places.size() : 1;
    }

    @Override
    boolean isTyped(Identified row) {
        return count(row) <= 1;
    }

    @Override
    String shown(Identified row) {
        return text(row, true);
    }

    @Override
    String typed(Identified row) {
        return text(row, false);
    }

    private String text(Identified row, boolean withUnit) {
        if (count(row) > 1) {
            return coordinate.isEmpty() && withUnit ? Messages.get("column.points", count(row)) : "";
        }
        Optional<Place> place = place(row);
        if (place.isEmpty()) {
            return "";
        }
        if (coordinate.isEmpty()) {
            return TypedPlace.text(place.get());
        }
        Field field = Field.of(place.get(), info().orElseThrow(), format, Optional.empty());
        return place.get().eGet(coordinate.get()) == null ? "" : withUnit ? field.text() : field.typed();
    }

    @Override
    RecordedEdit edit(Identified row, String text) {
        if (!isTyped(row)) {
            throw new IllegalArgumentException(Messages.get("column.several", count(row)));
        }
        Optional<Place> present = place(row);
        if (present.isEmpty()) {
            Place made = SlopewrightFactory.eINSTANCE.createPlace();
            write(made, text, Projects.project(row));
            return AddChild.of(row, holder.orElseThrow(), made);
        }
        if (coordinate.isPresent()) {
            return Field.of(present.get(), info().orElseThrow(), format, Optional.empty()).editOf(text);
        }
        Place trial = SlopewrightFactory.eINSTANCE.createPlace();
        write(trial, text, Projects.project(row));
        return Compound.of(Messages.get("edit.place"), COORDINATES.stream()
                .filter(attribute -> attribute != Literals.PLACE__ELEVATION_M)
                .map(attribute -> SetAttribute.of(present.get(), attribute, trial.eGet(attribute))).toList());
    }

    private void write(Place place, String text, Optional<Project> project) {
        if (coordinate.isPresent()) {
            Field.of(place, info().orElseThrow(), format, Optional.empty()).editOf(text).execute();
        } else {
            try {
                TypedPlace.read(text, project.orElseThrow(), place);
            } catch (PlaceException e) {
                throw new IllegalArgumentException(MessageTexts.reason(e), e);
            }
        }
    }

    @Override
    @SuppressWarnings("unchecked")
    void write(Identified made, String text, Project project) {
        Place place = place(made).orElseGet(SlopewrightFactory.eINSTANCE::createPlace);
        write(place, text, Optional.of(project));
        if (place != made && place.eContainer() == null) {
            EReference into = holder.orElseThrow();
            if (into.isMany()) {
                ((List<Place>) made.eGet(into)).add(place);
            } else {
                made.eSet(into, place);
            }
        }
    }
}
