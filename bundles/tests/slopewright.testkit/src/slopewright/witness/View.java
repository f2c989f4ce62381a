package slopewright.witness;

import java.util.List;
import java.util.Locale;

/**
 * All lights as seen from an eye.
 *
 * @param seen the lights in the order of the layout
 * @param meaning the meaning; of the lower path where there are two
 * @param upper the meaning of the upper path, the same as {@code meaning} where there is one path
 * @param elevationDeg elevation of the eye at the reference of the layout, degrees
 */
public record View(List<Seen> seen, Meaning meaning, Meaning upper, double elevationDeg) {

    /** Copies the list. */
    public View {
        seen = List.copyOf(seen);
    }

    /** The colours as letters in the order of the layout: R, W, G, A, small where not steady, a dash for none. */
    public String pattern() {
        StringBuilder text = new StringBuilder();
        for (Seen light : seen) {
            String letter = light.colour() == Colour.NONE ? "-" : light.colour().name().substring(0, 1);
            text.append(light.state() == State.STEADY ? letter : letter.toLowerCase(Locale.ROOT));
        }
        return text.toString();
    }
}
