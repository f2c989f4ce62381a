package slopewright.siting.site;

import java.util.Optional;

import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Notation;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;
import slopewright.siting.SitingException;

/**
 * What the coordinates of an aerodrome are: their reference, the epoch for which they hold, and how well they are known in plan. The
 * ground moves by centimetres a year in a reference that the whole globe shares, so coordinates there belong to a day; a reference that
 * is fixed to a plate or a country moves with it, and a local grid with its marks.
 */
public final class CoordinateBasis {
    private static final String WGS84 = "WGS84";

    private final Aerodrome aerodrome;

    private CoordinateBasis(Aerodrome aerodrome) {
        this.aerodrome = aerodrome;
    }

    /** Returns that of an aerodrome. */
    public static CoordinateBasis of(Aerodrome aerodrome) {
        return new CoordinateBasis(aerodrome);
    }

    /** Returns the reference, {@code WGS84} where none was entered. */
    public String reference() {
        return aerodrome.getCoordinateReference() == null ? WGS84 : aerodrome.getCoordinateReference();
    }

    /** Returns the epoch, a decimal year; empty where it was not entered. */
    public Optional<Double> epoch() {
        return Optional.ofNullable(aerodrome.getCoordinateEpoch());
    }

    /** Returns how well the coordinates are known in plan, metres; empty where that was not entered. */
    public Optional<Double> accuracyM() {
        return Optional.ofNullable(aerodrome.getCoordinateAccuracyM());
    }

    /**
     * Returns whether the ground moves in the reference, so that coordinates without an epoch are known to a metre or two at best: WGS 84
     * and every grid on it. All other references that are read by number are fixed to a plate or a country.
     *
     * @throws SitingException where the reference is not known
     */
    public boolean movesWithTime() {
        return PlaceReader.of(aerodrome).isOnWgs84();
    }

    /** Says reference, epoch and accuracy; what was not entered only where it is needed: no epoch where the ground does not move. */
    public Argument words() {
        Argument epoch = epoch().<Argument>map(year -> Message.of("site.basis.epoch", Words.quantity(year, Notation.YEAR)))
                .orElseGet(() -> needsEpoch() ? Message.of("site.basis.no-epoch") : Words.name(""));
        Argument accuracy = accuracyM().<Argument>map(metres -> Message.of("site.basis.accuracy", Words.mm(metres)))
                .orElseGet(() -> Message.of("site.basis.no-accuracy"));
        return Message.of("site.basis", Words.name(reference()), epoch, accuracy);
    }

    private boolean needsEpoch() {
        try {
            return movesWithTime();
        } catch (SitingException e) {
            return true;
        }
    }
}
