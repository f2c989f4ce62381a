package slopewright.evaluation.site;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.util.EcoreUtil;

import slopewright.messages.Message;
import slopewright.model.EquipmentType;
import slopewright.model.Identified;

/**
 * The common kinds of portable unit, as samples to be edited. No sample is a product: every value is to be confirmed by the sheet of the
 * unit in hand, and what differs from unit to unit and cannot be guessed, as its measured light and the source of its data, is left open.
 */
public enum UnitKind {

    /** One box in three colours on a tripod, the zero of its plate laid to the north. */
    THREE_COLOUR_BOX,
    /** The same with the zero of its plate laid to the south. */
    THREE_COLOUR_BOX_SOUTH,
    /** One box that pulses above and below the slope. */
    PULSING_BOX,
    /** A heliport sector unit on a battery. */
    SECTOR_BOX,
    /** A heliport sector unit that is held level on a deck that moves. */
    SECTOR_BOX_STABILISED,
    /** Each box of a heliport pair. */
    PAIR_OF_BOXES;

    private static final String FILE = "kinds-of-portable-units";

    /** Returns the name by which it is chosen. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Returns what it is, for people. */
    public Message message() {
        return Message.of("site.kind." + key());
    }

    /** Finds a kind by its key. */
    public static Optional<UnitKind> find(String key) {
        return Stream.of(values()).filter(kind -> kind.key().equals(key)).findFirst();
    }

    /** Finds the kind that is offered first for a family. */
    public static Optional<UnitKind> ofFamily(String familyKey) {
        return Stream.of(values()).filter(kind -> kind.familyKey().equals(familyKey)).findFirst();
    }

    /** Returns the key of the family that it belongs to. */
    public String familyKey() {
        return sample().getFamilyKey();
    }

    /** Returns the sample, which hangs nowhere and has no id. */
    public EquipmentType sample() {
        List<EquipmentType> all = SiteTemplate.read(FILE).getAerodrome().getEquipmentTypes();
        EquipmentType copy = EcoreUtil.copy(all.get(ordinal()));
        copy.eAllContents().forEachRemaining(part -> ((Identified) part).setId(null));
        copy.setId(null);
        return copy;
    }
}
