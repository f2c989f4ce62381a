package slopewright.evaluation.site;

import java.util.List;

/**
 * A usual eye-path-to-wheel-path height, as a secondary source credits it to the appendix of the aerodrome design manual, part 4. The
 * manual itself was not read; the number is to be confirmed for the aeroplanes of the site.
 *
 * @param types       aeroplane types that it is given for
 * @param eyeToWheelM metres, from whole feet as printed
 */
public record TypicalGroup(String types, double eyeToWheelM) {

    /** Those of types that airlines still fly in number, as printed: 24, 30 and 45 ft. */
    public static final List<TypicalGroup> ALL = List.of(new TypicalGroup("A320", 7.32), new TypicalGroup("B767", 9.14),
            new TypicalGroup("B747", 13.72));
}
