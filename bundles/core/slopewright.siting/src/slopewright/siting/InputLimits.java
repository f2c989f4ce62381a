package slopewright.siting;

import java.util.Set;

import slopewright.messages.Message;
import slopewright.messages.Words;

/** What the numbers of a request must keep, whatever the family: lengths that cannot be zero or less are refused by name. */
final class InputLimits {

    private static final Set<Input> MORE_THAN_ZERO = Set.of(Input.EYE_TO_WHEEL, Input.EYE_ABOVE_SKIDS, Input.SAFETY_AREA_WIDTH,
            Input.FATO_LENGTH, Input.FATO_LEAST_LENGTH, Input.PANEL_DISTANCE, Input.GLIDE_PATH_ORIGIN, Input.REFERENCE_DATUM_HEIGHT,
            Input.GLIDE_PATH_ANGLE);

    private InputLimits() {
    }

    /**
     * Checks a request before it is solved.
     *
     * @throws SitingException where a number is out of reach, or bars were given to a family that has none; the message names it
     */
    static void check(IndicatorFamily family, SitingRequest request) {
        MORE_THAN_ZERO.forEach(input -> request.number(input).filter(value -> value <= 0)
                .ifPresent(value -> refuse(input, "siting.refused.more-than-zero")));
        request.number(Input.HOVER_HEIGHT).filter(value -> value < 0)
                .ifPresent(value -> refuse(Input.HOVER_HEIGHT, "siting.refused.not-negative"));
        if (request.clearance() == SitingRequest.Clearance.CHOSEN) {
            request.number(Input.CHOSEN_CLEARANCE).filter(value -> value <= 0)
                    .ifPresent(value -> refuse(Input.CHOSEN_CLEARANCE, "siting.refused.more-than-zero"));
        }
        if (!family.hasBars() && !(request.barDistancesM().isEmpty() && request.barSettingsDeg().isEmpty())) {
            throw new SitingException(Message.of("siting.refused.no-bars", Families.name(family), Words.name(family.key())));
        }
    }

    private static void refuse(Input input, String key) {
        throw new SitingException(Message.of(key, input.message()));
    }
}
