package slopewright.siting.magnetic;

import java.util.List;
import java.util.Objects;

import slopewright.messages.Message;
import slopewright.standards.Citation;

/**
 * The magnetic variation at a place on a day, from a model.
 *
 * @param declinationDeg  magnetic north from true north, decimal degrees, east positive
 * @param annualChangeDeg its change in a year at that time, decimal degrees
 * @param model           name of the model
 * @param epoch           epoch of the model, decimal year
 * @param decimalYear     the day as a decimal year
 * @param notes           what a reader must know, such as a weak horizontal field
 * @param citation        where the coefficients come from
 */
public record Declination(double declinationDeg, double annualChangeDeg, String model, double epoch, double decimalYear,
        List<Message> notes,
        Citation citation) {

    /** Copies the notes. */
    public Declination {
        notes = List.copyOf(notes);
        Objects.requireNonNull(model);
        Objects.requireNonNull(citation);
    }
}
