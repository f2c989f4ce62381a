package slopewright.witness;

/**
 * A range of eye heights over one place in which the same pattern is seen.
 *
 * @param pattern colours as letters in the order of the layout
 * @param meaning its meaning
 * @param fromM lower height, metres
 * @param toM upper height, metres
 */
public record Band(String pattern, Meaning meaning, double fromM, double toM) {
}
