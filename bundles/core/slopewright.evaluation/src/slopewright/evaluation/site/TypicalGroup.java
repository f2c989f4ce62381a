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

    /** The heights as printed: 12, 19, 21, 23, 24, 26, 30, 33, 38 and 45 ft. */
    public static final List<TypicalGroup> ALL = List.of(new TypicalGroup("F50, BAe 146", 3.66), new TypicalGroup("F100, B737-200", 5.79),
            new TypicalGroup("B737-400, B707, DC-9", 6.40), new TypicalGroup("B727", 7.01), new TypicalGroup("A320, MD-87", 7.32),
            new TypicalGroup("MD-80", 7.92), new TypicalGroup("A310-300, B767", 9.14), new TypicalGroup("A300-600", 10.06),
            new TypicalGroup("DC-10", 11.58), new TypicalGroup("B747", 13.72));
}
